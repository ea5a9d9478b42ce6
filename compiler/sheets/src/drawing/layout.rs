//! The layout of one cloth: every piece where it lies on the bolt, one tenth of its size.
//!
//! The cut end of the bolt is above, so that a piece lies upright as it is cut: its top toward the
//! cut end. Several bolts stand one below the other.

use super::{Align, Drawing, Line, Point, SCALE, Size, at, fits, paper, rectangle};
use pelmet_packet::packet::{BoltUsed, Cloth, Measure, PlacedCorner, PlacedPiece, RepeatMatch};

/// What is left free around the cloth.
const LEFT: f64 = 30.0;
const RIGHT: f64 = 8.0;
const ABOVE: f64 = 16.0;
const BELOW: f64 = 34.0;
/// Between two bolts.
const BETWEEN: f64 = 14.0;
/// Narrower cloths still leave room for the words below them.
const NARROWEST: f64 = 120.0;
/// The drawing of how a cloth is laid out.
pub(crate) fn layout(cloth: &Cloth) -> Drawing {
    let width = paper(&cloth.width);
    let mut drawing = Drawing {
        title: format!("Layout of {}", cloth.name),
        description: described(cloth),
        width: LEFT + width.max(NARROWEST) + RIGHT,
        height: 0.0,
        elements: Vec::new(),
    };
    let title = format!("{}: buy {}", cloth.name, cloth.bought.text);
    drawing.words(at(LEFT, 7.0), Align::Left, Size::Large, title);
    let mut top = ABOVE;
    for bolt in &cloth.bolts {
        let sheet = Sheet { cloth, bolt, top };
        sheet.draw(&mut drawing);
        top += paper(&bolt.bought) + BETWEEN;
    }
    explain(&mut drawing, cloth, top - BETWEEN + 6.0);
    drawing.height = top - BETWEEN + BELOW;
    drawing
}

fn described(cloth: &Cloth) -> String {
    format!(
        "{} pieces on {} wide {}, {} of it used. The yardage sheet gives every place as a number.",
        cloth.piece_count, cloth.width.text, cloth.name, cloth.exact.text
    )
}

/// One bolt on the paper.
struct Sheet<'a> {
    cloth: &'a Cloth,
    bolt: &'a BoltUsed,
    /// Where its cut end lies.
    top: f64,
}

