//! Shaped pieces where they lie.

use std::collections::BTreeMap;

use pelmet_measure::Length;

use super::Laid;
use super::triangles::{Point, Triangle, lie_within, triangles};
use crate::{Fault, Outline, Piece};

/// The triangles of every shaped piece, by index.
pub(super) struct Shapes {
    of_piece: BTreeMap<usize, Vec<Triangle>>,
}

impl Shapes {
    /// Reads every outline; reports those that enclose nothing or cross themselves.
    pub(super) fn of(pieces: &[Piece], faults: &mut Vec<Fault>) -> Shapes {
        let mut of_piece = BTreeMap::new();
        for (piece, the) in pieces.iter().enumerate() {
            let Some(outline) = &the.outline else {
                continue;
            };
            match triangles(outline) {
                Some(triangles) => {
                    of_piece.insert(piece, triangles);
                }
                None => faults.push(Fault::NotAnOutline { piece }),
            }
        }
        Shapes { of_piece }
    }

    /// Whether there are none.
    pub(super) fn are_none(&self) -> bool {
        self.of_piece.is_empty()
    }

    /// Whether two pieces are nearer than `gap` to each other, if one of them is shaped. Rectangles
    /// always are.
    pub(super) fn lie_within(&self, one: &Laid, other: &Laid, gap: Length) -> bool {
        if !self.is_shaped(one) && !self.is_shaped(other) {
            return true;
        }
        let strays = |it: &Laid| {
            let outline = it.piece.outline.as_ref();
            outline.map_or(Length::ZERO, Outline::strays)
        };
        let gap = i128::from((gap + strays(one) + strays(other)).nanometres());
        let (ours, theirs) = (self.triangles(one), self.triangles(other));
        ours.iter()
            .any(|our| theirs.iter().any(|their| lie_within(our, their, gap)))
    }

    fn is_shaped(&self, it: &Laid) -> bool {
        self.of_piece.contains_key(&it.placed.piece)
    }

    fn triangles(&self, it: &Laid) -> Vec<Triangle> {
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
            let (x, y) = if it.placed.turned {
                (width.saturating_sub(x), length.saturating_sub(y))
            } else {
                (x, y)
            };
            (across.saturating_add(x), along.saturating_add(y))
        };
        shape.iter().map(|triangle| triangle.map(placed)).collect()
    }
}
