//! The comparison of two packets.

use pelmet_packet::Packet;

use crate::change::Change;
use crate::renames::Renames;
use crate::walk::Walk;

/// Everything that changed from one packet to another, part by part.
///
/// A window, panel or cloth that only has another name is told as renamed; one that also differs
/// otherwise as gone and another come.
pub fn changes(before: &Packet, after: &Packet) -> Vec<Change> {
    // Nothing in a packet can fail to be written: its keys are fixed and its numbers finite.
    let values = [before, after].map(|packet| serde_json::to_value(packet).unwrap_or_default());
    let [before_value, after_value] = &values;
    let renames = Renames::between(before_value, after_value);
    let mut found = Walk::new(after, &renames).all(before_value, after_value);
    found.sort_by_key(|change| change.part);
    found
}
