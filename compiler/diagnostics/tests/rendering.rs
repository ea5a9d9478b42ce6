//! How diagnostics look, drawn, plain and as JSON.

#![expect(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    clippy::arithmetic_side_effects,
    reason = "a test stops at the first broken promise"
)]

use pelmet_diagnostics::codes::{
    BracketNotClosed, CurlyQuotes, FileTooLarge, FullnessPercentUnclear, KindMismatch, NameTwice,
    NameUnknown, NameUnused, decimal_comma, use_in_a_circle,
};
use pelmet_diagnostics::render::{HumanOptions, human, json, plain, summary};
use pelmet_diagnostics::{Diagnostic, FileId, PlacedText, Sources, Span};

/// Where `part` first stands in a file.
fn find(sources: &Sources, file: FileId, part: &str) -> Span {
    let start = sources.text(file).find(part).unwrap();
    Span::new(file, start, start + part.len())
}

/// One text, and the diagnostic made of the spans of `parts` in it.
fn one_file(text: &str, parts: &[&str], make: impl Fn(&[Span]) -> Diagnostic) -> Case {
    let mut sources = Sources::new();
    let file = sources.add("bench.pelmet", text);
    let spans: Vec<Span> = parts
        .iter()
        .map(|part| find(&sources, file, part))
        .collect();
    Case {
        diagnostics: vec![make(&spans)],
        sources,
    }
}

struct Case {
    diagnostics: Vec<Diagnostic>,
    sources: Sources,
}

impl Case {
    fn human(&self) -> String {
        human(&self.diagnostics, &self.sources, HumanOptions::default())
    }

    /// Drawn and plain, one under the other.
    fn both(&self) -> String {
        format!(
            "{}\n{}",
            self.human(),
            plain(&self.diagnostics, &self.sources)
        )
    }

    fn json(&self) -> String {
        json(&self.diagnostics, &self.sources)
    }
}

fn unknown_name(spans: &[Span]) -> Diagnostic {
    no_fabric(spans[0], "kelp-strip", Some("kelp-stripe"))
}

fn no_fabric(span: Span, name: &str, nearest: Option<&str>) -> Diagnostic {
    NameUnknown {
        span,
        noun: "fabric",
        word: "fabric",
        name,
        suggestion: nearest.map(str::to_owned),
    }
    .into()
}

fn unused_name(span: Span) -> Diagnostic {
    NameUnused {
        span,
        kind: "fabric",
        name: "kelp",
    }
    .into()
}

fn not_closed(open: Span, missed: Span) -> Diagnostic {
    BracketNotClosed {
        open,
        bracket: '{',
        missed,
    }
    .into()
}

fn too_large() -> Diagnostic {
    FileTooLarge {
        place: None,
        path: "bench.pelmet",
        size: 5_000_000,
        limit: 4_194_304,
    }
    .into()
}

fn mismatch(spans: &[Span]) -> Diagnostic {
    KindMismatch {
        operator: spans[1],
        sign: '+',
        left: PlacedText::new(spans[0], "a length"),
        right: PlacedText::new(spans[2], "a plain number"),
    }
    .into()
}

#[test]
fn one_label() {
    let text = "fabric kelp-stripe { width: 54 in }\n\nfabric sand like kelp-strip { way: any }\n";
    let case = one_file(text, &["kelp-strip {"], |spans| {
        let name = Span::new(
            spans[0].file,
            spans[0].start as usize,
            spans[0].end as usize - 2,
        );
        unknown_name(&[name])
    });
    insta::assert_snapshot!(case.both());
}

#[test]
fn several_labels_on_one_line() {
    let text = "fabric kelp {\n    width: 54 in + 3\n    way: any\n}\n";
    insta::assert_snapshot!(one_file(text, &["54 in", "+", "3"], mismatch).both());
}

#[test]
fn labels_far_apart_leave_out_what_lies_between() {
    let between = "# a note\n".repeat(200);
    let text = format!("fabric kelp {{ width: 54 in }}\n{between}rod kelp-2 {{ length: 72 in }}\n");
    let case = one_file(&text, &["kelp ", "kelp-2"], |spans| {
        let twice = NameTwice {
            second: spans[1],
            first: spans[0],
            name: "kelp",
        };
        twice.into()
    });
    insta::assert_snapshot!(case.both());
}

