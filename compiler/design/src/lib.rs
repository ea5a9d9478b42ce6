//! From syntax trees to a resolved design: names, kinds, units, expressions and templates, and the
//! way back to the text.
//!
//! Reading goes in three steps. [`load`] reads the main file and all it uses. `gather` sorts the
//! entries of every tree into items, nothing read yet. [`resolve`] reads the items: each window
//! fills in its treatment, names are followed where they stand, and what comes out is a
//! [`pelmet_model::Job`] with the place of each of its numbers.
//!
//! A parameter stands for the phrases given for it and is read where it is used, in the scope of
//! whoever gave it; so it may be a length, a cloth, a pleat rule or anything else.

mod amount;
mod closed_sets;
mod copying;
mod cursor;
mod design;
mod evaluate;
mod form;
mod gather;
mod item;
mod keyword;
mod kind;
mod lengths;
mod list;
mod load;
mod printable;
mod project;
mod property;
mod read;
mod reader;
mod reference;
mod report;
mod resolve;
mod scope;
mod size;
mod source_map;
mod suppress;
mod symbols;
mod term;

pub use closed_sets::{KnownName, WordSet};
pub use design::{
    Design, Expectation, Expected, ExpectedBound, ExpectedSubject, FabricSize, JobSize, PanelSize,
    Suppression, WindowSize,
};
pub use form::{Form, FormPart, Takes};
pub use keyword::{Keyword, LINES, WORK_STEP};
pub use kind::Kind;
pub use list::MAXIMUM_LIST_ROWS;
pub use load::{Loaded, MAXIMUM_FILES_DEEP, load};
pub use project::{Project, ReadFinding};
pub use property::Property;
pub use resolve::{Resolved, resolve};
pub use source_map::{
    HeadingKey, ItemSource, MakingKey, PanelKey, PanelSource, SentencePlace, SourceMap, WindowKey,
    WindowSource,
};
pub use symbols::{Definition, DefinitionId, DefinitionKind, Meaning, Reference, Symbols};
