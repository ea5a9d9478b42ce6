//! The names in phrases and terms, each looked up in its scope and then among the items.

use pelmet_diagnostics::{Span, codes};
use pelmet_measure::Unit;
use pelmet_model::Figure;
use pelmet_syntax::tree::{Argument, Call, Name, Term, TermKind};

use super::declare::Item;
use super::fill::{fill, said};
use super::refer::Referring;
use super::roles::{Given, Role};
use super::scope::{Bound, ScopeId};
use super::table::{DefinitionId, Meaning};
use crate::closed_sets::ClosedSet;
use crate::form::{FormPart, Takes};
use crate::keyword::Keyword;
use crate::kind::Kind;
use crate::size::Size;

impl<'t, 'd> Referring<'t, 'd> {
    /// The names and words of a phrase of something that is written so, as its number says; `item` is
    /// what it is a property of.
    pub(super) fn phrase(
        &mut self,
        (takes, number): (Takes, usize),
        terms: &'t [Term],
        scope: ScopeId,
        item: Option<&'d Item<'t>>,
    ) {
        let filled = fill(takes.phrase(number), terms);
        let size = filled.iter().find_map(|part| Size::of_word(part.words?));
        for filled in filled {
            match (filled.words, filled.part, filled.terms) {
                (Some(words), _, terms) => self.refer_all(terms, Some(Meaning::Word(words))),
                (None, _, [term]) if matches!(term.kind, TermKind::Broken(_)) => {}
                (None, FormPart::Name(kind), [term]) => self.item_name(kind, term, scope),
                (None, FormPart::Sentence, [text]) => self.figures(text.span),
                (None, FormPart::Path, [text]) => self.used_file(text),
                (None, FormPart::Subject, names) => self.subject(names, size),
                (None, part, terms) if part.is_sum() => {
                    terms.iter().for_each(|term| self.amount(term, scope));
                }
                (None, part, terms) => {
                    let meaning = self.meaning(part, terms, item);
                    self.refer_all(terms, meaning);
                }
            }
        }
        for term in terms {
            if let TermKind::Broken(names) = &term.kind {
                let parts = takes.phrase(number).flatten();
                self.broken(names, &parts.collect::<Vec<_>>(), scope, item);
            }
        }
    }

    /// The names in what could not be read: each is what it can be where such parts are written.
    fn broken(
        &mut self,
        names: &[Name],
        parts: &[&FormPart],
        scope: ScopeId,
        item: Option<&Item<'t>>,
    ) {
        for Name { text, span } in names {
            let named = |part: &&FormPart| {
                if let FormPart::Name(kind) = part {
                    return self.declared.named(*kind, text)?.id;
                }
                let is_panel = matches!(part, FormPart::Panel);
                item.filter(|_| is_panel)
                    .and_then(|item| self.panel_of(item, text))
            };
            match parts.iter().find_map(named) {
                Some(id) => self.refer(*span, Meaning::Definition(id)),
                None => self.amount_named(text, *span, scope),
            }
        }
    }

