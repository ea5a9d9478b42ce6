//! Drawings, as a list of what is drawn: one list, whatever it is written as.
//!
//! Lengths are millimetres on the paper, from its left upper corner, x to the right and y down. What
//! a line means is said by its [`Line`]; how it looks is for the writer.

mod clip;
mod dimension;
mod elevation;
mod folding;
mod hatch;
mod inside;
mod labels;
mod layout;
mod lettering;
mod looks;
mod number;
mod outline;
mod scale;
mod svg;

pub(crate) use elevation::elevation;
pub(crate) use folding::folding;
pub(crate) use inside::inside;
pub(crate) use layout::layout;
pub(crate) use lettering::{Lettering, Run};
pub(crate) use looks::{CLEAR_OF_WORDS, Look, Stroke, look};
pub(crate) use outline::outline;
#[cfg(test)]
pub(crate) use scale::SCALES;
pub(crate) use scale::{PAGE_HEIGHT, PAGE_WIDTH, Scale};
pub(crate) use svg::{inline, style, svg};

use pelmet_lettering::Weight;

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
    /// Words on one line, kept clear of the lines behind them.
    Words {
        at: Point,
        align: Align,
        size: Size,
        text: String,
    },
    /// A line of a text set on paper, from its left end.
    Text {
        at: Point,
        lettering: Lettering,
        text: String,
    },
}

impl Element {
    /// Whether it is drawn with a line that means this.
    pub(crate) fn is_of(&self, meaning: Line) -> bool {
        matches!(self, Self::Path { line, .. } if *line == meaning)
    }
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
    /// A flaw, which no piece may use.
    Flaw,
    /// The woven edges, which no piece may use.
    Selvage,
    /// Where the shears go.
    Cut,
    /// The cloth of a piece of which only a part is seen.
    Piece,
    /// Where in a piece the part of the print lies that is held.
    Print,
    /// Where cloth is sewn; of a hem, its finished edge.
    Sewn,
    /// The middle of a panel or a piece.
    Centre,
    /// Where cloth is folded; where it matters which way, with its ridge toward whoever looks.
    Fold,
    /// Where cloth is folded with its ridge away from whoever looks.
    FoldAway,
    /// An area of cloth that something lies over.
    Hidden,
    /// An area of cloth that is turned over.
    Turned,
    /// Cloth seen on its edge.
    Edge,
    /// An arrow along which cloth is brought.
    Move,
    /// Cloth as it hangs, its face to the room.
    Face,
    /// Cloth turned over.
    Lining,
    /// The opening of the window.
    Opening,
    /// Where cloth is stitched together or drawn up.
    DrawnUp,
    /// The rod or board.
    Support,
    /// Where the print comes round.
    Repeat,
    /// A measure, its ends or a scale.
    Measure,
    /// An arrow that points to the top of a piece.
    Top,
    /// Between the rows of a table.
    Rule,
    /// Under a title or the head of a table.
    Underline,
    /// A box to tick.
    Box,
    /// Where the shears go, along a part of a piece.
    CutEdge,
    /// The edge of what a page shows.
    Frame,
    /// Where the edge of another page is laid.
    Join,
    /// Where paper is cut apart.
    Apart,
}

