//! The packets that tests look at: those of the examples, built once.

use std::sync::OnceLock;

use pelmet_design::{Project, ReadFinding};
use pelmet_packet::Packet;

/// The packets of some examples.
pub(crate) fn packets() -> [Packet; 3] {
    static PACKETS: OnceLock<[Packet; 3]> = OnceLock::new();
    let built = || {
        [
            "garden-room/garden-room",
            "hall/hall",
            "reading-room/reading-room",
        ]
        .map(packet_of)
    };
    PACKETS.get_or_init(built).clone()
}

/// The packet of the example whose panels have bands.
pub(crate) fn garden_door() -> Packet {
    static PACKET: OnceLock<Packet> = OnceLock::new();
    PACKET
        .get_or_init(|| packet_of("garden-door/garden-door"))
        .clone()
}

fn packet_of(design: &str) -> Packet {
    let (folder, file) = design.split_once('/').unwrap();
    let built = pelmet_driver::build(&format!("{file}.pelmet"), &Example { folder });
    built.packet.unwrap()
}

/// The folder of an example.
struct Example<'a> {
    folder: &'a str,
}

impl Project for Example<'_> {
    #[expect(
        clippy::disallowed_methods,
        reason = "tests read the examples where they stand"
    )]
    fn read(&self, path: &str) -> Result<Vec<u8>, ReadFinding> {
        let examples = concat!(env!("CARGO_MANIFEST_DIR"), "/../../examples");
        let file = format!("{examples}/{}/{path}", self.folder);
        std::fs::read(file).map_err(|_| ReadFinding::NotFound)
    }
}
