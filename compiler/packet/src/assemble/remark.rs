//! Warnings and notes, in an order that does not depend on where they were written.

use pelmet_diagnostics::{Diagnostic, Severity};

use crate::packet::{Note, Warning};

pub(crate) fn warnings(diagnostics: &[Diagnostic]) -> Vec<Warning> {
    let warnings = of(diagnostics, Severity::Warning).map(|diagnostic| Warning {
        code: diagnostic.code.slug.to_owned(),
        title: diagnostic.title.clone(),
        sum: diagnostic.sum.clone(),
        accepted: diagnostic.accepted.clone(),
    });
    sorted(warnings)
}

pub(crate) fn notes(diagnostics: &[Diagnostic]) -> Vec<Note> {
    let notes = of(diagnostics, Severity::Note).map(|diagnostic| Note {
        code: diagnostic.code.slug.to_owned(),
        title: diagnostic.title.clone(),
        sum: diagnostic.sum.clone(),
    });
    sorted(notes)
}

fn of(diagnostics: &[Diagnostic], severity: Severity) -> impl Iterator<Item = &Diagnostic> {
    diagnostics
        .iter()
        .filter(move |diagnostic| diagnostic.severity == severity)
}

fn sorted<T: Ord>(remarks: impl Iterator<Item = T>) -> Vec<T> {
    let mut remarks: Vec<T> = remarks.collect();
    remarks.sort();
    remarks.dedup();
    remarks
}
