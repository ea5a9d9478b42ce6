//! Values of a packet as they are printed.

use serde_json::Value;

use crate::fields::{in_words, is_fixed_value, speaks_for_itself, sum_of};

/// A value that is printed as one text: a number, a name, or an amount with its text beside it.
/// Nothing for a list, for what is made of several, and for what is not there.
pub(super) fn leaf(field: &str, value: &Value) -> Option<String> {
    match value {
        Value::String(text) if is_fixed_value(field) => Some(text.replace('_', " ")),
        Value::String(text) => Some(text.clone()),
        Value::Number(number) => Some(number.to_string()),
        Value::Bool(true) => Some(String::from("yes")),
        Value::Bool(false) => Some(String::from("no")),
        Value::Object(fields) => Some(fields.get("text")?.as_str()?.to_owned()),
        Value::Null | Value::Array(_) => None,
    }
}

/// A value of any kind in words, field after field; nothing for what is not there.
pub(super) fn printed(field: &str, value: &Value) -> Option<String> {
    if let Some(text) = leaf(field, value) {
        return Some(text);
    }
    let parts: Vec<String> = match value {
        Value::Object(fields) => fields
            .iter()
            .filter_map(|(field, value)| with_its_words(field, value))
            .collect(),
        Value::Array(items) => items
            .iter()
            .filter_map(|item| printed(field, item))
            .collect(),
        _ => return None,
    };
    Some(parts.join(", "))
}

/// Some fields of a thing in words, in the order given, however deep they stand.
pub(super) fn told_by(thing: &Value, fields: &[&str]) -> String {
    let told: Vec<String> = fields
        .iter()
        .filter_map(|path| with_its_words(last(path), value_at(thing, path)))
        .collect();
    told.join(", ")
}

/// The value at a path in words: all of it, or what stands for it.
pub(super) fn summed(path: &str, value: &Value) -> Option<String> {
    match sum_of(path) {
        Some(fields) if value.is_object() => Some(told_by(value, fields)),
        _ => printed(last(path), value),
    }
}

/// A value after the words of its field, unless it needs none.
fn with_its_words(field: &str, value: &Value) -> Option<String> {
    let text = printed(field, value).filter(|text| !text.is_empty())?;
    if speaks_for_itself(field) {
        Some(text)
    } else {
        Some(format!("{} {text}", in_words(field)))
    }
}

/// Some fields of a thing as one name: `landing wing`.
pub(super) fn name(thing: &Value, fields: &[&str]) -> String {
    let parts: Vec<String> = fields
        .iter()
        .filter_map(|field| printed(field, thing.get(field)?))
        .collect();
    parts.join(" ")
}

/// Every leaf of a value, with the fields that lead to it. What has no place of its own in a list is
/// told in the order of the list.
pub(super) fn leaves(value: &Value) -> Vec<(String, String)> {
    let mut found = Vec::new();
    gather(String::new(), "", value, &mut found);
    found
}

fn gather(path: String, field: &str, value: &Value, found: &mut Vec<(String, String)>) {
    if let Some(text) = leaf(field, value) {
        found.push((path, text));
        return;
    }
    match value {
        Value::Object(fields) => {
            for (field, value) in fields {
                gather(joined(&path, field), field, value, found);
            }
        }
        Value::Array(items) => {
            for item in items {
                gather(path.clone(), field, item, found);
            }
        }
        _ => {}
    }
}

/// The value at a path within another.
pub(super) fn value_at<'v>(thing: &'v Value, path: &str) -> &'v Value {
    let fields = path.split('.');
    fields.fold(thing, |here, field| here.get(field).unwrap_or(&Value::Null))
}

/// The last field of a path.
pub(super) fn last(path: &str) -> &str {
    path.rsplit('.').next().unwrap_or(path)
}

/// A path and the field after it.
pub(super) fn joined(path: &str, field: &str) -> String {
    if path.is_empty() {
        field.to_owned()
    } else {
        format!("{path}.{field}")
    }
}
