//! What readers ask of the tree.

#![expect(
    clippy::indexing_slicing,
    clippy::string_slice,
    reason = "a test stops at the first broken promise"
)]

use pelmet_diagnostics::FileId;
use pelmet_syntax::parse;
use pelmet_syntax::tree::{Entry, Separator, TermKind};

#[test]
fn a_key_is_a_head_of_words_alone() {
    let cases = [
        ("turning opening: 5 in at top\n", Some("turning opening")),
        ("up to heading\n", Some("up to heading")),
        ("panel bib like wing { }\n", Some("panel bib like wing")),
        ("knife 2 in toward centre\n", None),
        ("pleats fan, mirrored { }\n", None),
        ("f(a): 1\n", None),
    ];
    for (text, key) in cases {
        assert_eq!(first(text).key().as_deref(), key, "of {text:?}");
    }
}

#[test]
fn words_lead_up_to_the_first_term_that_is_none() {
    let cases: [(&str, &[&str], bool); 4] = [
        ("up to heading\n", &["up", "to", "heading"], true),
        ("knife 2 in toward centre\n", &["knife"], false),
        ("(1, 2) on\n", &[], false),
        ("curve to (1, 2)\n", &["curve", "to"], false),
    ];
    for (text, leading, all) in cases {
        let phrase = &first(text).head.phrases[0];
        assert_eq!(phrase.leading_words(), leading, "of {text:?}");
        assert_eq!(phrase.words().is_some(), all, "of {text:?}");
    }
}

#[test]
fn what_is_broken_is_known_however_deep() {
    let cases = [
        ("a: b\n", false),
        ("a: b -1\n", true),
        ("a: (b -1)\n", true),
        ("a: (1, (b -1) * 2)\n", true),
        ("a: f(1, c = b -1)\n", true),
        ("a: -(b -1)\n", true),
        ("a -1: b\n", true),
        ("a: b, c -1\n", true),
        ("a { b: c -1 }\n", false),
    ];
    for (text, broken) in cases {
        assert_eq!(first(text).is_broken(), broken, "of {text:?}");
    }
}

#[test]
fn what_is_broken_keeps_its_names() {
    let cases: [(&str, &[&str]); 7] = [
        ("a: (b * 6\n", &["b"]),
        ("a: / 3 in + b-c, d\n", &["b-c", "d"]),
        ("a: / \"b\" # c\n", &[]),
        ("a: b - c -1\n", &["b", "c"]),
        ("a: (b * c -1)\n", &["b", "c"]),
        ("a: f(d = b) -1\n", &["f", "b"]),
        ("a: f(b: c: d)\n", &["f", "d"]),
    ];
    for (text, names) in cases {
        let value = first(text)
            .value
            .map(|value| value.phrases[0].terms[0].clone());
        let mut term = value.clone();
        while let Some(TermKind::Group(inner)) = term.as_ref().map(|term| term.kind.clone()) {
            term = Some(*inner);
        }
        let Some(TermKind::Broken(found)) = term.map(|term| term.kind) else {
            panic!("{value:?} is not broken, in {text:?}");
        };
        let written: Vec<&str> = found.iter().map(|name| &text[name.span.range()]).collect();
        assert_eq!(written, names, "of {text:?}");
    }
}

#[test]
fn only_entries_that_compare_keep_their_equals_sign() {
    for text in ["expect a = 1\n", "measure a = 1\n"] {
        assert_eq!(
            first(text).separator,
            Some(Separator::Equals),
            "of {text:?}"
        );
    }
    for text in ["a: 1\n", "a = 1\n", "expectation = 1\n"] {
        assert_eq!(first(text).separator, Some(Separator::Colon), "of {text:?}");
    }
    assert_eq!(first("a 1\n").separator, None);
}

#[test]
fn signs_have_their_places() {
    let text = "a: bé  -  c\n";
    let value = first(text).value;
    let kind = value.map(|value| value.phrases[0].terms[0].kind.clone());
    let Some(TermKind::Binary {
        operator_span,
        left,
        right,
        ..
    }) = kind
    else {
        panic!("no sum in {text:?}");
    };
    let parts = [left.span, operator_span, right.span].map(|span| &text[span.range()]);
    assert_eq!(parts, ["bé", "-", "c"]);
}

fn first(text: &str) -> Entry {
    parse(FileId(0), text).file.entries[0].clone()
}
