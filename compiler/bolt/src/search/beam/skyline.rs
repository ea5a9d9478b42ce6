//! The skyline: how far the cloth is used, from its left end to its right.

use pelmet_measure::Length;

/// An area in square nanometres.
pub(super) type Square = u128;

/// A segment of the skyline, used to one length. It ends where the next one starts.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub(super) struct Segment {
    /// Its left end, from the left end of the usable width.
    pub from: Length,
    /// How far the cloth is used there, from the start of the bolt.
    pub used: Length,
}

/// A segment of the skyline that lies deeper than what is beside it.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(super) struct Valley {
    /// Its number among the segments.
    pub at: usize,
    /// Its left end, from the left end of the usable width.
    pub from: Length,
    /// Its right end.
    pub to: Length,
    /// How far the cloth is used in it, from the start of the bolt.
    pub used: Length,
    /// How far it is used on its left: without end where the cloth itself ends.
    pub left: Length,
    /// How far it is used on its right, likewise.
    pub right: Length,
}

impl Valley {
    /// How wide it is, from one side to the other.
    pub(super) fn width(&self) -> Length {
        self.to - self.from
    }

    /// How deep it is, up to the lower of its sides.
    pub(super) fn depth(&self) -> Length {
        self.left.min(self.right) - self.used
    }

    /// The cloth that is lost where it is given up.
    pub(super) fn lost(&self) -> Square {
        square(self.width(), self.depth())
    }

    /// Whether it is the whole skyline.
    pub(super) fn is_flat(&self) -> bool {
        self.left == ENDLESS && self.right == ENDLESS
    }
}

const ENDLESS: Length = Length::from_nanometres(i64::MAX);

/// All segments from the left end of the cloth to its right; no two neighbours are used alike.
#[derive(Clone, PartialEq, Eq, Debug)]
pub(super) struct Skyline {
    segments: Vec<Segment>,
    width: Length,
}

impl Skyline {
    /// The skyline of unused cloth.
    pub(super) fn new(width: Length) -> Skyline {
        let whole = Segment {
            from: Length::ZERO,
            used: Length::ZERO,
        };
        Skyline {
            segments: vec![whole],
            width,
        }
    }

    /// The segments from left to right.
    pub(super) fn segments(&self) -> &[Segment] {
        &self.segments
    }

    /// The segment that is used least, the leftmost of several.
    pub(super) fn lowest(&self) -> Option<Valley> {
        let numbered = self.segments.iter().enumerate();
        let (at, segment) = numbered.min_by_key(|(_, segment)| segment.used)?;
        let beside = |at: Option<usize>| self.segments.get(at?);
        let next = beside(at.checked_add(1));
        Some(Valley {
            at,
            from: segment.from,
            to: next.map_or(self.width, |next| next.from),
            used: segment.used,
            left: beside(at.checked_sub(1)).map_or(ENDLESS, |left| left.used),
            right: next.map_or(ENDLESS, |next| next.used),
        })
    }

    /// Fills a valley up to the lower of its sides.
    pub(super) fn fill(&mut self, valley: &Valley) {
        if let Some(segment) = self.segments.get_mut(valley.at) {
            segment.used = valley.left.min(valley.right);
        }
        self.join();
    }

    /// Uses a part of a valley, from one place across to another, up to a length.
    pub(super) fn use_up(&mut self, valley: &Valley, from: Length, to: Length, used: Length) {
        let mut parts = Vec::with_capacity(3);
        if valley.from < from {
            parts.push(Segment {
                from: valley.from,
                used: valley.used,
            });
        }
        parts.push(Segment { from, used });
        if to < valley.to {
            parts.push(Segment {
                from: to,
                used: valley.used,
            });
        }
        let end = valley.at.saturating_add(1).min(self.segments.len());
        self.segments.splice(valley.at.min(end)..end, parts);
        self.join();
    }

    /// Joins neighbours that are used alike: a valley as wide as both is offered as one.
    fn join(&mut self) {
        self.segments.dedup_by_key(|segment| segment.used);
    }
}

/// The square of cloth with these sides; none where a side is below zero.
pub(super) fn square(one: Length, other: Length) -> Square {
    let side = |length: Length| u64::try_from(length.nanometres()).unwrap_or(0);
    // Two numbers of 64 bits never need more than 128.
    Square::from(side(one)).wrapping_mul(Square::from(side(other)))
}
