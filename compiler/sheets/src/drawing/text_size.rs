//! Words on a drawing: how large they are, and where they stand from their place.

use pelmet_lettering::FontWeight;

/// Where words stand from their place.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(crate) enum Align {
    Left,
    Middle,
    Right,
}

/// How large words are.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(crate) enum TextSize {
    Small,
    Plain,
    Large,
}

impl TextSize {
    /// The height of a line of type, in millimetres.
    pub(crate) fn millimetres(self) -> f64 {
        match self {
            Self::Small => 2.6,
            Self::Plain => 3.2,
            Self::Large => 5.0,
        }
    }
}

/// Whether words of this size have room in a width.
pub(crate) fn fits(text: &str, size: TextSize, width: f64) -> bool {
    width_of(text, size) <= width
}

/// How wide words of this size are, in millimetres.
pub(crate) fn width_of(text: &str, size: TextSize) -> f64 {
    FontWeight::Plain.width(text) * size.millimetres()
}
