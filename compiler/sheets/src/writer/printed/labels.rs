//! Labels in a grid, to be cut apart along dashed lines.

use super::row::PrintedRow;
use crate::content::PieceLabel;
use crate::drawing::{Lettering, LineKind, at};

/// How many stand side by side, and how high each is, in millimetres.
const ACROSS: usize = 3;
const HEIGHT: f64 = 41.0;
/// Where the arrow stands in a label, where its words begin, and what is left free right of them.
const ARROW: f64 = 5.0;
const WORDS: f64 = 10.0;
const FREE: f64 = 3.0;

const NUMBER: Lettering = Lettering::bold(8.5);
const NAME: Lettering = Lettering::bold(4.2);
const SIZE: Lettering = Lettering::plain(4.0);
const SMALL: Lettering = Lettering::plain(3.0);

/// The rows of labels in a text area of this width.
pub(super) fn rows(labels: &[PieceLabel], width: f64) -> Vec<PrintedRow> {
    let cell = width / 3.0;
    let row = |labels: &[PieceLabel]| {
        let mut row = PrintedRow {
            height: HEIGHT,
            ..PrintedRow::default()
        };
        let mut left = 0.0;
        for label in labels {
            draw(label, (left, left + cell), &mut row);
            left += cell;
        }
        row
    };
    labels.chunks(ACROSS).map(row).collect()
}

/// One label between its two sides.
fn draw(label: &PieceLabel, (left, right): (f64, f64), row: &mut PrintedRow) {
    let corners = [(left, 0.0), (right, 0.0), (right, HEIGHT), (left, HEIGHT)];
    row.draw(LineKind::Apart, corners.map(|(x, y)| at(x, y)), true);
    let arrow = left + ARROW;
    row.draw(
        LineKind::Top,
        [at(arrow, HEIGHT - 5.0), at(arrow, 5.0)],
        false,
    );
    let barbs = [at(arrow - 1.8, 8.5), at(arrow, 5.0), at(arrow + 1.8, 8.5)];
    row.draw(LineKind::Top, barbs, false);
    let number = label.number.to_string();
    let (start, room) = (left + WORDS, right - left - WORDS - FREE);
    let beside = NUMBER.width(&number) + 2.5;
    let lines = [
        (0.0, 6.5, SMALL, &label.job),
        (0.0, 15.5, NUMBER, &number),
        (beside, 15.5, SIZE, &label.cloth),
        (0.0, 21.5, NAME, &label.panel),
        (0.0, 26.8, NAME, &label.layer),
        (0.0, 32.3, SIZE, &label.size),
        (0.0, 37.2, SMALL, &label.remarks),
    ];
    for (along, y, lettering, text) in lines {
        let text = lettering.shortened(text, room - along);
        row.write_at(at(start + along, y), lettering, text);
    }
}
