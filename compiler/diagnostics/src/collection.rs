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

    /// Takes in one more, wherever its place; the order is made when all are in.
    pub fn push(&mut self, diagnostic: impl Into<Diagnostic>) {
        self.0.push(diagnostic.into());
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::FileId;
    use crate::codes::{NameUnknown, NameUnused, PropertyMissing, name_unknown};

    fn settled(diagnostics: impl IntoIterator<Item = Diagnostic>) -> Vec<String> {
        let mut sources = Sources::new();
        sources.add("window", "some text");
        sources.add("style", "other text");
        let mut collected = Diagnostics::new();
        collected.extend(diagnostics);
        let title = |diagnostic: Diagnostic| diagnostic.title;
        collected.settle(&sources).into_iter().map(title).collect()
    }

    fn unknown(file: u32, start: usize, end: usize, name: &str) -> Diagnostic {
        NameUnknown {
            span: Span::new(FileId(file), start, end),
            noun: "rod",
            word: "rod",
            name,
            suggestion: None,
        }
        .into()
    }

    fn unused(span: Span, name: &str) -> Diagnostic {
        NameUnused {
            span,
            kind: "rod",
            name,
        }
        .into()
    }

    #[test]
    fn reports_come_in_the_order_of_file_names_and_places() {
        let reports = [
            unknown(0, 4, 6, "fifth"),
            unknown(0, 1, 3, "fourth"),
            unknown(0, 1, 2, "third"),
            unknown(1, 8, 9, "second"),
            name_unknown::CODE.report("first, since it has no place"),
        ];
        let titles = settled(reports);
        for (title, part) in titles
            .iter()
            .zip(["first", "second", "third", "fourth", "fifth"])
        {
            assert!(title.contains(part), "{titles:?}");
        }
    }

    #[test]
    fn the_same_mistake_is_told_once() {
        let reports = [
            unknown(0, 1, 2, "pole"),
            unknown(0, 3, 4, "pole"),
            unknown(0, 1, 2, "pole"),
        ];
        assert_eq!(settled(reports).len(), 2);
    }

    #[test]
    fn two_mistakes_at_one_place_are_told_both() {
        let span = Span::new(FileId(0), 1, 2);
        let missing = |property| {
            Diagnostic::from(PropertyMissing {
                span,
                item: "the fabric `kelp`",
                property,
                line: "",
            })
        };
        assert_eq!(
            settled([missing("width"), missing("price"), missing("width")]).len(),
            2
        );
        let reports = [unknown(0, 1, 2, "kelp"), unused(span, "kelp")];
        assert_eq!(settled(reports).len(), 2);
    }

    #[test]
    fn only_an_error_is_an_error() {
        let span = Span::new(FileId(0), 1, 2);
        let mut collected = Diagnostics::new();
        assert!(collected.is_empty() && !collected.has_errors());
        collected.push(unused(span, "pole"));
        assert!(!collected.is_empty() && !collected.has_errors());
        collected.push(unknown(0, 1, 2, "pole"));
        assert!(collected.has_errors());
    }
}
