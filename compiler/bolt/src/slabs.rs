//! A shape in slabs: bands with straight sides, so that what two shapes deny each other is a sum.
//!
//! At a given distance along the bolt, two slabs that share some of the bolt's length deny each
//! other the places between their sides. Sides are straight, so the outermost of these places lies
//! where the shared length begins or where it ends.

use pelmet_measure::Length;

use crate::outline::{Corner, Outline};

/// A band with straight sides, left and right where it starts and where it ends.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
struct Slab {
    start: Length,
    end: Length,
    left: [Length; 2],
    right: [Length; 2],
}

/// Slabs that cover a shape, by their start.
#[derive(Clone, PartialEq, Eq, Debug)]
pub(crate) struct Slabs {
    slabs: Vec<Slab>,
    longest: Length,
}

/// Places between two, but not these themselves.
pub(crate) type Between = (Length, Length);

impl Slabs {
    /// A rectangle.
    pub(crate) fn rectangle(width: Length, length: Length) -> Slabs {
        Slabs::of(vec![Slab {
            start: Length::ZERO,
            end: length,
            left: [Length::ZERO; 2],
            right: [width; 2],
        }])
    }

    /// What lies within an outline.
    pub(crate) fn within(outline: &Outline) -> Slabs {
        let mut lines: Vec<Length> = outline
            .corners()
            .iter()
            .map(|corner| corner.along)
            .collect();
        lines.sort_unstable();
        lines.dedup();
        let sides = sides(outline);
        let bands = lines.iter().zip(lines.iter().skip(1));
        Slabs::of(
            bands
                .flat_map(|(start, end)| in_band(&sides, *start, *end))
                .collect(),
        )
    }

    /// Grown by so much in every direction, across and along.
    pub(crate) fn grown(&self, by: Length) -> Slabs {
        Slabs::of(self.slabs.iter().flat_map(|slab| slab.grown(by)).collect())
    }

    /// How many slabs there are.
    pub(crate) fn count(&self) -> usize {
        self.slabs.len()
    }

    /// The area they cover where they do not lie over each other, rounded down.
    pub(crate) fn area(&self) -> u128 {
        self.slabs
            .iter()
            .map(Slab::area)
            .fold(0, u128::saturating_add)
    }

    /// The width and length of a rectangle at the top left corner that the slabs cover.
    pub(crate) fn whole_from_top_left(&self) -> (Length, Length) {
        let (mut width, mut end) = (Length::ZERO, Length::ZERO);
        for slab in &self.slabs {
            let [left, left_end] = slab.left;
            let [right, right_end] = slab.right;
            let goes_on = slab.start == end && left.is_zero() && left_end.is_zero();
            if goes_on && (end.is_zero() || right.min(right_end) >= width) {
                end = slab.end;
                width = if width.is_zero() {
                    right.min(right_end)
                } else {
                    width
                };
            }
        }
        (width, end)
    }

    /// The places across, as seen from these slabs, that `other` may not have when it lies so far
    /// `ahead` along the bolt.
    pub(crate) fn denied(&self, other: &Slabs, ahead: Length) -> Vec<Between> {
        let mut denied = Vec::new();
        for theirs in &other.slabs {
            let (start, end) = (theirs.start + ahead, theirs.end + ahead);
            let first = self
                .slabs
                .partition_point(|ours| ours.start + self.longest <= start);
            let rest = self.slabs.get(first..).unwrap_or_default();
            let reached = rest.iter().take_while(|ours| ours.start < end);
            for ours in reached.filter(|ours| ours.end > start) {
                denied.push(ours.denied(theirs, ahead));
            }
        }
        joined(denied)
    }

    fn of(mut slabs: Vec<Slab>) -> Slabs {
        slabs.sort_by_key(|slab| (slab.start, slab.left, slab.right));
        let longest = slabs.iter().map(|slab| slab.end - slab.start).max();
        Slabs {
            slabs,
            longest: longest.unwrap_or_default(),
        }
    }
}

impl Slab {
    fn left_at(&self, along: Length) -> Length {
        on_side((self.left, [self.start, self.end]), along, Rounding::Down)
    }

