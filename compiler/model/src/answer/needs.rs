//! What one panel needs beside cloth.

use pelmet_measure::Length;

use crate::closed_set::closed_set;
use crate::{EdgeKind, Point};

/// One length of fusible tape, corner to corner.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct TapeMade {
    /// The edge it lies on.
    pub kind: EdgeKind,
    /// Where it starts.
    pub from: Point,
    /// Where it ends.
    pub to: Point,
    /// Its length, the turning opening left out.
    pub length: Length,
}

/// A strip of fastener.
#[derive(Clone, PartialEq, Debug)]
pub struct FastenerRun {
    /// What it is called.
    pub name: String,
    /// Width of the strip.
    pub width: Length,
    /// From end to end.
    pub length: Length,
    /// How far its upper edge lies below the made-up top edge.
    pub down: Length,
}

/// Something one panel needs beside cloth.
#[derive(Clone, PartialEq, Debug)]
pub struct Need {
    /// What it is for.
    pub kind: NotionKind,
    /// The notion it is, by name.
    pub name: String,
    /// Width of a strip.
    pub width: Option<Length>,
    /// Length of the roll the making method states.
    pub roll: Option<Length>,
    /// How much of it.
    pub extent: NeedExtent,
}

closed_set! {
    /// What a notion is for.
    pub enum NotionKind {
        /// Tape along the edges and behind the pleats.
        FusibleTape = "fusible tape",
        /// A fastener along the heading.
        Fastener = "fastener",
        /// Thread for the seams.
        Thread = "thread",
        /// Rings along the heading.
        Rings = "rings",
        /// Weights along the lower edge.
        Weights = "weights",
    }
}

/// How much of a notion.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum NeedExtent {
    /// So long.
    Length(Length),
    /// So many.
    Count(u32),
}

/// Strips of tape behind the folds of one panel.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct StripsMade {
    /// How many.
    pub count: u32,
    /// How long each is.
    pub length: Length,
}

impl StripsMade {
    /// All of them, end to end.
    pub fn together(self) -> Length {
        self.length * i64::from(self.count)
    }
}
