//! Pieces as the search sees them: forms, how they lie, and which places they deny each other.

mod alike;
mod form;
mod laid;
mod no_fit;
mod shape;

pub(super) use alike::Forms;
pub(super) use form::{EITHER_WAY, Form, TURNED, UPRIGHT, Wanted, Ways};
pub(super) use laid::{Laid, Lying};
pub(super) use no_fit::{NoFitAcross, are_too_near, deny, deny_along, deny_flaws};
