//! One mistake, one report, however many windows it is found in.

use std::collections::{BTreeMap, BTreeSet};

use pelmet_design::Design;
use pelmet_diagnostics::{Diagnostic, Span, counted};
use pelmet_model::{Finding, Subject};

/// What tells one mistake from another: its code, where it was made, and the line that accepts it.
type Mistake = (&'static str, Option<Span>, Option<Span>);

/// The reports of what the sums found. A treatment that several windows use has its mistake once: it
/// is told of the first of them, with the number of the others.
pub(crate) fn told_once(design: &Design, findings: &[Finding]) -> Vec<Diagnostic> {
    let mut windows: BTreeMap<Mistake, BTreeSet<usize>> = BTreeMap::new();
    let mut told: Vec<(Mistake, Diagnostic)> = Vec::new();
    let mut first: BTreeMap<Mistake, usize> = BTreeMap::new();
    for finding in findings {
        let report = design.report(finding);
        let window = window_of(finding);
        let accepted_at = design.accepted_at(&report);
        let mistake = (report.code.slug, report.primary(), accepted_at);
        windows.entry(mistake).or_default().insert(window);
        // Panels of one window may share a place, such as their rod; each has its own mistake.
        if *first.entry(mistake).or_insert(window) == window {
            told.push((mistake, report));
        }
    }
    told.into_iter()
        .map(|(mistake, report)| with_others(report, windows.get(&mistake)))
        .collect()
}

fn with_others(report: Diagnostic, windows: Option<&BTreeSet<usize>>) -> Diagnostic {
    match windows.map_or(0, |windows| windows.len().saturating_sub(1)) {
        0 => report,
        others => report.sum(format!("and so in {} more", counted(others, "window"))),
    }
}

fn window_of(finding: &Finding) -> usize {
    match finding.subject {
        Subject::Window(window) | Subject::Panel { window, .. } => window,
    }
}
