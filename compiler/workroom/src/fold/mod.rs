//! Folding: the strip at its creases, the outline upon it, what is hidden and what is seen.

pub(crate) mod elevation;
pub(crate) mod hiding;
pub(crate) mod outline;
pub(crate) mod strip;
