//! Lengths: exactness, rounding and the ends of the range.

use pelmet_measure::{Area, Length, Ratio, ratio};
use proptest::prelude::*;

const SMALLEST: Length = Length::from_nanometres(i64::MIN);
const GREATEST: Length = Length::from_nanometres(i64::MAX);

/// Any length up to the largest, either way.
fn any_length_to(largest: Length) -> impl Strategy<Value = Length> {
    (0..=largest.nanometres(), any::<bool>()).prop_map(|(nanometres, backward)| {
        Length::from_nanometres(nanometres) * if backward { -1 } else { 1 }
    })
}

/// Any length a sum could reasonably come to: a thousand times the largest a design may state.
fn any_length() -> impl Strategy<Value = Length> {
    any_length_to(Length::LARGEST * 1_000)
}

fn any_step() -> impl Strategy<Value = Length> {
    (1..=Length::METRE.nanometres()).prop_map(Length::from_nanometres)
}

#[test]
fn units_have_their_legal_size() {
    // NIST SP 811, appendix B.8: 1 in = 0.0254 m and 1 yd = 0.9144 m, exactly; 1 ft = 0.3048 m.
    assert_eq!(Length::INCH.millimetres_text(), "25.4");
    assert_eq!(Length::FOOT.millimetres_text(), "304.8");
    assert_eq!(Length::YARD.millimetres_text(), "914.4");
    assert_eq!(Length::METRE, Length::MILLIMETRE * 1_000);
    assert_eq!(Length::LARGEST, Length::METRE * 10_000);
}

#[test]
fn fractions_of_an_inch_are_exact_to_a_sixty_fourth() {
    for sixty_fourths in -200..200 {
        let length = Length::inch_fraction(sixty_fourths, 64);
        assert_eq!(length.nanometres(), sixty_fourths.saturating_mul(396_875));
        assert_eq!(length * 64, Length::inches(sixty_fourths));
    }
}

#[test]
fn other_fractions_round_to_the_nearest_nanometre() {
    let cases = [
        (1, 3, 8_466_667),
        (-1, 3, -8_466_667),
        (2, 3, 16_933_333),
        (1, -3, -8_466_667),
        (1, 0, 0),
        (i64::MAX, 1, i64::MAX),
        (i64::MIN, 1, i64::MIN),
        (i64::MAX, i64::MIN, -25_400_000),
    ];
    for (numerator, denominator, nanometres) in cases {
        let length = Length::inch_fraction(numerator, denominator);
        assert_eq!(
            length.nanometres(),
            nanometres,
            "{numerator}/{denominator} in"
        );
    }
}

#[test]
fn millimetres_are_written_exactly_and_briefly() {
    let cases = [
        (0, "0"),
        (393_700_000, "393.7"),
        (396_875, "0.396875"),
        (-3_000_000, "-3"),
        (-1, "-0.000001"),
        (10_000, "0.01"),
        (100_000_000, "100"),
        (i64::MIN, "-9223372036854.775808"),
    ];
    for (nanometres, text) in cases {
        assert_eq!(Length::from_nanometres(nanometres).millimetres_text(), text);
        assert_eq!(
            format!("{:?}", Length::from_nanometres(nanometres)),
            format!("{text} mm")
        );
    }
}

#[test]
fn rounding_table() {
    let eighth = Length::inch_fraction(1, 8);
    let sixteenths = |count| Length::inch_fraction(count, 16);
    // In sixteenths: the length, then to an eighth up, down and to the nearest.
    let cases = [
        (0, 0, 0, 0),
        (1, 2, 0, 2),
        (2, 2, 2, 2),
        (3, 4, 2, 4),
        (-1, 0, -2, -2),
        (-2, -2, -2, -2),
        (-3, -2, -4, -4),
    ];
    for (length, up, down, nearest) in cases {
        let length = sixteenths(length);
        assert_eq!(length.round_up_to(eighth), sixteenths(up), "{length:?} up");
        assert_eq!(
            length.round_down_to(eighth),
            sixteenths(down),
            "{length:?} down"
        );
        assert_eq!(
            length.round_to(eighth),
            sixteenths(nearest),
            "{length:?} nearest"
        );
    }
}

#[test]
fn a_step_that_is_not_positive_changes_nothing() {
    let length = Length::millimetres(7);
    for step in [Length::ZERO, -Length::INCH, SMALLEST] {
        assert_eq!(length.round_up_to(step), length);
        assert_eq!(length.round_down_to(step), length);
        assert_eq!(length.round_to(step), length);
    }
}

