//! The reports of one command, from whatever files they come.

use std::collections::BTreeMap;

use pelmet_diagnostics::{Diagnostic, FileId, Label, Sources, Span};

/// The reports of one command, in the order of its arguments.
///
/// Several jobs may use one file; a mistake in it is told once.
#[derive(Default)]
pub struct Reports {
    sources: Sources,
    diagnostics: Vec<Diagnostic>,
    /// The files whose text is known, by the name shown.
    known: BTreeMap<String, FileId>,
}

impl Reports {
    /// The texts the reports point at.
    pub fn sources(&self) -> &Sources {
        &self.sources
    }

    /// All that was reported so far, in the order it came.
    pub fn diagnostics(&self) -> &[Diagnostic] {
        &self.diagnostics
    }

    /// Adds a report that points at no text.
    pub fn push(&mut self, diagnostic: Diagnostic) {
        if !self.diagnostics.contains(&diagnostic) {
            self.diagnostics.push(diagnostic);
        }
    }

    /// Adds the reports of one run; `shown` turns a name within its project into one that leads to
    /// the file from here.
    pub fn absorb(
        &mut self,
        sources: &Sources,
        diagnostics: impl IntoIterator<Item = Diagnostic>,
        shown: impl Fn(&str) -> String,
    ) {
        let files: BTreeMap<FileId, FileId> = sources
            .files()
            .map(|file| {
                (
                    file,
                    self.file(&shown(sources.name(file)), sources.text(file)),
                )
            })
            .collect();
        for diagnostic in diagnostics {
            self.push(moved(diagnostic, &files));
        }
    }

    fn file(&mut self, name: &str, text: &str) -> FileId {
        match self.known.get(name) {
            Some(file) if self.sources.text(*file) == text => *file,
            _ => {
                let file = self.sources.add(name, text);
                self.known.insert(name.to_owned(), file);
                file
            }
        }
    }
}

/// The same report with each place in the file that took the place of its own.
fn moved(mut diagnostic: Diagnostic, files: &BTreeMap<FileId, FileId>) -> Diagnostic {
    let place = |span: Span| Span {
        file: files.get(&span.file).copied().unwrap_or(span.file),
        ..span
    };
    for Label { span, .. } in &mut diagnostic.labels {
        *span = place(*span);
    }
    for edit in diagnostic.fix.iter_mut().flat_map(|fix| &mut fix.edits) {
        edit.span = place(edit.span);
    }
    diagnostic
}

#[cfg(test)]
mod tests {
    use super::*;
    use pelmet_diagnostics::codes;

    fn run(name: &str, text: &str) -> (Sources, Diagnostic) {
        let mut sources = Sources::new();
        sources.add("other.pelmet", "");
        let file = sources.add(name, text);
        let report = codes::NameUnknown {
            span: Span::new(file, 0, 4),
            noun: "rod",
            word: "rod",
            name: "pole",
            suggestion: None,
        };
        (sources, report.into())
    }

    #[test]
    fn a_mistake_in_a_file_that_several_jobs_use_is_told_once() {
        let mut reports = Reports::default();
        for (folder, text) in [("a", "pole"), ("a", "pole"), ("b", "pole"), ("a", "poles")] {
            let (sources, report) = run("house.pelmet", text);
            reports.absorb(&sources, [report], |name| format!("{folder}/{name}"));
        }
        let places: Vec<(&str, &str)> = reports
            .diagnostics()
            .iter()
            .filter_map(Diagnostic::primary)
            .map(|span| {
                (
                    reports.sources().name(span.file),
                    reports.sources().text(span.file),
                )
            })
            .collect();
        let told = [
            ("a/house.pelmet", "pole"),
            ("b/house.pelmet", "pole"),
            ("a/house.pelmet", "poles"),
        ];
        assert_eq!(places, told);
    }
}
