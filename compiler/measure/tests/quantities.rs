//! Quantities, units and dimensions: exact sums, refused nonsense, the published sizes of units.
#![expect(
    clippy::unwrap_used,
    reason = "a test stops at the first broken promise"
)]

use pelmet_measure::{
    Area, Dimension, Length, Mass, Money, Quantity, QuantityFinding, Ratio, Unit, number_text,
    ratio,
};
use proptest::prelude::*;
use std::cmp::Ordering;

fn of(amount: i128, unit: Unit) -> Quantity {
    Quantity::of(Ratio::from_integer(amount), unit).unwrap()
}

fn number(amount: i128) -> Quantity {
    Quantity::number(Ratio::from_integer(amount))
}

fn money(amount: i128) -> Quantity {
    Quantity::money(Ratio::from_integer(amount))
}

fn mismatch(left: Dimension, right: Dimension) -> QuantityFinding {
    QuantityFinding::Mismatch { left, right }
}

/// The size of one unit counted in another, rounded to so many decimals.
fn size_in(unit: Unit, other: Unit, decimals: u32) -> i128 {
    let exact = of(1, unit)
        .divide(of(1, other))
        .unwrap()
        .as_ratio()
        .unwrap();
    let scaled = Quantity::number(exact)
        .multiply(number(10_i128.pow(decimals)))
        .unwrap();
    scaled.amount.round().to_integer()
}

#[test]
fn units_have_their_published_size() {
    // NIST SP 811, appendix B.8: the factors to the metric unit, with the decimals given here.
    let table = [
        (Unit::Inch, Unit::Metre, 4, 254),
        (Unit::Foot, Unit::Metre, 4, 3_048),
        (Unit::Yard, Unit::Metre, 4, 9_144),
        (Unit::Ounce, Unit::Kilogram, 8, 2_834_952),
        (Unit::Pound, Unit::Kilogram, 8, 45_359_237),
        // 0.03390575 kg/m2, here as 33.90575 g/m2.
        (
            Unit::OuncePerSquareYard,
            Unit::GramPerSquareMetre,
            5,
            3_390_575,
        ),
    ];
    for (unit, metric, decimals, factor) in table {
        assert_eq!(size_in(unit, metric, decimals), factor, "{unit:?}");
    }
}

#[test]
fn sixteen_ounces_are_a_pound_and_the_metric_steps_are_tens() {
    assert_eq!(of(16, Unit::Ounce), of(1, Unit::Pound));
    assert_eq!(of(36, Unit::Inch), of(1, Unit::Yard));
    assert_eq!(of(3, Unit::Foot), of(1, Unit::Yard));
    assert_eq!(of(10, Unit::Millimetre), of(1, Unit::Centimetre));
    assert_eq!(of(100, Unit::Centimetre), of(1, Unit::Metre));
    assert_eq!(of(1_000, Unit::Gram), of(1, Unit::Kilogram));
    assert_eq!(
        of(250, Unit::Percent),
        Quantity::number(ratio(5, 2).unwrap())
    );
}

#[test]
fn every_unit_is_known_by_its_symbol_and_every_offered_word_is_a_unit() {
    for unit in Unit::ALL {
        assert_eq!(Unit::from_word(unit.symbol()), Some(*unit));
        assert!(unit.size() > Ratio::from_integer(0));
    }
    for word in Unit::WORDS {
        assert!(Unit::from_word(word).is_some(), "{word}");
    }
}

#[test]
fn spellings() {
    let table: &[(Unit, &[&str])] = &[
        (Unit::Inch, &["in", "inch", "inches", "\"", "″", "”"]),
        (Unit::Foot, &["ft", "foot", "feet", "'", "′", "’"]),
        (Unit::Yard, &["yd", "yds", "yard", "yards"]),
        (Unit::Millimetre, &["mm", "millimetre", "millimeters"]),
        (Unit::Centimetre, &["cm", "centimetres", "centimeter"]),
        (Unit::Metre, &["m", "metre", "meters"]),
        (Unit::Gram, &["g", "gram", "grams"]),
        (Unit::Kilogram, &["kg", "kilograms"]),
        (Unit::Ounce, &["oz", "ounces"]),
        (Unit::Pound, &["lb", "lbs", "pounds"]),
        (Unit::GramPerSquareMetre, &["g/m2", "g/m²", "gsm"]),
        (Unit::OuncePerSquareYard, &["oz/yd2", "oz/yd²"]),
        (Unit::Percent, &["%", "percent"]),
        (Unit::Degree, &["deg", "degree", "degrees", "°"]),
    ];
    for (unit, words) in table {
        for word in *words {
            assert_eq!(Unit::from_word(word), Some(*unit), "{word}");
        }
    }
    for word in ["", "IN", "inchs", "km", "per", "m2", " in"] {
        assert_eq!(Unit::from_word(word), None, "{word}");
    }
}

