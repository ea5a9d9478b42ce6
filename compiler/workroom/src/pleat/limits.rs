//! How much a pleat rule may ask for.

/// The most pleats and pieces of plain cloth, counted together, that a rule may come to.
pub(super) const MAXIMUM_PIECES: u32 = 10_000;

/// How many counts are tried, over all the repeats of a rule, before the search for the nearest
/// stops. They are tried in order of turns in all, so what is left out is the most finely pleated.
pub(super) const COUNTS_TRIED: usize = 50_000;
