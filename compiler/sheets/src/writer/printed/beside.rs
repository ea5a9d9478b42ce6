//! Long narrow tables, broken into columns side by side so that they do not waste paper.

use super::row::{PrintedRow, kept_within};
use crate::drawing::at;

/// What is left free between two parts of a table.
const BETWEEN: f64 = 10.0;
/// A part has at least so many rows, or it does not stand apart.
const FEWEST: usize = 4;
/// And at most so many: all parts side by side are kept on one page.
const MOST: usize = 14;
/// More parts than these side by side are hard to read across.
const ACROSS: usize = 3;

/// The rows of a table of this width, in parts side by side in a text area; `None` where it has too
/// few rows, rows of several lines, or columns too wide.
pub(super) fn beside(
    head: &[PrintedRow],
    body: &[PrintedRow],
    (width, area): (f64, f64),
) -> Option<Vec<PrintedRow>> {
    let across = parts(width, area, body.len())?;
    if body.iter().any(|row| row.kept) {
        return None;
    }
    let slab = |(index, rows): (usize, &[PrintedRow])| {
        let mut slab = side_by_side(head, rows, across, width + BETWEEN);
        if let Some(first) = slab.first_mut().filter(|_| index > 0) {
            first.space = BETWEEN / 2.0;
        }
        slab
    };
    // All parts of a slab stand on one page, since an eye that has read one down goes up to the next. Slabs
    // are as equal as can be, or the last would be a few rows across the whole page.
    let slabs = body.len().div_ceil(across.saturating_mul(MOST)).max(1);
    let slabs = body.chunks(body.len().div_ceil(slabs).max(1)).enumerate();
    Some(slabs.flat_map(slab).collect())
}

/// How many parts of this width stand side by side; `None` for fewer than two.
fn parts(width: f64, area: f64, rows: usize) -> Option<usize> {
    let fits = |parts: &usize| {
        let widths: f64 = (0..*parts).map(|_| width + BETWEEN).sum();
        widths - BETWEEN <= area && rows >= parts.saturating_mul(FEWEST)
    };
    (2..=ACROSS).rev().find(fits)
}

/// The rows in as many parts, as equal as can be, each under the head; on one page.
fn side_by_side(
    head: &[PrintedRow],
    rows: &[PrintedRow],
    parts: usize,
    step: f64,
) -> Vec<PrintedRow> {
    let mut set: Vec<PrintedRow> = Vec::new();
    let mut left = 0.0;
    for part in rows.chunks(rows.len().div_ceil(parts).max(1)) {
        for (index, row) in head.iter().chain(part).enumerate() {
            let moved = row.elements.iter().cloned();
            let moved = moved.map(|element| element.moved(at(left, 0.0)));
            match set.get_mut(index) {
                Some(first) => first.elements.extend(moved),
                None => set.push(PrintedRow {
                    height: row.height,
                    elements: moved.collect(),
                    ..PrintedRow::default()
                }),
            }
        }
        left += step;
    }
    kept_within(set)
}
