//! What the shears follow: allowances, pieces, joined widths, bands and mitres.

pub(crate) mod allowance;
pub(crate) mod allowance_edge;
pub(crate) mod band;
pub(crate) mod joined;
pub(crate) mod mitre;
pub(crate) mod panel;
pub(crate) mod pieces;
pub(crate) mod self_lined;
