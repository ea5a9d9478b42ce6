//! Whatever comes in, what comes out is a clear report at the right place, and in time.

use pelmet_diagnostics::{Severity, render};
use pelmet_driver::{Built, MAXIMUM_ERRORS_TOLD};
use pelmet_tests::Memory;
use proptest::prelude::*;

/// The reports of a run as `line:column code`, of the main file; other files stand by their name.
fn told(built: &Built) -> Vec<String> {
    let told = built.diagnostics.iter().map(|report| {
        let slug = report.code.slug;
        match report.primary() {
            None => slug.to_owned(),
            Some(span) => {
                let place = built.sources.place(span);
                let file = if Some(span.file) == built.main {
                    ""
                } else {
                    built.sources.name(span.file)
                };
                format!("{file}{}:{} {slug}", place.line, place.column)
            }
        }
    });
    told.collect()
}

#[track_caller]
fn assert_told(text: impl Into<Vec<u8>>, expected: &[&str]) {
    let built = Memory::of(text).build();
    assert_eq!(
        told(&built),
        expected,
        "{}",
        render::plain(&built.diagnostics, &built.sources)
    );
    assert_eq!(
        built.packet.is_some(),
        built
            .diagnostics
            .iter()
            .all(|one| one.severity != Severity::Error)
    );
}

#[test]
fn hostile_texts_are_told_of_once_and_at_their_place() {
    assert_told("", &[]);
    assert_told("\n\n\n", &[]);
    assert_told("(".repeat(100_000), &["1:101 nested-too-deep"]);
    assert_told("{".repeat(100_000), &["1:101 nested-too-deep"]);
    assert_told("}", &["1:1 bracket-not-opened"]);
    assert_told(
        "fabric felt { width: 1/0 in }\n",
        &["1:22 fraction-over-zero"],
    );
    assert_told(
        format!("fabric felt {{ width: 1{} in }}\n", "0".repeat(30)),
        &["1:22 number-too-large"],
    );
    assert_told(
        "fabric felt { width: 1000000000000 in }\n",
        &["1:22 length-too-large"],
    );
    assert_told(
        "fabric felt { width: \u{1} }\n",
        &["1:22 character-not-known"],
    );
    assert_told(
        "job \"a\u{1}b\"\nfabric felt { width: 72 in }\n",
        &["1:7 sign-not-printed"],
    );
    assert_told(b"fabric caf\xe9 { width: 54 in }\n", &["file-not-text"]);
    assert_told("# a note\n".repeat(600_000), &["file-too-large"]);
}

#[test]
fn of_very_many_mistakes_the_first_are_told() {
    let told = told(&Memory::of("}\n".repeat(100_000)).build());
    assert_eq!(told.len(), pelmet_syntax::MAXIMUM_DIAGNOSTICS + 1);
    assert_eq!(
        told.last().map(String::as_str),
        Some("101:1 too-many-mistakes")
    );
}

#[test]
fn of_very_many_mistakes_in_what_can_be_read_the_first_are_told() {
    let told = told(&Memory::of("foo bar\n".repeat(5_000)).build());
    assert_eq!(told.len(), MAXIMUM_ERRORS_TOLD + 1);
    assert_eq!(
        told.last().map(String::as_str),
        Some("201:1 too-many-mistakes")
    );
}

#[test]
fn a_sum_of_any_length_ends() {
    let sum = format!("measure a: 1{}\n", " + 1".repeat(100_000));
    assert_told(sum, &["1:12 sum-too-long"]);
    let negatives = format!("measure a: {}1 in\n", "-(".repeat(100_000));
    let told = told(&Memory::of(negatives).build());
    assert_eq!(told.len(), 1, "{told:?}");
}

#[test]
fn a_chain_of_any_length_ends() {
    let mut chain = "fabric f0 { width: 54 in }\n".to_owned();
    for number in 1..3_000 {
        chain.push_str(&format!(
            "fabric f{number} like f{} {{ way: any }}\n",
            number - 1
        ));
    }
    let told = told(&Memory::of(chain).build());
    assert!(told.len() <= 1, "{told:?}");
}

#[test]
fn places_are_right_whatever_the_file_looks_like() {
    const LINES: [&str; 3] = ["# a note", "fabric felt {", "    width: 54 }"];
    let of = |text: String| told(&Memory::of(text).build());
    for (what, text) in [
        ("line feeds", LINES.join("\n") + "\n"),
        ("carriage returns too", LINES.join("\r\n") + "\r\n"),
        ("no final newline", LINES.join("\n")),
        ("a byte-order mark", format!("\u{feff}{}", LINES.join("\n"))),
        (
            "accents",
            LINES
                .join("\n")
                .replace("felt", "fêlt")
                .replace("note", "nöte \u{1f9f5}"),
        ),
    ] {
        assert_eq!(of(text), ["3:12 unit-missing"], "{what}");
    }
    let tabs = LINES.join("\n").replace("    ", "\t");
    assert_eq!(of(tabs), ["3:9 unit-missing"]);
    assert_eq!(
        of("fabric fêlt-ÿ { width: 54 }".to_owned()),
        ["1:24 unit-missing"]
    );
    assert_eq!(
        of("\u{feff}fabric felt { width: 54 }".to_owned()),
        ["1:22 unit-missing"]
    );
}

