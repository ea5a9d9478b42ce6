//! What a making method asks of a panel that the panel does not give.

use pelmet_measure::{Length, Ratio};

use crate::Layer;

/// Findings in the making. `step` is an index into the steps of the outline.
#[derive(Clone, PartialEq, Debug)]
pub enum MakingMatter {
    /// The method has no such layer but the panel names a cloth for it, or the other way round.
    LayerMismatch {
        /// The layer, behind the face.
        layer: Layer,
        /// Whether the panel names its cloth.
        panel_has: bool,
    },
    /// A layer behind the face shrinks more than the face.
    LayerShrinksMore {
        /// The layer that only one of the two has; never the face.
        layer: Layer,
        /// What part of its length the face loses.
        face: Ratio,
        /// What part of its length the layer behind loses.
        behind: Ratio,
    },
    /// The lining is folded up from the face, and the lower edge is not level.
    FoldNotLevel {
        /// The outline step that drew an edge off the level, where one did.
        step: Option<usize>,
        /// How far below the made-up top edge the lower edge is at its highest.
        highest: Length,
        /// How far below the made-up top edge it is at its lowest.
        lowest: Length,
    },
    /// The lining is folded up from a face that has a way up, and hangs upside down.
    BackUpsideDown,
    /// The bands leave no room for one another or for an edge they follow.
    BandTooDeep {
        /// The outline step that drew the edge.
        step: usize,
        /// Length of the edge, or radius of the curve.
        room: Length,
        /// What the bands take of it.
        needed: Length,
    },
    /// The line of a band cannot follow the edge turn by turn.
    BandCannotFollow {
        /// A step of the outline.
        step: Option<usize>,
    },
    /// A mitre is asked for at a corner where a side and the lower edge do not meet at a right angle.
    MitreNotSquare {
        /// The outline step that drew the lower edge there, where one did.
        step: Option<usize>,
        /// How far that edge goes across.
        across: Length,
        /// How far one of its ends lies below the other.
        down: Length,
        /// Whether it curves.
        is_curved: bool,
        /// Whether it meets a side at all.
        has_side: bool,
    },
}
