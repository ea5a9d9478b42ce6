//! Pleats that are stitched or drawn up at the heading.

use pelmet_measure::{Length, Ratio};
use pelmet_model::{
    Held, Lies, PleatKind, PleatMatter, PleatOrder, Pleating, Ranged, StepKind, TowardOrder,
};
use pelmet_workroom::{ROUNDING, finished_at, fold_pleating, is_hidden, lay_out};

use crate::rules::*;

const INCH: Length = Length::INCH;

fn stitched(order: &PleatOrder, take_up: i64, face: Option<i64>) -> StepKind {
    let face = face.map(|eighths| Ranged::fixed(inches(eighths)));
    let order = PleatOrder {
        face,
        ..order.clone()
    };
    pleat(order, Ranged::fixed(inches(take_up)))
}

fn gathered(ratio: Option<(i128, i128)>, to: Option<i64>) -> StepKind {
    let ratio = ratio.map(|(flat, finished)| Ratio::new(flat, finished));
    let to = to.map(|eighths| Ranged::fixed(inches(eighths)));
    pleat(
        drawn_up(PleatKind::Gathers, ratio, to),
        Ranged::fixed(Length::ZERO),
    )
}

fn eighths(lengths: &[Length]) -> Vec<i64> {
    let one = inches(1).nanometres();
    lengths
        .iter()
        .map(|length| length.nanometres() / one)
        .collect()
}

#[test]
fn two_points_come_together_with_the_fingers_at_equal_parts_between() {
    let pinch = |fingers| pinch(fingers, None);
    for (shape, take_up, face, fingers, depth) in [
        (pinch(2), 48, None, vec![28, 52], 12),
        (pinch(3), 48, None, vec![24, 40, 56], 8),
        (pinch(4), 48, None, vec![22, 34, 46, 58], 6),
        (pinch(5), 80, None, vec![24, 40, 56, 72, 88], 8),
        (pinch(3), 40, Some(8), vec![24, 40, 56], 6),
        (of(PleatKind::Goblet), 48, None, vec![], 24),
        (of(PleatKind::Cartridge), 24, Some(8), vec![], 12),
    ] {
        let two = plain(Length::inches(2));
        let rule = from_left(vec![two.clone(), stitched(&shape, take_up, face), two]);
        let laid = lay_out(&rule, None, None).unwrap();
        let made = &laid.pleats[0];
        let leaves = face.unwrap_or(0);
        let all = (made.from, made.to, made.take_up, laid.finished);
        let expected = [16, 16 + take_up + leaves, take_up, 32 + leaves].map(inches);
        assert_eq!(all, expected.into(), "{shape:?}");
        assert_eq!(eighths(&made.fingers), fingers, "{shape:?}");
        assert_eq!(eighths(&[made.depth]), [depth], "{shape:?}");
        assert_eq!(made.held, Held::Stitched);
        assert_eq!(fold_pleating(&laid).finished, laid.finished, "{shape:?}");
    }
}

/// A single finger is no more than a stitched loop: nothing lies between it and another.
#[test]
fn a_pinch_of_one_finger_hides_nothing() {
    let pinch = stitched(&pinch(1, None), 48, None);
    let laid = lay_out(&from_left(vec![plain(INCH), pinch]), None, None).unwrap();
    assert_eq!(eighths(&laid.pleats[0].fingers), [32]);
    assert_eq!(laid.drawn.len(), 1);
    let folding = fold_pleating(&laid);
    assert!((8..56).all(|at| !is_hidden(&folding, inches(at))));
}

#[test]
fn what_holds_a_pleat_depends_on_its_kind() {
    let tuck = pointing(PleatKind::Tuck, TowardOrder::Left);
    let one_inch = Ranged::fixed(INCH);
    for (step, held, take_up) in [
        (knife(INCH, TowardOrder::Left), Held::Pressed, 16),
        (pleat(tuck, one_inch), Held::Stitched, 16),
        (
            stitched(&of(PleatKind::Goblet), 48, None),
            Held::Stitched,
            48,
        ),
        (gathered(Some((5, 2)), Some(32)), Held::Drawn, 48),
    ] {
        let laid = lay_out(&from_left(vec![plain(INCH), step]), None, None).unwrap();
        let made = &laid.pleats[0];
        assert_eq!(
            (made.held, made.take_up),
            (held, inches(take_up)),
            "{}",
            made.kind
        );
    }
}

#[test]
fn gathers_drawn_up_to_a_stated_width_come_to_just_that() {
    let odd = Length::inches(4) + Length::from_nanometres(1);
    let kind = drawn_up(
        PleatKind::Pencil,
        Some(Ratio::new(3, 1)),
        Some(Ranged::fixed(odd)),
    );
    let rule = from_left(vec![plain(INCH), pleat(kind, Ranged::fixed(Length::ZERO))]);
    let laid = lay_out(&rule, None, None).unwrap();
    assert_eq!((laid.finished, laid.flat), (INCH + odd, INCH + odd * 3));
    assert_eq!(laid.pleats[0].kind, PleatKind::Pencil);
}

