//! The block of an item: properties, panels, measures and steps.

use std::collections::BTreeMap;

use pelmet_diagnostics::{Span, codes, did_you_mean};
use pelmet_syntax::tree::{Entry, EntryBlock, Phrase, Separator, Term};

use super::{Gathering, WrittenSuppression};
use crate::item::{Item, Step, WorkStep};
use crate::kind::Kind;
use crate::scope::Written;

/// The parts of a block while they are sorted.
#[derive(Default)]
pub(super) struct Parts<'t> {
    pub properties: BTreeMap<&'t str, Written<'t>>,
    pub key_spans: BTreeMap<&'t str, Span>,
    pub panels: Vec<Item<'t>>,
    pub measures: BTreeMap<&'t str, Written<'t>>,
    pub steps: Vec<Step<'t>>,
    pub work_steps: Vec<WorkStep<'t>>,
    pub damaged: bool,
}

impl<'t> Gathering<'t, '_> {
    pub(super) fn parts(&mut self, kind: Kind, entry: &'t Entry, from_library: bool) -> Parts<'t> {
        let mut parts = Parts::default();
        match &entry.block {
            Some(block) => self.block(kind, block, from_library, &mut parts),
            None if entry.is_broken() => parts.damaged = true,
            // What is like another thing needs nothing of its own.
            None if is_like(entry) => {}
            None => {
                let needed = kind.properties().iter().find(|property| property.needed);
                let line = needed.map_or("…", |property| property.example);
                let item = format!("the {}", kind.noun());
                self.report(codes::BlockMissing {
                    span: entry.span,
                    item: &item,
                    line,
                });
                parts.damaged = true;
            }
        }
        parts
    }

    fn block(
        &mut self,
        kind: Kind,
        block: &'t EntryBlock,
        from_library: bool,
        parts: &mut Parts<'t>,
    ) {
        for entry in &block.entries {
            match inner(kind, entry) {
                Inner::Suppression => self.definitions.suppressions.push(WrittenSuppression {
                    entry,
                    within: block.span,
                }),
                Inner::Measure => self.inner_measure(entry, parts),
                Inner::Panel => self.inner_panel(entry, from_library, parts),
                Inner::WorkSteps => self.work_steps(entry, parts),
                Inner::Step => {
                    let told = self.diagnostics.len();
                    parts.steps.extend(self.steps(kind, entry));
                    parts.damaged |= self.diagnostics.len() > told;
                }
                Inner::Property => self.property(kind, entry, parts),
            }
        }
    }

    fn inner_measure(&mut self, entry: &'t Entry, parts: &mut Parts<'t>) {
        match self.measure(entry) {
            Some((name, _, value)) => {
                parts.measures.insert(name, value);
            }
            None => parts.damaged = true,
        }
    }

    fn inner_panel(&mut self, entry: &'t Entry, from_library: bool, parts: &mut Parts<'t>) {
        let Some(panel) = self.item(Kind::Panel, entry, from_library) else {
            parts.damaged = true;
            return;
        };
        match parts.panels.iter().find(|other| other.name == panel.name) {
            Some(earlier) => {
                self.report(codes::NameTwice {
                    second: panel.name_span,
                    first: earlier.name_span,
                    name: panel.name,
                });
            }
            None => parts.panels.push(panel),
        }
    }

    fn property(&mut self, kind: Kind, entry: &'t Entry, parts: &mut Parts<'t>) {
        if entry.head.is_broken() {
            parts.damaged = true;
            return;
        }
        let Some(key) = key(entry) else {
            match key_without_colon(kind, entry) {
                Some((key, span)) => self.report(codes::colon_missing(span, &key)),
                None => self.unknown_step(kind, entry),
            }
            parts.damaged = true;
            return;
        };
        let key_span = entry.head.span;
        // A window takes the parameters of its treatment too, which are single words; whether it has
        // this one is asked when both are known.
        let may_be_parameter = kind == Kind::Window && !key.contains(' ');
        if kind.property(&key).is_none() && !may_be_parameter {
            self.unknown_property(kind, &key, key_span);
            parts.damaged = true;
            return;
        }
        let key = interned(kind, &key, entry);
        if let Some(earlier) = parts.key_spans.get(key) {
            self.report(codes::PropertyTwice {
                second: key_span,
                first: *earlier,
                property: key,
            });
            return;
        }
        parts.key_spans.insert(key, key_span);
        match &entry.value {
            Some(value) => {
                parts.properties.insert(key, Written::phrases(value));
            }
            None => {
                let example = kind
                    .property(key)
                    .map_or_else(|| format!("{key}: "), |known| known.example.to_owned());
                self.report(codes::PropertyEmpty {
                    span: key_span,
                    property: key,
                    line: &example,
                });
                parts.damaged = true;
            }
        }
    }

    fn unknown_step(&mut self, kind: Kind, entry: &'t Entry) {
        let word = entry
            .head
            .phrases
            .first()
            .and_then(|phrase| phrase.terms.first());
        match word.and_then(|term| Some((term.word()?, term.span))) {
            Some((word, span)) if matches!(kind, Kind::Outline | Kind::Pleats) => {
                self.unknown_property(kind, word, span);
            }
            _ => self.report(codes::not_understood(entry.span)),
        }
    }

    /// The steps of some phrases; one that begins with a misspelt word is reported and left out.
    fn known_steps(&mut self, kind: Kind, phrases: &'t [Phrase]) -> Vec<Step<'t>> {
        let mut steps = split_steps(phrases);
        for (index, phrase) in phrases.iter().enumerate() {
            if let Some((word, span)) = misspelt_step(phrase, index == 0) {
                self.unknown_property(kind, word, span);
                steps.clear();
            }
        }
        steps
    }

    fn unknown_property(&mut self, kind: Kind, key: &str, span: Span) {
        let mut known: Vec<&str> = kind
            .properties()
            .iter()
            .map(|property| property.key)
            .collect();
        known.extend(kind.steps().iter().map(|step| step.first_word()));
        self.report(codes::PropertyUnknown {
            span,
            item: kind.noun(),
            property: key,
            known: &known,
        });
    }

    /// The steps of one entry: `margin 2 in`, or `repeat: box 2 in, space 3 in`.
    fn steps(&mut self, kind: Kind, entry: &'t Entry) -> Vec<Step<'t>> {
        let head = entry.head.phrases.first();
        let repeats = entry.first_word() == Some("repeat");
        match (&entry.value, &entry.block, head) {
            (Some(value), None, Some(head)) if repeats => {
                vec![Step::Repeat {
                    head,
                    steps: self.known_steps(kind, &value.phrases),
                    span: entry.span,
                }]
            }
            (None, Some(block), Some(head)) if repeats => {
                let steps = block
                    .entries
                    .iter()
                    .flat_map(|inner| self.steps(kind, inner))
                    .collect();
                vec![Step::Repeat {
                    head,
                    steps,
                    span: entry.span,
                }]
            }
            (None, None, _) if !repeats => self.known_steps(kind, &entry.head.phrases),
            _ => {
                self.not_understood(entry);
                Vec::new()
            }
        }
    }
}

/// What an entry in the block of an item is.
#[derive(Copy, Clone, PartialEq, Eq)]
pub(crate) enum Inner {
    /// A line that accepts a warning.
    Suppression,
    /// A measure of a treatment.
    Measure,
    /// A panel of a treatment.
    Panel,
    /// The steps of a making method.
    WorkSteps,
    /// A step of an outline or of a pleat rule.
    Step,
    /// Anything else: a property, or what was meant for one.
    Property,
}

/// What an entry in the block of an item of this kind is.
pub(crate) fn inner(kind: Kind, entry: &Entry) -> Inner {
    match (entry.first_word().unwrap_or(""), kind) {
        ("accept", _) => Inner::Suppression,
        ("measure", Kind::Treatment) => Inner::Measure,
        ("panel", Kind::Treatment) if entry.block.is_some() || is_like(entry) => Inner::Panel,
        ("steps", Kind::Make) => Inner::WorkSteps,
        (word, _) if is_step(kind, word, entry) => Inner::Step,
        _ => Inner::Property,
    }
}

/// The known key that the words of an entry begin with, where a value follows it and no colon.
pub(crate) fn key_without_colon(kind: Kind, entry: &Entry) -> Option<(String, Span)> {
    let first = entry.head.phrases.first()?;
    let words = first.leading_words();
    let longest = words.len().min(first.terms.len().checked_sub(1)?);
    let known = (1..=longest).rev().find_map(|count| {
        let key = words.get(..count)?.join(" ");
        kind.property(&key)?;
        Some((key, count))
    });
    // A window also takes the parameters of its treatment, which are single words.
    let may_be_parameter = kind == Kind::Window && words.len() == 1 && longest == 1;
    let (key, count) = match known {
        Some(known) => known,
        None if may_be_parameter => ((*words.first()?).to_owned(), 1),
        None => return None,
    };
    let last = first.terms.get(count.checked_sub(1)?)?;
    Some((key, first.terms.first()?.span.to(last.span)))
}

/// The word a phrase begins with, if it was meant for a step and is none. The first phrase begins a
/// step anyhow; a later one may belong to the step before it, unless its word is near to a step's.
fn misspelt_step(phrase: &Phrase, is_first: bool) -> Option<(&str, Span)> {
    let term = phrase.terms.first()?;
    let word = term.word()?;
    let steps = [Kind::Pleats.steps(), Kind::Outline.steps()].concat();
    let steps = || steps.iter().map(|step| step.first_word());
    let meant = is_first || did_you_mean(word, steps()).is_some();
    (meant && !steps().any(|step| step == word)).then_some((word, term.span))
}

/// `fabric rust like oat`, with or without a block.
fn is_like(entry: &Entry) -> bool {
    let mut terms = entry.head.phrases.iter().flat_map(|phrase| &phrase.terms);
    terms.any(|term| term.word() == Some("like"))
}

fn is_step(kind: Kind, word: &str, entry: &Entry) -> bool {
    let repeats = kind == Kind::Pleats && word == "repeat";
    kind.has_step(word) && (repeats || entry.separator.is_none())
}

/// Phrases that begin with the word of a step open one; the others belong to the step before.
fn split_steps(phrases: &[Phrase]) -> Vec<Step<'_>> {
    let mut steps: Vec<Step<'_>> = Vec::new();
    for phrase in phrases {
        let word = phrase.terms.first().and_then(Term::word).unwrap_or("");
        let opens = Kind::Pleats.has_step(word) || Kind::Outline.has_step(word);
        match steps.last_mut() {
            Some(Step::Plain { phrases, span }) if !opens => {
                phrases.push(phrase);
                *span = span.to(phrase.span);
            }
            _ => steps.push(Step::Plain {
                phrases: vec![phrase],
                span: phrase.span,
            }),
        }
    }
    steps
}

/// The key of a property: the words of its head, when a separator follows.
fn key(entry: &Entry) -> Option<String> {
    matches!(entry.separator, Some(Separator::Colon | Separator::Equals))
        .then(|| entry.key())
        .flatten()
}

/// Keys live as long as the tables or the tree, so that no property owns a copy of its key.
fn interned<'t>(kind: Kind, key: &str, entry: &'t Entry) -> &'t str {
    match kind.property(key) {
        Some(property) => property.key,
        None => entry.first_word().unwrap_or(""),
    }
}
