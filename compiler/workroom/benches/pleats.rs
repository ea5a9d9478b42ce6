//! How long a pleated panel takes, and how that grows with the number of its pleats: solving a rule
//! for a width, folding the strip, and folding the panel's outline.

use criterion::{BenchmarkId, Criterion, criterion_group, criterion_main};
use pelmet_measure::Length;
use pelmet_model::{
    PleatKind, PleatOrder, PleatRule, PleatStep, Pleating, Point, Ranged, Start, StepKind,
};
use pelmet_workroom::{fold_outline, fold_pleating, lay_out};

const COUNTS: [u32; 4] = [25, 50, 100, 200];

/// A box pleat an inch deep takes two inches of the finished width, its space from two to four.
const APART: i64 = 5;

fn between(least: i64, ideal: i64, most: i64) -> Ranged<Length> {
    Ranged {
        least: Length::inches(least),
        ideal: Length::inches(ideal),
        most: Length::inches(most),
    }
}

/// Box pleats with everything left open: how many, how deep, and how far apart.
fn rule() -> PleatRule {
    let step = |number, kind| PleatStep { number, kind };
    let order = PleatOrder::new(
        PleatKind::Box,
        Ranged {
            least: Length::inch_fraction(3, 4),
            ideal: Length::inches(1),
            most: Length::inch_fraction(5, 4),
        },
    );
    let turn = vec![
        step(2, StepKind::Pleat(order)),
        step(3, StepKind::Plain(between(2, 3, 4))),
    ];
    let margin = |number| step(number, StepKind::Plain(between(1, 2, 3)));
    let repeat = StepKind::Repeat {
        count: Ranged {
            least: 1,
            ideal: 1,
            most: 400,
        },
        steps: turn,
    };
    PleatRule {
        name: String::from("open boxes"),
        start: Start::Left,
        mirrored: false,
        steps: vec![margin(0), step(1, repeat), margin(4)],
        layers: None,
        print: None,
        folding_error: None,
        turn_of_cloth: None,
    }
}

/// A finished width at which that many pleats come out.
fn finished(pleats: u32) -> Length {
    Length::inches(APART) * i64::from(pleats) + Length::inch_fraction(3, 8)
}

fn laid(pleats: u32) -> Pleating {
    let laid = lay_out(&rule(), Some(finished(pleats)), None);
    laid.unwrap_or_default()
}

/// An outline whose lower edge slants over the whole flat width.
fn slanted(flat: Length) -> Vec<Point> {
    let at = |across, down| Point {
        across,
        down: Length::inches(down),
    };
    let left = Length::ZERO;
    vec![at(left, 0), at(left, 20), at(flat, 12), at(flat, 0)]
}

fn pleated_panel(criterion: &mut Criterion) {
    let rule = rule();
    let mut group = criterion.benchmark_group("a pleated panel");
    for count in COUNTS {
        let pleating = laid(count);
        assert_eq!(
            pleating.pleats.len(),
            usize::try_from(count).unwrap_or_default()
        );
        let folding = fold_pleating(&pleating);
        let outline = slanted(pleating.flat);
        let name = |step| BenchmarkId::new(step, count);
        group.bench_function(name("solve"), |bencher| {
            bencher.iter(|| lay_out(&rule, Some(finished(count)), None));
        });
        group.bench_function(name("fold"), |bencher| {
            bencher.iter(|| fold_pleating(&pleating));
        });
        group.bench_function(name("fold the outline"), |bencher| {
            bencher.iter(|| fold_outline(&outline, &folding));
        });
    }
    group.finish();
}

criterion_group!(benches, pleated_panel);
criterion_main!(benches);
