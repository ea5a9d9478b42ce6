//! Two packets walked side by side.

use std::collections::BTreeSet;

use pelmet_packet::Packet;
use serde_json::{Map, Value};

use crate::change::Change;
use crate::difference::Differences;
use crate::fields::{in_words, is_told, told_as_one};
use crate::matched::matched;
use crate::place::Place;
use crate::printed::{name, printed, summed, told_by};
use crate::renames::Renames;
use crate::runs::in_runs;
use crate::things::{Things, Told, things_at};
use crate::together::{differing, in_one};

/// Two packets being walked side by side.
pub(super) struct Walk<'a> {
    differences: Differences,
    renames: &'a Renames,
    found: Vec<Change>,
}

impl<'a> Walk<'a> {
    pub(super) fn new(after: &Packet, renames: &'a Renames) -> Self {
        Walk {
            differences: Differences::written_in(&after.units),
            renames,
            found: Vec::new(),
        }
    }

    /// Everything that changed, in the order of the walk.
    pub(super) fn all(mut self, before: &Value, after: &Value) -> Vec<Change> {
        self.walk(&Place::default(), before, after);
        self.found
    }

    fn walk(&mut self, place: &Place, before: &Value, after: &Value) {
        if before == after || !is_told(&place.path) {
            return;
        }
        if let Some(words) = told_as_one(&place.path) {
            self.as_one(place, words, before, after);
            return;
        }
        match (before, after) {
            (Value::Array(before), Value::Array(after)) => self.lists(place, before, after),
            (Value::Object(fields), Value::Object(others)) if !fields.contains_key("text") => {
                self.fields(place, fields, others);
            }
            _ => self.leaf(place, before, after),
        }
    }

    /// The fields of one thing, those first by which it is told.
    fn fields(&mut self, place: &Place, before: &Map<String, Value>, after: &Map<String, Value>) {
        let told_by = things_at(&place.path).map_or(&[][..], |things| things.told_by);
        let first: Vec<&str> = told_by
            .iter()
            .copied()
            .filter(|field| after.contains_key(*field))
            .collect();
        let all: BTreeSet<&str> = before
            .keys()
            .chain(after.keys())
            .map(String::as_str)
            .collect();
        let others = all.into_iter().filter(|field| !first.contains(field));
        for field in first.iter().copied().chain(others) {
            let [was, is] = [before, after].map(|of| of.get(field).unwrap_or(&Value::Null));
            self.walk(&place.field(field), was, is);
        }
    }

    fn leaf(&mut self, place: &Place, before: &Value, after: &Value) {
        let [was, is] = [before, after].map(|value| summed(&place.path, value));
        if !self.renames.same(was.as_deref(), is.as_deref()) {
            let difference = self.differences.between(before, after);
            let change = place.change(in_words(&place.within), was, is);
            self.found.push(Change {
                difference,
                ..change
            });
        }
    }

    /// Tells once of a thing that something of it changed.
    fn as_one(&mut self, place: &Place, words: &str, before: &Value, after: &Value) {
        let [was, is] = [before, after].map(|value| printed("", value));
        if self.renames.same(was.as_deref(), is.as_deref()) {
            return;
        }
        let change = place.change(words.to_owned(), None, None);
        let found = self.found.iter().rev();
        let mut of_this = found.take_while(|other| other.of.starts_with(&change.of));
        if !of_this.any(|other| *other == change) {
            self.found.push(change);
        }
    }

    fn lists(&mut self, place: &Place, before: &[Value], after: &[Value]) {
        match things_at(&place.path) {
            Some(things) => self.things(place, things, before, after),
            None if before.iter().chain(after).all(Value::is_string) => {
                self.names(place, before, after);
            }
            None => {
                let [before, after] = [before, after].map(|list| Value::Array(list.to_vec()));
                self.leaf(place, &before, &after);
            }
        }
    }

