//! Drawing an outline at one width: every written step becomes points, and is held to the size.

use pelmet_measure::Length;

use crate::{Matter, Outline, OutlineMatter, OutlineStep, Point, Proportion};

/// The most points one drawn outline may have; a half outline gives twice as many corners.
pub const MAXIMUM_CORNERS: u32 = 2_000;

/// A point of a drawn outline, in the outline's own measure: across from its left edge or fold,
/// down from the heading line.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(crate) struct DrawnPoint {
    pub(crate) across: Length,
    pub(crate) down: Length,
    /// The step that drew it and the line to it.
    pub(crate) step: usize,
}

/// Draws an outline `width` wide and `drop` long. `None` where a mistake leaves it unfit to use.
pub(crate) fn draw(
    outline: &Outline,
    width: Length,
    drop: Length,
    matters: &mut Vec<Matter>,
) -> Option<Vec<DrawnPoint>> {
    let mut pen = Pen {
        size: Size {
            width,
            drop,
            half: outline.half,
        },
        points: vec![],
        matters: vec![],
    };
    let ended = pen.follow(&outline.steps).and_then(|()| pen.end());
    if let Err(matter) = ended {
        pen.matters.push(matter);
    }
    let sound = pen.matters.is_empty();
    if sound {
        pen.matters.extend(short_of_drop(&pen.points, drop));
    }
    matters.extend(pen.matters.into_iter().map(Matter::from));
    sound.then_some(pen.points)
}

/// The size an outline is drawn in.
#[derive(Copy, Clone)]
struct Size {
    width: Length,
    drop: Length,
    half: bool,
}

/// What draws: the line so far and what is wrong with it.
struct Pen {
    size: Size,
    points: Vec<DrawnPoint>,
    matters: Vec<OutlineMatter>,
}

impl Pen {
    /// Draws every step; an error is one that leaves nothing to go on from.
    fn follow(&mut self, steps: &[OutlineStep]) -> Result<(), OutlineMatter> {
        if steps.is_empty() {
            return Err(OutlineMatter::NoStart { step: None });
        }
        for (index, step) in steps.iter().enumerate() {
            match (step, self.points.last().copied()) {
                (OutlineStep::From { across, down }, None) => {
                    self.reach(index, self.point(*across, *down), true);
                }
                (OutlineStep::From { .. }, Some(_)) | (_, None) => {
                    return Err(OutlineMatter::NoStart { step: Some(index) });
                }
                (_, Some(here)) => self.draw_step(index, step, here),
            }
            if self.points.len() > usize::try_from(MAXIMUM_CORNERS).unwrap_or(usize::MAX) {
                return Err(OutlineMatter::TooManyCorners {
                    limit: MAXIMUM_CORNERS,
                });
            }
        }
        Ok(())
    }

    fn draw_step(&mut self, index: usize, step: &OutlineStep, here: DrawnPoint) {
        let width = self.size.width;
        match *step {
            OutlineStep::From { .. } => {}
            OutlineStep::To { across, down } => self.line(index, self.point(across, down), true),
            OutlineStep::By { across, down } => {
                let there = Point {
                    across: here.across + across.at(width),
                    down: here.down + down.at(width),
                };
                let own_fault = self.size.beyond(here.across, here.down).is_none();
                self.line(index, there, own_fault);
            }
            OutlineStep::Notch {
                across,
                down,
                width: mouth,
                depth,
                square,
            } => {
                let notch = Notch {
                    middle: self.point(across, down),
                    mouth: mouth.at(width),
                    depth: depth.at(width),
                    square,
                };
                self.notch(index, notch, here);
            }
            OutlineStep::UpToHeading => {
                if !here.down.is_zero() {
                    self.reach(
                        index,
                        Point {
                            across: here.across,
                            down: Length::ZERO,
                        },
                        false,
                    );
                }
            }
        }
    }

    fn point(&self, across: Proportion, down: Proportion) -> Point {
        Point {
            across: across.at(self.size.width),
            down: down.at(self.size.width),
        }
    }

