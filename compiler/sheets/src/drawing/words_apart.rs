//! Words on a drawing that must not lie on one another.

use super::elements::Drawing;
use super::point::PaperPoint;
use super::text_size::{Align, TextSize, width_of};

/// The room that words take that stand so far.
#[derive(Default)]
pub(crate) struct WordsApart {
    taken: Vec<WordsRoom>,
}

/// From the left to the right and from the top to the foot.
#[derive(Copy, Clone)]
struct WordsRoom {
    left: f64,
    right: f64,
    top: f64,
    foot: f64,
}

impl WordsApart {
    /// Writes words at a place if they find room there; says whether they do.
    pub(crate) fn write(
        &mut self,
        at: PaperPoint,
        align: Align,
        size: TextSize,
        text: &str,
        drawing: &mut Drawing,
    ) -> bool {
        let room = WordsRoom::of(at, align, size, text);
        let free = self.taken.iter().all(|taken| !taken.overlaps(&room));
        if free {
            self.taken.push(room);
            drawing.words(at, align, size, text);
        }
        free
    }
}

impl WordsRoom {
    fn of(at: PaperPoint, align: Align, size: TextSize, text: &str) -> Self {
        let wide = width_of(text, size);
        let left = match align {
            Align::Left => at.x,
            Align::Middle => at.x - wide / 2.0,
            Align::Right => at.x - wide,
        };
        Self {
            left,
            right: left + wide,
            top: at.y - size.millimetres() * 0.8,
            foot: at.y + size.millimetres() * 0.2,
        }
    }

    fn overlaps(&self, other: &Self) -> bool {
        let beside = self.right + 0.5 <= other.left || other.right + 0.5 <= self.left;
        let over = self.foot <= other.top || other.foot <= self.top;
        !beside && !over
    }
}
