//! What holds of the story sticks of every example, on either paper.

use super::sticks;
use crate::drawing::{Align, Element, width_of};
use crate::examples::packets;
use crate::paper::Paper;
use crate::true_size::page::PaperSheet;

/// Letters of the same line of type are as high as they are; so much of it keeps two lines apart.
const LINE: f64 = 0.8;

#[test]
fn no_words_of_a_story_stick_lie_on_others() {
    for packet in packets() {
        for (stick, paper) in sticks(&packet.windows)
            .iter()
            .flat_map(|stick| Paper::ALL.map(|paper| (stick, paper)))
        {
            for page in stick.pages("Story stick", PaperSheet::on_its_side(paper)) {
                let boxes: Vec<(&str, [f64; 4])> =
                    page.elements.iter().filter_map(words_box).collect();
                for (index, (text, one)) in boxes.iter().enumerate() {
                    for (other_text, other) in boxes.iter().skip(index + 1) {
                        let apart = one[2] <= other[0]
                            || other[2] <= one[0]
                            || one[3] <= other[1]
                            || other[3] <= one[1];
                        assert!(apart, "{text} and {other_text}");
                    }
                }
            }
        }
    }
}

/// The left, upper, right and lower end of words.
fn words_box(element: &Element) -> Option<(&str, [f64; 4])> {
    let Element::Words {
        at,
        align,
        size,
        text,
    } = element
    else {
        return None;
    };
    let width = width_of(text, *size);
    let left = match align {
        Align::Left => at.x,
        Align::Middle => at.x - width / 2.0,
        Align::Right => at.x - width,
    };
    let top = at.y - size.millimetres() * LINE;
    Some((text, [left, top, left + width, at.y]))
}
