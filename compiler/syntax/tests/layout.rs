//! The formatter, rule by rule.

use pelmet_diagnostics::FileId;
use pelmet_syntax::{FormatRefusal, format};

/// A text and what becomes of it.
const CASES: &[(&str, &str)] = &[
    // Nothing, and lines without an end.
    ("", ""),
    ("\n \n\t\n", ""),
    ("a", "a\n"),
    ("\u{feff}a: b\r\nc: d\r", "a: b\nc: d\n"),
    ("# a  \r\n#b", "# a\n#b\n"),
    // One entry a line, one empty line at the most.
    ("a: b, c: d\n", "a: b\nc: d\n"),
    ("\n\na\n\n\n\nb\nc\n\n\n", "a\n\nb\nc\n"),
    ("a {\n\n\nb\n\n\nc\n\n}\n", "a {\n    b\n\n    c\n}\n"),
    ("a {\n\n# b\n\n}\n", "a {\n    # b\n}\n"),
    ("a\n# b\n\nc\n", "a\n# b\n\nc\n"),
    ("a {b {c}}\n", "a {\n    b { c }\n}\n"),
    ("a:b,\n", "a: b\n"),
    // Blocks on one line.
    ("a{b:c,d:e}\n", "a { b: c, d: e }\n"),
    ("a { b: c\n}\n", "a {\n    b: c\n}\n"),
    ("a {\n}\n", "a {}\n"),
    ("a { }\n", "a {}\n"),
    ("a: b { c: d }\n", "a: b { c: d }\n"),
    ("a { b c, d: e }\n", "a { b c, d: e }\n"),
    (
        "a { b: c, d { e: f } }\n",
        "a {\n    b: c\n    d { e: f }\n}\n",
    ),
    ("a {}b {}\n", "a {}\nb {}\n"),
    ("a\n\n{ b: c }\n", "a { b: c }\n"),
    // Signs and the blanks around them.
    ("a  b :c  d ,e\n", "a b: c d, e\n"),
    ("a:(b+c)*-2 - d/e\n", "a: (b + c) * -2 - d / e\n"),
    ("a:( 1 , 2 )\n", "a: (1, 2)\n"),
    ("a:f( b:1 , c = 2 , )\n", "a: f(b = 1, c = 2)\n"),
    ("a: - 1\n", "a: -1\n"),
    ("a: b − c\n", "a: b - c\n"),
    ("expect a=1 in\n", "expect a = 1 in\n"),
    ("a:40x54, 40\"×54\"\n", "a: 40 x 54, 40 in x 54 in\n"),
    ("a:\"b  #c\"\"d\"\n", "a: \"b  #c\" \"d\"\n"),
    // Numbers.
    ("a: 15-1/2\"\n", "a: 15 1/2 in\n"),
    ("a: 15½ inches\n", "a: 15 1/2 in\n"),
    ("a: ½in\n", "a: 1/2 in\n"),
    ("a: 15 1⁄2″\n", "a: 15 1/2 in\n"),
    ("a: 3⁄4\n", "a: 3/4\n"),
    ("a: 380mm\n", "a: 380 mm\n"),
    ("a: 14.50, .5, 007, 4/2\n", "a: 14.50, 0.5, 007, 4/2\n"),
    ("a: 3 yards 8 inches\n", "a: 3 yd 8 in\n"),
    ("a: 5'6½\"\n", "a: 5 ft 6 1/2 in\n"),
    (
        "a: 210gsm, 6 oz/yd², 20%, 45°\n",
        "a: 210 g/m2, 6 oz/yd2, 20 %, 45 deg\n",
    ),
    // Lines broken by their writer.
    ("a: b,\nc d,\n\ne\n", "a: b,\n    c d,\n    e\n"),
    ("a(\nb,\nc\n) {}\n", "a(\n    b,\n    c\n) {}\n"),
    ("a: f(b\n, (c,\nd))\n", "a: f(b,\n    (c,\n        d))\n"),
    ("a: (b\n+ c)\n", "a: (b\n    + c)\n"),
    // Comments.
    ("a#b\n", "a  #b\n"),
    ("a #b\nccc #d\n\ne #f\n", "a    #b\nccc  #d\n\ne  #f\n"),
    ("a { #b\n#c\n} #d\n", "a {  #b\n    #c\n}  #d\n"),
    ("a #b\n{ c } #d\n", "a      #b\n{ c }  #d\n"),
    ("a: b, #c\n#d\ne\n", "a: b,  #c\n    #d\n    e\n"),
    ("a: (15 #b\n1/2 #c\nin)\n", "a: (15 1/2 in  #b\n#c\n)\n"),
    ("#a\n\n\n#b\nc\n", "#a\n\n#b\nc\n"),
];

#[test]
fn sheets_are_laid_out_in_the_one_way() {
    for (text, laid_out) in CASES {
        assert_eq!(
            format(FileId(0), text).as_deref(),
            Ok(*laid_out),
            "of {text:?}"
        );
        assert_eq!(
            format(FileId(0), laid_out).as_deref(),
            Ok(*laid_out),
            "twice, of {text:?}"
        );
    }
}

#[test]
fn a_block_stays_on_one_line_while_it_fits() {
    let block = |width: usize| format!("a {{ b: {} }}\n", "c".repeat(width - "a { b:  }".len()));
    assert_eq!(format(FileId(0), &block(88)), Ok(block(88)));
    let broken = block(89).replace("{ ", "{\n    ").replace(" }", "\n}");
    assert_eq!(format(FileId(0), &block(89)), Ok(broken));
}

#[test]
fn a_sheet_with_a_mistake_is_left_alone() {
    for text in ["a = 1\n", "a: 1,5\n", "a {\n", "/\n", "use “a”\n"] {
        let refusal = format(FileId(0), text);
        assert!(
            matches!(refusal, Err(FormatRefusal::Diagnostics(diagnostics)) if diagnostics.len() == 1),
            "{text:?}"
        );
    }
}
