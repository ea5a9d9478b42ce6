//! Closed sets of words: the members of each set, and the words each is written with.
//!
//! Here alone such words stand. What reads a value, what a report lists and what a property takes
//! ([`FormPart::OneOf`](crate::FormPart::OneOf)) all come from here.

use std::fmt::{self, Debug, Formatter};

use pelmet_diagnostics::listed;
use pelmet_measure::System;
use pelmet_model::{CautionKind, Cut, Each, Follow, Railroad, Start, TowardOrder, Way};

/// A set of which every member is written with words of its own.
pub(crate) trait ClosedSet: Copy + PartialEq + 'static {
    /// Every member with its words, in the order reports list them.
    const MEMBERS: &'static [(Self, &'static str)];

    /// The words of a member.
    fn words(self) -> &'static str {
        let found = Self::MEMBERS.iter().find(|(member, _)| *member == self);
        found.map_or("", |(_, words)| words)
    }

    /// The member that has these words.
    fn named(words: &str) -> Option<Self> {
        let found = Self::MEMBERS.iter().find(|(_, known)| *known == words);
        found.map(|(member, _)| *member)
    }

    /// All its words as a report gives them: "`one-way` or `any`".
    fn in_words() -> String {
        let quoted = Self::MEMBERS.iter().map(|(_, words)| format!("`{words}`"));
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

    /// The words of each member, in the order reports list them.
    pub fn words(self) -> impl Iterator<Item = &'static str> {
        (0..).map_while(self.0)
    }
}

fn words_at<T: ClosedSet>(index: usize) -> Option<&'static str> {
    T::MEMBERS.get(index).map(|(_, words)| *words)
}

impl Debug for WordSet {
    fn fmt(&self, f: &mut Formatter<'_>) -> fmt::Result {
        f.debug_list().entries(self.words()).finish()
    }
}

/// Gives each member of a set its words; one that is left out does not compile.
macro_rules! closed_set {
    ($set:ty { $($member:ident => $words:literal),+ $(,)? }) => {
        impl ClosedSet for $set {
            const MEMBERS: &'static [(Self, &'static str)] = &[$((Self::$member, $words)),+];

            fn words(self) -> &'static str {
                match self {
                    $(Self::$member => $words),+
                }
            }
        }
    };
}

closed_set!(System {
    Inches => "inches",
    Metric => "metric",
});

closed_set!(Way {
    OneWay => "one-way",
    Any => "any",
});

closed_set!(Railroad {
    Never => "no",
    WhereTooWide => "yes",
    WhereItSaves => "where it saves",
    Always => "always",
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
    Along => "along",
    Across => "across",
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
    OverRod => "over rod",
    RodPocket => "rod pocket",
    OnBoard => "on board",
    Plain => "plain",
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
    Mitred => "mitred",
    Square => "square",
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
    Top => "top",
    Sides => "sides",
    Lower => "lower edge",
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
    Longer => "longer",
    Shorter => "shorter",
    Wider => "wider",
    Narrower => "narrower",
});

closed_set!(Follow {
    Spaces => "spaces follow",
    Depths => "depths follow",
});

closed_set!(Start {
    Left => "from left",
    Centre => "from centre",
});

closed_set!(TowardOrder {
    Centre => "centre",
    Edge => "edge",
    Left => "left",
    Right => "right",
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
    Half => "half",
    Whole => "whole",
});

closed_set!(Cut {
    OnFold => "on fold",
    Open => "open",
});

impl ClosedSet for bool {
    const MEMBERS: &'static [(Self, &'static str)] = &[(true, "yes"), (false, "no")];
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

closed_set!(KnownName {
    Width => "width",
    Drop => "drop",
    OpeningWidth => "opening-width",
    OpeningHeight => "opening-height",
    RodLength => "rod-length",
    RodDiameter => "rod-diameter",
    Projection => "projection",
});

impl ClosedSet for Each {
    const MEMBERS: &'static [(Self, &'static str)] = Self::ALL;
}

impl ClosedSet for CautionKind {
    const MEMBERS: &'static [(Self, &'static str)] = Self::ALL;
}