#[test]
fn parts_round_down() {
    assert_eq!(Length::from_nanometres(10).divided(3).nanometres(), 3);
    assert_eq!(Length::from_nanometres(-10).divided(3).nanometres(), -4);
    assert_eq!(Length::from_nanometres(10).divided(0).nanometres(), 10);
    assert_eq!(Length::from_nanometres(10).portion(2, 3).nanometres(), 6);
    assert_eq!(Length::from_nanometres(-10).portion(2, 3).nanometres(), -7);
    assert_eq!(Length::from_nanometres(10).portion(2, 0).nanometres(), 10);
    assert_eq!(GREATEST.portion(u64::MAX, 1), GREATEST);
    assert_eq!(SMALLEST.portion(u64::MAX, 1), SMALLEST);
    assert_eq!(GREATEST.portion(u64::MAX, u64::MAX), GREATEST);
}

#[test]
fn scaling_rounds_to_the_nearest() {
    let third = ratio(1, 3).unwrap();
    let half = ratio(1, 2).unwrap();
    let cases = [
        (10, third, 3),
        (-10, third, -3),
        (11, third, 4),
        (5, half, 3),
        (-5, half, -3),
        (i64::MAX, Ratio::from_integer(2), i64::MAX),
        (i64::MAX, Ratio::from_integer(-2), i64::MIN),
        (i64::MIN, Ratio::from_integer(i128::MIN), i64::MAX),
        (0, Ratio::from_integer(i128::MAX), 0),
    ];
    for (nanometres, by, expected) in cases {
        let scaled = Length::from_nanometres(nanometres).scaled(by);
        assert_eq!(scaled.nanometres(), expected, "{nanometres} * {by}");
    }
}

#[test]
fn how_often_one_length_goes_into_another() {
    assert_eq!(
        Length::YARD.ratio_to(Length::INCH),
        Some(Ratio::from_integer(36))
    );
    assert_eq!(Length::INCH.ratio_to(-Length::FOOT), ratio(-1, 12));
    assert_eq!(Length::INCH.ratio_to(Length::ZERO), None);
    assert_eq!(SMALLEST.ratio_to(SMALLEST), Some(Ratio::from_integer(1)));
}

#[test]
fn the_ends_of_the_range_hold() {
    let mut length = GREATEST;
    length += Length::INCH;
    assert_eq!(length, GREATEST);
    length = SMALLEST;
    length -= Length::INCH;
    assert_eq!(length, SMALLEST);
    assert_eq!(GREATEST + GREATEST, GREATEST);
    assert_eq!(SMALLEST - GREATEST, SMALLEST);
    assert_eq!(-SMALLEST, GREATEST);
    assert_eq!(SMALLEST.abs(), GREATEST);
    assert_eq!(GREATEST * -3, SMALLEST);
    assert_eq!(SMALLEST * -1, GREATEST);
    assert_eq!(Length::inches(i64::MAX), GREATEST);
    assert_eq!(Length::millimetres(i64::MIN), SMALLEST);
    assert_eq!(
        [GREATEST, GREATEST, Length::INCH]
            .into_iter()
            .sum::<Length>(),
        GREATEST
    );
    assert_eq!(GREATEST.round_up_to(Length::INCH), GREATEST);
    assert_eq!(SMALLEST.round_down_to(Length::INCH), SMALLEST);
    assert!(SMALLEST.round_up_to(GREATEST) >= SMALLEST);
    assert_eq!(GREATEST.round_to(GREATEST), GREATEST);
}

#[test]
fn floats_that_are_no_length_are_refused() {
    let beyond = Length::LARGEST.as_millimetres_f64() + 1.0;
    for millimetres in [
        f64::NAN,
        f64::INFINITY,
        f64::NEG_INFINITY,
        f64::MAX,
        beyond,
        -beyond,
    ] {
        assert_eq!(
            Length::from_millimetres_f64(millimetres),
            None,
            "{millimetres}"
        );
    }
    let cases = [
        (-0.0, 0),
        (393.7, 393_700_000),
        (0.000_000_6, 1),
        (-0.000_000_6, -1),
    ];
    for (millimetres, nanometres) in cases {
        let length = Length::from_millimetres_f64(millimetres).unwrap();
        assert_eq!(length.nanometres(), nanometres, "{millimetres}");
    }
    let largest = Length::LARGEST.as_millimetres_f64();
    assert_eq!(Length::from_millimetres_f64(largest), Some(Length::LARGEST));
}

