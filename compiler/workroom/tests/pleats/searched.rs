//! Which counts and lengths the search comes to.

use pelmet_measure::Length;
use pelmet_model::{PleatKind, PleatMatter, Ranged, StepKind, TowardOrder};
use pelmet_workroom::{ROUNDING, lay_out};

use crate::rules::*;

const INCH: Length = Length::INCH;

fn left() -> StepKind {
    knife(INCH, TowardOrder::Left)
}

/// Knives side by side are no wider for being more: the finished width alone never settles how
/// many there are.
#[test]
fn pleats_without_a_space_are_counted_by_the_take_up() {
    for over in [Length::ZERO, ROUNDING] {
        let four = Length::inches(4);
        let rule = from_left(vec![
            plain(four),
            any_number(vec![left()]),
            plain(four + over),
        ]);
        let laid = lay_out(&rule, Some(Length::inches(8)), Some(Length::inches(14)));
        assert_eq!(laid.unwrap().pleats.len(), 3, "{over:?}");
    }
}

/// An inverted pleat deeper than half its face draws its neighbours over one another.
#[test]
fn a_panel_may_come_out_narrower_for_every_pleat_more() {
    let pleat = inverted(Length::inches(3), Some(Length::inches(4)));
    let rule = from_left(vec![any_number(vec![pleat]), plain(Length::inches(10))]);
    for (finished, pleats) in [(8, 1), (6, 2), (2, 4)] {
        let laid = lay_out(&rule, Some(Length::inches(finished)), None).unwrap();
        assert_eq!(laid.pleats.len(), pleats, "{finished}");
    }
}

/// Of three open counts two are of wide groups, of which few fit; the search does not tire itself
/// out on more of them before it comes to the fine pleats.
#[test]
fn fine_pleats_beside_wide_groups_are_found() {
    let wide = || any_number(vec![left(), plain(Length::inches(50)), left()]);
    let fine = any_number(vec![left(), plain(inches(1)), left()]);
    let rule = from_left(vec![wide(), wide(), fine]);
    // Two groups of 50 in and 400 spaces of 1/8 in.
    let laid = lay_out(&rule, Some(Length::inches(150)), None).unwrap();
    assert_eq!(laid.finished, Length::inches(150));
}

/// Rules whose take-up can be had one way and whose plain cloth another.
#[test]
fn widths_that_contradict_name_the_take_up_that_goes_with_the_finished_width() {
    let space = open(Length::inches(3), Length::inches(4), Length::inches(3));
    let turns = |least| {
        let count = Ranged {
            least,
            ideal: least,
            most: 9,
        };
        repeat(count, vec![left(), space.clone()])
    };
    let two = plain(Length::inches(2));
    let knives = pleat(
        pointing(PleatKind::Knife, TowardOrder::Left),
        Ranged::between(INCH, Length::inches(2), INCH),
    );
    let cases = [
        // Two inches can be taken up, by one pleat; that one is never 8 in wide.
        (
            "a pleat too few for the width",
            vec![two.clone(), turns(1), two],
            (8, 10),
            4,
        ),
        // Of 4, 6, 8 ... the 8 comes nearest to 7 1/2.
        (
            "a take-up between two counts",
            vec![turns(2), StepKind::Rest],
            (30, 37),
            8,
        ),
        (
            "deeper than the depths allow",
            vec![repeat(Ranged::fixed(5), vec![knives]), StepKind::Rest],
            (30, 55),
            20,
        ),
    ];
    for (name, steps, (finished, flat), take_up) in cases {
        // An odd half inch in the flat width keeps the nearest take-up from being a tie.
        let flat = Length::inches(flat)
            + if take_up == 8 {
                inches(4)
            } else {
                Length::ZERO
            };
        let finished = Length::inches(finished);
        let expected = PleatMatter::WidthsContradict {
            flat,
            finished,
            take_up: Length::inches(take_up),
            turn: Length::ZERO,
        };
        let found = lay_out(&from_left(steps), Some(finished), Some(flat));
        assert_eq!(found, Err(expected), "{name}");
    }
}
