//! The names in lines that are no items: settings, files that are used, expectations, suppressions.

use pelmet_diagnostics::FileId;
use pelmet_syntax::tree::{Entry, Term, TermKind};

use super::refer::Referring;
use super::scope::Scopes;
use super::table::Meaning;
use crate::keyword::LINES;
use crate::load::library_path;
use crate::project::resolve_path;

impl<'t> Referring<'t, '_> {
    /// A line at the edge of a sheet or in a block, if this entry is one.
    pub(super) fn line(&mut self, entry: &'t Entry) {
        let word = entry.first_word().unwrap_or_default();
        let Some(line) = LINES.iter().find(|line| line.word == word) else {
            return;
        };
        for (number, phrase) in entry.head.phrases.iter().enumerate() {
            let behind = self.behind(line, &phrase.terms).filter(|_| number == 0);
            let terms = behind.unwrap_or(&phrase.terms);
            self.phrase((line.takes, number), terms, Scopes::ROOT, None);
        }
        let value = entry.value.iter().flat_map(|value| &value.phrases);
        for (number, phrase) in value.enumerate() {
            self.phrase((line.value, number), &phrase.terms, Scopes::ROOT, None);
        }
    }

    /// A file that is named by its path, as in `use "styles/house.pelmet"`.
    pub(super) fn used_file(&mut self, text: &Term) {
        let TermKind::Text(written) = &text.kind else {
            return;
        };
        let within = self.loaded.sources.name(text.span.file);
        let path = resolve_path(within, written);
        if let Some(file) = path.and_then(|path| self.file(&path)) {
            self.refer(text.span, Meaning::File(file));
        }
    }

    /// A file of the standard library, if the job uses it.
    pub(super) fn library_file(&self, name: &str) -> Option<FileId> {
        self.file(&library_path(name))
    }

    /// A sheet that was read, by its path.
    fn file(&self, path: &str) -> Option<FileId> {
        let mut files = self.loaded.trees().map(|tree| tree.file);
        files.find(|file| self.loaded.sources.name(*file) == path)
    }
}
