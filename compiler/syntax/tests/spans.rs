//! Places are right in files with accents, tabs, carriage returns and a byte-order mark.

#![expect(
    clippy::string_slice,
    reason = "a test stops at the first broken promise"
)]

use pelmet_diagnostics::{FileId, Sources, Span, TextPlace};
use pelmet_syntax::parse;
use pelmet_syntax::tree::{Entry, EntryBlock, Phrase, Phrases, Term, TermKind};

const SHEET: &str = "# été\n\twindow größe: étoffe(1 in, b = \"ü\") {\n\t\tdrop: (17 in - a) * 2, “é” # ä\n}\nrow: a,\n\tb\n";

/// The same sheet with other line ends and with a mark at its beginning.
fn sheets() -> Vec<String> {
    let with_mark = |text: &str| format!("\u{feff}{text}");
    let endings = [
        SHEET.to_owned(),
        SHEET.replace('\n', "\r\n"),
        SHEET.replace('\n', "\r"),
    ];
    endings
        .iter()
        .flat_map(|text| [text.clone(), with_mark(text), text.trim_end().to_owned()])
        .collect()
}

#[test]
fn every_name_and_text_stands_where_it_is_said_to() {
    for text in sheets() {
        let parsed = parse(FileId(0), &text);
        let mut words = Vec::new();
        collect_entries(&parsed.file.entries, &mut words);
        assert_eq!(words.len(), 11, "in {text:?}");
        for (word, span) in words {
            assert_eq!(
                text[span.range()].trim_matches(['"', '“', '”']),
                word,
                "in {text:?}"
            );
        }
    }
}

#[test]
fn the_tree_is_the_same_in_all_of_them() {
    let dumps: Vec<String> = sheets()
        .iter()
        .map(|text| parse(FileId(0), text).file.dump())
        .collect();
    assert!(
        dumps.windows(2).all(|pair| pair[0] == pair[1]),
        "{dumps:#?}"
    );
}

#[test]
fn entries_end_with_their_last_letter() {
    for text in sheets() {
        let parsed = parse(FileId(0), &text);
        let ends: Vec<char> = parsed
            .file
            .entries
            .iter()
            .filter_map(|entry| text[entry.span.range()].chars().last())
            .collect();
        assert_eq!(ends, ['}', 'b'], "in {text:?}");
    }
}

#[test]
fn comments_stand_where_they_are_said_to() {
    for text in sheets() {
        let comments = parse(FileId(0), &text).file.comments;
        let found: Vec<&str> = comments
            .iter()
            .map(|comment| &text[comment.span.range()])
            .collect();
        assert_eq!(found, ["# été", "# ä"], "in {text:?}");
    }
}

#[test]
fn a_mistake_has_its_line_and_column() {
    for text in sheets().iter().filter(|text| text.contains('\n')) {
        let mut sources = Sources::new();
        let file = sources.add("sheet.pelmet", text.as_str());
        let diagnostics = parse(file, text).diagnostics;
        let place = diagnostics[0].primary().map(|span| sources.place(span));
        let quotes = TextPlace {
            line: 3,
            column: 26,
            end_line: 3,
            end_column: 29,
        };
        assert_eq!(place, Some(quotes), "in {text:?}");
    }
}

fn collect_entries<'t>(entries: &'t [Entry], words: &mut Vec<(&'t str, Span)>) {
    for Entry {
        head, value, block, ..
    } in entries
    {
        collect_phrases(head, words);
        value.iter().for_each(|value| collect_phrases(value, words));
        block
            .iter()
            .for_each(|EntryBlock { entries, .. }| collect_entries(entries, words));
    }
}

fn collect_phrases<'t>(phrases: &'t Phrases, words: &mut Vec<(&'t str, Span)>) {
    phrases
        .phrases
        .iter()
        .for_each(|phrase| collect_phrase(phrase, words));
}

fn collect_phrase<'t>(phrase: &'t Phrase, words: &mut Vec<(&'t str, Span)>) {
    phrase
        .terms
        .iter()
        .for_each(|term| collect_term(term, words));
}

fn collect_term<'t>(term: &'t Term, words: &mut Vec<(&'t str, Span)>) {
    match &term.kind {
        TermKind::Name(word) | TermKind::Text(word) => words.push((word, term.span)),
        TermKind::Call(call) => {
            words.push((&call.name.text, call.name.span));
            for argument in &call.arguments {
                words.extend(
                    argument
                        .name
                        .iter()
                        .map(|name| (name.text.as_str(), name.span)),
                );
                argument
                    .value
                    .iter()
                    .for_each(|value| collect_phrase(value, words));
            }
        }
        TermKind::Point(places) => places.iter().for_each(|place| collect_term(place, words)),
        TermKind::Group(inner) | TermKind::Negative(inner) => collect_term(inner, words),
        TermKind::Binary { left, right, .. } => {
            collect_term(left, words);
            collect_term(right, words);
        }
        TermKind::Number(_) | TermKind::Times | TermKind::Broken(_) => {}
    }
}
