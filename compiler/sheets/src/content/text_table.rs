//! Tables of text, however their columns are set.

use std::iter::zip;

/// Rows of texts under headings. How wide its columns are is for each writer to find.
#[derive(Clone)]
pub(crate) struct TextTable {
    columns: Vec<TextColumn>,
    rows: Vec<Vec<String>>,
}

/// A column and how its cells stand in it.
#[derive(Clone)]
pub(crate) struct TextColumn {
    heading: &'static str,
    numbers: bool,
}

impl TextColumn {
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

impl TextTable {
    pub(crate) fn new(columns: impl IntoIterator<Item = TextColumn>) -> Self {
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

    /// The table without the columns in which no row says anything.
    pub(crate) fn without_empty_columns(&self) -> TextTable {
        let told: Vec<bool> = (0..self.columns.len())
            .map(|at| {
                self.rows
                    .iter()
                    .any(|row| row.get(at).is_some_and(|cell| !cell.is_empty()))
            })
            .collect();
        TextTable {
            columns: only(&told, &self.columns),
            rows: self.rows.iter().map(|row| only(&told, row)).collect(),
        }
    }

    /// A row told as an entry, where columns find no room: the first two cells that say anything, each
    /// after its heading, and all others.
    pub(crate) fn in_words(&self, row: &[String]) -> (String, String) {
        let named = |(column, cell): (&TextColumn, &String)| format!("{} {cell}", column.heading);
        let mut told = zip(&self.columns, row).filter(|(_, cell)| !cell.is_empty());
        let first: Vec<String> = told.by_ref().take(2).map(named).collect();
        let others: Vec<String> = told.map(named).collect();
        (first.join(", "), others.join(", "))
    }
}

fn only<T: Clone>(told: &[bool], cells: &[T]) -> Vec<T> {
    zip(told, cells)
        .filter(|(told, _)| **told)
        .map(|(_, cell)| cell.clone())
        .collect()
}
