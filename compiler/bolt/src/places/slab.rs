//! One slab of a shape: a band across the bolt with straight sides, a trapezoid.

use pelmet_measure::Length;

/// A band with straight sides. `left` and `right` say where these lie across, where the band starts
/// along the bolt and where it ends.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(super) struct Slab {
    pub start: Length,
    pub end: Length,
    pub left: [Length; 2],
    pub right: [Length; 2],
}

/// The places in one direction that one piece denies to another: all between the first and the second,
/// but not these two themselves, where the pieces touch. A slice through what nesting calls the no-fit
/// polygon of the two (J. A. Bennell and J. F. Oliveira, "The geometry of nesting problems: a
/// tutorial", European Journal of Operational Research 184, 2008).
pub(crate) type NoFit = (Length, Length);

/// One of the two sides of a slab.
#[derive(Copy, Clone)]
enum Side {
    Left,
    Right,
}

/// Which way a place between two whole nanometres is moved.
#[derive(Copy, Clone, PartialEq, Eq)]
pub(super) enum Rounding {
    Down,
    Up,
}

impl Slab {
    /// The places across, as seen from this slab, that `theirs` may not have when its shape lies so
    /// far `ahead` along the bolt.
    ///
    /// On one line across the bolt they are those from where its right side meets our left one to where
    /// its left side meets our right one. From line to line both ends move at a steady rate, for all
    /// sides are straight. So over the length that the two share the outermost ends lie where it begins
    /// or where it stops, and nothing between is left out: the places denied on neighbouring lines run
    /// into each other.
    pub(super) fn no_fit(&self, theirs: &Slab, ahead: Length) -> NoFit {
        let start = self.start.max(theirs.start + ahead);
        let end = self.end.min(theirs.end + ahead);
        let from = |along| self.left_at(along) - theirs.right_at(along - ahead);
        let to = |along| self.right_at(along) - theirs.left_at(along - ahead);
        (from(start).min(from(end)), to(start).max(to(end)))
    }

    /// The slab grown by so much to every side: all that a square of twice the size covers whose middle
    /// goes wherever the slab is (the Minkowski sum of the two). It takes a square and not a disc
    /// because pieces keep their gap along or across, as the shears go between them.
    ///
    /// Seen from one line, the square reaches the stretch of the slab from `by` before to `by` after
    /// it, and of that whichever end of a side lies outermost. Which one that is changes where the
    /// stretch comes to lie partly outside the slab: on four lines, between which sides stay straight.
    pub(super) fn grown(&self, by: Length) -> impl Iterator<Item = Slab> + use<> {
        let slab = *self;
        let left = move |along| slab.left_at(slab.outermost(Side::Left, along, by)) - by;
        let right = move |along| slab.right_at(slab.outermost(Side::Right, along, by)) + by;
        let mut lines = [
            slab.start - by,
            slab.start + by,
            slab.end - by,
            slab.end + by,
        ];
        lines.sort_unstable();
        let [first, second, third, last] = lines;
        [(first, second), (second, third), (third, last)]
            .into_iter()
            .filter(|(start, end)| start < end)
            .map(move |(start, end)| Slab {
                start,
                end,
                left: [left(start), left(end)],
                right: [right(start), right(end)],
            })
    }

    /// Where, within `by` of a line, a side lies outermost: at the end of what is within reach toward
    /// which it leans outward.
    fn outermost(&self, side: Side, along: Length, by: Length) -> Length {
        let leans_out_toward_end = match (side, self.left, self.right) {
            (Side::Left, [at_start, at_end], _) => at_end < at_start,
            (Side::Right, _, [at_start, at_end]) => at_end > at_start,
        };
        if leans_out_toward_end {
            (along + by).min(self.end).max(self.start)
        } else {
            (along - by).max(self.start).min(self.end)
        }
    }

    /// The area of the band, rounded down.
    pub(super) fn area(&self) -> u128 {
        let side = |length: Length| u128::try_from(length.nanometres()).unwrap_or(0);
        let [left, left_end] = self.left;
        let [right, right_end] = self.right;
        let both = side(right - left).saturating_add(side(right_end - left_end));
        both.saturating_mul(side(self.end - self.start)) / 2
    }

    fn left_at(&self, along: Length) -> Length {
        on_side((self.left, [self.start, self.end]), along, Rounding::Down)
    }

    fn right_at(&self, along: Length) -> Length {
        on_side((self.right, [self.start, self.end]), along, Rounding::Up)
    }
}

/// Where a straight side lies across at a line along, to the whole nanometre; the side is told by its
/// two places across, and the two along. Left sides are rounded down and right sides up, so that a slab
/// never covers less than its shape, and two pieces never come nearer than they may.
pub(super) fn on_side(
    side: ([Length; 2], [Length; 2]),
    along: Length,
    rounding: Rounding,
) -> Length {
    let ([from, to], [start, end]) = side;
    if from == to || end <= start {
        return from;
    }
    let over = i128::from((along - start).nanometres());
    let times = over.saturating_mul((to - from).nanometres().into());
    let whole = i128::from((end - start).nanometres());
    let rounded = match rounding {
        Rounding::Down => quotient(times, whole),
        Rounding::Up => quotient(times.saturating_neg(), whole).map(i64::saturating_neg),
    };
    from + Length::from_nanometres(rounded.unwrap_or(0))
}

/// A quotient rounded down. Mostly both numbers have room in 64 bits, where it takes less time.
fn quotient(number: i128, by: i128) -> Option<i64> {
    match (i64::try_from(number), i64::try_from(by)) {
        (Ok(number), Ok(by)) => number.checked_div_euclid(by),
        _ => i64::try_from(number.checked_div_euclid(by)?).ok(),
    }
}
