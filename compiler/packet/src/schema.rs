//! The JSON Schema of a packet.

use crate::packet::Packet;

/// The schema of `packet.json`, JSON Schema draft 2020-12, with a description of every field.
pub fn schema() -> serde_json::Value {
    schemars::schema_for!(Packet).to_value()
}
