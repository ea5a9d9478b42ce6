//! Names that stand for values: parameters, measures, and what is always known at a place.

use std::collections::BTreeMap;
use std::rc::Rc;

use pelmet_diagnostics::Span;
use pelmet_syntax::tree::{Phrase, Phrases, Term, TermKind};

use crate::amount::Amount;

/// How many names may stand for names that stand for names.
pub(crate) const MAXIMUM_NAMES_FOLLOWED: usize = 100;

/// A value as written, with the scope its names are looked up in.
///
/// A parameter stands for the phrases given for it, whatever they will be read as: a length, a
/// cloth, a pleat rule.
#[derive(Clone, Debug)]
pub(crate) struct Value<'t> {
    /// The phrases; one or more.
    pub phrases: &'t [Phrase],
    /// All of them.
    pub span: Span,
    /// Where their names are looked up.
    pub scope: Scope<'t>,
}

/// A value as written, its scope still to be said.
#[derive(Copy, Clone, Debug)]
pub(crate) struct Written<'t> {
    /// The phrases; one or more.
    pub phrases: &'t [Phrase],
    /// All of them.
    pub span: Span,
}

impl<'t> Value<'t> {
    /// What the one name that this value is stands for, and the scope that binds it.
    pub fn stands_for(&self) -> Option<(Binding<'t>, Scope<'t>)> {
        let [Phrase { terms, .. }] = self.phrases else {
            return None;
        };
        match terms.as_slice() {
            [
                Term {
                    kind: TermKind::Name(name),
                    ..
                },
            ] => self.scope.find(name),
            _ => None,
        }
    }

    /// Where the value was written that this one stands for: the window's line, where the panel and
    /// the treatment only hand it on.
    pub fn origin(&self) -> Span {
        let mut value = self.clone();
        for _ in 0..MAXIMUM_NAMES_FOLLOWED {
            value = match value.stands_for() {
                Some((Binding::Given(given), _)) => given,
                Some((Binding::Here(written), scope)) => written.within(&scope),
                _ => break,
            };
        }
        value.span
    }
}

impl<'t> Written<'t> {
    /// What stands after the colon of a property.
    pub fn phrases(phrases: &'t Phrases) -> Self {
        Self {
            phrases: &phrases.phrases,
            span: phrases.span,
        }
    }

    /// What stands between the brackets of a call.
    pub fn phrase(phrase: &'t Phrase) -> Self {
        Self {
            phrases: std::slice::from_ref(phrase),
            span: phrase.span,
        }
    }

    /// The value, its names looked up in `scope`.
    pub fn within(self, scope: &Scope<'t>) -> Value<'t> {
        Value {
            phrases: self.phrases,
            span: self.span,
            scope: scope.clone(),
        }
    }
}

/// What a name stands for.
#[derive(Clone, Debug)]
pub(crate) enum Binding<'t> {
    /// What somebody gave for it, to be read in the scope of the giver.
    Given(Value<'t>),
    /// A default or a measure: read in the scope that binds it.
    Here(Written<'t>),
    /// A value known without any text.
    Known(Amount),
    /// A parameter of a template that is only looked over: whatever depends on it stays silent.
    Unknown,
    /// Always known here, if only this property of the window were given.
    Absent(&'static str),
}

/// The names known at a place, innermost first.
#[derive(Clone, Debug, Default)]
pub(crate) struct Scope<'t>(Option<Rc<Node<'t>>>);

#[derive(Debug)]
struct Node<'t> {
    outer: Scope<'t>,
    bindings: BTreeMap<&'t str, Binding<'t>>,
}

impl<'t> Scope<'t> {
    /// A scope with more names inside this one.
    pub fn with(&self, bindings: BTreeMap<&'t str, Binding<'t>>) -> Self {
        Self(Some(Rc::new(Node {
            outer: self.clone(),
            bindings,
        })))
    }

    /// What a name stands for, and the scope that binds it.
    pub fn find(&self, name: &str) -> Option<(Binding<'t>, Self)> {
        let mut scope = self;
        while let Some(node) = &scope.0 {
            if let Some(binding) = node.bindings.get(name) {
                return Some((binding.clone(), scope.clone()));
            }
            scope = &node.outer;
        }
        None
    }

    /// Every name known, for suggestions.
    pub fn names(&self) -> Vec<&'t str> {
        let mut names = Vec::new();
        let mut scope = self;
        while let Some(node) = &scope.0 {
            names.extend(node.bindings.keys().copied());
            scope = &node.outer;
        }
        names
    }
}
