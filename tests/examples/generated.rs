//! Prints a generated job of so many windows, to be measured by other tools:
//! `cargo run -p pelmet-tests --example generated 1000 > job.pelmet`.

#![expect(
    clippy::disallowed_methods,
    reason = "an example is run by hand, from the command line"
)]

use std::io::{self, Write};

use pelmet_tests::generated_job;

fn main() -> io::Result<()> {
    let count = std::env::args().nth(1).and_then(|count| count.parse().ok());
    io::stdout().write_all(generated_job(count.unwrap_or(1_000)).as_bytes())
}
