//! The names in lines that are no items: settings, files that are used, expectations, acceptances.

use pelmet_diagnostics::FileId;
use pelmet_syntax::tree::{Entry, TermKind};

use super::Meaning;
use super::refer::Referring;
use super::scope::Scopes;
use crate::gather::first_word;
use crate::keyword::LINES;
use crate::load::library_path;
use crate::project::resolve_path;

impl<'t> Referring<'t, '_> {
    /// A line at the edge of a sheet or in a block, if this entry is one.
    pub(super) fn line(&mut self, entry: &'t Entry) {
        let word = first_word(entry).unwrap_or_default();
        let Some(line) = LINES.iter().find(|line| line.word == word) else {
            return;
        };
        match word {
            "expect" => self.expectation(entry, line),
            "use" => self.used_file(entry),
            _ => {}
        }
        for (number, phrase) in entry.head.phrases.iter().enumerate() {
            self.phrase((line.takes, number), &phrase.terms, Scopes::ROOT, None);
        }
        let value = entry.value.iter().flat_map(|value| &value.phrases);
        for (number, phrase) in value.enumerate() {
            self.phrase((line.value, number), &phrase.terms, Scopes::ROOT, None);
        }
    }

    /// The file that `use "styles/house.pelmet"` names.
    fn used_file(&mut self, entry: &Entry) {
        let terms = entry.head.phrases.iter().flat_map(|phrase| &phrase.terms);
        for term in terms {
            let TermKind::Text(written) = &term.kind else {
                continue;
            };
            let within = self.loaded.sources.name(term.span.file);
            let path = resolve_path(within, written);
            if let Some(file) = path.and_then(|path| self.file(&path)) {
                self.refer(term.span, Meaning::File(file));
            }
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
