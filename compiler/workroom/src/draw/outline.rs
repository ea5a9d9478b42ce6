//! Drawing an outline at one width: every written step becomes points, and is held to the size.

use pelmet_measure::Length;
use pelmet_model::{
    ArcOrder, Matter, Outline, OutlineLimit, OutlineMatter, OutlineStep, Point, Proportion,
    ScallopNumber,
};

use crate::draw::curve::{ArcBy, Bend, arc, cubic};
use crate::draw::scallops::Scallops;

/// The most points one drawn outline may have; a half outline gives twice as many corners.
pub const MAXIMUM_CORNERS: u32 = 2_000;

/// The most points all the curves of one drawn outline may need.
pub const MAXIMUM_CURVE_POINTS: u32 = 10_000;

/// A point of a curve so near to the width or drop lies on it: more is rounding.
const CURVE_ROUNDING: Length = Length::from_nanometres(10);

/// A point of a drawn outline, in the outline's own measure: across from its left edge or fold,
/// down from the heading line.
#[derive(Clone, PartialEq, Debug)]
pub(crate) struct DrawnPoint {
    pub(crate) across: Length,
    pub(crate) down: Length,
    /// The step that drew it and the line to it.
    pub(crate) step: usize,
    /// How the line to it curves; `None` where it is straight.
    pub(crate) bend: Option<Bend>,
    /// The name the maker gave it.
    pub(crate) name: Option<String>,
}

