//! The sums of the workroom: pleats, folding, outlines, pieces, headings, rows and notions.
//!
//! This crate speaks of cloth and never of text. A [`pelmet_model::Job`] is what the maker ordered;
//! [`work`] answers with what must be cut, marked and folded, and with every
//! [`pelmet_model::Finding`] on the way. Who wrote which number where is known one floor up, in the
//! design crate.
//!
//! The rooms stand in working order: `pleat` lays a rule out on the flat strip, `fold` folds the strip,
//! `draw` draws the outline of the made-up panel, `cut` cuts its pieces, `hang` hangs it in its row on
//! its rod, and `finish` marks it, fastens it and tells how it is made. `panel` goes through them for
//! one panel, and `work` for a job.

mod cut;
mod draw;
mod finish;
mod fold;
mod hang;
mod layers;
mod panel;
mod pleat;
mod rounding;
mod work;

pub use cut::allowance::LONGEST_POINT;
pub use cut::joined::{LEAST_PART, MAXIMUM_WIDTHS, strips_needed};
pub use draw::clips::CLIP_SPACING;
pub use draw::curve::FLATTENING;
pub use draw::halves::{has_like_halves, mirrored};
pub use draw::outline::{MAXIMUM_CORNERS, MAXIMUM_CURVE_POINTS};
pub use draw::shape::LEAST_TURN;
pub use finish::counts::count_along;
pub use fold::outline::fold_outline;
pub use fold::strip::{finished_at, fold, fold_pleating, is_hidden};
pub use hang::beam::{BeamSection, BeamSpan};
pub use hang::rod_check::{GRAVITY, MOST_BRACKETS, SAG_LIMIT, USUAL_BRACKETS, check_rod};
pub use hang::weight::mass_per_area;
pub use pleat::rule::intended_layers;
pub use pleat::turn_of_cloth::{says_no_thickness, thickness, turn_of, turn_of_cloth};
pub use pleat::width::fullness_of;
pub use pleat::{check, lay_out, no_pleats, tolerance};
pub use rounding::ROUNDING;
pub use work::work;
