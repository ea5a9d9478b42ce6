//! From text to syntax tree, and back through the formatter.

pub mod tree;

use pelmet_diagnostics::Diagnostic;

/// What reading one file gives: as much of the tree as could be read, and every mistake in the rest.
#[derive(Clone, Debug)]
pub struct Parsed {
    /// The tree.
    pub file: tree::File,
    /// The mistakes, in no particular order.
    pub diagnostics: Vec<Diagnostic>,
}
