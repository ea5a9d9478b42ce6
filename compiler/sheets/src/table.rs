//! Tables in aligned columns, or one entry after the other where the page is too narrow.

use std::iter::zip;

use crate::wrap::{columns, longest_word, wrapped};

/// A table of text.
#[derive(Clone)]
pub(crate) struct Table {
    columns: Vec<Column>,
    rows: Vec<Vec<String>>,
}

/// A column and how its cells stand in it.
#[derive(Clone)]
pub(crate) struct Column {
    heading: &'static str,
    numbers: bool,
}

impl Column {
    /// A column of words and measures, flush left.
    pub(crate) fn text(heading: &'static str) -> Self {
        Self {
            heading,
            numbers: false,
        }
    }

    /// A column of counts, flush right.
    pub(crate) fn count(heading: &'static str) -> Self {
        Self {
            heading,
            numbers: true,
        }
    }
}

impl Table {
    pub(crate) fn new(columns: impl IntoIterator<Item = Column>) -> Self {
        Self {
            columns: columns.into_iter().collect(),
            rows: Vec::new(),
        }
    }

    /// Adds a row, one cell for each column.
    pub(crate) fn row(&mut self, cells: impl IntoIterator<Item = String>) {
        self.rows.push(cells.into_iter().collect());
    }

    pub(crate) fn is_empty(&self) -> bool {
        self.rows.is_empty()
    }

    /// What stands above each column, and whether it is a column of counts.
    pub(crate) fn headings(&self) -> impl Iterator<Item = (&'static str, bool)> {
        self.columns
            .iter()
            .map(|column| (column.heading, column.numbers))
    }

    pub(crate) fn rows(&self) -> &[Vec<String>] {
        &self.rows
    }

    /// The lines of the table, none wider than the page.
    pub(crate) fn lines(&self, page: usize) -> Vec<String> {
        match self.widths(page) {
            Some(widths) => self.aligned(&widths),
            None => self.one_after_the_other(page),
        }
    }

    /// The table without the columns in which no row says anything.
    pub(crate) fn without_empty_columns(&self) -> Table {
        let told: Vec<bool> = (0..self.columns.len())
            .map(|at| {
                self.rows
                    .iter()
                    .any(|row| row.get(at).is_some_and(|cell| !cell.is_empty()))
            })
            .collect();
        Table {
            columns: only(&told, &self.columns),
            rows: self.rows.iter().map(|row| only(&told, row)).collect(),
        }
    }

    /// The width of each column, shrunk from the widest to fit the page; `None` where they cannot.
    fn widths(&self, page: usize) -> Option<Vec<usize>> {
        let mut widths = self.column_sizes(columns);
        let least = self.column_sizes(|cell| longest_word(cell).min(LONGEST_UNBROKEN));
        let gaps = GAP
            .len()
            .saturating_mul(self.columns.len().saturating_sub(1));
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
    fn column_sizes(&self, size: impl Fn(&str) -> usize) -> Vec<usize> {
        let cells_at = |at: usize| self.rows.iter().filter_map(move |row| row.get(at));
        self.columns
            .iter()
            .enumerate()
            .map(|(at, column)| {
                cells_at(at)
                    .map(|cell| size(cell))
                    .fold(size(column.heading), usize::max)
            })
            .collect()
    }

    fn aligned(&self, widths: &[usize]) -> Vec<String> {
        let headings: Vec<&str> = self.columns.iter().map(|column| column.heading).collect();
        let rules: Vec<String> = widths.iter().map(|width| "-".repeat(*width)).collect();
        let mut lines = self.row_lines(&headings, widths);
        lines.push(rules.join(GAP));
        lines.extend(self.rows.iter().flat_map(|row| self.row_lines(row, widths)));
        lines
    }

    /// The lines one row takes: as many as its tallest cell.
    fn row_lines(&self, cells: &[impl AsRef<str>], widths: &[usize]) -> Vec<String> {
        let cells: Vec<Vec<String>> = zip(cells, widths)
            .map(|(cell, width)| wrapped(cell.as_ref(), *width))
            .collect();
        let tallest = cells.iter().map(Vec::len).max().unwrap_or(0);
        (0..tallest)
            .map(|at| {
                let padded =
                    zip(&cells, zip(&self.columns, widths)).map(|(cell, (column, width))| {
                        padded(
                            cell.get(at).map_or("", String::as_str),
                            *width,
                            column.numbers,
                        )
                    });
                padded
                    .collect::<Vec<String>>()
                    .join(GAP)
                    .trim_end()
                    .to_owned()
            })
            .collect()
    }

    /// Each row as a paragraph: its first cell, then every other one with the heading it stands
    /// under.
    fn one_after_the_other(&self, page: usize) -> Vec<String> {
        let set_in = page.saturating_sub(GAP.len());
        let told = self.rows.iter().map(|row| self.in_words(row));
        told.flat_map(|(first, others)| {
            let others = wrapped(&others, set_in)
                .into_iter()
                .map(|line| format!("{GAP}{line}"));
            wrapped(&first, page).into_iter().chain(others)
        })
        .collect()
    }

    /// The first two cells, and the others in words.
    pub(crate) fn in_words(&self, row: &[String]) -> (String, String) {
        let named = |(column, cell): (&Column, &String)| format!("{} {cell}", column.heading);
        let mut told = zip(&self.columns, row).filter(|(_, cell)| !cell.is_empty());
        let first: Vec<String> = told.by_ref().take(2).map(named).collect();
        let others: Vec<String> = told.map(named).collect();
        (first.join(", "), others.join(", "))
    }
}

/// What stands between two columns.
const GAP: &str = "  ";
/// A word longer than this may be broken for the sake of the other columns.
const LONGEST_UNBROKEN: usize = 24;

fn only<T: Clone>(told: &[bool], cells: &[T]) -> Vec<T> {
    zip(told, cells)
        .filter(|(told, _)| **told)
        .map(|(_, cell)| cell.clone())
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
    use super::{Column, Table};
    use crate::wrap::columns;

    fn table() -> Table {
        let mut table = Table::new([
            Column::count("No"),
            Column::text("Piece"),
            Column::text("Empty"),
            Column::text("Size"),
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
            table().without_empty_columns().lines(60),
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
            table().without_empty_columns().lines(20),
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
            for line in table().without_empty_columns().lines(page) {
                assert!(columns(&line) <= page, "{page}: {line}");
            }
        }
    }
}
