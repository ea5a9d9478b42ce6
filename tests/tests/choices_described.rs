//! The reference and the reports describe what a property takes as the table of properties has it.
#![expect(
    clippy::arithmetic_side_effects,
    clippy::unwrap_used,
    reason = "a test stops at the first broken promise"
)]

use std::collections::BTreeSet;

use pelmet_design::{Form, FormPart, Keyword, Kind, LINES, Takes, WORK_STEP, load, resolve};
use pelmet_diagnostics::with_article;
use pelmet_tests::{Memory, read};

/// A row of a table of the reference: its cells.
type Row<'r> = Vec<&'r str>;

/// What stands below a heading of the reference, up to its example.
fn section_below<'r>(reference: &'r str, heading: &str) -> &'r str {
    let (_, section) = reference.split_once(&format!("\n{heading}\n")).unwrap();
    let ends = ["\n## ", "\n### ", "\n```"];
    let section_to = |section: &'r str, end| section.split(end).next().unwrap();
    ends.iter().fold(section, section_to)
}

/// The rows of the tables of a section whose first column begins so.
fn rows<'r>(section: &'r str, column: &str) -> Vec<Row<'r>> {
    let first = format!("| {column}");
    let tables = section.split("\n\n").map(str::trim);
    let tables = tables.filter(|table| table.starts_with(&first));
    let rows = tables.flat_map(|table| table.lines().skip(2));
    let cells = rows.map(|row| row.trim_matches('|').split('|').map(str::trim));
    cells.map(Iterator::collect).collect()
}

/// What stands between backticks.
fn quoted(cell: &str) -> Vec<&str> {
    cell.split('`').skip(1).step_by(2).collect()
}

/// The words of the language in what is quoted; capitals, numbers, units and signs stand for values.
fn words_quoted(cell: &str) -> BTreeSet<&str> {
    let parts = quoted(cell).into_iter();
    let parts = parts.flat_map(|quoted| quoted.split([' ', ',']));
    let words = parts.map(|part| part.trim_end_matches(':'));
    let units = ["", "x", "%", "yd", "m", "ft", "g", "g/m2", "oz/yd2", "in"];
    let stands_for_value = |sign: char| {
        sign.is_uppercase() || sign.is_numeric() || matches!(sign, '(' | ')' | '.' | '"')
    };
    let is_word = |word: &&str| !units.contains(word) && !word.contains(stands_for_value);
    words.filter(is_word).collect()
}

/// The words of the language in some forms: all of them, and those that cannot be left out.
fn words_of(forms: &[Form]) -> (BTreeSet<&'static str>, BTreeSet<&'static str>) {
    let (mut all, mut needed) = (BTreeSet::new(), BTreeSet::new());
    for part in forms.iter().copied().flatten() {
        match part {
            FormPart::Words(words) => needed.extend(words.split(' ')),
            FormPart::OneOf(set) => needed.extend(set.words().flat_map(|words| words.split(' '))),
            FormPart::AnyOf(choices) => {
                needed.extend(choices.first());
                all.extend(choices.iter());
            }
            FormPart::Perhaps(form) => all.extend(words_of(&[form]).0),
            FormPart::Range => all.extend(["to", "ideally"]),
            _ => {}
        }
    }
    all.extend(&needed);
    (all, needed)
}

/// What the reference calls the parts of forms that are no words.
fn called(part: &FormPart) -> Option<String> {
    Some(match part {
        FormPart::Length => "length".to_owned(),
        FormPart::Count => "count".to_owned(),
        FormPart::Percentage => "percent".to_owned(),
        FormPart::OwnWords => "words".to_owned(),
        FormPart::Panel => "panels".to_owned(),
        FormPart::Times => "a size".to_owned(),
        FormPart::Name(kind) => with_article(kind.noun()),
        _ => return None,
    })
}

#[track_caller]
fn assert_described(what: &str, takes: Takes, cell: &str) {
    let forms = [takes.alone, takes.first, takes.then].concat();
    let parts = || forms.iter().copied().flatten();
    let (all, needed) = words_of(&forms);
    let quoted = words_quoted(cell);
    let has_names = parts().any(|part| matches!(part, FormPart::StepName));
    let is_known = has_names || quoted.is_subset(&all);
    assert!(is_known, "{what} takes {all:?}, not {quoted:?}");
    let is_whole = needed.is_subset(&quoted) || cell.contains("written out");
    assert!(is_whole, "{what} takes {needed:?} too, beside {quoted:?}");
    let said: String = cell.split('`').step_by(2).collect();
    for form in forms.iter().filter(|form| form.len() == 1) {
        let part = form.first().and_then(called);
        let is_said = part
            .as_ref()
            .is_none_or(|part| said.contains(part.as_str()));
        let is_said = is_said || cell.contains("`L`");
        assert!(is_said, "{what} takes {part:?} too, beside {cell}");
    }
}

/// The words that stand for `allowance` in the table of making methods.
const ALLOWANCE: &str = "`L`, `hem L, turn L`, `double hem L`, length";

#[test]
fn the_tables_of_the_reference_say_what_each_property_takes() {
    let reference = read("grammar/README.md");
    for kind in Kind::ALL
        .iter()
        .filter(|kind| !kind.properties().is_empty())
    {
        let heading = match kind {
            Kind::Rod | Kind::Board => "### rod and board".to_owned(),
            kind => format!("### {}", kind.word()),
        };
        let mut missing: Vec<&str> = kind.properties().iter().map(|it| it.key).collect();
        for row in rows(section_below(&reference, &heading), "key") {
            let keys = quoted(row[0]);
            let properties: Vec<_> = keys.iter().filter_map(|key| kind.property(key)).collect();
            for property in properties {
                let what = format!("`{}` of {}", property.key, kind.noun());
                let cell = if row[1] == "allowance" {
                    ALLOWANCE
                } else {
                    row[1]
                };
                assert_described(&what, property.takes, cell);
                if row.len() > 3 {
                    assert_eq!(row[2] == "**yes**", property.needed, "{what} is needed");
                }
                missing.retain(|key| *key != property.key);
            }
        }
        assert!(
            missing.is_empty(),
            "{missing:?} of {} are not described",
            kind.noun()
        );
    }
}

