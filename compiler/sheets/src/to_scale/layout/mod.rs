//! The layout of one cloth: every piece where it lies on the bolt, one tenth of its size or less.
//!
//! The cut end of the bolt is above, so that a piece lies upright as it is cut: its top toward the
//! cut end. A bolt too long for a page is drawn in stretches, parted where it is cut straight across;
//! several short ones stand one below the other.

mod piece;
mod stretch;
mod stretch_drawn;

use pelmet_packet::Cloth;

use crate::drawing::{Align, Drawing, LineKind, PAGE_HEIGHT, PAGE_WIDTH, Scale, TextSize, at};
use stretch::{BoltStretch, longest_band, pages, stretches};
use stretch_drawn::{LEFT, StretchDrawn};

/// What is left free around the cloth.
const RIGHT: f64 = 2.0;
const ABOVE: f64 = 17.0;
/// The bar and what the lines mean, below the cloth.
const BELOW: f64 = 34.0;
/// Between two stretches.
const BETWEEN: f64 = 14.0;
/// Narrower cloths still leave room for the words below them.
const NARROWEST: f64 = 150.0;
/// What the lines mean stands in two columns, so far apart.
const COLUMN: f64 = 78.0;

/// Larger drawings than one tenth of the cloth would not help.
const LARGEST: f64 = 10.0;
/// In smaller ones than this nothing is read, however long a part is that no cut parts.
const SMALLEST_FOR_LENGTH: f64 = 20.0;

/// The drawings of how a cloth is laid out, each no larger than a page.
pub(crate) fn layout(cloth: &Cloth) -> Vec<Drawing> {
    let scale = scale(cloth);
    let room = (PAGE_HEIGHT - ABOVE - BELOW) * scale.ratio;
    let pages = pages(stretches(cloth, room), room, BETWEEN * scale.ratio);
    let count = pages.len();
    (1_usize..)
        .zip(pages)
        .map(|(number, stretches)| page(cloth, scale, &stretches, (number, count)))
        .collect()
}

/// The largest drawing that is no wider than a page and, if that can be read, parts no piece.
fn scale(cloth: &Cloth) -> Scale {
    let longest = longest_band(cloth);
    Scale::largest(|scale| {
        let ratio = scale.ratio;
        let is_narrow = cloth.width.mm / ratio <= PAGE_WIDTH - LEFT - RIGHT;
        let is_short = longest / ratio <= PAGE_HEIGHT - ABOVE - BELOW;
        ratio >= LARGEST && is_narrow && (is_short || ratio >= SMALLEST_FOR_LENGTH)
    })
}

fn page(
    cloth: &Cloth,
    scale: Scale,
    stretches: &[BoltStretch],
    (number, count): (usize, usize),
) -> Drawing {
    let part = if count > 1 {
        format!(", {number} of {count}")
    } else {
        String::new()
    };
    let mut drawing = Drawing {
        title: format!("Layout of {}{part}", cloth.name),
        description: described(cloth),
        width: LEFT + (cloth.width.mm / scale.ratio).max(NARROWEST) + RIGHT,
        height: 0.0,
        elements: Vec::new(),
    };
    let title = format!("{}: buy {}{part}", cloth.name, cloth.bought.text);
    drawing.words(at(LEFT, 7.0), Align::Left, TextSize::Large, title);
    let mut top = ABOVE;
    for stretch in stretches {
        let sheet = StretchDrawn {
            cloth,
            stretch,
            scale,
            top,
        };
        sheet.draw(&mut drawing);
        top += stretch.length() / scale.ratio + BETWEEN;
    }
    let end = explain(&mut drawing, scale, top - BETWEEN + 9.0);
    drawing.height = end;
    drawing
}

fn described(cloth: &Cloth) -> String {
    format!(
        "{} pieces on {} wide {}, {} of it used. The yardage sheet gives every place as a number.",
        cloth.piece_count, cloth.width.text, cloth.name, cloth.exact.text
    )
}

/// A bar to read lengths by, and what the lines mean; gives where that ends.
fn explain(drawing: &mut Drawing, scale: Scale, top: f64) -> f64 {
    let below = scale.draw_bar(drawing, (LEFT, top)) + 5.0;
    let [left, right] = MEANINGS;
    let left = drawing.meanings_of(left, at(LEFT, below));
    let right = drawing.meanings_of(right, at(LEFT + COLUMN, below));
    left.max(right)
}

const MEANINGS: [&[(LineKind, &str)]; 2] = [
    &[
        (LineKind::Cut, "cut; the arrow points to the top"),
        (LineKind::Fold, "fold of the doubled cloth"),
        (LineKind::Centre, "middle: turn the pattern over"),
        (LineKind::Repeat, "the print comes round"),
        (LineKind::Print, "the part of the print that is held"),
    ],
    &[
        (LineKind::Waste, "not used"),
        (LineKind::Flaw, "a flaw, cut around"),
        (LineKind::Selvage, "selvage, which no piece may use"),
    ],
];

#[cfg(test)]
mod tests;
