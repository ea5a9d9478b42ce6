//! From what the grammar matched to the syntax tree, with a diagnostic of whatever is wrong.
//!
//! The grammar cannot fail inside an entry: what it could not read it hands over as `unread`.

mod entries;
mod names;
mod numbers;
mod terms;

use pelmet_diagnostics::{Span, codes};
use pest::Parser;
use pest::iterators::Pair;

use crate::file_diagnostics::FileDiagnostics;
use crate::grammar::{Grammar, Rule};
use crate::source::Source;
use crate::tree::{Entry, Name, Phrase, Phrases, Term, TermKind};

/// From what the grammar matched of one text to its tree.
pub(crate) struct Lowering<'a, 'r> {
    source: Source<'a>,
    diagnostics: &'r mut FileDiagnostics,
}

impl<'a, 'r> Lowering<'a, 'r> {
    /// What is wrong goes to `diagnostics`, where those of the pre-scan already are.
    pub(crate) fn new(source: Source<'a>, diagnostics: &'r mut FileDiagnostics) -> Self {
        Lowering {
            source,
            diagnostics,
        }
    }

    /// The entries of a whole file.
    pub(crate) fn file(&mut self, clean: &str) -> Vec<Entry> {
        match Grammar::parse(Rule::file, clean) {
            Ok(pairs) => self.entries(pairs.flat_map(Pair::into_inner)),
            Err(_) => {
                self.unreadable();
                Vec::new()
            }
        }
    }

    /// One value that stands alone; nothing if the text is blank.
    pub(crate) fn value_alone(&mut self, clean: &str) -> Option<Phrases> {
        match Grammar::parse(Rule::value_alone, clean) {
            Ok(pairs) => self.value_with_rest(pairs.flat_map(Pair::into_inner)),
            Err(_) => Some(self.unreadable()),
        }
    }

    /// Whether anything was found wrong so far.
    pub(crate) fn has_diagnostics(&self) -> bool {
        self.diagnostics.len() > 0
    }

    /// What stands for a value of which nothing could be read.
    pub(crate) fn unreadable(&mut self) -> Phrases {
        let whole = self.source.span(0, self.source.text.len());
        self.tell_not_understood(whole);
        broken_phrases(broken(whole, ""))
    }

    fn place(&self, pair: &Pair<'_, Rule>) -> Span {
        self.source.place(pair.as_span())
    }

    /// Tells of something unread, unless it is known what is wrong with it.
    fn tell_not_understood(&mut self, place: Span) {
        if !self.diagnostics.touch(place) {
            self.diagnostics.push(codes::not_understood(place));
        }
    }
}

/// What could not be read at a place, with the names in it; `clean` is what the grammar saw there.
fn broken(span: Span, clean: &str) -> Term {
    let kind = TermKind::Broken(names_at(span, clean).collect());
    Term { kind, span }
}

/// The names in what the grammar saw at a place and could not read.
fn names_at(span: Span, clean: &str) -> impl Iterator<Item = Name> {
    names::names(clean).into_iter().map(move |(at, name)| {
        let start = span.range().start.saturating_add(at);
        let end = start.saturating_add(name.len());
        Name {
            text: name.to_owned(),
            span: Span::new(span.file, start, end),
        }
    })
}

/// Phrases that are one broken term.
fn broken_phrases(term: Term) -> Phrases {
    let span = term.span;
    let phrase = Phrase {
        terms: vec![term],
        span,
    };
    Phrases {
        phrases: vec![phrase],
        span,
    }
}
