//! What holds for every text, and for every sound one.

use pelmet_diagnostics::{FileId, Span};
use pelmet_syntax::{FormatRefusal, Parsed, format, parse, parse_value};
use proptest::prelude::*;

const FILE: FileId = FileId(0);

/// Pieces of sheets, which make all kinds of right and wrong ones when thrown together.
const PIECES: &[&str] = &[
    "a", "wing", "x", "é", "in", "ft", "15", "1/2", "15-1/2", "½", "5'", "6\"", "1,5", ".5", "%",
    "g/m2", "\"text\"", "\"", "“", "”", "(", ")", "f(", "{", "}", ":", "=", ",", "+", "- ", "-",
    "*", "/", "×", "# note", "#", " ", "  ", "\t", "\n", "\n    ", "\r\n", "\r", ";", "@",
    "\u{a0}", "\u{feff}", "\u{200b}", "a: b\n", "a {\n", "}\n", "expect", "like", "15,", "⁄", "²",
    "″", "’",
];

/// Pieces that often make a sound sheet.
const SOUND_PIECES: &[&str] = &[
    "a",
    "wing",
    " x ",
    "é",
    "15 in",
    "1/2",
    "15½\"",
    "5'6\"",
    "\"text\"",
    "(",
    ")",
    "f(",
    " {",
    "}",
    ": ",
    ", ",
    " + ",
    " - ",
    " ",
    "\n",
    "\n\n\n",
    " # note\n",
    "\r\n",
    "a: b\n",
    "a { b: c, d: e }\n",
    "(1, 2)",
    ",\n",
];

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(150) })]

    #[test]
    fn any_text_is_read(text in any::<String>()) {
        check(&text)?;
    }

    #[test]
    fn any_jumble_of_pieces_is_read(text in jumble(PIECES)) {
        check(&text)?;
    }

    #[test]
    fn any_jumble_of_sound_pieces_is_laid_out_if_it_is_sound(text in jumble(SOUND_PIECES)) {
        check(&text)?;
    }

    #[test]
    fn sound_sheets_are_laid_out_with_all_they_say(text in sheet()) {
        let before = parse(FILE, &text);
        prop_assert_eq!(&before.diagnostics, &[], "in {}", text);
        let laid_out = format(FILE, &text);
        prop_assert!(laid_out.is_ok(), "{:?} of {}", laid_out, text);
        let laid_out = laid_out.unwrap_or_default();
        let after = parse(FILE, &laid_out);
        prop_assert_eq!(before.file.dump(), after.file.dump());
        prop_assert_eq!(notes(&before), notes(&after));
        prop_assert_eq!(format(FILE, &laid_out), Ok(laid_out));
    }

    #[test]
    fn blanks_at_the_ends_of_lines_say_nothing(text in sheet()) {
        let blanks = text.replace('\n', " \t\r\n");
        prop_assert_eq!(parse(FILE, &text).file.dump(), parse(FILE, &blanks).file.dump());
    }
}

fn jumble(pieces: &'static [&'static str]) -> impl Strategy<Value = String> {
    prop::collection::vec(prop::sample::select(pieces), 0..40).prop_map(|pieces| pieces.concat())
}

/// Checks what must hold for any text whatever.
fn check(text: &str) -> Result<(), TestCaseError> {
    let parsed = parse(FILE, text);
    for diagnostic in &parsed.diagnostics {
        for label in &diagnostic.labels {
            prop_assert!(
                text.get(label.span.range()).is_some(),
                "{:?} in {:?}",
                diagnostic,
                text
            );
        }
        prop_assert!(diagnostic.primary().is_some());
    }
    for entry in &parsed.file.entries {
        prop_assert!(
            text.get(entry.span.range()).is_some(),
            "{:?} in {:?}",
            entry,
            text
        );
    }
    check_layout(text, &parsed)?;
    let (value, diagnostics) = parse_value(FILE, text, Span::new(FILE, 0, text.len()));
    prop_assert!(value.is_some() || diagnostics.is_empty() || text.trim().is_empty());
    Ok(())
}

fn check_layout(text: &str, parsed: &Parsed) -> Result<(), TestCaseError> {
    match format(FILE, text) {
        Ok(laid_out) => {
            prop_assert_eq!(
                format(FILE, &laid_out),
                Ok(laid_out),
                "twice, of {:?}",
                text
            );
        }
        Err(FormatRefusal::Diagnostics(diagnostics)) => {
            prop_assert_eq!(&diagnostics, &parsed.diagnostics);
        }
        Err(FormatRefusal::WouldChange) => prop_assert!(false, "would change {:?}", text),
    }
    Ok(())
}

fn notes(parsed: &Parsed) -> Vec<&str> {
    parsed
        .file
        .comments
        .iter()
        .map(|comment| comment.text.as_str())
        .collect()
}

