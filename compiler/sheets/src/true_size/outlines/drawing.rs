//! One outline at its true size, opened out.

use super::points::{MOTIF, cross};
use super::shared::SharedOutline;
use super::whole::{Arcs, OutlineVertex, WholePiece};
use crate::drawing::lines;
use crate::drawing::{Align, Drawing, Lettering, LineKind, PaperPoint, TextSize, at};

/// Room around the piece.
const AROUND: f64 = 12.0;
/// Room below it for what it is.
const BELOW: f64 = 40.0;
/// Narrower pieces still leave room for the words.
const NARROWEST: f64 = 130.0;
/// From one line of words to the next.
const ROW: f64 = 5.0;
/// How far inside a corner its number stands, across and down.
const INSIDE: (f64, f64) = (2.0, 4.5);

/// The lines of a whole piece at their true size, a bar to check it by, and what is cut by them.
pub(crate) fn outline_drawing(outline: &SharedOutline<'_>) -> Drawing {
    let (piece, whole) = (outline.piece, WholePiece::of(outline, Arcs::AsPoints));
    let (width, length) = (piece.cut_width.mm, piece.cut_length.mm);
    let told = told(outline, width.max(NARROWEST));
    let rows = f64::from(u32::try_from(told.len()).unwrap_or(u32::MAX));
    let mut drawing = Drawing {
        title: format!("Outline of {}", piece.label),
        description: format!("{} at its true size.", outline.size()),
        width: width.max(NARROWEST) + 2.0 * AROUND,
        height: length + 2.0 * AROUND + BELOW + rows * ROW,
        elements: Vec::new(),
    };
    let place = |point: PaperPoint| at(point.x + AROUND, point.y + AROUND);
    let closed = |line: &[OutlineVertex]| -> Vec<PaperPoint> {
        line.iter().map(|it| place(it.at)).collect()
    };
    drawing.shape(LineKind::CutEdge, closed(&whole.cut));
    drawing.shape(LineKind::Sewn, closed(&whole.sewn));
    for (line, ends) in &whole.lines {
        drawing.line(line.kind(), ends.map(place));
    }
    for (corner, words) in &whole.corners {
        let (across, down) = INSIDE;
        let (x, align) = if corner.x < width / 2.0 {
            (corner.x + across, Align::Left)
        } else {
            (corner.x - across, Align::Right)
        };
        let y = if corner.y < length / 2.0 {
            corner.y + down
        } else {
            corner.y - across
        };
        drawing.words(place(at(x, y)), align, TextSize::Plain, &**words);
    }
    for motif in whole.motifs.iter().map(|motif| place(*motif)) {
        for line in cross(motif) {
            drawing.line(LineKind::Measure, line);
        }
        let beside = at(motif.x + 2.0, motif.y - 2.0);
        drawing.words(beside, Align::Left, TextSize::Plain, MOTIF);
    }
    tell(told, at(AROUND, length + 2.0 * AROUND), &mut drawing);
    drawing
}

/// The size and what is cut, in lines no wider than so much.
fn told(outline: &SharedOutline<'_>, width: f64) -> Vec<String> {
    let told = std::iter::once(outline.size()).chain(outline.cut());
    let lettering = Lettering::plain(TextSize::Plain.millimetres());
    told.flat_map(|text| lines(&text, lettering, width))
        .collect()
}

fn tell(told: Vec<String>, first: PaperPoint, drawing: &mut Drawing) {
    let mut y = first.y;
    for words in told {
        drawing.words(at(first.x, y), Align::Left, TextSize::Plain, words);
        y += ROW;
    }
    let bar = [at(first.x, y + 2.0), at(first.x + 100.0, y + 2.0)];
    for end in bar {
        drawing.line(
            LineKind::Measure,
            [at(end.x, end.y - 2.0), at(end.x, end.y + 2.0)],
        );
    }
    drawing.line(LineKind::Measure, bar);
    drawing.words(
        at(first.x + 103.0, y + 3.0),
        Align::Left,
        TextSize::Plain,
        "100 mm",
    );
    let meanings = [
        (LineKind::CutEdge, "cut"),
        (LineKind::Sewn, "sewn, or turned for a hem"),
        (LineKind::Centre, "centre"),
        (LineKind::Fold, "fold"),
    ];
    drawing.meanings_of(&meanings, at(first.x, y + 10.0));
}
