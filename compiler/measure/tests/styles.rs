//! How a house writes lengths, weights and areas.
#![expect(
    clippy::unwrap_used,
    reason = "a test stops at the first broken promise"
)]

use pelmet_measure::{Area, Length, Mass, Quantity, Ratio, Style, System, Unit};
use proptest::prelude::*;

fn sixty_fourths(count: i64) -> Length {
    Length::inch_fraction(count, 64)
}

fn micrometres(count: i64) -> Length {
    Length::from_nanometres(1_000) * count
}

/// Reads `-15 5/8 in` or `396.5 mm` back, to prove what a printed length says.
fn read(text: &str) -> Length {
    let (number, unit) = text.rsplit_once(' ').unwrap();
    let (sign, number) = number
        .strip_prefix('-')
        .map_or((1, number), |rest| (-1, rest));
    let magnitude = match unit {
        "mm" => Length::from_millimetres_f64(number.parse().unwrap()).unwrap(),
        "m" => Length::from_millimetres_f64(number.parse::<f64>().unwrap() * 1_000.0).unwrap(),
        "in" => number
            .split(' ')
            .map(|part| read_part(part, Length::INCH))
            .sum(),
        _ => number
            .split(' ')
            .map(|part| read_part(part, Length::YARD))
            .sum(),
    };
    magnitude * sign
}

fn read_part(part: &str, unit: Length) -> Length {
    let (numerator, denominator) = part.split_once('/').unwrap_or((part, "1"));
    unit.portion(numerator.parse().unwrap(), denominator.parse().unwrap())
}

/// Any length up to the largest, either way.
fn any_length(largest: Length) -> impl Strategy<Value = Length> {
    (0..=largest.nanometres(), any::<bool>()).prop_map(|(nanometres, backward)| {
        Length::from_nanometres(nanometres) * if backward { -1 } else { 1 }
    })
}

#[test]
fn inches() {
    // The length in 1/64 in, then as a cut (1/8 up), a mark (1/16 nearest) and in a message.
    let table = [
        (0, "0 in", "0 in", "0 in"),
        (1, "1/8 in", "0 in", "1/64 in"),
        (2, "1/8 in", "1/16 in", "1/32 in"),
        (8, "1/8 in", "1/8 in", "1/8 in"),
        (32, "1/2 in", "1/2 in", "1/2 in"),
        (-32, "-1/2 in", "-1/2 in", "-1/2 in"),
        (-33, "-1/2 in", "-1/2 in", "-33/64 in"),
        (-160, "-2 1/2 in", "-2 1/2 in", "-2 1/2 in"),
        (993, "15 5/8 in", "15 1/2 in", "15 33/64 in"),
        (996, "15 5/8 in", "15 9/16 in", "15 9/16 in"),
        (6_400, "100 in", "100 in", "100 in"),
    ];
    for (count, cut, mark, plain) in table {
        let length = sixty_fourths(count);
        assert_eq!(Style::INCHES.cut(length), cut, "cut of {count}/64");
        assert_eq!(Style::INCHES.mark(length), mark, "mark of {count}/64");
        assert_eq!(
            Style::INCHES.plain(length),
            plain,
            "{count}/64 in a message"
        );
    }
}

#[test]
fn metric() {
    // The length in micrometres, then as a cut (1 mm up), a mark (1 mm nearest) and in a message.
    let table = [
        (0, "0 mm", "0 mm", "0 mm"),
        (400, "1 mm", "0 mm", "0.4 mm"),
        (500, "1 mm", "1 mm", "0.5 mm"),
        (-500, "0 mm", "-1 mm", "-0.5 mm"),
        (393_700, "394 mm", "394 mm", "393.7 mm"),
        (396_000, "396 mm", "396 mm", "396 mm"),
        (1_234, "2 mm", "1 mm", "about 1.23 mm"),
        (12_345_000, "12345 mm", "12345 mm", "12345 mm"),
    ];
    for (count, cut, mark, plain) in table {
        let length = micrometres(count);
        assert_eq!(Style::METRIC.cut(length), cut, "cut of {count} micrometres");
        assert_eq!(
            Style::METRIC.mark(length),
            mark,
            "mark of {count} micrometres"
        );
        assert_eq!(
            Style::METRIC.plain(length),
            plain,
            "{count} micrometres in a message"
        );
    }
}

#[test]
fn a_message_says_about_only_when_it_must() {
    let table = [
        (Style::INCHES, Length::millimetres(380), "about 14 61/64 in"),
        (Style::INCHES, Length::from_nanometres(1), "about 0 in"),
        (Style::INCHES, -Length::millimetres(1), "about -3/64 in"),
        (Style::METRIC, Length::inch_fraction(31, 2), "393.7 mm"),
        (Style::METRIC, Length::inch_fraction(1, 16), "about 1.59 mm"),
    ];
    for (style, length, text) in table {
        assert_eq!(style.plain(length), text);
    }
}

#[test]
fn cloth_is_bought_in_steps() {
    let table = [
        (Style::INCHES, Length::ZERO, "0 yd"),
        (Style::INCHES, Length::inches(36), "1 yd"),
        (Style::INCHES, Length::inches(37), "1 1/8 yd"),
        (Style::INCHES, Length::inches(130), "3 5/8 yd"),
        (Style::METRIC, Length::millimetres(3_301), "3.4 m"),
        (Style::METRIC, Length::millimetres(3_400), "3.4 m"),
        (Style::METRIC, Length::millimetres(2_950), "3 m"),
    ];
    for (style, length, text) in table {
        assert_eq!(style.bolt(length), text);
    }
    assert_eq!(Style::INCHES.buying_step(), Length::inch_fraction(9, 2));
    assert_eq!(Style::METRIC.buying_step(), Length::millimetres(100));
}

