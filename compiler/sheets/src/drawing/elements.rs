//! A drawing as a list of what is drawn, and how it is filled.

use super::hatch::hatch;
use super::lettering::Lettering;
use super::line_kind::LineKind;
use super::looks::look;
use super::point::{PaperPoint, at, rectangle};
use super::text_size::{Align, TextSize};

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
        line: LineKind,
        points: Vec<PaperPoint>,
        /// Whether it comes back to its first point.
        closed: bool,
    },
    /// Words on one line, kept clear of the lines behind them.
    Words {
        at: PaperPoint,
        align: Align,
        size: TextSize,
        text: String,
    },
    /// A line of a text set on paper, from its left end.
    Text {
        at: PaperPoint,
        lettering: Lettering,
        text: String,
    },
}

impl Element {
    /// Whether it is drawn with a line that means this.
    pub(crate) fn is_of(&self, meaning: LineKind) -> bool {
        matches!(self, Self::Path { line, .. } if *line == meaning)
    }

    /// The same, elsewhere on the paper.
    pub(crate) fn moved(self, by: PaperPoint) -> Self {
        let moved = |point: PaperPoint| at(point.x + by.x, point.y + by.y);
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

impl Drawing {
    /// Whether anything is drawn with a line that means this.
    pub(crate) fn has(&self, meaning: LineKind) -> bool {
        self.elements.iter().any(|element| element.is_of(meaning))
    }

    /// Draws an open line from point to point.
    pub(crate) fn line(&mut self, line: LineKind, points: impl IntoIterator<Item = PaperPoint>) {
        self.path(line, points, false);
    }

    /// Draws a line that comes back to its first point, with the area it encloses.
    pub(crate) fn shape(&mut self, line: LineKind, points: impl IntoIterator<Item = PaperPoint>) {
        self.path(line, points, true);
    }

    /// Writes words on one line from, around or up to a place, their foot at its height.
    pub(crate) fn words(
        &mut self,
        at: PaperPoint,
        align: Align,
        size: TextSize,
        text: impl Into<String>,
    ) {
        let text = text.into();
        self.elements.push(Element::Words {
            at,
            align,
            size,
            text,
        });
    }

    /// Words from a place to the right, as many as there is room for on the paper.
    pub(crate) fn words_on_paper(&mut self, at: PaperPoint, size: TextSize, text: &str) {
        let lettering = Lettering::plain(size.millimetres());
        let text = lettering.shortened(text, self.width - at.x);
        self.words(at, Align::Left, size, text);
    }

    /// What the lines mean that are drawn so far, as [`Drawing::meanings`].
    pub(crate) fn meanings_of(
        &mut self,
        meanings: &[(LineKind, &'static str)],
        first: PaperPoint,
    ) -> f64 {
        let drawn = |(line, _): &&(LineKind, &str)| self.has(*line);
        let drawn: Vec<(LineKind, &'static str)> = meanings.iter().filter(drawn).copied().collect();
        self.meanings(drawn, first)
    }

    /// What lines mean, each with a sample, row below row; gives where the rows end.
    pub(crate) fn meanings(
        &mut self,
        meanings: impl IntoIterator<Item = (LineKind, &'static str)>,
        first: PaperPoint,
    ) -> f64 {
        let mut y = first.y;
        for (line, meaning) in meanings {
            self.sample(line, at(first.x, y - 2.0), at(first.x + 10.0, y));
            self.words(at(first.x + 13.0, y), Align::Left, TextSize::Small, meaning);
            y += TextSize::Small.millimetres() * 1.6;
        }
        y
    }

    /// A sample of a line within a rectangle, by its left upper and right lower corner.
    fn sample(&mut self, line: LineKind, near: PaperPoint, far: PaperPoint) {
        let y = near.y + 1.0;
        match line {
            LineKind::Flaw => {
                self.shape(line, rectangle(near, far));
                for stroke in hatch(near, far, 2.0) {
                    self.line(line, stroke);
                }
            }
            LineKind::Print => {
                let x = (near.x + far.x) / 2.0;
                self.line(line, [at(x - 2.0, y), at(x + 2.0, y)]);
                self.line(line, [at(x, y - 2.0), at(x, y + 2.0)]);
            }
            _ if look(line).fill.is_some() => self.shape(line, rectangle(near, far)),
            _ => {
                self.line(line, [at(near.x, y), at(far.x, y)]);
                if line == LineKind::Move {
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

    fn path(&mut self, line: LineKind, points: impl IntoIterator<Item = PaperPoint>, closed: bool) {
        let points = points.into_iter().collect();
        self.elements.push(Element::Path {
            line,
            points,
            closed,
        });
    }
}
