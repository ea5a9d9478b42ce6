//! A pleat rule as the maker wrote it, numbers left open where she left them open.

use pelmet_measure::{Length, Ratio};

use crate::closed_set::closed_set;
use crate::{PleatKind, Ranged};

/// The most pleats a panel may have.
pub const MAXIMUM_PLEATS: u32 = 2_000;

/// How one panel is pleated.
///
/// A rule is read in its working direction: from the left edge, or from the centre outward. A
/// mirrored rule describes the right half from the centre outward, or the left half from the left
/// edge, and the other half is its mirror image; so every length and count of a mirrored rule is
/// that of one half.
#[derive(Clone, PartialEq, Debug)]
pub struct PleatRule {
    /// The name the maker gave it.
    pub name: String,
    /// Where the rule is measured from.
    pub start: Start,
    /// Whether the other half is its mirror image.
    pub mirrored: bool,
    /// Plain cloth and pleats in working order.
    pub steps: Vec<PleatStep>,
    /// The most layers the rule means to lie anywhere; `None` means those of its deepest pleat.
    pub layers: Option<u32>,
    /// What gives way so that the same part of the print shows on every pleat; `None` where the
    /// print is not minded.
    pub print: Option<Follow>,
    /// By how much a crease may be out (either way) when folded by hand.
    pub folding_error: Option<Length>,
    /// What each pressed crease loses of the flat width in its turn, to the even nanometre; `None`
    /// leaves it to the thickness of the cloths, and where that is not known nothing is lost.
    pub turn_of_cloth: Option<Length>,
}

closed_set! {
    /// What follows the print across.
    pub enum Follow {
        /// The plain cloth between two pleats.
        Spaces = "spaces follow",
        /// The depth of the pleats.
        Depths = "depths follow",
    }
}

closed_set! {
    /// Where a rule is measured from.
    pub enum Start {
        /// The left edge of the flat panel.
        Left = "from left",
        /// Its centre line.
        Centre = "from centre",
    }
}

/// One written step of a rule.
#[derive(Clone, PartialEq, Debug)]
pub struct PleatStep {
    /// The number of the step in the order written, counted through repeats; a finding names it.
    pub number: usize,
    /// What it asks for.
    pub kind: StepKind,
}

impl PleatStep {
    /// The range of plain cloth, where the step is that.
    #[must_use]
    pub fn range(&self) -> Option<Ranged<Length>> {
        match &self.kind {
            StepKind::Plain(range) => Some(*range),
            _ => None,
        }
    }
}

/// What a step asks for.
#[derive(Clone, PartialEq, Debug)]
pub enum StepKind {
    /// Plain cloth: a margin at an edge or a space between pleats.
    Plain(Ranged<Length>),
    /// Plain cloth that takes whatever is left.
    Rest,
    /// A single pleat; one that is made often stands in a repeat.
    Pleat(PleatOrder),
    /// Steps made several times over. Plain cloth that ends the inner steps lies between two
    /// turns of the repeat and is left out after the last.
    Repeat {
        /// How often.
        count: Ranged<u32>,
        /// What is repeated.
        steps: Vec<PleatStep>,
    },
}

/// One pleat as ordered. Its kind says what of this is heeded.
#[derive(Clone, PartialEq, Debug)]
pub struct PleatOrder {
    /// Which row of the table of kinds it follows.
    pub kind: PleatKind,
    /// Depth of one fold of cloth; of a stitched pleat, the flat cloth it takes up. Cloth that is
    /// drawn up has none.
    pub depth: Ranged<Length>,
    /// Width of its face, hidden or shown; of a stitched pleat, how far apart its two points stay.
    /// `None` means that folds or points meet.
    pub face: Option<Ranged<Length>>,
    /// The way a fold points that lies to one side.
    pub toward: TowardOrder,
    /// Into how many fingers a stitched pleat is folded that has any.
    pub fingers: u32,
    /// How far cloth is drawn up.
    pub drawn: DrawnOrder,
    /// Where its first fold (in working order) lies on the flat cloth; `None` where it follows
    /// from the plain cloth before it.
    pub place: Option<FoldPlace>,
}

/// How far a thread or a tape draws cloth up.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Default)]
pub struct DrawnOrder {
    /// How many times its finished width its flat width is; `None` leaves that to the panel's
    /// two widths.
    pub ratio: Option<Ratio>,
    /// The finished width it is drawn up to; `None` takes whatever is left.
    pub to: Option<Ranged<Length>>,
}

impl PleatOrder {
    /// A pleat of a kind and a depth, its folds meeting and pointing to the left, three fingers to one
    /// that has any, with nothing said of where it lies or how far it is drawn up.
    #[must_use]
    pub fn new(kind: PleatKind, depth: Ranged<Length>) -> Self {
        Self {
            kind,
            depth,
            face: None,
            toward: TowardOrder::Left,
            fingers: USUAL_FINGERS,
            drawn: DrawnOrder::default(),
            place: None,
        }
    }
}

/// The fingers of a pinch pleat that says nothing of them. Common practice, no source.
const USUAL_FINGERS: u32 = 3;

/// Where a visible fold lies on the flat cloth.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum FoldPlace {
    /// This far from where the rule starts.
    At(Length),
    /// This far on from the visible fold before it, or from the start for the first.
    On(Length),
}

closed_set! {
    /// The way a visible fold points, in the rule's own words.
    pub enum TowardOrder {
        /// To the left as the panel hangs (of the half described, when mirrored).
        Left = "left",
        /// To the right as the panel hangs (of the half described, when mirrored).
        Right = "right",
        /// Toward the centre line of the panel.
        Centre = "centre",
        /// Toward the nearer side edge.
        Edge = "edge",
    }
}
