//! A quote adds up to the hundredth, and costs follow what is bought.

#![expect(
    clippy::arithmetic_side_effects,
    clippy::expect_used,
    clippy::cast_possible_truncation,
    reason = "a test stops at the first broken promise"
)]

mod jobs;

use pelmet_measure::{Length, Ratio};
use pelmet_model::{NotionOrder, NotionPrice, PriceOrder, WorkPer, WorkStep};
use pelmet_packet::{Amount, Quote, QuoteKind};
use proptest::prelude::*;

/// The reading room with tape and fasteners priced, an hour of work at 34 and a markup.
fn reading_room(tape: NotionPrice, markup: Option<Ratio>) -> Quote {
    let mut ordered = jobs::reading_room();
    let notion = |name: &str, price| NotionOrder {
        name: name.to_owned(),
        roll: Some(Length::YARD * 25),
        pack: None,
        price: Some(price),
        weight: None,
    };
    let per_yard = NotionPrice::PerLength(PriceOrder {
        amount: Ratio::new(24, 10),
        per: Length::YARD,
    });
    ordered.job.notions = vec![notion("fusible-tape", tape)];
    ordered.job.notions.push(NotionOrder {
        roll: None,
        ..notion("hook-and-loop", per_yard)
    });
    ordered.job.labour_per_hour = Some(Ratio::new(34, 1));
    ordered.job.markup = markup;
    let panels = ordered
        .job
        .windows
        .iter_mut()
        .flat_map(|window| &mut window.panels);
    for panel in panels {
        panel.making.work = vec![
            step("cutting", 20, WorkPer::Panel),
            step("pleating", 2, WorkPer::Pleat),
        ];
    }
    ordered.packet().quote.expect("the job has prices")
}

fn step(name: &str, minutes: i128, per: WorkPer) -> WorkStep {
    WorkStep {
        name: name.to_owned(),
        minutes: Ratio::from_integer(minutes),
        per,
    }
}

fn hundredths(amount: &Amount) -> i64 {
    (amount.amount * 100.0).round() as i64
}

fn line<'a>(quote: &'a Quote, name: &str) -> (&'a str, i64) {
    let line = quote.lines.iter().find(|line| line.name == name);
    let line = line.expect("the quote has such a line");
    (&line.amount, hundredths(&line.cost))
}

#[test]
fn work_is_paid_by_the_minute_and_tape_by_the_roll() {
    let quote = reading_room(NotionPrice::PerRoll(Ratio::new(65, 10)), None);
    // Fourteen panels of 20 minutes; six bridges of six pleats, 2 minutes each.
    assert_eq!(line(&quote, "cutting"), ("4 h 40 min", 15_867));
    assert_eq!(line(&quote, "pleating"), ("1 h 12 min", 4_080));
    let (bought, cost) = line(&quote, "fusible tape");
    let yards: i64 = bought
        .trim_end_matches(" yd")
        .parse()
        .expect("whole rolls are whole yards");
    assert_eq!(cost, yards / 25 * 6_50);
    assert_eq!((quote.not_priced, quote.markup), (Vec::new(), None));
    assert_eq!(quote.cost, quote.total);
}

#[test]
fn a_price_for_something_else_is_no_price() {
    let quote = reading_room(NotionPrice::Each(Ratio::new(1, 1)), None);
    assert_eq!(quote.not_priced, ["fusible tape"]);
    assert!(quote.lines.iter().all(|line| line.name != "fusible tape"));
}

#[test]
fn a_job_without_prices_has_no_quote() {
    let mut ordered = jobs::winter_garden();
    for fabric in &mut ordered.job.fabrics {
        fabric.price = None;
    }
    assert_eq!(ordered.packet().quote, None);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(12))]
    #[test]
    fn every_quote_is_the_sum_of_its_lines(price in 1_i128..9_999, percent in 0_i128..300) {
        let markup = Some(Ratio::new(percent, 100));
        let quote = reading_room(NotionPrice::PerRoll(Ratio::new(price, 1_000)), markup);
        let lines: i64 = quote.lines.iter().map(|line| hundredths(&line.cost)).sum();
        prop_assert_eq!(lines, hundredths(&quote.cost));
        let markup = quote.markup.expect("a markup is stated");
        prop_assert!((markup.part * 100.0 - percent as f64).abs() < 1e-9);
        prop_assert_eq!(lines + hundredths(&markup.amount), hundredths(&quote.total));
        let exact = i128::from(lines) * percent;
        prop_assert!((i128::from(hundredths(&markup.amount)) * 100 - exact).abs() <= 50);
        for line in &quote.lines {
            let reckoned = line.reckoned.quantity * line.reckoned.price;
            prop_assert!((reckoned - line.cost.amount).abs() <= 0.005 + 1e-9, "{:?}", line);
        }
        let work = quote.lines.iter().filter(|line| line.kind == QuoteKind::Labour);
        prop_assert_eq!(work.count(), 2);
    }
}
