//! The front: how far the cloth is used, from its left end to its right.

use pelmet_measure::Length;

/// Square nanometres.
pub(super) type Square = u128;

/// A stretch of the front that is used to one length. It ends where the next one starts.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub(super) struct Stretch {
    pub from: Length,
    pub used: Length,
}

/// A stretch of the front that lies deeper than what is beside it.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(super) struct Valley {
    /// Its number among the stretches.
    pub at: usize,
    pub from: Length,
    pub to: Length,
    /// How far the cloth is used in it, and on its left and right; endless at the sides of the cloth.
    pub used: Length,
    pub left: Length,
    pub right: Length,
}

impl Valley {
    /// Its width.
    pub(super) fn width(&self) -> Length {
        self.to - self.from
    }

    /// How deep it is.
    pub(super) fn depth(&self) -> Length {
        self.left.min(self.right) - self.used
    }

    /// The cloth that is lost where it is given up.
    pub(super) fn lost(&self) -> Square {
        square(self.width(), self.depth())
    }

    /// Whether it is the whole front.
    pub(super) fn is_flat(&self) -> bool {
        self.left == ENDLESS && self.right == ENDLESS
    }
}

const ENDLESS: Length = Length::from_nanometres(i64::MAX);

/// All stretches from the left end of the cloth to its right; no two neighbours are used alike.
#[derive(Clone, PartialEq, Eq, Debug)]
pub(super) struct Front {
    stretches: Vec<Stretch>,
    width: Length,
}

impl Front {
    /// The front of unused cloth.
    pub(super) fn new(width: Length) -> Front {
        let whole = Stretch {
            from: Length::ZERO,
            used: Length::ZERO,
        };
        Front {
            stretches: vec![whole],
            width,
        }
    }

    /// The stretches from left to right.
    pub(super) fn stretches(&self) -> &[Stretch] {
        &self.stretches
    }

    /// The stretch that is used least, the leftmost of several.
    pub(super) fn lowest(&self) -> Option<Valley> {
        let numbered = self.stretches.iter().enumerate();
        let (at, stretch) = numbered.min_by_key(|(_, stretch)| stretch.used)?;
        let beside = |at: Option<usize>| self.stretches.get(at?);
        let next = beside(at.checked_add(1));
        Some(Valley {
            at,
            from: stretch.from,
            to: next.map_or(self.width, |next| next.from),
            used: stretch.used,
            left: beside(at.checked_sub(1)).map_or(ENDLESS, |left| left.used),
            right: next.map_or(ENDLESS, |next| next.used),
        })
    }

    /// Fills a valley up to the lower of its sides.
    pub(super) fn fill(&mut self, valley: &Valley) {
        if let Some(stretch) = self.stretches.get_mut(valley.at) {
            stretch.used = valley.left.min(valley.right);
        }
        self.join();
    }

    /// Uses a part of a valley, from one place across to another, up to a length.
    pub(super) fn use_up(&mut self, valley: &Valley, from: Length, to: Length, used: Length) {
        let mut parts = Vec::with_capacity(3);
        if valley.from < from {
            parts.push(Stretch {
                from: valley.from,
                used: valley.used,
            });
        }
        parts.push(Stretch { from, used });
        if to < valley.to {
            parts.push(Stretch {
                from: to,
                used: valley.used,
            });
        }
        let end = valley.at.saturating_add(1).min(self.stretches.len());
        self.stretches.splice(valley.at.min(end)..end, parts);
        self.join();
    }

    fn join(&mut self) {
        self.stretches.dedup_by_key(|stretch| stretch.used);
    }
}

/// The square of cloth with these sides; none where a side is below zero.
pub(super) fn square(one: Length, other: Length) -> Square {
    let side = |length: Length| u64::try_from(length.nanometres()).unwrap_or(0);
    // Two numbers of 64 bits never need more than 128.
    Square::from(side(one)).wrapping_mul(Square::from(side(other)))
}
