//! The schema of a packet takes real packets and refuses faulty ones.

#![expect(
    clippy::expect_used,
    reason = "a test stops at the first broken promise"
)]

mod jobs;

use serde_json::{Value, json};

#[test]
fn real_packets_are_valid() {
    let validator = validator();
    for job in [jobs::reading_room(), jobs::winter_garden()] {
        let packet = serde_json::to_value(job.packet()).expect("a packet is plain data");
        let errors: Vec<String> = validator
            .iter_errors(&packet)
            .map(|error| error.to_string())
            .collect();
        assert_eq!(errors, Vec::<String>::new(), "{}", job.title);
    }
}

#[test]
fn planted_faults_are_refused() {
    let validator = validator();
    let sound =
        serde_json::to_value(jobs::reading_room().packet()).expect("a packet is plain data");
    let faults: [(&str, Value); 9] = [
        ("/format", json!("pelmet-packet/0")),
        ("/title", json!(7)),
        ("/units/system", json!("cubits")),
        ("/cloths/0/bought", json!(3.5)),
        ("/cloths/0/bought/mm", json!("3200")),
        ("/cloths/0/piece_count", json!(-1)),
        ("/windows/0/panels/0/pieces/0/layer", json!("middle")),
        ("/windows/0/panels/2/marks/0/number", json!("first")),
        ("/cautions/0", json!({ "about": "shears" })),
    ];
    for (place, fault) in faults {
        let mut packet = sound.clone();
        *packet.pointer_mut(place).expect(place) = fault;
        assert!(!validator.is_valid(&packet), "{place}");
    }
    for field in ["format", "windows", "cloths", "warnings"] {
        let mut packet = sound.clone();
        packet
            .as_object_mut()
            .expect("a packet is an object")
            .remove(field);
        assert!(!validator.is_valid(&packet), "without {field}");
    }
}

/// Every object of a packet refuses a field that the schema does not describe.
#[test]
fn planted_fields_are_refused() {
    let validator = validator();
    let sound =
        serde_json::to_value(jobs::reading_room().packet()).expect("a packet is plain data");
    let mut places = Vec::new();
    objects_of(&sound, String::new(), &mut places);
    assert!(places.len() > 100, "{}", places.len());
    for place in places {
        let mut packet = sound.clone();
        let object = packet.pointer_mut(&place).expect(&place);
        object
            .as_object_mut()
            .expect("only objects are listed")
            .insert(String::from("planted"), json!(1));
        assert!(!validator.is_valid(&packet), "{place}");
    }
}

/// The places of all objects, of each list only those in its first entry.
fn objects_of(value: &Value, place: String, places: &mut Vec<String>) {
    if let Some(list) = value.as_array() {
        let first = list.first().into_iter();
        first.for_each(|first| objects_of(first, format!("{place}/0"), places));
    }
    if let Some(object) = value.as_object() {
        for (field, within) in object {
            objects_of(within, format!("{place}/{field}"), places);
        }
        places.push(place);
    }
}

fn validator() -> jsonschema::Validator {
    jsonschema::draft202012::new(&pelmet_packet::schema()).expect("the schema is a schema")
}
