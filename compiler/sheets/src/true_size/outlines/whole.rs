//! The lines of a whole piece, opened out where half of it is given, for who cuts open cloth by a
//! machine.

use pelmet_packet::{MeasuredFrom, OutlinePoint, Piece, Place};

use super::join_seams::join_seams;
use super::shared::SharedOutline;
use crate::drawing::{LineKind, PaperPoint, at};

/// A piece as it lies open, in millimetres from its left and its top cut edge.
pub(crate) struct WholePiece {
    pub(crate) cut: Vec<OutlineVertex>,
    pub(crate) sewn: Vec<OutlineVertex>,
    /// The numbered corners of the sewn line, on the half that is given.
    pub(crate) corners: Vec<(PaperPoint, String)>,
    /// The centre of every motif that one of its pieces carries.
    pub(crate) motifs: Vec<PaperPoint>,
    /// Straight lines inside, with what they mean.
    pub(crate) lines: Vec<(InnerLine, [PaperPoint; 2])>,
}

/// A point of a closed line, with the tangent of a quarter of the angle that the arc from it to the next
/// turns through: nought for a straight line, positive where it bends away from the cloth.
#[derive(Copy, Clone, PartialEq, Debug)]
pub(crate) struct OutlineVertex {
    pub(crate) at: PaperPoint,
    pub(crate) bulge: f64,
}

/// What a straight line inside a piece is.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(crate) enum InnerLine {
    /// The middle of a piece that is given by its half.
    Middle,
    /// Where a piece that lines itself is folded across.
    Fold,
    /// Where two widths of cloth are joined.
    JoinSeam,
}

impl InnerLine {
    /// What it is drawn with.
    pub(crate) fn kind(self) -> LineKind {
        match self {
            Self::Middle => LineKind::Centre,
            Self::Fold => LineKind::Fold,
            Self::JoinSeam => LineKind::Sewn,
        }
    }

    /// What is written beside it.
    pub(crate) fn word(self) -> &'static str {
        match self {
            Self::Middle => "centre",
            Self::Fold => "fold",
            Self::JoinSeam => "join seam",
        }
    }
}

/// Whether an arc is kept as such or as the points between which it may be drawn straight.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(crate) enum Arcs {
    Kept,
    AsPoints,
}

impl WholePiece {
    pub(crate) fn of(outline: &SharedOutline<'_>, arcs: Arcs) -> Self {
        let piece = outline.piece;
        Self {
            cut: opened(&vertices(&piece.outline, arcs), fold(piece)),
            sewn: opened(&vertices(&piece.sewn, arcs), fold(piece)),
            corners: corners(outline),
            motifs: motifs(outline),
            lines: lines(piece),
        }
    }
}

/// How far the fold lies from the left edge, for a piece of which half is given.
fn fold(piece: &Piece) -> Option<f64> {
    match piece.outline_from {
        MeasuredFrom::LeftEdge => None,
        MeasuredFrom::Fold => Some(piece.cut_width.mm - piece.draw_width.mm),
    }
}

/// The points of a line, those that an arc passes left out where arcs are kept.
fn vertices(line: &[OutlinePoint], arcs: Arcs) -> Vec<OutlineVertex> {
    let mut passed = 0_u32;
    let mut vertices = Vec::new();
    for point in line {
        if passed > 0 {
            passed = passed.saturating_sub(1);
            continue;
        }
        let arc = point.arc.as_ref().filter(|_| arcs == Arcs::Kept);
        passed = arc.map_or(0, |arc| arc.points.saturating_sub(1));
        vertices.push(OutlineVertex {
            at: at(point.at.across.mm, point.at.down.mm),
            bulge: arc.map_or(0.0, |arc| arc.bulge),
        });
    }
    vertices
}

/// The whole line. A half, which begins and ends at the fold, is followed by its mirror image.
fn opened(line: &[OutlineVertex], fold: Option<f64>) -> Vec<OutlineVertex> {
    let Some(fold) = fold else {
        return line.to_vec();
    };
    let moved = |vertex: OutlineVertex, from_fold: f64| OutlineVertex {
        at: at(fold + from_fold, vertex.at.y),
        ..vertex
    };
    let before_top = line.iter().take(line.len().saturating_sub(1));
    let half = before_top.map(|vertex| moved(*vertex, vertex.at.x));
    // Walked backward, an edge leads on from what was its end.
    let edges = line.iter().zip(line.iter().skip(1)).rev();
    let image = edges.map(|(start, end)| OutlineVertex {
        bulge: start.bulge,
        ..moved(*end, -end.at.x)
    });
    half.chain(image).collect()
}

fn corners(outline: &SharedOutline<'_>) -> Vec<(PaperPoint, String)> {
    let piece = outline.piece;
    let numbered = piece.sewn.iter().filter(|point| !point.on_curve);
    let corners = numbered.filter_map(|point| {
        let number = point.number?;
        let words = format!("{number}{}", outline.called_for(number));
        Some((place(&point.at, piece), words))
    });
    corners.collect()
}

fn motifs(outline: &SharedOutline<'_>) -> Vec<PaperPoint> {
    let motifs = outline.motifs().into_iter();
    motifs.map(|motif| place(motif, outline.piece)).collect()
}

/// A place on the half that is given, from the left edge.
fn place(place: &Place, piece: &Piece) -> PaperPoint {
    let left = fold(piece).unwrap_or(0.0);
    at(left + place.across.mm, place.down.mm)
}

/// The middle of a piece that is given by its half, the fold of one that lines itself, and the seams of
/// one that is joined.
fn lines(piece: &Piece) -> Vec<(InnerLine, [PaperPoint; 2])> {
    let (width, length) = (piece.cut_width.mm, piece.cut_length.mm);
    let ends = piece.outline.first().zip(piece.outline.last());
    let middle = fold(piece).zip(ends).map(|(x, (foot, top))| {
        (
            InnerLine::Middle,
            [at(x, top.at.down.mm), at(x, foot.at.down.mm)],
        )
    });
    let folded = piece.folded_at.as_ref().map(|fold| {
        let y = fold.mm.min(length);
        (InnerLine::Fold, [at(0.0, y), at(width, y)])
    });
    let seams = join_seams(piece).into_iter();
    let seams = seams.map(|seam| (InnerLine::JoinSeam, seam));
    middle.into_iter().chain(folded).chain(seams).collect()
}

#[cfg(test)]
mod tests {
    use super::{OutlineVertex, opened};
    use crate::drawing::at;

    fn vertex(x: f64, y: f64, bulge: f64) -> OutlineVertex {
        OutlineVertex {
            at: at(x, y),
            bulge,
        }
    }

    /// Half of a panel with a hollow beside its fold, and a corner at its side.
    #[test]
    fn a_half_is_followed_by_its_mirror_image() {
        let half = [
            vertex(0.0, 90.0, -0.25),
            vertex(30.0, 95.0, 0.0),
            vertex(50.0, 100.0, 0.5),
            vertex(50.0, 0.0, 0.0),
            vertex(0.0, 0.0, 0.0),
        ];
        let whole = [
            vertex(50.0, 90.0, -0.25),
            vertex(80.0, 95.0, 0.0),
            vertex(100.0, 100.0, 0.5),
            vertex(100.0, 0.0, 0.0),
            vertex(50.0, 0.0, 0.0),
            vertex(0.0, 0.0, 0.5),
            vertex(0.0, 100.0, 0.0),
            vertex(20.0, 95.0, -0.25),
        ];
        assert_eq!(opened(&half, Some(50.0)), whole);
        assert_eq!(opened(&half, None), half);
        assert_eq!(opened(&[], Some(50.0)), []);
    }
}
