//! The diagnostics of a run while they are being collected.

use crate::{Diagnostic, Severity, Sources, Span};

/// Collects diagnostics in any order; one mistake becomes one report.
#[derive(Clone, Default, PartialEq, Eq, Debug)]
pub struct Diagnostics(Vec<Diagnostic>);

impl Diagnostics {
    /// Nothing collected yet.
    pub fn new() -> Diagnostics {
        Diagnostics::default()
    }

    /// Adds one.
    pub fn push(&mut self, diagnostic: Diagnostic) {
        self.0.push(diagnostic);
    }

    /// Whether anything collected makes the design impossible.
    pub fn has_errors(&self) -> bool {
        self.0
            .iter()
            .any(|diagnostic| diagnostic.severity == Severity::Error)
    }

    /// Whether nothing at all was collected.
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    /// What was collected so far, in the order it came.
    pub fn iter(&self) -> std::slice::Iter<'_, Diagnostic> {
        self.0.iter()
    }

    /// Puts the reports in the order of the texts: by file name, place and code, those without a
    /// place first; of reports of one code with one title at one place, the first is kept.
    pub fn settle(self, sources: &Sources) -> Vec<Diagnostic> {
        let mut settled = self.0;
        settled.sort_by(|left, right| order(left, sources).cmp(&order(right, sources)));
        settled.dedup_by(|later, earlier| same_mistake(later, earlier));
        settled
    }
}

impl Extend<Diagnostic> for Diagnostics {
    fn extend<Several: IntoIterator<Item = Diagnostic>>(&mut self, several: Several) {
        self.0.extend(several);
    }
}

impl IntoIterator for Diagnostics {
    type Item = Diagnostic;
    type IntoIter = std::vec::IntoIter<Diagnostic>;

    fn into_iter(self) -> Self::IntoIter {
        self.0.into_iter()
    }
}

impl<'a> IntoIterator for &'a Diagnostics {
    type Item = &'a Diagnostic;
    type IntoIter = std::slice::Iter<'a, Diagnostic>;

    fn into_iter(self) -> Self::IntoIter {
        self.0.iter()
    }
}

/// The name of the file stands before its number, so that the order of reading the files does not
/// show; the title stands last, so that equal reports are neighbours.
fn order<'a>(
    diagnostic: &'a Diagnostic,
    sources: &'a Sources,
) -> (Option<(&'a str, Span)>, &'static str, &'a str) {
    let place = diagnostic
        .primary()
        .map(|span| (sources.name(span.file), span));
    (place, diagnostic.code.slug, &diagnostic.title)
}

/// The title counts too: two properties may be missing from one item.
fn same_mistake(left: &Diagnostic, right: &Diagnostic) -> bool {
    left.code == right.code && left.primary() == right.primary() && left.title == right.title
}
