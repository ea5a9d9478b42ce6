//! The work of the parser is in proportion to the text, and the proportion is known.
//!
//! This test stands in a program of its own, because the limit on calls is one for the whole process.

#![expect(
    clippy::arithmetic_side_effects,
    clippy::unwrap_used,
    reason = "a test stops at the first broken promise"
)]

use std::num::NonZeroUsize;

use pelmet_diagnostics::FileId;
use pelmet_syntax::parse;

/// The ceiling; 656 and 709 were measured for the two sheets.
const CALLS_PER_HUNDRED_BYTES: usize = 720;

#[test]
fn the_parser_makes_few_calls_for_each_byte() {
    for sheet in [
        include_str!("sheets/house-style.pelmet"),
        include_str!("sheets/reading-room.pelmet"),
    ] {
        let calls = calls_for(sheet);
        let allowed = sheet.len() * CALLS_PER_HUNDRED_BYTES / 100;
        assert!(calls <= allowed, "{calls} calls for {} bytes", sheet.len());
        assert!(
            calls * 5 > allowed * 4,
            "{calls} calls are so few that the ceiling is too high"
        );
    }
}

#[test]
fn twice_the_text_takes_twice_the_calls() {
    let sheet = include_str!("sheets/house-style.pelmet");
    let (once, twice) = (calls_for(sheet), calls_for(&sheet.repeat(2)));
    assert!(twice <= once * 2, "{once} calls, then {twice}");
}

#[test]
fn brackets_that_fail_at_every_level_are_not_tried_again_and_again() {
    let nested = |levels: usize| {
        format!(
            "a: {}1 2{}\n",
            "f(b = (".repeat(levels),
            " / / )".repeat(levels * 2)
        )
    };
    let (shallow, deep) = (calls_for(&nested(20)), calls_for(&nested(40)));
    // Each level is looked at once more, so twice the levels may take four times the calls.
    assert!(deep <= shallow * 4, "{shallow} calls, then {deep}");
}

/// The fewest calls with which a text can be read, found by halving.
fn calls_for(text: &str) -> usize {
    let unlimited = entries(text, None);
    let (mut too_few, mut enough) = (0, text.len() * 1_000);
    while enough - too_few > 1 {
        let middle = too_few.midpoint(enough);
        if entries(text, NonZeroUsize::new(middle)) == unlimited {
            enough = middle;
        } else {
            too_few = middle;
        }
    }
    enough
}

/// How many entries are read with so many calls.
fn entries(text: &str, limit: Option<NonZeroUsize>) -> usize {
    // One test at a time may set the limit.
    static TURN: std::sync::Mutex<()> = std::sync::Mutex::new(());
    let _turn = TURN.lock().unwrap();
    pest::set_call_limit(limit);
    let entries = parse(FileId(0), text).file.entries.len();
    pest::set_call_limit(None);
    entries
}
