//! What a property takes stands in one table, and reading takes it and nothing else.
#![expect(
    clippy::indexing_slicing,
    reason = "a test stops at the first broken promise"
)]

use std::ops::{Range, RangeInclusive};

use pelmet_design::{Form, FormPart, Keyword, Kind, LINES, Takes, WORK_STEP, load, resolve};
use pelmet_tests::Memory;

/// A word that nothing is called.
const INVENTED: &str = "zzyx";

/// A phrase: what stands for each part of its form, and whether that is words of the language.
type Phrase = Vec<(String, bool)>;

/// Every way to write a phrase in a form.
fn written(form: Form) -> Vec<Phrase> {
    let joined = |phrase: &Phrase, part: FormPart| {
        let parts = part_written(part).into_iter();
        parts
            .map(|part| [phrase.clone(), part].concat())
            .collect::<Vec<_>>()
    };
    form.iter().fold(vec![Vec::new()], |phrases, part| {
        phrases
            .iter()
            .flat_map(|phrase| joined(phrase, *part))
            .collect()
    })
}

fn part_written(part: FormPart) -> Vec<Phrase> {
    let words = |words: &str| vec![(words.to_owned(), true)];
    let one = |text: &str| vec![vec![(text.to_owned(), false)]];
    match part {
        FormPart::Words(said) => vec![words(said)],
        FormPart::AnyOf(choices) => choices.iter().map(|said| words(said)).collect(),
        FormPart::OneOf(set) => set.words().map(words).collect(),
        FormPart::Perhaps(form) => [vec![Vec::new()], written(form)].concat(),
        FormPart::Range => [one(LENGTH), written(RANGE)].concat(),
        FormPart::Length => one(LENGTH),
        FormPart::Count => one("2"),
        FormPart::Sum => one(SUM),
        FormPart::Number => one("2.5"),
        FormPart::Percentage => one("20 %"),
        FormPart::Weight => one("12 g"),
        FormPart::WeightOfArea => one("210 g/m2"),
        FormPart::Unit => one("yd"),
        FormPart::Times => one("x"),
        FormPart::Point => one("(1 in, 2 in)"),
        FormPart::Name(kind) => one(&format!("a-{}", kind.word())),
        FormPart::Panel => one("wing"),
        FormPart::StepName => one("cut"),
        FormPart::Figure => one("face size"),
        FormPart::LibraryFile => one("pleats"),
        FormPart::Subject => one(SUBJECT),
        FormPart::Warning => one("join-thinly-covered"),
        FormPart::OwnWords => one("brass"),
        FormPart::Text | FormPart::Sentence => one("\"Words.\""),
        FormPart::Path => one("\"house.pelmet\""),
    }
}

/// What stands for a length, and for what an expectation is about.
const LENGTH: &str = "LENGTH";
const SUBJECT: &str = "SUBJECT";
const SUM: &str = "SUM";

const RANGE: Form = &[
    FormPart::Length,
    FormPart::Words("to"),
    FormPart::Length,
    FormPart::Perhaps(&[FormPart::Words("ideally"), FormPart::Length]),
];

/// Every way to write a value: what stands alone, each first phrase, and each further phrase behind one.
fn values(takes: Takes) -> Vec<Phrase> {
    let all = |forms: &[Form]| {
        forms
            .iter()
            .flat_map(|form| written(form))
            .collect::<Vec<_>>()
    };
    let (mut values, first, then) = (all(takes.alone), all(takes.first), all(takes.then));
    let comma = vec![(",".to_owned(), false)];
    for further in then {
        // Nothing is said twice.
        let others = first.iter().filter(|first| **first != further);
        values.extend(others.map(|first| [first.clone(), comma.clone(), further.clone()].concat()));
    }
    if !takes.needs_more {
        values.extend(first);
    }
    values
}

/// Every way to write a step or a line that begins with a keyword.
fn lines(keyword: &Keyword) -> Vec<Phrase> {
    let word = vec![(keyword.word.to_owned(), true)];
    let behind = values(keyword.takes).into_iter();
    behind
        .map(|behind| [word.clone(), behind].concat())
        .collect()
}

/// The phrases as text, with lengths that can be ranges and what is ideal between them.
fn text(phrases: &Phrase) -> String {
    let phrases = phrases.split(|(part, _)| part == ",");
    let written = phrases.map(|phrase| {
        let parts: Vec<&str> = phrase.iter().map(|(part, _)| part.as_str()).collect();
        let lengths = ["2 in", "4 in", "3 in", "5 in"].into_iter();
        lengths.fold(parts.join(" "), |text, length| {
            text.replacen(LENGTH, length, 1)
        })
    });
    written.collect::<Vec<_>>().join(", ")
}

