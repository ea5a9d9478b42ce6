//! What counts as rounding everywhere in the sums.

use pelmet_measure::Length;

/// One micrometre. Lengths a maker works out (a third of ten inches) arrive rounded to the
/// nanometre; a whole strip of them misses its width by less than this, and so do depths that
/// share out unevenly. No miss this small is a mistake, and plain cloth takes it up.
pub const ROUNDING: Length = Length::from_nanometres(1_000);
