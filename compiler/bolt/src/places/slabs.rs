//! A shape in slabs: bands with straight sides, so that what two shapes deny each other is a sum.
//!
//! The usual way is to make the no-fit polygon of each two shapes beforehand. Here its slices alone are
//! asked for: the print leaves few lines along the bolt on which a piece may lie, and on each of them
//! the places denied follow from a few slabs, exact to the nanometre.

use pelmet_measure::Length;

use super::slab::{NoFit, Rounding, Slab, on_side};
use crate::given::{OutlineCorner, OutlinePolygon};

/// Slabs that cover a shape, by their start.
#[derive(Clone, PartialEq, Eq, Debug)]
pub(crate) struct Slabs {
    slabs: Vec<Slab>,
    /// The length of the longest of them.
    longest: Length,
}

impl Slabs {
    /// One slab with sides that run along the bolt.
    pub(crate) fn rectangle(width: Length, length: Length) -> Slabs {
        Slabs::of(vec![Slab {
            start: Length::ZERO,
            end: length,
            left: [Length::ZERO; 2],
            right: [width; 2],
        }])
    }

    /// What lies within an outline: bands from each corner along the bolt to the next, in which no
    /// side ends, so that every band falls into trapezoids.
    pub(crate) fn within(outline: &OutlinePolygon) -> Slabs {
        let mut lines: Vec<Length> = outline
            .corners()
            .iter()
            .map(|corner| corner.along)
            .collect();
        lines.sort_unstable();
        lines.dedup();
        let sides = sides(outline);
        let bands = lines.iter().zip(lines.iter().skip(1));
        Slabs::of(
            bands
                .flat_map(|(start, end)| in_band(&sides, *start, *end))
                .collect(),
        )
    }

    /// Grown by so much in every direction, across and along.
    pub(crate) fn grown(&self, by: Length) -> Slabs {
        Slabs::of(self.slabs.iter().flat_map(|slab| slab.grown(by)).collect())
    }

    /// How many slabs there are to compare with another shape's.
    pub(crate) fn count(&self) -> usize {
        self.slabs.len()
    }

    /// The area they cover where they do not lie over each other, rounded down.
    pub(crate) fn area(&self) -> u128 {
        self.slabs
            .iter()
            .map(Slab::area)
            .fold(0, u128::saturating_add)
    }

    /// The width and length of a rectangle at the top left corner that the slabs cover.
    ///
    /// It is as wide as the first slab there, and goes on as long as slabs reach from the left edge
    /// that far: of the rectangles there may be larger ones, but this is the one below a heading.
    pub(crate) fn whole_from_top_left(&self) -> (Length, Length) {
        let (mut width, mut end) = (Length::ZERO, Length::ZERO);
        for slab in &self.slabs {
            let [left, left_end] = slab.left;
            let [right, right_end] = slab.right;
            let goes_on = slab.start == end && left.is_zero() && left_end.is_zero();
            if goes_on && (end.is_zero() || right.min(right_end) >= width) {
                end = slab.end;
                width = if width.is_zero() {
                    right.min(right_end)
                } else {
                    width
                };
            }
        }
        (width, end)
    }

    /// The places across, as seen from these slabs, that `other` may not have when it lies so far
    /// `ahead` along the bolt.
    pub(crate) fn no_fit(&self, other: &Slabs, ahead: Length) -> Vec<NoFit> {
        let mut denied = Vec::new();
        for theirs in &other.slabs {
            let (start, end) = (theirs.start + ahead, theirs.end + ahead);
            // By their start slabs are in order, by their end they need not be: one that starts early
            // may be long. None that starts more than the longest before this one reaches it.
            let first = self
                .slabs
                .partition_point(|ours| ours.start + self.longest <= start);
            let rest = self.slabs.get(first..).unwrap_or_default();
            let reached = rest.iter().take_while(|ours| ours.start < end);
            for ours in reached.filter(|ours| ours.end > start) {
                denied.push(ours.no_fit(theirs, ahead));
            }
        }
        joined(denied)
    }

    fn of(mut slabs: Vec<Slab>) -> Slabs {
        slabs.sort_by_key(|slab| (slab.start, slab.left, slab.right));
        let longest = slabs.iter().map(|slab| slab.end - slab.start).max();
        Slabs {
            slabs,
            longest: longest.unwrap_or_default(),
        }
    }
}

/// A side of an outline, from its upper corner to its lower one.
type Side = (OutlineCorner, OutlineCorner);

fn sides(outline: &OutlinePolygon) -> Vec<Side> {
    let corners = outline.corners();
    let next = corners.iter().cycle().skip(1);
    let down = |(one, other): (&OutlineCorner, &OutlineCorner)| {
        if one.along <= other.along {
            (*one, *other)
        } else {
            (*other, *one)
        }
    };
    corners.iter().zip(next).map(down).collect()
}

/// The slabs of a band that no corner lies in: between every other two sides, for a line across goes
/// into the shape at one side and out at the next.
fn in_band(sides: &[Side], start: Length, end: Length) -> Vec<Slab> {
    let across = |side: &Side, along, rounding| {
        let (upper, lower) = side;
        on_side(
            ([upper.across, lower.across], [upper.along, lower.along]),
            along,
            rounding,
        )
    };
    let mut crossing: Vec<&Side> = sides
        .iter()
        .filter(|(upper, lower)| upper.along <= start && end <= lower.along)
        .collect();
    // Sides may meet where the band starts or ends, but do not cross: their order in its middle is
    // their order all through. In a band of a nanometre or two it may be rounded away; then the ends
    // tell.
    let middle = start + (end - start).divided(2);
    crossing.sort_by_key(|side| {
        let ends = across(side, start, Rounding::Down) + across(side, end, Rounding::Down);
        (across(side, middle, Rounding::Down), ends)
    });
    let pairs = crossing.chunks_exact(2).filter_map(|pair| match pair {
        [left, right] => Some((*left, *right)),
        _ => None,
    });
    pairs
        .map(|(left, right)| Slab {
            start,
            end,
            left: [start, end].map(|along| across(left, along, Rounding::Down)),
            right: [start, end].map(|along| across(right, along, Rounding::Up)),
        })
        .collect()
}

/// The same places in as few parts as there can be, in order. Parts that only touch stay apart: the
/// place where they do is free.
fn joined(mut parts: Vec<NoFit>) -> Vec<NoFit> {
    parts.sort_unstable();
    let mut joined: Vec<NoFit> = Vec::with_capacity(parts.len().min(4));
    for (from, to) in parts {
        match joined.last_mut() {
            Some((_, end)) if from < *end => *end = to.max(*end),
            _ => joined.push((from, to)),
        }
    }
    joined
}
