//! Prints the JSON Schema of a packet.

use std::io::{Write, stdout};

fn main() -> std::io::Result<()> {
    writeln!(stdout(), "{:#}", pelmet_packet::schema())
}
