//! One thing wrong gives one diagnostic, at its place, and what stands around it is read.

#![expect(
    clippy::string_slice,
    reason = "a test stops at the first broken promise"
)]

use pelmet_diagnostics::FileId;
use pelmet_syntax::parse;

/// A text with one thing wrong, its code, the text that the diagnostic points at, and the tree.
struct Case(&'static str, &'static str, &'static str, &'static str);

const CASES: &[Case] = &[
    // Lines that cannot be read.
    Case(
        "a: 1\n/ 2 in\nb: 2\n",
        "not-understood",
        "/ 2 in",
        "a : [1]\n<broken>\nb : [2]\n",
    ),
    Case(
        "a: 1 + + 2\nb: 2\n",
        "not-understood",
        "+ + 2",
        "a : [1] <broken>\nb : [2]\n",
    ),
    Case(
        "a: 1 +\nb: 2\n",
        "not-understood",
        "+",
        "a : [1] <broken>\nb : [2]\n",
    ),
    Case(
        "a: : 1\nb: 2\n",
        "not-understood",
        ": 1",
        "a : <broken>\nb : [2]\n",
    ),
    Case(
        ": 1\nb: 2\n",
        "not-understood",
        ": 1",
        "<broken>\nb : [2]\n",
    ),
    Case(
        "a: b c: d\nb: 2\n",
        "not-understood",
        ": d",
        "a : b c <broken>\nb : [2]\n",
    ),
    Case(
        "a: 1, , b: 2\nc: 3\n",
        "not-understood",
        ", b: 2",
        "a : [1]\n<broken>\nc : [3]\n",
    ),
    Case(
        "a { / b, c: d }\ne: 1\n",
        "not-understood",
        "/ b",
        "a {}\n  <broken>\n  c : d\ne : [1]\n",
    ),
    Case(
        "{ a: 1 }\nb: 2\n",
        "not-understood",
        "{",
        "<broken> {}\n  a : [1]\nb : [2]\n",
    ),
    Case(
        "/ {\n    a: 1\n}\nb: 2\n",
        "not-understood",
        "/",
        "<broken> {}\n  a : [1]\nb : [2]\n",
    ),
    Case(
        "a: b // why\nc: 3\n",
        "not-understood",
        "// why",
        "a : b <broken>\nc : [3]\n",
    ),
    Case(
        "a: 1,000,000\nb: 2\n",
        "not-understood",
        "1,000,000",
        "a : <broken>\nb : [2]\n",
    ),
    // Brackets whose inside cannot be read.
    Case(
        "from (1, +) on\nb: 2\n",
        "not-understood",
        "(1, +)",
        "from <broken> on\nb : [2]\n",
    ),
    Case(
        "from () on\nb: 2\n",
        "not-understood",
        "()",
        "from <broken> on\nb : [2]\n",
    ),
    Case(
        "a: f(1 2 /) on\nb: 2\n",
        "not-understood",
        "(1 2 /)",
        "a : <broken> on\nb : [2]\n",
    ),
    Case(
        "a: f((1, +), 2)\nb: 2\n",
        "not-understood",
        "(1, +)",
        "a : f(<broken>, [2])\nb : [2]\n",
    ),
    // Brackets that do not pair.
    Case(
        "a: (1 + 2\nb: 2\n",
        "bracket-not-closed",
        "(",
        "a : <broken>\nb : [2]\n",
    ),
    Case(
        "a: f(1, 2\nb: 2\n",
        "bracket-not-closed",
        "(",
        "a : f <broken>\nb : [2]\n",
    ),
    Case(
        "a: f(1 {\n    b: 2\n}\n",
        "bracket-not-closed",
        "(",
        "a : f <broken> {}\n  b : [2]\n",
    ),
    Case("a: (1", "bracket-not-closed", "(", "a : <broken>\n"),
    Case(
        "a {\n    b: 2\n",
        "bracket-not-closed",
        "{",
        "a {}\n  b : [2]\n",
    ),
    Case(
        "a: 1)\nb: 2\n",
        "bracket-not-opened",
        ")",
        "a : [1] <broken>\nb : [2]\n",
    ),
    Case(
        "a: 1\n}\nb: 2\n",
        "bracket-not-opened",
        "}",
        "a : [1]\nb : [2]\n",
    ),
    Case(
        "a { b: (1 }\nc: 2\n",
        "brackets-differ",
        "}",
        "a {}\n  b : <broken>\nc : [2]\n",
    ),
    Case(
        "a {\n    b: (1\n}\nc: 2\n",
        "brackets-differ",
        "}",
        "a {}\n  b : <broken>\nc : [2]\n",
    ),
    Case(
        "a {\n    b: (1}, c: 2\n}\n",
        "brackets-differ",
        "}",
        "a {}\n  b : (group [1])\n  c : [2]\n",
    ),
    Case(
        "a { b: 1 )\nc: 2\n",
        "brackets-differ",
        ")",
        "a {}\n  b : [1]\nc : [2]\n",
    ),
    // Brackets that the layout explains.
    Case(
        "a {\n    b {\n        c: 1\n    d {\n        e: 1\n    }\n}\n",
        "bracket-not-closed",
        "{",
        "a {}\n  b {}\n    c : [1]\n  d {}\n    e : [1]\n",
    ),
    Case(
        "a {\n    b: 1\n\nc {\n    d: 1\n}\n",
        "bracket-not-closed",
        "{",
        "a {}\n  b : [1]\nc {}\n  d : [1]\n",
    ),
    Case(
        "a {\n    b {\n        c: 1\n}\nd: 1\n",
        "bracket-not-closed",
        "{",
        "a {}\n  b {}\n    c : [1]\nd : [1]\n",
    ),
    Case(
        "a {\n    b {\n        c: 1\n    }\n    }\n    d: 1\n}\n",
        "bracket-not-opened",
        "}",
        "a {}\n  b {}\n    c : [1]\n  d : [1]\n",
    ),
    // Texts.
    Case(
        "use \"a\nb: 2\n",
        "text-not-closed",
        "\"a",
        "use <broken>\nb : [2]\n",
    ),
    Case(
        "a { b: \"c }\nd: 2\n",
        "text-not-closed",
        "\"c",
        "a {}\n  b : <broken>\nd : [2]\n",
    ),
    Case(
        "a: f(\"c), d: 1\ne: 2\n",
        "text-not-closed",
        "\"c",
        "a : <broken>\nd : [1]\ne : [2]\n",
    ),
    Case(
        "a { width: 54 \" }\n",
        "text-not-closed",
        "\"",
        "a {}\n  width : [54] <broken>\n",
    ),
    Case(
        "use “a”\nb: 2\n",
        "curly-quotes",
        "“a”",
        "use \"a\"\nb : [2]\n",
    ),
    Case(
        "use ”a\"\nb: 2\n",
        "curly-quotes",
        "”a\"",
        "use \"a\"\nb : [2]\n",
    ),
    // Letters and signs.
    Case(
        "a: 1;\nb: 2\n",
        "character-not-known",
        ";",
        "a : [1] <broken>\nb : [2]\n",
    ),
    Case(
        "a@@b: 1\nb: 2\n",
        "character-not-known",
        "@@",
        "a <broken>\nb : [2]\n",
    ),
    Case(
        "a: 'b'\nb: 2\n",
        "character-not-known",
        "'",
        "a : <broken>\nb : [2]\n",
    ),
    Case(
        "a: 1\u{200b}\nb: 2\n",
        "character-not-known",
        "\u{200b}",
        "a : [1] <broken>\nb : [2]\n",
    ),
    Case(
        "a = 1\nb: 2\n",
        "equals-for-colon",
        " =",
        "a : [1]\nb : [2]\n",
    ),
    Case(
        "a { b: 1, c= 2 }\n",
        "equals-for-colon",
        "=",
        "a {}\n  b : [1]\n  c : [2]\n",
    ),
    // Numbers and sums.
    Case(
        "a: 15,5 in\nb: 2\n",
        "decimal-comma",
        "15,5",
        "a : [31/2 in]\nb : [2]\n",
    ),
    Case(
        "a: (3,5)\nb: 2\n",
        "decimal-comma",
        "3,5",
        "a : (group [7/2])\nb : [2]\n",
    ),
    Case(
        "a: 1/0 in\nb: 2\n",
        "fraction-over-zero",
        "1/0 in",
        "a : <broken>\nb : [2]\n",
    ),
    Case(
        "a: 2 1/0 in\nb: 2\n",
        "fraction-over-zero",
        "2 1/0 in",
        "a : <broken>\nb : [2]\n",
    ),
    Case(
        "a: 1234567890123456\nb: 2\n",
        "number-too-large",
        "1234567890123456",
        "a : <broken>\nb : [2]\n",
    ),
    Case(
        "a: b -4\nb: 2\n",
        "minus-unclear",
        "-",
        "a : <broken>\nb : [2]\n",
    ),
    Case(
        "a: 3–4 in\nb: 2\n",
        "minus-unclear",
        "–",
        "a : <broken>\nb : [2]\n",
    ),
];

#[test]
fn one_mistake_gives_one_report_and_its_neighbours_are_read() {
    for Case(text, code, place, tree) in CASES {
        let parsed = parse(FileId(0), text);
        let found: Vec<(&str, &str)> = parsed
            .diagnostics
            .iter()
            .map(|diagnostic| {
                let span = diagnostic.primary().map_or(0..0, |span| span.range());
                (diagnostic.code.slug, &text[span])
            })
            .collect();
        assert_eq!(found, [(*code, *place)], "in {text:?}");
        assert_eq!(parsed.file.dump(), *tree, "of {text:?}");
    }
}
