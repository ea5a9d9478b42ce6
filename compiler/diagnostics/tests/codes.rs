//! What must hold for every code, whoever wrote it.

use std::collections::BTreeSet;
use std::path::Path;

use pelmet_diagnostics::{Code, Example, codes, explain};

/// The bytes of every file of an example; none for what can only be told.
fn files(example: Example) -> Vec<Vec<u8>> {
    match example {
        Example::Text(text) => vec![text.into()],
        Example::Files(files) => files.iter().map(|(_, text)| (*text).into()).collect(),
        Example::Made { make, .. } => vec![make()],
        Example::Told(_) => Vec::new(),
    }
}

fn words(example: Example) -> &'static str {
    match example {
        Example::Made { words, .. } | Example::Told(words) => words,
        Example::Text(_) | Example::Files(_) => "",
    }
}

/// Checks one thing of every code and names those that fail.
#[track_caller]
fn every_code(promise: &str, holds: impl Fn(&Code) -> bool) {
    let broken: Vec<&str> = codes::ALL
        .iter()
        .filter(|code| !holds(code))
        .map(|code| code.slug)
        .collect();
    assert!(broken.is_empty(), "{promise}: {broken:?}");
}

#[test]
fn the_list_is_sorted_and_names_each_code_once() {
    let slugs: Vec<&str> = codes::ALL.iter().map(|code| code.slug).collect();
    assert!(slugs.is_sorted_by(|left, right| left < right), "{slugs:?}");
}

#[test]
fn every_file_is_a_code_and_every_code_a_file() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("src/codes");
    let files: BTreeSet<String> = folder
        .read_dir()
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .map(|path| {
            path.file_stem()
                .unwrap()
                .to_str()
                .unwrap()
                .replace('_', "-")
        })
        .filter(|name| name != "mod")
        .collect();
    let slugs: BTreeSet<String> = codes::ALL.iter().map(|code| code.slug.to_owned()).collect();
    assert_eq!(files, slugs);
}

#[test]
fn every_code_is_found_by_its_slug_and_nothing_else_is() {
    every_code("found by its slug", |code| {
        codes::by_slug(code.slug) == Some(code)
    });
    for slug in ["", "name", "name-unknown ", "NAME-UNKNOWN", "name_unknown"] {
        assert_eq!(codes::by_slug(slug), None, "{slug}");
    }
}

#[test]
fn slugs_are_small_words_with_hyphens() {
    every_code("made of small words", |code| {
        let mut words = code.slug.split('-');
        words.all(|word| !word.is_empty() && word.chars().all(|letter| letter.is_ascii_lowercase()))
    });
}

#[test]
fn pages_say_what_it_is_why_it_matters_and_what_to_do() {
    every_code("two paragraphs or more", |code| {
        code.page.split("\n\n").count() >= 2
    });
    every_code("whole sentences", |code| {
        code.page
            .trim_end()
            .split("\n\n")
            .all(|paragraph| paragraph.ends_with(['.', '?']))
    });
    every_code("lines that fit a page", |code| {
        code.page.lines().all(|line| line.chars().count() <= 104)
    });
}

#[test]
fn pages_speak_the_language_of_the_workroom() {
    for word in [
        "unexpected token",
        "parser",
        "syntax error",
        "EOI",
        "invalid",
        "TODO",
    ] {
        every_code(word, |code| !code.page.contains(word));
    }
}

#[test]
fn a_mend_differs_from_what_it_mends() {
    every_code("mended", |code| {
        files(code.failing) != files(code.mend) || words(code.failing) != words(code.mend)
    });
}

#[test]
fn examples_hold_something() {
    every_code("no empty example", |code| {
        [code.failing, code.mend].into_iter().all(|example| {
            let files = files(example);
            let told = files.is_empty() && !words(example).is_empty();
            told || files.iter().any(|file| !file.is_empty())
        })
    });
}

#[test]
fn explanations_hold_the_page_and_both_examples() {
    every_code("explained", |code| {
        let text = explain(code);
        text.starts_with(code.slug)
            && text.contains("\nFor example:\n")
            && text.contains("\nPut right:\n")
            && text.lines().all(|line| line.trim_end() == line)
    });
}

#[test]
fn an_explanation_reads_as_a_page() {
    insta::assert_snapshot!("page_of_one_file", explain(&codes::unit_missing::CODE));
    insta::assert_snapshot!("page_of_two_files", explain(&codes::use_in_a_circle::CODE));
    insta::assert_snapshot!("page_of_a_made_file", explain(&codes::file_too_large::CODE));
}
