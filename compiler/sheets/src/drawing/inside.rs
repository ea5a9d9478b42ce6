//! What of a line lies inside a rectangle.

use super::point::PaperPoint;

/// The parts of a line from point to point that lie inside an upright rectangle, by its left upper and
/// its right lower corner, in order.
pub(crate) fn inside(
    line: &[PaperPoint],
    (least, most): (PaperPoint, PaperPoint),
) -> Vec<Vec<PaperPoint>> {
    let mut parts: Vec<Vec<PaperPoint>> = Vec::new();
    for (from, to) in line.iter().zip(line.iter().skip(1)) {
        let Some((start, end)) = segment_inside((*from, *to), (least, most)) else {
            continue;
        };
        match parts.last_mut() {
            Some(part) if part.last() == Some(&start) => part.push(end),
            _ => parts.push(vec![start, end]),
        }
    }
    parts
}

/// The part of a straight line inside (after Liang and Barsky: each side of the rectangle moves the
/// start or the end of the part inward).
fn segment_inside(
    (from, to): (PaperPoint, PaperPoint),
    (least, most): (PaperPoint, PaperPoint),
) -> Option<(PaperPoint, PaperPoint)> {
    let (dx, dy) = (to.x - from.x, to.y - from.y);
    let sides = [
        (-dx, from.x - least.x),
        (dx, most.x - from.x),
        (-dy, from.y - least.y),
        (dy, most.y - from.y),
    ];
    let (mut start, mut end) = (0.0_f64, 1.0_f64);
    for (outward, room) in sides {
        if outward < 0.0 {
            start = start.max(room / outward);
        } else if outward > 0.0 {
            end = end.min(room / outward);
        } else if room < 0.0 {
            return None;
        }
    }
    // The ends of the line are given back as they are, so that parts of one line join exactly.
    let on = |part: f64| match part {
        0.0 => from,
        1.0 => to,
        part => PaperPoint {
            x: from.x + dx * part,
            y: from.y + dy * part,
        },
    };
    (start < end).then(|| (on(start), on(end)))
}

#[cfg(test)]
mod tests {
    use super::inside;
    use crate::drawing::point::{PaperPoint, at};

    const SQUARE: (PaperPoint, PaperPoint) = (
        PaperPoint { x: 0.0, y: 0.0 },
        PaperPoint { x: 10.0, y: 10.0 },
    );

    #[test]
    fn a_line_that_leaves_and_comes_back_is_two() {
        let line = [at(2.0, 5.0), at(12.0, 5.0), at(12.0, 8.0), at(2.0, 8.0)];
        let parts = [
            vec![at(2.0, 5.0), at(10.0, 5.0)],
            vec![at(10.0, 8.0), at(2.0, 8.0)],
        ];
        assert_eq!(inside(&line, SQUARE), parts);
    }

    #[test]
    fn what_lies_within_stays_as_it_is() {
        let line = [at(1.0, 1.0), at(0.1 + 0.2, 3.0), at(9.0, 9.0)];
        assert_eq!(inside(&line, SQUARE), [line.to_vec()]);
    }

    #[test]
    fn a_line_right_across_is_cut_at_both_sides_and_one_outside_is_gone() {
        assert_eq!(
            inside(&[at(-10.0, -5.0), at(20.0, 10.0)], SQUARE),
            [vec![at(0.0, 0.0), at(10.0, 5.0)]]
        );
        assert_eq!(
            inside(&[at(-1.0, 12.0), at(12.0, 11.0)], SQUARE),
            Vec::<Vec<PaperPoint>>::new()
        );
        assert_eq!(
            inside(&[at(-1.0, 3.0), at(-1.0, 9.0)], SQUARE),
            Vec::<Vec<PaperPoint>>::new()
        );
    }
}
