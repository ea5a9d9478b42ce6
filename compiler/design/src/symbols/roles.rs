//! What parameters are used as, and so what is given for them.
//!
//! A parameter stands for the phrases given for it, whatever they will be read as. Here it is not read
//! but asked of every place that uses it: what stands at `face: cloth` is a fabric, and so is what any
//! window or panel gives for `cloth`. Each role of a parameter is met once with each thing given for
//! it, so that the work does not grow with the windows that a template is made for.

use std::collections::BTreeMap;

use pelmet_diagnostics::Span;
use pelmet_syntax::tree::{Phrase, Phrases};

use super::declare::Item;
use super::refer::Referring;
use super::scope::{Bound, ScopeId};
use super::table::DefinitionId;
use crate::kind::Kind;
use crate::property::Property;

/// Phrases, and the scope their names are looked up in.
#[derive(Copy, Clone)]
pub(super) struct Given<'t> {
    pub phrases: &'t [Phrase],
    pub scope: ScopeId,
}

/// What phrases are read as.
#[derive(Copy, Clone)]
pub(super) enum Role<'t, 'd> {
    /// The value of a property of this item.
    Value(&'static Property, &'d Item<'t>),
    /// One length, count or number.
    Amount,
    /// The name of an item.
    Item(Kind),
}

/// What is known of every parameter, and what is still to be read.
#[derive(Default)]
pub(super) struct Roles<'t, 'd> {
    parameters: BTreeMap<DefinitionId, Parameter<'t, 'd>>,
    unread: Vec<(Given<'t>, Role<'t, 'd>)>,
}

#[derive(Default)]
struct Parameter<'t, 'd> {
    roles: Vec<Role<'t, 'd>>,
    given: Vec<Given<'t>>,
}

impl Role<'_, '_> {
    /// Whether names mean the same in both roles. What a property is a property of matters only where
    /// names are those of its parts.
    fn is_like(&self, other: &Self) -> bool {
        match (self, other) {
            (Self::Value(one, item), Self::Value(other, another)) => {
                let names_parts = matches!(item.kind, Kind::Treatment | Kind::Window | Kind::Make);
                let is_of_one = std::ptr::eq(*item, *another) || !names_parts;
                one.key == other.key && item.kind == another.kind && is_of_one
            }
            (Self::Item(one), Self::Item(other)) => one == other,
            (Self::Amount, Self::Amount) => true,
            (Self::Value(..) | Self::Item(_) | Self::Amount, _) => false,
        }
    }
}

impl<'t, 'd> Referring<'t, 'd> {
    /// Notes what is given for a parameter; it is read once for each role the parameter has.
    pub(super) fn give(&mut self, parameter: DefinitionId, given: Given<'t>) {
        self.name_alone(given);
        let known = self.roles.parameters.entry(parameter).or_default();
        known.given.push(given);
        let unread = known.roles.iter().map(|role| (given, *role));
        self.roles.unread.extend(unread);
    }

    /// Notes what a parameter is used as.
    fn use_as(&mut self, parameter: DefinitionId, role: Role<'t, 'd>) {
        let known = self.roles.parameters.entry(parameter).or_default();
        if known.roles.iter().any(|other| other.is_like(&role)) {
            return;
        }
        known.roles.push(role);
        let unread = known.given.iter().map(|given| (*given, role));
        self.roles.unread.extend(unread);
    }

    /// Reads everything that is given for a parameter in each of its roles.
    pub(super) fn read_what_is_given(&mut self) {
        while let Some((given, role)) = self.roles.unread.pop() {
            self.read(given, role);
        }
    }

    /// Looks up the names in phrases that are read as `role` says.
    pub(super) fn read(&mut self, given: Given<'t>, role: Role<'t, 'd>) {
        if let Some(bound) = self.name_alone(given) {
            if let Bound::Parameter(parameter) = bound {
                self.use_as(parameter, role);
            }
            return;
        }
        match (role, given.phrases) {
            (Role::Value(property, item), phrases) => {
                for (number, phrase) in phrases.iter().enumerate() {
                    let takes = (property.takes, number);
                    self.phrase(takes, &phrase.terms, given.scope, Some(item));
                }
            }
            (Role::Amount, [Phrase { terms, .. }]) => {
                terms.iter().for_each(|term| self.amount(term, given.scope));
            }
            (Role::Item(kind), [Phrase { terms, .. }]) => {
                if let Some(term) = terms.first() {
                    self.item_name(kind, term, given.scope);
                }
            }
            (Role::Amount | Role::Item(_), _) => {}
        }
    }

    /// What phrases that are one name alone are bound to where they are written.
    fn name_alone(&mut self, given: Given<'t>) -> Option<Bound> {
        let [Phrase { terms, .. }] = given.phrases else {
            return None;
        };
        match terms.as_slice() {
            [only] => self.bound(only.word()?, only.span, given.scope),
            _ => None,
        }
    }

    /// Whether a name is bound where it is written; then it is used as `role` says.
    pub(super) fn bound_as(
        &mut self,
        name: &str,
        span: Span,
        scope: ScopeId,
        role: Role<'t, 'd>,
    ) -> bool {
        let bound = self.bound(name, span, scope);
        if let Some(Bound::Parameter(parameter)) = bound {
            self.use_as(parameter, role);
        }
        bound.is_some()
    }
}

impl<'t> Given<'t> {
    /// What stands behind a separator.
    pub fn value(value: &'t Phrases, scope: ScopeId) -> Self {
        let phrases = &value.phrases;
        Self { phrases, scope }
    }

    /// What stands between the brackets of a call.
    pub fn phrase(phrase: &'t Phrase, scope: ScopeId) -> Self {
        let phrases = std::slice::from_ref(phrase);
        Self { phrases, scope }
    }
}
