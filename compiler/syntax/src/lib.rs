//! From text to syntax tree, and back through the formatter.
//!
//! Reading takes three steps: the pre-scan looks at every letter and pairs the brackets, the grammar
//! (`grammar/pelmet.pest`) matches what is left, and the lowering makes the tree and explains what
//! could not be read. No step stops at its first diagnostic.

mod file_diagnostics;
mod formatter;
mod fractions;
mod grammar;
mod limits;
mod lowering;
mod scan;
mod source;
pub mod tree;

use pelmet_diagnostics::{Diagnostic, FileId, Span};

use file_diagnostics::FileDiagnostics;
pub use formatter::{FormatRefusal, format};
pub use limits::{
    MAXIMUM_DIAGNOSTICS, MAXIMUM_DIGITS, MAXIMUM_FILE_BYTES, MAXIMUM_NESTING, MAXIMUM_OPERATORS,
    MAXIMUM_WORDS,
};
use lowering::Lowering;
use source::Source;

/// What reading one file gives: as much of the tree as could be read, and the diagnostics of the rest.
#[derive(Clone, Debug)]
pub struct Parsed {
    /// As much of the tree as could be read; the rest stands in it as broken.
    pub file: tree::SyntaxTree,
    /// The mistakes, in no particular order.
    pub diagnostics: Vec<Diagnostic>,
}

/// Reads the text of a file.
#[must_use]
pub fn parse(file: FileId, text: &str) -> Parsed {
    read(Source {
        file,
        text,
        base: 0,
    })
    .0
}

/// Reads a text, and gives beside its tree what the grammar saw of it.
fn read(source: Source<'_>) -> (Parsed, String) {
    let mut diagnostics = FileDiagnostics::default();
    let scan = scan::scan(source, &mut diagnostics);
    let clean = scan.clean.unwrap_or_default();
    let entries = Lowering::new(source, &mut diagnostics).file(&clean);
    let file = tree::SyntaxTree {
        file: source.file,
        entries,
        comments: scan.comments,
    };
    let diagnostics = diagnostics.into_list();
    (Parsed { file, diagnostics }, clean)
}

/// Reads a value that stands alone at `within` in the text of a file, such as a cell of a table.
///
/// The value is `None` if nothing but blanks stands there, or if `within` is no part of the text.
#[must_use]
pub fn parse_value(
    file: FileId,
    text: &str,
    within: Span,
) -> (Option<tree::Phrases>, Vec<Diagnostic>) {
    let range = within.range();
    let Some(part) = text.get(range.clone()) else {
        return (None, Vec::new());
    };
    let source = Source {
        file,
        text: part,
        base: range.start,
    };
    let mut diagnostics = FileDiagnostics::default();
    let clean = scan::scan(source, &mut diagnostics).clean;
    let mut lowering = Lowering::new(source, &mut diagnostics);
    let mut value = clean.and_then(|clean| lowering.value_alone(&clean));
    if value.is_none() && lowering.has_diagnostics() {
        value = Some(lowering.unreadable());
    }
    (value, diagnostics.into_list())
}