#[test]
fn products_and_quotients_have_the_right_dimension() {
    let length = of(2, Unit::Inch);
    let area = length.multiply(length).unwrap();
    let weight = of(210, Unit::GramPerSquareMetre);
    let price = money(32).divide(of(1, Unit::Yard)).unwrap();
    let table = [
        (number(2).multiply(length), Dimension::LENGTH),
        (length.multiply(length), Dimension::AREA),
        (length.divide(length), Dimension::NUMBER),
        (area.divide(length), Dimension::LENGTH),
        (area.multiply(weight), Dimension::MASS),
        (of(1, Unit::Kilogram).divide(area), Dimension::MASS_PER_AREA),
        (price.multiply(length), Dimension::MONEY),
        (money(3).divide(length), Dimension::MONEY_PER_LENGTH),
        (of(90, Unit::Degree).divide(number(2)), Dimension::ANGLE),
        (number(1).multiply(of(50, Unit::Percent)), Dimension::NUMBER),
        (length.negate(), Dimension::LENGTH),
    ];
    for (answer, dimension) in table {
        assert_eq!(answer.unwrap().dimension, dimension);
    }
}

#[test]
fn dimensions_in_words() {
    let table = [
        (Dimension::NUMBER, "a plain number"),
        (Dimension::LENGTH, "a length"),
        (Dimension::AREA, "an area"),
        (Dimension::MASS, "a weight"),
        (Dimension::MASS_PER_AREA, "a weight for its area"),
        (Dimension::MONEY, "an amount of money"),
        (Dimension::MONEY_PER_LENGTH, "a price for its length"),
        (Dimension::ANGLE, "an angle"),
        (
            Dimension {
                length: 3,
                ..Dimension::NUMBER
            },
            "something this language has no use for",
        ),
    ];
    for (dimension, words) in table {
        assert_eq!(dimension.in_words(), words);
    }
}

#[test]
fn unlike_things_do_not_add() {
    let samples = [
        number(3),
        of(3, Unit::Inch),
        of(3, Unit::Gram),
        of(3, Unit::GramPerSquareMetre),
        of(3, Unit::Degree),
        money(3),
    ];
    for left in samples {
        for right in samples {
            let expected = (left.dimension != right.dimension)
                .then(|| mismatch(left.dimension, right.dimension));
            assert_eq!(left.add(right).err(), expected);
            assert_eq!(left.subtract(right).err(), expected);
            assert_eq!(left.compare(right).err(), expected);
        }
    }
}

#[test]
fn inches_and_millimetres_add_exactly() {
    let sum = of(1, Unit::Yard).add(of(1, Unit::Millimetre)).unwrap();
    assert_eq!(sum.as_length(), Ok(Length::YARD + Length::MILLIMETRE));
    assert_eq!(
        of(1, Unit::Inch).compare(of(25, Unit::Millimetre)),
        Ok(Ordering::Greater)
    );
    let third = Quantity::length(Length::INCH).divide(number(3)).unwrap();
    assert_eq!(
        third.multiply(number(3)).unwrap().as_length(),
        Ok(Length::INCH)
    );
    assert_eq!(third.as_length(), Ok(Length::inch_fraction(1, 3)));
}

#[test]
fn quantities_become_only_what_they_are() {
    let length = of(2, Unit::Inch);
    assert_eq!(
        length.as_ratio(),
        Err(mismatch(Dimension::LENGTH, Dimension::NUMBER))
    );
    assert_eq!(
        length.as_mass(),
        Err(mismatch(Dimension::LENGTH, Dimension::MASS))
    );
    assert_eq!(length.as_count(), None);
    assert_eq!(
        number(2).as_length(),
        Err(mismatch(Dimension::NUMBER, Dimension::LENGTH))
    );
    let needed = mismatch(Dimension::LENGTH, Dimension::MASS_PER_AREA);
    assert_eq!(length.as_mass_per_area(), Err(needed));
    assert_eq!(
        of(2, Unit::Kilogram).as_mass(),
        Ok(Mass::from_micrograms(2_000_000_000))
    );
}