    /// What stands behind a keyword, if these terms begin with it.
    pub(super) fn behind(&mut self, keyword: &Keyword, terms: &'t [Term]) -> Option<&'t [Term]> {
        let (words, behind) = terms.split_at_checked(said(keyword.word, terms)?)?;
        self.refer_all(words, Some(Meaning::Word(keyword.word)));
        Some(behind)
    }

    /// Notes the meaning that several terms have together, if they have one.
    fn refer_all(&mut self, terms: &[Term], meaning: Option<Meaning>) {
        if let (Some(first), Some(last), Some(meaning)) = (terms.first(), terms.last(), meaning) {
            self.refer(first.span.to(last.span), meaning);
        }
    }

    /// What the words that stand for a part of a form mean, in a property of `item`.
    fn meaning(&self, part: FormPart, terms: &[Term], item: Option<&Item<'t>>) -> Option<Meaning> {
        let words: Vec<&str> = terms.iter().map(Term::word).collect::<Option<_>>()?;
        let words = words.join(" ");
        match part {
            FormPart::Panel => self.panel_of(item?, &words).map(Meaning::Definition),
            FormPart::StepName => {
                let step = self.declared.step_of(item?, &words);
                Some(step.map_or(Meaning::OwnWords, Meaning::Definition))
            }
            FormPart::Unit => Unit::from_word(&words).map(|unit| Meaning::Word(unit.symbol())),
            FormPart::Figure => Figure::from_name(&words).map(Meaning::Figure),
            FormPart::LibraryFile => self.library_file(&words).map(Meaning::File),
            FormPart::Warning => codes::by_slug(&words).map(Meaning::Warning),
            FormPart::OwnWords => Some(Meaning::OwnWords),
            FormPart::Words(_)
            | FormPart::AnyOf(_)
            | FormPart::OneOf(_)
            | FormPart::Length
            | FormPart::Range
            | FormPart::Count
            | FormPart::Number
            | FormPart::Percentage
            | FormPart::Weight
            | FormPart::WeightOfArea
            | FormPart::Times
            | FormPart::Point
            | FormPart::Name(_)
            | FormPart::Subject
            | FormPart::Sum
            | FormPart::Text
            | FormPart::Sentence
            | FormPart::Path
            | FormPart::Perhaps(_) => None,
        }
    }

    /// A panel that a treatment names, or a window the panel of its treatment.
    fn panel_of(&self, item: &Item<'t>, name: &str) -> Option<DefinitionId> {
        if item.kind == Kind::Window {
            let treatment = self.declared.treatment_of(item)?;
            return self.declared.panel_of(treatment, name);
        }
        self.declared.panel_of(item, name)
    }

    /// The name of an item of this kind, with what is given for its parameters. The name of a notion
    /// stands for nothing but itself.
    pub(super) fn item_name(&mut self, kind: Kind, term: &'t Term, scope: ScopeId) {
        match &term.kind {
            TermKind::Name(name) => {
                let is_bound =
                    kind != Kind::Notion && self.bound_as(name, term.span, scope, Role::Item(kind));
                if !is_bound {
                    self.item_of_name(kind, name, term.span);
                }
            }
            TermKind::Call(call) => {
                let item = self.item_of_name(kind, &call.name.text, call.name.span);
                self.arguments(item, call, scope);
            }
            TermKind::Broken(names) => {
                for name in names {
                    self.item_of_name(kind, &name.text, name.span);
                }
            }
            TermKind::Number(_)
            | TermKind::Text(_)
            | TermKind::Point(_)
            | TermKind::Group(_)
            | TermKind::Times
            | TermKind::Negative(_)
            | TermKind::Binary { .. } => {}
        }
    }

    /// The item at the edge of a sheet that a name stands for.
    pub(super) fn item_of_name(
        &mut self,
        kind: Kind,
        name: &str,
        span: Span,
    ) -> Option<&'d Item<'t>> {
        let item = self.declared.named(kind, name);
        match item.and_then(|item| item.id) {
            Some(id) => self.refer(span, Meaning::Definition(id)),
            None if kind == Kind::Notion => self.refer(span, Meaning::Undescribed(kind)),
            None => {}
        }
        item
    }

    /// What is given for the parameters of an item, in order or by name.
    fn arguments(&mut self, item: Option<&'d Item<'t>>, call: &'t Call, scope: ScopeId) {
        for (position, argument) in call.arguments.iter().enumerate() {
            let parameter = item.and_then(|item| parameter_for(item, position, argument));
            if let Some((name, parameter)) = argument.name.as_ref().zip(parameter) {
                self.refer(name.span, Meaning::Definition(parameter));
            }
            let Some(phrase) = &argument.value else {
                continue;
            };
            match parameter {
                Some(parameter) => self.give(parameter, Given::phrase(phrase, scope)),
                // Nobody knows what it is for, but a sum is a sum.
                None => phrase
                    .terms
                    .iter()
                    .for_each(|term| self.amount(term, scope)),
            }
        }
    }

    /// The names in a sum.
    pub(super) fn amount(&mut self, term: &'t Term, scope: ScopeId) {
        match &term.kind {
            TermKind::Name(name) => self.amount_named(name, term.span, scope),
            TermKind::Group(inner) | TermKind::Negative(inner) => self.amount(inner, scope),
            TermKind::Binary { left, right, .. } => {
                self.amount(left, scope);
                self.amount(right, scope);
            }
            TermKind::Point(places) => places.iter().for_each(|place| self.amount(place, scope)),
            TermKind::Call(call) => self.arguments(None, call, scope),
            TermKind::Broken(names) => {
                for name in names {
                    self.amount_named(&name.text, name.span, scope);
                }
            }
            TermKind::Number(_) | TermKind::Text(_) | TermKind::Times => {}
        }
    }

    fn amount_named(&mut self, name: &str, span: Span, scope: ScopeId) {
        if !self.bound_as(name, span, scope, Role::Amount) {
            self.item_of_name(Kind::Measure, name, span);
        }
    }

    /// What a name is bound to where it is written, which is noted.
    pub(super) fn bound(&mut self, name: &str, span: Span, scope: ScopeId) -> Option<Bound> {
        let bound = self.scopes.find(scope, name)?;
        self.refer(
            span,
            match bound {
                Bound::Parameter(id) | Bound::Measure(id) => Meaning::Definition(id),
                Bound::Known(known) => Meaning::Known(known),
            },
        );
        Some(bound)
    }
}

fn parameter_for(item: &Item<'_>, position: usize, argument: &Argument) -> Option<DefinitionId> {
    match &argument.name {
        Some(name) => item.parameter(&name.text),
        None => item.parameters.get(position).map(|(_, id)| *id),
    }
}
