//! Slanting lines over a rectangle, to tell it from what lies beside it in black and white.

use super::point::{PaperPoint, at};

/// Lines from edge to edge of a rectangle, given by its left upper and right lower corner, that rise to
/// the right and lie so far apart, measured along an edge.
pub(crate) fn hatch(
    near: PaperPoint,
    far: PaperPoint,
    apart: f64,
) -> impl Iterator<Item = [PaperPoint; 2]> {
    // On one line the sum of x and y is the same everywhere.
    let (first, last) = (near.x + near.y, far.x + far.y);
    let sums = (1_u32..).map(move |count| first + apart * f64::from(count));
    let line = move |sum: f64| {
        let (left, right) = (near.x.max(sum - far.y), far.x.min(sum - near.y));
        [at(left, sum - left), at(right, sum - right)]
    };
    sums.take_while(move |sum| *sum < last).map(line)
}

#[cfg(test)]
mod tests {
    use super::hatch;
    use crate::drawing::point::at;

    #[test]
    fn lines_run_from_edge_to_edge() {
        let lines: Vec<_> = hatch(at(1.0, 2.0), at(5.0, 4.0), 2.0).collect();
        let expected = [[at(1.0, 4.0), at(3.0, 2.0)], [at(3.0, 4.0), at(5.0, 2.0)]];
        assert_eq!(lines, expected);
    }
}
