//! The steps of a making method, in the maker's own words.

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
    pub parts: Vec<Part>,
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
pub enum Part {
    /// Words as written.
    Words(String),
    /// A figure of the panel.
    Figure(Figure),
}

/// What can hurt someone or spoil the work.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum CautionKind {
    /// Shears and other blades.
    Shears,
    /// The needle of a machine, and pins.
    Needle,
    /// Trying heat, water and marks on a scrap.
    ScrapTest,
    /// A hot iron.
    HotIron,
    /// A cloth between iron and work.
    PressCloth,
    /// Fused and pressed cloth that is still warm.
    LetItCool,
    /// The instructions that come with an adhesive.
    TapeMaker,
    /// Rings and weights that can be swallowed, and lead.
    SmallParts,
    /// What a rod and its fixings may carry.
    RodRating,
    /// Ladders.
    Ladder,
    /// Fixing into a wall.
    Fixing,
    /// Heaters, lamps and flame.
    Heat,
    /// Cords within reach of children.
    Cords,
    /// Flame resistance where the room is public.
    PublicRoom,
}

impl CautionKind {
    /// Every caution by its name, in the order of the work.
    pub const ALL: &[(Self, &str)] = &[
        (Self::Shears, "shears"),
        (Self::Needle, "needle"),
        (Self::ScrapTest, "scrap-test"),
        (Self::HotIron, "hot-iron"),
        (Self::PressCloth, "press-cloth"),
        (Self::LetItCool, "let-it-cool"),
        (Self::TapeMaker, "tape-maker"),
        (Self::SmallParts, "small-parts"),
        (Self::RodRating, "rod-rating"),
        (Self::Ladder, "ladder"),
        (Self::Fixing, "fixing"),
        (Self::Heat, "heat"),
        (Self::Cords, "cords"),
        (Self::PublicRoom, "public-room"),
    ];

    /// The caution of this name.
    pub fn from_name(name: &str) -> Option<Self> {
        let named = Self::ALL.iter().find(|(_, known)| *known == name);
        named.map(|(kind, _)| *kind)
    }

    /// Its name.
    pub fn name(self) -> &'static str {
        let named = Self::ALL.iter().find(|(kind, _)| *kind == self);
        named.map_or("", |(_, name)| name)
    }
}
