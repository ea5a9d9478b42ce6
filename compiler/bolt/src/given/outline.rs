//! The line a shaped piece is cut along.

use pelmet_measure::Length;

/// The most corners one outline may have; see [`OutlinePolygon::near`] for how to have fewer.
pub const MAXIMUM_OUTLINE_CORNERS: usize = 2_000;

/// A corner of an outline, measured from the top left corner of the upright piece.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub struct OutlineCorner {
    /// How far to the right of that corner it lies.
    pub across: Length,
    /// How far below that corner it lies, along the bolt.
    pub along: Length,
}

/// A simple polygon, near the line a piece is cut along: its sides do not cross.
///
/// Curves are not laid: what two shapes with straight sides deny each other is a short exact sum, and
/// `strays` says how far the line that is cut may lie outside it, which is then left free all round.
#[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub struct OutlinePolygon {
    corners: Vec<OutlineCorner>,
    strays: Length,
}

impl OutlinePolygon {
    /// The outline through these corners, which strays by up to so much from the line that is cut.
    #[must_use]
    pub fn through(corners: Vec<OutlineCorner>, strays: Length) -> OutlinePolygon {
        OutlinePolygon { corners, strays }
    }

    /// An outline with as few of these corners as will stay within `near` of the sides between
    /// them; the line that is cut strays from these sides by up to `strays`.
    ///
    /// The corners kept are chosen as by U. Ramer, "An iterative procedure for the polygonal
    /// approximation of plane curves", Computer Graphics and Image Processing 1, 1972.
    #[must_use]
    pub fn near(corners: &[OutlineCorner], near: Length, strays: Length) -> OutlinePolygon {
        let mut kept = Vec::new();
        // A closed line has no two ends to begin from; its first corner and the one farthest from it
        // stand for them. Of several as far, the reversed order finds the first.
        let farthest = corners.first().and_then(|first| {
            let far = |corner: &OutlineCorner| away(*first, *corner);
            let numbered = (0..corners.len()).rev();
            numbered.max_by_key(|at| corners.get(*at).map(far))
        });
        let (one, other) = corners.split_at(farthest.unwrap_or(0));
        for (half, end) in [(one, other.first()), (other, one.first())] {
            let run: Vec<OutlineCorner> = half.iter().chain(end).copied().collect();
            keep_corners(&run, near, &mut kept);
        }
        OutlinePolygon::through(kept, strays + near)
    }

    /// The outline of the same piece, `width` wide, laid along the cloth: its top to the left, and its
    /// right side toward the start of the bolt. It is turned and not mirrored, so that the right side
    /// of the cloth stays its right side.
    #[must_use]
    pub fn on_its_side(&self, width: Length) -> OutlinePolygon {
        let on_its_side = |corner: &OutlineCorner| OutlineCorner {
            across: corner.along,
            along: width - corner.across,
        };
        let corners = self.corners.iter().map(on_its_side).collect();
        OutlinePolygon::through(corners, self.strays)
    }

    /// Its corners, in order round the piece; the last is joined to the first.
    #[must_use]
    pub fn corners(&self) -> &[OutlineCorner] {
        &self.corners
    }

    /// How far the line that is cut may lie from the sides, to either hand.
    #[must_use]
    pub fn strays(&self) -> Length {
        self.strays
    }
}

/// Keeps the first corner of a run, and of those after it but the last all that are needed.
///
/// The runs still to be looked at wait on a list, the nearer half on top, instead of on the stack of
/// calls: a run of corners chosen for the purpose halves so unevenly that it would be as deep as long.
fn keep_corners(run: &[OutlineCorner], near: Length, kept: &mut Vec<OutlineCorner>) {
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
fn away(one: OutlineCorner, other: OutlineCorner) -> i128 {
    let (across, along) = (one.across - other.across, one.along - other.along);
    product(across, across).saturating_add(product(along, along))
}

/// How far a corner lies off the line through two others, times the distance of these: so that what
/// is compared stays a whole number, without a root.
fn off_line(from: OutlineCorner, to: OutlineCorner, corner: OutlineCorner) -> i128 {
    let one = product(to.across - from.across, corner.along - from.along);
    let other = product(to.along - from.along, corner.across - from.across);
    one.saturating_sub(other).saturating_abs()
}

/// Whether a corner lies within `near` of the straight side between two others: of the line through
/// them, and no farther from either than they are from each other. The second is stricter than it need
/// be beside the ends of a side, where it only keeps a corner too many.
fn is_near(from: OutlineCorner, to: OutlineCorner, corner: OutlineCorner, near: Length) -> bool {
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