impl DrawnPoint {
    /// Where it is.
    pub(crate) fn at(&self) -> Point {
        Point {
            across: self.across,
            down: self.down,
        }
    }
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
    pen.name(outline);
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
            match (step, self.points.last().map(DrawnPoint::at)) {
                (OutlineStep::From { across, down }, None) => {
                    self.reach(index, self.point(*across, *down), true);
                }
                (OutlineStep::From { .. }, Some(_)) | (_, None) => {
                    return Err(OutlineMatter::NoStart { step: Some(index) });
                }
                (_, Some(here)) => self.draw_step(index, step, here),
            }
            self.within_limits()?;
        }
        Ok(())
    }

    fn within_limits(&self) -> Result<(), OutlineMatter> {
        let bends = self.points.iter().filter_map(|point| point.bend.as_ref());
        let on_curves = bends.map(|bend| bend.between.len()).sum();
        for (count, limit) in [
            (self.points.len(), MAXIMUM_CORNERS),
            (on_curves, MAXIMUM_CURVE_POINTS),
        ] {
            if count > usize::try_from(limit).unwrap_or(usize::MAX) {
                return Err(OutlineMatter::TooManyCorners { limit });
            }
        }
        Ok(())
    }

    /// Gives the points their names.
    fn name(&mut self, outline: &Outline) {
        for (step, name) in &outline.names {
            let named = self.points.iter_mut().rfind(|point| point.step == *step);
            if let Some(point) = named {
                point.name = Some(name.clone());
            }
        }
    }

    fn draw_step(&mut self, index: usize, step: &OutlineStep, here: Point) {
        let width = self.size.width;
        match *step {
            OutlineStep::From { .. } => {}
            OutlineStep::To { across, down } => self.line(index, self.point(across, down), true),
            OutlineStep::By { across, down } => {
                let by = self.point(across, down);
                let there = Point {
                    across: here.across + by.across,
                    down: here.down + by.down,
                };
                let own_fault = self.size.beyond(here.across, here.down).is_none();
                self.line(index, there, own_fault);
            }
            OutlineStep::ArcTo {
                across,
                down,
                arc: order,
            } => self.arc(index, (here, self.point(across, down)), self.arc_by(order)),
            OutlineStep::CurveTo {
                across,
                down,
                first,
                second,
            } => {
                let toward = (self.point(first.0, first.1), self.point(second.0, second.1));
                self.cubic(index, (here, self.point(across, down)), toward);
            }
            OutlineStep::Scallops {
                across,
                down,
                number,
                depth,
                outward,
            } => {
                let ends = (here, self.point(across, down));
                self.scallops(index, ends, number, (depth.at(width), outward));
            }
            OutlineStep::Notch {
                across,
                down,
                width: mouth,
                depth,
                square,
            } => {
                let (middle, mouth) = (self.point(across, down), mouth.at(width));
                let depth = depth.at(width);
                self.notch(
                    index,
                    Notch {
                        middle,
                        mouth,
                        depth,
                        square,
                    },
                    here,
                );
            }
            OutlineStep::UpToHeading => self.up_to_heading(index, here),
        }
    }

    fn up_to_heading(&mut self, step: usize, here: Point) {
        let there = Point {
            down: Length::ZERO,
            ..here
        };
        if here != there {
            self.reach(step, there, false);
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
        let here = self.points.last().map(DrawnPoint::at);
        if here == Some(there) {
            self.matters.push(OutlineMatter::NoLength { step });
        } else {
            self.reach(step, there, own_fault);
        }
    }

    fn arc_by(&self, order: ArcOrder) -> ArcBy {
        let width = self.size.width;
        match order {
            ArcOrder::Through { across, down } => ArcBy::Through(self.point(across, down)),
            ArcOrder::Bulge { bulge, outward } => {
                let bulge = bulge.at(width);
                ArcBy::Bulge(if outward { bulge } else { -bulge })
            }
            ArcOrder::Radius { radius, outward } => ArcBy::Radius(radius.at(width), outward),
            ArcOrder::StartingLevel => ArcBy::StartingLevel,
            ArcOrder::EndingLevel => ArcBy::EndingLevel,
        }
    }

    fn arc(&mut self, step: usize, (here, there): (Point, Point), by: ArcBy) {
        if here == there {
            self.matters.push(OutlineMatter::NoLength { step });
            return;
        }
        match arc(here, there, by) {
            Ok(bend) => self.curve(step, there, bend),
            Err(fault) => {
                self.matters.push(OutlineMatter::NoArc { step, fault });
                self.go_to(step, there);
            }
        }
    }

    fn cubic(&mut self, step: usize, (here, there): (Point, Point), toward: (Point, Point)) {
        match cubic(here, toward, there).filter(|_| here != there) {
            Some(bend) => self.curve(step, there, Some(bend)),
            None => self.matters.push(OutlineMatter::NoLength { step }),
        }
    }

    /// One arc after another. A mistake in one of them is told once, and the pen goes on from where
    /// the last should end.
    fn scallops(
        &mut self,
        step: usize,
        (here, there): (Point, Point),
        number: ScallopNumber,
        (depth, outward): (Length, bool),
    ) {
        let scallops = Scallops::new((here, there), number, self.size.width);
        let Some(scallops) = scallops.filter(|_| depth.is_positive()) else {
            self.matters.push(OutlineMatter::NoLength { step });
            self.go_to(step, there);
            return;
        };
        let bulge = if outward { depth } else { -depth };
        let before = self.matters.len();
        let mut here = here;
        for cusp in scallops.cusps() {
            self.arc(step, (here, cusp), ArcBy::Bulge(bulge));
            if self.within_limits().is_err() {
                return;
            }
            if self.matters.len() > before {
                self.go_to(step, there);
                return;
            }
            here = cusp;
        }
    }

    /// Sets a point without looking at it, after a mistake.
    fn go_to(&mut self, step: usize, there: Point) {
        self.points.push(DrawnPoint {
            across: there.across,
            down: there.down,
            step,
            bend: None,
            name: None,
        });
    }

    /// A curve to a point. Where its end is inside the size, all of it must be.
    fn curve(&mut self, step: usize, there: Point, bend: Option<Bend>) {
        let size = self.size;
        let bend = bend.map(|bend| bend.with_points(|point| size.without_rounding(point)));
        let before = self.matters.len();
        self.reach(step, there, true);
        let between = bend.iter().flat_map(|bend| &bend.between);
        let farthest = between
            .filter_map(|point| size.beyond(point.across, point.down))
            .max();
        if let (Some((amount, beyond, limit)), true) = (farthest, self.matters.len() == before) {
            self.matters.push(OutlineMatter::OutsideSize {
                step,
                amount,
                beyond,
                limit,
            });
        }
        if let Some(last) = self.points.last_mut() {
            last.bend = bend;
        }
    }

    fn notch(&mut self, step: usize, notch: Notch, here: Point) {
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
        self.points.push(DrawnPoint {
            across,
            down,
            step,
            bend: None,
            name: None,
        });
        if let (true, Some((amount, beyond, limit))) = (own_fault, self.size.beyond(across, down)) {
            self.matters.push(OutlineMatter::OutsideSize {
                step,
                amount,
                beyond,
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
                width: self.size.width,
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
                width: self.size.width,
            })
        } else {
            Err(OutlineMatter::NotClosed { step, across, down })
        }
    }
}

impl Size {
    /// The point of a curve, on the edge of the size where only rounding keeps it off.
    fn without_rounding(self, point: Point) -> Point {
        let snapped = |length: Length, limit: Length| {
            let near = (length - limit).abs() <= CURVE_ROUNDING;
            if near { limit } else { length }
        };
        Point {
            across: snapped(snapped(point.across, self.width), Length::ZERO),
            down: snapped(snapped(point.down, self.drop), Length::ZERO),
        }
    }

    /// By how much, beyond which limit and at what length that is, a point is outside.
    fn beyond(self, across: Length, down: Length) -> Option<(Length, OutlineLimit, Length)> {
        let inner = if self.half {
            OutlineLimit::Fold
        } else {
            OutlineLimit::Edge
        };
        [
            (down - self.drop, OutlineLimit::Drop, self.drop),
            (-down, OutlineLimit::HeadingLine, Length::ZERO),
            (across - self.width, OutlineLimit::Edge, self.width),
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
    let on_curves = points.iter().filter_map(|point| point.bend.as_ref());
    let on_curves = on_curves.flat_map(|bend| &bend.between).map(|on| on.down);
    let lowest = points
        .iter()
        .map(|point| point.down)
        .chain(on_curves)
        .max()?;
    let amount = drop - lowest;
    amount
        .is_positive()
        .then_some(OutlineMatter::ShortOfDrop { amount })
}