#[test]
fn places_in_two_files() {
    let mut sources = Sources::new();
    let main = sources.add("bench.pelmet", "use \"styles/harbor.pelmet\"\n");
    let style = sources.add(
        "styles/harbor.pelmet",
        "units inches\nuse \"../bench.pelmet\"\n",
    );
    let steps = [
        PlacedText::new(
            find(&sources, main, "\"styles/harbor.pelmet\""),
            "styles/harbor.pelmet",
        ),
        PlacedText::new(find(&sources, style, "\"../bench.pelmet\""), "bench.pelmet"),
    ];
    let case = Case {
        diagnostics: vec![use_in_a_circle(&steps)],
        sources,
    };
    insta::assert_snapshot!(case.both());
}

#[test]
fn a_label_at_the_very_end() {
    for (name, text) in [
        ("end_with_newline", "fabric kelp {\n    width: 54 in\n"),
        ("end_without_newline", "fabric kelp {\n    width: 54 in"),
    ] {
        let case = one_file(text, &["{"], |spans| {
            let end = Span::new(spans[0].file, text.len(), text.len());
            not_closed(spans[0], end)
        });
        insta::assert_snapshot!(name, case.both());
    }
}

#[test]
fn a_label_in_an_empty_file() {
    let case = one_file("", &[""], |spans| not_closed(spans[0], spans[0]));
    insta::assert_snapshot!(case.both());
}

#[test]
fn tabs_accents_and_wide_letters_do_not_move_a_label() {
    for (name, text) in [
        ("tabs", "fabric kelp {\n\twidth:\t15,5 in\n}\n"),
        ("accents", "fabric toile-cafe\u{301}-é { width: 15,5 in }\n"),
        ("wide_letters", "fabric 絹の布 { width: 15,5 in }\n"),
        (
            "carriage_returns",
            "fabric kelp {\r\n    width: 15,5 in\r\n}\r\n",
        ),
        (
            "byte_order_mark",
            "\u{feff}fabric kelp { width: 15,5 in }\n",
        ),
    ] {
        let case = one_file(text, &["15,5"], |spans| decimal_comma(spans[0], "15,5"));
        insta::assert_snapshot!(name, case.both());
    }
}

#[test]
fn a_label_over_several_lines_is_drawn_under_the_first() {
    let text = "fabric kelp {\n    width: 54 in\n}\n";
    let case = one_file(text, &[text.trim_end()], |spans| unused_name(spans[0]));
    insta::assert_snapshot!(case.both());
}

#[test]
fn a_very_long_line_is_cut_around_its_label() {
    let long = "way: any, ".repeat(500);
    let text = format!("fabric kelp {{ {long}width: 15,5 in, {long} }}\n");
    let case = one_file(&text, &["15,5"], |spans| decimal_comma(spans[0], "15,5"));
    let drawn = case.human();
    assert!(
        drawn.lines().all(|line| line.chars().count() < 320),
        "{drawn}"
    );
    assert!(drawn.contains("bench.pelmet:1:5022"), "{drawn}");
    assert!(drawn.contains("read as 15.5"), "{drawn}");
}

/// A file of the largest size on one line, with a decimal comma every few bytes of its end: it is told as
/// fast as any other, since neither lines nor columns are counted from the beginning.
#[test]
fn many_diagnostics_in_a_huge_line_are_told_without_delay() {
    let text = "way: 1,5 ".repeat(450_000);
    let mut sources = Sources::new();
    let file = sources.add("bench.pelmet", text.as_str());
    let diagnostics: Vec<Diagnostic> = (449_000..450_000)
        .map(|entry| decimal_comma(Span::new(file, entry * 9 + 5, entry * 9 + 8), "1,5"))
        .collect();
    let drawn = human(&diagnostics, &sources, HumanOptions::default());
    assert!(drawn.len() < 1_500 * diagnostics.len(), "{}", drawn.len());
    let lines = plain(&diagnostics, &sources);
    assert!(lines.starts_with("bench.pelmet:1:4041006: error: "));
}

#[test]
fn no_label_at_all() {
    let diagnostics = vec![too_large()];
    let case = Case {
        diagnostics,
        sources: Sources::new(),
    };
    insta::assert_snapshot!(case.both());
}

#[test]
fn an_accepted_warning_gives_its_reason() {
    let case = one_file("fabric kelp { width: 54 in }\n", &["kelp"], |spans| {
        unused_name(spans[0]).accept("kept for the second window")
    });
    insta::assert_snapshot!(case.both());
}

#[test]
fn an_error_cannot_be_accepted() {
    let case = one_file("kelp-strip", &["kelp-strip"], |spans| {
        unknown_name(spans).accept("so be it")
    });
    assert_eq!(case.diagnostics[0].accepted, None);
}

