//! A search that is watched: it tells how far it has come, and may be broken off.

#![expect(
    clippy::unwrap_used,
    clippy::arithmetic_side_effects,
    reason = "a test stops at the first broken promise"
)]

#[path = "common/strips.rs"]
mod strips;

use std::ops::ControlFlow;

use pelmet_bolt::{
    Layout, LayoutCloth, LayoutPiece, SearchEffort, SearchProgress, check, lay_watched, lay_with,
};
use strips::Strip;

const EFFORT: SearchEffort = SearchEffort::steps(20_000_000);

/// A job that takes many steps and reaches no bound.
fn job() -> (LayoutCloth, Vec<LayoutPiece>) {
    strip().job()
}

fn strip() -> Strip {
    Strip {
        width: 1360,
        length: 4000,
        pieces: 60,
        gap: 0,
        repeat: Some(160),
        way: 1,
    }
}

/// The layout of a search that is broken off when it reports for the last of so many times, and all
/// its reports.
fn stopped_after(reports: usize) -> (Layout, Vec<SearchProgress>) {
    let (cloth, pieces) = job();
    let mut told = Vec::new();
    let mut watch = |progress: &SearchProgress| {
        told.push(*progress);
        if told.len() < reports {
            ControlFlow::Continue(())
        } else {
            ControlFlow::Break(())
        }
    };
    let layout = lay_watched(&cloth, &pieces, EFFORT, &mut watch).unwrap();
    (layout, told)
}

#[test]
fn a_search_broken_off_at_any_time_keeps_a_sound_layout() {
    let (cloth, pieces) = job();
    let most = lay_with(&cloth, &pieces, SearchEffort::NONE)
        .unwrap()
        .bought;
    let mut shortest = most;
    for reports in [1, 2, 3, 5, 9, 17, 30] {
        let (layout, told) = stopped_after(reports);
        assert!(layout.stopped_early);
        assert_eq!(told.len(), reports);
        assert_eq!(check(&cloth, &pieces, &layout), []);
        assert!(layout.bought <= shortest, "after {reports} reports");
        assert!(layout.bought <= told[reports - 1].bought);
        shortest = layout.bought;
    }
    assert!(shortest < most);
}

#[test]
fn a_search_that_is_only_watched_comes_to_the_same() {
    let (cloth, pieces) = job();
    let (watched, told) = stopped_after(usize::MAX);
    assert_eq!(watched, lay_with(&cloth, &pieces, EFFORT).unwrap());
    assert!(strip().optimum() <= watched.exact);
    assert!(!watched.stopped_early);
    assert_eq!(told[told.len() - 1].bought, watched.bought);
}

#[test]
fn reports_tell_of_more_steps_and_never_of_longer_layouts() {
    let (_, told) = stopped_after(usize::MAX);
    assert!(told.len() > 20);
    for pair in told.windows(2) {
        assert!(pair[0].spent < pair[1].spent);
        assert!(pair[0].bought >= pair[1].bought);
        assert_eq!(pair[1].allowed, EFFORT.count());
    }
}
