//! The names that are known at a place of a text.

use std::collections::BTreeMap;

use super::table::DefinitionId;
use crate::closed_sets::{ClosedSet, KnownName};
use crate::kind::Kind;

/// What a name is bound to where it is written.
#[derive(Copy, Clone)]
pub(super) enum Bound {
    /// A parameter.
    Parameter(DefinitionId),
    /// A measure of a treatment.
    Measure(DefinitionId),
    /// A length that is always known there.
    Known(KnownName),
}

/// A scope, by its number.
#[derive(Copy, Clone)]
pub(super) struct ScopeId(usize);

/// Every scope, each within another.
pub(super) struct Scopes<'t>(Vec<Scope<'t>>);

struct Scope<'t> {
    names: BTreeMap<&'t str, Bound>,
    outer: ScopeId,
}

impl<'t> Scopes<'t> {
    /// The scope of the edge of a sheet, where no name is bound.
    pub const ROOT: ScopeId = ScopeId(0);

    pub fn new() -> Self {
        let root = Scope {
            names: BTreeMap::new(),
            outer: Self::ROOT,
        };
        Self(vec![root])
    }

    /// A scope with the names of these definitions inside another.
    pub fn within(
        &mut self,
        outer: ScopeId,
        definitions: &[(&'t str, DefinitionId)],
        bound: fn(DefinitionId) -> Bound,
    ) -> ScopeId {
        let names = definitions.iter().map(|(name, id)| (*name, bound(*id)));
        self.add(outer, names.collect())
    }

    fn add(&mut self, outer: ScopeId, names: BTreeMap<&'t str, Bound>) -> ScopeId {
        if names.is_empty() {
            return outer;
        }
        self.0.push(Scope { names, outer });
        ScopeId(self.0.len().saturating_sub(1))
    }

    /// A scope with what is always known where items of this kind are described.
    pub fn known(&mut self, outer: ScopeId, kind: Kind) -> ScopeId {
        let known = kind.known_names().iter();
        let names = known.map(|known| (known.word(), Bound::Known(*known)));
        self.add(outer, names.collect())
    }

    /// What a name is bound to, innermost first.
    pub fn find(&self, scope: ScopeId, name: &str) -> Option<Bound> {
        let mut at = scope;
        while at.0 > Self::ROOT.0 {
            let scope = self.0.get(at.0)?;
            if let Some(bound) = scope.names.get(name) {
                return Some(*bound);
            }
            at = scope.outer;
        }
        None
    }
}
