//! Reading values: from phrases to lengths, counts, names and items.
//!
//! Every method returns `None` where the value could not be had, and has then either reported why
//! or knows that somebody else did. What depends on a missing value stays silent.

use std::collections::{BTreeMap, BTreeSet};

use pelmet_diagnostics::{Diagnostic, Sources, Span, codes, did_you_mean, with_article};
use pelmet_measure::{Length, Style};
use pelmet_syntax::tree::{Argument, Phrase, Term, TermKind};

use crate::cursor::Cursor;
use crate::gather::World;
use crate::item::Item;
use crate::kind::Kind;
use crate::scope::{Binding, Scope, Value, Written};

/// How many names may stand for names that stand for names.
pub(crate) const MAXIMUM_NAMES_FOLLOWED: usize = 100;

/// How many items may copy one another in a chain.
pub(crate) const MAXIMUM_COPIES: usize = 100;

/// What is needed to read values, and the mistakes found on the way.
pub(crate) struct Reader<'t> {
    /// The items of the job.
    pub world: &'t World<'t>,
    /// The texts, for what was typed.
    pub sources: &'t Sources,
    /// How this house writes lengths.
    pub style: Style,
    /// The mistakes so far.
    pub diagnostics: Vec<Diagnostic>,
    /// The items that something uses.
    pub used: BTreeSet<(Kind, &'t str)>,
    /// The index of each fabric in the job.
    pub fabrics: BTreeMap<&'t str, usize>,
    /// The values being followed, each for a name in the one before.
    pub following: Vec<Span>,
}

/// An item somebody refers to, its parameters bound.
#[derive(Clone, Debug)]
pub(crate) struct Referred<'t> {
    /// The item.
    pub item: &'t Item<'t>,
    /// Its parameters.
    pub scope: Scope<'t>,
}

/// The properties of an item and of those it copies, each with its own scope.
pub(crate) type Properties<'t> = BTreeMap<&'t str, Value<'t>>;

/// What a value turns out to be once names that stand for other values are followed.
pub(crate) enum Followed<'t> {
    /// Phrases to be read.
    Value(Value<'t>),
    /// Nothing that may be spoken of.
    Silent,
}

impl<'t> Reader<'t> {
    /// Adds a report.
    pub fn report(&mut self, diagnostic: Diagnostic) {
        self.diagnostics.push(diagnostic);
    }

