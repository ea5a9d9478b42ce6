//! Mitred hems: where two hems meet in one slanting line.

use crate::closed_set::closed_set;
use pelmet_measure::Length;

/// A corner at which the hems of a side and of the lower edge are mitred.
#[derive(Clone, PartialEq, Debug)]
pub struct MitreMade {
    /// The corner, by index in the panel's shape.
    pub corner: usize,
    /// Where the line of the mitre runs over the cut face, from the side's cut edge to the lower one.
    pub line: Vec<MitrePointMade>,
    /// Length of the finished mitre, from the corner to where the hems meet.
    pub length: Length,
    /// What must be left beyond the line; the cloth outside that may be cut away.
    pub kept: Length,
}

/// A point of the line of a mitre on the cut face, before anything is turned.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct MitrePointMade {
    /// What lies there.
    pub place: MitrePlace,
    /// How far in from the cut edge of the side.
    pub in_from_side: Length,
    /// How far up from the cut lower edge.
    pub up_from_lower: Length,
}

closed_set! {
    /// The places that the line of a mitre passes.
    pub enum MitrePlace {
        /// The cut edge of the side.
        SideCut = "cut edge of the side",
        /// The line along which the raw edge of the side's hem is turned under.
        SideTurn = "where the side is turned under",
        /// The finished corner.
        Corner = "finished corner",
        /// The line along which the raw edge of the lower hem is turned under.
        LowerTurn = "where the lower edge is turned under",
        /// The cut lower edge.
        LowerCut = "cut lower edge",
    }
}
