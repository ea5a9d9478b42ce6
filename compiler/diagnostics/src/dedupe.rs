//! One mistake, one report.
//!
//! Reports are of one mistake where they are alike in code, place and title; the title counts, since
//! two properties may be missing from one item. A text that several windows use has its mistake once
//! too, though each of them words it with its own numbers: it is told of the first of them, with the
//! number of the others, but for windows in which the maker accepts it.

use std::collections::{BTreeMap, BTreeSet};

use crate::{Code, Diagnostic, Span, codes, counted};

/// A report as it was collected.
#[derive(Clone, PartialEq, Eq, Debug)]
pub(crate) struct Found {
    pub(crate) report: Diagnostic,
    /// The window it was found in, by number, where the sums found it.
    pub(crate) window: Option<usize>,
}

/// Whether the place tells one mistake from another.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Default)]
pub(crate) enum Apart {
    /// The same mistake at two places is two mistakes.
    #[default]
    ByPlace,
    /// It is one, wherever it stands.
    ByTitle,
}

/// Mistakes of which all places are one: of a chain of names that is too long, all that hangs on it
/// is too deep.
const ONE_WHEREVER: [&Code; 1] = [&codes::names_too_deep::CODE];

/// What the reports of several windows have in common where they are of one mistake: its code, where
/// it was made, and for what reason it is accepted.
type OfWindows = (&'static str, Option<Span>, Option<String>);

/// The window that tells a mistake, and the others that have it.
struct Windows {
    first: usize,
    others: BTreeSet<usize>,
}

/// One report of each mistake, in the order they came.
pub(crate) fn dedupe(found: Vec<Found>, apart: Apart) -> Vec<Diagnostic> {
    let mut windows: BTreeMap<OfWindows, Windows> = BTreeMap::new();
    let mut told = BTreeSet::new();
    let mut kept = Vec::new();
    for found in found {
        let place = place(&found.report, apart);
        let of_window = found.window.map(|window| {
            let mistake = of_windows(&found.report, place);
            (
                window,
                windows.entry(mistake).or_insert(Windows::of(window)),
            )
        });
        let Found { report, .. } = &found;
        match of_window {
            Some((window, windows)) if window != windows.first => {
                windows.others.insert(window);
            }
            _ if told.insert((report.code.slug, place, report.title.clone())) => kept.push(found),
            _ => {}
        }
    }
    let with_others = |found: Found| {
        let place = place(&found.report, apart);
        let of_windows = windows.get(&of_windows(&found.report, place));
        let others = of_windows.filter(|_| found.window.is_some());
        match others.map_or(0, |windows| windows.others.len()) {
            0 => found.report,
            others => {
                let more = format!("and so in {} more", counted(others, "window"));
                found.report.sum(more)
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

fn of_windows(report: &Diagnostic, place: Option<Span>) -> OfWindows {
    (report.code.slug, place, report.accepted.clone())
}

fn place(report: &Diagnostic, apart: Apart) -> Option<Span> {
    let counts = apart == Apart::ByPlace && !ONE_WHEREVER.contains(&report.code);
    report.primary().filter(|_| counts)
}
