//! The names in the steps of a making method: conditions, cautions, and figures between brackets.

use pelmet_diagnostics::Span;
use pelmet_model::Figure;
use pelmet_syntax::tree::Entry;

use super::refer::Referring;
use super::scope::ScopeId;
use super::table::Meaning;
use crate::keyword::WORK_STEP;

impl<'t> Referring<'t, '_> {
    /// The block `steps`.
    pub(super) fn work_steps(&mut self, entry: &'t Entry, scope: ScopeId) {
        self.first_word_is(entry, Meaning::Word("steps"));
        let steps = entry.block.iter().flat_map(|block| &block.entries);
        let said = steps.filter_map(|step| step.value.as_ref());
        let phrases = said.flat_map(|said| said.phrases.iter().enumerate());
        for (number, phrase) in phrases {
            self.phrase((WORK_STEP, number), &phrase.terms, scope, None);
        }
    }

    /// The figures named between curly brackets in a text, as in `"Cut the face {face size}."`.
    pub(super) fn figures(&mut self, text: Span) {
        let written = self.loaded.sources.snippet(text);
        for (open, _) in written.match_indices('{') {
            let start = open.saturating_add(1);
            let inside = written.get(start..).unwrap_or_default();
            let Some((name, _)) = inside.split_once(['{', '}']) else {
                return;
            };
            let words = name.split_whitespace().collect::<Vec<_>>().join(" ");
            if let Some(figure) = Figure::from_name(&words) {
                let blanks = name.len().saturating_sub(name.trim_start().len());
                let start = text
                    .range()
                    .start
                    .saturating_add(start)
                    .saturating_add(blanks);
                let end = start.saturating_add(name.trim().len());
                self.refer(Span::new(text.file, start, end), Meaning::Figure(figure));
            }
        }
    }
}
