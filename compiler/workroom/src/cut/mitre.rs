//! Mitred hems: where the cloth is folded at a corner so that two hems meet in one slanting line.
//!
//! Finished, a mitre runs from the corner to where the inner edges of both hems meet: the depth of the
//! side's hem in from the side, and the depth of the lower hem up from below. Laid open again, the
//! part on either hem is its mirror image about the edge that hem is turned at, and the two images
//! make one straight line through the corner: `side` across for `lower` down. Its angle is 45 degrees
//! only where both hems are alike. Beyond the inner edge of a hem lies what is turned under there, and
//! on it the line is mirrored once more.

use pelmet_measure::Length;
use pelmet_model::geometry::{Vector, with_previous};
use pelmet_model::{
    Allowance, Corner, Edge, EdgeKind, Fabric, Making, MakingMatter, MitreMade, MitrePlace,
    MitrePointMade, Point, Relief, Shape,
};

use crate::cut::pieces::before_shrinking;

/// A mitre on cloth that is cut larger for what it will lose.
pub(crate) fn cut_from(mut mitre: MitreMade, face: &Fabric) -> MitreMade {
    let cut = |length| before_shrinking(length, face.shrinkage).unwrap_or(length);
    for point in &mut mitre.line {
        point.in_from_side = cut(point.in_from_side);
        point.up_from_lower = cut(point.up_from_lower);
    }
    mitre
}

/// The mitres of a panel; none for a method that does not mitre.
///
/// # Errors
///
/// A corner that is not square, so that its hems cannot meet in one fold. A hem without a depth is for
/// whoever describes the method to find; here it makes no mitre.
pub(crate) fn mitres(making: &Making, shape: &Shape) -> Result<Vec<MitreMade>, MakingMatter> {
    let edges = making.face.edges;
    let hems = Hem::of(edges.sides).zip(Hem::of(edges.lower));
    let Some((side, lower)) = hems.filter(|_| making.mitred) else {
        return Ok(vec![]);
    };
    let corners = hemmed_corners(shape);
    let square: Result<Vec<usize>, _> = corners.map(|corner| corner.square()).collect();
    let mitre = |corner| MitreMade {
        corner,
        line: line(side, lower),
        length: Vector::between(ORIGIN, point(side.depth, lower.depth)).length(),
        kept: making.seam,
    };
    Ok(square?.into_iter().map(mitre).collect())
}

/// Says of every mitred corner that it is one.
pub(crate) fn mark_mitred(corners: &mut [Corner], mitres: &[MitreMade]) {
    for mitre in mitres {
        if let Some(corner) = corners.get_mut(mitre.corner) {
            corner.relief = Some(Relief::Mitre);
        }
    }
}

/// A hem as it is folded.
#[derive(Copy, Clone)]
struct Hem {
    /// Finished depth.
    depth: Length,
    /// The cloth it takes.
    total: Length,
}

impl Hem {
    fn of(allowance: Allowance) -> Option<Self> {
        let depth = allowance.hem_depth()?;
        Some(Self {
            depth,
            total: allowance.total(),
        })
    }

    /// What is turned under at its raw edge.
    fn turned(self) -> Length {
        self.total - self.depth
    }

    /// How far from the corner, along this hem's own edge, the line reaches the cut edge of the hem,
    /// where it is `other` away at the hem's full depth.
    fn reach(self, other: Length) -> Length {
        // Up to the inner edge of the finished hem the line runs straight out from the corner, the mirror
        // image of the finished mitre about the edge the hem is turned at. What is turned under lies beyond
        // that inner edge and comes back over it, so on it the line is mirrored once more and comes nearer
        // to the corner again: the two stretches cancel as far as the turned part is wide.
        let left = self.depth - self.turned();
        let part = left.ratio_to(self.depth);
        part.map_or(other, |part| other.scaled(part))
    }
}

fn line(side: Hem, lower: Hem) -> Vec<MitrePointMade> {
    let at = |place, in_from_side, up_from_lower| MitrePointMade {
        place,
        in_from_side,
        up_from_lower,
    };
    // All places are measured on the cut face laid open, where each hem's cloth lies beyond the finished
    // corner: the corner is the whole of both hems in from the cut edges, and the line leaves it on either
    // side by the depth of the *other* hem for the depth of its own.
    let (up_side, in_lower) = (side.reach(lower.depth), lower.reach(side.depth));
    let side_turn = at(
        MitrePlace::SideTurn,
        side.turned(),
        lower.total + lower.depth,
    );
    let lower_turn = at(
        MitrePlace::LowerTurn,
        side.total + side.depth,
        lower.turned(),
    );
    let mut line = vec![at(MitrePlace::SideCut, Length::ZERO, lower.total + up_side)];
    line.extend(side.turned().is_positive().then_some(side_turn));
    line.push(at(MitrePlace::Corner, side.total, lower.total));
    line.extend(lower.turned().is_positive().then_some(lower_turn));
    line.push(at(
        MitrePlace::LowerCut,
        side.total + in_lower,
        Length::ZERO,
    ));
    line
}

/// A corner where a side meets the lower edge.
struct HemmedCorner<'a> {
    corner: usize,
    lower: &'a Edge,
    from: Point,
    to: Point,
    has_side: bool,
}

impl HemmedCorner<'_> {
    /// Its number, if its edges meet at a right angle.
    fn square(&self) -> Result<usize, MakingMatter> {
        let is_curved = self.lower.curve.is_some();
        let down = (self.to.down - self.from.down).abs();
        if self.has_side && !is_curved && down.is_zero() {
            return Ok(self.corner);
        }
        Err(MakingMatter::MitreNotSquare {
            step: self.lower.step,
            across: (self.to.across - self.from.across).abs(),
            down,
            is_curved,
            has_side: self.has_side,
        })
    }
}

/// Both ends of the lower edge: from a side, and to one.
fn hemmed_corners(shape: &Shape) -> impl Iterator<Item = HemmedCorner<'_>> {
    let runs: Vec<(&Edge, Point, Point)> = shape.runs().collect();
    let pairs: Vec<_> = with_previous(&runs).enumerate().collect();
    pairs.into_iter().filter_map(|(corner, (before, after))| {
        let is_lower = |run: &(&Edge, Point, Point)| run.0.kind == EdgeKind::Lower;
        let (own, other) = match (is_lower(&before), is_lower(&after)) {
            (false, true) => (after, before),
            (true, false) => (before, after),
            _ => return None,
        };
        let (lower, from, to) = own;
        Some(HemmedCorner {
            corner,
            lower,
            from,
            to,
            has_side: other.0.kind == EdgeKind::Side,
        })
    })
}

const ORIGIN: Point = point(Length::ZERO, Length::ZERO);

const fn point(across: Length, down: Length) -> Point {
    Point { across, down }
}