    fn right_at(&self, along: Length) -> Length {
        on_side((self.right, [self.start, self.end]), along, Rounding::Up)
    }

    fn denied(&self, theirs: &Slab, ahead: Length) -> Between {
        let start = self.start.max(theirs.start + ahead);
        let end = self.end.min(theirs.end + ahead);
        let from = |along| self.left_at(along) - theirs.right_at(along - ahead);
        let to = |along| self.right_at(along) - theirs.left_at(along - ahead);
        (from(start).min(from(end)), to(start).max(to(end)))
    }

    /// The slab seen through a square hole that moves along all its sides.
    fn grown(&self, by: Length) -> impl Iterator<Item = Slab> + use<> {
        let slab = *self;
        let left = move |along| slab.left_at(slab.outermost(slab.left, true, along, by)) - by;
        let right = move |along| slab.right_at(slab.outermost(slab.right, false, along, by)) + by;
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

    /// Where, within `by` of a line, a side lies outermost.
    fn outermost(&self, side: [Length; 2], is_left: bool, along: Length, by: Length) -> Length {
        let [at_start, at_end] = side;
        let at_its_end = if is_left {
            at_end < at_start
        } else {
            at_end > at_start
        };
        if at_its_end {
            (along + by).min(self.end).max(self.start)
        } else {
            (along - by).max(self.start).min(self.end)
        }
    }

    fn area(&self) -> u128 {
        let side = |length: Length| u128::try_from(length.nanometres()).unwrap_or(0);
        let [left, left_end] = self.left;
        let [right, right_end] = self.right;
        let both = side(right - left).saturating_add(side(right_end - left_end));
        both.saturating_mul(side(self.end - self.start)) / 2
    }
}

/// A side of an outline, from its upper corner to its lower one.
type Side = (Corner, Corner);

fn sides(outline: &Outline) -> Vec<Side> {
    let corners = outline.corners();
    let next = corners.iter().cycle().skip(1);
    let down = |(one, other): (&Corner, &Corner)| {
        if one.along <= other.along {
            (*one, *other)
        } else {
            (*other, *one)
        }
    };
    corners.iter().zip(next).map(down).collect()
}

/// The slabs of a band that no corner lies in: between every other two sides.
fn in_band(sides: &[Side], start: Length, end: Length) -> Vec<Slab> {
    let across = |side: &Side, along, rounding| {
        let (upper, lower) = side;
        on_side(
            ([upper.across, lower.across], [upper.along, lower.along]),
            along,
            rounding,
        )
    };
    let mut crossing: Vec<&Side> = sides
        .iter()
        .filter(|(upper, lower)| upper.along <= start && end <= lower.along)
        .collect();
    let middle = start + (end - start).divided(2);
    crossing.sort_by_key(|side| {
        let ends = across(side, start, Rounding::Down) + across(side, end, Rounding::Down);
        (across(side, middle, Rounding::Down), ends)
    });
    let pairs = crossing.chunks_exact(2).filter_map(|pair| match pair {
        [left, right] => Some((*left, *right)),
        _ => None,
    });
    pairs
        .map(|(left, right)| Slab {
            start,
            end,
            left: [start, end].map(|along| across(left, along, Rounding::Down)),
            right: [start, end].map(|along| across(right, along, Rounding::Up)),
        })
        .collect()
}

#[derive(Copy, Clone, PartialEq, Eq)]
enum Rounding {
    Down,
    Up,
}

/// Where a straight side lies across at a line along, to the whole nanometre.
fn on_side(side: ([Length; 2], [Length; 2]), along: Length, rounding: Rounding) -> Length {
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

/// The same places in as few parts as there can be, in order.
fn joined(mut parts: Vec<Between>) -> Vec<Between> {
    parts.sort_unstable();
    let mut joined: Vec<Between> = Vec::with_capacity(parts.len().min(4));
    for (from, to) in parts {
        match joined.last_mut() {
            Some((_, end)) if from < *end => *end = to.max(*end),
            _ => joined.push((from, to)),
        }
    }
    joined
}
