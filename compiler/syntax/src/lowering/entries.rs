//! Entries, their values and their blocks.

use pelmet_diagnostics::{Span, codes};
use pest::iterators::Pair;

use super::{Lowering, broken, broken_phrases};
use crate::grammar::Rule;
use crate::tree::{Entry, EntryBlock, Phrases, Separator, Term};

/// Entries with these first words compare, and do it with `=`.
const COMPARING: [&str; 2] = ["expect", "measure"];

impl Lowering<'_, '_> {
    pub(super) fn entries<'i>(
        &mut self,
        pairs: impl Iterator<Item = Pair<'i, Rule>>,
    ) -> Vec<Entry> {
        pairs
            .filter(|pair| pair.as_rule() == Rule::entry)
            .map(|pair| self.entry(pair))
            .collect()
    }

    fn entry(&mut self, pair: Pair<'_, Rule>) -> Entry {
        let span = self.place(&pair);
        let mut parts = Parts::default();
        for part in pair.into_inner() {
            self.part(part, &mut parts);
        }
        let head = parts.head.unwrap_or_else(|| self.headless(span));
        let separator = parts
            .separator
            .map(|(sign, place)| self.separator(sign, place, &head));
        Entry {
            head,
            separator,
            value: parts.value,
            block: parts.block,
            span,
        }
    }

    fn part(&mut self, pair: Pair<'_, Rule>, parts: &mut Parts) {
        let place = self.place(&pair);
        match pair.as_rule() {
            Rule::head => parts.head = Some(self.phrases(pair)),
            Rule::value => parts.value = Some(self.phrases(pair)),
            Rule::separator if pair.as_str() == "=" => {
                parts.separator = Some((Separator::Equals, place));
            }
            Rule::separator => parts.separator = Some((Separator::Colon, place)),
            Rule::block => parts.block = Some(self.block(pair)),
            _ => {
                let unread = self.unread(&pair);
                let spoilt = if parts.separator.is_some() {
                    &mut parts.value
                } else {
                    &mut parts.head
                };
                spoil(spoilt, unread);
            }
        }
    }

    fn block(&mut self, pair: Pair<'_, Rule>) -> EntryBlock {
        let span = self.place(&pair);
        let entries = self.entries(pair.into_inner());
        EntryBlock { entries, span }
    }

    /// A value with what could not be read after it.
    pub(super) fn value_with_rest<'i>(
        &mut self,
        pairs: impl Iterator<Item = Pair<'i, Rule>>,
    ) -> Option<Phrases> {
        let mut value = None;
        for pair in pairs {
            match pair.as_rule() {
                Rule::value => value = Some(self.phrases(pair)),
                Rule::EOI => {}
                _ => {
                    let unread = self.unread(&pair);
                    spoil(&mut value, unread);
                }
            }
        }
        value
    }

    /// A block that no head goes before.
    fn headless(&mut self, entry: Span) -> Phrases {
        let brace = Span {
            end: entry.start.saturating_add(1),
            ..entry
        };
        self.tell_not_understood(brace);
        broken_phrases(broken(brace, ""))
    }

    /// Reports what could not be read, without blanks at its end.
    fn unread(&mut self, pair: &Pair<'_, Rule>) -> Term {
        let start = pair.as_span().start();
        let clean = pair.as_str().trim_end();
        let place = self.source.span(start, start.saturating_add(clean.len()));
        self.tell_not_understood(place);
        broken(place, clean)
    }

    fn separator(&mut self, sign: Separator, place: Span, head: &Phrases) -> Separator {
        let first = head
            .phrases
            .first()
            .and_then(|phrase| phrase.terms.first()?.word());
        let compares = first.is_some_and(|word| COMPARING.contains(&word));
        if sign == Separator::Equals && !compares {
            let with_blanks = Span {
                start: head.span.end,
                ..place
            };
            self.diagnostics.push(codes::equals_for_colon(with_blanks));
            return Separator::Colon;
        }
        sign
    }
}

/// The parts of an entry, as far as they have been met.
#[derive(Default)]
struct Parts {
    head: Option<Phrases>,
    separator: Option<(Separator, Span)>,
    value: Option<Phrases>,
    block: Option<EntryBlock>,
}

/// Adds a broken term to the phrases that it stands beside.
fn spoil(phrases: &mut Option<Phrases>, broken: Term) {
    let Some(phrases) = phrases else {
        *phrases = Some(broken_phrases(broken));
        return;
    };
    phrases.span = phrases.span.to(broken.span);
    if let Some(last) = phrases.phrases.last_mut() {
        last.span = last.span.to(broken.span);
        last.terms.push(broken);
    }
}
