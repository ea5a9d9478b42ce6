//! Whatever the text and wherever the spans: nothing panics, and nothing is lost.

#![expect(
    clippy::arithmetic_side_effects,
    reason = "the numbers of a test are small"
)]

use pelmet_diagnostics::codes::NameTwice;
use pelmet_diagnostics::render::{HumanOptions, human, json, plain};
use pelmet_diagnostics::{
    Diagnostic, Edit, FileId, Sources, Span, TextPlace, apply_fixes, did_you_mean,
};
use proptest::prelude::*;

/// Text with everything in it that makes positions hard.
const TEXT: &str = "[a-c é絹\u{301}½\t\r\n\u{feff}\u{1b}{}]{0,40}";

/// The lines and columns of a byte, found by walking over the text.
fn walked(text: &str, byte: usize) -> (usize, usize) {
    let (mut line, mut column) = (1, 1);
    for (at, character) in text.char_indices() {
        if at >= byte {
            break;
        }
        match character {
            '\n' => (line, column) = (line + 1, 1),
            '\u{feff}' if at == 0 => {}
            _ => column += 1,
        }
    }
    (line, column)
}

/// A byte in the middle of a character or of the end of a line has no column of its own.
fn has_a_column(text: &str, byte: usize) -> bool {
    let in_line_end = text
        .get(..byte)
        .is_some_and(|before| before.ends_with('\r'))
        && text
            .get(byte..)
            .is_some_and(|after| after.starts_with('\n'));
    text.is_char_boundary(byte) && !in_line_end
}

proptest! {
    #[test]
    fn places_agree_with_a_walk_over_the_text(text in TEXT, start in 0_usize..200, length in 0_usize..9) {
        let (start, end) = (start.min(text.len()), (start + length).min(text.len()));
        prop_assume!(has_a_column(&text, start) && has_a_column(&text, end));
        let mut sources = Sources::new();
        let file = sources.add("text", text.as_str());
        let TextPlace { line, column, end_line, end_column } = sources.place(Span::new(file, start, end));
        prop_assert_eq!((line, column), walked(&text, start));
        prop_assert_eq!((end_line, end_column), walked(&text, end));
        if !(start < 3 && text.starts_with('\u{feff}')) {
            prop_assert_eq!(sources.byte(file, line, column), Some(start));
        }
    }

    #[test]
    fn a_column_far_along_a_line_is_right(before in 0_usize..3_000) {
        let text = format!("é\n{}x", "½".repeat(before));
        let mut sources = Sources::new();
        let file = sources.add("text", text.as_str());
        let place = sources.place(Span::new(file, text.len() - 1, text.len()));
        prop_assert_eq!((place.line, place.column), (2, before + 1));
        prop_assert_eq!(sources.byte(file, 2, before + 1), Some(text.len() - 1));
    }

    #[test]
    fn every_label_is_shown_in_every_form(
        text in TEXT,
        other in TEXT,
        spans in [(0_usize..220, 0_usize..20), (0_usize..220, 0_usize..20)],
        two_files: bool,
        unicode: bool,
        color: bool,
        width in 0_usize..100,
    ) {
        let mut sources = Sources::new();
        let first = sources.add("first", text.as_str());
        let second = sources.add("second", other.as_str());
        let [left, right] = spans.map(|(start, length)| (start, start + length));
        let left = Span::new(first, left.0, left.1);
        let right = Span::new(if two_files { second } else { first }, right.0, right.1);
        let diagnostics = [Diagnostic::from(NameTwice { second: left, first: right, name: "kelp" })];
        let options = HumanOptions { width, color, unicode };
        for shown in [
            human(&diagnostics, &sources, options),
            plain(&diagnostics, &sources),
            json(&diagnostics, &sources),
        ] {
            for label in ["called so here", "and here again", "name-twice"] {
                prop_assert!(shown.contains(label), "{}", shown);
            }
            prop_assert!(!shown.contains("Failed"), "{}", shown);
        }
    }

    #[test]
    fn a_file_that_does_not_exist_is_no_reason_to_panic(file: u32, start: usize, end: usize) {
        let span = Span::new(FileId(file), start, end);
        let diagnostics = [Diagnostic::from(NameTwice { second: span, first: span, name: "kelp" })];
        let sources = Sources::new();
        human(&diagnostics, &sources, HumanOptions::default());
        prop_assert!(plain(&diagnostics, &sources).starts_with(":1:1: error: "));
        prop_assert_eq!(sources.snippet(span), "");
    }

    #[test]
    fn edits_are_made_as_by_hand_from_the_last_to_the_first(
        text in TEXT,
        cuts in proptest::collection::btree_set(0_usize..160, 0..8),
        new in "[x-z]{0,3}",
    ) {
        let cuts: Vec<usize> = cuts.into_iter().filter(|at| text.is_char_boundary(*at)).collect();
        let ranges: Vec<(usize, usize)> =
            cuts.chunks_exact(2).filter_map(|pair| Some((*pair.first()?, *pair.last()?))).collect();
        let mut by_hand = text.clone();
        for (start, end) in ranges.iter().rev() {
            by_hand.replace_range(start..end, &new);
        }
        let edits: Vec<Edit> = ranges
            .iter()
            .rev()
            .map(|(start, end)| Edit { span: Span::new(FileId(0), *start, *end), text: new.clone() })
            .collect();
        prop_assert_eq!(apply_fixes(&text, &edits), Some(by_hand));
    }

    #[test]
    fn a_suggestion_is_one_of_the_names_in_any_order(typed in ".{0,80}", names in proptest::collection::vec(".{0,12}", 0..9)) {
        let forwards = did_you_mean(&typed, names.iter().map(String::as_str));
        let backwards = did_you_mean(&typed, names.iter().rev().map(String::as_str));
        prop_assert_eq!(&forwards, &backwards);
        prop_assert!(forwards.is_none_or(|name| names.contains(&name)));
    }
}
