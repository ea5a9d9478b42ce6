//! Drawings, as a list of what is drawn: one list, whatever it is written as.
//!
//! Lengths are millimetres on the paper, from its left upper corner, x to the right and y down. What
//! a line means is said by its [`Line`]; how it looks is for the writer.

mod clip;
mod elevation;
mod layout;
mod looks;
mod number;
mod svg;

pub(crate) use elevation::elevation;
pub(crate) use layout::layout;
pub(crate) use looks::{CLEAR_OF_WORDS, Look, Stroke, look};
pub(crate) use svg::{inline, style, svg};

use pelmet_lettering::Weight;
use pelmet_packet::packet::Measure;

/// How many millimetres of cloth one millimetre of a drawing shows.
pub(crate) const SCALE: f64 = 10.0;

/// A drawing on a paper of its own.
#[derive(Clone, PartialEq, Debug)]
pub(crate) struct Drawing {
    /// What it shows, in a few words.
    pub(crate) title: String,
    /// What it shows, for whoever cannot see it.
    pub(crate) description: String,
    pub(crate) width: f64,
    pub(crate) height: f64,
    /// What is drawn, what lies behind first.
    pub(crate) elements: Vec<Element>,
}

/// One thing drawn.
#[derive(Clone, PartialEq, Debug)]
pub(crate) enum Element {
    /// Straight lines from point to point.
    Path {
        line: Line,
        points: Vec<Point>,
        /// Whether it comes back to its first point.
        closed: bool,
    },
    /// Words on one line.
    Words {
        at: Point,
        align: Align,
        size: Size,
        text: String,
    },
}

/// A place on the paper.
#[derive(Copy, Clone, PartialEq, Debug)]
pub(crate) struct Point {
    pub(crate) x: f64,
    pub(crate) y: f64,
}

/// What a line means; the same in every drawing.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(crate) enum Line {
    /// An area of cloth that no piece uses.
    Waste,
    /// The woven edges, which no piece may use.
    Selvage,
    /// Where the shears go.
    Cut,
    /// Where cloth is folded.
    Fold,
    /// Cloth as it hangs, its face to the room.
    Face,
    /// Cloth turned over.
    Lining,
    /// The opening of the window.
    Opening,
    /// The rod or board.
    Support,
    /// Where the print comes round.
    Repeat,
    /// A measure, its ends or a scale.
    Measure,
    /// An arrow that points to the top of a piece.
    Top,
}

impl Line {
    /// Every kind of line.
    pub(crate) const ALL: [Self; 11] = [
        Self::Waste,
        Self::Selvage,
        Self::Cut,
        Self::Fold,
        Self::Face,
        Self::Lining,
        Self::Opening,
        Self::Support,
        Self::Repeat,
        Self::Measure,
        Self::Top,
    ];
}

/// Where words stand from their place.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(crate) enum Align {
    Left,
    Middle,
    Right,
}

/// How large words are.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(crate) enum Size {
    Small,
    Plain,
    Large,
}

impl Size {
    /// The height of a line of type, in millimetres.
    pub(crate) fn millimetres(self) -> f64 {
        match self {
            Self::Small => 2.6,
            Self::Plain => 3.2,
            Self::Large => 5.0,
        }
    }
}

impl Drawing {
    pub(crate) fn line(&mut self, line: Line, points: impl IntoIterator<Item = Point>) {
        self.path(line, points, false);
    }

    pub(crate) fn shape(&mut self, line: Line, points: impl IntoIterator<Item = Point>) {
        self.path(line, points, true);
    }

    pub(crate) fn words(&mut self, at: Point, align: Align, size: Size, text: impl Into<String>) {
        let text = text.into();
        self.elements.push(Element::Words {
            at,
            align,
            size,
            text,
        });
    }

