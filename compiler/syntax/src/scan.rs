//! The pre-scan: one look at every letter before the grammar sees the text.
//!
//! It knows only quotes, comments and brackets, which is enough to say where a bracket was never
//! closed, and to keep every walk after it from going too deep. What the grammar need not see it
//! blanks, byte for byte, so that places stay true.

mod brackets;
mod letters;
mod words;

use pelmet_diagnostics::{Diagnostic, codes};

use crate::file_diagnostics::FileDiagnostics;
use crate::fractions;
use crate::source::Source;
use crate::tree::Comment;
use crate::{MAXIMUM_NESTING, MAXIMUM_WORDS};

/// What the pre-scan makes of a text.
pub(crate) struct Scan {
    /// The text for the grammar, of the same length; nothing if brackets stand too deep in it or it
    /// has too many words.
    pub(crate) clean: Option<String>,
    /// The comments, as they follow each other.
    pub(crate) comments: Vec<Comment>,
}

/// Scans a text and reports what it finds wrong.
pub(crate) fn scan(source: Source<'_>, diagnostics: &mut FileDiagnostics) -> Scan {
    let letters = letters::read(source, diagnostics);
    if let Some(beyond) = words::start_of(&letters.clean, MAXIMUM_WORDS) {
        diagnostics.push(too_many_words(source, beyond));
        return Scan {
            clean: None,
            comments: letters.comments,
        };
    }
    let matched = brackets::pair(source, &letters);
    diagnostics.append(matched.diagnostics);
    if let Some(at) = matched.too_deep {
        diagnostics.push(too_deep(source, at));
    }
    Scan {
        clean: matched
            .too_deep
            .is_none()
            .then(|| edited(&letters.clean, matched.edits)),
        comments: letters.comments,
    }
}

/// Whether a letter ends a number, so that `"` or `'` after it is a mark for inches or feet.
fn ends_number(letter: char) -> bool {
    letter.is_ascii_digit() || fractions::value(letter).is_some()
}

fn too_deep(source: Source<'_>, at: usize) -> Diagnostic {
    let bracket = source.span(at, at.saturating_add(1));
    codes::nested_too_deep(bracket, MAXIMUM_NESTING)
}

fn too_many_words(source: Source<'_>, at: usize) -> Diagnostic {
    codes::too_many_words(source.span(at, at), MAXIMUM_WORDS)
}

/// The text with single signs put in the places of others.
fn edited(clean: &str, mut edits: Vec<brackets::SignEdit>) -> String {
    edits.sort_by_key(|edit| edit.at);
    let mut text = String::with_capacity(clean.len());
    let mut done = 0;
    for edit in edits {
        text.push_str(clean.get(done..edit.at).unwrap_or_default());
        text.push(edit.sign);
        done = edit.at.saturating_add(1);
    }
    text.push_str(clean.get(done..).unwrap_or_default());
    text
}
