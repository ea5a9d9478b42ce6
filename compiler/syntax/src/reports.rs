//! The mistakes found while reading one file.

use pelmet_diagnostics::{Diagnostic, Span, codes};

use crate::MAXIMUM_MISTAKES;

/// Collects mistakes up to the limit; the first one beyond it is told as such and ends the list.
#[derive(Default)]
pub(crate) struct Reports(Vec<Diagnostic>);

impl Reports {
    pub(crate) fn push(&mut self, mistake: impl Into<Diagnostic>) {
        let mistake = mistake.into();
        if self.0.len() < MAXIMUM_MISTAKES {
            self.0.push(mistake);
        } else if self.0.len() == MAXIMUM_MISTAKES {
            let here = mistake.primary().map(Span::start_of);
            self.0
                .push(codes::too_many_mistakes(here, MAXIMUM_MISTAKES));
        }
    }

    pub(crate) fn len(&self) -> usize {
        self.0.len()
    }

    /// Whether a mistake is already told of these bytes.
    pub(crate) fn touch(&self, place: Span) -> bool {
        self.0
            .iter()
            .flat_map(|mistake| &mistake.labels)
            .any(|label| label.span.start <= place.end && place.start <= label.span.end)
    }

    pub(crate) fn append(&mut self, others: Reports) {
        others.0.into_iter().for_each(|mistake| self.push(mistake));
    }

    pub(crate) fn into_list(self) -> Vec<Diagnostic> {
        self.0
    }
}
