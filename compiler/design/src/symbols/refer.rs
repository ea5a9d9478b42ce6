//! The names in the items of a job, each looked up where it is written.

use std::cell::OnceCell;

use pelmet_diagnostics::Span;
use pelmet_syntax::tree::{Argument, Entry, Phrase, Phrases, Term, TermKind};

use super::declare::{Declarations, Item, Written, corner};
use super::roles::{Given, Role, Roles};
use super::scope::{Bound, ScopeId, Scopes};
use super::table::{DefinitionId, Meaning, Reference};
use crate::form::Takes;
use crate::gather::{Inner, inner, key_without_colon};
use crate::kind::Kind;
use crate::list::NAME_COLUMN;
use crate::load::{List, Loaded};

/// Looking up the names of a job, and what was found.
pub(super) struct Referring<'t, 'd> {
    pub loaded: &'t Loaded,
    pub declared: &'d Declarations<'t>,
    pub scopes: Scopes<'t>,
    pub roles: Roles<'t, 'd>,
    /// The treatments that windows have, once anything asks for them.
    pub hung: OnceCell<Vec<&'d Item<'t>>>,
    found: Vec<Reference>,
}

impl<'t, 'd> Referring<'t, 'd> {
    pub fn new(loaded: &'t Loaded, declared: &'d Declarations<'t>) -> Self {
        Self {
            loaded,
            declared,
            scopes: Scopes::new(),
            roles: Roles::default(),
            hung: OnceCell::new(),
            found: Vec::new(),
        }
    }

    /// The references of every file, in no order and some of them more than once.
    pub fn run(mut self) -> Vec<Reference> {
        for file in self.loaded.trees() {
            file.entries.iter().for_each(|entry| self.line(entry));
        }
        for item in self.declared.items.iter().filter(|item| !item.is_inner) {
            match item.written {
                Written::Entry(entry) => self.item(item, entry),
                Written::List(entry, list) => self.list(item, entry, list),
                Written::Row(row) => {
                    for (key, value) in &row.cells {
                        self.value(item, key, Given::value(value, Scopes::ROOT));
                    }
                }
            }
        }
        self.read_what_is_given();
        self.found
    }

    /// Notes what stands at a place.
    pub(super) fn refer(&mut self, span: Span, meaning: Meaning) {
        self.found.push(Reference { span, meaning });
    }

    /// Notes what the first word of an entry is.
    pub(super) fn first_word_is(&mut self, entry: &Entry, meaning: Meaning) {
        let phrase = entry.head.phrases.first();
        if let Some(term) = phrase.and_then(|phrase| phrase.terms.first()) {
            self.refer(term.span, meaning);
        }
    }

    fn item(&mut self, item: &'d Item<'t>, entry: &'t Entry) {
        let known = if item.kind == Kind::Treatment {
            self.scopes.known(Scopes::ROOT, item.kind)
        } else {
            Scopes::ROOT
        };
        let scope = self
            .scopes
            .within(known, &item.parameters, Bound::Parameter);
        self.head(item, entry, scope, None);
        let inside = if item.kind == Kind::Outline {
            self.scopes.known(scope, item.kind)
        } else {
            self.scopes.within(scope, &item.measures, Bound::Measure)
        };
        self.block(item, entry, inside);
    }

    /// The head of an item: its kind, what its parameters are by default, what it is like, how it is
    /// drawn, its treatment. `neighbour` is what it is like where that is a panel of its treatment.
    fn head(
        &mut self,
        item: &'d Item<'t>,
        entry: &'t Entry,
        scope: ScopeId,
        neighbour: Option<DefinitionId>,
    ) {
        self.first_word_is(entry, Meaning::Kind(item.kind));
        let Some((first, others)) = entry.head.phrases.split_first() else {
            return;
        };
        if let Some(TermKind::Call(call)) = first.terms.get(1).map(|named| &named.kind) {
            self.defaults(item, &call.arguments, scope);
        }
        let mut manner = first.terms.get(2..).unwrap_or_default();
        if let (Some(like), [word, _, rest @ ..]) = (item.like, manner) {
            self.refer(word.span, Meaning::Word("like"));
            match neighbour {
                Some(neighbour) => self.refer(like.span, Meaning::Definition(neighbour)),
                None => self.item_name(item.kind, like, scope),
            }
            manner = rest;
        }
        let others = others.iter().map(|phrase| phrase.terms.as_slice());
        for terms in std::iter::once(manner).chain(others) {
            self.phrase((item.kind.manner(), 0), terms, scope, Some(item));
        }
        if let Some(treatment) = item.treatment {
            self.item_name(Kind::Treatment, treatment, scope);
        }
        if item.kind == Kind::Measure {
            self.measure(entry, Scopes::ROOT);
        }
    }

    fn defaults(&mut self, item: &'d Item<'t>, arguments: &'t [Argument], scope: ScopeId) {
        for argument in arguments {
            let name = argument.name.as_ref();
            let parameter = name.and_then(|name| item.parameter(&name.text));
            if let Some((parameter, phrase)) = parameter.zip(argument.value.as_ref()) {
                self.give(parameter, Given::phrase(phrase, scope));
            }
        }
    }

    fn measure(&mut self, entry: &'t Entry, scope: ScopeId) {
        if let Some(value) = &entry.value {
            self.read(Given::value(value, scope), Role::Amount);
        }
    }

    fn block(&mut self, item: &'d Item<'t>, entry: &'t Entry, scope: ScopeId) {
        // Panels stand in the order in which they were declared.
        let mut panels = item.panels.iter();
        for within in entry.block.iter().flat_map(|block| &block.entries) {
            match inner(item.kind, within) {
                Inner::Suppression => self.line(within),
                Inner::Measure => {
                    self.first_word_is(within, Meaning::Kind(Kind::Measure));
                    self.measure(within, scope);
                }
                Inner::Panel => {
                    let panel = panels.next().map(|(_, panel)| *panel);
                    self.panel(item, panel, within, scope);
                }
                Inner::WorkSteps => self.work_steps(within, scope),
                Inner::Step => self.step(item.kind, within, scope),
                Inner::Property => self.property(item, within, scope),
            }
        }
    }

