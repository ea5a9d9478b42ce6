//! The sheets and drawings of jobs made by hand.
#![expect(
    clippy::unwrap_used,
    reason = "a test stops at the first form that is not there"
)]

#[path = "../../../driver/tests/jobs/mod.rs"]
mod jobs;

mod choice;
mod kept;
mod page;
mod plain_text;

use pelmet_packet::{ExpectationMet, Note, Packet, Warning};
use pelmet_sheets::{PacketChoice, PacketFile, PacketForm, TextOptions};

/// The reading room with something to say under every heading of the checks.
fn reading_room() -> Packet {
    let mut packet = jobs::reading_room().packet();
    packet.expectations.push(ExpectationMet {
        wording: String::from("bridge finished width = 10 in within 1/4 in"),
        came_out: String::from("10 in"),
    });
    packet.warnings.push(Warning {
        code: String::from("join-thinly-covered"),
        title: String::from("`bridge` covers its join by only 1/2 in on each side"),
        sum: vec![String::from("(1 in - 0 in) / 2 = 1/2 in")],
        accepted: Some(String::from("the join is stitched")),
    });
    packet.notes.push(Note {
        code: String::from("pocket-assumed"),
        title: String::from("the pocket is half the rod’s circumference and the ease"),
        sum: Vec::new(),
    });
    packet
}

fn winter_garden() -> Packet {
    jobs::winter_garden().packet()
}

fn at(width: usize) -> TextOptions {
    TextOptions { width }
}

fn usual() -> TextOptions {
    TextOptions::default()
}

/// The files of one form: their names, and what is in them.
fn written(packet: &Packet, form: &str, choice: &PacketChoice) -> Vec<(String, String)> {
    let files = PacketForm::named(form).unwrap().files(packet, choice);
    let texts = files
        .into_iter()
        .map(|PacketFile { name, contents }| (name, String::from_utf8(contents).unwrap()));
    texts.collect()
}

/// The page of a packet.
fn page(packet: &Packet, choice: &PacketChoice) -> String {
    let [(_, page)] = written(packet, "html", choice).try_into().unwrap();
    page
}
