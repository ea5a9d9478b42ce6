//! Flaws to cut around: parts of a bolt that no piece may lie on.

use pelmet_measure::Length;

use crate::Cloth;
use crate::cut::Cut;
use crate::space::{Place, Space};

/// A part of a bolt that no piece may lie on. A piece may lie right against it, for nobody cuts
/// there but to cut the flaw away.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub struct Flaw {
    /// Which bolt has it, from 0.
    pub bolt: u32,
    /// Where it begins, from the start of the bolt.
    pub from: Length,
    /// Where it ends, from the start of the bolt.
    pub to: Length,
    /// Its left edge, from the left end of the usable width.
    pub left: Length,
    /// Its right edge, from the left end of the usable width.
    pub right: Length,
}

impl Flaw {
    /// The cloth it takes.
    pub(crate) fn space(&self) -> Space {
        let at = |across, along| Place { across, along };
        Space {
            near: at(self.left, self.from),
            far: at(self.right, self.to),
        }
    }

    /// Whether a piece so wide has no room beside it.
    pub(crate) fn bars(&self, width: Length, usable: Length) -> bool {
        self.left < width && usable - self.right < width
    }
}

impl Cloth {
    /// The flaws of one bolt.
    pub(crate) fn flaws_of(&self, bolt: u32) -> impl Iterator<Item = &Flaw> {
        self.flaws.iter().filter(move |flaw| flaw.bolt == bolt)
    }

    /// Where the flaw ends that the space lies on; the last such end of several.
    pub(crate) fn end_of_flaw_under(&self, bolt: u32, space: &Space) -> Option<Length> {
        let under = |flaw: &&Flaw| flaw.space().meets(space);
        self.flaws_of(bolt).filter(under).map(|flaw| flaw.to).max()
    }

    /// The place for a cut nearest the start of a bolt that is not before `from` and on no flaw.
    pub(crate) fn first_sound_place(&self, bolt: u32, cut: &Cut, from: Length) -> Place {
        let mut place = cut.first_place(from, self.usable_width);
        while let Some(end) = self.end_of_flaw_under(bolt, &cut.space_at(place)) {
            place = cut.first_place(end, self.usable_width);
        }
        place
    }

    /// The bolt after which none has a flaw.
    pub(crate) fn last_bolt_with_flaw(&self) -> u32 {
        self.flaws.iter().map(|flaw| flaw.bolt).max().unwrap_or(0)
    }

    /// Whether a piece without room on a bolt used so far may find it on the next: no bolt is better
    /// than one that is unused and has no flaw.
    pub(crate) fn has_better_bolt(&self, bolt: u32, used: Length) -> bool {
        used.is_positive() || bolt <= self.last_bolt_with_flaw()
    }

    /// The sound rectangles of a space on a bolt, kept `gap` apart.
    pub(crate) fn sound_parts(&self, bolt: u32, space: Space) -> Vec<Space> {
        let mut parts = vec![space];
        for flaw in self.flaws_of(bolt).map(Flaw::space) {
            parts = parts
                .into_iter()
                .flat_map(|part| without(part, &flaw, self.gap))
                .collect();
        }
        parts
    }
}

fn without(part: Space, flaw: &Space, gap: Length) -> Vec<Space> {
    if !flaw.meets(&part) {
        return vec![part];
    }
    let around = part.around(&flaw.within(&part), gap);
    let is_there = |space: &Space| space.width().is_positive() && space.length().is_positive();
    around.into_iter().filter(is_there).collect()
}
