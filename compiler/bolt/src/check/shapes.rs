//! Shaped pieces where they lie.

use std::collections::BTreeMap;

use pelmet_measure::Length;

use super::checked::CheckedPiece;
use super::finding::CheckerFinding;
use super::triangles::{Point, Triangle, lie_within, triangles};
use crate::given::{LayoutPiece, OutlinePolygon};

/// The triangles of every shaped piece, by index.
pub(super) struct Shapes {
    of_piece: BTreeMap<usize, Vec<Triangle>>,
}

impl Shapes {
    /// Reads every outline; finds those that enclose nothing or cross themselves.
    pub(super) fn of(pieces: &[LayoutPiece], findings: &mut Vec<CheckerFinding>) -> Shapes {
        let mut of_piece = BTreeMap::new();
        for (piece, the) in pieces.iter().enumerate() {
            let Some(outline) = &the.outline else {
                continue;
            };
            match triangles(outline) {
                Some(triangles) => {
                    of_piece.insert(piece, triangles);
                }
                None => findings.push(CheckerFinding::NotAnOutline { piece }),
            }
        }
        Shapes { of_piece }
    }

    /// Whether every piece is a rectangle.
    pub(super) fn are_none(&self) -> bool {
        self.of_piece.is_empty()
    }

    /// Whether two pieces are nearer than `gap` to each other, if one of them is shaped; of two
    /// rectangles it is said, for their width and length have told already.
    pub(super) fn lie_within(&self, one: &CheckedPiece, other: &CheckedPiece, gap: Length) -> bool {
        if !self.is_shaped(one) && !self.is_shaped(other) {
            return true;
        }
        let strays = |it: &CheckedPiece| {
            let outline = it.piece.outline.as_ref();
            outline.map_or(Length::ZERO, OutlinePolygon::strays)
        };
        let gap = i128::from((gap + strays(one) + strays(other)).nanometres());
        let (ours, theirs) = (self.triangles(one), self.triangles(other));
        ours.iter()
            .any(|our| theirs.iter().any(|their| lie_within(our, their, gap)))
    }

    fn is_shaped(&self, it: &CheckedPiece) -> bool {
        self.of_piece.contains_key(&it.placed.piece)
    }

    /// The triangles of a piece where it lies on its bolt; two for one without an outline.
    fn triangles(&self, it: &CheckedPiece) -> Vec<Triangle> {
        let (width, length) = (it.piece.width.nanometres(), it.piece.length.nanometres());
        let (width, length) = (i128::from(width), i128::from(length));
        let rectangle = vec![
            [(0, 0), (width, 0), (width, length)],
            [(0, 0), (width, length), (0, length)],
        ];
        let shape = self.of_piece.get(&it.placed.piece).unwrap_or(&rectangle);
        let across = i128::from(it.placed.across.nanometres());
        let along = i128::from(it.placed.along.nanometres());
        let placed = |(x, y): Point| {
            let (x, y) = if it.placed.orientation.is_turned() {
                (width.saturating_sub(x), length.saturating_sub(y))
            } else {
                (x, y)
            };
            (across.saturating_add(x), along.saturating_add(y))
        };
        shape.iter().map(|triangle| triangle.map(placed)).collect()
    }
}
