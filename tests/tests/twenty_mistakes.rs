//! One file with twenty different mistakes gives twenty reports, each at its line.

use std::collections::BTreeSet;

use insta::assert_snapshot;
use pelmet_diagnostics::render::{self, HumanOptions};
use pelmet_tests::{Memory, read};

/// How the comment begins that names the mistake of its line.
const MARK: &str = "# mistake: ";

#[test]
fn each_mistake_is_reported_at_its_line() {
    let text = read("tests/cases/twenty-mistakes.pelmet");
    let marked: Vec<(usize, &str)> = text
        .lines()
        .zip(1..)
        .filter_map(|(line, number)| Some((number, line.split_once(MARK)?.1)))
        .collect();
    assert_eq!(
        marked
            .iter()
            .map(|(_, slug)| slug)
            .collect::<BTreeSet<_>>()
            .len(),
        20
    );

    let built = Memory::of_files([("twenty-mistakes.pelmet", text.as_str())]).build();
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
    assert_snapshot!("plain", render::plain(&built.diagnostics, &built.sources));
    let drawn = render::human(&built.diagnostics, &built.sources, HumanOptions::default());
    assert_snapshot!("drawn", drawn);
}
