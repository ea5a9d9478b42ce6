//! Warnings and notes, in an order that does not depend on where they were written.

use std::collections::BTreeSet;

use pelmet_diagnostics::{Diagnostic, Severity, codes};
use pelmet_model::Fabric;
use pelmet_packet::{Note, Warning};

use super::hung_panel::HungPanel;

pub(crate) fn warnings(diagnostics: &[Diagnostic]) -> Vec<Warning> {
    let warnings = of(diagnostics, Severity::Warning).map(|diagnostic| Warning {
        code: diagnostic.code.slug.to_owned(),
        title: diagnostic.title.clone(),
        sum: diagnostic.sum.clone(),
        accepted: diagnostic.accepted.clone(),
    });
    sorted(warnings)
}

pub(crate) fn notes(
    diagnostics: &[Diagnostic],
    panels: &[HungPanel<'_>],
    fabrics: &[Fabric],
) -> Vec<Note> {
    let notes = of(diagnostics, Severity::Note).map(note);
    let unsaid = turn_not_counted(panels, fabrics);
    sorted(notes.chain(unsaid.as_ref().map(note)))
}

fn note(diagnostic: &Diagnostic) -> Note {
    Note {
        code: diagnostic.code.slug.to_owned(),
        title: diagnostic.title.clone(),
        sum: diagnostic.sum.clone(),
    }
}

/// What goes without saying where none of a panel's cloths says how thick it is; that one of them
/// does not is told by a diagnostic.
fn turn_not_counted(panels: &[HungPanel<'_>], fabrics: &[Fabric]) -> Option<Diagnostic> {
    let is_silent = |panel: &&HungPanel<'_>| {
        panel.made.pleating.is_pressed()
            && pelmet_workroom::turn_of_cloth(panel.order, fabrics).is_none()
            && pelmet_workroom::says_no_thickness(panel.order, fabrics)
    };
    let names = panels.iter().filter(is_silent);
    let names: BTreeSet<&str> = names.map(|panel| panel.order.name.as_str()).collect();
    let names: Vec<&str> = names.into_iter().collect();
    (!names.is_empty()).then(|| codes::turn_of_cloth_not_counted::in_no_cloth(&names.join(", ")))
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
