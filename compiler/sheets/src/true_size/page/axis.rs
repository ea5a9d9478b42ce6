//! Tiles in one direction: how many it takes, and where the first may begin so that no edge of a tile
//! lies along a line.

use crate::drawing::PaperPoint;

/// How far a tile reaches over the next.
pub(crate) const OVERLAP: f64 = 12.0;

/// How far the outermost tiles reach beyond the lines at least.
const BEYOND: f64 = 10.0;

/// A line that runs along the edge of a tile keeps so far away from it.
pub(crate) const CLEAR: f64 = 3.0;

/// A line runs along an edge if it comes nearer to it by less than one part in so many of its length.
const RUNS_ALONG: f64 = 4.0;

/// What room the tiles leave may lie before the first line in so many parts of it.
const PARTS: u32 = 8;

/// A number of tiles in one direction, each showing as much, and where the first begins.
#[derive(Copy, Clone, PartialEq, Debug)]
pub(crate) struct TileAxis {
    pub(crate) tiles: u32,
    pub(crate) start: f64,
    /// How much of the template a tile shows.
    pub(crate) shown: f64,
}

impl TileAxis {
    /// The fewest tiles that hold lines, looked at from left to right, in every place in which the
    /// least of a line runs along an edge; places with equal room on both sides come first. Where some
    /// of a line always does, one tile more gives room.
    pub(crate) fn over(lines: &[Vec<PaperPoint>], shown: f64) -> Vec<Self> {
        let places = || lines.iter().flatten().map(|point| point.x);
        let least = places().fold(f64::INFINITY, f64::min) - BEYOND;
        let needed = places().fold(f64::NEG_INFINITY, f64::max) + BEYOND - least;
        if !needed.is_finite() {
            return vec![];
        }
        // The fewest tiles leave some room; within it they can be moved until no edge of paper lies along a
        // line of the piece. A cutting line just on the edge of a page is cut away or taped over, and
        // with it what the template is for. A tile more is worth it only if that saves some of a line.
        let counts = std::iter::successors(Some(1_u32), |tiles| tiles.checked_add(1));
        let mut enough = counts
            .map(|tiles| Self {
                tiles,
                start: least,
                shown,
            })
            .filter(|axis| axis.length() >= needed);
        let best = |axis: Option<Self>| axis.map(|axis| axis.best(needed, lines));
        match best(enough.next()) {
            Some((places, along)) if along > 0.0 => match best(enough.next()) {
                Some((more, less)) if less < along => more,
                _ => places,
            },
            few => few.unwrap_or_default().0,
        }
    }

    /// From the start of a tile to the start of the next.
    pub(crate) fn pitch(self) -> f64 {
        self.shown - OVERLAP
    }

    /// All that the tiles lie over.
    pub(crate) fn length(self) -> f64 {
        self.pitch() * f64::from(self.tiles) + OVERLAP
    }

    /// Where a tile begins on the template; tiles count from nought.
    pub(crate) fn begins(self, tile: u32) -> f64 {
        self.start + self.pitch() * f64::from(tile)
    }

    /// The tile that a place is printed for: up to the middle of where it reaches over the next.
    pub(crate) fn home(self, place: f64) -> u32 {
        let shares = (place - self.start - OVERLAP / 2.0) / self.pitch();
        let before = (1..self.tiles).take_while(|tile| f64::from(*tile) <= shares);
        before.last().unwrap_or(0)
    }

    /// The places in which the least of a line lies along an edge, and how much that is. The tiles are
    /// moved back by what room they leave.
    fn best(self, needed: f64, lines: &[Vec<PaperPoint>]) -> (Vec<Self>, f64) {
        let room = self.length() - needed;
        let placed: Vec<(Self, f64)> = parts()
            .map(|part| Self {
                start: self.start - room * part,
                ..self
            })
            .map(|axis| (axis, axis.along_edges(lines)))
            .collect();
        let alongs = placed.iter().map(|(_, along)| *along);
        let least = alongs.fold(f64::INFINITY, f64::min);
        let best = placed.into_iter().filter(|(_, along)| *along <= least);
        (best.map(|(axis, _)| axis).collect(), least)
    }

