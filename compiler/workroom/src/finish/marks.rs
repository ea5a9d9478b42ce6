//! Everything to be marked on a made-up panel, in working order.

use pelmet_measure::Length;
use pelmet_model::{
    BandMade, FastenerRun, HeadingWork, Held, MarkMade, Marked, PleatMade, Pleating, Point, Seam,
    Shape,
};

use crate::draw::curve::way;
use crate::finish::tape::TurningOpening;

/// What there is to mark on one panel.
pub(crate) struct Markings<'a> {
    pub(crate) pleating: &'a Pleating,
    pub(crate) shape: &'a Shape,
    /// The heading line below the made-up top edge.
    pub(crate) heading_line: Length,
    /// The other lines of the heading.
    pub(crate) heading_work: &'a [(HeadingWork, Length)],
    pub(crate) opening: Option<TurningOpening>,
    pub(crate) motif: Option<Point>,
    pub(crate) fasteners: &'a [FastenerRun],
    pub(crate) seams: &'a [Seam],
    pub(crate) bands: &'a [BandMade],
    /// Whether the face is folded up behind itself at its lower edge.
    pub(crate) folded_below: bool,
}

impl Markings<'_> {
    /// The marks: the heading and the outline first, then what is folded, then what is added.
    pub(crate) fn marks(&self) -> Vec<MarkMade> {
        let mut marks = self.heading_line();
        marks.extend(self.corners());
        marks.extend(self.curves());
        marks.extend(self.lower_fold());
        marks.extend(self.band_seams());
        marks.extend(self.turning_opening());
        marks.extend(self.folds());
        marks.extend(self.quarters());
        let motif = self
            .motif
            .map(|at| self.mark(Marked::MotifCentre, at.across, Some(at.down)));
        marks.extend(motif);
        marks.extend(self.fastener_lines());
        marks.extend(self.fastener_mates());
        let seams = self
            .seams
            .iter()
            .map(|seam| self.mark(Marked::JoinSeam, seam.at, None));
        marks.extend(seams);
        marks
    }

    fn mark(&self, what: Marked, across: Length, down: Option<Length>) -> MarkMade {
        MarkMade {
            what,
            across,
            from_centre: self.off_centre(across),
            down,
        }
    }

    fn off_centre(&self, across: Length) -> Length {
        across - self.pleating.flat.divided(2)
    }

    /// A heading line that is the top edge itself needs no mark.
    fn heading_line(&self) -> Vec<MarkMade> {
        if self.heading_line.is_zero() {
            return vec![];
        }
        let line = [(Marked::HeadingLine, self.heading_line)];
        let work = self.heading_work.iter();
        let work = work
            .filter(|(work, _)| *work != HeadingWork::FastenerMate)
            .map(|&(work, down)| (Marked::HeadingWork(work), down));
        line.into_iter()
            .chain(work)
            .map(|(kind, down)| self.mark(kind, Length::ZERO, Some(down)))
            .collect()
    }

    /// Where the mate of a strip goes, named after the strip itself.
    fn fastener_mates(&self) -> impl Iterator<Item = MarkMade> {
        let mates = self.heading_work.iter();
        mates
            .filter(|(work, _)| *work == HeadingWork::FastenerMate)
            .map(|&(work, down)| self.mark(Marked::HeadingWork(work), Length::ZERO, Some(down)))
    }

    fn corners(&self) -> impl Iterator<Item = MarkMade> {
        self.shape.corners.iter().zip(1..).map(|(corner, number)| {
            let kind = Marked::Corner {
                number,
                relief: corner.relief,
                name: corner.name.clone(),
            };
            self.mark(kind, corner.at.across, Some(corner.at.down))
        })
    }

    /// A curve is marked where it passes the middle of its length.
    fn curves(&self) -> impl Iterator<Item = MarkMade> {
        let last = self.shape.corners.len();
        let curves = self.shape.runs().zip(1_usize..);
        curves.filter_map(move |((edge, from, to), number)| {
            let curve = edge.curve.as_ref()?;
            let kind = Marked::Curve {
                from: number,
                to: if number == last {
                    1
                } else {
                    number.saturating_add(1)
                },
                clips: curve.clips,
                wedges: curve.wedges,
            };
            let middle = middle(from, &curve.between, to)?;
            Some(self.mark(kind, middle.across, Some(middle.down)))
        })
    }

    fn lower_fold(&self) -> Option<MarkMade> {
        let down = self.shape.bounds().1.down;
        let mark = || self.mark(Marked::LowerFold, Length::ZERO, Some(down));
        self.folded_below.then(mark)
    }

    /// Every corner of the line along which a band meets the face.
    fn band_seams(&self) -> impl Iterator<Item = MarkMade> {
        self.bands.iter().flat_map(move |band| {
            let kind = Marked::BandSeam { edge: band.edge };
            let corners = band.corners.iter();
            corners.map(move |at| self.mark(kind.clone(), at.across, Some(at.down)))
        })
    }

    fn turning_opening(&self) -> impl Iterator<Item = MarkMade> {
        let ends = self
            .opening
            .into_iter()
            .flat_map(|opening| [opening.from, opening.to]);
        ends.map(|end| self.mark(Marked::TurningOpening, end, Some(Length::ZERO)))
    }

    fn folds(&self) -> impl Iterator<Item = MarkMade> {
        self.pleating
            .pleats
            .iter()
            .zip(1..)
            .flat_map(move |(pleat, number)| {
                let stitching = self.stitching(pleat, number);
                let folds = pleat.folds.iter().map(move |fold| {
                    let kind = Marked::Fold {
                        pleat: number,
                        kind: pleat.kind,
                        depth: pleat.depth,
                        brought_to: fold.brought_to,
                        brought_to_from_centre: self.off_centre(fold.brought_to),
                        toward: fold.toward,
                    };
                    self.mark(kind, fold.crease, None)
                });
                stitching.into_iter().chain(folds)
            })
    }

    /// What holds a pleat: the pair of points that are stitched together and the fingers between
    /// them, or the ends and quarters of a gathered run.
    fn stitching(&self, pleat: &PleatMade, number: usize) -> Vec<MarkMade> {
        let leaves = pleat.face.unwrap_or_default();
        match pleat.held {
            Held::Pressed => vec![],
            Held::Stitched => {
                let kind = Marked::Pair {
                    pleat: number,
                    kind: pleat.kind,
                    depth: pleat.depth,
                    leaves,
                    other: pleat.to,
                    other_from_centre: self.off_centre(pleat.to),
                };
                let mut marks = vec![self.mark(kind, pleat.from, None)];
                let finger = |at: &Length| self.mark(Marked::Finger { pleat: number }, *at, None);
                marks.extend(pleat.fingers.iter().map(finger));
                marks
            }
            Held::Drawn => {
                let end = |at| {
                    let kind = Marked::GatherEnd {
                        pleat: number,
                        kind: pleat.kind,
                        drawn_to: leaves,
                    };
                    self.mark(kind, at, None)
                };
                let mut marks = vec![end(pleat.from)];
                marks.extend(self.quarters_between(pleat.from, pleat.to));
                marks.push(end(pleat.to));
                marks
            }
        }
    }

    fn quarters_between(&self, from: Length, to: Length) -> impl Iterator<Item = MarkMade> {
        let quarter = move |quarter| from + (to - from).portion(quarter, 4);
        (1..4).map(move |part| self.mark(Marked::Quarter, quarter(part), None))
    }

    /// A gathered panel is drawn up evenly between its quarters.
    fn quarters(&self) -> impl Iterator<Item = MarkMade> {
        let Pleating {
            flat,
            finished,
            ref pleats,
            ..
        } = *self.pleating;
        let gathered = pleats.is_empty() && finished < flat;
        let quarters = gathered.then(|| self.quarters_between(Length::ZERO, flat));
        quarters.into_iter().flatten()
    }

    fn fastener_lines(&self) -> impl Iterator<Item = MarkMade> {
        self.fasteners.iter().map(|fastener| {
            let kind = Marked::FastenerLine {
                name: fastener.name.clone(),
            };
            self.mark(kind, Length::ZERO, Some(fastener.down))
        })
    }
}

/// The point of a curve that is nearest to the middle of its length.
fn middle(from: Point, between: &[Point], to: Point) -> Option<Point> {
    let ends = between.iter().copied().chain([to]);
    let starts = std::iter::once(from).chain(between.iter().copied());
    let steps = starts.zip(ends).map(|(from, to)| way(from, to).hypot());
    let half = steps.clone().sum::<f64>() / 2.0;
    let reached = steps.scan(0.0, |sum, step| {
        *sum += step;
        Some(*sum)
    });
    let off = |reached: f64| (reached - half).abs();
    between
        .iter()
        .zip(reached)
        .min_by(|(_, one), (_, other)| off(*one).total_cmp(&off(*other)))
        .map(|(point, _)| *point)
}