#[test]
fn a_sum_and_two_helps_in_a_narrow_terminal() {
    let case = one_file("pleats soft { fullness: 200 % }\n", &["200 %"], |spans| {
        let unclear = FullnessPercentUnclear {
            span: spans[0],
            typed: "200 %",
            whole: "2 times",
            added: "3 times",
        };
        unclear.into()
    });
    let options = HumanOptions {
        width: 48,
        ..HumanOptions::default()
    };
    insta::assert_snapshot!(human(&case.diagnostics, &case.sources, options));
}

#[test]
fn drawn_without_line_drawing_characters_and_in_colour() {
    let text = "fabric kelp { width: 54 in + 3 }\n";
    let case = one_file(text, &["54 in", "+", "3"], mismatch);
    let ascii = HumanOptions {
        unicode: false,
        ..HumanOptions::default()
    };
    let drawn = human(&case.diagnostics, &case.sources, ascii);
    assert!(drawn.is_ascii(), "{drawn}");
    insta::assert_snapshot!("ascii", drawn);

    let coloured = HumanOptions {
        color: true,
        ..HumanOptions::default()
    };
    let drawn = human(&case.diagnostics, &case.sources, coloured);
    insta::assert_snapshot!("colour", drawn.replace('\u{1b}', "ESC"));
}

#[test]
fn json_has_lines_columns_and_bytes() {
    let text = "\u{feff}fabric café like kelp-strip { width: 54 in }\r\n";
    insta::assert_snapshot!(one_file(text, &["kelp-strip"], unknown_name).json());
}

#[test]
fn json_has_every_edit_of_a_fix() {
    let text = "use “style.pelmet”\n";
    let case = one_file(text, &["“", "”"], |spans| {
        let quotes = CurlyQuotes {
            open: spans[0],
            close: spans[1],
        };
        quotes.into()
    });
    insta::assert_snapshot!(case.json());
}

#[test]
fn json_of_nothing_is_whole() {
    insta::assert_snapshot!(json(&[], &Sources::new()));
}

#[test]
fn odd_characters_cannot_draw() {
    let odd = "kelp\u{1b}[2J\u{202e}\u{7}";
    let text = format!("fabric {odd} {{ width: 54 in }}\n");
    let case = one_file(&text, &[odd], |spans| no_fabric(spans[0], odd, None));
    for shown in [case.human(), plain(&case.diagnostics, &case.sources)] {
        assert!(
            !shown.contains(['\u{1b}', '\u{202e}', '\u{7}']),
            "{shown:?}"
        );
        assert!(shown.contains("kelp␛[2J\u{fffd}␇"), "{shown:?}");
    }
    let read: serde_json::Value = serde_json::from_str(&case.json()).unwrap();
    assert_eq!(
        read["diagnostics"][0]["title"],
        format!("no fabric is called `{odd}`")
    );
}

#[test]
fn more_labels_than_anyone_reads_are_counted() {
    let text = "use \"bench.pelmet\"\n".repeat(100);
    let mut sources = Sources::new();
    let file = sources.add("bench.pelmet", text.as_str());
    let steps: Vec<PlacedText> = (0..100)
        .map(|step| Span::new(file, step * 19 + 4, step * 19 + 18))
        .map(|span| PlacedText::new(span, "bench.pelmet"))
        .collect();
    let case = Case {
        diagnostics: vec![use_in_a_circle(&steps)],
        sources,
    };
    assert!(
        case.human().contains("76 more places are not drawn"),
        "{}",
        case.human()
    );
}

#[test]
fn several_diagnostics_are_parted_by_an_empty_line() {
    let mut case = one_file("kelp-strip and so on\n", &["kelp-strip"], unknown_name);
    case.diagnostics.push(too_large());
    insta::assert_snapshot!(case.both());
}

#[test]
fn the_summary_counts_each_kind() {
    let span = Span::new(FileId(0), 0, 0);
    let error = || no_fabric(span, "kelp", None);
    let warning = || unused_name(span);
    for (diagnostics, words) in [
        (vec![], "nothing to report"),
        (vec![error()], "1 error"),
        (vec![error(), warning(), error()], "2 errors, 1 warning"),
        (
            vec![warning(), warning().accept("kept")],
            "1 warning, 1 accepted warning",
        ),
    ] {
        assert_eq!(summary(&diagnostics), words);
    }
}