    /// What lines mean, each with a sample, row below row; gives where the rows end.
    pub(crate) fn meanings(
        &mut self,
        meanings: impl IntoIterator<Item = (Line, &'static str)>,
        first: Point,
    ) -> f64 {
        let mut y = first.y;
        for (line, meaning) in meanings {
            let (from, to) = (at(first.x, y - 2.0), at(first.x + 10.0, y));
            match line {
                Line::Fold | Line::Repeat => {
                    self.line(line, [at(from.x, y - 1.0), at(to.x, y - 1.0)]);
                }
                _ => self.shape(line, rectangle(from, to)),
            }
            self.words(at(first.x + 13.0, y), Align::Left, Size::Small, meaning);
            y += Size::Small.millimetres() * 1.6;
        }
        y
    }

    fn path(&mut self, line: Line, points: impl IntoIterator<Item = Point>, closed: bool) {
        let points = points.into_iter().collect();
        self.elements.push(Element::Path {
            line,
            points,
            closed,
        });
    }
}

/// A rectangle by two opposite corners.
pub(crate) fn rectangle(one: Point, other: Point) -> [Point; 4] {
    let at = |x, y| Point { x, y };
    [one, at(other.x, one.y), other, at(one.x, other.y)]
}

pub(crate) fn at(x: f64, y: f64) -> Point {
    Point { x, y }
}

/// A length of cloth on the paper.
pub(crate) fn paper(length: &Measure) -> f64 {
    length.mm / SCALE
}

/// Whether words of this size have room in a width.
pub(crate) fn fits(text: &str, size: Size, width: f64) -> bool {
    Weight::Plain.width(text) * size.millimetres() <= width
}

#[cfg(test)]
pub(crate) mod tests {
    use pelmet_packet::Packet;

    use super::{Drawing, Element, Line, Point, elevation, layout};

    /// The packets of the examples.
    pub(crate) fn packets() -> [Packet; 3] {
        [
            include_str!("../../../../examples/garden-room/garden-room.packet/packet.json"),
            include_str!("../../../../examples/hall/hall.packet/packet.json"),
            include_str!("../../../../examples/reading-room/reading-room.packet/packet.json"),
        ]
        .map(|text| serde_json::from_str(text).unwrap())
    }

    /// Every drawing of them.
    pub(crate) fn drawings() -> Vec<Drawing> {
        let drawn = |packet: Packet| {
            let windows: Vec<Drawing> = packet.windows.iter().map(elevation).collect();
            let cloths: Vec<Drawing> = packet.cloths.iter().map(layout).collect();
            [windows, cloths].concat()
        };
        packets().into_iter().flat_map(drawn).collect()
    }

    fn points(drawing: &Drawing) -> Vec<Point> {
        let points = drawing.elements.iter().flat_map(|element| match element {
            Element::Path { points, .. } => points.clone(),
            Element::Words { at, .. } => vec![*at],
        });
        points.collect()
    }

    #[test]
    fn everything_lies_on_the_paper() {
        for drawing in drawings() {
            for Point { x, y } in points(&drawing) {
                assert!(
                    (0.0..=drawing.width).contains(&x),
                    "{x} in {}",
                    drawing.title
                );
                assert!(
                    (0.0..=drawing.height).contains(&y),
                    "{y} in {}",
                    drawing.title
                );
            }
        }
    }

    /// What is turned over is explained only where it is seen, so it is not asked for here.
    #[test]
    fn every_line_that_has_a_meaning_is_explained() {
        for drawing in drawings() {
            for line in [Line::Face, Line::Opening, Line::Repeat, Line::Waste] {
                let of_line: Vec<f64> = drawing
                    .elements
                    .iter()
                    .filter_map(|element| match element {
                        Element::Path {
                            line: of, points, ..
                        } if *of == line => points.first().map(|point| point.y),
                        _ => None,
                    })
                    .collect();
                let below = drawing.height - 40.0;
                assert!(
                    of_line.is_empty() || of_line.iter().any(|y| *y > below),
                    "{line:?} in {}",
                    drawing.title
                );
            }
        }
    }
}
