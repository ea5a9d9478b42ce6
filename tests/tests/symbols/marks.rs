//! Names lead where the cases of `tests/symbols` mark them to lead.

use std::collections::BTreeSet;

use pelmet_design::{DefinitionId, Meaning, Symbols};
use pelmet_diagnostics::Span;
use pelmet_tests::{Memory, blocks, files_below, read};

use crate::designs::resolved;

/// A text without its marks, and what is marked: by which byte, and by which mark.
fn without_marks(marked: &str) -> (String, Vec<(usize, &str)>) {
    let mut text = String::new();
    let mut marks = Vec::new();
    let mut rest = marked;
    while let Some((before, after)) = rest.split_once('«') {
        let (mark, after) = after.split_once('»').unwrap();
        text.push_str(before);
        marks.push((text.len(), mark));
        rest = after;
    }
    text.push_str(rest);
    (text, marks)
}

/// Where names are given and where they are used, each with its number.
#[derive(Default)]
struct Marked {
    given: BTreeSet<(String, Span)>,
    used: BTreeSet<(String, Span)>,
}

/// The symbols of a project with marks in it, and the places that are marked.
fn marked(text: &str) -> (Symbols, Marked) {
    let mut project = Memory::of_parts(text);
    let mut places = Vec::new();
    for (path, bytes) in &mut project.files {
        let written = String::from_utf8(bytes.clone()).unwrap();
        let (text, marks) = without_marks(&written);
        places.extend(
            marks
                .iter()
                .map(|(at, mark)| (path.clone(), *at, (*mark).to_owned())),
        );
        *bytes = text.into();
    }
    let (loaded, resolved) = resolved(&project);
    let mut marked = Marked::default();
    for (path, at, mark) in places {
        let mut files = loaded.sources.files();
        let file = files
            .find(|file| loaded.sources.name(*file) == path)
            .unwrap();
        let place = Span::new(file, at, at);
        match mark.strip_prefix('=') {
            Some(number) => marked.given.insert((number.to_owned(), place)),
            None => marked.used.insert((mark, place)),
        };
    }
    (resolved.symbols, marked)
}

/// What is defined and what is referred to at a place.
fn definitions_at(symbols: &Symbols, place: Span) -> BTreeSet<DefinitionId> {
    let (file, byte) = (place.file, place.start as usize);
    let defined = symbols.definition_at(file, byte).map(|(id, _)| id);
    let referred = symbols
        .references_at(file, byte)
        .filter_map(|it| match it.meaning {
            Meaning::Definition(id) => Some(id),
            _ => None,
        });
    defined.into_iter().chain(referred).collect()
}

#[test]
fn names_lead_where_they_are_marked_to_lead() {
    for path in files_below("tests/symbols", ".md") {
        let text = read(&path);
        for block in blocks(&text).iter().filter(|block| block.is("pelmet")) {
            let what = |number: &str| format!("{path}:{}, mark {number}", block.line);
            let (symbols, Marked { given, used }) = marked(&block.text);
            for (number, place) in &used {
                let numbers = used
                    .iter()
                    .filter(|(_, other)| other == place)
                    .map(|(it, _)| it);
                let numbers: BTreeSet<&String> = numbers.collect();
                let wanted = given.iter().filter(|(number, _)| numbers.contains(number));
                let wanted = wanted
                    .flat_map(|(_, place)| definitions_at(&symbols, *place))
                    .collect();
                assert_eq!(definitions_at(&symbols, *place), wanted, "{}", what(number));
            }
            for (number, place) in &given {
                let [id] = Vec::from_iter(definitions_at(&symbols, *place))[..] else {
                    panic!("{} defines nothing", what(number));
                };
                let found = symbols.references_to(id).map(|it| it.span.start_of());
                let marked = used.iter().filter(|(other, _)| other == number);
                let marked: BTreeSet<Span> = marked.map(|(_, place)| *place).collect();
                assert_eq!(found.collect::<BTreeSet<_>>(), marked, "{}", what(number));
            }
        }
    }
}