#[test]
fn counts_are_whole_and_not_negative() {
    let table = [
        (number(0), Some(0)),
        (number(13), Some(13)),
        (number(u32::MAX.into()), Some(u32::MAX)),
        (number(i128::from(u32::MAX) + 1), None),
        (number(-1), None),
        (Quantity::number(ratio(5, 2).unwrap()), None),
        (of(300, Unit::Percent), Some(3)),
    ];
    for (quantity, count) in table {
        assert_eq!(quantity.as_count(), count, "{quantity:?}");
    }
}

#[test]
fn limits_hold_on_both_sides_and_let_the_limit_itself_pass() {
    let too_large = Some(QuantityFinding::TooLarge);
    for sign in [1, -1] {
        assert_eq!(of(sign * 10_000, Unit::Metre).as_length().err(), None);
        assert_eq!(of(sign * 10_001, Unit::Metre).as_length().err(), too_large);
        assert_eq!(of(sign * 1_000, Unit::Kilogram).as_mass().err(), None);
        assert_eq!(of(sign * 1_001, Unit::Kilogram).as_mass().err(), too_large);
        let weight = |amount| {
            of(sign * amount, Unit::GramPerSquareMetre)
                .as_mass_per_area()
                .err()
        };
        assert_eq!(weight(100_000), None);
        assert_eq!(weight(100_001), too_large);
    }
}

#[test]
fn overflow_and_division_by_zero_are_reported() {
    let too_large = Err(QuantityFinding::TooLarge);
    assert_eq!(
        Quantity::of(Ratio::from_integer(i128::MAX), Unit::Yard),
        too_large
    );
    assert_eq!(number(i128::MAX).add(number(1)), too_large);
    assert_eq!(number(i128::MIN).negate(), too_large);
    assert_eq!(number(i128::MIN).multiply(number(1)), too_large);
    assert_eq!(
        number(1).divide(number(0)),
        Err(QuantityFinding::DividedByZero)
    );
    assert_eq!(
        of(1, Unit::Inch).divide(of(0, Unit::Inch)),
        Err(QuantityFinding::DividedByZero)
    );
    let huge = Quantity {
        amount: Ratio::from_integer(i128::MIN),
        dimension: Dimension::LENGTH,
    };
    assert_eq!(huge.as_length(), Err(QuantityFinding::TooLarge));
    let edge = Quantity {
        amount: Ratio::from_integer(1),
        dimension: Dimension {
            length: i8::MAX,
            ..Dimension::NUMBER
        },
    };
    assert_eq!(edge.multiply(of(1, Unit::Inch)), too_large);
}

#[test]
fn extreme_weights_do_not_panic() {
    for amount in [i128::MIN, i128::MAX] {
        let weight = Quantity {
            amount: Ratio::from_integer(amount),
            dimension: Dimension::MASS_PER_AREA,
        };
        assert_eq!(weight.as_mass_per_area(), Err(QuantityFinding::TooLarge));
    }
}

#[test]
fn a_finding_says_what_was_wrong() {
    let finding = mismatch(Dimension::LENGTH, Dimension::NUMBER);
    assert_eq!(
        finding.to_string(),
        "a length does not go with a plain number"
    );
}

#[test]
fn money_adds_up_as_printed() {
    let line = Money::from_hundredths(5_256);
    assert_eq!((line + line).text(), "105.12");
    assert_eq!((line * 3 - line).text(), "105.12");
    assert_eq!(line.scaled(ratio(5, 4).unwrap()).text(), "65.70");
    assert_eq!(Money::from_hundredths(-5).text(), "-0.05");
    assert_eq!([line, line].into_iter().sum::<Money>(), line * 2);
    assert_eq!(
        Money::from_hundredths(i64::MAX) + line,
        Money::from_hundredths(i64::MAX)
    );
}

