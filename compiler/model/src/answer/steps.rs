//! The steps of the making method with the figures of one panel in their words.

use pelmet_measure::Length;

use crate::closed_set::closed_set;
use crate::{CautionKind, EdgeKind, Layer};

/// A step of the work on one panel.
#[derive(Clone, PartialEq, Debug)]
pub struct StepMade {
    /// The word the method gives it, such as `press`.
    pub name: String,
    /// What is said, sentence by sentence.
    pub sentences: Vec<SentenceMade>,
    /// What to take care of.
    pub cautions: Vec<CautionKind>,
}

/// A sentence that is said of this panel.
#[derive(Clone, PartialEq, Debug)]
pub struct SentenceMade {
    /// Whether it is one of several alike, such as one for each pleat.
    pub one_of_each: bool,
    /// Words and figures by turns.
    pub parts: Vec<PartMade>,
}

/// A part of a sentence, its figure known.
#[derive(Clone, PartialEq, Debug)]
pub enum PartMade {
    /// Words as written.
    Words(String),
    /// A figure.
    Value(FigureValue),
}

/// A figure of one panel, still to be printed.
#[derive(Clone, PartialEq, Debug)]
pub enum FigureValue {
    /// The name the maker gave to a cloth or a notion, or the word for a kind.
    Name(String),
    /// A length to cut: rounded up.
    Cut(Length),
    /// A length to mark or to check: rounded to the nearest.
    Mark(Length),
    /// A length as the maker stated it.
    Stated(Length),
    /// The size of a piece, by its index.
    Piece(usize),
    /// So many of something.
    Count(usize, CountedThing),
    /// A number that counts nothing, such as that of a pleat.
    Number(usize),
    /// Corners, by number.
    Corners(Vec<usize>),
    /// Which layer it is; printed by its word.
    Layer(Layer),
    /// Which kind of edge it is; printed by its word.
    Edge(EdgeKind),
    /// The corners a length of tape runs between, by index of [`crate::PanelMade::tape`].
    RunEnds(usize),
    /// What to bring where to fold a pleat, by its index.
    PleatFold(usize),
}

closed_set! {
    /// What the words of a step may count, each with its noun for one of them.
    pub enum CountedThing {
        /// A seam between widths.
        Join = "join",
        /// A pleat.
        Pleat = "pleat",
        /// A strip of tape behind a fold.
        Strip = "strip",
        /// A ring.
        Ring = "ring",
        /// A weight.
        Weight = "weight",
        /// A slit in the allowance of a hollow curve.
        Clip = "clip",
        /// A wedge out of the allowance of a curve that swells.
        Wedge = "wedge",
    }
}
