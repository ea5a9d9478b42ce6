//! Cutting shapes off.

use super::point::PaperPoint;

/// What of a closed shape lies at a height or below it, by going round it edge by edge. (A shape that
/// is cut into parts comes back as one, its parts joined along the cut.)
pub(crate) fn below(shape: &[PaperPoint], height: f64) -> Vec<PaperPoint> {
    // One step of the clipping of Sutherland and Hodgman: a corner inside is kept, and an edge that crosses
    // adds the place where it does. Taken in order, these are the corners of a closed shape again.
    let ends = shape.iter().cycle().skip(1);
    let edges = shape.iter().zip(ends);
    edges
        .flat_map(|(from, to)| {
            let starts = (from.y >= height).then_some(*from);
            let crosses = (from.y >= height) != (to.y >= height);
            let crossing = crosses.then(|| crossing(*from, *to, height));
            starts.into_iter().chain(crossing)
        })
        .collect()
}

/// What of a closed shape lies at a height or above it.
pub(crate) fn above(shape: &[PaperPoint], height: f64) -> Vec<PaperPoint> {
    // Mirrored at the level of nought, what is above lies below.
    let over = |points: &[PaperPoint]| -> Vec<PaperPoint> {
        let turned = points.iter().map(|point| PaperPoint {
            y: -point.y,
            ..*point
        });
        turned.collect()
    };
    over(&below(&over(shape), -height))
}

/// Where a side meets a height between its ends.
pub(crate) fn crossing(from: PaperPoint, to: PaperPoint, height: f64) -> PaperPoint {
    let part = (height - from.y) / (to.y - from.y);
    PaperPoint {
        x: from.x + (to.x - from.x) * part,
        y: height,
    }
}

#[cfg(test)]
mod tests {
    use super::below;
    use crate::drawing::point::{PaperPoint, at, rectangle};

    #[test]
    fn a_rectangle_is_cut_off_level() {
        let cut = below(&rectangle(at(0.0, 0.0), at(4.0, 10.0)), 3.0);
        let kept = [at(4.0, 3.0), at(4.0, 10.0), at(0.0, 10.0), at(0.0, 3.0)];
        assert_eq!(cut, kept);
    }

    #[test]
    fn what_lies_wholly_on_one_side_is_kept_or_gone() {
        let shape = rectangle(at(0.0, 0.0), at(4.0, 10.0));
        assert_eq!(below(&shape, 0.0), shape);
        assert_eq!(below(&shape, 11.0), Vec::<PaperPoint>::new());
    }

    #[test]
    fn a_slanting_edge_is_cut_in_proportion() {
        let triangle = [at(0.0, 0.0), at(8.0, 4.0), at(0.0, 4.0)];
        assert_eq!(below(&triangle, 1.0).first(), Some(&at(2.0, 1.0)));
    }
}
