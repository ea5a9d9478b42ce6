//! The kinds of item. What an item of each can have is in `property` and `keyword`.

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
