//! Strips of cloth cut apart: the pieces can be put together again in the strip's length, no less.

#![expect(
    clippy::unwrap_used,
    clippy::arithmetic_side_effects,
    reason = "a test stops at the first broken promise"
)]

mod common;
#[path = "common/strips.rs"]
mod strips;

use common::LITTLE;
use pelmet_bolt::{Layout, LayoutCloth, SearchEffort, check, lay_with};
use strips::Strip;

fn strips(pieces: usize, length: i64) -> impl Iterator<Item = Strip> {
    let cloths = [(0, None), (6, None), (0, Some(160)), (6, Some(320))];
    cloths.into_iter().flat_map(move |(gap, repeat)| {
        (1..=3).map(move |way| Strip {
            width: 1360,
            length,
            pieces,
            gap,
            repeat,
            way,
        })
    })
}

fn laid(strip: Strip, effort: SearchEffort) -> Layout {
    let (cloth, pieces) = strip.job();
    let layout = lay_with(&cloth, &pieces, effort).unwrap();
    assert_eq!(check(&cloth, &pieces, &layout), [], "{strip:?}");
    layout
}

#[test]
fn a_strip_in_few_parts_is_put_together_again() {
    for strip in strips(6, 1000) {
        let layout = laid(strip, SearchEffort::usual(6));
        assert_eq!(layout.exact, strip.optimum(), "{strip:?}");
        assert_eq!(layout.lower_bound, layout.exact, "{strip:?}");
    }
}

#[test]
fn no_bound_is_over_the_strip_and_no_layout_under_it() {
    for strip in strips(24, 2000) {
        let layout = laid(strip, LITTLE);
        assert!(layout.lower_bound <= strip.optimum(), "{strip:?}");
        assert!(strip.optimum() <= layout.exact, "{strip:?}");
    }
}

#[test]
fn more_effort_is_never_for_the_worse_than_none() {
    for strip in strips(24, 2000) {
        let none = laid(strip, SearchEffort::NONE);
        let some = laid(strip, LITTLE);
        assert!(some.exact <= none.exact, "{strip:?}");
    }
}

/// Each strip is as long as a bolt, so both bolts are used up without waste or there is no layout.
#[test]
fn strips_are_put_together_again_on_bolts_of_their_length() {
    for repeat in [None, Some(160)] {
        let strip = |way| Strip {
            width: 1360,
            length: 1600,
            pieces: 6,
            gap: 0,
            repeat,
            way,
        };
        let (cloth, mut pieces) = strip(1).job();
        pieces.extend(strip(2).job().1);
        let cloth = LayoutCloth {
            bolt_length: Some(strip(1).optimum()),
            ..cloth
        };
        let layout = lay_with(&cloth, &pieces, SearchEffort::usual(12)).unwrap();
        assert_eq!(check(&cloth, &pieces, &layout), []);
        assert_eq!(layout.exact, strip(1).optimum() * 2, "{repeat:?}");
    }
}
