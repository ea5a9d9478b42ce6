//! References to items: by name, with arguments, through parameters that stand for names.

use std::collections::BTreeMap;

use pelmet_diagnostics::{Diagnostic, Span, codes, did_you_mean, with_article};
use pelmet_syntax::tree::{Argument, Term, TermKind};

use crate::closed_sets::{ClosedSet, KnownName};
use crate::cursor::Cursor;
use crate::item::Item;
use crate::kind::Kind;
use crate::reader::Reader;
use crate::scope::{Binding, Scope, Value, Written};
use crate::term::{bracket_apart, name_span};

/// After so many diagnostics no nearest name is looked for.
const MOST_SUGGESTED: usize = 100;

/// An item somebody refers to, its parameters bound.
#[derive(Clone, Debug)]
pub(crate) struct Referred<'t> {
    /// The item.
    pub item: &'t Item<'t>,
    /// Its parameters.
    pub scope: Scope<'t>,
}

impl<'t> Reader<'t> {
    /// The item of this kind that a value names, its arguments bound to its parameters.
    pub fn item(&mut self, value: &Value<'t>, kind: Kind, property: &str) -> Option<Referred<'t>> {
        let wanted = self.wanted(kind);
        let mut cursor = self.one_phrase(value, property, &wanted)?;
        let referred = self.item_at(&mut cursor, kind, property)?;
        self.nothing_more(&cursor, property, &wanted)?;
        Some(referred)
    }

    /// The item that the next term names.
    pub fn item_at(
        &mut self,
        cursor: &mut Cursor<'t>,
        kind: Kind,
        property: &str,
    ) -> Option<Referred<'t>> {
        // What could not be read may be the arguments.
        if cursor.is_broken() {
            return None;
        }
        let Some(term) = cursor.next() else {
            let wanted = self.wanted(kind);
            self.word_not_expected(cursor.end(), property, &wanted);
            return None;
        };
        if let Some(diagnostic) = bracket_apart(term, cursor.peek()) {
            cursor.next();
            self.report(diagnostic);
            return None;
        }
        self.item_named(term, kind, &cursor.scope.clone(), property)
    }

