//! A sheet set in rows.

use super::faces::{BODY, HEADING, NUMBER, PANEL, TITLE};
use super::labels;
use super::row::{PrintedRow, kept, kept_within, spaced};
use super::table;
use crate::content::SheetBlock;
use crate::drawing::{Drawing, Lettering, LineKind, at, lines, rectangle};

/// Where the text of an entry, of a step and of a part of a step begins.
const ENTRY: f64 = 4.5;
const STEP: f64 = 17.0;
const PART: f64 = 21.5;
/// The side of a box to tick, and where the number of a step begins.
const BOX: f64 = 3.7;
const STEP_NUMBER: f64 = 6.5;

/// The rows of a sheet in a text area of this width.
pub(super) fn rows(blocks: Vec<SheetBlock>, width: f64) -> Vec<PrintedRow> {
    let mut rows = Vec::new();
    let mut blocks = blocks.into_iter().peekable();
    while let Some(block) = blocks.next() {
        // What leads up to a table, a list or a drawing stands on one page with its beginning.
        while blocks
            .next_if(|next| matches!(next, SheetBlock::Gap))
            .is_some()
        {}
        let leads = match (&block, blocks.peek()) {
            (SheetBlock::Panel(..) | SheetBlock::Paragraph(_), Some(next)) => !is_text(next),
            (SheetBlock::Numbered(..), Some(SheetBlock::Part(_))) => true,
            _ => false,
        };
        let mut set = block_rows(block, width);
        if let Some(last) = set.last_mut() {
            last.kept = last.kept || leads;
        }
        rows.extend(set);
    }
    rows
}

/// Whether a block is one of text by itself.
fn is_text(block: &SheetBlock) -> bool {
    matches!(
        block,
        SheetBlock::Title(_)
            | SheetBlock::Heading(_)
            | SheetBlock::Panel(..)
            | SheetBlock::Paragraph(_)
    )
}

fn block_rows(block: SheetBlock, width: f64) -> Vec<PrintedRow> {
    match block {
        SheetBlock::Title(title) => headed(&title, TITLE, width),
        SheetBlock::Heading(heading) => headed(&heading, HEADING, width),
        SheetBlock::Panel(name, words) => panel(&name, &words, width),
        SheetBlock::Paragraph(text) => spaced(2.4, unbroken_ends(text_rows(&text, 0.0, width))),
        SheetBlock::Item(text) => entry(&text, 0.0, ENTRY, width),
        SheetBlock::Part(text) => entry(&text, STEP, PART, width),
        SheetBlock::Numbered(number, text) => step(number, &text, width),
        SheetBlock::Table(table) => spaced(2.4, table::rows(&table, width)),
        SheetBlock::Labels(those) => spaced(4.0, labels::rows(&those, width)),
        SheetBlock::Drawing(drawing) => vec![drawn(drawing)],
        SheetBlock::Gap => Vec::new(),
    }
}

/// The name of a panel, and below it what it is.
fn panel(name: &str, words: &str, width: f64) -> Vec<PrintedRow> {
    let name = lines(name, PANEL, width).into_iter();
    let mut rows = kept(
        name.map(|line| PrintedRow::line(0.0, PANEL, line))
            .collect(),
    );
    rows.extend(unbroken_ends(text_rows(words, 0.0, width)));
    spaced(4.0, rows)
}

/// The lines of a text between a left end and the end of the text area.
fn text_rows(text: &str, left: f64, width: f64) -> Vec<PrintedRow> {
    let lines = lines(text, BODY, width - left).into_iter();
    lines
        .map(|line| PrintedRow::line(left, BODY, line))
        .collect()
}

/// A title or heading, underlined; it stands on one page with what comes next.
fn headed(text: &str, lettering: Lettering, width: f64) -> Vec<PrintedRow> {
    let mut rows: Vec<PrintedRow> = lines(text, lettering, width)
        .into_iter()
        .map(|line| PrintedRow::line(0.0, lettering, line))
        .collect();
    if let Some(last) = rows.last_mut() {
        last.height += 0.6;
        last.rule(LineKind::Underline, (0.0, width), last.height);
        last.height += 0.8;
    }
    spaced(lettering.height * 1.6, kept(rows))
}

fn entry(text: &str, mark: f64, left: f64, width: f64) -> Vec<PrintedRow> {
    let mut rows = kept_within(text_rows(text, left, width));
    if let Some(first) = rows.first_mut() {
        first.begin_with(at(mark + 0.6, BODY.height), BODY, "•");
    }
    spaced(1.0, rows)
}

/// A step with a box to tick and its number.
fn step(number: u32, text: &str, width: f64) -> Vec<PrintedRow> {
    let mut rows = kept_within(text_rows(text, STEP, width));
    if let Some(first) = rows.first_mut() {
        let foot = BODY.height;
        let corners = rectangle(at(0.2, foot - BOX + 0.4), at(0.2 + BOX, foot + 0.4));
        first.draw(LineKind::Box, corners, true);
        let number = format!("{number}.");
        first.begin_with(at(STEP_NUMBER, foot), NUMBER, number);
    }
    spaced(2.4, rows)
}

fn drawn(drawing: Drawing) -> PrintedRow {
    PrintedRow {
        space: 3.0,
        height: drawing.height,
        width: drawing.width,
        elements: drawing.elements,
        ..PrintedRow::default()
    }
}

/// No first or last line stands alone on a page.
fn unbroken_ends(mut rows: Vec<PrintedRow>) -> Vec<PrintedRow> {
    let last_but_one = rows.len().saturating_sub(2);
    let count = rows.len();
    for (index, row) in rows.iter_mut().enumerate() {
        row.kept = count > 1 && (index == 0 || index == last_but_one);
    }
    rows
}
