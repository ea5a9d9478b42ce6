//! Measures on a drawing: a line from end to end, its ends turned to what is measured.

use super::elements::Drawing;
use super::line_kind::LineKind;
use super::point::at;
use super::text_size::{Align, TextSize, fits};

/// How long the turned ends are.
const END: f64 = 1.5;

/// A measure across that stands over what is measured, its words above the line where they find room.
pub(crate) fn above((from, to): (f64, f64), y: f64, text: &str, drawing: &mut Drawing) {
    across((from, to), (y, y + END), y - 1.2, text, drawing);
}

/// A measure across that stands below what is measured, its words below the line where they find
/// room.
pub(crate) fn below((from, to): (f64, f64), y: f64, text: &str, drawing: &mut Drawing) {
    let words = y + TextSize::Plain.millimetres() + 0.4;
    across((from, to), (y, y - END), words, text, drawing);
}

/// A measure down at the left of what is measured, its words left of the line.
pub(crate) fn left_of((from, to): (f64, f64), x: f64, text: &str, drawing: &mut Drawing) {
    let ends = [at(x + END, from), at(x, from), at(x, to), at(x + END, to)];
    drawing.line(LineKind::Measure, ends);
    let middle = at(x - END, (from + to) / 2.0 + 1.0);
    drawing.words(middle, Align::Right, TextSize::Plain, text);
}

/// A measure down at the right of what is measured, its words right of the line.
pub(crate) fn right_of((from, to): (f64, f64), x: f64, text: &str, drawing: &mut Drawing) {
    let ends = [at(x - END, from), at(x, from), at(x, to), at(x - END, to)];
    drawing.line(LineKind::Measure, ends);
    let middle = at(x + END, (from + to) / 2.0 + 1.0);
    drawing.words(middle, Align::Left, TextSize::Plain, text);
}

fn across(
    (from, to): (f64, f64),
    (y, end): (f64, f64),
    words: f64,
    text: &str,
    drawing: &mut Drawing,
) {
    drawing.line(
        LineKind::Measure,
        [at(from, end), at(from, y), at(to, y), at(to, end)],
    );
    if fits(text, TextSize::Plain, to - from) {
        let middle = at((from + to) / 2.0, words);
        drawing.words(middle, Align::Middle, TextSize::Plain, text);
    }
}