/// The phrase with each of its words in turn replaced by one that nothing is called.
fn with_invented_words(phrase: &Phrase) -> Vec<String> {
    let words = phrase
        .iter()
        .enumerate()
        .filter(|(_, (_, is_word))| *is_word);
    let replaced = words.map(|(at, _)| {
        let mut phrase = phrase.clone();
        phrase[at] = (INVENTED.to_owned(), false);
        text(&phrase)
    });
    replaced.collect()
}

/// One of each kind, and more where some properties go with others.
const HOUSE: &str = "\
fabric a-fabric { width: 54 in, repeat: 12 in along, 9 in across, bolt: 40 yd }
rod a-rod { length: 40 in, diameter: 5 in }
board a-board { length: 40 in, depth: 4 in }
notion a-notion { roll: 20 yd, pack: 10 }
heading a-heading { hang: over rod, tail: 4 in }
heading a-pocket { hang: rod pocket }
heading a-flat-top { hang: on board }
make a-make { seam: 1/2 in, tape: 3/8 in wide }
outline a-outline whole { from (0, drop), to (width, drop), up to heading }
pleats a-pleats { margin 1 in }
panel a-panel { drop: 12 in, head: plain, make: a-make, face: a-fabric }
treatment a-treatment { panel wing like a-panel { finished width: 40 in }, row: wing }
window a-window: a-treatment { rod: a-rod }
window a-shelf: a-treatment { board: a-board }
";

/// The reports of what cannot be read; that more is wanted is no matter here.
const UNREADABLE: &[&str] = &[
    "accept-unclear",
    "caution-unknown",
    "comma-missing",
    "figure-unknown",
    "fullness-percent-unclear",
    "item-unknown",
    "kind-wanted",
    "library-file-unknown",
    "use-unclear",
    "name-unknown",
    "name-wrong-kind",
    "not-understood",
    "property-unknown",
    "unit-missing",
    "unit-unknown",
    "warning-unknown",
    "word-not-expected",
];

/// Parts of a sheet that stand between other parts of it: what goes before, the part, what goes behind.
type Part = (String, String, String);

/// Which parts of a sheet cannot be read. Beside the sheet there is the house.
fn unreadable(parts: &[Part]) -> Vec<bool> {
    let mut sheet = String::new();
    let mut places = Vec::new();
    for (before, part, behind) in parts {
        sheet.push_str(before);
        let start = sheet.len();
        sheet.push_str(part);
        places.push(start..=sheet.len());
        sheet.push_str(&format!("{behind}\n"));
    }
    sheet.push_str("use \"house.pelmet\"\n");
    let project = Memory::of_files([("main.pelmet", sheet.as_str()), ("house.pelmet", HOUSE)]);
    let loaded = load(&project.main, &project);
    let resolved = resolve(&loaded);
    let all = loaded.diagnostics.iter().chain(&resolved.diagnostics);
    let found = all.filter(|report| UNREADABLE.contains(&report.code.slug));
    let labels = found
        .flat_map(|report| &report.labels)
        .map(|label| label.span);
    let here = labels.filter(|span| Some(span.file) == loaded.main);
    let wrong: Vec<_> = here.map(|span| span.range()).collect();
    let is_wrong = |place: &RangeInclusive<usize>| {
        let meets = |it: &Range<usize>| it.start <= *place.end() && *place.start() <= it.end;
        wrong.iter().any(meets)
    };
    places.iter().map(is_wrong).collect()
}

/// Holds that each of these can be read where it stands in a sheet, and none with a word of it invented.
/// `around` says what goes before a part and what behind it, the number of the part given.
#[track_caller]
fn assert_taken(phrases: &[Phrase], around: impl Fn(usize) -> (String, String)) {
    assert!(!phrases.is_empty());
    let parts = |texts: Vec<String>| -> Vec<Part> {
        let numbered = texts.into_iter().enumerate();
        let part = |(number, text)| {
            let (before, behind) = around(number);
            (before, text, behind)
        };
        numbered.map(part).collect()
    };
    let sound = parts(phrases.iter().map(text).collect());
    for (part, is_wrong) in sound.iter().zip(unreadable(&sound)) {
        assert!(!is_wrong, "{part:?} is not taken");
    }
    // More would be told of than a report is given for.
    let invented: Vec<String> = phrases.iter().flat_map(with_invented_words).collect();
    for invented in invented.chunks(60) {
        let wrong = parts(invented.to_vec());
        for (part, is_wrong) in wrong.iter().zip(unreadable(&wrong)) {
            assert!(is_wrong, "{part:?} is taken");
        }
    }
}

