//! What the beam is asked for: pieces, a length, and what may be wasted within it.

use pelmet_measure::Length;

use super::skyline::{Square, square};
use crate::given::LayoutCloth;
use crate::search::forms::Form;

/// A layout that is asked for.
pub(super) struct Task<'run, 'forms> {
    pub cloth: &'run LayoutCloth,
    /// Every form and how often it is cut, the narrowest first.
    pub forms: &'run [(&'forms Form, u32)],
    /// Nothing may lie beyond this.
    pub end: Length,
    /// How much cloth may be wasted.
    pub spare: Square,
    /// A little more than is wasted, so that large pieces are laid first even where nothing is.
    handicap: Square,
    /// How many bits of a square are left out where partial layouts are compared.
    coarseness: u32,
}

impl<'run, 'forms> Task<'run, 'forms> {
    /// These forms on one bolt of the cloth up to `end`; `None` where they have more area than that.
    ///
    /// A piece is counted with the gap to its right and below it, and the cloth as larger by one gap
    /// each way, as where bounds are reckoned: so a gap between two pieces wastes nothing, and what is
    /// left over once all areas are taken off is just what may be wasted.
    pub(super) fn new(
        cloth: &'run LayoutCloth,
        forms: &'run [(&'forms Form, u32)],
        end: Length,
    ) -> Option<Task<'run, 'forms>> {
        let of_all = |(form, count): &(&Form, u32)| {
            square(form.width + cloth.gap, form.length + cloth.gap).saturating_mul((*count).into())
        };
        let taken = forms.iter().map(of_all).fold(0, Square::saturating_add);
        let whole = square(cloth.usable_width + cloth.gap, end + cloth.gap);
        let spare = whole.checked_sub(taken)?;
        Some(Task {
            cloth,
            forms,
            end,
            spare,
            handicap: spare / 20,
            coarseness: coarseness(whole),
        })
    }

    /// How bad a partial layout is: the part of its cloth that it wastes. A piece that ends level with
    /// what is beside it makes the skyline simpler, and counts for a tenth better.
    ///
    /// All that are compared have as many pieces, but not as much cloth under them. Waste alone would
    /// favour those that have laid small pieces, for they have had less to waste; and then the large ones
    /// are left for last, when nothing remains to fill in beside them. Taken as a part of the cloth laid
    /// it favours large ones. Where nothing is wasted every part of it is nothing, so a little is added
    /// that all alike are held to have wasted (L. Libralesso and F. Fontan, "An anytime tree search
    /// algorithm for the 2018 ROADEF/EURO challenge glass cutting problem", European Journal of Operational
    /// Research 291, 2021, weigh waste in a like way).
    pub(super) fn rank(&self, wasted: Square, laid: Square, is_level: bool) -> u64 {
        let coarse = |square: Square| u64::try_from(square >> self.coarseness).unwrap_or(u64::MAX);
        let wasted = coarse(wasted.saturating_add(self.handicap));
        let weighed = wasted.saturating_mul(if is_level { 10 } else { 11 } << 16);
        weighed.checked_div(coarse(laid)).unwrap_or(u64::MAX)
    }

    /// The width of the narrowest form of which some are left, with the gap beyond it.
    pub(super) fn narrowest(&self, left: &[u32]) -> Length {
        let forms = self.forms.iter().zip(left).filter(|(_, left)| **left > 0);
        let width = |((form, _), _): (&(&Form, u32), &u32)| form.width + self.cloth.gap;
        forms.map(width).min().unwrap_or_default()
    }

    /// A form's width and length with the gap beyond it.
    pub(super) fn with_gap(&self, form: &Form) -> (Length, Length) {
        (form.width + self.cloth.gap, form.length + self.cloth.gap)
    }
}

/// How many bits must be left out of squares up to this one for a rank to have room in 64 bits: a rank
/// multiplies them by 11 x 2^16, which takes 20 bits, and keeps two to spare.
fn coarseness(square: Square) -> u32 {
    const ROOM: u32 = 42;
    Square::BITS
        .saturating_sub(square.leading_zeros())
        .saturating_sub(ROOM)
}
