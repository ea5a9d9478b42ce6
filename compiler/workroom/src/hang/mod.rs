//! Hanging: the heading, the row, its ends, and the rod under its load.

pub(crate) mod beam;
pub(crate) mod fill;
pub(crate) mod heading;
pub(crate) mod returns;
pub(crate) mod rod_check;
pub(crate) mod row;
pub(crate) mod weight;
