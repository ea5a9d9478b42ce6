//! The first page of all: how to print and check, which templates and story sticks there are, and what
//! is better measured on the cloth.

use crate::drawing::{Align, Drawing, LineKind, TextSize, at};
use crate::true_size::page::{Frame, PaperSheet, paragraph};

const TITLE_GAP: f64 = 3.0;
const ROW_GAP: f64 = 1.2;

const HOW_TO_PRINT: [&str; 2] = [
    "Print at the actual size (100 %), not fitted to the paper, and measure both bars of every page. Where a bar \
    is wrong, all of its page is wrong: do not cut by it.",
    "Tape the pages of a template as its map shows. Before you cut cloth, check its width and length against \
    the cut sheet, and lay a template that matters on a scrap first.",
];

/// A part of the file, or what has none in it, in three columns.
pub(super) struct OverviewRow {
    pub(super) name: String,
    pub(super) about: String,
    pub(super) pages: String,
}

/// Pages being filled with rows.
pub(super) struct Overview {
    sheet: PaperSheet,
    title: String,
    pages: Vec<Drawing>,
    y: f64,
}

impl Overview {
    pub(super) fn new(sheet: PaperSheet, title: &str) -> Self {
        let mut overview = Self {
            sheet,
            title: title.to_owned(),
            pages: Vec::new(),
            y: f64::INFINITY,
        };
        overview.make_room(0.0);
        for paragraph in HOW_TO_PRINT {
            overview.paragraph(paragraph);
        }
        overview
    }

    pub(super) fn paragraph(&mut self, text: &str) {
        self.make_room(12.0);
        let (window, y) = (self.window(), self.y);
        if let Some(page) = self.pages.last_mut() {
            self.y = paragraph(
                page,
                at(window.left, y),
                window.width,
                TextSize::Plain,
                text,
            ) + ROW_GAP;
        }
    }

    /// A heading with its rows; nothing where there are none.
    pub(super) fn list(&mut self, heading: &str, rows: &[OverviewRow]) {
        if rows.is_empty() {
            return;
        }
        self.y += TITLE_GAP;
        self.make_room(20.0);
        let (window, y) = (self.window(), self.y);
        if let Some(page) = self.pages.last_mut() {
            page.words(at(window.left, y), Align::Left, TextSize::Large, heading);
        }
        self.y = y + TextSize::Large.millimetres() * 1.5;
        for row in rows {
            self.row(row);
        }
    }

    pub(super) fn into_pages(self) -> Vec<Drawing> {
        self.pages
    }

    fn row(&mut self, row: &OverviewRow) {
        self.make_room(15.0);
        let (window, y) = (self.window(), self.y);
        let parts = [0.0, 0.33, 0.82, 1.0].map(|part| window.left + window.width * part);
        let columns = parts.iter().zip(parts.iter().skip(1));
        let texts = [&row.name, &row.about, &row.pages];
        let Some(page) = self.pages.last_mut() else {
            return;
        };
        page.line(
            LineKind::Frame,
            [at(window.left, y - 4.0), at(window.right(), y - 4.0)],
        );
        let ends = columns.zip(texts).map(|((from, to), text)| {
            paragraph(page, at(*from, y), to - from - 3.0, TextSize::Plain, text)
        });
        self.y = ends.fold(y, f64::max) + ROW_GAP;
    }

    fn window(&self) -> Frame {
        self.sheet.window()
    }

    /// Begins a page where so much does not find room on the last.
    fn make_room(&mut self, height: f64) {
        let window = self.window();
        if self.y + height > window.bottom() {
            let part = "What is in this file, and how to use it";
            self.pages.push(self.sheet.page(&self.title, part));
            self.y = window.top + 5.0;
        }
    }
}
