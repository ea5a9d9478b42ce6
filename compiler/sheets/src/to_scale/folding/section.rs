//! The folded panel seen on its edge, as it lies on a table, its face up.

use pelmet_model::PleatMake;
use pelmet_packet::{MarkKind, Panel, Pleat, Run};

use super::lying::{LyingPart, LyingStretch};
use super::row::StripRow;
use crate::drawing::{PaperPoint, at};

/// How far a crease is round, on the paper.
const CREASE: f64 = 0.7;
/// On so long a way, on the paper, a layer climbs on what lies beneath it.
const CLIMB: f64 = 1.2;
/// How wide and how high, on the paper, cloth that is drawn up stands.
const WAVE: f64 = 2.4;
const STANDS: f64 = 5.0;

/// How a section is put on the paper.
pub(crate) struct SectionPlace {
    /// The finished position at its left end, in millimetres of cloth, and where that is on the paper.
    pub(crate) finished: f64,
    pub(crate) left: f64,
    /// The lowest layer.
    pub(crate) base: f64,
    /// Millimetres of cloth in one of the drawing.
    pub(crate) ratio: f64,
    /// From one layer to the next, on the paper; cloth itself is too thin to be seen.
    pub(crate) layer: f64,
}

impl SectionPlace {
    pub(crate) fn x(&self, finished: f64) -> f64 {
        self.left + (finished - self.finished) / self.ratio
    }

    fn y(&self, beneath: u32) -> f64 {
        self.base - f64::from(beneath) * self.layer
    }
}

/// How high a section stands over its lowest layer.
pub(crate) fn height(panel: &Panel, layer: f64) -> f64 {
    let stands = panel.stretches.iter().any(|stretch| stretch.drawn_up);
    let layers = f64::from(panel.thickest.saturating_sub(1)) * layer;
    layers.max(if stands { STANDS } else { 0.0 })
}