impl Sheet<'_> {
    fn draw(&self, drawing: &mut Drawing) {
        let (left, right) = (LEFT, LEFT + paper(&self.cloth.width));
        let end = self.top + paper(&self.bolt.bought);
        drawing.shape(Line::Selvage, rectangle(at(left, self.top), at(right, end)));
        drawing.shape(
            Line::Waste,
            rectangle(at(self.left(), self.top), at(self.right(), end)),
        );
        let first = if self.cloth.bolts.len() > 1 {
            format!("cut end of bolt {}", self.bolt.number)
        } else {
            String::from("cut end")
        };
        drawing.words(at(left, self.top - 1.5), Align::Left, Size::Small, first);
        for piece in self.pieces() {
            self.draw_piece(piece, drawing);
        }
        self.draw_repeats(drawing);
        for piece in self.pieces() {
            self.tell_piece(piece, drawing);
        }
        self.draw_cuts(drawing);
        let frame = [
            at(left, self.top),
            at(left, end),
            at(right, end),
            at(right, self.top),
        ];
        drawing.line(Line::Measure, frame);
    }

    /// The left end of the usable width.
    fn left(&self) -> f64 {
        let selvages = self.cloth.width.mm - self.cloth.usable_width.mm;
        LEFT + selvages / 2.0 / SCALE
    }

    fn right(&self) -> f64 {
        self.left() + paper(&self.cloth.usable_width)
    }

    fn pieces(&self) -> impl Iterator<Item = &PlacedPiece> {
        let number = self.bolt.number;
        let pieces = self.cloth.placed.iter();
        pieces.filter(move |piece| piece.bolt == number)
    }

    /// Left upper corner of a piece, its width and its length.
    fn place(&self, piece: &PlacedPiece) -> (Point, (f64, f64)) {
        let corner = at(
            self.left() + paper(&piece.across),
            self.top + paper(&piece.along),
        );
        (corner, (paper(&piece.width), paper(&piece.length)))
    }

    fn draw_piece(&self, piece: &PlacedPiece, drawing: &mut Drawing) {
        let (corner, (width, length)) = self.place(piece);
        let other = at(corner.x + width, corner.y + length);
        if piece.outline.is_empty() {
            drawing.shape(Line::Cut, rectangle(corner, other));
        } else {
            let on_paper = |it: &PlacedCorner| {
                at(self.left() + paper(&it.across), self.top + paper(&it.along))
            };
            drawing.shape(Line::Cut, piece.outline.iter().map(on_paper));
        }
        if let Some(fold) = &piece.fold_at {
            let x = self.left() + paper(fold);
            drawing.line(Line::Fold, [at(x, corner.y), at(x, other.y)]);
        }
    }

    /// What is written in a piece lies over the lines of the print.
    fn tell_piece(&self, piece: &PlacedPiece, drawing: &mut Drawing) {
        let (corner, (width, length)) = self.place(piece);
        let middle = at(corner.x + width / 2.0, corner.y + length / 2.0);
        name(piece, middle, (width, length), drawing);
        if length > 14.0 && width > 6.0 {
            arrow(piece, middle.x, (corner.y + 2.0, corner.y + 7.0), drawing);
        }
    }

    /// Lines on which the held part of the print lies, and from which it comes round across. In a
    /// half-drop print they lie half a repeat further along in every other column.
    fn draw_repeats(&self, drawing: &mut Drawing) {
        let Some(repeat) = &self.cloth.repeat else {
            return;
        };
        let first = self.cloth.print_line.as_ref().map_or(0.0, paper);
        let (end, usable) = (paper(&self.bolt.bought), paper(&self.cloth.usable_width));
        let half = match repeat.matching {
            RepeatMatch::Straight => 0.0,
            RepeatMatch::HalfDrop => repeat.along.as_ref().map_or(0.0, paper) / 2.0,
        };
        let across = repeat.across.as_ref();
        let lefts = across.map_or_else(
            || vec![0.0],
            |step| steps(0.0, Some(step), usable).collect(),
        );
        for (left, odd) in lefts.into_iter().zip([false, true].into_iter().cycle()) {
            let right = across.map_or(usable, |step| usable.min(left + paper(step)));
            let first = first + if odd { half } else { 0.0 };
            for along in steps(first, repeat.along.as_ref(), end) {
                let y = self.top + along;
                drawing.line(
                    Line::Repeat,
                    [at(self.left() + left, y), at(self.left() + right, y)],
                );
            }
            if left > 0.0 {
                let x = self.left() + left;
                drawing.line(Line::Repeat, [at(x, self.top), at(x, self.top + end)]);
            }
        }
    }

    /// The cuts straight across, each with its place along the bolt. Words that would lie on those
    /// above them are left out; the yardage sheet has every number.
    fn draw_cuts(&self, drawing: &mut Drawing) {
        let number = self.bolt.number;
        let mut free = self.top;
        for band in self.cloth.bands.iter().filter(|band| band.bolt == number) {
            let y = self.top + paper(&band.to);
            drawing.line(Line::Measure, [at(LEFT - 3.0, y), at(LEFT, y)]);
            if y >= free {
                let place = at(LEFT - 4.0, y + 1.0);
                drawing.words(place, Align::Right, Size::Plain, band.to.text.clone());
                free = y + Size::Plain.millimetres() * 1.3;
            }
        }
    }
}

/// Every whole step from the first on, up to the end.
fn steps(first: f64, step: Option<&Measure>, end: f64) -> impl Iterator<Item = f64> {
    let step = step.map(paper).filter(|step| *step > 0.5);
    let steps = step
        .into_iter()
        .flat_map(move |step| (0_u32..).map(move |count| first + step * f64::from(count)));
    steps.take_while(move |place| *place < end)
}

/// The number of a piece, large, and below it what it is, as far as there is room.
fn name(piece: &PlacedPiece, middle: Point, (width, length): (f64, f64), drawing: &mut Drawing) {
    let number = piece.number.to_string();
    let size = [Size::Large, Size::Plain, Size::Small]
        .into_iter()
        .find(|size| fits(&number, *size, width - 1.0) && size.millimetres() < length);
    let Some(size) = size else { return };
    let words = [
        piece.name.clone(),
        format!("{} x {}", piece.width.text, piece.length.text),
    ];
    let below = words
        .iter()
        .filter(|line| fits(line, Size::Small, width - 2.0));
    let room = if length > 16.0 { 2 } else { 0 };
    let below: Vec<&String> = below.take(room).collect();
    let baseline = middle.y + size.millimetres() * 0.36;
    drawing.words(at(middle.x, baseline), Align::Middle, size, number);
    for (line, row) in below.into_iter().zip([1.5, 2.7]) {
        let place = at(middle.x, baseline + Size::Small.millimetres() * row);
        drawing.words(place, Align::Middle, Size::Small, line.clone());
    }
}

