//! Jobs whose shortest layout is known: a strip of cloth cut apart, to be put together again.

use pelmet_bolt::{LayoutCloth, LayoutPiece};
use pelmet_measure::Length;

/// A strip to cut apart, in millimetres.
#[derive(Copy, Clone, Debug)]
pub struct Strip {
    pub width: i64,
    pub length: i64,
    /// Into how many pieces.
    pub pieces: usize,
    pub gap: i64,
    /// The repeat along that holds every piece where it lay.
    pub repeat: Option<i64>,
    /// Which of many ways to cut it.
    pub way: u64,
}

/// A rectangle in millimetres.
#[derive(Copy, Clone, Debug)]
struct Part {
    across: i64,
    along: i64,
    width: i64,
    length: i64,
}

/// Cuts are whole multiples of this apart, in millimetres; the sizes of a workroom are round too.
const STEP: i64 = 20;

impl Strip {
    /// The cloth and the pieces; all of them together fill the strip's length, no less.
    pub fn job(&self) -> (LayoutCloth, Vec<LayoutPiece>) {
        let cloth = LayoutCloth {
            usable_width: Length::millimetres(self.width - self.gap),
            gap: Length::millimetres(self.gap),
            repeat_along: self.repeat.map(Length::millimetres),
            repeat_across: None,
            half_drop: false,
            one_way: true,
            bolt_length: None,
            buying_step: Length::MILLIMETRE,
            flaws: Vec::new(),
        };
        let piece = |part: &Part| LayoutPiece {
            width: Length::millimetres(part.width - self.gap),
            length: Length::millimetres(part.length - self.gap),
            quantity: 1,
            phase_along: self
                .repeat
                .map(|repeat| Length::millimetres((-part.along).rem_euclid(repeat))),
            phase_across: None,
            outline: None,
            on_fold: false,
        };
        (cloth, self.parts().iter().map(piece).collect())
    }

    /// The length of the shortest layout: the strip's, less the last gap.
    pub fn optimum(&self) -> Length {
        Length::millimetres(self.length - self.gap)
    }

    /// Cuts the largest part across its longer side until there are enough.
    fn parts(&self) -> Vec<Part> {
        let mut state = self.way;
        let mut parts = vec![Part {
            across: 0,
            along: 0,
            width: self.width,
            length: self.length,
        }];
        while parts.len() < self.pieces {
            parts.sort_by_key(|part| part.width * part.length);
            let Some(part) = parts.pop() else { break };
            let steps = part.width.max(part.length) / STEP;
            let at = STEP * (1 + steps / 5 + thrown(&mut state, (steps * 3 / 5).max(1)));
            let (mut one, mut other) = (part, part);
            if part.width > part.length {
                one.width = at;
                other.width = part.width - at;
                other.across = part.across + at;
            } else {
                one.length = at;
                other.length = part.length - at;
                other.along = part.along + at;
            }
            parts.extend([one, other]);
        }
        parts
    }
}

/// A number below `sides` without a pattern.
fn thrown(state: &mut u64, sides: i64) -> i64 {
    *state = state
        .wrapping_mul(6_364_136_223_846_793_005)
        .wrapping_add(1_442_695_040_888_963_407);
    i64::try_from(*state >> 33).unwrap_or(0) % sides
}