    /// The value a single name stands for, or the value itself.
    pub fn follow(&mut self, value: &Value<'t>) -> Followed<'t> {
        let mut value = value.clone();
        for _ in 0..MAXIMUM_NAMES_FOLLOWED {
            let [Phrase { terms, .. }] = value.phrases else {
                return Followed::Value(value);
            };
            let [
                Term {
                    kind: TermKind::Name(name),
                    ..
                },
            ] = terms.as_slice()
            else {
                return Followed::Value(value);
            };
            value = match value.scope.find(name) {
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

    /// The item of one of these kinds that a value names, its arguments bound to its parameters.
    pub fn item(&mut self, value: &Value<'t>, kind: Kind, property: &str) -> Option<Referred<'t>> {
        let wanted = with_article(kind.noun());
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
        let wanted = with_article(kind.noun());
        let Some(term) = cursor.next() else {
            self.word_not_expected(cursor.end(), property, &wanted);
            return None;
        };
        self.item_named(term, kind, &cursor.scope.clone(), property)
    }

    fn item_named(
        &mut self,
        term: &'t Term,
        kind: Kind,
        scope: &Scope<'t>,
        property: &str,
    ) -> Option<Referred<'t>> {
        let wanted = with_article(kind.noun());
        let (name, arguments): (&str, &[Argument]) = match &term.kind {
            TermKind::Name(name) => (name, &[]),
            TermKind::Call(call) => (&call.name.text, &call.arguments),
            TermKind::Broken => return None,
            _ => {
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
                    self.report(codes::name_wrong_kind(
                        name_span,
                        name,
                        "measure",
                        kind.noun(),
                        None,
                    ));
                    None
                }
            };
        }
        let world = self.world;
        let Some(item) = world.item(kind, name) else {
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
        let mut steps: Vec<(Span, String)> = self
            .following
            .iter()
            .skip(start)
            .map(|span| (*span, self.sources.snippet(*span).to_owned()))
            .collect();
        steps.sort();
        self.report(codes::name_in_a_circle(&steps));
    }

    /// Reports a name that no item of these kinds has.
    pub fn no_such_item(&mut self, name: &str, span: Span, kind: Kind) {
        let world = self.world;
        if let Some(other) = world.kinds_named(name).next() {
            let described = world.item(other, name).map(|item| item.name_span);
            let report = codes::name_wrong_kind(span, name, other.noun(), kind.noun(), described);
            self.report(report);
            return;
        }
        let suggestion = did_you_mean(name, world.names(kind));
        let report = codes::name_unknown(span, kind.word(), name, suggestion);
        self.report(match library_file_with(name, kind) {
            Some(file) => report.help(format!(
                "the standard library has `{name}`: write `use standard {file}` at the top of the file"
            )),
            None => report,
        });
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
                self.report(codes::argument_twice(argument.span, first, parameter));
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
                // With a wrong argument about, a missing one is the same mistake.
                None if !sound => {}
                None => {
                    let report = codes::argument_missing(
                        call,
                        item.name,
                        parameter.name,
                        Some(parameter.span),
                    );
                    self.report(report);
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
        let (found, typed, span) = match &argument.name {
            Some(name) => {
                let found = item
                    .parameters
                    .iter()
                    .find(|parameter| parameter.name == name.text);
                (found, name.text.as_str(), name.span)
            }
            None => (
                item.parameters.get(position),
                self.sources.snippet(argument.span),
                argument.span,
            ),
        };
        if found.is_none() {
            let known: Vec<&str> = item.parameter_names().collect();
            self.report(codes::argument_unknown(span, typed, item.name, &known));
        }
        found.map(|parameter| parameter.name)
    }

    /// The scope of a template that is only looked over: its parameters stand for nothing yet.
    pub fn scope_of_template(&self, item: &'t Item<'t>, always: &[&'static str]) -> Scope<'t> {
        let parameters = item.parameter_names().map(|name| (name, Binding::Unknown));
        let always = always.iter().map(|name| (*name, Binding::Unknown));
        Scope::default().with(parameters.chain(always).collect())
    }

    /// An item's own properties over those of the item it copies, and so on.
    pub fn properties(&mut self, item: &'t Item<'t>, scope: &Scope<'t>) -> Option<Properties<'t>> {
        let chain = self.copies(item, scope, &[])?;
        Some(overlaid(&chain))
    }

    /// An item and those it copies, each with its scope, the item first. `siblings` are looked
    /// through before the items at file level.
    pub fn copies(
        &mut self,
        item: &'t Item<'t>,
        scope: &Scope<'t>,
        siblings: &'t [Item<'t>],
    ) -> Option<Vec<(&'t Item<'t>, Scope<'t>)>> {
        let mut chain = vec![(item, scope.clone())];
        let mut at_file_level = siblings.is_empty();
        let (mut item, mut scope) = (item, scope.clone());
        while let Some(like) = item.like {
            let sibling = (!at_file_level)
                .then(|| sibling_named(like, item, siblings))
                .flatten();
            (item, scope) = match sibling {
                Some(sibling) => (sibling, scope),
                None => {
                    at_file_level = true;
                    let referred = self.item_named(like, item.kind, &scope, "like")?;
                    (referred.item, referred.scope)
                }
            };
            if chain.len() >= MAXIMUM_COPIES
                || chain.iter().any(|(other, _)| std::ptr::eq(*other, item))
            {
                let steps: Vec<(Span, String)> = chain
                    .iter()
                    .map(|(item, _)| (item.name_span, item.name.to_owned()))
                    .collect();
                self.report(codes::like_in_a_circle(&steps));
                return None;
            }
            chain.push((item, scope.clone()));
        }
        Some(chain)
    }

    /// Reports a needed property that is missing. A damaged item may well have it.
    pub fn missing(&mut self, item: &Item<'t>, key: &str) {
        let Some(property) = item.kind.property(key) else {
            return;
        };
        if !item.damaged {
            let owner = format!("the {} `{}`", item.kind.word(), item.name);
            self.report(codes::property_missing(
                item.place(),
                &owner,
                key,
                property.example,
            ));
        }
    }

    /// Reports every needed property that is missing; whether none is.
    pub fn has_all_needed(&mut self, item: &Item<'t>, properties: &Properties<'t>) -> bool {
        let needed = item
            .kind
            .properties()
            .iter()
            .filter(|property| property.needed);
        let missing: Vec<&str> = needed
            .map(|property| property.key)
            .filter(|key| !properties.contains_key(key))
            .collect();
        for key in &missing {
            self.missing(item, key);
        }
        missing.is_empty()
    }

    /// Reports a term that a property cannot be read with.
    pub fn word_not_expected(&mut self, span: Span, property: &str, can_be: &str) {
        if span.start == span.end {
            self.report(codes::value_unfinished(span, property, can_be));
            return;
        }
        let found = self.sources.snippet(span).to_owned();
        self.report(codes::word_not_expected(span, &found, property, can_be));
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

    /// A length in words, as a message gives it.
    pub fn shown(&self, length: Length) -> String {
        self.style.plain(length)
    }
}

/// Properties of a chain of copies: the first one that has a key gives its value.
pub(crate) fn overlaid<'t>(chain: &[(&'t Item<'t>, Scope<'t>)]) -> Properties<'t> {
    let mut properties = Properties::new();
    for (item, scope) in chain.iter().rev() {
        for (key, written) in &item.properties {
            properties.insert(key, written.within(scope));
        }
    }
    properties
}

fn sibling_named<'t>(
    like: &Term,
    item: &Item<'t>,
    siblings: &'t [Item<'t>],
) -> Option<&'t Item<'t>> {
    let name = like.word()?;
    if name == item.name {
        return None;
    }
    siblings.iter().find(|sibling| sibling.name == name)
}

/// Where the name of a term stands, its arguments left out.
pub(crate) fn name_span(term: &Term) -> Span {
    match &term.kind {
        TermKind::Call(call) => call.name.span,
        _ => term.span,
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
