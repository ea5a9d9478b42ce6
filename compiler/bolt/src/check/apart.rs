//! Whether all pieces keep apart: a line moves along each bolt and keeps the pieces under it in
//! order from left to right, so that only neighbours need to be compared (a sweep line: M. I. Shamos and
//! D. Hoey, "Geometric intersection problems", 17th Symposium on Foundations of Computer Science, 1976).

use std::collections::{BTreeMap, BTreeSet};

use pelmet_measure::Length;

use super::checked::CheckedPiece;
use super::finding::CheckerFinding;
use super::shapes::Shapes;

/// Finds pieces that overlap or leave less than `gap` between them.
pub(super) fn check(
    gap: Length,
    shapes: &Shapes,
    laid: &[CheckedPiece],
    findings: &mut Vec<CheckerFinding>,
) {
    let mut in_order: Vec<&CheckedPiece> = laid.iter().collect();
    in_order.sort_by_key(|it| (it.placed.bolt, it.placed.along, it.placed.across, it.index));
    for bolt in in_order.chunk_by(|one, next| one.placed.bolt == next.placed.bolt) {
        let mut line = Line {
            gap,
            shapes,
            pieces: BTreeMap::new(),
            ends: BTreeSet::new(),
        };
        for it in bolt {
            line.move_to(it.placed.along);
            line.add(it, findings);
        }
    }
}

/// The line across the bolt, and the pieces under it.
struct Line<'laid> {
    gap: Length,
    shapes: &'laid Shapes,
    /// By left edge, then by index.
    pieces: BTreeMap<(Length, usize), &'laid CheckedPiece<'laid>>,
    /// Where each piece ends, with its key above.
    ends: BTreeSet<(Length, (Length, usize))>,
}

impl<'laid> Line<'laid> {
    /// Leaves behind every piece that ends a gap or more before `along`.
    fn move_to(&mut self, along: Length) {
        while let Some((end, key)) = self.ends.first().copied() {
            if end + self.gap > along {
                break;
            }
            self.ends.pop_first();
            self.pieces.remove(&key);
        }
    }

    /// Compares a piece with its neighbours; among shapes, which may lie within one another's width
    /// and length, with all.
    ///
    /// For rectangles the neighbours are enough. As long as no two under the line clash, they lie one
    /// beside the other, and if the new piece clashes with any of them, nothing else has room between it
    /// and the nearest: so it clashes with that one too. Once two have clashed this need no longer hold,
    /// but then the layout is broken already and something was said of it.
    fn add(&mut self, it: &'laid CheckedPiece<'laid>, findings: &mut Vec<CheckerFinding>) {
        let key = (it.placed.across, it.index);
        if self.shapes.are_none() {
            let left = self.pieces.range(..key).next_back();
            let right = self.pieces.range(key..).next();
            for (_, neighbour) in left.into_iter().chain(right) {
                findings.extend(clash(self.shapes, neighbour, it, self.gap));
            }
        } else {
            let others = self.pieces.values();
            findings.extend(others.filter_map(|other| clash(self.shapes, other, it, self.gap)));
        }
        self.pieces.insert(key, it);
        self.ends.insert((it.end(), key));
    }
}

fn clash(
    shapes: &Shapes,
    one: &CheckedPiece,
    other: &CheckedPiece,
    gap: Length,
) -> Option<CheckerFinding> {
    let (first, second) = (one.index.min(other.index), one.index.max(other.index));
    let lie_within =
        |gap: Length| lie_within(one, other, gap) && shapes.lie_within(one, other, gap);
    if lie_within(Length::ZERO) {
        Some(CheckerFinding::Overlap { first, second })
    } else if lie_within(gap) {
        Some(CheckerFinding::TooClose { first, second })
    } else {
        None
    }
}

/// Whether two pieces are less than `gap` apart both along and across; with no gap, whether they
/// have cloth in common. Edges that only touch have none.
fn lie_within(one: &CheckedPiece, other: &CheckedPiece, gap: Length) -> bool {
    one.placed.across < other.right() + gap
        && other.placed.across < one.right() + gap
        && one.placed.along < other.end() + gap
        && other.placed.along < one.end() + gap
}
