//! Rows brought onto pages.

use super::row::PrintedRow;
use crate::drawing::{Drawing, at};
use crate::paper::Paper;

/// What is left free at the edges of a page; printers leave about 5 mm unprinted (common practice, no
/// source). The foot stands in the lower margin.
pub(super) const SIDE: f64 = 15.0;
pub(super) const TOP: f64 = 13.0;
pub(super) const BOTTOM: f64 = 16.0;

/// Pages being filled, each with the name of what stands on it.
pub(super) struct PrintedPages {
    paper: Paper,
    pub(super) done: Vec<Drawing>,
    /// Where the next row of the last page begins; nothing where there is to be another page.
    next: Option<f64>,
    name: String,
}

impl PrintedPages {
    pub(super) fn new(paper: Paper) -> Self {
        Self {
            paper,
            done: Vec::new(),
            next: None,
            name: String::new(),
        }
    }

    /// The width of the text area.
    pub(super) fn width(&self) -> f64 {
        self.paper.millimetres().0 - SIDE * 2.0
    }

    /// Begins another sheet on another page; gives its number, counted from nought.
    pub(super) fn begin(&mut self, name: &str) -> usize {
        self.name = name.to_owned();
        self.next = None;
        self.done.len()
    }

    /// Brings rows onto pages. Those that are kept together stand on one page wherever one has room.
    pub(super) fn place(&mut self, rows: &[PrintedRow]) {
        // A row that is kept draws the next one after it, so a chain ends at the first that is not. A chain
        // longer than any page is parted wherever the page ends: turning over first would only leave a
        // page half empty.
        for chain in rows.chunk_by(|row, _| row.kept) {
            if !self.holds(chain) && self.would_hold(chain) {
                self.next = None;
            }
            for row in chain {
                self.place_row(row);
            }
        }
    }

    fn height(&self) -> f64 {
        self.paper.millimetres().1
    }

    /// Whether the rows have room on the page that is being filled.
    fn holds(&self, rows: &[PrintedRow]) -> bool {
        let end = self.height() - BOTTOM;
        self.next.is_some_and(|next| next + stacked(rows) <= end)
    }

    /// Whether they would have room on a page of their own.
    fn would_hold(&self, rows: &[PrintedRow]) -> bool {
        // On a page of its own the head of the table comes first once more, and nothing stands above the
        // first row that it would have to be kept apart from.
        let head = rows.first().map_or(0.0, |row| stacked(repeated(row)));
        let space = rows.first().map_or(0.0, |row| row.space);
        let too_large = rows.iter().any(|row| self.is_too_large(row));
        !too_large && head + stacked(rows) - space <= self.height() - TOP - BOTTOM
    }

    /// Whether the text area has no room for a row.
    fn is_too_large(&self, row: &PrintedRow) -> bool {
        row.width > self.width() || row.height > self.height() - TOP - BOTTOM
    }

    fn place_row(&mut self, row: &PrintedRow) {
        if self.is_too_large(row) {
            self.place_apart(row);
            return;
        }
        if !self.holds(std::slice::from_ref(row)) {
            self.turn_over();
            for head in repeated(row) {
                self.put(head);
            }
        }
        self.put(row);
    }

    /// Puts a row on the page that is being filled.
    fn put(&mut self, row: &PrintedRow) {
        let Some((page, next)) = self.done.last_mut().zip(self.next) else {
            return;
        };
        let space = if next > TOP { row.space } else { 0.0 };
        let corner = at(SIDE, next + space);
        let elements = row.elements.iter().cloned();
        page.elements
            .extend(elements.map(|element| element.moved(corner)));
        self.next = Some(corner.y + row.height);
    }

    /// Begins another page.
    fn turn_over(&mut self) {
        let (width, height) = self.paper.millimetres();
        self.done.push(self.empty(width, height));
        self.next = Some(TOP);
    }

    fn empty(&self, width: f64, height: f64) -> Drawing {
        Drawing {
            title: self.name.clone(),
            description: String::new(),
            width,
            height,
            elements: Vec::new(),
        }
    }

    /// A drawing too large for the text area has a page to itself: the paper turned where that is
    /// enough, else a page that is larger than the paper. A drawing to scale is never made smaller.
    fn place_apart(&mut self, row: &PrintedRow) {
        let (width, height) = self.paper.millimetres();
        let (across, down) = (row.width + SIDE * 2.0, row.height + TOP + BOTTOM);
        let page = if across <= height && down <= width {
            self.empty(height, width)
        } else {
            self.empty(across.max(width), down.max(height))
        };
        self.done.push(page);
        self.next = Some(TOP);
        self.put(row);
        self.next = None;
    }
}

/// The rows repeated above one that begins a page.
fn repeated(row: &PrintedRow) -> &[PrintedRow] {
    row.head.as_deref().map_or(&[], Vec::as_slice)
}

/// The height of rows one below the other.
fn stacked(rows: &[PrintedRow]) -> f64 {
    rows.iter().map(|row| row.space + row.height).sum()
}
