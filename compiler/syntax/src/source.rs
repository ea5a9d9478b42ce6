//! The text being read and its place in its file.

use pelmet_diagnostics::{FileId, Span};

/// A file, or the part of one, that is being read.
#[derive(Copy, Clone)]
pub(crate) struct Source<'a> {
    /// Which file spans are to name.
    pub(crate) file: FileId,
    /// What is read, before anything in it was blanked.
    pub(crate) text: &'a str,
    /// Where in the file it begins.
    pub(crate) base: usize,
}

impl<'a> Source<'a> {
    /// The place in the file of the bytes from `start` up to `end` of this text.
    pub(crate) fn span(&self, start: usize, end: usize) -> Span {
        Span::new(
            self.file,
            self.base.saturating_add(start),
            self.base.saturating_add(end),
        )
    }

    /// The place in the file of a span the grammar found.
    pub(crate) fn place(&self, found: pest::Span<'_>) -> Span {
        self.span(found.start(), found.end())
    }

    /// What stands at a span the grammar found, before anything was blanked.
    pub(crate) fn words(&self, found: pest::Span<'_>) -> &'a str {
        self.text
            .get(found.start()..found.end())
            .unwrap_or_default()
    }
}
