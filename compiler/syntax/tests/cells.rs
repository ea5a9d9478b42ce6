//! Values that stand alone, such as the cells of a table.

#![expect(
    clippy::arithmetic_side_effects,
    reason = "a test stops at the first broken promise"
)]

use pelmet_diagnostics::{FileId, Span};
use pelmet_syntax::parse_value;

const FILE: FileId = FileId(3);
const TABLE: &str = "name,drop\nété,15,5 in\nwing,  \nbib,17 in /\nrow,1\n";

#[test]
fn a_blank_cell_has_no_value() {
    let (value, diagnostics) = parse_value(FILE, TABLE, at("  "));
    assert!(value.is_none() && diagnostics.is_empty());
}

#[test]
fn a_place_outside_the_text_has_no_value() {
    for (start, end) in [(0, 9_999), (11, 13)] {
        let (value, diagnostics) = parse_value(FILE, TABLE, Span::new(FILE, start, end));
        assert!(value.is_none() && diagnostics.is_empty(), "at {start}");
    }
}

#[test]
fn places_are_those_of_the_whole_text() {
    let (value, diagnostics) = parse_value(FILE, TABLE, at("15,5 in"));
    assert_eq!(value.map(|value| value.span), Some(at("15,5 in")));
    assert_eq!(
        diagnostics
            .first()
            .and_then(|diagnostic| diagnostic.primary()),
        Some(at("15,5"))
    );
}

#[test]
fn what_cannot_be_read_is_told_and_broken() {
    let (value, diagnostics) = parse_value(FILE, TABLE, at("17 in /"));
    assert_eq!(
        value.map(|value| value.to_string()).as_deref(),
        Some("[17 in] <broken>")
    );
    assert_eq!(
        diagnostics
            .first()
            .and_then(|diagnostic| diagnostic.primary()),
        Some(at("/"))
    );
}

#[test]
fn two_lines_are_not_one_value() {
    let within = Span::new(FILE, 0, TABLE.len());
    let (value, diagnostics) = parse_value(FILE, TABLE, within);
    assert!(value.is_some_and(|value| value.is_broken()));
    assert!(!diagnostics.is_empty());
}

#[test]
fn brackets_beyond_the_limit_break_the_value() {
    let text = "(".repeat(1_000);
    let (value, diagnostics) = parse_value(FILE, &text, Span::new(FILE, 0, text.len()));
    assert!(value.is_some_and(|value| value.is_broken()));
    assert_eq!(diagnostics.len(), 1);
}

/// Where a part of the table stands.
fn at(part: &str) -> Span {
    let start = TABLE.find(part).unwrap_or_default();
    Span::new(FILE, start, start + part.len())
}
