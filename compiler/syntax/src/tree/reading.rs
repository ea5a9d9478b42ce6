//! What readers of the tree ask of it.

use super::{Entry, Phrase, Phrases, Term, TermKind};

impl Entry {
    /// The word it begins with.
    #[must_use]
    pub fn first_word(&self) -> Option<&str> {
        self.head.phrases.first()?.terms.first()?.word()
    }

    /// The words of a head that is one phrase of words alone: `turning opening`.
    #[must_use]
    pub fn key(&self) -> Option<String> {
        match self.head.phrases.as_slice() {
            [only] => Some(only.words()?.join(" ")),
            _ => None,
        }
    }

    /// Whether a part of its head or value could not be read; what its block holds is not asked.
    #[must_use]
    pub fn is_broken(&self) -> bool {
        self.head.is_broken() || self.value.as_ref().is_some_and(Phrases::is_broken)
    }
}

impl Phrases {
    /// Whether a part of it could not be read.
    #[must_use]
    pub fn is_broken(&self) -> bool {
        self.phrases.iter().any(Phrase::is_broken)
    }
}

impl Phrase {
    /// Its words, if it is made of words alone.
    #[must_use]
    pub fn words(&self) -> Option<Vec<&str>> {
        self.terms.iter().map(Term::word).collect()
    }

    /// The words it begins with, up to the first term that is none.
    #[must_use]
    pub fn leading_words(&self) -> Vec<&str> {
        self.terms.iter().map_while(Term::word).collect()
    }

    /// Whether a part of it could not be read.
    #[must_use]
    pub fn is_broken(&self) -> bool {
        self.terms.iter().any(Term::is_broken)
    }
}

impl Term {
    /// The word, if it is one.
    #[must_use]
    pub fn word(&self) -> Option<&str> {
        let TermKind::Name(word) = &self.kind else {
            return None;
        };
        Some(word)
    }

    /// Whether a part of it could not be read.
    #[must_use]
    pub fn is_broken(&self) -> bool {
        match &self.kind {
            TermKind::Broken(_) => true,
            TermKind::Number(_) | TermKind::Name(_) | TermKind::Text(_) | TermKind::Times => false,
            TermKind::Call(call) => call
                .arguments
                .iter()
                .filter_map(|argument| argument.value.as_ref())
                .any(Phrase::is_broken),
            TermKind::Point(places) => places.iter().any(Self::is_broken),
            TermKind::Group(inner) | TermKind::Negative(inner) => inner.is_broken(),
            TermKind::Binary { left, right, .. } => left.is_broken() || right.is_broken(),
        }
    }
}