/// Between the first and the last finger the cloth is pressed together; a goblet stands open.
#[test]
fn only_what_lies_between_fingers_is_hidden() {
    let hidden_at = |shape: PleatOrder| -> Vec<bool> {
        let rule = from_left(vec![plain(INCH), stitched(&shape, 48, None), plain(INCH)]);
        let folding = fold_pleating(&lay_out(&rule, None, None).unwrap());
        let places = [4, 8, 12, 17, 32, 47, 52, 60];
        places.map(|at| is_hidden(&folding, inches(at))).to_vec()
    };
    let pinched = [false, false, false, true, true, true, false, false];
    assert_eq!(hidden_at(pinch(3, None)), pinched);
    assert_eq!(hidden_at(of(PleatKind::Goblet)), [false; 8]);
    assert_eq!(hidden_at(of(PleatKind::Cartridge)), [false; 8]);
}

#[test]
fn a_tuck_takes_up_twice_its_depth_and_lies_in_front() {
    for (toward, creases, fold_at) in [
        (TowardOrder::Left, [24, 32], 16),
        (TowardOrder::Right, [32, 40], 32),
    ] {
        let kind = pointing(PleatKind::Tuck, toward);
        let three = plain(Length::inches(3));
        let rule = from_left(vec![three.clone(), pleat(kind, Ranged::fixed(INCH)), three]);
        let laid = lay_out(&rule, None, None).unwrap();
        let at: Vec<Length> = laid.creases.iter().map(|crease| crease.at).collect();
        assert_eq!(eighths(&at), creases);
        assert_eq!(eighths(&[laid.pleats[0].folds[0].finished]), [fold_at]);
        assert_eq!(
            (laid.flat, laid.finished),
            (Length::inches(8), Length::inches(6))
        );
        let folding = fold_pleating(&laid);
        assert_eq!((folding.finished, folding.thickest), (Length::inches(6), 3));
    }
}

fn widths(laid: &Pleating) -> [i64; 2] {
    [laid.flat, laid.finished].map(|width| eighths(&[width])[0])
}

#[test]
fn gathers_come_to_the_widths_by_their_ratio_or_take_it_from_the_widths() {
    let two = Some((2, 1));
    let cases = [
        (
            "by ratio",
            vec![gathered(two, None)],
            Some(80),
            None,
            [160, 80],
        ),
        (
            "by ratio, from the flat",
            vec![gathered(two, None)],
            None,
            Some(160),
            [160, 80],
        ),
        (
            "2 1/4 times",
            vec![gathered(Some((9, 4)), None)],
            Some(80),
            None,
            [180, 80],
        ),
        (
            "to a stated width",
            vec![gathered(two, Some(40)), plain(INCH)],
            None,
            None,
            [88, 48],
        ),
        (
            "as the widths say",
            vec![gathered(None, None)],
            Some(80),
            Some(200),
            [200, 80],
        ),
        (
            "between margins",
            vec![plain(INCH), gathered(two, None), plain(INCH)],
            Some(80),
            None,
            [144, 80],
        ),
        (
            "beside a pleat",
            vec![
                gathered(two, None),
                knife(INCH, TowardOrder::Left),
                plain(INCH),
            ],
            Some(80),
            None,
            [168, 80],
        ),
    ];
    for (name, steps, finished, flat, expected) in cases {
        let laid = lay_out(&from_left(steps), finished.map(inches), flat.map(inches)).unwrap();
        assert_eq!(widths(&laid), expected, "{name}");
        let folding = fold_pleating(&laid);
        assert!(
            (folding.finished - laid.finished).abs() <= ROUNDING,
            "{name}"
        );
        let drawn = folding
            .stretches
            .iter()
            .filter(|stretch| stretch.lies == Lies::Drawn);
        assert_eq!(drawn.count(), 1, "{name}");
        let run = &laid.drawn[0];
        let (flat, take_up) = (run.to - run.from, laid.pleats[0].take_up);
        assert!(run.keeps.is_positive(), "{name}");
        assert_eq!(flat - run.keeps, take_up, "{name}");
    }
}

/// Half the cloth of a gathered run lies within half the width it is drawn up to.
#[test]
fn a_place_on_gathered_cloth_lies_as_far_along_as_its_part_of_it() {
    let rule = from_left(vec![
        plain(INCH),
        gathered(Some((3, 1)), Some(32)),
        plain(INCH),
    ]);
    let folding = fold_pleating(&lay_out(&rule, None, None).unwrap());
    let places = folding.stretches.iter().map(|stretch| {
        let middle = (stretch.flat_from + stretch.flat_to).divided(2);
        eighths(&[middle, finished_at(stretch, middle)])
    });
    let expected = [vec![4, 4], vec![56, 24], vec![108, 44]];
    assert_eq!(places.collect::<Vec<_>>(), expected);
}

#[test]
fn gathers_that_say_nothing_need_both_widths() {
    let rule = from_left(vec![gathered(None, None)]);
    for (finished, flat) in [
        (None, None),
        (Some(inches(80)), None),
        (None, Some(inches(80))),
    ] {
        assert_eq!(
            lay_out(&rule, finished, flat),
            Err(PleatMatter::WidthMissing)
        );
    }
    let by_ratio = from_left(vec![gathered(Some((2, 1)), None)]);
    assert_eq!(
        lay_out(&by_ratio, None, None),
        Err(PleatMatter::WidthMissing)
    );
}

/// Spaces keep their ideals where gathers can take what is left.
#[test]
fn gathers_take_what_is_left_before_a_space_moves() {
    let space = || open(INCH, Length::inches(9), Length::inches(2));
    let rule = from_left(vec![space(), gathered(Some((3, 1)), None), space()]);
    let laid = lay_out(&rule, Some(Length::inches(20)), None).unwrap();
    assert_eq!(laid.pleats[0].from, Length::inches(2));
    assert_eq!(laid.flat, Length::inches(52));
}
