//! A table set in rows: columns as wide as what stands in them, or one entry after the other where
//! they find no room.

use std::iter::zip;
use std::rc::Rc;

use super::beside::beside;
use super::faces::BODY;
use super::row::{PrintedRow, kept, kept_within};
use crate::content::TextTable;
use crate::drawing::{Lettering, LineKind, lines, longest_word};

/// Between two columns.
const GAP: f64 = 4.5;
/// A word longer than this may be broken for the sake of the other columns.
const LONGEST_UNBROKEN: f64 = 45.0;
/// Numbers are as large as they can be: the next size is for tables that find no room in this one.
const SIZES: [f64; 3] = [4.0, 3.4, 2.8];
/// Above the first line of a row and below the last one.
const PAD: f64 = 0.9;

/// The rows of a table in a text area of this width.
pub(super) fn rows(table: &TextTable, width: f64) -> Vec<PrintedRow> {
    let fitting = SIZES
        .iter()
        .find_map(|height| PrintedColumns::fit(table, *height, width));
    match fitting {
        Some(columns) => columns.rows(table, width),
        None => one_after_the_other(table, width),
    }
}

/// The columns of a table on the paper.
struct PrintedColumns {
    cells: Lettering,
    heads: Lettering,
    widths: Vec<f64>,
}

impl PrintedColumns {
    /// The columns in cells of this height; `None` where they find no room.
    fn fit(table: &TextTable, height: f64, room: f64) -> Option<Self> {
        let (cells, heads) = (Lettering::plain(height), Lettering::bold(height * 0.86));
        let gaps: f64 = table.headings().skip(1).map(|_| GAP).sum();
        let room = room - gaps;
        let size = |measure: fn(&str, Lettering) -> f64| sizes(table, (cells, heads), measure);
        let wanted = size(|text, lettering| lettering.width(text));
        let least = size(|text, lettering| longest_word(text, lettering).min(LONGEST_UNBROKEN));
        let widest = widest(&wanted, &least, room)?;
        let widths = zip(wanted, least).map(|(wanted, least)| wanted.min(least.max(widest)));
        // A hair more than a text needs, so that no rounding breaks it.
        let widths = widths.map(|width| width + 0.01).collect();
        Some(Self {
            cells,
            heads,
            widths,
        })
    }

    fn rows(&self, table: &TextTable, area: f64) -> Vec<PrintedRow> {
        let numbers: Vec<bool> = table.headings().map(|(_, numbers)| numbers).collect();
        let head = self.head(table, &numbers);
        let body = self.body(table, &numbers);
        if let Some(rows) = beside(&head, &body, (self.width(), area)) {
            return rows;
        }
        let repeated = Rc::new(head.clone());
        let under_head = |row| PrintedRow {
            head: Some(Rc::clone(&repeated)),
            ..row
        };
        head.into_iter()
            .chain(body.into_iter().map(under_head))
            .collect()
    }

    /// The headings, underlined.
    fn head(&self, table: &TextTable, numbers: &[bool]) -> Vec<PrintedRow> {
        let headings = table.headings().map(|(heading, _)| heading.to_owned());
        let headings: Vec<String> = headings.collect();
        let mut head = kept(self.row(&headings, numbers, self.heads));
        if let Some(last) = head.last_mut() {
            last.rule(LineKind::Underline, (0.0, self.width()), last.height);
            last.height += 0.4;
        }
        head
    }

    /// The rows below the headings, each with a line under it. None is parted over two pages, nor from
    /// one after it that begins with an empty cell, since that goes on with it.
    fn body(&self, table: &TextTable, numbers: &[bool]) -> Vec<PrintedRow> {
        let goes_on = |cells: &Vec<String>| cells.first().is_some_and(String::is_empty);
        let nexts = table.rows().iter().skip(1).map(goes_on);
        let nexts = nexts.chain(std::iter::once(false));
        let row = |(cells, goes_on): (&Vec<String>, bool)| {
            let mut row = kept_within(self.row(cells, numbers, self.cells));
            if let Some(last) = row.last_mut() {
                last.rule(LineKind::Rule, (0.0, self.width()), last.height);
                last.kept = goes_on;
            }
            row
        };
        zip(table.rows(), nexts).flat_map(row).collect()
    }

