//! Reading values: from phrases to lengths, counts, names and items.
//!
//! Every method returns `None` where the value could not be had, and has then either reported why
//! or knows that somebody else did. What depends on a missing value stays silent.

use std::collections::{BTreeMap, BTreeSet};

use pelmet_diagnostics::{Diagnostic, PlacedText, Sources, Span, codes};
use pelmet_measure::{Length, Style};

use crate::cursor::Cursor;
use crate::gather::Definitions;
use crate::kind::Kind;
use crate::scope::{Binding, MAXIMUM_NAMES_FOLLOWED, Value};

/// What is needed to read values, and the diagnostics of what was found wrong on the way.
pub(crate) struct Reader<'t> {
    /// The items of the job.
    pub definitions: &'t Definitions<'t>,
    /// The texts, for what was typed.
    pub sources: &'t Sources,
    /// How this house writes lengths.
    pub style: Style,
    /// The diagnostics so far.
    pub diagnostics: Vec<Diagnostic>,
    /// The items that something uses.
    pub used: BTreeSet<(Kind, &'t str)>,
    /// The index of each fabric in the job.
    pub fabrics: BTreeMap<&'t str, usize>,
    /// The values being followed, each for a name in the one before.
    pub following: Vec<Span>,
}

/// What a value turns out to be once names that stand for other values are followed.
pub(crate) enum Followed<'t> {
    /// Phrases to be read.
    Value(Value<'t>),
    /// Nothing that may be spoken of.
    Silent,
}

impl<'t> Reader<'t> {
    /// Adds one more to the diagnostics.
    pub fn report(&mut self, diagnostic: impl Into<Diagnostic>) {
        self.diagnostics.push(diagnostic.into());
    }

    /// The value a single name stands for, or the value itself.
    pub fn follow(&mut self, value: &Value<'t>) -> Followed<'t> {
        let mut value = value.clone();
        for _ in 0..MAXIMUM_NAMES_FOLLOWED {
            value = match value.stands_for() {
                Some((Binding::Given(given), _)) => given,
                Some((Binding::Here(written), scope)) => written.within(&scope),
                Some((Binding::Unknown, _)) => return Followed::Silent,
                Some((Binding::Known(_) | Binding::Absent(_), _)) | None => {
                    return Followed::Value(value);
                }
            };
        }
        self.report(codes::names_too_deep(value.span, MAXIMUM_NAMES_FOLLOWED));
        Followed::Silent
    }

    /// A cursor over the one phrase a value should be.
    pub fn one_phrase(
        &mut self,
        value: &Value<'t>,
        property: &str,
        can_be: &str,
    ) -> Option<Cursor<'t>> {
        let Followed::Value(value) = self.follow(value) else {
            return None;
        };
        match value.phrases {
            [only] if only.is_broken() => None,
            [only] => Some(Cursor::new(only, &value.scope)),
            [_, second, ..] => {
                self.word_not_expected(second.span, property, can_be);
                None
            }
            [] => None,
        }
    }

    /// Cursors over the phrases of a value, one each.
    pub fn phrases(&mut self, value: &Value<'t>) -> Option<Vec<Cursor<'t>>> {
        let Followed::Value(value) = self.follow(value) else {
            return None;
        };
        Some(
            value
                .phrases
                .iter()
                .map(|phrase| Cursor::new(phrase, &value.scope))
                .collect(),
        )
    }

    /// Follows a name to the value at `span`, unless that value is being followed already.
    pub fn one_deeper<T>(
        &mut self,
        span: Span,
        read: impl FnOnce(&mut Self) -> Option<T>,
    ) -> Option<T> {
        if let Some(start) = self.following.iter().position(|other| *other == span) {
            self.report_circle(start);
            return None;
        }
        if self.following.len() >= MAXIMUM_NAMES_FOLLOWED {
            self.report(codes::names_too_deep(span, MAXIMUM_NAMES_FOLLOWED));
            return None;
        }
        self.following.push(span);
        let found = read(self);
        self.following.pop();
        found
    }

    /// Reports the circle that the values followed from `start` make, wherever it was entered.
    fn report_circle(&mut self, start: usize) {
        let mut steps: Vec<PlacedText> = self
            .following
            .iter()
            .skip(start)
            .map(|span| self.as_written(*span))
            .collect();
        steps.sort();
        self.report(codes::name_in_a_circle(&steps));
    }

    /// Reports a term that a property cannot be read with.
    pub fn word_not_expected(&mut self, span: Span, property: &str, can_be: &str) {
        if span.start == span.end {
            self.value_unfinished(span, property, can_be);
            return;
        }
        let found = self.sources.snippet(span);
        self.report(codes::WordNotExpected {
            span,
            found,
            property,
            can_be,
        });
    }

    /// Reports that something is missing at a place, so that a property cannot be read.
    pub fn value_unfinished(&mut self, span: Span, property: &str, can_be: &str) {
        self.report(codes::ValueUnfinished {
            span,
            property,
            can_be,
        });
    }

    /// Reports what is left of a phrase, if anything is.
    pub fn nothing_more(
        &mut self,
        cursor: &Cursor<'t>,
        property: &str,
        can_be: &str,
    ) -> Option<()> {
        match cursor.rest() {
            None => Some(()),
            Some(_) if cursor.is_broken() => None,
            Some(rest) => {
                self.word_not_expected(rest, property, can_be);
                None
            }
        }
    }

    /// Reports the comma that is missing before the next words, which begin a `part` of their own.
    pub fn comma_missing(&mut self, cursor: &Cursor<'t>, property: &str, part: &str) {
        let (Some(after), Some(rest)) = (cursor.read_to(), cursor.rest()) else {
            return;
        };
        self.report(codes::CommaMissing {
            comma: after,
            span: rest,
            property,
            part,
        });
    }

    /// What stands at a place, to be told of it.
    pub fn as_written(&self, span: Span) -> PlacedText {
        PlacedText::new(span, self.sources.snippet(span))
    }

    /// A length in words, as a diagnostic gives it.
    pub fn shown(&self, length: Length) -> String {
        self.style.plain(length)
    }
}