#[test]
fn signs() {
    for (length, positive, negative, zero) in [
        (Length::INCH, true, false, false),
        (-Length::INCH, false, true, false),
        (Length::ZERO, false, false, true),
    ] {
        assert_eq!(length.is_positive(), positive);
        assert_eq!(length.is_negative(), negative);
        assert_eq!(length.is_zero(), zero);
    }
}

#[test]
fn areas() {
    let sample = Area::of(Length::inches(18), Length::inches(24));
    assert_eq!(sample.square_inches_text(), "432");
    assert_eq!(sample.square_metres_text(), "0.279");
    assert_eq!(
        Area::of(Length::METRE, -Length::METRE).square_metres_text(),
        "-1.000"
    );
    assert_eq!(
        Area::of(Length::INCH, Length::inch_fraction(5, 2)).square_inches_text(),
        "2.5"
    );
    assert_eq!((sample + sample - sample * 2), Area::ZERO);
    let largest = Area::from_square_nanometres(i128::MAX);
    assert_eq!([largest, sample].into_iter().sum::<Area>(), largest);
    assert_eq!(Area::of(SMALLEST, SMALLEST).square_nanometres(), 1 << 126);
}

proptest! {
    #[test]
    fn adding_and_taking_away_are_inverse(a in any_length(), b in any_length()) {
        prop_assert_eq!(a + b - b, a);
        prop_assert_eq!(a - b, -(b - a));
    }

    #[test]
    fn rounding_stays_within_one_step(length in any_length(), step in any_step()) {
        let up = length.round_up_to(step);
        let down = length.round_down_to(step);
        let nearest = length.round_to(step);
        prop_assert!(down <= length && length <= up);
        prop_assert!(up - down <= step);
        prop_assert!((nearest - length).abs() * 2 <= step);
        prop_assert!(nearest == up || nearest == down);
        for rounded in [up, down, nearest] {
            prop_assert!(rounded.ratio_to(step).unwrap().is_integer());
            prop_assert_eq!(rounded.round_up_to(step), rounded);
        }
    }

    #[test]
    fn parts_never_make_more_than_the_whole(length in any_length(), parts in 1..1_000_u32) {
        let part = length.divided(parts);
        prop_assert!(part * i64::from(parts) <= length);
        prop_assert!((part + Length::from_nanometres(1)) * i64::from(parts) > length);
        prop_assert_eq!(length.portion(u64::from(parts), u64::from(parts)), length);
    }

    #[test]
    fn a_length_is_its_ratio_to_another_times_that_other(a in any_length(), b in any_step()) {
        prop_assert_eq!(b.scaled(a.ratio_to(b).unwrap()), a);
    }

    #[test]
    fn drawing_a_stated_length_and_reading_it_back_changes_nothing(
        length in any_length_to(Length::LARGEST),
    ) {
        prop_assert_eq!(Length::from_millimetres_f64(length.as_millimetres_f64()), Some(length));
    }

    #[test]
    fn written_millimetres_read_back_exactly(length in any_length()) {
        let text = length.millimetres_text();
        let (whole, decimals) = text.split_once('.').unwrap_or((&text, ""));
        prop_assert!(!decimals.ends_with('0'));
        prop_assert_eq!(format!("{whole}{decimals:0<6}").parse::<i64>().unwrap(), length.nanometres());
    }

    #[test]
    fn hundredths_of_a_millimetre_are_exact(hundredths in -1_000_000..1_000_000_i64) {
        let length = Length::from_nanometres(10_000) * hundredths;
        prop_assert_eq!(length * 100, Length::millimetres(hundredths));
    }

    #[test]
    fn nothing_panics(a: i64, b: i64, times: i64, parts: u64, whole: u64, float: f64) {
        let (left, right) = (Length::from_nanometres(a), Length::from_nanometres(b));
        let _ = (left + right, left - right, -left, left * times, left.abs());
        let _ = (left.round_up_to(right), left.round_down_to(right), left.round_to(right));
        let _ = (left.portion(parts, whole), left.ratio_to(right), Area::of(left, right));
        let _ = (Length::inch_fraction(a, b), Length::from_millimetres_f64(float));
        let _ = (left.millimetres_text(), Area::of(left, right).square_metres_text());
    }
}