/// The line of the cloth from the left end of a row to its right end.
pub(crate) fn line(
    panel: &Panel,
    lying: &[LyingStretch<'_>],
    row: StripRow,
    paper: &SectionPlace,
) -> Vec<PaperPoint> {
    let mut line: Vec<PaperPoint> = Vec::new();
    // One shape stands for all stretches that one pleat draws up.
    let drawn_up = |it: &LyingStretch<'_>| it.stretch.drawn_up.then(|| pleat(panel, it));
    for together in lying.chunk_by(|one, next| {
        let pleat = drawn_up(one);
        pleat.is_some() && pleat == drawn_up(next)
    }) {
        let Some((first, last)) = together.first().zip(together.last()) else {
            continue;
        };
        let Run { from, to } = &first.stretch.flat;
        let Some(clipped) = row.clip((from.mm, to.mm)) else {
            continue;
        };
        let points = if first.stretch.drawn_up {
            let (from, to) = (&first.stretch.finished.from, &last.stretch.finished.to);
            standing(
                pleat(panel, first),
                panel,
                (paper.x(from.mm), paper.x(to.mm)),
                paper.base,
            )
        } else {
            flat(first, clipped, paper)
        };
        fold(&mut line, points, first.stretch.face_up);
    }
    line
}

/// Goes on with the points of the next stretch, which shows its face or not, round a crease that
/// reaches as far as the cloth is folded.
fn fold(line: &mut Vec<PaperPoint>, mut next: Vec<PaperPoint>, next_face_up: bool) {
    let inward = if next_face_up { CREASE } else { -CREASE };
    if let (Some(last), Some(first)) = (line.last_mut(), next.first_mut())
        && (last.y - first.y).abs() > 0.01
    {
        let (x, from, to) = (last.x, last.y, first.y);
        last.x += inward;
        first.x += inward;
        let round = [(0.15, 0.3), (0.5, 0.0), (0.85, 0.3)];
        line.extend(round.map(|(part, short)| at(x + inward * short, from + (to - from) * part)));
    }
    line.extend(next);
}

/// The pleat that a stretch is part of.
fn pleat<'a>(panel: &'a Panel, it: &LyingStretch<'_>) -> Option<&'a Pleat> {
    let flat = &it.stretch.flat;
    let middle = (flat.from.mm + flat.to.mm) / 2.0;
    let mut pleats = panel.pleats.iter();
    pleats.find(|pleat| (pleat.flat.from.mm..=pleat.flat.to.mm).contains(&middle))
}

/// A stretch that lies flat, in the order of the cloth, as much of it as lies in a row.
fn flat(it: &LyingStretch<'_>, (from, to): (f64, f64), paper: &SectionPlace) -> Vec<PaperPoint> {
    let (one, other) = (it.finished(from), it.finished(to));
    let (left, right) = (one.min(other), one.max(other));
    let parts = it
        .parts
        .iter()
        .filter(|part| part.from < right && part.to > left);
    let parts: Vec<LyingPart> = parts
        .map(|part| LyingPart {
            from: paper.x(part.from.max(left)),
            to: paper.x(part.to.min(right)),
            ..*part
        })
        .collect();
    let mut points: Vec<PaperPoint> = Vec::new();
    points.extend(
        parts
            .first()
            .map(|first| at(first.from, paper.y(first.beneath))),
    );
    for (part, next) in parts.iter().zip(parts.iter().skip(1)) {
        points.extend(climb(part, next, paper));
    }
    points.extend(parts.last().map(|last| at(last.to, paper.y(last.beneath))));
    if one > other {
        points.reverse();
    }
    points
}

/// The way from one part up or down to the next, clear of the crease of what lies beneath: it is on
/// the side of the lower part.
fn climb(part: &LyingPart, next: &LyingPart, paper: &SectionPlace) -> [PaperPoint; 2] {
    let (low, high) = (paper.y(part.beneath), paper.y(next.beneath));
    let out = |part: &LyingPart, out: f64| out.min(part.width() / 2.0);
    if part.beneath < next.beneath {
        let x = |by| part.to - out(part, by);
        [at(x(CREASE + CLIMB), low), at(x(CREASE), high)]
    } else {
        let x = |by| next.from + out(next, by);
        [at(x(CREASE), low), at(x(CREASE + CLIMB), high)]
    }
}

/// Cloth that is drawn up: fingers, a cup or a tube, or waves.
fn standing(
    pleat: Option<&Pleat>,
    panel: &Panel,
    (from, to): (f64, f64),
    base: f64,
) -> Vec<PaperPoint> {
    let count = waves(pleat, panel, to - from);
    let wide = (to - from).max(f64::from(count) * WAVE / 2.0);
    let (left, step) = ((from + to - wide) / 2.0, wide / f64::from(count));
    let waves = (0..count).flat_map(|wave| {
        let middle = left + step * (f64::from(wave) + 0.5);
        let up = |out: f64, part: f64| at(middle + step * out, base - STANDS * part);
        [
            up(-0.45, 0.12),
            up(-0.45, 0.7),
            up(-0.3, 0.92),
            up(0.0, 1.0),
            up(0.3, 0.92),
            up(0.45, 0.7),
            up(0.45, 0.12),
        ]
    });
    let ends = |x: f64| std::iter::once(at(x, base));
    ends(from).chain(waves).chain(ends(to)).collect()
}

/// How many waves to draw on so much paper: one for each finger of a pinch pleat, one for a cup or a
/// tube.
fn waves(pleat: Option<&Pleat>, panel: &Panel, width: f64) -> u32 {
    let Some(pleat) = pleat else { return 1 };
    match pleat.kind.make() {
        PleatMake::Drawn => {
            let waves = (1..).take_while(|count| f64::from(*count) * WAVE < width);
            waves.last().unwrap_or(1)
        }
        PleatMake::Stitched { fingered: true } => {
            let run = pleat.flat.from.mm..=pleat.flat.to.mm;
            let fingers = panel
                .marks
                .iter()
                .filter(|mark| mark.kind == MarkKind::Finger);
            let places = fingers.filter_map(|mark| mark.from_left.as_ref());
            let count = places.filter(|place| run.contains(&place.mm)).count();
            u32::try_from(count).unwrap_or(1).max(1)
        }
        // A cup or a tube; no stretch of a folded pleat is drawn up.
        PleatMake::Folded(_) | PleatMake::Stitched { fingered: false } => 1,
    }
}
