//! Words on several lines of a drawing.

use pelmet_lettering::Weight;

use super::{Align, Drawing, Point, Size, at};
use crate::wrap::held_together;

/// From one line to the next, in heights of type.
const LEADING: f64 = 1.35;

impl Drawing {
    /// Sets a text in lines no wider than `width`, the first of them at a place; gives where the next
    /// line would stand.
    pub(crate) fn paragraph(&mut self, first: Point, width: f64, size: Size, text: &str) -> f64 {
        let mut y = first.y;
        for line in lines(text, width / size.millimetres()) {
            self.words(at(first.x, y), Align::Left, size, line);
            y += size.millimetres() * LEADING;
        }
        y
    }
}

/// The lines of a text in a width measured in heights of type. A word that is wider stands alone.
fn lines(text: &str, width: f64) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in held_together(text).split(' ') {
        let longer = lines.last().map(|line| format!("{line} {word}"));
        let fitting = longer.filter(|line| Weight::Plain.width(line) <= width);
        match (fitting, lines.last_mut()) {
            (Some(longer), Some(line)) => *line = longer,
            _ => lines.push(word.to_owned()),
        }
    }
    lines
}
