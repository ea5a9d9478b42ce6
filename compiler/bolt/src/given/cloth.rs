//! What pieces are laid on.

use pelmet_measure::Length;

use super::flaw::BoltFlaw;

/// The cloth as the layout sees it: a strip as wide as what may be used of it, and without an end
/// unless `bolt_length` gives it one.
///
/// Places on it are measured across from the left end of the usable width, and along from the
/// start of the bolt. The start of every bolt and the left end of the usable width are lines of
/// the print.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct LayoutCloth {
    /// The width pieces may use: the whole width less the selvages.
    pub usable_width: Length,
    /// The least distance between two pieces, for the shears.
    pub gap: Length,
    /// The print's period along the bolt, where it has one.
    pub repeat_along: Option<Length>,
    /// The print's period across the bolt, where it has one.
    pub repeat_across: Option<Length>,
    /// Whether every other column of the print, one repeat across wide, lies half a repeat
    /// further along.
    pub half_drop: bool,
    /// Whether the print or pile has a top, so that no piece may be turned end for end.
    pub one_way: bool,
    /// The longest continuous length to be had; `None` where the bolt has no end that matters.
    pub bolt_length: Option<Length>,
    /// Lengths are bought in multiples of this.
    pub buying_step: Length,
    /// What no piece may lie on.
    pub flaws: Vec<BoltFlaw>,
}

impl LayoutCloth {
    /// The flaws of one bolt, numbered from 0.
    pub(crate) fn flaws_of(&self, bolt: u32) -> impl Iterator<Item = &BoltFlaw> {
        self.flaws.iter().filter(move |flaw| flaw.bolt == bolt)
    }

    /// Where a bolt ends; one without an end goes on further than any layout can.
    pub(crate) fn bolt_end(&self) -> Length {
        let endless = Length::from_nanometres(i64::MAX);
        self.bolt_length.unwrap_or(endless)
    }
}
