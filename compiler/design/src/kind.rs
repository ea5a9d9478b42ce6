//! The kinds of item, and what each can have: properties, steps, words after its name.

use crate::closed_sets::{ClosedSet, KnownName};
use crate::form::Takes;
use crate::keyword::{Keyword, OUTLINE_MANNER, PLEAT_MANNER, steps};
use crate::property::{Property, properties};

/// A kind of item that can be named.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum Kind {
    /// A cloth.
    Fabric,
    /// A round rod.
    Rod,
    /// A board.
    Board,
    /// Something bought beside cloth.
    Notion,
    /// How a panel hangs.
    Heading,
    /// A making method.
    Make,
    /// An outline.
    Outline,
    /// A pleat rule.
    Pleats,
    /// A panel.
    Panel,
    /// A treatment.
    Treatment,
    /// A window.
    Window,
    /// A named value.
    Measure,
}

impl Kind {
    /// Every kind.
    pub const ALL: &[Self] = &[
        Self::Fabric,
        Self::Rod,
        Self::Board,
        Self::Notion,
        Self::Heading,
        Self::Make,
        Self::Outline,
        Self::Pleats,
        Self::Panel,
        Self::Treatment,
        Self::Window,
        Self::Measure,
    ];

    /// The word an item of this kind begins with.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Fabric => "fabric",
            Self::Rod => "rod",
            Self::Board => "board",
            Self::Notion => "notion",
            Self::Heading => "heading",
            Self::Make => "make",
            Self::Outline => "outline",
            Self::Pleats => "pleats",
            Self::Panel => "panel",
            Self::Treatment => "treatment",
            Self::Window => "window",
            Self::Measure => "measure",
        }
    }

    /// What it is called in a sentence.
    #[must_use]
    pub fn noun(self) -> &'static str {
        match self {
            Self::Make => "making method",
            Self::Pleats => "pleat rule",
            _ => self.word(),
        }
    }

    /// The kind whose items begin with this word.
    #[must_use]
    pub fn from_word(word: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|kind| kind.word() == word)
    }

    /// The properties an item of this kind can have, in the order the reference gives them. A
    /// window also has the parameters of its treatment.
    #[must_use]
    pub fn properties(self) -> &'static [Property] {
        properties(self)
    }

    /// The property with this key.
    #[must_use]
    pub fn property(self, key: &str) -> Option<&'static Property> {
        self.properties()
            .iter()
            .find(|property| property.key == key)
    }

    /// The steps that an item of this kind is drawn or done by. Any step of an outline may end with
    /// `as` and a name for the corner where it ends.
    #[must_use]
    pub fn steps(self) -> Vec<Keyword> {
        steps(self)
    }

    /// What can be said behind the name of an item of this kind of how it is drawn.
    #[must_use]
    pub fn manner(self) -> Takes {
        match self {
            Self::Outline => OUTLINE_MANNER,
            Self::Pleats => PLEAT_MANNER,
            Self::Fabric
            | Self::Rod
            | Self::Board
            | Self::Notion
            | Self::Heading
            | Self::Make
            | Self::Panel
            | Self::Treatment
            | Self::Window
            | Self::Measure => Takes::NOTHING,
        }
    }

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

#[cfg(test)]
mod tests {
    use super::Kind;

    #[test]
    fn every_word_leads_back_to_its_kind() {
        for kind in Kind::ALL {
            assert_eq!(Kind::from_word(kind.word()), Some(*kind));
        }
    }
}