/// A heading that is written out in the line of a panel has the properties of any heading.
#[test]
fn a_heading_that_is_written_out_has_every_property() {
    let properties = Kind::Heading.properties().iter().map(|it| it.key);
    let head = Kind::Panel.property("head").unwrap().takes;
    let parts = head.then.iter().filter_map(|form| match form.first() {
        Some(FormPart::Words(words)) => Some(*words),
        _ => None,
    });
    assert_eq!(Vec::from_iter(parts), Vec::from_iter(properties.skip(1)));
}

/// Holds that a section names every word that cannot be left out.
#[track_caller]
fn assert_all_described(section: &str, needed: &BTreeSet<&str>) {
    let missing = needed - &words_quoted(section);
    assert!(missing.is_empty(), "{missing:?} are not described");
}

/// The words of steps or lines: all of them, and those that cannot be left out.
fn words_of_all<'k>(
    keywords: impl Iterator<Item = &'k Keyword>,
) -> (BTreeSet<&'static str>, BTreeSet<&'static str>) {
    let (mut all, mut needed) = (BTreeSet::new(), BTreeSet::new());
    for keyword in keywords {
        let takes = keyword.takes;
        let (some, of_them) = words_of(&[takes.alone, takes.first, takes.then].concat());
        all.extend(some.into_iter().chain(keyword.word.split(' ')));
        needed.extend(of_them.into_iter().chain(keyword.word.split(' ')));
    }
    (all, needed)
}

#[test]
fn the_tables_of_the_reference_give_every_step_and_line() {
    let reference = read("grammar/README.md");
    for kind in [Kind::Outline, Kind::Pleats] {
        let section = section_below(&reference, &format!("### {}", kind.word()));
        let (all, needed) = words_of_all(kind.steps().iter());
        assert_all_described(section, &needed);
        let steps = rows(section, "step").into_iter();
        let steps: BTreeSet<&str> = steps.flat_map(|row| words_quoted(row[0])).collect();
        assert!(steps.is_subset(&all), "{steps:?} are not all of {all:?}");
    }
    let (_, needed) = words_of_all(LINES.iter().filter(|line| line.word != "expect"));
    assert_all_described(section_below(&reference, "## The job"), &needed);
    let steps = section_below(&reference, "#### steps");
    let (_, needed) = words_of(&[WORK_STEP.first, WORK_STEP.then].concat());
    assert_all_described(steps, &needed);
}

/// The sizes that can be expected, as the reference lists them.
#[test]
fn the_reference_lists_every_size_that_can_be_expected() {
    let reference = read("grammar/README.md");
    let line = LINES.iter().find(|line| line.word == "expect").unwrap();
    let sizes = line
        .takes
        .alone
        .iter()
        .copied()
        .flatten()
        .find_map(|part| match part {
            FormPart::OneOf(set) => Some(set.words().collect::<BTreeSet<&str>>()),
            _ => None,
        });
    let rows = reference
        .lines()
        .filter(|line| line.starts_with("| `expect "));
    let listed = rows.flat_map(|row| row.split(" | ").skip(1).flat_map(quoted));
    assert_eq!(listed.collect::<BTreeSet<&str>>(), sizes.unwrap());
}

/// What a report of a value says that it can be.
fn can_be(kind: Kind, key: &str, value: &str) -> Vec<String> {
    let item = format!("{} tested {{ {key}: {value} }}\n", kind.word());
    let window = "\
panel plain { face: cloth, drop: 2 in }
treatment single { panel wing like plain { }, row: wing }
window one: single { rod: pole }
";
    let window = window.replace("rod: pole", &format!("{key}: {value}"));
    let text = if kind == Kind::Window { &window } else { &item };
    let project = Memory::of(text.as_str());
    let resolved = resolve(&load(&project.main, &project));
    let unread = resolved.diagnostics.into_iter().filter(|report| {
        let codes = ["word-not-expected", "value-unfinished"];
        codes.contains(&report.code.slug) && report.title.contains(&format!("`{key}`"))
    });
    let begins = format!("`{key}` can be ");
    let helps = unread.flat_map(|report| report.help);
    helps
        .filter_map(|help| Some(help.strip_prefix(&begins)?.to_owned()))
        .collect()
}

/// Whatever a report offers, the property takes.
#[test]
fn reports_offer_what_a_property_takes() {
    let mut told = 0;
    for kind in Kind::ALL {
        for property in kind.properties() {
            let takes = property.takes;
            let (all, _) = words_of(&[takes.alone, takes.first, takes.then].concat());
            for value in ["zzyx", "2 zzyx", "2 in zzyx", "2 in, zzyx", "\"zzyx\""] {
                for offered in can_be(*kind, property.key, value) {
                    let words = words_quoted(&offered);
                    let names = ["hook-and-loop", "cut", "pleat", "bib"];
                    let unknown = words
                        .iter()
                        .filter(|word| !all.contains(*word) && !names.contains(word));
                    let unknown: Vec<_> = unknown.collect();
                    assert!(
                        unknown.is_empty(),
                        "`{}` offers {offered:?}, and takes {all:?}",
                        property.key
                    );
                    told += 1;
                }
            }
        }
    }
    assert!(told > 100, "{told} reports say what a property takes");
}
