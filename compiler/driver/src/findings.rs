//! What the sums found, told of the design.

use pelmet_design::Design;
use pelmet_diagnostics::{Diagnostics, Severity};
use pelmet_model::{Finding, Subject};

use crate::expectations::Broken;

/// Reports what the sums found; gives what its mistakes leave broken.
pub(crate) fn tell(design: &Design, findings: &[Finding], found: &mut Diagnostics) -> Broken {
    let mut broken = Broken::default();
    for finding in findings {
        let report = design.report(finding);
        if report.severity == Severity::Error {
            broken.add(finding.subject);
        }
        found.push_of_window(window_of(finding.subject), report);
    }
    broken
}

fn window_of(subject: Subject) -> usize {
    match subject {
        Subject::Window(window) | Subject::Panel { window, .. } => window,
    }
}
