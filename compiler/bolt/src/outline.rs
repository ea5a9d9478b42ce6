//! The line a shaped piece is cut along.

use pelmet_measure::Length;

/// The most corners one outline may have; see [`Outline::near`] for how to have fewer.
pub const MAXIMUM_OUTLINE_CORNERS: usize = 2_000;

/// A corner of an outline, from the top left corner of the upright piece.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub struct Corner {
    /// To the right.
    pub across: Length,
    /// Down.
    pub along: Length,
}

/// A closed line of straight sides that does not cross itself.
#[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub struct Outline {
    corners: Vec<Corner>,
    strays: Length,
}

impl Outline {
    /// The outline through these corners, which strays by up to so much from the line that is cut.
    #[must_use]
    pub fn through(corners: Vec<Corner>, strays: Length) -> Outline {
        Outline { corners, strays }
    }

    /// An outline with as few of these corners as will stay within `near` of the sides between
    /// them; the line that is cut strays from these sides by up to `strays`.
    ///
    /// The corners kept are chosen as by U. Ramer, "An iterative procedure for the polygonal
    /// approximation of plane curves", Computer Graphics and Image Processing 1, 1972.
    #[must_use]
    pub fn near(corners: &[Corner], near: Length, strays: Length) -> Outline {
        let mut kept = Vec::new();
        let farthest = corners.first().and_then(|first| {
            let far = |corner: &Corner| away(*first, *corner);
            let numbered = (0..corners.len()).rev();
            numbered.max_by_key(|at| corners.get(*at).map(far))
        });
        let (one, other) = corners.split_at(farthest.unwrap_or(0));
        for (half, end) in [(one, other.first()), (other, one.first())] {
            let run: Vec<Corner> = half.iter().chain(end).copied().collect();
            keep_corners(&run, near, &mut kept);
        }
        Outline::through(kept, strays + near)
    }

    /// The outline of the same piece, `width` wide, on its side: its top to the left, and its right
    /// side toward the start of the bolt.
    #[must_use]
    pub fn on_its_side(&self, width: Length) -> Outline {
        let on_its_side = |corner: &Corner| Corner {
            across: corner.along,
            along: width - corner.across,
        };
        let corners = self.corners.iter().map(on_its_side).collect();
        Outline::through(corners, self.strays)
    }

    /// Its corners, in order.
    #[must_use]
    pub fn corners(&self) -> &[Corner] {
        &self.corners
    }

    /// How far the line that is cut may lie from the sides.
    #[must_use]
    pub fn strays(&self) -> Length {
        self.strays
    }
}

/// Keeps the first corner of a run, and of those after it but the last all that are needed.
fn keep_corners(run: &[Corner], near: Length, kept: &mut Vec<Corner>) {
    let mut waiting = vec![run];
    while let Some(run) = waiting.pop() {
        let (Some(first), Some(last)) = (run.first(), run.last()) else {
            continue;
        };
        let between = run.get(1..run.len().saturating_sub(1)).unwrap_or_default();
        let deepest = (1..)
            .zip(between)
            .max_by_key(|(_, corner)| off_line(*first, *last, **corner));
        match deepest {
            Some((at, corner)) if !is_near(*first, *last, *corner, near) => {
                waiting.extend(run.get(at..));
                waiting.extend(run.get(..=at));
            }
            _ => kept.push(*first),
        }
    }
}

/// The square of the distance between two corners.
fn away(one: Corner, other: Corner) -> i128 {
    let (across, along) = (one.across - other.across, one.along - other.along);
    product(across, across).saturating_add(product(along, along))
}

/// How far a corner lies off the line through two others, times the distance of these.
fn off_line(from: Corner, to: Corner, corner: Corner) -> i128 {
    let one = product(to.across - from.across, corner.along - from.along);
    let other = product(to.along - from.along, corner.across - from.across);
    one.saturating_sub(other).saturating_abs()
}

/// Whether a corner lies within `near` of the straight side between two others.
fn is_near(from: Corner, to: Corner, corner: Corner, near: Length) -> bool {
    let longest = away(from, to);
    if away(from, corner) > longest || away(to, corner) > longest {
        return false;
    }
    let off = off_line(from, to, corner);
    let most = product(near, near).saturating_mul(longest);
    longest > 0 && off.checked_mul(off).is_some_and(|off| off <= most)
}

fn product(one: Length, other: Length) -> i128 {
    i128::from(one.nanometres()).saturating_mul(i128::from(other.nanometres()))
}
