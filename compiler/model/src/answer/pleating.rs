//! The pleats of a panel on its flat strip.

use pelmet_measure::Length;

use crate::PleatKind;
use crate::closed_set::closed_set;

/// The pleats of a panel on its flat strip.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Pleating {
    /// Flat width.
    pub flat: Length,
    /// Finished width: flat less take-ups and what is lost in turns.
    pub finished: Length,
    /// From the left edge to the right.
    pub pleats: Vec<PleatMade>,
    /// Every crease from left to right; none for a panel that hangs flat.
    pub creases: Vec<CreaseMade>,
    /// Every run of cloth that a pleat draws up, from left to right.
    pub drawn: Vec<Drawn>,
}

/// A run of the flat strip that stands out from the panel once a pleat is stitched or gathered.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct Drawn {
    /// Its left end.
    pub from: Length,
    /// Its right end.
    pub to: Length,
    /// The finished width it keeps.
    pub keeps: Length,
    /// Whether it stands between the fingers of a pleat, where it is not seen.
    pub between_fingers: bool,
}

/// One pleat laid out on the flat strip.
#[derive(Clone, PartialEq, Debug)]
pub struct PleatMade {
    /// The written step that ordered it.
    pub step: usize,
    /// Whether it belongs to the mirrored half.
    pub mirrored: bool,
    /// The kind it was ordered as.
    pub kind: PleatKind,
    /// How its two ends are held, where stitching or a thread holds them.
    pub held: Held,
    /// Depth of one fold.
    pub depth: Length,
    /// Width of the face, for a pleat that has one; what a stitched pleat leaves between its points,
    /// and gathers once drawn up.
    pub face: Option<Length>,
    /// Flat width taken up by its folds; what they lose in turns comes on top.
    pub take_up: Length,
    /// What each of its creases loses of the flat width in its turn.
    pub turn: Length,
    /// Left end of the flat cloth the pleat uses.
    pub from: Length,
    /// Right end of the flat cloth the pleat uses.
    pub to: Length,
    /// Its visible folds, left to right.
    pub folds: Vec<FoldMade>,
    /// Where the fingers of a pinch pleat are folded, left to right on the flat strip.
    pub fingers: Vec<Length>,
}

/// How the two ends of a pleat are held.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum Held {
    /// By nothing but the pressing.
    Pressed,
    /// Brought together and stitched.
    Stitched,
    /// Drawn toward each other along a thread or a tape.
    Drawn,
}

/// A visible fold: a crease that is brought to a line and laid there.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct FoldMade {
    /// Flat position of the crease.
    pub crease: Length,
    /// Flat position of the line it is brought to.
    pub brought_to: Length,
    /// Where the fold lies once pleated, measured from the left end of the finished width.
    pub finished: Length,
    /// The way it points as the panel hangs.
    pub toward: Toward,
}

closed_set! {
    /// A direction as the panel hangs.
    pub enum Toward {
        /// To the left.
        Left = "left",
        /// To the right.
        Right = "right",
    }
}

impl Toward {
    /// The other way, as in a mirror.
    #[must_use]
    pub const fn mirrored(self) -> Self {
        match self {
            Self::Left => Self::Right,
            Self::Right => Self::Left,
        }
    }
}

closed_set! {
    /// The two kinds of crease, as seen from the front.
    pub enum CreaseKind {
        /// A ridge toward the viewer.
        Mountain = "mountain",
        /// A furrow away from the viewer.
        Valley = "valley",
    }
}

/// A crease across the flat strip.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct CreaseMade {
    /// Flat position.
    pub at: Length,
    /// Which way it is folded.
    pub kind: CreaseKind,
    /// The pleat it belongs to, by index in [`Pleating::pleats`].
    pub pleat: usize,
}

impl PleatMade {
    /// What its creases lose of the flat width in their turns, two of them to each fold.
    pub fn lost_in_turns(&self) -> Length {
        self.turn * whole(self.folds.len()) * 2
    }
}

impl Pleating {
    /// Whether any of its pleats is held by nothing but the pressing.
    pub fn is_pressed(&self) -> bool {
        let mut pleats = self.pleats.iter();
        pleats.any(|pleat| pleat.held == Held::Pressed)
    }
}

fn whole(count: usize) -> i64 {
    i64::try_from(count).unwrap_or(i64::MAX)
}
