//! The steps of a making method, in the maker's own words.

use crate::closed_set::closed_set;
use crate::{Each, Figure};

/// One step of the work.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct MakingStep {
    /// The name the maker gave it, a word of `work` too.
    pub name: String,
    /// Its sentences, in order.
    pub sentences: Vec<Sentence>,
    /// What to take care of.
    pub cautions: Vec<CautionKind>,
}

/// Words that are said of a panel, perhaps only of some panels, or again and again.
#[derive(Clone, PartialEq, Debug)]
pub struct Sentence {
    /// When they are said.
    pub said: Said,
    /// Words and figures by turns.
    pub parts: Vec<SentencePart>,
}

/// When a sentence is said.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum Said {
    /// Of every panel.
    Always,
    /// Of a panel that has this figure.
    When(Figure),
    /// Of a panel that has it not.
    WhenNo(Figure),
    /// Once for each of these.
    ForEach(Each),
}

/// A part of a sentence.
#[derive(Clone, PartialEq, Debug)]
pub enum SentencePart {
    /// Words as written.
    Words(String),
    /// A figure of the panel.
    Figure(Figure),
}

closed_set! {
    /// What can hurt someone or spoil the work.
    pub enum CautionKind {
        /// Shears and other blades.
        Shears = "shears",
        /// The needle of a machine, and pins.
        Needle = "needle",
        /// Trying heat, water and marks on a scrap.
        ScrapTest = "scrap-test",
        /// A hot iron.
        HotIron = "hot-iron",
        /// A cloth between iron and work.
        PressCloth = "press-cloth",
        /// Fused and pressed cloth that is still warm.
        LetItCool = "let-it-cool",
        /// The instructions that come with an adhesive.
        TapeMaker = "tape-maker",
        /// Rings and weights that can be swallowed, and lead.
        SmallParts = "small-parts",
        /// What a rod and its fixings may carry.
        RodRating = "rod-rating",
        /// Ladders.
        Ladder = "ladder",
        /// Fixing into a wall.
        Fixing = "fixing",
        /// Heaters, lamps and flame.
        Heat = "heat",
        /// Cords within reach of children.
        Cords = "cords",
        /// Flame resistance where the room is public.
        PublicRoom = "public-room",
    }
}
