//! Relief cuts in the allowance of a curve.

use pelmet_measure::Length;
use pelmet_model::Point;

use crate::draw::curve::way;

/// How far apart the allowance of a curve is clipped, three quarters of an inch. Common practice,
/// no source: near enough together that no pucker forms, far enough apart that the seam holds.
pub const CLIP_SPACING: Length = Length::inch_fraction(3, 4);

/// A stretch of a curve is clipped where it turns by more than this, about five degrees. Common
/// practice, no source: less lies flat without help.
const LEAST_TURN: f64 = 1.0 / 12.0;

/// Slits and wedges, in that order, for a curved edge given by its points from corner to corner.
pub(crate) fn clips(points: &[Point]) -> (u32, u32) {
    let (mut slits, mut wedges) = (0_u32, 0_u32);
    for stretch in stretches(points) {
        let convex = stretch.turn.is_sign_negative();
        let kind = if convex { &mut wedges } else { &mut slits };
        *kind = kind.saturating_add(stretch.cuts());
    }
    (slits, wedges)
}

/// A stretch that turns the same way throughout.
struct Stretch {
    /// By how much, in radians, positive to the right.
    turn: f64,
    /// Its length in millimetres.
    length: f64,
}

impl Stretch {
    fn cuts(&self) -> u32 {
        if self.turn.abs() < LEAST_TURN {
            return 0;
        }
        let length = Length::from_millimetres_f64(self.length).unwrap_or_default();
        let spaces = length.nanometres().checked_div(CLIP_SPACING.nanometres());
        spaces
            .and_then(|spaces| u32::try_from(spaces).ok())
            .map_or(1, |spaces| spaces.max(1))
    }
}

fn stretches(points: &[Point]) -> Vec<Stretch> {
    let ends = points.iter().skip(1);
    let ways = points.iter().zip(ends).map(|(from, to)| way(*from, *to));
    let mut before: Option<kurbo::Vec2> = None;
    let mut stretches: Vec<Stretch> = Vec::new();
    for way in ways {
        let turn = before.map_or(0.0, |before| before.cross(way).atan2(before.dot(way)));
        match stretches.last_mut() {
            Some(last) if last.turn * turn >= 0.0 => {
                last.turn += turn;
                last.length += way.hypot();
            }
            _ => stretches.push(Stretch {
                turn,
                length: way.hypot(),
            }),
        }
        before = Some(way);
    }
    stretches
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Points of a wave, in millimetres.
    fn line(points: &[(i64, i64)]) -> Vec<Point> {
        points
            .iter()
            .map(|&(across, down)| Point {
                across: Length::millimetres(across),
                down: Length::millimetres(down),
            })
            .collect()
    }

    #[test]
    fn each_stretch_is_cut_by_its_hand_and_length() {
        // Turns left on the way, which is convex where the panel lies on the left.
        let bowl = line(&[(0, 0), (50, 20), (100, 20), (150, 0)]);
        assert_eq!(clips(&bowl), (0, 8));
        // The other way round it turns right.
        let mut back = bowl;
        back.reverse();
        assert_eq!(clips(&back), (8, 0));
        // It is one stretch, though it runs straight for a while.
        let flat = line(&[(0, 0), (60, 24), (90, 24), (120, 24), (180, 0)]);
        assert_eq!(clips(&flat), (0, 9));
        // A wave is cut both ways.
        let wave = line(&[(0, 0), (50, 20), (100, 20), (150, 0), (200, 0), (250, 20)]);
        assert_eq!(clips(&wave), (5, 8));
        // What hardly turns needs nothing, what is short a single cut.
        assert_eq!(clips(&line(&[(0, 0), (50, 1), (100, 0)])), (0, 0));
        assert_eq!(clips(&line(&[(0, 0), (5, 5), (10, 0)])), (0, 1));
        assert_eq!(clips(&[]), (0, 0));
    }
}