/// What an item is like that can have this property: not every heading and window can have each.
fn like(kind: Kind, key: &str) -> String {
    let like = match (kind, key) {
        (Kind::Heading, "hang") => return String::new(),
        (Kind::Heading, "pocket" | "ease" | "above" | "turn") => "pocket",
        (Kind::Heading, "lap") => "flat-top",
        (Kind::Window, "board") => "shelf",
        (kind, _) => kind.word(),
    };
    format!(" like a-{like}")
}

/// Whether a heading that is written out hangs so that the part behind can belong to it.
fn goes_together(heading: &Phrase) -> bool {
    let part = heading.iter().skip_while(|(part, _)| part != ",").nth(1);
    let parts: &[&str] = match heading[0].0.as_str() {
        "over rod" => &["tail", "fastener"],
        "rod pocket" => &["pocket", "ease", "above", "turn"],
        "on board" => &["lap", "fastener"],
        _ => &[],
    };
    part.is_none_or(|(part, _)| parts.contains(&part.as_str()))
}

#[test]
fn every_form_of_a_property_is_taken_and_no_invented_word() {
    for kind in Kind::ALL {
        for property in kind.properties() {
            let (word, key) = (kind.word(), property.key);
            let like = like(*kind, key);
            let mut values = values(property.takes);
            values.retain(|value| key != "head" || goes_together(value));
            assert_taken(&values, |number| {
                let before = format!("{word} tested-{number}{like} {{ {key}: ");
                (before, " }".to_owned())
            });
        }
    }
}

#[test]
fn every_form_of_a_step_is_taken_and_no_invented_word() {
    for kind in Kind::ALL {
        let word = kind.word();
        for step in kind.steps() {
            let behind = if step.word == "repeat" {
                ": margin 1 in }"
            } else {
                " }"
            };
            assert_taken(&lines(&step), |number| {
                (format!("{word} tested-{number} {{ "), behind.to_owned())
            });
        }
        let step = if *kind == Kind::Outline {
            "from (0, drop)"
        } else {
            "margin 1 in"
        };
        let manners = values(kind.manner());
        if !manners.is_empty() {
            assert_taken(&manners, |number| {
                let before = format!("{word} tested-{number} ");
                (before, format!(" {{ {step} }}"))
            });
        }
    }
}

#[test]
fn every_form_of_a_making_step_is_taken_and_no_invented_word() {
    // Behind a caution, and only there, a word alone is one more.
    let is_alone = |phrase: &Phrase| phrase.len() > 1 && phrase[phrase.len() - 2].0 == ",";
    let is_behind_caution = |phrase: &Phrase| phrase[0].0 == "caution";
    let mut said = values(WORK_STEP);
    said.retain(|phrase| {
        let ends_alone = is_alone(phrase) && phrase[phrase.len() - 1].1;
        !ends_alone || is_behind_caution(phrase)
    });
    assert_taken(&said, |number| {
        let before = format!("make tested-{number} like a-make {{ steps {{ one: \"One.\", two: ");
        (before, " } }".to_owned())
    });
}

#[test]
fn every_form_of_a_line_is_taken_and_no_invented_word() {
    let others = ["use", "expect"];
    for line in LINES.iter().filter(|line| !others.contains(&line.word)) {
        let behind = values(line.value);
        let behind: String = behind
            .iter()
            .map(|value| format!(": {}", text(value)))
            .collect();
        for head in lines(line) {
            assert_taken(&[head], |_| (String::new(), behind.clone()));
        }
    }
    let used = LINES.iter().find(|line| line.word == "use").unwrap();
    assert_taken(&lines(used), |_| (String::new(), String::new()));
}

/// A size is one of something: of the job, a cloth, a window or a panel; and it has a kind.
#[test]
fn every_size_is_expected_of_something_and_no_invented_one() {
    let line = LINES.iter().find(|line| line.word == "expect").unwrap();
    let is_read = |head: &str| {
        let behind = if head.contains(SUM) { "" } else { " = SUM" };
        let subjects = ["job", "a-fabric", "a-window", "wing", "a-window wing"];
        let lines = subjects.iter().flat_map(|subject| {
            let line = format!("{head}{behind}").replace(SUBJECT, subject);
            ["2", "2 in", "2 kg"].map(|sum| (String::new(), line.replace(SUM, sum), String::new()))
        });
        unreadable(&lines.collect::<Vec<Part>>()).contains(&false)
    };
    for phrase in lines(line) {
        assert!(is_read(&text(&phrase)), "{}", text(&phrase));
        for wrong in with_invented_words(&phrase) {
            assert!(!is_read(&wrong), "{wrong} is read");
        }
    }
}
