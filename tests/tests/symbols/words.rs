//! No word of a sound design is left unknown.

use std::collections::BTreeMap;

use pelmet_design::{Meaning, Symbols};
use pelmet_diagnostics::{Sources, Span};
use pelmet_syntax::tree::{Argument, Entry, Phrase, Phrases, Term, TermKind};
use pelmet_tests::{Memory, designs_below, project_at};

use crate::designs::{library_as_project, resolved, sound_designs};

/// Where every word of some entries stands: names, and what else is written as they are.
fn words(entries: &[Entry], found: &mut Vec<Span>) {
    for entry in entries {
        phrases(&entry.head, found);
        entry.value.iter().for_each(|value| phrases(value, found));
        let within = entry.block.iter();
        within.for_each(|block| words(&block.entries, found));
    }
}

fn phrases(phrases: &Phrases, found: &mut Vec<Span>) {
    phrases.phrases.iter().for_each(|it| phrase(it, found));
}

fn phrase(phrase: &Phrase, found: &mut Vec<Span>) {
    phrase.terms.iter().for_each(|it| term(it, found));
}

fn term(of: &Term, found: &mut Vec<Span>) {
    match &of.kind {
        TermKind::Name(_) => found.push(of.span),
        TermKind::Call(call) => {
            found.push(call.name.span);
            call.arguments.iter().for_each(|it| argument(it, found));
        }
        TermKind::Point(places) => places.iter().for_each(|it| term(it, found)),
        TermKind::Group(inner) | TermKind::Negative(inner) => term(inner, found),
        TermKind::Binary { left, right, .. } => {
            term(left, found);
            term(right, found);
        }
        TermKind::Broken(names) => found.extend(names.iter().map(|name| name.span)),
        // The figures in a text are looked for later.
        TermKind::Text(_) => found.push(of.span),
        TermKind::Number(_) | TermKind::Times => {}
    }
}

fn argument(argument: &Argument, found: &mut Vec<Span>) {
    found.extend(argument.name.iter().map(|name| name.span));
    argument.value.iter().for_each(|it| phrase(it, found));
}

/// Where the figures between brackets in a text stand.
fn figures(written: &str, text: Span) -> impl Iterator<Item = Span> {
    let opened = written.match_indices('{');
    opened.filter_map(move |(at, _)| {
        let (name, _) = written[at + 1..].split_once('}')?;
        let start = text.start as usize + at + 1;
        Some(Span::new(text.file, start, start + name.len()))
    })
}

/// What a word is, in one word; nothing if nobody knows.
fn known(symbols: &Symbols, word: Span) -> Option<&'static str> {
    let start = word.start as usize;
    if symbols.definition_at(word.file, start).is_some() {
        return Some("definition");
    }
    let found = symbols.references_at(word.file, start);
    let around = found.filter(|it| it.span.start <= word.start && word.end <= it.span.end);
    let meaning = around.map(|it| it.meaning).next()?;
    Some(match meaning {
        Meaning::Definition(_) => "name",
        Meaning::Property(..) => "key",
        Meaning::Known(_) => "known name",
        Meaning::Figure(_) => "figure",
        Meaning::Warning(_) => "code",
        Meaning::File(_) => "file",
        Meaning::Kind(_) => "kind",
        Meaning::Word(_) => "word",
        Meaning::Undescribed(_) => "name that is not described",
        Meaning::OwnWords => "words of one's own",
    })
}

/// Counts the words of a project's own sheets by what they are. What nobody knows is told, with its line.
fn counted(project: &Memory, counts: &mut BTreeMap<&str, usize>) -> Vec<String> {
    let (loaded, resolved) = resolved(project);
    let is_own = |file| project.files.contains_key(loaded.sources.name(file));
    let mut found = Vec::new();
    for tree in loaded.trees().filter(|tree| is_own(tree.file)) {
        words(&tree.entries, &mut found);
    }
    let mut unknown = Vec::new();
    for word in found
        .into_iter()
        .flat_map(|span| in_text(&loaded.sources, span))
    {
        match known(&resolved.symbols, word) {
            Some(sort) => *counts.entry(sort).or_default() += 1,
            None => unknown.push(told(&loaded.sources, word)),
        }
    }
    unknown
}

/// A word, or the figures in a text in quotes.
fn in_text(sources: &Sources, span: Span) -> Vec<Span> {
    let written = sources.snippet(span);
    if written.starts_with('"') {
        figures(written, span).collect()
    } else {
        vec![span]
    }
}

fn told(sources: &Sources, span: Span) -> String {
    let line = sources.place(span).line;
    let file = sources.name(span.file);
    format!("{file}:{line}: {}", sources.snippet(span))
}

#[test]
fn every_word_of_the_examples_is_known() {
    let mut counts = BTreeMap::new();
    let mut unknown = Vec::new();
    for main in designs_below("examples") {
        unknown.extend(counted(&project_at(&main), &mut counts));
    }
    assert!(unknown.is_empty(), "{unknown:#?}");
    insta::assert_debug_snapshot!(counts);
}

#[test]
fn every_word_of_the_library_is_known() {
    let mut counts = BTreeMap::new();
    let unknown = counted(&library_as_project(), &mut counts);
    assert!(unknown.is_empty(), "{unknown:#?}");
    insta::assert_debug_snapshot!(counts);
}

#[test]
fn every_word_of_a_sound_design_is_known() {
    for (what, project) in sound_designs() {
        let unknown = counted(&project, &mut BTreeMap::new());
        assert!(unknown.is_empty(), "{what}: {unknown:#?}");
    }
}
