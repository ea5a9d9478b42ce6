//! Prints the JSON Schema of what changed between packets.

#![expect(
    clippy::disallowed_methods,
    reason = "an example is run by hand, from the command line"
)]

use std::io::{Write, stdout};

fn main() -> std::io::Result<()> {
    writeln!(stdout(), "{:#}", pelmet_changes::changes_schema())
}
