//! What a word means by its place, what documents a definition, and what lies around a place.

use pelmet_design::{Definition, Meaning, Resolved, Symbols};
use pelmet_diagnostics::{FileId, Sources};
use pelmet_tests::Memory;

use crate::designs::resolved;

/// A text with its place marked, and what stands there.
const MEANINGS: &[(&str, &[&str])] = &[
    ("|fabric kelp { }", &["the kind fabric"]),
    ("fabric |kelp { }", &["Item(Fabric) kelp, given here"]),
    ("fabric kelp { |width: 54 in }", &["Fabric's width"]),
    ("fabric kelp { width |54 in }", &[]),
    ("fabric kelp { widt|h 54 in }", &["Fabric's width"]),
    ("fabric kelp { way: one-way| }", &["the words one-way"]),
    (
        "fabric kelp { railroad: where |it saves }",
        &["the words where it saves"],
    ),
    ("fabric kelp { price: 3 per |yard }", &["the words yd"]),
    ("fabric kelp { face: |kelp }", &[]),
    ("rod a { material: |brass }", &["words of the maker's"]),
    ("outline a half { to (|width, drop) }", &["the known Width"]),
    (
        "treatment a { overlap: |rod-length / 9 }",
        &["the known RodLength"],
    ),
    (
        "outline a half { to (2 in, drop) as |tip }",
        &["Corner tip of a, given here"],
    ),
    (
        "pleats a from |centre, mirrored { rest }",
        &["the words from centre"],
    ),
    (
        "pleats a { double |box 2 in, face 1 in }",
        &["the words double box"],
    ),
    (
        "heading a { fastener: |hook-and-loop 1 in }",
        &["a notion not described"],
    ),
    (
        "make a { steps { cut: \"Cut { face |size }.\" } }",
        &["the figure face size"],
    ),
    (
        "make a { steps { cut: when no side |hem \"x\" } }",
        &["the figure side hem"],
    ),
    (
        "make a { steps { cut: \"x\", caution shears, |needle } }",
        &["the words needle"],
    ),
    (
        "make a { steps { side |hems: \"x\" } }",
        &["Step side hems of a, given here"],
    ),
    (
        "make a { accept |stack-too-thick: \"x\" }",
        &["the warning stack-too-thick"],
    ),
    (
        "use standard |headings",
        &["the file standard/headings.pelmet"],
    ),
    ("use \"other|.pelmet\"", &["the file other.pelmet"]),
    ("use \"|missing.pelmet\"", &[]),
    ("expect |job weight at most 3 kg", &["the words job"]),
    ("expect job weight at |most 3 kg", &["the words at most"]),
    ("units |metric", &["the words metric"]),
    (
        "treatment a(rod) { row: b }\nwindow c: a { |rod: d }",
        &["Window's rod", "Parameter rod of a"],
    ),
    (
        "treatment a(b) { overlap: b }\nmeasure c: 2 in\nwindow d: a(|c) { }",
        &["Item(Measure) c"],
    ),
];

fn meanings(symbols: &Symbols, sources: &Sources, file: FileId, byte: usize) -> Vec<String> {
    let defined = |definition: &Definition| {
        let owner = definition.owner.and_then(|owner| symbols.definition(owner));
        let of = owner.map_or(String::new(), |owner| format!(" of {}", owner.name));
        format!("{:?} {}{of}", definition.kind, definition.name)
    };
    let given = symbols.definition_at(file, byte);
    let given = given.map(|(_, definition)| format!("{}, given here", defined(definition)));
    let used = symbols
        .references_at(file, byte)
        .map(|it| match it.meaning {
            Meaning::Definition(id) => defined(symbols.definition(id).unwrap()),
            Meaning::Property(kind, key) => format!("{kind:?}'s {key}"),
            Meaning::Known(known) => format!("the known {known:?}"),
            Meaning::Figure(figure) => format!("the figure {}", figure.name()),
            Meaning::Warning(code) => format!("the warning {}", code.slug),
            Meaning::File(file) => format!("the file {}", sources.name(file)),
            Meaning::Kind(kind) => format!("the kind {}", kind.word()),
            Meaning::Word(words) => format!("the words {words}"),
            Meaning::Undescribed(kind) => format!("a {} not described", kind.noun()),
            Meaning::OwnWords => "words of the maker's".to_owned(),
        });
    given.into_iter().chain(used).collect()
}

#[test]
fn a_word_is_known_by_its_place() {
    for (marked, wanted) in MEANINGS {
        let byte = marked.find('|').unwrap();
        let text = marked.replacen('|', "", 1);
        let project = Memory::of_files([("main.pelmet", text.as_str()), ("other.pelmet", "")]);
        let (loaded, Resolved { symbols, .. }) = resolved(&project);
        let found = meanings(&symbols, &loaded.sources, loaded.main.unwrap(), byte);
        assert_eq!(found, *wanted, "{marked}");
    }
}

const DOCUMENTED: &str = "\
# What the whole file is about.

# A cloth
#  with two lines of comment.
fabric kelp { width: 54 in }  # not about sand
fabric sand { width: 54 in }
# Far from it.

rod pole(
    # How long it is.
    length,
    # How thick,
    # and no more.
    diameter = 1 in, wall = 1 mm
) { length: length, diameter: diameter }
treatment pair {
    # Half of it.
    panel half { }
    # Short.
    measure short: 3 in
}
make bag {
    steps {
        # First.
        cut: \"Cut.\"
    }
}
";

#[test]
fn comments_directly_above_document_what_is_below() {
    for text in [DOCUMENTED.to_owned(), DOCUMENTED.replace('\n', "\r\n")] {
        let (loaded, Resolved { symbols, .. }) = resolved(&Memory::of(text));
        let documented = symbols.definitions().filter_map(|(_, definition)| {
            let lines = definition.documentation(&loaded.sources);
            (!lines.is_empty()).then(|| format!("{}: {}", definition.name, lines.join("/")))
        });
        let wanted = [
            "kelp: A cloth/ with two lines of comment.",
            "length: How long it is.",
            "diameter: How thick,/and no more.",
            "half: Half of it.",
            "short: Short.",
            "cut: First.",
        ];
        assert_eq!(Vec::from_iter(documented), wanted);
    }
}

#[test]
fn a_place_lies_in_the_innermost_item_around_it() {
    let text = "fabric kelp { width: 54 in }\ntreatment pair {\n    panel half { drop: 2 in }\n}\n";
    let (loaded, Resolved { symbols, .. }) = resolved(&Memory::of(text));
    for (part, item) in [
        ("54", "kelp"),
        ("drop", "half"),
        ("}\n}", "half"),
        ("{\n", "pair"),
    ] {
        let byte = text.find(part).unwrap() + 1;
        let around = symbols.definition_around(loaded.main.unwrap(), byte);
        let around = around.and_then(|id| symbols.definition(id));
        assert_eq!(around.map(|it| it.name.as_str()), Some(item), "at {part:?}");
    }
    assert_eq!(
        symbols.definition_around(loaded.main.unwrap(), text.len()),
        None
    );
}
