//! The seams of a piece that is joined from several widths of cloth.

use pelmet_packet::Piece;

use super::points::points;
use crate::drawing::{PaperPoint, at};

/// Every seam between two widths, from where it leaves the cutting line at the top to where it meets it
/// again for the last time, in millimetres from the left and the top cut edge.
pub(crate) fn join_seams(piece: &Piece) -> Vec<[PaperPoint; 2]> {
    let cut = points(&piece.outline);
    let seams = piece.joined.iter().flat_map(|joined| &joined.seams);
    let across = seams.map(|seam| seam.from_cut_edge.mm);
    across.filter_map(|across| upright(&cut, across)).collect()
}

/// The upright line across a shape, from its first to its last crossing.
fn upright(shape: &[PaperPoint], x: f64) -> Option<[PaperPoint; 2]> {
    let sides = shape.iter().zip(shape.iter().cycle().skip(1));
    let crossed = sides.filter(|(from, to)| (from.x < x) != (to.x < x));
    let heights =
        crossed.map(|(from, to)| from.y + (to.y - from.y) * (x - from.x) / (to.x - from.x));
    let (top, foot) = heights.fold((f64::INFINITY, f64::NEG_INFINITY), |(top, foot), height| {
        (top.min(height), foot.max(height))
    });
    (top < foot).then(|| [at(x, top), at(x, foot)])
}

#[cfg(test)]
mod tests {
    use super::upright;
    use crate::drawing::at;

    #[test]
    fn a_seam_runs_from_the_top_to_the_lower_edge() {
        let shape = [at(0.0, 0.0), at(0.0, 40.0), at(100.0, 60.0), at(100.0, 0.0)];
        assert_eq!(upright(&shape, 50.0), Some([at(50.0, 0.0), at(50.0, 50.0)]));
        assert_eq!(upright(&shape, 120.0), None);
    }
}
