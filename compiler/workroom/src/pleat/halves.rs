//! How a rule, read in its working direction, lies on the whole strip.

use pelmet_measure::Length;
use pelmet_model::{PleatRule, Start, Toward, TowardOrder};

use super::piece::Measure;
use super::solve::Wanted;

/// Which part of the strip a rule describes, and what becomes of the rest.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(super) enum Halves {
    /// The whole strip, from the left edge.
    Whole,
    /// The left half, from the left edge; the right half is its mirror image.
    LeftMirrored,
    /// The right half, from the centre; the left half is its mirror image.
    RightMirrored,
    /// The right half, from the centre; the left half is plain.
    RightOnly,
}

impl Halves {
    pub(super) fn of(rule: &PleatRule) -> Self {
        match (rule.start, rule.mirrored) {
            (Start::Left, false) => Self::Whole,
            (Start::Left, true) => Self::LeftMirrored,
            (Start::Centre, true) => Self::RightMirrored,
            (Start::Centre, false) => Self::RightOnly,
        }
    }

    pub(super) fn is_mirrored(self) -> bool {
        matches!(self, Self::LeftMirrored | Self::RightMirrored)
    }

    /// Whether a pleat lies in the right half; never for a rule that knows no halves.
    pub(super) fn is_right(self, mirrored: bool) -> bool {
        match self {
            Self::Whole => false,
            Self::LeftMirrored => mirrored,
            Self::RightMirrored | Self::RightOnly => !mirrored,
        }
    }

    /// The part of a whole width that the rule describes.
    pub(super) fn part(self, whole: Length) -> Length {
        if self == Self::Whole {
            whole
        } else {
            whole.divided(2)
        }
    }

    /// Where, from the left edge, the pleats of the right half start that a rule from the centre
    /// describes; the left edge itself for a rule that starts there.
    pub(super) fn start(self, flat: Length) -> Length {
        match self {
            Self::Whole | Self::LeftMirrored => Length::ZERO,
            Self::RightMirrored | Self::RightOnly => flat - self.part(flat),
        }
    }

    /// The whole of which this is the part described.
    pub(super) fn whole(self, part: Length) -> Length {
        if self == Self::Whole { part } else { part * 2 }
    }

    /// The pleats on the panel for one pleat of the part described.
    pub(super) fn copies(self) -> u32 {
        if self.is_mirrored() { 2 } else { 1 }
    }

    /// The panel's take-up from that of the part described.
    pub(super) fn panel_take_up(self, part: Length) -> Length {
        part * i64::from(self.copies())
    }

    /// What the part described has to meet. Placed pleats leave the rest of the strip to plain
    /// cloth, so of them no width is asked.
    pub(super) fn wanted(
        self,
        finished: Option<Length>,
        flat: Option<Length>,
        placed: bool,
    ) -> Wanted {
        let width = match (flat, finished) {
            (Some(flat), _) => Some((Measure::Flat, self.part(flat))),
            (None, Some(finished)) => Some(self.finished_wanted(finished)),
            (None, None) => None,
        };
        let take_up = flat.zip(finished).map(|(flat, finished)| match self {
            Self::Whole | Self::RightOnly => flat - finished,
            Self::LeftMirrored | Self::RightMirrored => self.part(flat) - self.part(finished),
        });
        Wanted {
            take_up,
            width: width.filter(|_| !placed),
        }
    }

    /// The sum of the part described that settles a finished width. Where the left half is plain
    /// it is as wide as the right half is flat, and their sum is the width.
    pub(super) fn finished_wanted(self, finished: Length) -> (Measure, Length) {
        match self {
            Self::RightOnly => (Measure::FlatAndFinished, finished),
            _ => (Measure::Finished, self.part(finished)),
        }
    }

    /// The width of the panel for a sum of the part described; the other way round than
    /// [`Halves::wanted`].
    pub(super) fn panel_width(self, measure: Measure, sum: Length) -> Length {
        if measure == Measure::FlatAndFinished {
            sum
        } else {
            self.whole(sum)
        }
    }

    /// The way a fold points that lies `at` in the part described. On the centre line itself of a
    /// rule that knows no halves, toward the centre is to the left.
    pub(super) fn toward(self, order: TowardOrder, at: Length, flat: Length) -> Toward {
        let left_of_centre = match self {
            Self::Whole => at * 2 < flat,
            Self::LeftMirrored => true,
            Self::RightMirrored | Self::RightOnly => false,
        };
        match (order, left_of_centre) {
            (TowardOrder::Right, _) | (TowardOrder::Centre, true) | (TowardOrder::Edge, false) => {
                Toward::Right
            }
            (TowardOrder::Left, _) | (TowardOrder::Centre, false) | (TowardOrder::Edge, true) => {
                Toward::Left
            }
        }
    }
}