/// Points to the top of the piece; of one that lies along the cloth, to the side its top lies on.
fn arrow(piece: &PlacedPiece, x: f64, (top, foot): (f64, f64), drawing: &mut Drawing) {
    let (from, to) = match (piece.railroaded, piece.turned) {
        (false, false) => (at(x, foot), at(x, top)),
        (false, true) => (at(x, top), at(x, foot)),
        (true, turned) => {
            let (y, reach) = ((top + foot) / 2.0, if turned { -2.5 } else { 2.5 });
            (at(x + reach, y), at(x - reach, y))
        }
    };
    drawing.line(Line::Top, [from, to]);
    let (across, down) = ((to.x - from.x) / 5.0, (to.y - from.y) / 5.0);
    let barb = |side: f64| {
        at(
            to.x - across * 1.6 + down * side,
            to.y - down * 1.6 + across * side,
        )
    };
    drawing.line(Line::Top, [barb(1.0), to, barb(-1.0)]);
}

/// A bar to read lengths by, and what the lines mean.
fn explain(drawing: &mut Drawing, cloth: &Cloth, top: f64) {
    let bar = 100.0;
    let (left, right, y) = (LEFT, LEFT + bar, top + 4.0);
    drawing.line(
        Line::Measure,
        [
            at(left, y - 1.5),
            at(left, y),
            at(right, y),
            at(right, y - 1.5),
        ],
    );
    drawing.words(
        at(left, y + 3.6),
        Align::Left,
        Size::Small,
        "1 : 10; this bar is 1000 mm (39 3/8 in) of cloth",
    );
    let lines = [
        Some((Line::Cut, "cut; an arrow points to the top of the piece")),
        cloth
            .placed
            .iter()
            .any(|piece| piece.fold_at.is_some())
            .then_some((Line::Fold, "fold of the doubled cloth")),
        cloth.repeat.is_some().then_some((
            Line::Repeat,
            "the print comes round; the held part lies on the lines across",
        )),
        Some((Line::Waste, "not used")),
        (cloth.usable_width != cloth.width)
            .then_some((Line::Selvage, "selvage, which no piece may use")),
    ];
    drawing.meanings(lines.into_iter().flatten(), at(left, y + 8.0));
}

#[cfg(test)]
mod tests {
    use super::layout;
    use crate::drawing::tests::packets;
    use crate::drawing::{Align, Drawing, Element, Line, Size};

    /// The drawings of every cloth of the examples, with the number of its pieces.
    fn drawings() -> Vec<(Drawing, usize)> {
        let cloths = packets().into_iter().flat_map(|packet| packet.cloths);
        cloths
            .map(|cloth| (layout(&cloth), cloth.placed.len()))
            .collect()
    }

    /// One more cut explains the line.
    #[test]
    fn every_piece_is_drawn_once_and_told_by_its_number() {
        for (drawing, pieces) in drawings() {
            let is_cut = |element: &&Element| {
                matches!(
                    element,
                    Element::Path {
                        line: Line::Cut,
                        ..
                    }
                )
            };
            assert_eq!(drawing.elements.iter().filter(is_cut).count(), pieces + 1);
            for number in 1..=pieces {
                let is_number = |element: &&Element| match element {
                    Element::Words { text, .. } => *text == number.to_string(),
                    Element::Path { .. } | Element::Text { .. } => false,
                };
                let told = drawing.elements.iter().filter(is_number).count();
                assert_eq!(told, 1, "{number} of {}", drawing.title);
            }
        }
    }

    #[test]
    fn the_places_of_cuts_do_not_lie_on_one_another() {
        for (drawing, _) in drawings() {
            let places = drawing.elements.iter().filter_map(|element| match element {
                Element::Words {
                    at,
                    align: Align::Right,
                    ..
                } => Some(at.y),
                _ => None,
            });
            let places: Vec<f64> = places.collect();
            for (one, next) in places.iter().zip(places.iter().skip(1)) {
                assert!(next - one >= Size::Plain.millimetres(), "{places:?}");
            }
        }
    }
}