#[test]
fn cloth_weighs_its_area() {
    let weight = of(210, Unit::GramPerSquareMetre)
        .as_mass_per_area()
        .unwrap();
    let area = Area::of(Length::METRE, Length::millimetres(500));
    assert_eq!(weight.over(area), Mass::from_micrograms(105_000_000));
    // One ounce per square yard over a square yard is an ounce: 28 349 523.125 micrograms.
    let ounce = of(1, Unit::OuncePerSquareYard).as_mass_per_area().unwrap();
    let square_yard = Area::of(Length::YARD, Length::YARD);
    assert_eq!(ounce.over(square_yard), Mass::from_micrograms(28_349_523));
    assert_eq!(
        weight
            .over(Area::from_square_nanometres(i128::MAX))
            .micrograms(),
        i64::MAX
    );
}

#[test]
fn numbers_as_people_read_them() {
    let table = [
        (0, 1, "0"),
        (3, 1, "3"),
        (5, 2, "2 1/2"),
        (-5, 2, "-2 1/2"),
        (-1, 2, "-1/2"),
        (7, 3, "2 1/3"),
        (1, 64, "1/64"),
        (1, 128, "about 0.008"),
        (37, 100, "0.37"),
        (2, 5, "0.4"),
        (-1_234_567, 1_000_000, "-1.234567"),
        (5, 12, "5/12"),
        (355, 113, "about 3.142"),
        (i128::MAX, 1, "170141183460469231731687303715884105727"),
        (1, i128::MAX, "about 0"),
    ];
    for (numerator, denominator, text) in table {
        assert_eq!(number_text(ratio(numerator, denominator).unwrap()), text);
    }
}

proptest! {
    #[test]
    fn sums_and_products_undo(a: i32, b: i32, c in 1..1_000_i32, unit in 0..Unit::ALL.len()) {
        let unit = Unit::ALL[unit];
        let left = of(a.into(), unit);
        let right = of(b.into(), unit).divide(number(c.into())).unwrap();
        prop_assert_eq!(left.add(right).unwrap().subtract(right).unwrap(), left);
        prop_assert_eq!(right.multiply(number(c.into())).unwrap(), of(b.into(), unit));
        prop_assert_eq!(left.add(left.negate().unwrap()).unwrap().amount, Ratio::from_integer(0));
    }

    #[test]
    fn stated_lengths_survive_the_round_trip(nanometres in 0..=Length::LARGEST.nanometres()) {
        let length = Length::from_nanometres(nanometres);
        prop_assert_eq!(Quantity::length(length).as_length(), Ok(length));
    }

    #[test]
    fn no_pair_of_quantities_panics(
        a: i128, b in 1..i128::MAX, c: i128, d in 1..i128::MAX, powers: (i8, i8),
    ) {
        let dimension = Dimension { length: powers.0, mass: powers.1, ..Dimension::NUMBER };
        let left = Quantity { amount: Ratio::new(a, b), dimension };
        let right = Quantity { amount: Ratio::new(c, d), dimension };
        let _ = (left.add(right), left.subtract(right), left.multiply(right), left.divide(right));
        let _ = (left.negate(), left.compare(right), left.as_count(), left.as_length());
        let _ = (left.as_mass_per_area(), number_text(left.amount));
    }
}

#[test]
fn an_area_is_scaled_exactly_and_to_the_nearest() {
    let area = Area::from_square_nanometres(10);
    for (numerator, denominator, expected) in [(1, 3, 3), (2, 3, 7), (5, 4, 13), (0, 1, 0)] {
        let scaled = area.scaled(Ratio::new(numerator, denominator));
        assert_eq!(scaled, Area::from_square_nanometres(expected));
    }
}

#[test]
fn a_mass_is_scaled_to_the_nearest_and_computed_only_within_reach() {
    let mass = Mass::from_micrograms(10);
    for (numerator, denominator, expected) in [(1, 3, 3), (2, 3, 7), (5, 4, 13), (-1, 2, -5)] {
        let scaled = mass.scaled(Ratio::new(numerator, denominator));
        assert_eq!(scaled, Mass::from_micrograms(expected));
    }
    for (kilograms, micrograms) in [
        (0.0, Some(0)),
        (1.5, Some(1_500_000_000)),
        (1_000.0, Some(Mass::LARGEST.micrograms())),
        (1_000.1, None),
        (f64::NAN, None),
        (f64::INFINITY, None),
    ] {
        let mass = Mass::from_kilograms_f64(kilograms);
        assert_eq!(mass.map(Mass::micrograms), micrograms, "{kilograms}");
    }
}
