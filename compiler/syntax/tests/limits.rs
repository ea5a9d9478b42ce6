//! No text wears the reader out: every limit is told once, and quickly.

use pelmet_diagnostics::FileId;
use pelmet_syntax::{
    MAXIMUM_DIAGNOSTICS, MAXIMUM_DIGITS, MAXIMUM_NESTING, MAXIMUM_OPERATORS, MAXIMUM_WORDS, Parsed,
    format, parse,
};

#[test]
fn brackets_nest_up_to_the_limit() {
    for (open, close) in [("(", ")"), ("a {\n", "}\n"), ("f(", ")"), ("f(b = (", "))")] {
        let signs = open.matches(['(', '{']).count();
        let levels = MAXIMUM_NESTING / signs;
        let start = if open.contains('{') { "" } else { "a: " };
        let nested = |levels: usize| {
            format!(
                "{start}{}{}{}",
                open.repeat(levels),
                "b\n".trim_end(),
                close.repeat(levels)
            )
        };
        assert_eq!(codes(&read(&nested(levels))), [""; 0], "of {open:?}");
        assert_eq!(
            codes(&read(&nested(levels + 1))),
            ["nested-too-deep"],
            "of {open:?}"
        );
    }
}

#[test]
fn a_hundred_thousand_open_brackets_are_one_mistake() {
    for open in ["(", "{", "a {\n", "f(", "-("] {
        let parsed = read(&open.repeat(100_000));
        assert_eq!(codes(&parsed), ["nested-too-deep"], "of {open:?}");
        assert!(parsed.file.entries.is_empty());
    }
}

/// A line of `a`, a line end and no more is two; a note is none.
#[test]
fn files_have_words_up_to_the_limit() {
    let lines =
        |count: usize| format!("{}# a note of many words, not counted", "a\n".repeat(count));
    assert!(!codes(&read(&lines(MAXIMUM_WORDS / 2))).contains(&"too-many-words"));
    for text in [
        lines(MAXIMUM_WORDS / 2 + 1),
        "\n".repeat(4_000_000),
        "a,".repeat(2_000_000),
    ] {
        let parsed = read(&text);
        assert_eq!(codes(&parsed), ["too-many-words"]);
        assert!(parsed.file.entries.is_empty());
    }
}

#[test]
fn sums_have_signs_up_to_the_limit() {
    let sum = |signs: usize| format!("a: 1{}\nb: 2\n", " + 1".repeat(signs));
    assert_eq!(codes(&read(&sum(MAXIMUM_OPERATORS))), [""; 0]);
    for signs in [MAXIMUM_OPERATORS + 1, 100_000] {
        let parsed = read(&sum(signs));
        assert_eq!(codes(&parsed), ["sum-too-long"]);
        assert_eq!(parsed.file.dump(), "a : <broken>\nb : [2]\n");
    }
}

#[test]
fn sums_within_brackets_are_counted_by_themselves() {
    let inner = format!("({})", vec!["1"; 150].join(" + "));
    let parsed = read(&format!("a: {}\n", vec![inner; 150].join(" * ")));
    assert_eq!(codes(&parsed), [""; 0]);
}

#[test]
fn numbers_have_digits_up_to_the_limit() {
    let digits = |count: usize| "9".repeat(count);
    let shapes: [fn(&str) -> String; 5] = [
        |digits| digits.to_owned(),
        |digits| format!("1.{digits}"),
        |digits| format!("1/{digits}"),
        |digits| format!("{digits} {digits}/{digits}"),
        |digits| format!("{digits}.{digits}' {digits}/{digits}\""),
    ];
    for shape in shapes {
        let fits = read(&format!("a: {}\n", shape(&digits(MAXIMUM_DIGITS))));
        assert_eq!(codes(&fits), [""; 0], "of {}", shape("9"));
        let beyond = read(&format!("a: {}\n", shape(&digits(MAXIMUM_DIGITS + 1))));
        assert_eq!(codes(&beyond), ["number-too-large"], "of {}", shape("9"));
    }
}

#[test]
fn mistakes_are_told_up_to_the_limit() {
    for wrong in ["; a\n", "/\n", "}\n", ")\n", "a: 1,5\n", "\"\n"] {
        let parsed = read(&wrong.repeat(MAXIMUM_DIAGNOSTICS));
        assert_eq!(
            parsed.diagnostics.len(),
            MAXIMUM_DIAGNOSTICS,
            "of {wrong:?}"
        );
        let parsed = read(&wrong.repeat(5_000));
        assert_eq!(
            parsed.diagnostics.len(),
            MAXIMUM_DIAGNOSTICS + 1,
            "of {wrong:?}"
        );
        assert_eq!(codes(&parsed).last(), Some(&"too-many-mistakes"));
    }
}

#[test]
fn long_flat_texts_are_read() {
    let texts = [
        "a ", "a, ", "1 ", "a\n", "(a) ", "\"a\" ", "a: ", "f(a) ", "- ", "40x", "a {}\n", "\n",
        "#\n",
    ];
    for text in texts {
        // Finishing at all, without running out of stack, is what is promised here.
        let long = text.repeat(8_000);
        let _ = format(FileId(0), &long);
    }
}

#[test]
fn brackets_that_fail_at_every_level_take_no_longer() {
    let text = format!("a: {}1 2{}\n", "f(b = (".repeat(45), " / @ )".repeat(90));
    let parsed = read(&text.repeat(20));
    assert_eq!(parsed.file.entries.len(), 20);
}

fn read(text: &str) -> Parsed {
    parse(FileId(0), text)
}

fn codes(parsed: &Parsed) -> Vec<&'static str> {
    parsed
        .diagnostics
        .iter()
        .map(|diagnostic| diagnostic.code.slug)
        .collect()
}
