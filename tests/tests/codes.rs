//! Every code's example shows that code and no other, and its mend is sound.

use pelmet_design::{load, resolve};
use pelmet_diagnostics::{Code, Diagnostic, codes, render};
use pelmet_driver::Built;
use pelmet_tests::Memory;

fn slugs(built: &Built) -> Vec<&'static str> {
    built
        .diagnostics
        .iter()
        .map(|report| report.code.slug)
        .collect()
}

/// Lists what is wrong with each of the codes, by a check that returns what is.
#[track_caller]
fn assert_of_every_code(wrong: impl Fn(&'static Code) -> Option<String>) {
    let found: Vec<String> = codes::ALL
        .iter()
        .filter_map(|code| Some(format!("{}: {}", code.slug, wrong(code)?)))
        .collect();
    assert!(
        found.is_empty(),
        "{} codes:\n{}",
        found.len(),
        found.join("\n")
    );
}

#[test]
fn every_failing_example_shows_its_code_once_and_no_other() {
    assert_of_every_code(|code| {
        let built = Memory::of_example(code.failing)?.build();
        let shown = render::plain(&built.diagnostics, &built.sources);
        (slugs(&built) != [code.slug]).then(|| format!("{:?}\n{shown}", slugs(&built)))
    });
}

#[test]
fn every_mend_is_sound() {
    assert_of_every_code(|code| {
        let built = Memory::of_example(code.mend)?.build();
        let shown = render::plain(&built.diagnostics, &built.sources);
        (!built.diagnostics.is_empty()).then_some(shown)
    });
}

/// What no design can show: faults around a design, of the compiler itself, or past a limit too large
/// to write out. Too many mistakes are never shown alone, and ten thousand windows take too long to
/// lay out. Every other code is compiled.
const TOLD: &[&str] = &[
    "cloth-not-cut",
    "code-unknown",
    "file-already-there",
    "file-not-readable",
    "file-not-writable",
    "format-would-change",
    "layout-not-sound",
    "list-too-long",
    "nothing-to-make",
    "packet-not-read",
    "row-empty",
    "too-many-mistakes",
    "use-too-deep",
    "version-not-sound",
];

#[test]
fn only_what_no_design_can_show_is_told_and_not_compiled() {
    let told: Vec<&str> = codes::ALL
        .iter()
        .filter(|code| Memory::of_example(code.failing).is_none())
        .map(|code| code.slug)
        .collect();
    assert_eq!(told, TOLD);
}

/// A report says where and what to do; one that is of a whole file has no place in it.
#[test]
fn every_report_has_a_place_and_a_help() {
    const OF_NO_PLACE: &[&str] = &["file-not-text", "file-too-large", "nothing-to-make"];
    assert_of_every_code(|code| {
        let built = Memory::of_example(code.failing)?.build();
        let report = built.diagnostics.first()?;
        let placed = !report.labels.is_empty() || OF_NO_PLACE.contains(&code.slug);
        (!placed || report.help.is_empty())
            .then(|| render::plain(&built.diagnostics, &built.sources))
    });
}

#[test]
fn every_report_of_an_example_points_into_its_text() {
    assert_of_every_code(|code| {
        let built = Memory::of_example(code.failing)?.build();
        let in_text = |report: &Diagnostic| {
            report.labels.iter().all(|label| {
                let text = built.sources.text(label.span.file);
                text.get(label.span.range()).is_some() && !label.text.is_empty()
            })
        };
        let lost = !built.diagnostics.iter().all(in_text);
        lost.then(|| render::plain(&built.diagnostics, &built.sources))
    });
}

/// A fix is a promise: made, it leaves at least this mistake behind.
#[test]
fn every_fix_of_an_example_mends_it() {
    assert_of_every_code(|code| {
        let project = Memory::of_example(code.failing)?;
        let built = project.build();
        let fix = built
            .diagnostics
            .iter()
            .find_map(|report| report.fix.clone())?;
        let file = fix.edits.first()?.span.file;
        let text = pelmet_diagnostics::apply_fixes(built.sources.text(file), &fix.edits);
        let Some(text) = text else {
            return Some("its edits cannot be made".to_owned());
        };
        let mut mended = project;
        mended
            .files
            .insert(built.sources.name(file).to_owned(), text.clone().into())
            .unwrap();
        let left = slugs(&mended.build());
        left.contains(&code.slug)
            .then(|| format!("still there after its fix:\n{text}"))
    });
}

/// What the sums find and yet no sum explains, each with the reason.
const WITHOUT_SUM: &[(&str, &str)] = &[
    ("back-upside-down", "a way up, not a length"),
    ("band-and-method-differ", "a band too many or too few"),
    ("band-cannot-follow", "a turn, shown where it was drawn"),
    ("edge-without-length", "one length, and it is nothing"),
    ("expectation-not-known", "a figure that is missing"),
    ("figure-absent", "a part the panel has not"),
    ("fill-outside-row", "a panel in the wrong place"),
    ("halves-differ", "two shapes, not two lengths"),
    ("heading-needs-other", "a rod where a board is needed"),
    (
        "interlining-and-method-differ",
        "an interlining too many or too few",
    ),
    ("lining-and-method-differ", "a lining too many or too few"),
    ("no-join-to-cover", "a join that is missing"),
    ("no-print-across", "a print that is missing"),
    ("nothing-follows-print", "plain cloth that is missing"),
    ("nothing-to-accept", "a warning that did not arise"),
    (
        "outline-crosses-itself",
        "two edges, shown where they were drawn",
    ),
    ("outline-not-closed", "a step that is missing"),
    ("outline-not-started", "a step that is missing"),
    ("panel-not-hung", "a panel in no place"),
    ("panel-without-width", "a width that is missing"),
    ("size-too-large", "beyond what can be counted"),
    ("thickness-missing", "a thickness that is missing"),
    ("too-many-corners", "past a limit, which the title names"),
    ("too-many-pieces", "past a limit, which the title names"),
    ("too-many-pleats", "past a limit, which the title names"),
    ("too-many-widths", "past a limit, which the title names"),
    ("turn-of-cloth-not-counted", "a thickness that is missing"),
    ("width-missing", "a width that is missing"),
];

/// A finding of the sums is one that the reading of the design alone does not make.
#[test]
fn every_finding_of_the_sums_shows_its_sum() {
    let without: Vec<&str> = codes::ALL
        .iter()
        .filter(|code| is_found_by_sums(code) == Some(true))
        .filter(|code| !shows_a_sum(code))
        .map(|code| code.slug)
        .collect();
    let allowed: Vec<&str> = WITHOUT_SUM.iter().map(|(slug, _)| *slug).collect();
    assert_eq!(without, allowed);
}

/// Whether the failing example reads without this mistake, so that only its sums find it.
fn is_found_by_sums(code: &Code) -> Option<bool> {
    let project = Memory::of_example(code.failing)?;
    let loaded = load(&project.main, &project);
    let resolved = resolve(&loaded);
    let mut read = loaded.diagnostics.iter().chain(&resolved.diagnostics);
    Some(!read.any(|report| report.code == code))
}

fn shows_a_sum(code: &Code) -> bool {
    let reports = Memory::of_example(code.failing).map(|project| project.build().diagnostics);
    let mut reports = reports.into_iter().flatten();
    reports.any(|report| report.code == code && !report.sum.is_empty())
}
