//! A place in a phrase, moved along as its terms are read.

use pelmet_diagnostics::Span;
use pelmet_syntax::tree::{Phrase, Term, TermKind};

use crate::closed_sets::ClosedSet;
use crate::scope::Scope;

/// A phrase being read, with the scope its names are looked up in.
#[derive(Clone, Debug)]
pub(crate) struct Cursor<'t> {
    /// All terms of the phrase.
    all: &'t [Term],
    /// Those not read yet.
    terms: &'t [Term],
    whole: Span,
    /// Where names are looked up.
    pub scope: Scope<'t>,
}

impl<'t> Cursor<'t> {
    /// At the beginning of a phrase.
    pub fn new(phrase: &'t Phrase, scope: &Scope<'t>) -> Self {
        Self {
            all: &phrase.terms,
            terms: &phrase.terms,
            whole: phrase.span,
            scope: scope.clone(),
        }
    }

    /// The whole phrase.
    pub fn span(&self) -> Span {
        self.whole
    }

    /// The place just after the phrase.
    pub fn end(&self) -> Span {
        self.whole.end_of()
    }

    /// The terms not read yet.
    pub fn terms(&self) -> &'t [Term] {
        self.terms
    }

    /// The next term.
    pub fn peek(&self) -> Option<&'t Term> {
        self.terms.first()
    }

    /// The next term, which is then read.
    pub fn next(&mut self) -> Option<&'t Term> {
        let (first, rest) = self.terms.split_first()?;
        self.terms = rest;
        Some(first)
    }

    /// The next term if it is a word, which is then read.
    pub fn any_word(&mut self) -> Option<(&'t str, Span)> {
        let term = self.peek()?;
        let word = term.word()?;
        self.next();
        Some((word, term.span))
    }

    /// Whether the next terms are these words, which are then read.
    pub fn words(&mut self, words: &[&str]) -> bool {
        let found = self.terms.len() >= words.len()
            && self
                .terms
                .iter()
                .zip(words)
                .all(|(term, word)| term.word() == Some(word));
        if found {
            self.terms = self.terms.get(words.len()..).unwrap_or_default();
        }
        found
    }

    /// The member of a closed set whose words come next, which are then read.
    pub fn one_of<T: ClosedSet>(&mut self) -> Option<T> {
        T::ALL.iter().copied().find(|one| self.says(one.word()))
    }

    /// The member of a closed set whose words come next behind this word; then all of them are read.
    pub fn word_and_one_of<T: ClosedSet>(&mut self, word: &str) -> Option<T> {
        let mut ahead = self.clone();
        let found = ahead.words(&[word]).then(|| ahead.one_of()).flatten();
        if found.is_some() {
            *self = ahead;
        }
        found
    }

    /// Whether the next terms are these words, with blanks between them, which are then read.
    fn says(&mut self, words: &str) -> bool {
        let mut rest = self.terms;
        for word in words.split(' ') {
            match rest.split_first() {
                Some((term, after)) if term.word() == Some(word) => rest = after,
                _ => return false,
            }
        }
        self.terms = rest;
        true
    }

    /// Whether the phrase ends with these words, which are left unread.
    pub fn ends_with(&self, words: &[&str]) -> bool {
        let at = self.terms.len().checked_sub(words.len());
        let last = at.and_then(|at| self.terms.get(at..)).unwrap_or_default();
        last.len() == words.len()
            && last
                .iter()
                .zip(words)
                .all(|(term, word)| term.word() == Some(word))
    }

    /// The name that the phrase gives at its end, `as tip`, which is then read.
    pub fn name_given(&mut self) -> Option<&'t str> {
        let [rest @ .., word, name] = self.terms else {
            return None;
        };
        let name = name.word().filter(|_| word.word() == Some("as"))?;
        self.terms = rest;
        Some(name)
    }

    /// Whether the next term is the sign between the sides of a size, which is then read.
    pub fn times(&mut self) -> bool {
        let found = matches!(
            self.peek(),
            Some(Term {
                kind: TermKind::Times,
                ..
            })
        );
        if found {
            self.next();
        }
        found
    }

    /// The place just after the term read last.
    pub fn read_to(&self) -> Option<Span> {
        let read = self.all.len().checked_sub(self.terms.len())?;
        let last = self.all.get(read.checked_sub(1)?)?;
        Some(last.span.end_of())
    }

    /// What has not been read yet.
    pub fn rest(&self) -> Option<Span> {
        Some(self.terms.first()?.span.to(self.terms.last()?.span))
    }

    /// Whether anything not read yet was reported as unreadable.
    pub fn is_broken(&self) -> bool {
        self.terms.iter().any(Term::is_broken)
    }
}
