//! What is told to the maker, and how: spans, the diagnostic value, one file a code, and the renderers.
//!
//! A pass collects [`Diagnostic`] values in [`Diagnostics`]; each is made by the struct or the
//! function of its code in [`codes`], and [`render`] turns them into text for people, pipes and programs.

mod code;
pub mod codes;
mod collection;
mod dedupe;
mod diagnostic;
mod example;
mod explain;
mod fix;
pub mod render;
mod sources;
mod span;
mod suggest;
mod words;

pub use code::{Code, Example};
pub use collection::Diagnostics;
pub use diagnostic::{Diagnostic, Label, PlacedText, Severity};
pub use explain::explain;
pub use fix::{Edit, Fix, apply_fixes};
pub use sources::{Sources, TextPlace};
pub use span::{FileId, Span};
pub use suggest::did_you_mean;
pub use words::{counted, listed, with_article};
