//! What is drawn of a piece at its true size, in millimetres from the edges it is measured from.

use pelmet_packet::MeasuredFrom;

use crate::drawing::{Align, LineKind, PaperPoint, TextSize, at};
use crate::true_size::outlines::{InnerLine, MOTIF, SharedOutline, cross, join_seams, points};

/// How far inside a corner its number stands.
const LABEL_INSIDE: f64 = 5.0;

/// The lines of a piece and the words at its corners and marks.
pub(super) struct TemplateLines {
    pub(super) drawn: Vec<(LineKind, Vec<PaperPoint>)>,
    /// Crosses at places, shown where a page is printed there anyway.
    pub(super) crosses: Vec<Vec<PaperPoint>>,
    pub(super) labels: Vec<TemplateWords>,
    /// The edge that lies on the fold of the cloth, from its upper to its lower end.
    pub(super) fold: Option<(PaperPoint, PaperPoint)>,
}

/// What is written of a place, on the page that it is printed for.
pub(super) struct TemplateWords {
    pub(super) of: PaperPoint,
    /// Where its words stand.
    pub(super) at: PaperPoint,
    pub(super) align: Align,
    pub(super) words: String,
}

impl TemplateLines {
    pub(super) fn of(outline: &SharedOutline<'_>) -> Self {
        let piece = outline.piece;
        let (cut, sewn) = (points(&piece.outline), points(&piece.sewn));
        let fold = match piece.outline_from {
            MeasuredFrom::LeftEdge => None,
            MeasuredFrom::Fold => cut.last().copied().zip(cut.first().copied()),
        };
        let across = |down: f64| [at(0.0, down), at(piece.draw_width.mm, down)].to_vec();
        let folded_at = piece.folded_at.iter().map(|fold| across(fold.mm));
        let folds = fold.iter().map(|(top, foot)| vec![*top, *foot]);
        let mut drawn = vec![
            (LineKind::CutEdge, ended(cut, fold.is_some())),
            (LineKind::Sewn, ended(sewn, fold.is_some())),
        ];
        drawn.extend(folds.chain(folded_at).map(|line| (LineKind::Fold, line)));
        let mut labels = corner_labels(outline);
        let seams = join_seams(piece);
        labels.extend(seams.iter().map(join_label));
        drawn.extend(
            seams
                .into_iter()
                .map(|seam| (LineKind::Sewn, seam.to_vec())),
        );
        let motifs = outline.motifs();
        let centres = motifs
            .iter()
            .map(|motif| at(motif.across.mm, motif.down.mm));
        let crosses = centres.clone().flat_map(cross);
        let crosses = crosses.map(|line| line.to_vec()).collect();
        labels.extend(centres.map(|centre| beside(centre, MOTIF)));
        Self {
            drawn,
            crosses,
            labels,
            fold,
        }
    }

    /// Every line without what it means.
    pub(super) fn all(&self) -> Vec<Vec<PaperPoint>> {
        self.drawn.iter().map(|(_, line)| line.clone()).collect()
    }
}

fn join_label([top, foot]: &[PaperPoint; 2]) -> TemplateWords {
    beside(
        at(top.x, (top.y + foot.y) / 2.0),
        InnerLine::JoinSeam.word(),
    )
}

/// Words at the right of a place.
fn beside(place: PaperPoint, words: &str) -> TemplateWords {
    TemplateWords {
        of: place,
        at: at(place.x + 2.0, place.y - 2.0),
        align: Align::Left,
        words: words.to_owned(),
    }
}

/// A line as it is drawn: back to its first point, or open where it ends at the fold.
fn ended(mut line: Vec<PaperPoint>, at_fold: bool) -> Vec<PaperPoint> {
    if !at_fold {
        line.extend(line.first().copied());
    }
    line
}

/// The corners of the sewn line that have a number, with what their allowance calls for.
fn corner_labels(outline: &SharedOutline<'_>) -> Vec<TemplateWords> {
    let sewn = &outline.piece.sewn;
    let all = points(sewn);
    let before = all.iter().cycle().skip(all.len().saturating_sub(1));
    let after = all.iter().cycle().skip(1);
    let corners = sewn.iter().zip(&all).zip(before.zip(after));
    corners
        .filter_map(|((point, corner), (before, after))| {
            let number = point.number.filter(|_| !point.on_curve)?;
            let (one, other) = (inward(*before, *corner), inward(*corner, *after));
            let inside = at(one.x + other.x, one.y + other.y);
            let length = inside.x.hypot(inside.y).max(f64::MIN_POSITIVE);
            let (x, y) = (inside.x / length, inside.y / length);
            Some(TemplateWords {
                of: *corner,
                at: at(
                    corner.x + x * LABEL_INSIDE,
                    corner.y + y * LABEL_INSIDE + TextSize::Plain.millimetres() / 3.0,
                ),
                align: away(x),
                words: format!("{number}{}", outline.called_for(number)),
            })
        })
        .collect()
}

/// How words stand from a place so that they go on in a direction.
fn away(across: f64) -> Align {
    if across > 0.3 {
        Align::Left
    } else if across < -0.3 {
        Align::Right
    } else {
        Align::Middle
    }
}

/// The direction into the piece from a side of its line, which runs down its left side first.
fn inward(from: PaperPoint, to: PaperPoint) -> PaperPoint {
    let (dx, dy) = (to.x - from.x, to.y - from.y);
    let length = dx.hypot(dy).max(f64::MIN_POSITIVE);
    at(dy / length, -dx / length)
}
