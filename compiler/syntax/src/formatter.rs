//! The one way to lay a file out.
//!
//! - One entry a line, set in by four blanks for every block around it; at most one empty line is kept
//!   between entries and none at the ends of a block.
//! - A block of plain properties that stood on one line and fits there stays on it.
//! - Within round brackets and after a comma a line breaks where its writer broke it.
//! - One blank around `+ - * / =`, after `:` and `,`, none within brackets.
//! - Numbers keep their digits: `15-1/2"`, `15½ in` and `15 1⁄2 inches` become `15 1/2 in`, `.5` becomes
//!   `0.5`, `5' 6"` becomes `5 ft 6 in`, and a unit is written as its symbol after one blank.
//! - A comment stays on its line or between its lines; comments at the ends of neighbouring lines are
//!   aligned.

mod page;
mod printer;
mod spelling;

use pelmet_diagnostics::{Diagnostic, FileId};

use crate::source::Source;
use crate::tree::{Comment, SyntaxTree};
use crate::{Parsed, read};

/// Why a file is left as it is.
#[derive(Clone, PartialEq, Eq, Debug)]
pub enum FormatRefusal {
    /// It could not be read without diagnostics, which are given.
    Diagnostics(Vec<Diagnostic>),
    /// Laid out anew it would say something else, or lose a comment: the formatter is wrong.
    WouldChange,
}

/// Lays a file out anew: what it says, and every comment, stays the same.
///
/// Lines end with a line feed, the last one too, and a byte-order mark is dropped. Doing it twice is
/// doing it once.
///
/// # Errors
///
/// [`FormatRefusal`] says why a file is left alone.
pub fn format(file: FileId, text: &str) -> Result<String, FormatRefusal> {
    let source = Source {
        file,
        text,
        base: 0,
    };
    let (parsed, clean) = read(source);
    if !parsed.diagnostics.is_empty() {
        return Err(FormatRefusal::Diagnostics(parsed.diagnostics));
    }
    let laid_out = printer::print(&parsed.file, text, &clean);
    if says_the_same(&parsed.file, &crate::parse(file, &laid_out)) {
        Ok(laid_out)
    } else {
        Err(FormatRefusal::WouldChange)
    }
}

fn says_the_same(before: &SyntaxTree, after: &Parsed) -> bool {
    let texts = |comments: &[Comment]| -> Vec<String> {
        comments
            .iter()
            .map(|comment| comment.text.clone())
            .collect()
    };
    after.diagnostics.is_empty()
        && before.dump() == after.file.dump()
        && texts(&before.comments) == texts(&after.file.comments)
}
