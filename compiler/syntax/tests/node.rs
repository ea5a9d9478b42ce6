//! From a byte down to the part of the tree that it lies in.

#![expect(
    clippy::string_slice,
    reason = "a test stops at the first broken promise"
)]

use pelmet_diagnostics::{FileId, Span};
use pelmet_syntax::parse;
use pelmet_syntax::tree::Node;

/// A text with a mark at its byte, and what holds that byte, from the outside in.
struct Case(&'static str, &'static str);

const CASES: &[Case] = &[
    // A name, in its middle and where one goes on writing it.
    Case("face: ke|lp\n", "entry face, value, phrase kelp, term kelp"),
    Case("face: kelp|\n", "entry face, value, phrase kelp, term kelp"),
    Case("|face: kelp\n", "entry face, head, phrase face, term face"),
    Case("fa|ce\n", "entry face, head, phrase face, term face"),
    // A value that is not there yet.
    Case("face:|\n", "entry face, value"),
    Case("face: |\n", "entry face, value"),
    Case("a { face: | }\n", "entry a, block, entry face, value"),
    Case("a {\n  face: |\n}\n", "entry a, block, entry face, value"),
    Case("face: |# why\n", "entry face, value"),
    // Behind a value a phrase goes on, and behind a comma one begins.
    Case("drop: 3 in |\n", "entry drop, value, phrase 3 in"),
    Case("row: wing, |\n", "entry row, value"),
    Case("row: wing,\n    |\n", "entry row, value"),
    Case("row: wing, # left\n    |\n", "entry row, value"),
    Case(
        "row: wing, b|ib\n",
        "entry row, value, phrase bib, term bib",
    ),
    Case("row: wing |, bib\n", "entry row, value, phrase wing"),
    Case(
        "a { width: 3 in, | }\n",
        "entry a, block, entry width, value",
    ),
    // Heads.
    Case("window |\n", "entry window, head, phrase window"),
    Case(
        "window a: |b { }\n",
        "entry window, value, phrase b, term b",
    ),
    Case(
        "window a| { }\n",
        "entry window, head, phrase window a, term a",
    ),
    Case(
        "expect a drop |\n",
        "entry expect, head, phrase expect a drop",
    ),
    // Between the braces, and outside of them.
    Case("a { | }\n", "entry a, block"),
    Case("a {\n  b: 1\n  |\n}\n", "entry a, block"),
    Case("a {\n  b: 1\n\n|\n  c: 2\n}\n", "entry a, block"),
    Case("a {|}\n", "entry a, block"),
    Case("a {}|\n", "entry a"),
    Case("a {} |\n", ""),
    Case("|\na {}\n", ""),
    Case("a: 1\n|\nb: 2\n", ""),
    // A block that is not closed, and one within it.
    Case("a {\n  b: 1\n  |", "entry a, block"),
    Case(
        "a {\n  b {\n    c: |",
        "entry a, block, entry b, block, entry c, value",
    ),
    // Terms within terms.
    Case(
        "to (w|idth, drop)\n",
        "entry to, head, phrase to (width, drop), term (width, drop), term width",
    ),
    Case(
        "a: (b - c|) * 2\n",
        "entry a, value, phrase (b - c) * 2, term (b - c) * 2, term (b - c), term b - c, term c",
    ),
    Case(
        "a: f(b = c|)\n",
        "entry a, value, phrase f(b = c), term f(b = c), argument b = c, phrase c, term c",
    ),
    Case(
        "a: f(b|= c)\n",
        "entry a, value, phrase f(b= c), term f(b= c), argument b= c",
    ),
    Case("a: f(1, |)\n", "entry a, value, phrase f(1, ), term f(1, )"),
    Case(
        "a: 40x|54 in\n",
        "entry a, value, phrase 40x54 in, term 54 in",
    ),
    Case("a: {b}|\n", "entry a"),
    // Comments, and what could not be read.
    Case("a: b # wh|y\n", "entry a, value, phrase b, comment # why"),
    Case("# wh|y\na: b\n", "comment # why"),
    Case("a: b //| c\n", "entry a, value, phrase b // c, term // c"),
    Case("a: b -|1\n", "entry a, value, phrase b -1, term b -1"),
    Case(
        "a: pole(4|6 in\n",
        "entry a, value, phrase pole(46 in, term (46 in",
    ),
];

#[test]
fn a_byte_has_its_path() {
    for Case(marked, path) in CASES {
        let byte = marked.find('|').unwrap_or_default();
        let text = marked.replacen('|', "", 1);
        let found = parse(FileId(0), &text).file;
        let nodes = found.nodes_at(&text, byte);
        let told: Vec<String> = nodes.iter().map(|node| told(node, &text)).collect();
        assert_eq!(told.join(", "), *path, "in {marked:?}");
    }
}

fn told(node: &Node<'_>, text: &str) -> String {
    let written = |span: Span| &text[span.range()];
    match node {
        Node::Comment(comment) => format!("comment {}", written(comment.span)),
        Node::Entry(entry) => {
            let first = entry.head.phrases.first();
            let first = first.and_then(|phrase| phrase.terms.first()?.word());
            format!("entry {}", first.unwrap_or("?"))
        }
        Node::Head(_) => "head".to_owned(),
        Node::Value(_) => "value".to_owned(),
        Node::Block(_) => "block".to_owned(),
        Node::Phrase(phrase) => format!("phrase {}", written(phrase.span)),
        Node::Term(term) => format!("term {}", written(term.span)),
        Node::Argument(argument) => format!("argument {}", written(argument.span)),
    }
}

/// Whatever is asked of whatever text, each part begins where the one before it does or later.
#[test]
fn paths_go_inward_at_every_byte() {
    let sheets = [
        include_str!("sheets/reading-room.pelmet"),
        include_str!("sheets/house-style.pelmet"),
        include_str!("sheets/odd-but-sound.pelmet"),
        include_str!("sheets/untidy.pelmet"),
        "a {\n  b: f(1, (2 -1), {\n  c: \"d\n  } e, , \u{e9} # \u{e9}\n",
    ];
    for text in sheets {
        let file = parse(FileId(0), text).file;
        for byte in 0..text.len().saturating_add(2) {
            let starts: Vec<u32> = file.nodes_at(text, byte).iter().filter_map(start).collect();
            assert!(starts.is_sorted(), "at {byte} of {text:?}");
            assert!(starts.iter().all(|start| *start as usize <= byte));
        }
    }
}

fn start(node: &Node<'_>) -> Option<u32> {
    let span = match node {
        Node::Comment(comment) => comment.span,
        Node::Entry(entry) => entry.span,
        Node::Head(phrases) => phrases.span,
        Node::Value(_) => return None,
        Node::Block(block) => block.span,
        Node::Phrase(phrase) => phrase.span,
        Node::Term(term) => term.span,
        Node::Argument(argument) => argument.span,
    };
    Some(span.start)
}
