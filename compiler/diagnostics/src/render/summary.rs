//! All diagnostics in one line.

use crate::{Diagnostic, Severity, counted};

/// How many of each there are: "2 errors, 1 warning".
pub fn summary(diagnostics: &[Diagnostic]) -> String {
    let Counts {
        errors,
        warnings,
        accepted,
        notes,
    } = Counts::of(diagnostics);
    let parts: Vec<String> = [
        (errors, "error"),
        (warnings, "warning"),
        (accepted, "accepted warning"),
        (notes, "note"),
    ]
    .into_iter()
    .filter(|(count, _)| *count > 0)
    .map(|(count, noun)| counted(count, noun))
    .collect();
    if parts.is_empty() {
        "nothing to report".to_owned()
    } else {
        parts.join(", ")
    }
}

/// How many diagnostics of each kind there are; an accepted warning is not a warning.
#[derive(Default)]
pub(super) struct Counts {
    pub(super) errors: usize,
    pub(super) warnings: usize,
    pub(super) accepted: usize,
    pub(super) notes: usize,
}

impl Counts {
    pub(super) fn of(diagnostics: &[Diagnostic]) -> Counts {
        let mut counts = Counts::default();
        for diagnostic in diagnostics {
            let count = match (diagnostic.severity, &diagnostic.accepted) {
                (Severity::Error, _) => &mut counts.errors,
                (Severity::Warning, None) => &mut counts.warnings,
                (Severity::Warning, Some(_)) => &mut counts.accepted,
                (Severity::Note, _) => &mut counts.notes,
            };
            *count = count.saturating_add(1);
        }
        counts
    }
}
