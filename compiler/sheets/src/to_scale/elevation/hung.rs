//! A panel in its place in the row.

use pelmet_packet::{BandSeam, FoldedLayer, FoldedPanel, Panel, Place, Run, SewnCorner, Stretch};

use crate::drawing::{Drawing, LineKind, PaperPoint, Scale, at, clip, inside};

/// How much of a panel the lines go down that show where it is drawn up.
const DRAWN_UP: f64 = 0.2;
/// Such lines stand no nearer to one another, on the paper, than this.
const NEAREST: f64 = 2.0;

/// Less than this, in millimetres of cloth, is no width.
const NO_WIDTH: f64 = 1e-6;

/// A panel where it hangs in the row, and the scale at which it is drawn.
pub(super) struct PanelInPlace<'a> {
    pub(super) panel: &'a Panel,
    /// The left end of its finished width, and the heading line, on the paper.
    pub(super) left: f64,
    pub(super) heading: f64,
    pub(super) scale: Scale,
}

impl PanelInPlace<'_> {
    pub(super) fn draw(&self, drawing: &mut Drawing) {
        match &self.panel.folded {
            Some(folded) => self.draw_folded(folded, drawing),
            None => self.draw_drawn_up(drawing),
        }
    }

    /// Layer upon layer from the back to the front.
    fn draw_folded(&self, folded: &FoldedPanel, drawing: &mut Drawing) {
        for layer in &folded.layers {
            let line = if layer.face_up {
                LineKind::Face
            } else {
                LineKind::Lining
            };
            for outline in &layer.outlines {
                let points = outline
                    .iter()
                    .map(|place| self.on_paper(place.across.mm, place));
                self.draw_seen(line, &points.collect::<Vec<PaperPoint>>(), drawing);
            }
            if layer.face_up {
                self.draw_seams_on(layer, drawing);
            }
        }
    }

    /// The seams of its bands, as far as they lie on one stretch.
    fn draw_seams_on(&self, layer: &FoldedLayer, drawing: &mut Drawing) {
        let number = usize::try_from(layer.stretch.saturating_sub(1)).unwrap_or(usize::MAX);
        let Some(stretch) = self.panel.stretches.get(number) else {
            return;
        };
        for seam in self.panel.bands.iter().flat_map(|band| &band.seams) {
            for run in runs(seam, &stretch.flat) {
                let points = run
                    .iter()
                    .map(|it| self.point(finished(it.x, stretch), it.y));
                let points: Vec<PaperPoint> = points.collect();
                if points.iter().all(|point| point.y >= self.heading) {
                    drawing.line(LineKind::Sewn, points);
                }
            }
        }
    }

    /// A panel whose pleats are stitched or gathered, as wide as it hangs and without its folds.
    fn draw_drawn_up(&self, drawing: &mut Drawing) {
        let panel = self.panel;
        let part = panel.finished_width.mm / panel.flat_width.mm.max(1.0);
        let points = panel.outline.iter().flat_map(corner_and_curve);
        let points = points.map(|place| self.on_paper(place.across.mm * part, place));
        self.draw_seen(
            LineKind::Face,
            &points.collect::<Vec<PaperPoint>>(),
            drawing,
        );
        for seam in panel.bands.iter().flat_map(|band| &band.seams) {
            let points: Vec<PaperPoint> = along(seam)
                .map(|place| self.on_paper(place.across.mm * part, place))
                .collect();
            drawing.line(LineKind::Sewn, points);
        }
        let foot = self.heading + self.scale.paper(&panel.drop) * DRAWN_UP;
        for x in self.drawn_up_at() {
            drawing.line(LineKind::DrawnUp, [at(x, self.heading), at(x, foot)]);
        }
    }

    /// Where cloth is stitched together or drawn up, on the paper.
    fn drawn_up_at(&self) -> Vec<f64> {
        let drawn_up = self
            .panel
            .stretches
            .iter()
            .filter(|stretch| stretch.drawn_up);
        let mut places: Vec<f64> = Vec::new();
        for stretch in drawn_up {
            let Run { from, to } = &stretch.finished;
            let (from, to) = (self.point(from.mm, 0.0).x, self.point(to.mm, 0.0).x);
            let between = (1_u32..).map(|step| from + f64::from(step) * NEAREST);
            let between = between.take_while(|x| *x < to - NEAREST / 2.0);
            for x in std::iter::once(from).chain(between).chain([to]) {
                if places.last().is_none_or(|last| x - last >= NEAREST / 2.0) {
                    places.push(x);
                }
            }
        }
        places
    }

    /// A shape as far as it hangs below the heading line.
    fn draw_seen(&self, line: LineKind, points: &[PaperPoint], drawing: &mut Drawing) {
        let seen = clip::below(points, self.heading);
        if !seen.is_empty() {
            drawing.shape(line, seen);
        }
    }

    fn on_paper(&self, finished: f64, place: &Place) -> PaperPoint {
        self.point(finished, place.down.mm)
    }

    /// A place by millimetres of cloth from the left end of the finished width and from the made-up top
    /// edge.
    fn point(&self, finished: f64, down: f64) -> PaperPoint {
        let down = down - self.panel.heading_depth.mm;
        at(
            self.left + finished / self.scale.ratio,
            self.heading + down / self.scale.ratio,
        )
    }
}

fn corner_and_curve(corner: &SewnCorner) -> impl Iterator<Item = &Place> {
    let curve = corner.curve.iter().flat_map(|curve| &curve.between);
    std::iter::once(&corner.at).chain(curve)
}

fn along(seam: &BandSeam) -> impl Iterator<Item = &Place> {
    let between = seam.between.iter();
    std::iter::once(&seam.from).chain(between).chain([&seam.to])
}

/// As much of a seam as lies on a stretch of the flat panel, run by run.
fn runs(seam: &BandSeam, stretch: &Run) -> Vec<Vec<PaperPoint>> {
    let points: Vec<PaperPoint> = along(seam)
        .map(|place| at(place.across.mm, place.down.mm))
        .collect();
    let (left, right) = (stretch.from.mm, stretch.to.mm);
    inside(
        &points,
        (at(left, f64::NEG_INFINITY), at(right, f64::INFINITY)),
    )
}

/// The finished position of a flat one on a stretch.
fn finished(flat: f64, stretch: &Stretch) -> f64 {
    let Run { from, to } = &stretch.flat;
    let part = (flat - from.mm) / (to.mm - from.mm).max(NO_WIDTH);
    let Run { from, to } = &stretch.finished;
    from.mm + (to.mm - from.mm) * part
}