    /// A line to a point that must not be where the pen is already.
    fn line(&mut self, step: usize, there: Point, own_fault: bool) {
        let here = self.points.last().map(|point| Point {
            across: point.across,
            down: point.down,
        });
        if here == Some(there) {
            self.matters.push(OutlineMatter::NoLength { step });
        } else {
            self.reach(step, there, own_fault);
        }
    }

    fn notch(&mut self, step: usize, notch: Notch, here: DrawnPoint) {
        if !notch.mouth.is_positive() || notch.depth.is_zero() {
            self.matters.push(OutlineMatter::NoLength { step });
            return;
        }
        let mut corners = notch.corners();
        if here.across > notch.middle.across {
            corners.reverse();
        }
        let mut own_fault = true;
        for corner in corners {
            if (here.across, here.down) == (corner.across, corner.down) {
                continue;
            }
            let before = self.matters.len();
            self.reach(step, corner, own_fault);
            own_fault &= self.matters.len() == before;
        }
    }

    /// Sets a point, and reports it where it is outside the size by a fault of its own.
    fn reach(&mut self, step: usize, there: Point, own_fault: bool) {
        let (across, down) = (there.across, there.down);
        self.points.push(DrawnPoint { across, down, step });
        if let (true, Some((amount, side, limit))) = (own_fault, self.size.beyond(across, down)) {
            self.matters.push(OutlineMatter::OutsideSize {
                step,
                amount,
                side,
                limit,
            });
        }
    }

    /// Whether the line begins and ends where the heading does.
    fn end(&mut self) -> Result<(), OutlineMatter> {
        let (Some(first), Some(last)) = (self.points.first(), self.points.last()) else {
            return Ok(());
        };
        let outside = self.size.beyond(last.across, last.down).is_some();
        if !self.size.half && first.across.is_positive() {
            let matter = OutlineMatter::HeadingShort {
                step: first.step,
                amount: first.across,
            };
            self.matters.push(matter);
        }
        let short_by = self.size.width - last.across;
        let (step, across, down) = (last.step, last.across, last.down);
        if outside || (down.is_zero() && short_by.is_zero()) {
            Ok(())
        } else if down.is_zero() {
            Err(OutlineMatter::HeadingShort {
                step,
                amount: short_by,
            })
        } else {
            Err(OutlineMatter::NotClosed { step, across, down })
        }
    }
}

impl Size {
    /// By how much, on which side and beyond which limit a point is outside.
    fn beyond(self, across: Length, down: Length) -> Option<(Length, &'static str, Length)> {
        let inner = if self.half {
            "across the fold"
        } else {
            "past the edge"
        };
        [
            (down - self.drop, "below the drop", self.drop),
            (-down, "above the heading line", Length::ZERO),
            (across - self.width, "past the edge", self.width),
            (-across, inner, Length::ZERO),
        ]
        .into_iter()
        .find(|(amount, ..)| amount.is_positive())
    }
}

/// A notch worked out at one width.
#[derive(Copy, Clone)]
struct Notch {
    middle: Point,
    mouth: Length,
    depth: Length,
    square: bool,
}

impl Notch {
    /// Its corners from left to right.
    fn corners(self) -> Vec<Point> {
        let left = self.middle.across - self.mouth.divided(2);
        let right = left + self.mouth;
        let (level, tip) = (self.middle.down, self.middle.down - self.depth);
        let inner = if self.square {
            vec![left, right]
        } else {
            vec![self.middle.across]
        };
        let tips = inner.into_iter().map(|across| Point { across, down: tip });
        let mut corners = vec![Point {
            across: left,
            down: level,
        }];
        corners.extend(tips);
        corners.push(Point {
            across: right,
            down: level,
        });
        corners
    }
}

fn short_of_drop(points: &[DrawnPoint], drop: Length) -> Option<OutlineMatter> {
    let lowest = points.iter().map(|point| point.down).max()?;
    let amount = drop - lowest;
    amount
        .is_positive()
        .then_some(OutlineMatter::ShortOfDrop { amount })
}
