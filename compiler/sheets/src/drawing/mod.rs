//! Drawings, as a list of what is drawn: one list, whatever it is written as.
//!
//! Lengths are millimetres on the paper, from its left upper corner, x to the right and y down. What
//! a line means is said by its [`Line`]; how it looks is for the writer.

mod layout;
mod number;
mod svg;

pub(crate) use layout::layout;
pub(crate) use svg::svg;

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
    /// Where the print comes round.
    Repeat,
    /// A measure, its ends or a scale.
    Measure,
    /// An arrow that points to the top of a piece.
    Top,
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
