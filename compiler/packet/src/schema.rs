//! The JSON Schema of a packet.

use schemars::generate::SchemaSettings;
use schemars::transform::RecursiveTransform;
use schemars::{JsonSchema, Schema};

use crate::Packet;

/// The schema of `packet.json`, with a description of every field. A field that it does not describe
/// is a fault.
pub fn schema() -> serde_json::Value {
    schema_of::<Packet>()
}

/// The schema of a value that is written for programs as a packet is: JSON Schema draft 2020-12, every
/// object closed to what it does not describe.
pub fn schema_of<T: JsonSchema>() -> serde_json::Value {
    let settings = SchemaSettings::draft2020_12().with_transform(RecursiveTransform(close));
    settings
        .into_generator()
        .into_root_schema_for::<T>()
        .to_value()
}

/// Allows an object no more properties than it describes.
fn close(schema: &mut Schema) {
    if schema.get("properties").is_some() {
        schema.insert(String::from("additionalProperties"), false.into());
    }
}
