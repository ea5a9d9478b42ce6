//! A step of a making order before it has its number.

use pelmet_model::CautionKind;

/// A step before it has its number.
pub(super) struct Draft {
    pub(super) name: String,
    pub(super) words: Vec<String>,
    pub(super) cautions: Vec<CautionKind>,
}

/// The steps that are added to those a method says.
#[derive(Copy, Clone, PartialEq, Eq)]
pub(super) enum Added {
    ClothCheck,
    MakeUp,
    Mark,
    Pleat,
    Gather,
    Measure,
    Heading,
    Hang,
    HangCheck,
}

impl Added {
    /// Those that need what is marked on the made-up panel.
    pub(super) const NEED_MARKS: [Self; 4] =
        [Self::Pleat, Self::Gather, Self::Measure, Self::Heading];

    /// Its name, by which a method says it in words of its own.
    pub(super) fn name(self) -> &'static str {
        match self {
            Self::ClothCheck => "cloth check",
            Self::MakeUp => "make up",
            Self::Mark => "mark",
            Self::Pleat => "pleat",
            Self::Gather => "gather",
            Self::Measure => "measure",
            Self::Heading => "heading",
            Self::Hang => "hang",
            Self::HangCheck => "hang check",
        }
    }
}

impl Draft {
    pub(super) fn added(step: Added, words: Vec<String>, cautions: &[CautionKind]) -> Self {
        Self::new(step.name(), words, cautions)
    }

    pub(super) fn new(name: &str, words: Vec<String>, cautions: &[CautionKind]) -> Self {
        Self {
            name: name.to_owned(),
            words,
            cautions: cautions.to_vec(),
        }
    }
}

/// Sentences one behind the other.
pub(super) fn together(sentences: impl IntoIterator<Item = String>) -> String {
    sentences.into_iter().collect::<Vec<_>>().join(" ")
}
