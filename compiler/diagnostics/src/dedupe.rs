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
    let mut windows: BTreeMap<OfWindows, Windows> = BTreeMap::new();
    let mut told = BTreeSet::new();
    let mut kept = Vec::new();
    for found in found {
        let place = place(&found.diagnostic, apart);
        let of_window = found.window.map(|window| {
            let cause = of_windows(&found.diagnostic, place);
            (window, windows.entry(cause).or_insert(Windows::of(window)))
        });
        let Found { diagnostic, .. } = &found;
        match of_window {
            Some((window, windows)) if window != windows.first => {
                windows.others.insert(window);
            }
            _ if told.insert((diagnostic.code.slug, place, diagnostic.title.clone())) => {
                kept.push(found)
            }
            _ => {}
        }
    }
    let with_others = |found: Found| {
        let place = place(&found.diagnostic, apart);
        let of_windows = windows.get(&of_windows(&found.diagnostic, place));
        let others = of_windows.filter(|_| found.window.is_some());
        match others.map_or(0, |windows| windows.others.len()) {
            0 => found.diagnostic,
            others => {
                let more = format!("and so in {} more", counted(others, "window"));
                found.diagnostic.sum(more)
            }
        }
    };
    kept.into_iter().map(with_others).collect()
}

impl Windows {
    fn of(first: usize) -> Self {
        Self {
            first,
            others: BTreeSet::new(),
        }
    }
}

fn of_windows(diagnostic: &Diagnostic, place: Option<Span>) -> OfWindows {
    (diagnostic.code.slug, place, diagnostic.accepted.clone())
}

fn place(diagnostic: &Diagnostic, apart: Apart) -> Option<Span> {
    let counts = apart == Apart::ByPlace && !ONE_WHEREVER.contains(&diagnostic.code);
    diagnostic.primary().filter(|_| counts)
}
