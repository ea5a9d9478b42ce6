//! What differs in one thing, all of it.

use std::collections::BTreeMap;

use serde_json::Value;

use crate::fields::{in_words, is_told, speaks_for_itself};
use crate::printed::{joined, last, leaves, value_at};
use crate::renames::Renames;

/// Something that differs in one thing.
pub(super) struct Differing {
    /// The fields that lead to it from the thing on.
    field: String,
    pub(super) was: Option<String>,
    pub(super) is: Option<String>,
}

/// Everything that differs in one thing, however deep it stands.
pub(super) fn differing(
    path: &str,
    before: &Value,
    after: &Value,
    renames: &Renames,
) -> Vec<Differing> {
    let mut was = by_field(before);
    let is = by_field(after);
    let mut found: Vec<Differing> = is
        .into_iter()
        .map(|(field, is)| Differing {
            was: was.remove(&field),
            is: Some(is),
            field,
        })
        .collect();
    found.extend(was.into_iter().map(|(field, was)| Differing {
        field,
        was: Some(was),
        is: None,
    }));
    found.retain(|one| {
        !renames.same(one.was.as_deref(), one.is.as_deref()) && is_told(&joined(path, &one.field))
    });
    found
}

/// One side of all that differs, in one text.
pub(super) fn in_one(
    differing: &[Differing],
    side: fn(&Differing) -> Option<&str>,
) -> Option<String> {
    let texts = differing.iter().filter_map(|one| {
        let text = side(one)?;
        Some(if one.speaks_for_itself() {
            text.to_owned()
        } else {
            format!("{} {text}", in_words(&one.field))
        })
    });
    let texts: Vec<String> = texts.collect();
    (!texts.is_empty()).then(|| texts.join(", "))
}

impl Differing {
    /// Whether it stands in this field of the thing.
    pub(super) fn is_of(&self, field: &str) -> bool {
        self.field
            .strip_prefix(field)
            .is_some_and(|rest| rest.is_empty() || rest.starts_with('.'))
    }

    /// Its value in the thing.
    pub(super) fn value<'v>(&self, thing: &'v Value) -> &'v Value {
        value_at(thing, &self.field)
    }

    /// What the thing is called, and what of it this is.
    pub(super) fn with_its_words(&self, called: &str) -> String {
        if self.speaks_for_itself() {
            called.to_owned()
        } else {
            format!("{called}: {}", in_words(&self.field))
        }
    }

    fn speaks_for_itself(&self) -> bool {
        speaks_for_itself(last(&self.field))
    }
}

/// The leaves of a thing by the fields that lead to them; those of a list in one text.
fn by_field(thing: &Value) -> BTreeMap<String, String> {
    let mut fields: BTreeMap<String, String> = BTreeMap::new();
    for (field, text) in leaves(thing) {
        let told = fields.entry(field).or_default();
        if !told.is_empty() {
            told.push_str(", ");
        }
        told.push_str(&text);
    }
    fields
}
