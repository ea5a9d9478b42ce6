//! A strip of cloth folded at its creases.

use pelmet_measure::Length;

/// A strip of cloth folded at its creases. Finished positions are measured from the left end of
/// the strip: that end lies at 0.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Folding {
    /// Finished position of the right end: the finished width.
    pub finished: Length,
    /// The leftmost finished position any cloth reaches.
    pub leftmost: Length,
    /// The rightmost finished position any cloth reaches.
    pub rightmost: Length,
    /// The plain stretches between creases, left to right on the flat strip.
    pub stretches: Vec<StretchMade>,
    /// How many layers lie at each finished position, left to right without gaps.
    pub layers: Vec<LayerRun>,
    /// The most layers anywhere.
    pub thickest: u32,
}

/// A plain stretch of the strip between two creases.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct StretchMade {
    /// Its left end on the flat strip.
    pub flat_from: Length,
    /// Its right end on the flat strip.
    pub flat_to: Length,
    /// How much of its left end is lost in the turn of the crease there: half of that turn.
    pub turn_from: Length,
    /// The same at its right end.
    pub turn_to: Length,
    /// Finished position of its left end.
    pub finished_from: Length,
    /// Finished position of its right end; to the left of the other where turned over, and nearer
    /// than the flat cloth is wide where it is drawn up.
    pub finished_to: Length,
    /// How its cloth is held.
    pub lies: Lies,
    /// Whether its face shows (false: turned over).
    pub face_up: bool,
    /// Its place in the stack, 0 at the back.
    pub height: usize,
}

impl StretchMade {
    /// Its flat width without what is lost in turns.
    #[must_use]
    pub fn laid(&self) -> Length {
        let turns = self.turn_from + self.turn_to;
        (self.flat_to - self.flat_from - turns).max(Length::ZERO)
    }

    /// The finished positions it lies over, left end first.
    #[must_use]
    pub fn span(&self) -> (Length, Length) {
        let (one, other) = (self.finished_from, self.finished_to);
        (one.min(other), one.max(other))
    }
}

/// How the cloth of a stretch is held.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum Lies {
    /// Pressed flat on what lies beneath.
    Flat,
    /// Drawn up, standing out from the panel.
    Drawn,
    /// The same, between the fingers of a pleat, where it is not seen.
    BetweenFingers,
}

/// A run of finished positions with the same layers over it.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct LayerRun {
    /// Left end.
    pub from: Length,
    /// Right end.
    pub to: Length,
    /// How many layers.
    pub layers: u32,
    /// The stretch on top, the one that is seen, by index in [`Folding::stretches`].
    pub top: usize,
}
