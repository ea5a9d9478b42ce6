//! The packet: everything a design emits, as one value, with its JSON Schema.
