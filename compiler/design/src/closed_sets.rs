//! Closed sets of words: the members of each set, and the words each is written with.
//!
//! Here alone such words stand. What reads a value, what a diagnostic lists and what a property takes
//! ([`FormPart::OneOf`](crate::FormPart::OneOf)) all come from here.

use std::fmt::{self, Debug, Formatter};

use pelmet_diagnostics::listed;
use pelmet_measure::System;
use pelmet_model::{CautionKind, Cut, Each, Follow, Railroad, Start, TowardOrder, Way};

use crate::kind::Kind;

/// A set of which every member is written with words of its own.
pub(crate) trait ClosedSet: Copy + 'static {
    /// Every member, in the order diagnostics list them.
    const ALL: &'static [Self];

    /// The words of a member.
    fn word(self) -> &'static str;

    /// The member that has these words.
    fn of_word(words: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|one| one.word() == words)
    }

    /// All its words as a diagnostic gives them: "`one-way` or `any`".
    fn in_words() -> String {
        let quoted = Self::ALL.iter().map(|one| format!("`{}`", one.word()));
        let quoted: Vec<String> = quoted.collect();
        let quoted: Vec<&str> = quoted.iter().map(String::as_str).collect();
        listed(&quoted, "or")
    }
}

/// The words of a closed set, whatever its members are.
#[derive(Copy, Clone)]
pub struct WordSet(fn(usize) -> Option<&'static str>);

impl WordSet {
    /// The words of this set.
    pub(crate) const fn of<T: ClosedSet>() -> Self {
        Self(words_at::<T>)
    }

    /// The words of each member, in the order diagnostics list them.
    pub fn words(self) -> impl Iterator<Item = &'static str> {
        (0..).map_while(self.0)
    }
}

fn words_at<T: ClosedSet>(index: usize) -> Option<&'static str> {
    T::ALL.get(index).map(|one| one.word())
}

impl Debug for WordSet {
    fn fmt(&self, f: &mut Formatter<'_>) -> fmt::Result {
        f.debug_list().entries(self.words()).finish()
    }
}

/// Sets of the trade are written with the words they have anyhow.
macro_rules! written_as_called {
    ($($set:ty),+ $(,)?) => {
        $(impl ClosedSet for $set {
            const ALL: &'static [Self] = <$set>::ALL;

            fn word(self) -> &'static str {
                <$set>::word(self)
            }
        })+
    };
}

written_as_called!(
    CautionKind,
    Cut,
    Each,
    Follow,
    Railroad,
    Start,
    TowardOrder,
    Way
);

/// Gives each member of a set its words; one that is left out does not compile.
macro_rules! closed_set {
    ($set:ty { $($member:ident = $words:literal,)+ }) => {
        impl ClosedSet for $set {
            const ALL: &'static [Self] = &[$(Self::$member),+];

            fn word(self) -> &'static str {
                match self {
                    $(Self::$member => $words,)+
                }
            }
        }
    };
}

closed_set!(System {
    Inches = "inches",
    Metric = "metric",
});

/// The direction of a print's repeat.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(crate) enum RepeatDirection {
    /// Along the bolt.
    Along,
    /// From selvage to selvage.
    Across,
}

closed_set!(RepeatDirection {
    Along = "along",
    Across = "across",
});

/// How a heading hangs.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(crate) enum Hang {
    /// Folded over the rod.
    OverRod,
    /// The rod runs through a pocket.
    RodPocket,
    /// Laid on a board.
    OnBoard,
    /// By nothing of its own.
    Plain,
}

closed_set!(Hang {
    OverRod = "over rod",
    RodPocket = "rod pocket",
    OnBoard = "on board",
    Plain = "plain",
});

/// How two hems meet at a corner.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(crate) enum Corners {
    /// In a mitre.
    Mitred,
    /// One over the other.
    Square,
}

closed_set!(Corners {
    Mitred = "mitred",
    Square = "square",
});

/// An edge of a panel, or both its sides.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(crate) enum PanelEdge {
    /// The upper one.
    Top,
    /// The two at the sides.
    Sides,
    /// The lower one.
    Lower,
}

closed_set!(PanelEdge {
    Top = "top",
    Sides = "sides",
    Lower = "lower edge",
});

/// How a layer behind the face differs from it in size.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(crate) enum Difference {
    /// It is longer.
    Longer,
    /// It is shorter.
    Shorter,
    /// It is wider.
    Wider,
    /// It is narrower.
    Narrower,
}

closed_set!(Difference {
    Longer = "longer",
    Shorter = "shorter",
    Wider = "wider",
    Narrower = "narrower",
});

/// How much of a panel an outline draws.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(crate) enum Drawn {
    /// One half, which is mirrored.
    Half,
    /// All of it.
    Whole,
}

closed_set!(Drawn {
    Half = "half",
    Whole = "whole",
});

impl ClosedSet for bool {
    const ALL: &'static [Self] = &[true, false];

    fn word(self) -> &'static str {
        if self { "yes" } else { "no" }
    }
}

/// A name that stands for a length wherever items of a kind are described.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum KnownName {
    /// In an outline, the width it is drawn for: half the flat width of the panel where a half is drawn.
    Width,
    /// In an outline, the drop of the panel.
    Drop,
    /// In a treatment, the width of the window's opening.
    OpeningWidth,
    /// In a treatment, the height of the window's opening.
    OpeningHeight,
    /// In a treatment, the length of the window's rod or board.
    RodLength,
    /// In a treatment, the diameter of the window's rod.
    RodDiameter,
    /// In a treatment, how far the window's rod or board stands off the wall.
    Projection,
}

impl Kind {
    /// The names that stand for lengths wherever items of this kind are described.
    #[must_use]
    pub fn known_names(self) -> &'static [KnownName] {
        match self {
            Self::Outline => &[KnownName::Width, KnownName::Drop],
            Self::Treatment => &[
                KnownName::OpeningWidth,
                KnownName::OpeningHeight,
                KnownName::RodLength,
                KnownName::RodDiameter,
                KnownName::Projection,
            ],
            Self::Fabric
            | Self::Rod
            | Self::Board
            | Self::Notion
            | Self::Heading
            | Self::Make
            | Self::Pleats
            | Self::Panel
            | Self::Window
            | Self::Measure => &[],
        }
    }

    /// Whether a name is always known where items of this kind are described.
    pub(crate) fn knows(self, name: &str) -> bool {
        self.known_names().iter().any(|known| known.word() == name)
    }
}

closed_set!(KnownName {
    Width = "width",
    Drop = "drop",
    OpeningWidth = "opening-width",
    OpeningHeight = "opening-height",
    RodLength = "rod-length",
    RodDiameter = "rod-diameter",
    Projection = "projection",
});
