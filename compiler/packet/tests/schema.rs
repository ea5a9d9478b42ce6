//! The published schema is the one of this code, and describes all it names.

const PUBLISHED: &str = include_str!("../packet.schema.json");

#[test]
fn the_published_schema_is_up_to_date() {
    let now = format!("{:#}\n", pelmet_packet::schema());
    assert!(
        now == PUBLISHED,
        "renew it: cargo run -p pelmet-packet --example schema > compiler/packet/packet.schema.json"
    );
}

#[test]
fn every_field_of_the_schema_says_what_it_is() {
    let schema = pelmet_packet::schema();
    assert_eq!(
        schema["$schema"],
        "https://json-schema.org/draft/2020-12/schema"
    );
    let definitions = schema["$defs"]
        .as_object()
        .expect("the schema has definitions");
    for (name, definition) in definitions
        .iter()
        .chain([(&String::from("Packet"), &schema)])
    {
        assert!(definition["description"].is_string(), "{name}");
        for (field, of) in definition["properties"].as_object().into_iter().flatten() {
            assert!(of["description"].is_string(), "{name}.{field}");
        }
    }
}
