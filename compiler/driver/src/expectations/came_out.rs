//! A size that came out.

use pelmet_design::Expected;
use pelmet_diagnostics::Span;

/// A size that came out, and why.
pub(super) struct CameOut {
    /// The size in a sentence.
    pub(super) what: String,
    pub(super) value: Expected,
    /// The value as printed.
    pub(super) text: String,
    /// What made it so.
    pub(super) cause: Option<(Span, &'static str)>,
    pub(super) sum: Vec<String>,
}
