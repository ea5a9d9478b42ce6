//! How much is rounding and no mistake: [`ROUNDING`], and not a nanometre more.

use pelmet_measure::Length;
use pelmet_model::{FoldPlace, PleatKind, PleatMatter, PleatRule, Ranged, StepKind, TowardOrder};
use pelmet_workroom::{ROUNDING, check, fold, lay_out};

use crate::rules::*;

const INCH: Length = Length::INCH;
const NANOMETRE: Length = Length::from_nanometres(1);

fn left(depth: i64) -> StepKind {
    knife(Length::inches(depth), TowardOrder::Left)
}

fn at(inches: i64, less: Length) -> FoldPlace {
    FoldPlace::At(Length::inches(inches) - less)
}

/// Everything wrong with a rule on a strip of this flat width, whether laid out or not.
fn matters(rule: &PleatRule, flat: Length) -> Vec<PleatMatter> {
    match lay_out(rule, None, Some(flat)) {
        Ok(laid) => check(rule, &laid, &fold(laid.flat, &laid.creases)),
        Err(matter) => vec![matter],
    }
}

#[test]
fn no_mistake_is_as_small_as_the_rounding() {
    let stacked = |rule| PleatRule {
        layers: Some(9),
        ..rule
    };
    type Case = (&'static str, fn(Length) -> PleatRule);
    let cases: [Case; 6] = [
        ("two pleats need the same cloth", |over| {
            let on = FoldPlace::On(Length::inches(2) - over);
            from_left(vec![
                placed(left(1), at(6, Length::ZERO)),
                placed(left(1), on),
            ])
        }),
        ("a fold passes the centre", |over| {
            let knife = knife(INCH, TowardOrder::Centre);
            from_centre(vec![placed(knife, at(2, over))])
        }),
        ("the edge lies inside a fold", |over| {
            from_left(vec![placed(left(1), at(2, over))])
        }),
        ("an underfold overruns the edge", |over| {
            let right = knife(Length::inches(2), TowardOrder::Right);
            from_left(vec![plain(Length::inches(2) - over), right, StepKind::Rest])
        }),
        ("a placed pleat needs plain cloth", |over| {
            from_left(vec![plain(Length::inches(5)), placed(left(1), at(7, over))])
        }),
        (STACK, |over| {
            let between = plain(INCH - over);
            from_left(vec![plain(INCH), left(1), between, left(1), StepKind::Rest])
        }),
    ];
    for (name, rule) in cases {
        let found = |over| {
            let rule = rule(over);
            // Where a stack is not the mistake looked for, it may be as thick as it will.
            let rule = if name == STACK { rule } else { stacked(rule) };
            matters(&rule, Length::inches(30))
        };
        assert_eq!(found(ROUNDING), [], "{name}");
        assert_eq!(found(ROUNDING + NANOMETRE).len(), 1, "{name}");
    }
}

#[test]
fn cloth_is_short_by_more_than_the_rounding_or_not_at_all() {
    let nine = Length::inches(9);
    let rule = from_left(vec![placed(left(1), at(9, Length::ZERO))]);
    assert!(lay_out(&rule, None, Some(nine - ROUNDING)).is_ok());
    let flat = nine - ROUNDING - NANOMETRE;
    let refused = PleatMatter::TakesTooMuch { flat, taken: nine };
    assert_eq!(lay_out(&rule, None, Some(flat)), Err(refused));
}

/// Two thirds of an inch are a third of a nanometre more than is held. Over 300 spaces that comes
/// to a hundred nanometres, which the spaces take up between them, a nanometre each; no face or
/// depth moves, and none are left over behind the last pleat.
#[test]
fn plain_cloth_takes_up_what_rounding_leaves() {
    let space = Length::inch_fraction(2, 3);
    let box_pleat = boxed(inches(2), Some(inches(4)));
    let rule = from_left(vec![repeat(
        Ranged::fixed(300),
        vec![plain(space), box_pleat],
    )]);
    let laid = lay_out(&rule, Some(Length::inches(350)), None).unwrap();
    let ends = laid.pleats.iter().map(|pleat| pleat.to);
    for (end, pleat) in [Length::ZERO].into_iter().chain(ends).zip(&laid.pleats) {
        let off = pleat.from - end - space;
        assert!(Length::ZERO <= off && off <= NANOMETRE, "{off:?}");
        assert_eq!((pleat.depth, pleat.face), (inches(2), Some(inches(4))));
    }
    assert_eq!(laid.pleats[299].to, laid.flat);
}

/// Of so many spaces none can take a nanometre without all of them taking it; they are settled one
/// by one, and only those grow that are needed.
#[test]
fn the_spaces_of_a_long_strip_share_a_nanometre_each() {
    let space = open(Length::ZERO, Length::inches(9), INCH);
    let turn = vec![space, knife(inches(1), TowardOrder::Left)];
    let rule = from_left(vec![repeat(Ranged::fixed(1_800), turn)]);
    let wanted = INCH * 1_800 + NANOMETRE * 1_799;
    let laid = lay_out(&rule, Some(wanted), None).unwrap();
    assert_eq!(laid.finished, wanted);
    let ends = laid.pleats.iter().map(|pleat| pleat.to);
    let grown = [Length::ZERO]
        .into_iter()
        .chain(ends)
        .zip(&laid.pleats)
        .filter(|(end, pleat)| pleat.from - *end == INCH + NANOMETRE);
    assert_eq!(grown.count(), 1_799);
}

/// A double box uses ten times its depth, so that all of them grow by no less than 18 micrometres.
#[test]
fn the_depths_of_a_long_strip_are_settled_one_by_one_too() {
    let quarter = inches(2);
    let kind = of(PleatKind::DoubleBox);
    let box_pleat = pleat(kind, Ranged::between(inches(1), inches(8), quarter));
    let rule = from_left(vec![repeat(Ranged::fixed(1_800), vec![box_pleat])]);
    let wanted = quarter * 18_000 + NANOMETRE * 17_990;
    let laid = lay_out(&rule, None, Some(wanted)).unwrap();
    let grown = laid.pleats.iter().filter(|pleat| pleat.depth > quarter);
    assert_eq!((laid.flat, grown.count()), (wanted, 1_799));
}

const STACK: &str = "a fold lies on a fold";
