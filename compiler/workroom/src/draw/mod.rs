//! The made-up outline of a panel: its lines and curves, its corners, and what their turns call for.

pub(crate) mod clips;
pub(crate) mod crossing;
pub(crate) mod curve;
pub(crate) mod halves;
pub(crate) mod outline;
pub(crate) mod scallops;
pub(crate) mod shape;