    /// How long lines run along the edges of the tiles, too near to them.
    fn along_edges(self, lines: &[Vec<PaperPoint>]) -> f64 {
        let edges: Vec<f64> = (0..self.tiles)
            .map(|tile| self.begins(tile))
            .flat_map(|edge| [edge, edge + self.shown])
            .collect();
        let sides = lines
            .iter()
            .flat_map(|line| line.iter().zip(line.iter().skip(1)));
        // A line that crosses an edge steeply is seen on both pages; only one that stays near the edge for
        // long is lost there.
        let along =
            sides.filter(|(from, to)| (to.x - from.x).abs() * RUNS_ALONG <= (to.y - from.y).abs());
        let too_near = along.filter(|(from, to)| {
            let reach = from.x.min(to.x) - CLEAR..=from.x.max(to.x) + CLEAR;
            edges.iter().any(|edge| reach.contains(edge))
        });
        too_near.map(|(from, to)| (to.y - from.y).abs()).sum()
    }
}

/// The parts of the room that may lie before the first line: half of it, then more and less by turns.
fn parts() -> impl Iterator<Item = f64> {
    let half = PARTS.div_euclid(2);
    (0..=half).flat_map(move |away| {
        let part = |parts: u32| f64::from(parts) / f64::from(PARTS);
        let after = (away > 0).then(|| part(half.saturating_add(away)));
        std::iter::once(part(half.saturating_sub(away))).chain(after)
    })
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::{CLEAR, TileAxis, parts};
    use crate::drawing::{PaperPoint, at};

    fn upright(places: &[f64]) -> Vec<Vec<PaperPoint>> {
        let line = |x: &f64| vec![at(*x, 0.0), at(*x, 300.0)];
        places.iter().map(line).collect()
    }

    fn nearest(axis: TileAxis, places: &[f64]) -> f64 {
        let edges =
            (0..axis.tiles).flat_map(|tile| [axis.begins(tile), axis.begins(tile) + axis.shown]);
        let apart = edges.flat_map(|edge| places.iter().map(move |place| (place - edge).abs()));
        apart.fold(f64::INFINITY, f64::min)
    }

    #[test]
    fn every_part_of_the_room_is_tried_once() {
        let mut all: Vec<f64> = parts().collect();
        assert_eq!(all.first(), Some(&0.5));
        all.sort_by(f64::total_cmp);
        let expected: Vec<f64> = (0..=8).map(|part| f64::from(part) / 8.0).collect();
        assert_eq!(all, expected);
    }

    #[test]
    fn one_tile_holds_what_has_room_in_it() {
        let axes = TileAxis::over(&upright(&[0.0, 160.0]), 190.0);
        assert_eq!(
            axes.first(),
            Some(&TileAxis {
                tiles: 1,
                start: -15.0,
                shown: 190.0
            })
        );
        // 170 mm and 10 mm on either side, and not a millimetre more.
        assert_eq!(TileAxis::over(&upright(&[0.0, 170.0]), 190.0)[0].tiles, 1);
        assert_eq!(TileAxis::over(&upright(&[0.0, 171.0]), 190.0)[0].tiles, 2);
        assert_eq!(TileAxis::over(&[], 190.0), []);
    }

    #[test]
    fn a_place_is_printed_for_the_tile_in_whose_middle_it_lies() {
        let axis = TileAxis {
            tiles: 3,
            start: 0.0,
            shown: 190.0,
        };
        for (place, tile) in [
            (-5.0, 0),
            (183.9, 0),
            (184.1, 1),
            (361.9, 1),
            (362.1, 2),
            (900.0, 2),
        ] {
            assert_eq!(axis.home(place), tile, "{place}");
        }
    }

    proptest! {
        /// Two sides, and up to three upright lines between them.
        #[test]
        fn no_upright_line_lies_on_an_edge(
            width in 60.0..2500.0_f64,
            between in proptest::collection::vec(0.0..1.0_f64, 0..4),
        ) {
            let mut places: Vec<f64> = between.iter().map(|part| part * width).collect();
            places.extend([0.0, width]);
            let axes = TileAxis::over(&upright(&places), 190.0);
            prop_assert!(!axes.is_empty());
            for axis in axes {
                prop_assert!(axis.start <= -10.0 + 1e-9);
                prop_assert!(axis.start + axis.length() >= width + 10.0 - 1e-9);
                prop_assert!(nearest(axis, &places) >= CLEAR - 1e-9);
            }
        }
    }
}
