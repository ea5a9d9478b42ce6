//! What pages are filled with.

use std::rc::Rc;

use crate::drawing::{Element, Lettering, LineKind, PaperPoint, at};

/// A strip of a page, as wide as its text area: a line of text, a line of a table, a drawing.
#[derive(Clone, PartialEq, Debug, Default)]
pub(super) struct PrintedRow {
    /// What is kept free above it, but for a row that begins a page.
    pub(super) space: f64,
    pub(super) height: f64,
    /// What stands in it, from its left upper corner.
    pub(super) elements: Vec<Element>,
    /// Whether it is to stand on one page with the row after it.
    pub(super) kept: bool,
    /// What is repeated above it where it begins a page.
    pub(super) head: Option<Rc<Vec<PrintedRow>>>,
    /// The width of a drawing that may be too wide for the text area.
    pub(super) width: f64,
}

/// How far one line of text stands below the other, of the height of its letters.
const LINE: f64 = 1.35;
/// How far the letters of a line stand below its upper end, of their height.
const BASE: f64 = 1.0;

impl PrintedRow {
    /// A line of text that begins so far from the left.
    pub(super) fn line(left: f64, lettering: Lettering, text: impl Into<String>) -> Self {
        let mut row = Self {
            height: lettering.height * LINE,
            ..Self::default()
        };
        row.write(left, lettering, text);
        row
    }

    /// Writes on the first line of the row.
    pub(super) fn write(&mut self, left: f64, lettering: Lettering, text: impl Into<String>) {
        self.write_at(at(left, lettering.height * BASE), lettering, text);
    }

    /// Writes at a place in the row.
    pub(super) fn write_at(
        &mut self,
        at: PaperPoint,
        lettering: Lettering,
        text: impl Into<String>,
    ) {
        self.elements.push(written(at, lettering, text));
    }

    /// Writes before all that stands in the row, as it is read.
    pub(super) fn begin_with(
        &mut self,
        at: PaperPoint,
        lettering: Lettering,
        text: impl Into<String>,
    ) {
        self.elements.insert(0, written(at, lettering, text));
    }

    /// The row with so much more room above what stands in it.
    pub(super) fn lowered(mut self, by: f64) -> Self {
        let elements = self.elements.into_iter();
        self.elements = elements.map(|element| element.moved(at(0.0, by))).collect();
        self.height += by;
        self
    }

    /// Draws a line across the row.
    pub(super) fn rule(&mut self, line: LineKind, (from, to): (f64, f64), y: f64) {
        self.draw(line, [at(from, y), at(to, y)], false);
    }

    pub(super) fn draw(
        &mut self,
        line: LineKind,
        points: impl IntoIterator<Item = PaperPoint>,
        closed: bool,
    ) {
        self.elements.push(Element::Path {
            line,
            points: points.into_iter().collect(),
            closed,
        });
    }
}

/// The rows with so much free above the first.
pub(super) fn spaced(space: f64, mut rows: Vec<PrintedRow>) -> Vec<PrintedRow> {
    if let Some(first) = rows.first_mut() {
        first.space = space;
    }
    rows
}

/// All on one page with what comes next.
pub(super) fn kept(mut rows: Vec<PrintedRow>) -> Vec<PrintedRow> {
    for row in &mut rows {
        row.kept = true;
    }
    rows
}

/// All on one page.
pub(super) fn kept_within(rows: Vec<PrintedRow>) -> Vec<PrintedRow> {
    let mut rows = kept(rows);
    if let Some(last) = rows.last_mut() {
        last.kept = false;
    }
    rows
}

fn written(at: PaperPoint, lettering: Lettering, text: impl Into<String>) -> Element {
    Element::Text {
        at,
        lettering,
        text: text.into(),
    }
}
