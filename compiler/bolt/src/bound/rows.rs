//! Whether pieces that the print holds find room in rows of the repeat.
//!
//! A row reaches from one line of the print to the next. A piece takes its width from every row it
//! lies in, for all that lie in a row lie abreast at its start. Where across the cloth they lie is
//! left open, so pieces that find no room here find none in any layout. (With rows as thin as the
//! lengths allow this is the contiguous bin packing of S. Martello, M. Monaci and D. Vigo, "An exact
//! approach to the strip-packing problem", INFORMS Journal on Computing 15, 2003; the print gives few
//! and thick rows, so that here it can often be settled by trying.)

use std::collections::BTreeSet;
use std::ops::Range;

use pelmet_measure::Length;

use super::held::common_lines;
use crate::given::LayoutCloth;
use crate::places::{Cut, PrintLines};

/// So many rows are tried at most for one bound, over all pieces.
const MOST_ATTEMPTS: u32 = 50_000;

/// So many lengths are asked about for one bound.
const MOST_LENGTHS: usize = 50;

/// With more rows than these the attempts would not come far.
const MOST_ROWS: usize = 200;

/// The least length, from `bound` on, in which these cuts may find room; `bound` where the
/// attempts show nothing more.
///
/// A layout ends where one of its pieces does, and held pieces end on few places: so only these lengths
/// are asked about, from the shortest on, until one has room or the attempts run out. In none of the
/// earlier ones the pieces find any, so the layout is as long as the one that was reached.
pub(super) fn lower_bound(cloth: &LayoutCloth, cuts: &[&Cut], bound: Length) -> Length {
    let Some(lines) = common_lines(cuts).filter(|lines| lines.period.is_positive()) else {
        return bound;
    };
    // The widest find room in fewest ways: tried first, they fail early where all must fail.
    let mut widest_first = cuts.to_vec();
    widest_first.sort_by_key(|cut| (-cut.width, -cut.length, cut.grids));
    let mut attempts = MOST_ATTEMPTS;
    let mut has_no_room = |end: &Length| {
        let rows = Rows::within(cloth, lines, *end);
        rows.is_some_and(|mut rows| rows.find_room(&widest_first, 0, &mut attempts) == Room::None)
    };
    let ends = ends(cuts, lines, bound);
    match ends.iter().take_while(|end| has_no_room(end)).count() {
        0 => bound,
        too_short => ends
            .get(too_short)
            .or(ends.last())
            .copied()
            .unwrap_or(bound),
    }
}

/// The lengths at which the last of these cuts may end, from `bound` on, and the one before these: pieces
/// that are not held may be all that reaches `bound`. Only where the held ones find no room in the longest
/// length under it must the last of them end at one of those that come after.
fn ends(cuts: &[&Cut], lines: PrintLines, bound: Length) -> Vec<Length> {
    let ends_of = |cut: &&Cut| {
        let length = cut.length;
        let first = lines.at_or_after(bound - length).max(lines.first) + length;
        let first = first - lines.period;
        let next = move |end: &Length| Some(*end + lines.period);
        std::iter::successors(Some(first), next).take(MOST_LENGTHS)
    };
    let ends: BTreeSet<Length> = cuts.iter().flat_map(ends_of).collect();
    let before = ends.range(..bound).next_back();
    let ends = before.into_iter().chain(ends.range(bound..));
    ends.take(MOST_LENGTHS).copied().collect()
}

/// What the attempts to find room come to.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
enum Room {
    Some,
    None,
    /// The attempts ran out.
    Unknown,
}

/// The rows of a cloth, and the width that is free in each.
struct Rows {
    gap: Length,
    lines: PrintLines,
    end: Length,
    free: Vec<Length>,
}

impl Rows {
    /// Empty rows up to `end`; `None` where there are too many.
    fn within(cloth: &LayoutCloth, lines: PrintLines, end: Length) -> Option<Rows> {
        let starts = std::iter::successors(Some(lines.first), |line| Some(*line + lines.period));
        let count = starts
            .take(MOST_ROWS.saturating_add(1))
            .take_while(|line| *line < end + cloth.gap)
            .count();
        (count <= MOST_ROWS).then(|| Rows {
            gap: cloth.gap,
            lines,
            end,
            free: vec![cloth.usable_width + cloth.gap; count],
        })
    }

    /// Looks for room for all these cuts: for the first in each row in turn, and then for the others in
    /// what that leaves (backtracking). A cut like the one before it starts in no earlier row than that
    /// one, `from`: two that are alike need not be tried in both orders.
    ///
    /// That the attempts ran out comes back up at once, like room that is found: only if every row was
    /// tried in vain is there none.
    fn find_room(&mut self, cuts: &[&Cut], from: usize, attempts: &mut u32) -> Room {
        let Some((cut, rest)) = cuts.split_first() else {
            return Room::Some;
        };
        let next_is_alike = rest.first().is_some_and(|next| {
            (next.width, next.length, next.grids) == (cut.width, cut.length, cut.grids)
        });
        let mut line = self.lines.first;
        for row in 0..self.free.len() {
            let (start, end) = (line, line + cut.length);
            line += self.lines.period;
            if end > self.end {
                break;
            }
            if row < from || !may_start(cut, start) {
                continue;
            }
            *attempts = attempts.saturating_sub(1);
            if *attempts == 0 {
                return Room::Unknown;
            }
            let width = cut.width + self.gap;
            let rows = row..row.saturating_add(self.rows_over(end + self.gap - start));
            if !self.are_free(rows.clone(), width) {
                continue;
            }
            self.take(rows.clone(), width);
            let from = if next_is_alike { row } else { 0 };
            let found = self.find_room(rest, from, attempts);
            self.take(rows, -width);
            if found != Room::None {
                return found;
            }
        }
        Room::None
    }

    /// How many rows so much length from a line on reaches into.
    fn rows_over(&self, length: Length) -> usize {
        let period = self.lines.period;
        let rows = length.round_up_to(period).nanometres();
        let rows = rows.checked_div(period.nanometres());
        rows.and_then(|rows| usize::try_from(rows).ok())
            .unwrap_or(0)
    }

    fn are_free(&self, rows: Range<usize>, width: Length) -> bool {
        let free = self.free.get(rows).unwrap_or_default();
        free.iter().all(|free| *free >= width)
    }

    fn take(&mut self, rows: Range<usize>, width: Length) {
        for free in self.free.get_mut(rows).unwrap_or_default() {
            *free -= width;
        }
    }
}

/// Whether the print lets a cut start on a line.
fn may_start(cut: &Cut, line: Length) -> bool {
    let mut grids = cut.grids.iter();
    grids.any(|grid| grid.along.at_or_after(line) == line)
}
