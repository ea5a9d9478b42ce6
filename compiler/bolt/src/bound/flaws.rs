//! What flaws across the whole cloth add to a bound.
//!
//! Take a stretch away that no piece may lie in, and move all that lies beyond it up to where it
//! began, less what the shears need there: that is a layout of the cloth without the flaw. Where the
//! print holds pieces they move up by whole repeats.

use pelmet_measure::Length;

use crate::given::LayoutCloth;
use crate::places::Cut;

/// Stretches in which no cut has room, in order along the bolt and apart from each other.
pub(super) struct Bars<'cloth> {
    cloth: &'cloth LayoutCloth,
    bars: Vec<(Length, Length)>,
}

impl Bars<'_> {
    /// What bars the first bolt to all these cuts.
    pub(super) fn of<'cloth>(cloth: &'cloth LayoutCloth, cuts: &[Cut]) -> Bars<'cloth> {
        let narrowest = cuts.iter().map(|cut| cut.width).min().unwrap_or_default();
        Bars {
            cloth,
            bars: bars(cloth, narrowest),
        }
    }

    /// Some piece lies on some line of the print, and on no flaw that bars its way.
    pub(super) fn latest_end(&self, cuts: &[Cut]) -> Length {
        let end = |cut: &Cut| {
            let (width, usable) = (cut.width, self.cloth.usable_width);
            let first = |from| cut.first_place(from, usable).along;
            let mut along = first(Length::ZERO);
            for (from, to) in bars(self.cloth, width) {
                if from < along + cut.length && along < to {
                    along = first(to);
                }
            }
            along + cut.length
        };
        cuts.iter().map(end).max().unwrap_or_default()
    }

    /// The bound for the cloth with its flaws, from one for the cloth without them, where pieces lie
    /// on lines so far apart.
    ///
    /// Bar by bar, in order along the bolt: where the bound ends beyond the start of a bar, some piece lies
    /// behind it, and the layout is longer by the bar. The gap is taken off, for a piece may lie right
    /// against a flaw, where without it two pieces would keep a gap.
    pub(super) fn past_each(&self, without: Length, lines: Length) -> Length {
        let past = |bound: Length, (from, to): &(Length, Length)| {
            let moved = (*to - *from - self.cloth.gap).round_down_to(lines);
            if bound > *from {
                bound + moved.max(Length::ZERO)
            } else {
                bound
            }
        };
        self.bars.iter().fold(without, past)
    }
}

/// The stretches of the first bolt in which nothing so wide has room, in order. Where two lie over each
/// other, the later one begins where the earlier one ends, so that no cloth is counted twice.
fn bars(cloth: &LayoutCloth, width: Length) -> Vec<(Length, Length)> {
    let mut barred: Vec<(Length, Length)> = cloth
        .flaws_of(0)
        .filter(|flaw| flaw.bars(width, cloth.usable_width))
        .map(|flaw| (flaw.from, flaw.to))
        .collect();
    barred.sort_unstable();
    let mut free = Length::ZERO;
    for (from, to) in &mut barred {
        *from = free.max(*from);
        free = free.max(*to);
    }
    barred.retain(|(from, to)| from < to);
    barred
}