    /// The width of the table, to the end of its last column.
    fn width(&self) -> f64 {
        let width: f64 = self.widths.iter().map(|width| width + GAP).sum();
        (width - GAP).max(0.0)
    }

    /// The lines one row of the table takes: as many as its tallest cell.
    fn row(&self, cells: &[String], numbers: &[bool], lettering: Lettering) -> Vec<PrintedRow> {
        let lines: Vec<Vec<String>> = zip(cells, &self.widths)
            .map(|(cell, width)| lines(cell, lettering, *width))
            .collect();
        let tallest = lines.iter().map(Vec::len).max().unwrap_or(0);
        let mut rows: Vec<PrintedRow> = (0..tallest)
            .map(|at| self.line(at, &lines, numbers, lettering))
            .collect();
        if let Some(first) = rows.first_mut() {
            *first = std::mem::take(first).lowered(PAD);
        }
        if let Some(last) = rows.last_mut() {
            last.height += PAD;
        }
        rows
    }

    /// One line of every cell that has so many; counts stand flush right.
    fn line(
        &self,
        index: usize,
        cells: &[Vec<String>],
        numbers: &[bool],
        lettering: Lettering,
    ) -> PrintedRow {
        let mut row = PrintedRow::line(0.0, lettering, "");
        row.elements.clear();
        let mut left = 0.0;
        for (cell, (width, numbers)) in zip(cells, zip(&self.widths, numbers)) {
            if let Some(text) = cell.get(index) {
                let set_in = if *numbers {
                    width - lettering.width(text)
                } else {
                    0.0
                };
                row.write(left + set_in, lettering, text.as_str());
            }
            left += width + GAP;
        }
        row
    }
}

/// The width to which the widest columns are cut down for all of them to find room, none below what
/// it needs at least; `None` where they do not.
fn widest(wanted: &[f64], least: &[f64], room: f64) -> Option<f64> {
    /// Halves the range in which the width lies so often that a hair remains.
    const HALVINGS: usize = 40;
    let taken = |widest: f64| -> f64 {
        let columns = zip(wanted, least);
        columns
            .map(|(wanted, least)| wanted.min(least.max(widest)))
            .sum()
    };
    // Cutting all columns down by one part would starve the narrow ones, which are numbers; so only what
    // is wider than one common width gives way. The room taken grows with that width, which is therefore
    // found by halving.
    let (mut fits, mut too_wide) = (0.0, room);
    if taken(fits) > room {
        return None;
    }
    if taken(too_wide) <= room {
        return Some(room);
    }
    for _ in 0..HALVINGS {
        let middle = (fits + too_wide) / 2.0;
        if taken(middle) > room {
            too_wide = middle;
        } else {
            fits = middle;
        }
    }
    Some(fits)
}

/// The largest of each column by a measure of its cells and heading.
fn sizes(
    table: &TextTable,
    (cells, heads): (Lettering, Lettering),
    measure: fn(&str, Lettering) -> f64,
) -> Vec<f64> {
    let mut sizes: Vec<f64> = table
        .headings()
        .map(|(heading, _)| measure(heading, heads))
        .collect();
    for row in table.rows() {
        for (size, cell) in zip(&mut sizes, row) {
            *size = size.max(measure(cell, cells));
        }
    }
    sizes
}

/// Each row as a paragraph: its first cells, and below them every other one with what it stands under.
fn one_after_the_other(table: &TextTable, width: f64) -> Vec<PrintedRow> {
    const SET_IN: f64 = 4.5;
    let entry = |row: &Vec<String>| {
        let (first, others) = table.in_words(row);
        let first = lines(&first, BODY, width)
            .into_iter()
            .map(|line| PrintedRow::line(0.0, BODY, line));
        let others = lines(&others, BODY, width - SET_IN).into_iter();
        let others = others.map(|line| PrintedRow::line(SET_IN, BODY, line));
        kept_within(first.chain(others).collect())
    };
    table.rows().iter().flat_map(entry).collect()
}
