//! What the sums found, told of the design.

use pelmet_design::Design;
use pelmet_diagnostics::{Diagnostics, Severity};
use pelmet_model::{Finding, Subject};

use crate::expectations::Broken;

/// Tells what the sums found; gives what its errors leave broken.
pub(crate) fn tell(design: &Design, findings: &[Finding], found: &mut Diagnostics) -> Broken {
    let mut broken = Broken::default();
    for finding in findings {
        let diagnostic = design.report(finding);
        if diagnostic.severity == Severity::Error {
            broken.add(finding.subject);
        }
        found.push_of_window(window_of(finding.subject), diagnostic);
    }
    broken
}

fn window_of(subject: Subject) -> usize {
    match subject {
        Subject::Window(window) | Subject::Panel { window, .. } => window,
    }
}
