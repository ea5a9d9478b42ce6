//! What a mistake leaves unfit to be judged: a size that follows from one would only tell it again.

use std::collections::BTreeSet;

use pelmet_design::Design;
use pelmet_diagnostics::{Diagnostic, Severity};
use pelmet_model::{Finding, Subject};

/// The windows and panels with errors.
#[derive(Default)]
pub(crate) struct Broken {
    anything: bool,
    windows: BTreeSet<usize>,
    panels: BTreeSet<(usize, usize)>,
}

impl Broken {
    /// What the findings, and everything found, leave broken.
    pub(crate) fn of(design: &Design, findings: &[Finding], found: &[Diagnostic]) -> Self {
        let mut broken = Self {
            anything: Self::any(found),
            ..Self::default()
        };
        let is_error = |finding: &&Finding| design.report(finding).severity == Severity::Error;
        for finding in findings.iter().filter(is_error) {
            match finding.subject {
                Subject::Window(window) => broken.windows.insert(window),
                Subject::Panel { window, panel } => broken.panels.insert((window, panel)),
            };
        }
        broken
    }

    /// Whether anything found is an error.
    pub(crate) fn any(found: &[Diagnostic]) -> bool {
        found
            .iter()
            .any(|diagnostic| diagnostic.severity == Severity::Error)
    }

    /// Whether a length of cloth can be judged: it follows from every panel.
    pub(crate) fn spares_cloth(&self) -> bool {
        !self.anything
    }

    /// Whether a size of a window can be judged: it follows from every one of its panels.
    pub(crate) fn spares_window(&self, window: usize) -> bool {
        let of_window = self.panels.iter().any(|(of, _)| *of == window);
        !of_window && !self.windows.contains(&window)
    }

    /// Whether a size of a panel can be judged. One that fills follows from its whole row.
    pub(crate) fn spares_panel(&self, window: usize, panel: usize) -> bool {
        !self.windows.contains(&window) && !self.panels.contains(&(window, panel))
    }
}