    /// A panel of a treatment, by its number; it is like a neighbour before it is like a panel
    /// elsewhere.
    fn panel(
        &mut self,
        treatment: &'d Item<'t>,
        panel: Option<usize>,
        entry: &'t Entry,
        scope: ScopeId,
    ) {
        let declared = self.declared;
        let Some(panel) = panel.and_then(|panel| declared.items.get(panel)) else {
            return;
        };
        let like = panel.like.and_then(Term::word);
        let neighbour = like.and_then(|name| declared.panel_of(treatment, name));
        let neighbour = neighbour.filter(|neighbour| Some(*neighbour) != panel.id);
        self.head(panel, entry, scope, neighbour);
        self.block(panel, entry, scope);
    }

    /// A step of an outline or of a pleat rule, or several in one line.
    fn step(&mut self, kind: Kind, entry: &'t Entry, scope: ScopeId) {
        let is_repeat = entry.separator.is_some() || entry.block.is_some();
        self.steps(kind, &entry.head, scope);
        if let Some(value) = entry.value.as_ref().filter(|_| is_repeat) {
            self.steps(kind, value, scope);
        }
        for within in entry.block.iter().flat_map(|block| &block.entries) {
            self.step(kind, within, scope);
        }
    }

    /// Phrases of steps; one that begins with no word of a step belongs to the step before it.
    fn steps(&mut self, kind: Kind, phrases: &'t Phrases, scope: ScopeId) {
        let steps = kind.steps();
        let mut under_way = Takes::NOTHING;
        for phrase in &phrases.phrases {
            let terms = self.without_corner(kind, phrase);
            let begun = steps
                .iter()
                .find_map(|step| Some((step.takes, self.behind(step, terms)?)));
            let number = usize::from(begun.is_none());
            let (takes, terms) = begun.unwrap_or((under_way, terms));
            self.phrase((takes, number), terms, scope, None);
            under_way = takes;
        }
    }

    /// A phrase without the name that it gives to a corner.
    fn without_corner(&mut self, kind: Kind, phrase: &'t Phrase) -> &'t [Term] {
        match phrase.terms.as_slice() {
            [terms @ .., word, _] if kind == Kind::Outline && corner(phrase).is_some() => {
                self.refer(word.span, Meaning::Word("as"));
                terms
            }
            terms => terms,
        }
    }

    fn property(&mut self, item: &'d Item<'t>, entry: &'t Entry, scope: ScopeId) {
        match (entry.separator, entry.key()) {
            (Some(_), Some(key)) => {
                self.key(item, &key, entry.head.span);
                if let Some(value) = &entry.value {
                    self.value(item, &key, Given::value(value, scope));
                }
            }
            _ => self.property_without_colon(item, entry, scope),
        }
    }

    /// `width 54 in`, where the colon was forgotten.
    fn property_without_colon(&mut self, item: &'d Item<'t>, entry: &'t Entry, scope: ScopeId) {
        let Some((key, span)) = key_without_colon(item.kind, entry) else {
            return;
        };
        self.key(item, &key, span);
        let first = entry.head.phrases.first();
        let terms = first.and_then(|phrase| phrase.terms.get(key.split(' ').count()..));
        if let (Some(property), Some(terms)) = (item.kind.property(&key), terms) {
            self.phrase((property.takes, 0), terms, scope, Some(item));
        }
    }

    /// The key of a property: one that its kind has, or a parameter of the window's treatment.
    fn key(&mut self, item: &'d Item<'t>, key: &str, span: Span) {
        if let Some(property) = item.kind.property(key) {
            self.refer(span, Meaning::Property(item.kind, property.key));
        }
        if let Some(parameter) = self.parameter_of_treatment(item, key) {
            self.refer(span, Meaning::Definition(parameter));
        }
    }

    fn value(&mut self, item: &'d Item<'t>, key: &str, given: Given<'t>) {
        if let Some(property) = item.kind.property(key) {
            self.read(given, Role::Value(property, item));
        }
        if let Some(parameter) = self.parameter_of_treatment(item, key) {
            self.give(parameter, given);
        }
    }

    fn parameter_of_treatment(&self, item: &'d Item<'t>, key: &str) -> Option<DefinitionId> {
        let is_window = item.kind == Kind::Window;
        let treatment = is_window.then(|| self.declared.treatment_of(item));
        treatment.flatten()?.parameter(key)
    }

    /// `windows from "list.csv": treatment { … }`, and the first line of the list.
    fn list(&mut self, shared: &'d Item<'t>, entry: &'t Entry, list: Option<&'t List>) {
        let words = entry.head.phrases.first().map(|phrase| &phrase.terms);
        if let Some([windows, from, path]) = words.map(Vec::as_slice) {
            self.refer(windows.span, Meaning::Word("windows"));
            self.refer(from.span, Meaning::Word("from"));
            if let Some(list) = list {
                self.refer(path.span, Meaning::File(list.file));
            }
        }
        if let Some(treatment) = shared.treatment {
            self.item_name(Kind::Treatment, treatment, Scopes::ROOT);
        }
        self.block(shared, entry, Scopes::ROOT);
        for column in list.iter().flat_map(|list| &list.columns) {
            if column.text == NAME_COLUMN {
                self.refer(column.span, Meaning::Word(NAME_COLUMN));
            } else {
                self.key(shared, &column.text, column.span);
            }
        }
    }
}
