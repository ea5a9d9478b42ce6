//! What is done once a panel is cut: marks, tape and fasteners, notions, and the steps of its making.

pub(crate) mod counts;
pub(crate) mod figures;
pub(crate) mod marks;
pub(crate) mod needs;
pub(crate) mod steps;
pub(crate) mod tape;
