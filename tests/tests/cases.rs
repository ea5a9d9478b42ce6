//! The literate cases of `cases/`: prose, a design, and what it gives.
//!
//! Behind a block marked `pelmet`, a block marked `reports` holds its reports in plain lines, and one
//! marked `sheet NAME` one of its sheets. With the variable `PELMET_UPDATE` set, such blocks are
//! written anew.
#![expect(
    clippy::unwrap_used,
    reason = "a test stops at the first broken promise"
)]

use pelmet_diagnostics::render;
use pelmet_driver::Built;
use pelmet_sheets::{SHEETS, SheetKind, TextOptions, sheet_title, text};
use pelmet_tests::{Memory, blocks, files_below, is_update, read, write};

/// What a block behind a design should hold; nothing if it is a block for readers only.
fn given(info: &str, built: Option<&Built>) -> Option<String> {
    let (kind, name) = info.split_once(' ').unwrap_or((info, ""));
    match kind {
        "reports" => {
            let built = built.unwrap();
            Some(render::plain(&built.diagnostics, &built.sources))
        }
        "sheet" => {
            let of_name = |kind: &SheetKind| sheet_title(*kind).to_lowercase() == name;
            let kind = SHEETS.iter().copied().find(of_name).unwrap();
            let packet = built.unwrap().packet.as_ref();
            let sheet = |packet| text(packet, &[kind], TextOptions::default());
            Some(packet.map_or_else(|| "there is no packet\n".to_owned(), sheet))
        }
        _ => None,
    }
}

/// The text of a case with every block as it should be.
fn with_answers(text: &str) -> String {
    let mut answered = String::new();
    let mut rest = text;
    let mut built = None;
    for block in blocks(text) {
        if block.is("pelmet") {
            built = Some(Memory::of_parts(&block.text).build());
        }
        let opening = format!("```{}\n", block.info);
        let (before, after) = rest.split_once(&opening).unwrap();
        let after = after.strip_prefix(&block.text).unwrap();
        answered.push_str(before);
        answered.push_str(&opening);
        answered.push_str(&given(block.info, built.as_ref()).unwrap_or(block.text));
        rest = after;
    }
    answered + rest
}

#[test]
fn every_case_gives_what_it_says() {
    let cases = files_below("tests/cases", ".md");
    assert!(!cases.is_empty());
    let mut wrong = Vec::new();
    for case in cases {
        let written = read(&case);
        let answered = with_answers(&written);
        if written != answered && is_update() {
            write(&case, &answered);
        } else if written != answered {
            wrong.push(format!(
                "{case}, in which this is new:\n{}",
                new_lines(&written, &answered)
            ));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

fn new_lines(written: &str, answered: &str) -> String {
    let known: Vec<&str> = written.lines().collect();
    let new = answered.lines().filter(|line| !known.contains(line));
    new.map(|line| format!("    {line}\n")).collect()
}

#[test]
fn every_design_of_a_case_is_answered_by_a_block() {
    for case in files_below("tests/cases", ".md") {
        let text = read(&case);
        let blocks = blocks(&text);
        for (block, next) in blocks
            .iter()
            .zip(blocks.iter().skip(1).map(Some).chain([None]))
        {
            let answered = next.is_some_and(|next| next.is("reports") || next.is("sheet"));
            assert!(!block.is("pelmet") || answered, "{case}:{}", block.line);
        }
    }
}