    /// The item that a term names, its names looked up in `scope`.
    pub fn item_named(
        &mut self,
        term: &'t Term,
        kind: Kind,
        scope: &Scope<'t>,
        property: &str,
    ) -> Option<Referred<'t>> {
        let (name, arguments): (&str, &[Argument]) = match &term.kind {
            TermKind::Name(name) => (name, &[]),
            TermKind::Call(call) => (&call.name.text, &call.arguments),
            TermKind::Broken(_) => return None,
            _ => {
                let wanted = self.wanted(kind);
                self.word_not_expected(term.span, property, &wanted);
                return None;
            }
        };
        let name_span = name_span(term);
        if let (TermKind::Name(_), Some((binding, binder))) = (&term.kind, scope.find(name)) {
            return match binding {
                Binding::Given(value) => self.item_given(&value, kind, property),
                Binding::Here(written) => self.item_given(&written.within(&binder), kind, property),
                Binding::Unknown => None,
                Binding::Known(_) | Binding::Absent(_) => {
                    self.report(codes::NameWrongKind {
                        used: name_span,
                        name,
                        found: "measure",
                        wanted: kind.noun(),
                        described: None,
                    });
                    None
                }
            };
        }
        let definitions = self.definitions;
        let Some(item) = definitions.item(kind, name) else {
            self.no_such_item(name, name_span, kind);
            return None;
        };
        self.used.insert((item.kind, item.name));
        let scope = self.bind(item, arguments, term.span, scope)?;
        Some(Referred { item, scope })
    }

    /// The item that the value of a parameter names.
    fn item_given(
        &mut self,
        value: &Value<'t>,
        kind: Kind,
        property: &str,
    ) -> Option<Referred<'t>> {
        self.one_deeper(value.span, |reader| reader.item(value, kind, property))
    }

    /// Reports a name that no item of this kind has.
    pub fn no_such_item(&mut self, name: &str, span: Span, kind: Kind) {
        let definitions = self.definitions;
        if let Some(other) = definitions.kinds_named(name).next() {
            let described = definitions.item(other, name).map(|item| item.name_span);
            self.report(codes::NameWrongKind {
                used: span,
                name,
                found: other.noun(),
                wanted: kind.noun(),
                described,
            });
            return;
        }
        // Comparing a name with all others is slow, and nobody reads so many diagnostics.
        let few = self.diagnostics.len() < MOST_SUGGESTED;
        let suggestion = few
            .then(|| did_you_mean(name, definitions.names(kind)))
            .flatten();
        let in_library = library_file_with(name, kind);
        if self.may_be_unread(name, suggestion.as_deref(), in_library) {
            return;
        }
        let diagnostic = Diagnostic::from(codes::NameUnknown {
            span,
            noun: kind.noun(),
            word: kind.word(),
            name,
            suggestion,
        });
        self.report(match in_library {
            Some(file) => diagnostic.help(format!(
                "the standard library has `{name}`: write `use standard {file}` at the top of the file"
            )),
            None => diagnostic,
        });
    }

    /// Whether an unknown name may belong to something that could not be read and was reported.
    pub fn may_be_unread(
        &self,
        name: &str,
        suggestion: Option<&str>,
        in_library: Option<&str>,
    ) -> bool {
        let unread = self.definitions.unread;
        self.definitions.of_no_kind.contains(name)
            || unread.library && in_library.is_some()
            || unread.files && suggestion.is_none()
    }

    /// What a property takes that takes an item of this kind: "the name of a rod, such as `pole`".
    pub fn wanted(&self, kind: Kind) -> String {
        let wanted = format!("the name of {}", with_article(kind.noun()));
        match self.definitions.example_of(kind) {
            Some(name) => format!("{wanted}, such as `{name}`"),
            None => wanted,
        }
    }

    /// The scope of an item's own text: its parameters bound to the arguments, read in `caller`.
    pub fn bind(
        &mut self,
        item: &'t Item<'t>,
        arguments: &'t [Argument],
        call: Span,
        caller: &Scope<'t>,
    ) -> Option<Scope<'t>> {
        let mut bindings: BTreeMap<&'t str, Binding<'t>> = BTreeMap::new();
        let mut given: BTreeMap<&'t str, Span> = BTreeMap::new();
        let mut sound = true;
        for (position, argument) in arguments.iter().enumerate() {
            let Some(parameter) = self.parameter_for(item, position, argument) else {
                sound = false;
                continue;
            };
            if let Some(first) = given.insert(parameter, argument.span) {
                self.report(codes::ArgumentTwice {
                    second: argument.span,
                    first,
                    argument: parameter,
                });
                sound = false;
            }
            if let Some(phrase) = &argument.value {
                bindings.insert(
                    parameter,
                    Binding::Given(Written::phrase(phrase).within(caller)),
                );
            }
        }
        for parameter in &item.parameters {
            if bindings.contains_key(parameter.name) {
                continue;
            }
            match parameter.default {
                Some(default) => {
                    bindings.insert(parameter.name, Binding::Here(default));
                }
                // With a wrong argument about, a missing one has the same cause.
                None if !sound => {}
                None => {
                    self.report(codes::ArgumentMissing {
                        used: call,
                        template: item.name,
                        parameter: parameter.name,
                        asked: Some(parameter.span),
                    });
                    sound = false;
                }
            }
        }
        sound.then(|| Scope::default().with(bindings))
    }

    /// The parameter that an argument is for.
    pub fn parameter_for(
        &mut self,
        item: &'t Item<'t>,
        position: usize,
        argument: &'t Argument,
    ) -> Option<&'t str> {
        let known: Vec<&str> = item.parameter_names().collect();
        let (found, typed, span) = match &argument.name {
            Some(name) => {
                let found = item
                    .parameters
                    .iter()
                    .find(|parameter| parameter.name == name.text);
                (found, name.text.as_str(), name.span)
            }
            None => {
                let found = item.parameters.get(position);
                if position == item.parameters.len() {
                    self.report(codes::too_many_arguments(argument.span, item.name, &known));
                }
                return found.map(|parameter| parameter.name);
            }
        };
        if found.is_none() {
            self.report(codes::ArgumentUnknown {
                span,
                argument: typed,
                template: item.name,
                known: &known,
            });
        }
        found.map(|parameter| parameter.name)
    }

    /// The scope of a template that is only looked over: its parameters stand for nothing yet.
    pub fn scope_of_template(&self, item: &'t Item<'t>, always: &[KnownName]) -> Scope<'t> {
        let parameters = item.parameter_names().map(|name| (name, Binding::Unknown));
        let always = always.iter().map(|name| (name.word(), Binding::Unknown));
        Scope::default().with(parameters.chain(always).collect())
    }
}

/// The file of the standard library that makes an item of this name.
fn library_file_with(name: &str, kind: Kind) -> Option<&'static str> {
    let makes = |line: &str| {
        let after = line
            .strip_prefix(kind.word())
            .and_then(|rest| rest.strip_prefix(' '));
        let after = after.and_then(|rest| rest.strip_prefix(name));
        after.is_some_and(|rest| rest.starts_with([' ', '(']))
    };
    let files = pelmet_stdlib::FILES.iter();
    files
        .filter(|file| file.text.lines().any(makes))
        .map(|file| file.name)
        .next()
}
