//! Whether what people are to read can be printed: names where they are given, and texts.

use std::collections::BTreeSet;

use pelmet_diagnostics::{Diagnostic, Span, codes};
use pelmet_lettering::first_not_printable;
use pelmet_syntax::tree::{Entry, Phrase, Phrases, Term, TermKind};

use crate::list::list_path;

/// In a block of this name each entry begins with a name of its own.
const STEPS: &str = "steps";

/// Reports what cannot be printed, each text once wherever it stands again.
#[derive(Default)]
pub(crate) struct Printable {
    told: BTreeSet<String>,
}

impl Printable {
    /// Looks at the entries of a file, whose whole text is given.
    pub(crate) fn entries(&mut self, entries: &[Entry], text: &str, found: &mut Vec<Diagnostic>) {
        for entry in entries {
            // A path is not printed.
            if entry.first_word() != Some("use") && list_path(entry).is_none() {
                self.entry(entry, text, found);
            }
            let Some(block) = &entry.block else { continue };
            if entry.first_word() == Some(STEPS) {
                let heads = block.entries.iter().map(|step| &step.head);
                let names = heads.filter_map(|head| head.phrases.first()?.terms.first());
                names.for_each(|name| self.part(name.span, text, found));
            }
            self.entries(&block.entries, text, found);
        }
    }

    /// Looks at a value.
    pub(crate) fn value(&mut self, value: &Phrases, text: &str, found: &mut Vec<Diagnostic>) {
        for phrase in &value.phrases {
            self.texts(phrase, text, found);
        }
    }

    /// Looks at the texts of a phrase, and at those given to what it calls.
    fn texts(&mut self, phrase: &Phrase, text: &str, found: &mut Vec<Diagnostic>) {
        for term in &phrase.terms {
            match &term.kind {
                TermKind::Text(_) => self.part(term.span, text, found),
                TermKind::Call(call) => {
                    let given = call.arguments.iter().filter_map(|it| it.value.as_ref());
                    given.for_each(|phrase| self.texts(phrase, text, found));
                }
                _ => {}
            }
        }
    }

    /// Looks at what stands in one place.
    pub(crate) fn part(&mut self, span: Span, text: &str, found: &mut Vec<Diagnostic>) {
        let part = text.get(span.range()).unwrap_or_default();
        let Some((at, sign)) = first_not_printable(part) else {
            return;
        };
        if self.told.insert(part.to_owned()) {
            found.push(codes::sign_not_printed(letter(span, part, at), sign));
        }
    }

    /// Names are given in a head, after the word for what they name; where they are only used,
    /// nothing is said of them.
    fn entry(&mut self, entry: &Entry, text: &str, found: &mut Vec<Diagnostic>) {
        for phrase in &entry.head.phrases {
            names(phrase).for_each(|span| self.part(span, text, found));
            self.texts(phrase, text, found);
        }
        if let Some(value) = &entry.value {
            self.value(value, text, found);
        }
    }
}

/// Where names are given in a phrase of a head.
fn names(phrase: &Phrase) -> impl Iterator<Item = Span> {
    let place = |term: &Term| match &term.kind {
        TermKind::Name(_) => Some(term.span),
        TermKind::Call(call) => Some(call.name.span),
        _ => None,
    };
    phrase.terms.iter().skip(1).filter_map(place)
}

/// The place of the letter that begins at a byte of a part.
fn letter(span: Span, part: &str, at: usize) -> Span {
    let letter = part.get(at..).and_then(|rest| rest.chars().next());
    let start = span.range().start.saturating_add(at);
    let end = start.saturating_add(letter.map_or(0, char::len_utf8));
    Span::new(span.file, start, end)
}
