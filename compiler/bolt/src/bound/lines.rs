//! What lies across lines of the print: a bound for cloth on which some pieces are held and others are
//! free.
//!
//! Take all lines so far from the start of the bolt and on in steps of the repeat. A piece that the
//! print holds lies across as many of them as its phase and length say; a free one across no fewer
//! than the whole repeats in its length. All that lie across one line lie abreast, so the lines that
//! are needed at least follow from the widths.

use std::collections::BTreeMap;

use pelmet_measure::Length;

use super::blocks::count;
use super::dual_feasible::{DualFeasible, dual_feasible_functions};
use super::held::is_held;
use crate::given::LayoutCloth;
use crate::places::Cut;

/// So many widths are tried for each way of counting widths.
const MOST_WIDTHS: usize = 12;

/// So many sets of lines are tried for one bound.
const MOST_SETS: usize = 24;

/// The least length that any set of lines shows, which is the greatest of what they show; zero where the
/// cloth has no repeat along.
///
/// The last gap is taken off: behind the last piece the shears need none.
pub(super) fn lower_bound(cloth: &LayoutCloth, cuts: &[Cut]) -> Length {
    let Some(repeat) = cloth.repeat_along.filter(|repeat| repeat.is_positive()) else {
        return Length::ZERO;
    };
    let alike = alike(cloth, cuts);
    let whole = count(cloth.usable_width + cloth.gap);
    let widths = alike.keys().map(|(width, ..)| count(*width));
    let functions = dual_feasible_functions(whole, widths, MOST_WIDTHS);
    let sets = sets_of_lines(&alike, repeat);
    let bounds = sets.into_iter().filter_map(|first| {
        let lines = SetOfLines { first, repeat };
        lines.bound(&alike, whole, &functions)
    });
    bounds.max().map_or(Length::ZERO, |bound| bound - cloth.gap)
}

/// Width and length with the gap beyond them, and where the print lets a piece start: nowhere in
/// particular for a free one.
type Kind = (Length, Length, Vec<Length>);

/// How many cuts there are of each kind.
fn alike(cloth: &LayoutCloth, cuts: &[Cut]) -> BTreeMap<Kind, u64> {
    let mut alike = BTreeMap::new();
    for cut in cuts {
        let starts = || cut.grids.iter().map(|grid| grid.along.first).collect();
        let starts = if is_held(cut) { starts() } else { Vec::new() };
        let kind = (cut.width + cloth.gap, cut.length + cloth.gap, starts);
        let number: &mut u64 = alike.entry(kind).or_default();
        *number = number.saturating_add(1);
    }
    alike
}

/// Where the lines may begin to tell something: where pieces start and just before they end.
///
/// Moved on a little, a set of lines lies across the same pieces until it comes to where one starts, and
/// lies across one more, or leaves the end of one behind, and lies across one less. It lies across the
/// most from the start of some piece to the end of some other: so these two are tried, for each piece.
fn sets_of_lines(alike: &BTreeMap<Kind, u64>, repeat: Length) -> Vec<Length> {
    let within = |place: Length| place - place.round_down_to(repeat);
    let nanometre = Length::from_nanometres(1);
    let mut sets: Vec<Length> = alike
        .keys()
        .flat_map(|(_, length, starts)| {
            starts
                .iter()
                .flat_map(move |start| [*start, *start + *length - nanometre])
        })
        .map(within)
        .collect();
    sets.sort_unstable();
    sets.dedup();
    let each = sets.len().div_ceil(MOST_SETS).max(1);
    sets.into_iter().step_by(each).collect()
}

/// Lines in steps of the repeat, the first no further than one repeat from the start.
#[derive(Copy, Clone)]
struct SetOfLines {
    first: Length,
    repeat: Length,
}

impl SetOfLines {
    /// Where the piece ends that lies across the last line needed, with the gap beyond it; `None`
    /// where no piece lies across a line for sure.
    ///
    /// Every crossing takes a width from a line. All pieces together need so many crossings, counted by a
    /// dual-feasible function of the widths; a line has room for the whole width; so at least so many
    /// lines have a piece across them. Whichever piece lies across the last of these, it ends no nearer
    /// behind it than the piece does that ends soonest behind its last line.
    fn bound(
        &self,
        alike: &BTreeMap<Kind, u64>,
        whole: u64,
        functions: &[DualFeasible],
    ) -> Option<Length> {
        let crossing = |((width, length, starts), number): (&Kind, &u64)| {
            let (lines, beyond) = self.crossed(*length, starts)?;
            Some((count(*width), lines.saturating_mul(*number), beyond))
        };
        let crossing: Vec<(u64, u64, Length)> = alike.iter().filter_map(crossing).collect();
        let beyond = crossing.iter().map(|(.., beyond)| *beyond).min()?;
        let needed = |function: &DualFeasible| {
            let taken = crossing.iter().map(|(width, lines, _)| {
                u128::from(function.of(*width, whole)).saturating_mul((*lines).into())
            });
            let taken = taken.fold(0, u128::saturating_add);
            let room = u128::from(function.of_whole(whole)).max(1);
            i64::try_from(taken.div_ceil(room)).unwrap_or(0)
        };
        let needed = functions.iter().map(needed).max()?;
        Some(self.first + self.repeat * needed.saturating_sub(1) + beyond)
    }

    /// How many lines a piece lies across at least, and how far it reaches beyond the last of them;
    /// `None` where it may lie across none.
    ///
    /// Held by the print, a piece starts so far from the lines in every repeat alike, and where the print
    /// gives it a choice the least of it counts. A free one lies across as many as its whole repeats,
    /// wherever it lies, and at worst ends just behind a line.
    fn crossed(&self, length: Length, starts: &[Length]) -> Option<(u64, Length)> {
        let nanometre = Length::from_nanometres(1);
        if starts.is_empty() {
            let whole = self.repeats(length);
            return (whole > 0).then_some((whole, nanometre));
        }
        let held = starts.iter().map(|start| {
            let end = *start + length;
            let last = (end - self.first - nanometre).round_down_to(self.repeat) + self.first;
            let next = (*start - self.first).round_up_to(self.repeat) + self.first;
            let crossed = self.repeats(last + self.repeat - next);
            (crossed, end - last)
        });
        let (lines, beyond) = held.reduce(|one, other| (one.0.min(other.0), one.1.min(other.1)))?;
        (lines > 0).then_some((lines, beyond))
    }

    /// How many whole repeats go into a length.
    fn repeats(&self, length: Length) -> u64 {
        count(length)
            .checked_div(count(self.repeat))
            .unwrap_or_default()
    }
}
