//! The diagnostics of reading one file.

use pelmet_diagnostics::{Diagnostic, Span, codes};

use crate::MAXIMUM_DIAGNOSTICS;

/// Collects them up to the limit; the first one beyond it is told as such and ends the list.
#[derive(Default)]
pub(crate) struct FileDiagnostics(Vec<Diagnostic>);

impl FileDiagnostics {
    pub(crate) fn push(&mut self, diagnostic: impl Into<Diagnostic>) {
        let diagnostic = diagnostic.into();
        if self.0.len() < MAXIMUM_DIAGNOSTICS {
            self.0.push(diagnostic);
        } else if self.0.len() == MAXIMUM_DIAGNOSTICS {
            let here = diagnostic.primary().map(Span::start_of);
            self.0
                .push(codes::too_many_mistakes(here, MAXIMUM_DIAGNOSTICS));
        }
    }

    pub(crate) fn len(&self) -> usize {
        self.0.len()
    }

    /// Whether one of them speaks of these bytes already.
    pub(crate) fn touch(&self, place: Span) -> bool {
        self.0
            .iter()
            .flat_map(|diagnostic| &diagnostic.labels)
            .any(|label| label.span.start <= place.end && place.start <= label.span.end)
    }

    pub(crate) fn append(&mut self, others: FileDiagnostics) {
        others
            .0
            .into_iter()
            .for_each(|diagnostic| self.push(diagnostic));
    }

    pub(crate) fn into_list(self) -> Vec<Diagnostic> {
        self.0
    }
}
