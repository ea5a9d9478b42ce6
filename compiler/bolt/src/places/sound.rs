//! Sound cloth: what the flaws of a bolt leave.

use pelmet_measure::Length;

use super::cut::Cut;
use super::space::{Place, Space};
use crate::given::{BoltFlaw, LayoutCloth};

impl BoltFlaw {
    /// The cloth it takes.
    fn space(&self) -> Space {
        let at = |across, along| Place { across, along };
        Space {
            near: at(self.left, self.from),
            far: at(self.right, self.to),
        }
    }

    /// Whether a piece so wide has no room beside it, to its left or to its right.
    pub(crate) fn bars(&self, width: Length, usable: Length) -> bool {
        self.left < width && usable - self.right < width
    }
}

impl LayoutCloth {
    /// The last place of a bolt.
    pub(crate) fn far_corner(&self) -> Place {
        Place {
            across: self.usable_width,
            along: self.bolt_end(),
        }
    }

    /// Where the flaw ends that the space lies on; the last such end of several.
    fn end_of_flaw_under(&self, bolt: u32, space: &Space) -> Option<Length> {
        let under = |flaw: &&BoltFlaw| flaw.space().meets(space);
        self.flaws_of(bolt).filter(under).map(|flaw| flaw.to).max()
    }

    /// The first place from `from` on along a bolt whose `space` lies on no flaw; `first_from` finds the
    /// first that the print allows.
    ///
    /// It comes to an end because the flaws do: each further turn begins at the end of a flaw, at or
    /// after which all that is found from then on lies.
    pub(crate) fn past_flaws<At: Copy>(
        &self,
        bolt: u32,
        from: Length,
        first_from: impl Fn(Length) -> At,
        space: impl Fn(At) -> Space,
    ) -> At {
        let mut at = first_from(from);
        while let Some(end) = self.end_of_flaw_under(bolt, &space(at)) {
            at = first_from(end);
        }
        at
    }

    /// The place for a cut nearest the start of a bolt that is not before `from` and on no flaw.
    pub(crate) fn first_sound_place(&self, bolt: u32, cut: &Cut, from: Length) -> Place {
        let first_from = |from| cut.first_place(from, self.usable_width);
        self.past_flaws(bolt, from, first_from, |place| cut.space_at(place))
    }

    /// Whether a piece without room on a bolt used so far may find it on the next: no bolt is better
    /// than one that is unused and has no flaw.
    pub(crate) fn has_better_bolt(&self, bolt: u32, used: Length) -> bool {
        let last_with_flaw = self.flaws.iter().map(|flaw| flaw.bolt).max();
        used.is_positive() || bolt <= last_with_flaw.unwrap_or(0)
    }

    /// The sound rectangles of a space on a bolt, kept `gap` apart: what is left of it once every flaw
    /// is cut out, so that the shears have room between two pieces there too.
    pub(crate) fn sound_parts(&self, bolt: u32, space: Space) -> Vec<Space> {
        let mut parts = vec![space];
        for flaw in self.flaws_of(bolt).map(BoltFlaw::space) {
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
