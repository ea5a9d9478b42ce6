//! Values as people write them, and what they are read as.

#![expect(
    clippy::arithmetic_side_effects,
    reason = "a test stops at the first broken promise"
)]

use pelmet_diagnostics::{FileId, Span};
use pelmet_measure::Unit;
use pelmet_syntax::parse_value;

/// A value and its dump, in which a number stands in brackets with the symbol of its unit.
type Case = (&'static str, &'static str);

const NUMBERS: &[Case] = &[
    ("15 1/2 in", "[31/2 in]"),
    ("15.5 in", "[31/2 in]"),
    ("15-1/2\"", "[31/2 in]"),
    ("15-1/2 in", "[31/2 in]"),
    ("15½ in", "[31/2 in]"),
    ("15 ½ in", "[31/2 in]"),
    ("15-½ in", "[31/2 in]"),
    ("15 1⁄2 in", "[31/2 in]"),
    ("15\u{a0}1/2\u{202f}in", "[31/2 in]"),
    ("½ in", "[1/2 in]"),
    ("⅞\"", "[7/8 in]"),
    ("⅓ yd", "[1/3 yd]"),
    ("5' 6\"", "[66 in]"),
    ("5'6\"", "[66 in]"),
    ("5' 6 1/2\"", "[133/2 in]"),
    ("5′ 6½″", "[133/2 in]"),
    ("5’ 6”", "[66 in]"),
    ("5 ft 6 in", "[66 in]"),
    ("3 yd 8 1/2 in", "[233/2 in]"),
    ("5.5 ft", "[11/2 ft]"),
    ("5'", "[5 ft]"),
    ("38 cm", "[38 cm]"),
    ("380mm", "[380 mm]"),
    ("2/5", "[2/5]"),
    ("4/2", "[2]"),
    ("14.50", "[29/2]"),
    (".5 in", "[1/2 in]"),
    ("0.125", "[1/8]"),
    ("54\"", "[54 in]"),
    ("54″", "[54 in]"),
    ("54”", "[54 in]"),
    ("200 %", "[200 %]"),
    ("200%", "[200 %]"),
    ("45°", "[45 deg]"),
    ("45 degrees", "[45 deg]"),
    ("210 g/m2", "[210 g/m2]"),
    ("210 g/m²", "[210 g/m2]"),
    ("210 gsm", "[210 g/m2]"),
    ("6 oz/yd2", "[6 oz/yd2]"),
    ("6 oz", "[6 oz]"),
    ("1 1/4 inches", "[5/4 in]"),
    ("3 yards", "[3 yd]"),
    ("1 m", "[1 m]"),
    ("007", "[7]"),
    ("999999999999999 in", "[999999999999999 in]"),
];

const WORDS: &[Case] = &[
    ("over rod, tail 5 in", "over rod, tail [5 in]"),
    ("5 in at top", "[5 in] at top"),
    ("fill 20 in to 30 in", "fill [20 in] to [30 in]"),
    ("32.00 per yd", "[32] per yd"),
    ("3 inchs", "[3] inchs"),
    ("3 in-house", "[3] in-house"),
    ("3 m2", "[3] m2"),
    ("2 times", "[2] times"),
    ("drop-4", "drop-4"),
    ("größe-2, étoffe_3", "größe-2, étoffe_3"),
    ("e\u{301}toffe", "e\u{301}toffe"),
    ("пошив", "пошив"),
    ("\"a # b { c\" of d", "\"a # b { c\" of d"),
    ("\"\"", "\"\""),
    ("54\" \"54\"", "[54 in] \"54\""),
];

const SIZES: &[Case] = &[
    ("40 in x 54 in", "[40 in] × [54 in]"),
    ("40 x 54 in", "[40] × [54 in]"),
    ("40x54 in", "[40] × [54 in]"),
    ("40inx54in", "[40] inx54in"),
    ("40\"x54\"", "[40 in] × [54 in]"),
    ("40 in × 54 in", "[40 in] × [54 in]"),
    ("40×54", "[40] × [54]"),
    ("40 X 54", "[40] × [54]"),
    ("1 1/2 x 3", "[3/2] × [3]"),
    ("width x drop", "width × drop"),
    ("point x", "point x"),
    ("(x, y)", "(point x y)"),
    ("bib x2", "bib x2"),
];

const SUMS: &[Case] = &[
    ("drop - 4 in", "(- drop [4 in])"),
    ("a - b - c", "(- (- a b) c)"),
    ("a + b * c / d - e", "(- (+ a (/ (* b c) d)) e)"),
    ("(a + b) * 2", "(* (group (+ a b)) [2])"),
    ("width * 2/5", "(* width [2/5])"),
    ("width / 2", "(/ width [2])"),
    ("width/2", "(/ width [2])"),
    ("2*width+1", "(+ (* [2] width) [1])"),
    ("drop − 4 in", "(- drop [4 in])"),
    ("-3 in", "(minus [3 in])"),
    ("- 3 in", "(minus [3 in])"),
    ("(-1, -a)", "(point (minus [1]) (minus a))"),
    ("a, -b", "a, (minus b)"),
    ("a * -2", "(* a (minus [2]))"),
    ("bulge (-1/2 in)", "bulge (group (minus [1/2 in]))"),
    ("(0, drop)", "(point [0] drop)"),
    ("(a, b, c,)", "(point a b c)"),
    ("(1 in,2 in)", "(point [1 in] [2 in])"),
    ("((a))", "(group (group a))"),
];

const CALLS: &[Case] = &[
    (
        "brass-pole(72 in), top at 86 in",
        "brass-pole([72 in]), top at [86 in]",
    ),
    ("tide()", "tide()"),
    ("from (a, b)", "from (point a b)"),
    ("f(a, b = 3 in, c: 4 in)", "f(a, b = [3 in], c = [4 in])"),
    ("f(a to b, g(x) wide,)", "f(a to b, g(x) wide)"),
    ("f(a =)", "f(a =)"),
    ("f(\n    a,  # first\n    b\n)", "f(a, b)"),
    ("f(a\n    + b)", "f((+ a b))"),
];

#[test]
fn values_are_read_as_people_mean_them() {
    for (text, dump) in [NUMBERS, WORDS, SIZES, SUMS, CALLS].into_iter().flatten() {
        assert_eq!(read(text), *dump, "of {text:?}");
    }
}

#[test]
fn every_unit_is_read_in_every_spelling() {
    let marks = ["″", "”", "\"", "′", "’", "'", "%", "°"];
    let words = Unit::WORDS
        .iter()
        .copied()
        .chain(Unit::ALL.iter().map(|unit| unit.symbol()));
    let words = words.map(|word| format!("3 {word}"));
    let marks = marks.iter().map(|mark| format!("3{mark}"));
    for text in words.chain(marks) {
        let unit = text.trim_start_matches(['3', ' ']);
        let symbol = Unit::from_word(unit).unwrap().symbol();
        assert_eq!(read(&text), format!("[3 {symbol}]"), "of {text:?}");
    }
}

/// The dump of a value that stands somewhere in a file.
fn read(value: &str) -> String {
    let (before, after) = ("name,größe\nwing,", ",7\n");
    let text = format!("{before}{value}{after}");
    let within = Span::new(FileId(0), before.len(), before.len() + value.len());
    let (phrases, diagnostics) = parse_value(FileId(0), &text, within);
    assert!(diagnostics.is_empty(), "{diagnostics:?} in {value:?}");
    phrases
        .map(|phrases| phrases.to_string())
        .unwrap_or_default()
}