impl Line {
    /// Every kind of line.
    pub(crate) const ALL: &[Self] = &[
        Self::Waste,
        Self::Flaw,
        Self::Selvage,
        Self::Cut,
        Self::Piece,
        Self::Print,
        Self::Sewn,
        Self::Centre,
        Self::Fold,
        Self::FoldAway,
        Self::Hidden,
        Self::Turned,
        Self::Edge,
        Self::Move,
        Self::Face,
        Self::Lining,
        Self::Opening,
        Self::DrawnUp,
        Self::Support,
        Self::Repeat,
        Self::Measure,
        Self::Top,
        Self::Rule,
        Self::Underline,
        Self::Box,
        Self::CutEdge,
        Self::Frame,
        Self::Join,
        Self::Apart,
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

    /// Words from a place to the right, as many as there is room for on the paper.
    pub(crate) fn words_on_paper(&mut self, at: Point, size: Size, text: &str) {
        let lettering = Lettering::plain(size.millimetres());
        let text = lettering.shortened(text, self.width - at.x);
        self.words(at, Align::Left, size, text);
    }

    /// What the lines mean that are drawn so far, as [`Drawing::meanings`].
    pub(crate) fn meanings_of(&mut self, meanings: &[(Line, &'static str)], first: Point) -> f64 {
        let drawn = |(line, _): &&(Line, &str)| self.elements.iter().any(|it| it.is_of(*line));
        let drawn: Vec<(Line, &'static str)> = meanings.iter().filter(drawn).copied().collect();
        self.meanings(drawn, first)
    }

    /// What lines mean, each with a sample, row below row; gives where the rows end.
    pub(crate) fn meanings(
        &mut self,
        meanings: impl IntoIterator<Item = (Line, &'static str)>,
        first: Point,
    ) -> f64 {
        let mut y = first.y;
        for (line, meaning) in meanings {
            self.sample(line, at(first.x, y - 2.0), at(first.x + 10.0, y));
            self.words(at(first.x + 13.0, y), Align::Left, Size::Small, meaning);
            y += Size::Small.millimetres() * 1.6;
        }
        y
    }

    /// A sample of a line within a rectangle, by its left upper and right lower corner.
    fn sample(&mut self, line: Line, near: Point, far: Point) {
        let y = near.y + 1.0;
        match line {
            Line::Flaw => {
                self.shape(line, rectangle(near, far));
                for stroke in hatch::hatch(near, far, 2.0) {
                    self.line(line, stroke);
                }
            }
            Line::Print => {
                let x = (near.x + far.x) / 2.0;
                self.line(line, [at(x - 2.0, y), at(x + 2.0, y)]);
                self.line(line, [at(x, y - 2.0), at(x, y + 2.0)]);
            }
            _ if look(line).fill.is_some() => self.shape(line, rectangle(near, far)),
            _ => {
                self.line(line, [at(near.x, y), at(far.x, y)]);
                if line == Line::Move {
                    let barbs = [
                        at(far.x - 1.4, y - 0.8),
                        at(far.x, y),
                        at(far.x - 1.4, y + 0.8),
                    ];
                    self.line(line, barbs);
                }
            }
        }
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

/// Whether words of this size have room in a width.
pub(crate) fn fits(text: &str, size: Size, width: f64) -> bool {
    width_of(text, size) <= width
}

/// How wide words of this size are, in millimetres.
pub(crate) fn width_of(text: &str, size: Size) -> f64 {
    Weight::Plain.width(text) * size.millimetres()
}

impl Element {
    /// The same, elsewhere on the paper.
    pub(crate) fn moved(self, by: Point) -> Self {
        let moved = |point: Point| at(point.x + by.x, point.y + by.y);
        match self {
            Self::Path {
                line,
                points,
                closed,
            } => Self::Path {
                line,
                points: points.into_iter().map(moved).collect(),
                closed,
            },
            Self::Words {
                at,
                align,
                size,
                text,
            } => Self::Words {
                at: moved(at),
                align,
                size,
                text,
            },
            Self::Text {
                at,
                lettering,
                text,
            } => Self::Text {
                at: moved(at),
                lettering,
                text,
            },
        }
    }
}

#[cfg(test)]
pub(crate) mod tests {
    use pelmet_packet::Packet;

    use std::slice::from_ref;

    use super::{Align, Drawing, Element, Line, Point, Size, elevation, folding, layout, outline};

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
            let cloths: Vec<Drawing> = packet.cloths.iter().flat_map(layout).collect();
            let panels = || packet.windows.iter().flat_map(|window| &window.panels);
            let foldings: Vec<Drawing> = panels().flat_map(folding).collect();
            let pieces = panels().flat_map(|panel| panel.pieces.iter().map(move |it| (panel, it)));
            let outlines = pieces.filter_map(|(panel, it)| outline(panel, from_ref(it), false));
            [windows, cloths, foldings, outlines.collect()].concat()
        };
        packets().into_iter().flat_map(drawn).collect()
    }

    pub(crate) fn points(drawing: &Drawing) -> Vec<Point> {
        let points = drawing.elements.iter().flat_map(|element| match element {
            Element::Path { points, .. } => points.clone(),
            Element::Words { at, .. } | Element::Text { at, .. } => vec![*at],
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

    /// Measures and the arrow in a piece are told by the words beside them, and what is turned over only
    /// where it is seen.
    #[test]
    fn every_line_that_has_a_meaning_is_explained() {
        let plain = [Line::Measure, Line::Top, Line::Lining];
        for drawing in drawings() {
            let drawn = |line: &Line| drawing.elements.iter().any(|it| it.is_of(*line));
            let lines = Line::ALL
                .iter()
                .copied()
                .filter(|line| !plain.contains(line));
            for line in lines.filter(drawn) {
                assert!(
                    is_explained(line, &drawing),
                    "{line:?} in {}",
                    drawing.title
                );
            }
        }
    }

    /// Whether words stand beside a sample of a line.
    fn is_explained(line: Line, drawing: &Drawing) -> bool {
        let samples = drawing.elements.iter().filter_map(|element| match element {
            Element::Path {
                line: of, points, ..
            } if *of == line => points.first(),
            _ => None,
        });
        let mut samples = samples;
        samples.any(|sample| {
            drawing.elements.iter().any(|element| match element {
                Element::Words {
                    at,
                    align: Align::Left,
                    size: Size::Small,
                    ..
                } => (3.0..13.1).contains(&(at.x - sample.x)) && (at.y - sample.y).abs() < 2.5,
                _ => false,
            })
        })
    }
}