#[test]
fn sizes() {
    let size = Style::INCHES.size(Length::inches(18), sixty_fourths(1_565));
    assert_eq!(size, "18 in x 24 1/2 in");
    let size = Style::METRIC.size(Length::inches(18), Length::millimetres(620));
    assert_eq!(size, "458 mm x 620 mm");
}

#[test]
fn a_step_the_system_cannot_write_is_rounded_on_the_same_way() {
    let style = Style {
        cut_step: Length::MILLIMETRE,
        mark_step: Length::MILLIMETRE,
        ..Style::INCHES
    };
    assert_eq!(style.cut(Length::millimetres(10)), "13/32 in");
    assert_eq!(style.mark(Length::millimetres(10)), "25/64 in");
    let half = Style {
        cut_step: micrometres(500),
        ..Style::METRIC
    };
    assert_eq!(half.cut(micrometres(393_100)), "393.5 mm");
    let none = Style {
        cut_step: Length::ZERO,
        mark_step: -Length::INCH,
        ..Style::INCHES
    };
    assert_eq!(none.cut(Length::millimetres(10)), "13/32 in");
    assert_eq!(none.mark(Length::millimetres(10)), "25/64 in");
}

#[test]
fn weights() {
    let grams = |count| Mass::from_micrograms(1_000_000) * count;
    let table = [
        (Mass::ZERO, "0 g", "0 oz"),
        (grams(350), "350 g", "12.3 oz"),
        (grams(999), "999 g", "2.2 lb"),
        (Mass::from_micrograms(999_500_000), "1 kg", "2.2 lb"),
        (grams(1_250), "1.25 kg", "2.8 lb"),
        (grams(-1_250), "-1.25 kg", "-2.8 lb"),
        (Mass::from_micrograms(453_592_370), "454 g", "1 lb"),
        (Mass::from_micrograms(453_000_000), "453 g", "1 lb"),
        (
            Mass::from_micrograms(i64::MAX),
            "9223372036.85 kg",
            "20334054642.2 lb",
        ),
    ];
    for (mass, metric, customary) in table {
        assert_eq!(Style::METRIC.mass(mass), metric);
        assert_eq!(Style::INCHES.mass(mass), customary);
    }
    assert!((grams(1_250).as_kilograms_f64() - 1.25).abs() < 1e-12);
}

#[test]
fn areas_and_weights_for_an_area() {
    let area = Area::of(Length::inches(18), Length::inches(24));
    assert_eq!(Style::INCHES.area(area), "432 sq in");
    assert_eq!(Style::METRIC.area(area), "0.279 m2");
    let weight = Quantity::of(Ratio::from_integer(210), Unit::GramPerSquareMetre);
    let weight = weight.unwrap().as_mass_per_area().unwrap();
    assert_eq!(Style::METRIC.mass_per_area(weight), "210 g/m2");
    assert_eq!(Style::INCHES.mass_per_area(weight), "6.2 oz/yd2");
}

proptest! {
    #[test]
    fn a_printed_cut_never_understates(
        length in any_length(Length::LARGEST),
        step in 1..Length::INCH.nanometres(),
        metric: bool,
    ) {
        let system = if metric { System::Metric } else { System::Inches };
        let step = Length::from_nanometres(step);
        for style in [Style::INCHES, Style::METRIC, Style { system, cut_step: step, mark_step: step }] {
            let printed = read(&style.cut(length));
            prop_assert!(printed >= length);
            prop_assert!(printed - length < style.cut_step + sixty_fourths(1));
            prop_assert!(read(&style.bolt(length)) >= length);
        }
    }

    #[test]
    fn a_printed_mark_is_within_half_a_step(
        length in any_length(Length::METRE),
    ) {
        for style in [Style::INCHES, Style::METRIC] {
            let off = (read(&style.mark(length)) - length).abs();
            prop_assert!(off * 2 <= style.mark_step);
        }
    }

    #[test]
    fn a_message_without_about_is_exact(nanometres in 0..Length::METRE.nanometres()) {
        let length = Length::from_nanometres(nanometres);
        for style in [Style::INCHES, Style::METRIC] {
            let text = style.plain(length);
            match text.strip_prefix("about ") {
                Some(near) => prop_assert!((read(near) - length).abs() <= sixty_fourths(1)),
                None => prop_assert_eq!(read(&text), length),
            }
        }
    }

    #[test]
    fn sixty_fourths_and_hundredths_print_exactly(count in -100_000..100_000_i64) {
        prop_assert_eq!(read(&Style::INCHES.plain(sixty_fourths(count))), sixty_fourths(count));
        let hundredths = micrometres(10) * count;
        prop_assert_eq!(read(&Style::METRIC.plain(hundredths)), hundredths);
    }

    #[test]
    fn nothing_panics(nanometres: i64, cut: i64, mark: i64, micrograms: i64, square: i128) {
        let length = Length::from_nanometres(nanometres);
        for system in [System::Inches, System::Metric] {
            let cut_step = Length::from_nanometres(cut);
            let style = Style { system, cut_step, mark_step: Length::from_nanometres(mark) };
            let _ = (style.cut(length), style.mark(length), style.plain(length));
            let _ = (style.bolt(length), style.mass(Mass::from_micrograms(micrograms)));
            let _ = style.area(Area::from_square_nanometres(square));
        }
    }
}
