//! What changed from one packet to another.

#![expect(
    clippy::unwrap_used,
    clippy::panic,
    clippy::indexing_slicing,
    clippy::arithmetic_side_effects,
    reason = "a test stops at the first broken promise"
)]

#[path = "../../driver/tests/jobs/mod.rs"]
mod jobs;

use std::collections::{BTreeMap, BTreeSet};

use pelmet_changes::{Change, changes};
use pelmet_packet::{Packet, schema};
use serde_json::{Map, Value, json};

fn packets() -> [Packet; 2] {
    [
        jobs::reading_room().packet(),
        jobs::winter_garden().packet(),
    ]
}

#[test]
fn a_packet_against_itself_says_nothing() {
    for packet in packets() {
        assert_eq!(changes(&packet, &packet), []);
    }
}

/// What is not told, each for a reason named in the table of what is not told.
const UNTOLD: [&str; 13] = [
    "windows.panels.marks.from_centre",
    "windows.panels.marks.fold.brought_to_from_centre",
    "windows.panels.marks.stitch.other_from_centre",
    "windows.panels.pleats.flat",
    "format",
    "windows.row.panels",
    "windows.panels.cut_width",
    "windows.panels.cut_length",
    "windows.panels.marks.number",
    "windows.panels.making_order.number",
    "windows.panels.pieces.draw_width",
    "windows.panels.pieces.outline_from",
    "cautions.sheets",
];

/// What is told without the new value.
const TOLD_BY_NAME: [&str; 14] = [
    "cloths.sections",
    "windows.panels.pieces.sewn",
    "cloths.bolts",
    // A mark is known by what is marked: the one went and another came.
    "windows.panels.marks.kind",
    "windows.panels.tape",
    "cloths.placed",
    "cloths.bands",
    "windows.panels.outline",
    "windows.panels.pieces.outline",
    "windows.panels.creases",
    "windows.panels.stretches",
    "windows.panels.layers",
    "windows.panels.folded",
    "windows.panels.making_order",
];

fn is_among(path: &str, paths: &[&str]) -> bool {
    let stands_in = |rest: &str| rest.is_empty() || rest.starts_with('.');
    paths
        .iter()
        .any(|one| path.strip_prefix(one).is_some_and(stands_in))
}

/// One leaf of every field of every packet is given another value, and each such change is told.
#[test]
fn every_field_that_changes_is_told() {
    let variants = variants();
    let mut seen = BTreeSet::new();
    for packet in packets() {
        let value = serde_json::to_value(&packet).unwrap();
        let mut leaves = BTreeMap::new();
        gather(&mut Vec::new(), String::new(), &value, &mut leaves);
        leaves.retain(|path, _| seen.insert(path.clone()));
        for (path, steps) in leaves {
            let (changed, now) = mutated(&value, &steps, &variants);
            let told = changes(&packet, &changed);
            if is_among(&path, &UNTOLD) {
                assert_eq!(told, [], "{path}");
            } else if is_among(&path, &TOLD_BY_NAME) {
                assert!(!told.is_empty(), "{path}");
            } else {
                let says = |one: &Change| serde_json::to_string(one).unwrap().contains(&now);
                assert!(told.iter().any(says), "{path}: {now}: {told:?}");
            }
        }
    }
    assert!(seen.len() > 150, "{}", seen.len());
}

/// The steps from a packet to something in it.
type Steps = Vec<Step>;

#[derive(Clone, Debug)]
enum Step {
    Field(String),
    At(usize),
}

/// The first leaf of every field.
fn gather(steps: &mut Steps, path: String, value: &Value, found: &mut BTreeMap<String, Steps>) {
    match value {
        Value::Object(fields) if !fields.contains_key("text") => {
            for (field, value) in fields {
                let dot = if path.is_empty() { "" } else { "." };
                steps.push(Step::Field(field.clone()));
                gather(steps, format!("{path}{dot}{field}"), value, found);
                steps.pop();
            }
        }
        Value::Array(items) => {
            for (at, item) in items.iter().enumerate() {
                steps.push(Step::At(at));
                gather(steps, path.clone(), item, found);
                steps.pop();
            }
        }
        Value::Null => {}
        _ => {
            found.entry(path).or_insert_with(|| steps.clone());
        }
    }
}

/// A packet with another value at one place, and that value as it is printed.
fn mutated(packet: &Value, steps: &Steps, variants: &[Vec<Value>]) -> (Packet, String) {
    let mut tried = Vec::new();
    let here = at(&mut packet.clone(), steps).clone();
    for other in others(&here, variants) {
        let mut changed = packet.clone();
        *at(&mut changed, steps) = other.clone();
        match serde_json::from_value(changed) {
            Ok(packet) if other != here => return (packet, text_of(&other)),
            _ => tried.push(other),
        }
    }
    panic!("no other value fits at {steps:?}: {tried:?}");
}

fn at<'v>(value: &'v mut Value, steps: &[Step]) -> &'v mut Value {
    steps.iter().fold(value, |value, step| match step {
        Step::Field(field) => &mut value[field],
        Step::At(at) => &mut value[at],
    })
}

/// Other values of the same kind.
fn others(value: &Value, variants: &[Vec<Value>]) -> Vec<Value> {
    match value {
        Value::Bool(yes) => vec![json!(!yes)],
        Value::Number(number) if number.is_u64() => vec![json!(number.as_u64().unwrap() + 1)],
        Value::Number(number) => vec![json!(number.as_f64().unwrap() + 1.5)],
        Value::String(text) => {
            let longer = json!(format!("{text}x"));
            let of_its_type = variants.iter().filter(|fixed| fixed.contains(value));
            [longer]
                .into_iter()
                .chain(of_its_type.flatten().cloned())
                .collect()
        }
        Value::Object(fields) => vec![Value::Object(other_amount(fields))],
        _ => Vec::new(),
    }
}

/// Another amount, with another text.
fn other_amount(fields: &Map<String, Value>) -> Map<String, Value> {
    let mut other = fields.clone();
    for value in other.values_mut() {
        *value = match &*value {
            Value::Number(number) if number.is_f64() => json!(number.as_f64().unwrap() + 1.0),
            Value::String(text) => json!(format!("other {text}")),
            other => other.clone(),
        };
    }
    // A caution and an allowance are known by these.
    for known_by in ["name", "edge"] {
        if let Some(value) = fields.get(known_by) {
            other[known_by] = value.clone();
        }
    }
    other
}

fn text_of(value: &Value) -> String {
    match value {
        Value::Object(fields) => fields["text"].as_str().unwrap().to_owned(),
        Value::String(text) => text.replace('_', " "),
        Value::Bool(yes) => String::from(if *yes { "yes" } else { "no" }),
        other => other.to_string(),
    }
}

/// The fixed values of every type that has some, as the schema has them.
fn variants() -> Vec<Vec<Value>> {
    let schema = schema();
    let types = schema["$defs"].as_object().unwrap().values();
    let of_type = |of: &Value| -> Vec<Value> {
        let each = of["oneOf"].as_array().into_iter().flatten();
        each.map(|one| one["const"].clone()).collect()
    };
    let found: Vec<Vec<Value>> = types.map(of_type).filter(|one| one.len() > 1).collect();
    assert!(found.len() > 10, "{found:?}");
    found
}
