//! The packets that tests look at.

use pelmet_packet::Packet;

/// The packets of the examples.
pub(crate) fn packets() -> [Packet; 3] {
    [
        include_str!("../../../examples/garden-room/garden-room.packet/packet.json"),
        include_str!("../../../examples/hall/hall.packet/packet.json"),
        include_str!("../../../examples/reading-room/reading-room.packet/packet.json"),
    ]
    .map(packet)
}

/// The packet of the example whose panels have bands.
pub(crate) fn garden_door() -> Packet {
    packet(include_str!(
        "../../../examples/garden-door/garden-door.packet/packet.json"
    ))
}

fn packet(text: &str) -> Packet {
    serde_json::from_str(text).unwrap()
}
