//! One cause, one diagnostic.
//!
//! Diagnostics have one cause where they are alike in code, place and title; the title counts, since
//! two properties may be missing from one item. What is wrong in a text that several windows use is one
//! cause too, though each of them words it with its own numbers: it is told of the first of them, with
//! the number of the others, but for windows in which the maker accepts it.

use std::collections::{BTreeMap, BTreeSet};

use crate::{Code, Diagnostic, Span, codes, counted};

/// A diagnostic as it was collected.
#[derive(Clone, PartialEq, Eq, Debug)]
pub(crate) struct Found {
    pub(crate) diagnostic: Diagnostic,
    /// The window it was found in, by number, where the sums found it.
    pub(crate) window: Option<usize>,
}

/// Whether the place tells one cause from another.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Default)]
pub(crate) enum Apart {
    /// The same at two places has two causes.
    #[default]
    ByPlace,
    /// It has one, wherever it stands.
    ByTitle,
}

/// What has one cause wherever it stands: of a chain of names that is too long, all that hangs on it is
/// too deep.
const ONE_WHEREVER: [&Code; 1] = [&codes::names_too_deep::CODE];

/// What the diagnostics of several windows have in common where they have one cause: code, place, and
/// for what reason they are accepted.
type OfWindows = (&'static str, Option<Span>, Option<String>);

/// The window of which a cause is told, and the others that share it.
struct Windows {
    first: usize,
    others: BTreeSet<usize>,
}

/// One diagnostic of each cause, in the order they came.
pub(crate) fn dedupe(found: Vec<Found>, apart: Apart) -> Vec<Diagnostic> {
    let mut causes = Causes {
        apart,
        told: BTreeSet::new(),
        windows: BTreeMap::new(),
    };
    let mut kept = found;
    kept.retain(|found| causes.is_new(found));
    let told = kept.into_iter();
    told.map(|found| causes.with_other_windows(found)).collect()
}

/// The causes that are met, one diagnostic after the other.
struct Causes {
    apart: Apart,
    /// Code, place and title of those that are told.
    told: BTreeSet<(&'static str, Option<Span>, String)>,
    windows: BTreeMap<OfWindows, Windows>,
}

impl Causes {
    /// Whether a cause is to be told: neither of another window nor in these words before.
    fn is_new(&mut self, found: &Found) -> bool {
        let diagnostic = &found.diagnostic;
        let place = self.place(diagnostic);
        if let Some(window) = found.window {
            let windows = self.windows.entry(of_windows(diagnostic, place));
            let windows = windows.or_insert(Windows {
                first: window,
                others: BTreeSet::new(),
            });
            if window != windows.first {
                windows.others.insert(window);
                return false;
            }
        }
        let title = diagnostic.title.clone();
        self.told.insert((diagnostic.code.slug, place, title))
    }

    /// What is told of a window, with the number of the others that share its cause.
    fn with_other_windows(&self, Found { diagnostic, window }: Found) -> Diagnostic {
        let cause = of_windows(&diagnostic, self.place(&diagnostic));
        let windows = window.and_then(|_| self.windows.get(&cause));
        match windows.map_or(0, |windows| windows.others.len()) {
            0 => diagnostic,
            others => diagnostic.sum(format!("and so in {} more", counted(others, "window"))),
        }
    }

    fn place(&self, diagnostic: &Diagnostic) -> Option<Span> {
        let counts = self.apart == Apart::ByPlace && !ONE_WHEREVER.contains(&diagnostic.code);
        diagnostic.primary().filter(|_| counts)
    }
}

fn of_windows(diagnostic: &Diagnostic, place: Option<Span>) -> OfWindows {
    (diagnostic.code.slug, place, diagnostic.accepted.clone())
}