    /// Lists of names: those that are in only one of them came or went.
    fn names(&mut self, place: &Place, before: &[Value], after: &[Value]) {
        let [were, are] = [before, after].map(|list| self.keys(list, &[]));
        for pair in matched(&were, &are, |_, _| true) {
            let [was, is] = pair
                .of(before, after)
                .map(|name| name?.as_str().map(str::to_owned));
            if was.is_none() || is.is_none() {
                self.found
                    .push(place.change(in_words(&place.within), was, is));
            }
        }
    }

    fn things(&mut self, place: &Place, things: &Things, before: &[Value], after: &[Value]) {
        let [were, are] = [before, after].map(|list| self.keys(list, things.known_by));
        let is_same = |one: usize, other: usize| before.get(one) == after.get(other);
        let mut changed = Vec::new();
        for pair in matched(&were, &are, is_same) {
            match pair.of(before, after) {
                [Some(was), Some(is)] if things.told == Told::OneByOne => {
                    self.one_by_one(place, things, was, is);
                }
                [Some(was), Some(is)] if things.told == Told::Together => {
                    self.together(place, things, was, is);
                }
                [Some(was), Some(is)] => {
                    let differs = !differing(&place.path, was, is, self.renames).is_empty();
                    changed.extend(differs.then(|| name(is, things.named_by)));
                }
                [was, is] => self.came_or_went(place, things, was, is),
            }
        }
        changed.retain(|name| !name.is_empty());
        if !changed.is_empty() {
            let what = things.named(&in_runs(&changed));
            self.found.push(place.change(what, None, None));
        }
    }

    /// What the things of a list are known by, the new names in the place of the old.
    fn keys(&self, list: &[Value], known_by: &[&str]) -> Vec<String> {
        let key = |thing: &Value| match thing.as_str() {
            Some(text) => self.renames.renamed(text),
            None => self.renames.renamed(&name(thing, known_by)),
        };
        list.iter().map(key).collect()
    }

    fn one_by_one(&mut self, place: &Place, things: &Things, before: &Value, after: &Value) {
        let [was, is] = [before, after].map(|thing| name(thing, things.named_by));
        let inside = place.inside(things.called, &is);
        if self.renames.has(&was, &is) {
            let change = inside.change(String::from("name"), Some(was), Some(is));
            self.found.push(change);
        }
        self.walk(&inside, before, after);
    }

    fn together(&mut self, place: &Place, things: &Things, before: &Value, after: &Value) {
        let called = things.named(&name(after, things.named_by));
        let mut differing = differing(&place.path, before, after, self.renames);
        differing.sort_by_key(|one| {
            things
                .told_by
                .iter()
                .position(|first| one.is_of(first))
                .unwrap_or(usize::MAX)
        });
        match differing.as_slice() {
            [] => {}
            [one] => {
                let [was, is] = [before, after].map(|thing| one.value(thing));
                let difference = self.differences.between(was, is);
                let what = one.with_its_words(&called);
                let change = place.change(what, one.was.clone(), one.is.clone());
                self.found.push(Change {
                    difference,
                    ..change
                });
            }
            several => {
                let was = in_one(several, |one| one.was.as_deref());
                let is = in_one(several, |one| one.is.as_deref());
                self.found.push(place.change(called, was, is));
            }
        }
    }

    fn came_or_went(
        &mut self,
        place: &Place,
        things: &Things,
        before: Option<&Value>,
        after: Option<&Value>,
    ) {
        let Some(thing) = after.or(before) else {
            return;
        };
        let called = name(thing, things.named_by);
        if called.is_empty() {
            return;
        }
        let [was, is] = [before, after].map(|end| end.map(|thing| told_by(thing, things.told_by)));
        let change = if things.told == Told::OneByOne {
            let inside = place.inside(things.called, &called);
            inside.change(things.called.to_owned(), was, is)
        } else {
            place.change(things.named(&called), was, is)
        };
        self.found.push(change);
    }
}
