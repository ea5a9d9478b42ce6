//! The head of an item: its kind, name, parameters, and what it is like.

use std::collections::BTreeMap;

use pelmet_diagnostics::{Span, codes};
use pelmet_syntax::tree::{Argument, Call, Entry, Phrase, Term, TermKind};

use super::Gathering;
use crate::item::{Item, Parameter};
use crate::kind::Kind;
use crate::scope::Written;
use crate::term::bracket_apart;

/// A name, what has to be given to use it, and the terms after them.
struct Named<'t> {
    name: &'t str,
    span: Span,
    parameters: Vec<Parameter<'t>>,
    rest: &'t [Term],
}

impl<'t> Gathering<'t, '_> {
    /// `fabric sand like kelp { … }`, `outline tide(step = 3 in) half { … }`, `window a: b { … }`.
    pub(super) fn item(
        &mut self,
        kind: Kind,
        entry: &'t Entry,
        from_library: bool,
    ) -> Option<Item<'t>> {
        if kind == Kind::Measure {
            return self.measure_item(entry, from_library);
        }
        let mut head = entry.head.phrases.iter();
        let first = head.next()?;
        let Named {
            name,
            span,
            parameters,
            mut rest,
        } = self.named(kind, entry, first)?;
        if self.is_bracket_apart(first.terms.get(1..).unwrap_or_default()) {
            return None;
        }
        let mut like = None;
        if let [word, other, after @ ..] = rest
            && word.word() == Some("like")
        {
            if self.is_bracket_apart(rest.get(1..).unwrap_or_default()) {
                return None;
            }
            like = Some(other);
            rest = after;
        }
        let mut manner: Vec<&[Term]> = Vec::new();
        if !rest.is_empty() {
            manner.push(rest);
        }
        manner.extend(head.map(|phrase| phrase.terms.as_slice()));
        let treatment = self.treatment_of(kind, entry, like.is_some());
        let parts = self.parts(kind, entry, from_library);
        Some(Item {
            kind,
            name,
            name_span: span,
            parameters,
            like,
            treatment,
            manner,
            properties: parts.properties,
            key_spans: parts.key_spans,
            panels: parts.panels,
            measures: parts.measures,
            steps: parts.steps,
            work_steps: parts.work_steps,
            from_library,
            damaged: parts.damaged || entry.is_broken(),
        })
    }

    /// Reports a bracket that does not touch the name at the beginning of these terms.
    fn is_bracket_apart(&mut self, terms: &[Term]) -> bool {
        let [named, rest @ ..] = terms else {
            return false;
        };
        let diagnostic = bracket_apart(named, rest.first());
        let found = diagnostic.is_some();
        self.diagnostics.extend(diagnostic);
        found
    }

    fn named(&mut self, kind: Kind, entry: &Entry, first: &'t Phrase) -> Option<Named<'t>> {
        let [_, named, rest @ ..] = first.terms.as_slice() else {
            self.name_missing(kind, entry.head.span);
            return None;
        };
        match &named.kind {
            TermKind::Name(name) => Some(Named {
                name,
                span: named.span,
                parameters: Vec::new(),
                rest,
            }),
            TermKind::Call(Call { name, arguments }) => Some(Named {
                name: &name.text,
                span: name.span,
                parameters: self.parameters(kind, arguments),
                rest,
            }),
            TermKind::Broken(_) => None,
            _ => {
                self.name_missing(kind, named.span);
                None
            }
        }
    }

    fn name_missing(&mut self, kind: Kind, span: Span) {
        let line = format!("{} my-{} {{", kind.word(), kind.word());
        self.report(codes::NameMissing {
            span,
            kind: kind.noun(),
            line: &line,
        });
    }

    fn parameters(&mut self, kind: Kind, arguments: &'t [Argument]) -> Vec<Parameter<'t>> {
        let mut parameters: Vec<Parameter<'t>> = Vec::new();
        for argument in arguments {
            let Some(parameter) = parameter(argument) else {
                if !argument.value.as_ref().is_some_and(Phrase::is_broken) {
                    self.report(codes::not_understood(argument.span));
                }
                continue;
            };
            if let Some(earlier) = parameters.iter().find(|other| other.name == parameter.name) {
                self.report(codes::NameTwice {
                    second: parameter.span,
                    first: earlier.span,
                    name: parameter.name,
                });
                continue;
            }
            if kind.knows(parameter.name) {
                self.report(codes::NameReserved {
                    span: parameter.span,
                    name: parameter.name,
                    item: kind.noun(),
                });
                continue;
            }
            parameters.push(parameter);
        }
        parameters
    }

    pub(super) fn treatment_of(
        &mut self,
        kind: Kind,
        entry: &'t Entry,
        has_like: bool,
    ) -> Option<&'t Term> {
        let value = entry.value.as_ref();
        if kind != Kind::Window {
            if let Some(value) = value
                && !entry.is_broken()
            {
                self.report(codes::not_understood(value.span));
            }
            return None;
        }
        match value.map(|value| value.phrases.as_slice()) {
            Some([Phrase { terms, .. }]) if terms.len() == 1 => terms.first(),
            Some([Phrase { terms, .. }]) if self.is_bracket_apart(terms) => None,
            None if has_like => None,
            _ => {
                if !entry.is_broken() {
                    let name = entry
                        .head
                        .phrases
                        .first()
                        .and_then(|phrase| phrase.terms.get(1));
                    let line = match name.and_then(Term::word) {
                        Some(name) if name != "from" => format!("window {name}: NAME {{"),
                        _ => String::from("windows from \"windows.csv\": NAME {"),
                    };
                    self.report(codes::PropertyMissing {
                        span: entry.head.span,
                        item: "this window",
                        property: "treatment",
                        line: &line,
                    });
                }
                None
            }
        }
    }

    /// `measure hem: 2 in`, kept as an item so that it can be named and suggested like any other.
    fn measure_item(&mut self, entry: &'t Entry, from_library: bool) -> Option<Item<'t>> {
        let (name, name_span, value) = self.measure(entry)?;
        Some(Item {
            kind: Kind::Measure,
            name,
            name_span,
            parameters: Vec::new(),
            like: None,
            treatment: None,
            manner: Vec::new(),
            properties: BTreeMap::new(),
            key_spans: BTreeMap::new(),
            panels: Vec::new(),
            measures: BTreeMap::from([(name, value)]),
            steps: Vec::new(),
            work_steps: Vec::new(),
            from_library,
            damaged: false,
        })
    }

    pub(super) fn measure(&mut self, entry: &'t Entry) -> Option<(&'t str, Span, Written<'t>)> {
        let named = entry
            .head
            .phrases
            .first()
            .and_then(|phrase| phrase.terms.get(1));
        let name = named.and_then(Term::word);
        match (name, named, &entry.value, &entry.block) {
            (Some(name), Some(named), Some(value), None) if entry.head.phrases.len() == 1 => {
                Some((name, named.span, Written::phrases(value)))
            }
            _ => {
                self.not_understood(entry);
                None
            }
        }
    }
}

pub(crate) fn parameter<'t>(argument: &'t Argument) -> Option<Parameter<'t>> {
    match (&argument.name, &argument.value) {
        (Some(name), Some(value)) => {
            let default = Some(Written::phrase(value));
            Some(Parameter {
                name: &name.text,
                span: name.span,
                default,
            })
        }
        (None, Some(Phrase { terms, span })) => match terms.as_slice() {
            [
                Term {
                    kind: TermKind::Name(name),
                    ..
                },
            ] => Some(Parameter {
                name,
                span: *span,
                default: None,
            }),
            _ => None,
        },
        _ => None,
    }
}
