//! Running text on a page of templates.

use crate::drawing::lines;
use crate::drawing::{Drawing, Element, Lettering, PaperPoint, TextSize, at};

/// From one line to the next, in heights of type.
const LEADING: f64 = 1.35;

/// Sets a text in lines no wider than `width`, the first of them at a place; gives where the next line
/// would stand.
pub(crate) fn paragraph(
    page: &mut Drawing,
    first: PaperPoint,
    width: f64,
    size: TextSize,
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

/// As much of a text as has room in a width, with dots where something is left out.
pub(crate) fn shortened(text: &str, size: TextSize, width: f64) -> String {
    const LEFT_OUT: &str = " …";
    let lettering = Lettering::plain(size.millimetres());
    let room = width - lettering.width(LEFT_OUT);
    match lines(text, lettering, width).as_slice() {
        [_] | [] => text.to_owned(),
        _ => lines(text, lettering, room)
            .first()
            .map_or_else(String::new, |line| format!("{line}{LEFT_OUT}")),
    }
}

#[cfg(test)]
mod tests {
    use super::shortened;
    use crate::drawing::{TextSize, width_of};

    #[test]
    fn a_text_without_room_ends_in_dots() {
        assert_eq!(shortened("wing face", TextSize::Plain, 100.0), "wing face");
        for text in ["many words ".repeat(30), "w".repeat(300)] {
            let short = shortened(&text, TextSize::Plain, 80.0);
            assert!(short.ends_with(" …") && short.len() > 20, "{short}");
            assert!(width_of(&short, TextSize::Plain) <= 80.0, "{short}");
        }
    }
}
