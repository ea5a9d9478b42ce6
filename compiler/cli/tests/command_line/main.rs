//! The command line as a maker meets it: what is printed, what is written, and the exit status.
#![expect(
    clippy::unwrap_used,
    clippy::disallowed_methods,
    reason = "a test writes the files it needs, and stops at the first broken promise"
)]

mod build;
mod changes;
mod check;
mod cloths;
mod display;
mod files;
mod fix;
mod format;
mod other_commands;
mod scratch;

/// A sound design.
const SOUND: &str = "\
units inches
fabric sailcloth { width: 54 in, selvage: 1/2 in }
rod pole { length: 40 in, diameter: 1 in }
make seamed { seam: 1/2 in, lining: none }
treatment valance {
    panel front {
        finished width: 40 in
        drop: 14 in
        head: over rod, tail 4 in
        make: seamed
        face: sailcloth
    }
    row: front
}
window kitchen: valance { opening: 36 in x 40 in, rod: pole }
";