#[test]
fn files_that_cannot_be_used_are_told_of_where_they_are_used() {
    let of = |files: &[(&str, &[u8])]| {
        let files = files.iter().map(|(name, bytes)| (*name, bytes.to_vec()));
        told(&Memory::of_files(files).build())
    };
    let main: &[u8] = b"# a job\nuse \"style.pelmet\"\n";
    assert_eq!(of(&[("main.pelmet", main)]), ["2:5 file-not-found"]);
    assert_eq!(
        of(&[("main.pelmet", main), ("style.pelmet/x", b"")]),
        ["2:5 file-is-folder"]
    );
    assert_eq!(
        of(&[("main.pelmet", main), ("style.pelmet", b"\xff")]),
        ["2:5 file-not-text"]
    );
    assert_eq!(
        of(&[("main.pelmet", b"use \"../style.pelmet\"\n")]),
        ["1:5 file-outside-project"]
    );
    let circle: &[u8] = b"use \"main.pelmet\"\n";
    assert_eq!(
        of(&[("main.pelmet", main), ("style.pelmet", circle)]),
        ["2:5 use-in-a-circle"]
    );
    assert_eq!(of(&[("main.pelmet", circle)]), ["1:5 use-in-a-circle"]);
}

#[test]
fn a_list_of_windows_is_told_of_cell_by_cell() {
    let main = "windows from \"list.csv\": nothing { }\n";
    let built = Memory::of_files([
        ("main.pelmet", main),
        ("list.csv", "name,drop\na,1 in\na,2 in\n"),
    ])
    .build();
    assert!(!built.diagnostics.is_empty());
    let built = Memory::of_files([("main.pelmet", main), ("list.csv", "\"name,drop\na")]).build();
    assert!(!built.diagnostics.is_empty());
    let built = Memory::of_files([("main.pelmet", main), ("list.csv", "")]).build();
    assert!(!built.diagnostics.is_empty());
}

/// Words and marks the language is made of, so that random texts get past the first line.
const LIKELY: &str = "fabric|rod|board|heading|make|outline|pleats|panel|treatment|window|windows|from|\
    use|standard|measure|accept|expect|like|width|drop|length|row|head|over|lining|fill|repeat|times|\
    knife|toward|centre|to|heading|half|whole|finished|a|b|54 in|1/2|0|-3 in|5'|6\"|200 %|x|(|)|{|}|{|}|\
    :|:|:|,|=|+|*|/| - |\n|\n|\n|\"a\"|#|§";

fn likely_text() -> impl Strategy<Value = String> {
    let words: Vec<&str> = LIKELY.split('|').collect();
    let text = prop::collection::vec(prop::sample::select(words), 0..120);
    text.prop_map(|words| words.join(" "))
}

/// Whatever is compiled gives a packet or an error, and every report can be shown.
fn assert_answered(built: &Built) -> Result<(), TestCaseError> {
    let errors = built
        .diagnostics
        .iter()
        .any(|report| report.severity == Severity::Error);
    prop_assert_eq!(built.packet.is_some(), !errors);
    let shown = render::plain(&built.diagnostics, &built.sources);
    let drawn = render::human(
        &built.diagnostics,
        &built.sources,
        render::HumanOptions::default(),
    );
    prop_assert_eq!(shown.is_empty(), drawn.is_empty());
    for report in &built.diagnostics {
        for label in &report.labels {
            let text = built.sources.text(label.span.file);
            prop_assert!(text.get(label.span.range()).is_some(), "{:?}", report);
        }
    }
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(400) })]

    #[test]
    fn any_bytes_are_answered(bytes in prop::collection::vec(any::<u8>(), 0..400)) {
        assert_answered(&Memory::of(bytes).build())?;
    }

    #[test]
    fn any_text_is_answered(text in any::<String>()) {
        assert_answered(&Memory::of(text).build())?;
    }

    #[test]
    fn any_likely_text_is_answered(text in likely_text()) {
        assert_answered(&Memory::of(text).build())?;
    }
}

proptest! {
    // Fewer, for where the damage does no harm the cloth is laid out.
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(60) })]

    /// A sound design with one stretch of it gone or said twice, as an editor leaves it.
    #[test]
    fn a_damaged_design_is_answered(cut in 0_usize..3_000, length in 0_usize..60, twice: bool) {
        let design = pelmet_tests::generated_job(3);
        let (before, rest) = design.split_at(cut.min(design.len()));
        let (part, after) = rest.split_at(length.min(rest.len()));
        let part = part.repeat(if twice { 2 } else { 0 });
        assert_answered(&Memory::of(format!("{before}{part}{after}")).build())?;
    }
}

#[test]
fn files_that_use_one_another_too_deep_are_told_once() {
    let name = |number: usize| format!("file-{number}.pelmet");
    let chain = |length: usize| {
        Memory::of_files((0..length).map(|number| {
            let text = format!("use \"{}\"\n", name(number + 1));
            (
                name(number),
                if number + 1 < length {
                    text
                } else {
                    String::new()
                },
            )
        }))
    };
    assert!(chain(101).build().diagnostics.is_empty());
    let deep = chain(6_000).build();
    let slugs: Vec<_> = deep
        .diagnostics
        .iter()
        .map(|report| report.code.slug)
        .collect();
    assert_eq!(slugs, ["use-too-deep"]);
}
