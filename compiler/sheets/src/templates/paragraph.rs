//! Running text on a page of templates.

use crate::drawing::{Drawing, Element, Lettering, Point, Size, at};
use crate::printed::lines;

/// From one line to the next, in heights of type.
const LEADING: f64 = 1.35;

/// Sets a text in lines no wider than `width`, the first of them at a place; gives where the next line
/// would stand.
pub(super) fn paragraph(
    page: &mut Drawing,
    first: Point,
    width: f64,
    size: Size,
    text: &str,
) -> f64 {
    let lettering = Lettering::plain(size.millimetres());
    let mut y = first.y;
    for line in lines(text, lettering, width) {
        page.elements.push(Element::Text {
            at: at(first.x, y),
            lettering,
            text: line,
        });
        y += size.millimetres() * LEADING;
    }
    y
}
