//! One file with twenty different mistakes gives twenty reports, each at its line: one file of
//! mistakes in reading, names and kinds, and one of what the sums find.

use std::collections::BTreeSet;

use insta::assert_snapshot;
use pelmet_diagnostics::Diagnostic;
use pelmet_diagnostics::render::{self, HumanOptions};
use pelmet_driver::Built;
use pelmet_tests::{Memory, read};

/// How the comment begins that names the mistake of its line.
const MARK: &str = "# mistake: ";

#[test]
fn each_mistake_is_reported_at_its_line() {
    let built = assert_marked_are_told("twenty-mistakes.pelmet");
    assert_snapshot!("plain", render::plain(&built.diagnostics, &built.sources));
    assert_snapshot!("drawn", drawn(&built, &built.diagnostics));
}

#[test]
fn each_finding_of_the_sums_is_reported_at_its_line() {
    let built = assert_marked_are_told("twenty-findings.pelmet");
    let plain = render::plain(&built.diagnostics, &built.sources);
    assert_snapshot!("findings_plain", plain);
    let (first, others) = built.diagnostics.split_at(10);
    assert_snapshot!("findings_drawn", drawn(&built, first));
    assert_snapshot!("other_findings_drawn", drawn(&built, others));
}

fn drawn(built: &Built, reports: &[Diagnostic]) -> String {
    render::human(reports, &built.sources, HumanOptions::default())
}

/// Builds a file whose lines are marked with twenty mistakes, and expects these and no others.
#[track_caller]
fn assert_marked_are_told(name: &str) -> Built {
    let text = read(&format!("tests/cases/{name}"));
    let marked: Vec<(usize, &str)> = text
        .lines()
        .zip(1..)
        .filter_map(|(line, number)| Some((number, line.split_once(MARK)?.1)))
        .collect();
    let kinds: BTreeSet<&str> = marked.iter().map(|(_, slug)| *slug).collect();
    assert_eq!(kinds.len(), 20);

    let built = Memory::of_files([(name, text.as_str())]).build();
    let told: Vec<(usize, &str)> = built
        .diagnostics
        .iter()
        .filter_map(|report| {
            Some((
                built.sources.place(report.primary()?).line,
                report.code.slug,
            ))
        })
        .collect();
    assert_eq!(told, marked);
    built
}
