//! A table in aligned columns, or one entry after the other where the page is too narrow.

use std::iter::zip;

use super::wrap::{columns, longest_word, wrapped};
use crate::content::TextTable;

/// What stands between two columns.
const GAP: &str = "  ";
/// A word longer than this may be broken for the sake of the other columns.
const LONGEST_UNBROKEN: usize = 24;

/// The lines of a table, none wider than the page.
pub(super) fn lines(table: &TextTable, page: usize) -> Vec<String> {
    match widths(table, page) {
        Some(widths) => aligned(table, &widths),
        None => one_after_the_other(table, page),
    }
}

/// The width of each column, shrunk to fit the page; `None` where they cannot.
///
/// The widest gives way first, one sign at a time, so that columns of numbers, which are narrow, keep
/// their lines whole as long as a column of words can be broken.
fn widths(table: &TextTable, page: usize) -> Option<Vec<usize>> {
    let mut widths = column_sizes(table, columns);
    let least = column_sizes(table, |cell| longest_word(cell).min(LONGEST_UNBROKEN));
    let gaps = GAP.len().saturating_mul(widths.len().saturating_sub(1));
    let room = page.saturating_sub(gaps);
    while widths.iter().sum::<usize>() > room {
        let (width, _) = zip(&mut widths, &least)
            .filter(|(width, least)| **width > **least)
            .max_by_key(|(width, _)| **width)?;
        *width = width.saturating_sub(1);
    }
    Some(widths)
}

/// The largest of each column by a measure of its cells and heading.
fn column_sizes(table: &TextTable, size: impl Fn(&str) -> usize) -> Vec<usize> {
    let cells_at = |at: usize| table.rows().iter().filter_map(move |row| row.get(at));
    let headings = table.headings().enumerate();
    headings
        .map(|(at, (heading, _))| {
            let cells = cells_at(at).map(|cell| size(cell));
            cells.fold(size(heading), usize::max)
        })
        .collect()
}

fn aligned(table: &TextTable, widths: &[usize]) -> Vec<String> {
    let (headings, numbers): (Vec<&str>, Vec<bool>) = table.headings().unzip();
    let rules: Vec<String> = widths.iter().map(|width| "-".repeat(*width)).collect();
    let mut lines = row_lines(&headings, &numbers, widths);
    lines.push(rules.join(GAP));
    let rows = table.rows().iter();
    lines.extend(rows.flat_map(|row| row_lines(row, &numbers, widths)));
    lines
}

/// The lines one row takes: as many as its tallest cell.
fn row_lines(cells: &[impl AsRef<str>], numbers: &[bool], widths: &[usize]) -> Vec<String> {
    let cells: Vec<Vec<String>> = zip(cells, widths)
        .map(|(cell, width)| wrapped(cell.as_ref(), *width))
        .collect();
    let tallest = cells.iter().map(Vec::len).max().unwrap_or(0);
    let line = |at: usize| {
        let padded = zip(&cells, zip(numbers, widths)).map(|(cell, (numbers, width))| {
            padded(cell.get(at).map_or("", String::as_str), *width, *numbers)
        });
        let line = padded.collect::<Vec<String>>().join(GAP);
        line.trim_end().to_owned()
    };
    (0..tallest).map(line).collect()
}

/// Each row as a paragraph: its first cell, then every other one with the heading it stands
/// under.
fn one_after_the_other(table: &TextTable, page: usize) -> Vec<String> {
    let set_in = page.saturating_sub(GAP.len());
    let told = table.rows().iter().map(|row| table.in_words(row));
    told.flat_map(|(first, others)| {
        let others = wrapped(&others, set_in)
            .into_iter()
            .map(|line| format!("{GAP}{line}"));
        wrapped(&first, page).into_iter().chain(others)
    })
    .collect()
}

fn padded(cell: &str, width: usize, right: bool) -> String {
    let blanks = " ".repeat(width.saturating_sub(columns(cell)));
    if right {
        format!("{blanks}{cell}")
    } else {
        format!("{cell}{blanks}")
    }
}

#[cfg(test)]
mod tests {
    use super::super::wrap::columns;
    use super::lines;
    use crate::content::{TextColumn, TextTable};

    fn table() -> TextTable {
        let mut table = TextTable::new([
            TextColumn::count("No"),
            TextColumn::text("Piece"),
            TextColumn::text("Empty"),
            TextColumn::text("Size"),
        ]);
        for (number, piece, size) in [
            ("1", "fenêtre face", "18 3/4 in x 24 1/2 in"),
            (
                "12",
                "a lining with a name that goes on and on",
                "9 in x 10 in",
            ),
        ] {
            table.row([number, piece, "", size].map(str::to_owned));
        }
        table
    }

    #[test]
    fn columns_stand_under_each_other_and_empty_ones_are_left_out() {
        assert_eq!(
            lines(&table().without_empty_columns(), 60),
            [
                "No  Piece                              Size",
                "--  ---------------------------------  ---------------------",
                " 1  fenêtre face                       18 3/4 in x 24 1/2 in",
                "12  a lining with a name that goes on  9 in x 10 in",
                "    and on",
            ]
        );
    }

    #[test]
    fn a_page_too_narrow_for_the_columns_gets_one_entry_after_the_other() {
        assert_eq!(
            lines(&table().without_empty_columns(), 20),
            [
                "No 1, Piece fenêtre",
                "face",
                "  Size 18 3/4 in x",
                "  24 1/2 in",
                "No 12, Piece a",
                "lining with a name",
                "that goes on and on",
                "  Size 9 in x 10 in",
            ]
        );
    }

    #[test]
    fn no_line_is_wider_than_the_page() {
        for page in 12..120 {
            for line in lines(&table().without_empty_columns(), page) {
                assert!(columns(&line) <= page, "{page}: {line}");
            }
        }
    }
}
