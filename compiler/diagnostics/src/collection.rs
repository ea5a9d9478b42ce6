//! The diagnostics of a run while they are being collected.

use crate::dedupe::{Apart, Found, dedupe};
use crate::{Diagnostic, Severity, Sources, Span};

/// Collects diagnostics in any order; of those with one cause, one is kept.
#[derive(Clone, Default, PartialEq, Eq, Debug)]
pub struct Diagnostics {
    found: Vec<Found>,
    apart: Apart,
}

impl Diagnostics {
    /// Nothing collected yet.
    pub fn new() -> Diagnostics {
        Diagnostics::default()
    }

    /// Nothing collected yet, of a text that was written for the maker, in which the same words may
    /// stand at several places: what is wrong in them is told once, wherever it is met.
    pub fn told_wherever() -> Diagnostics {
        Diagnostics {
            apart: Apart::ByTitle,
            ..Diagnostics::default()
        }
    }

    /// Takes in one more, wherever its place; the order is made when all are in.
    pub fn push(&mut self, diagnostic: impl Into<Diagnostic>) {
        self.found.push(Found {
            diagnostic: diagnostic.into(),
            window: None,
        });
    }

    /// Adds one that the sums found in a window, by its number; other windows may be made from the same
    /// text.
    pub fn push_of_window(&mut self, window: usize, diagnostic: Diagnostic) {
        self.found.push(Found {
            diagnostic,
            window: Some(window),
        });
    }

    /// Whether anything collected makes the design impossible.
    pub fn has_errors(&self) -> bool {
        let mut found = self.found.iter();
        found.any(|found| found.diagnostic.severity == Severity::Error)
    }

    /// Whether nothing at all was collected.
    pub fn is_empty(&self) -> bool {
        self.found.is_empty()
    }

    /// What was collected so far, in the order it came, to be changed.
    pub fn iter_mut(&mut self) -> impl Iterator<Item = &mut Diagnostic> {
        self.found.iter_mut().map(|found| &mut found.diagnostic)
    }

    /// One diagnostic of each cause, in the order of the texts: by file name, place and code, those
    /// without a place first.
    pub fn settle(self, sources: &Sources) -> Vec<Diagnostic> {
        let mut settled = dedupe(self.found, self.apart);
        settled.sort_by(|left, right| order(left, sources).cmp(&order(right, sources)));
        settled
    }
}

impl Extend<Diagnostic> for Diagnostics {
    fn extend<Several: IntoIterator<Item = Diagnostic>>(&mut self, several: Several) {
        several.into_iter().for_each(|one| self.push(one));
    }
}

/// The name of the file stands before its number, so that the order of reading the files does not
/// show.
fn order<'a>(
    diagnostic: &'a Diagnostic,
    sources: &'a Sources,
) -> (Option<(&'a str, Span)>, &'static str, &'a str) {
    let place = diagnostic
        .primary()
        .map(|span| (sources.name(span.file), span));
    (place, diagnostic.code.slug, &diagnostic.title)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::FileId;
    use crate::codes::{NameUnknown, NameUnused, PropertyMissing, name_unknown, names_too_deep};

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
    fn diagnostics_come_in_the_order_of_file_names_and_places() {
        let diagnostics = [
            unknown(0, 4, 6, "fifth"),
            unknown(0, 1, 3, "fourth"),
            unknown(0, 1, 2, "third"),
            unknown(1, 8, 9, "second"),
            name_unknown::CODE.report("first, since it has no place"),
        ];
        let titles = settled(diagnostics);
        for (title, part) in titles
            .iter()
            .zip(["first", "second", "third", "fourth", "fifth"])
        {
            assert!(title.contains(part), "{titles:?}");
        }
    }

    #[test]
    fn the_same_cause_is_told_once() {
        let diagnostics = [
            unknown(0, 1, 2, "pole"),
            unknown(0, 3, 4, "pole"),
            unknown(0, 1, 2, "pole"),
        ];
        assert_eq!(settled(diagnostics).len(), 2);
    }

    #[test]
    fn two_diagnostics_at_one_place_are_told_both() {
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
        let diagnostics = [unknown(0, 1, 2, "kelp"), unused(span, "kelp")];
        assert_eq!(settled(diagnostics).len(), 2);
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

    #[test]
    fn a_mistake_in_what_several_windows_use_is_told_of_the_first() {
        let found = |windows: &[(usize, &str)]| {
            let mut collected = Diagnostics::new();
            for (window, name) in windows {
                collected.push_of_window(*window, unknown(0, 1, 2, name));
            }
            collected
        };
        let told = |collected: Diagnostics| -> Vec<Vec<String>> {
            let settled = collected.settle(&Sources::new());
            settled.into_iter().map(|report| report.sum).collect()
        };
        let nothing_more = Vec::<String>::new;
        assert_eq!(told(found(&[(4, "pole")])), [nothing_more()]);
        let others = vec![String::from("and so in 2 windows more")];
        assert_eq!(
            told(found(&[(4, "pole"), (2, "tube"), (7, "bar"), (2, "bar")])),
            [others]
        );
        // Panels of one window may share a place; each has its own mistake.
        let two = found(&[(4, "pole"), (4, "tube"), (4, "tube")]);
        assert_eq!(told(two), [nothing_more(), nothing_more()]);
        let mut accepted_in_one = found(&[(4, "pole"), (2, "tube")]);
        for report in accepted_in_one.iter_mut().take(1) {
            report.accepted = Some(String::from("it is hidden"));
        }
        assert_eq!(told(accepted_in_one), [nothing_more(), nothing_more()]);
    }

    #[test]
    fn what_is_met_at_several_places_may_be_one_mistake() {
        let reports = || [unknown(0, 1, 2, "pole"), unknown(0, 3, 4, "pole")];
        let mut wherever = Diagnostics::told_wherever();
        wherever.extend(reports());
        assert_eq!(wherever.settle(&Sources::new()).len(), 1);
        let deep = |start| names_too_deep(Span::new(FileId(0), start, 9), 100);
        assert_eq!(settled([deep(1), deep(2), deep(3)]).len(), 1);
    }
}
