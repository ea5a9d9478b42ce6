//! The symbols of a job: what is defined in its texts, and what every name in them refers to.
//!
//! This is what hovers, definitions, references, renaming and completion stand on. Names are looked up
//! where they are written, once, however many windows a template is made for: nothing is evaluated,
//! and what is broken keeps the names around the mistake. Three steps make the table: `declare` finds
//! what is defined, `refer` looks up each name with the [forms](crate::Form) that its property
//! takes, and `roles` carries back to what is given for a parameter what the parameter is used as.

mod declare;
mod expect;
mod fill;
mod lines;
mod names;
mod refer;
mod roles;
mod scope;
mod table;
mod work_steps;

use crate::gather::Definitions;
use crate::load::Loaded;
use declare::Declarations;
use refer::Referring;
pub use table::{Definition, DefinitionId, DefinitionKind, Meaning, Reference, Symbols};

/// Finds the symbols of a job.
pub(crate) fn symbols(loaded: &Loaded, definitions: &Definitions<'_>) -> Symbols {
    let declarations = Declarations::of(loaded, definitions);
    let references = Referring::new(loaded, &declarations).run();
    Symbols::new(declarations.definitions, references)
}