/// A sound sheet in untidy hands.
fn sheet() -> impl Strategy<Value = String> {
    prop::collection::vec(entry(), 0..6).prop_map(|entries| entries.concat())
}

fn entry() -> impl Strategy<Value = String> {
    let property = (phrases(), value(), line_end())
        .prop_map(|(head, value, end)| format!("{head}{value}{end}"));
    property.prop_recursive(3, 24, 4, |inner| {
        let entries = prop::collection::vec(inner, 0..4);
        let block = (phrases(), blank(), line_end(), entries, line_end()).prop_map(
            |(head, blank, begin, entries, end)| {
                format!("{head}{blank}{{{begin}{}}}{end}", entries.concat())
            },
        );
        let one_line = (word(), word(), phrases(), word(), phrases(), line_end()).prop_map(
            |(head, key, value, next, other, end)| {
                format!("{head} {{{key}:{value},{next}: {other}}}{end}")
            },
        );
        prop_oneof![block, one_line]
    })
}

fn value() -> impl Strategy<Value = String> {
    let value = (blank(), blank(), phrases())
        .prop_map(|(before, after, value)| format!("{before}:{after}{value}"));
    prop_oneof![Just(String::new()), value]
}

fn phrases() -> impl Strategy<Value = String> {
    let comma = prop_oneof![
        Just(", "),
        Just(","),
        Just(",\n"),
        Just(" ,  # note\n\n  "),
        Just(",\n# note\n")
    ];
    // A digit before a comma and one after it would be a decimal comma, so every phrase begins with a word.
    let phrase = (word(), prop::collection::vec(term(), 0..3))
        .prop_map(|(word, terms)| format!("{word} {}", terms.join(" ")).trim_end().to_owned())
        .boxed();
    (phrase.clone(), prop::collection::vec((comma, phrase), 0..3)).prop_map(|(first, rest)| {
        rest.iter().fold(first, |text, (comma, phrase)| {
            format!("{text}{comma}{phrase}")
        })
    })
}

fn term() -> impl Strategy<Value = String> {
    let leaf = prop_oneof![
        word(),
        number(),
        Just("\"a text, # {\"".to_owned()),
        Just("x 3".to_owned())
    ];
    leaf.prop_recursive(3, 16, 3, |inner| {
        let gap = || prop::sample::select(vec!["", " ", "\n", "  # note\n  ", "\n\n"]);
        let sign = prop::sample::select(vec![" + ", " - ", " * ", " / ", "+", "*"]);
        prop_oneof![
            (operand(), sign, operand())
                .prop_map(|(left, sign, right)| format!("{left}{sign}{right}")),
            (gap(), operand(), gap())
                .prop_map(|(before, term, after)| format!("({before}-{term}{after})")),
            (gap(), operand(), gap(), operand())
                .prop_map(|(before, one, gap, other)| format!("({before}{one} ,{gap}{other})")),
            (word(), gap(), inner.clone(), gap(), word(), inner).prop_map(
                |(name, gap, one, after, key, other)| {
                    format!("{name}({gap}{one}{after}, {key} = {other})")
                }
            ),
        ]
    })
}

fn operand() -> impl Strategy<Value = String> {
    prop_oneof![
        word(),
        number(),
        (word(), number()).prop_map(|(word, number)| format!("({word} * {number})"))
    ]
}

fn word() -> impl Strategy<Value = String> {
    "[a-wzé][a-z0-9_]{0,5}(-[a-z0-9]{1,3})?"
}

fn number() -> impl Strategy<Value = String> {
    let units = vec!["", " in", "\"", "″", " cm", "mm", "%", " yd", "'", " g/m²"];
    let amount = prop_oneof![
        "[0-9]{1,4}",
        "[0-9]{1,3}\\.[0-9]{1,3}",
        "[0-9]{1,2} [0-9]{1,2}/[1-9]",
        "[0-9]{1,2}-[0-9]/[1-9]",
        "[0-9]{0,2}[½¾⅓⅞]",
        "[0-9]{1,2}⁄[1-9]{1,2}",
        "[1-9]' [0-9]{1,2}",
    ];
    (amount, prop::sample::select(units)).prop_map(|(amount, unit)| {
        let feet = amount.contains('\'');
        format!("{amount}{}", if feet { "\"" } else { unit })
    })
}

fn blank() -> impl Strategy<Value = &'static str> {
    prop::sample::select(vec!["", " ", "\t", "  "])
}

fn line_end() -> impl Strategy<Value = &'static str> {
    prop::sample::select(vec![
        "\n",
        " \n",
        "\n\n\n",
        "# note\n",
        "  # note\n# another\n\n",
        "\r\n",
    ])
}
