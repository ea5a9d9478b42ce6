//! Items that copy others, and the properties they have in the end.

use std::collections::BTreeMap;

use pelmet_diagnostics::{PlacedText, codes};
use pelmet_syntax::tree::Term;

use crate::item::Item;
use crate::kind::Kind;
use crate::property::Property;
use crate::reader::Reader;
use crate::scope::{Scope, Value};
use crate::term::name_span;

/// How many items may copy one another in a chain.
pub(crate) const MAXIMUM_COPIES: usize = 100;

/// The properties of an item and of those it copies, each with its own scope.
pub(crate) type Properties<'t> = BTreeMap<&'t str, Value<'t>>;

impl<'t> Reader<'t> {
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
            let copies = |(other, _): &(&Item, _)| std::ptr::eq(*other, item);
            if let Some(start) = chain.iter().position(copies) {
                self.report_copies_in_a_circle(chain.iter().skip(start).map(|(item, _)| *item));
                return None;
            }
            if chain.len() >= MAXIMUM_COPIES {
                self.report(codes::names_too_deep(item.name_span, MAXIMUM_COPIES));
                return None;
            }
            chain.push((item, scope.clone()));
        }
        Some(chain)
    }

    /// Reports items that copy one another in a circle, wherever it was entered.
    fn report_copies_in_a_circle<'a>(&mut self, circle: impl Iterator<Item = &'a Item<'t>>)
    where
        't: 'a,
    {
        let likes = circle.filter_map(|item| item.like).map(name_span);
        let mut steps: Vec<PlacedText> = likes.map(|like| self.as_written(like)).collect();
        steps.sort();
        self.report(codes::like_in_a_circle(&steps));
    }

    /// Reports a needed property that is missing. A damaged item may well have it.
    pub fn missing(&mut self, item: &Item<'t>, key: &str) {
        let Some(property) = item.kind.property(key) else {
            return;
        };
        if !item.damaged {
            let owner = format!("the {} `{}`", item.kind.word(), item.name);
            let line = self.line_for(item.panels.first(), property);
            self.report(codes::PropertyMissing {
                span: item.place(),
                item: &owner,
                property: key,
                line: &line,
            });
        }
    }

    /// A line that gives a property, with the name of an item there is where it takes one; a row
    /// takes a `panel` of its own treatment.
    pub fn line_for(&self, panel: Option<&Item<'t>>, property: &Property) -> String {
        let name = match property.key {
            "row" => panel.map(|panel| panel.name.to_owned()),
            "face" | "interlining" | "lining" | "band" => self.definitions.example_of(Kind::Fabric),
            key => Kind::from_word(key).and_then(|kind| self.definitions.example_of(kind)),
        };
        match name {
            Some(name) => format!("{}: {name}", property.key),
            None => property.example.to_owned(),
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
