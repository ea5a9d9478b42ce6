//! Prints the table of the README: how far layouts are from the best there can be.
//!
//! Run it with `cargo run --release -p pelmet-bolt --example table`. Everything but the seconds is
//! the same on every machine.

#![expect(
    clippy::arithmetic_side_effects,
    clippy::print_stdout,
    clippy::disallowed_methods,
    reason = "it measures, and prints what it measured"
)]

#[path = "../tests/common/small_cloths.rs"]
mod small_cloths;
#[path = "../tests/common/strips.rs"]
mod strips;

use std::time::Instant;

use pelmet_bolt::{
    LayoutCloth, LayoutPiece, OutlineCorner, OutlinePolygon, SearchEffort, check, lay_with,
};
use pelmet_measure::Length;
use small_cloths::small_cloths;
use strips::Strip;

/// A job with a name, and its optimum where that is known.
struct Instance {
    name: String,
    cloth: LayoutCloth,
    pieces: Vec<LayoutPiece>,
    optimum: Option<Length>,
}

fn main() {
    println!(
        "| instance | pieces | rule of thumb | bound | result | optimum | over it | steps at most | seconds |"
    );
    println!("|---|---|---|---|---|---|---|---|---|");
    let over: Vec<f64> = instances().iter().filter_map(print_row).collect();
    let count = over.len();
    let reached = over.iter().filter(|over| **over <= 0.0).count();
    let mean = over.iter().sum::<f64>() / f64::from(u32::try_from(count).unwrap_or(u32::MAX));
    println!(
        "\nOf {count} known optima {reached} are reached; results are {mean:.2} % over them on average."
    );
}

/// Prints a row, and gives by how much its result is over a known optimum, in percent.
fn print_row(instance: &Instance) -> Option<f64> {
    let Instance {
        name,
        cloth,
        pieces,
        optimum,
    } = instance;
    let count: usize = pieces
        .iter()
        .filter_map(|piece| usize::try_from(piece.quantity).ok())
        .sum();
    let effort = SearchEffort::usual(count);
    let start = Instant::now();
    let Ok(layout) = lay_with(cloth, pieces, effort) else {
        println!("| {name} | cannot be laid |");
        return None;
    };
    let seconds = start.elapsed().as_secs_f64();
    let sound = if check(cloth, pieces, &layout).is_empty() {
        ""
    } else {
        " (not sound)"
    };
    let known = optimum.or((layout.lower_bound == layout.exact).then_some(layout.exact));
    let over = known.map(|known| {
        let known = known.as_millimetres_f64();
        (layout.exact.as_millimetres_f64() / known - 1.0) * 100.0
    });
    let over_text = over.map_or(String::from("?"), |over| format!("{over:.2} %"));
    println!(
        "| {name} | {count} | {} | {} | {}{sound} | {} | {over_text} | {} | {seconds:.2} |",
        layout.rule_of_thumb.millimetres_text(),
        layout.lower_bound.millimetres_text(),
        layout.exact.millimetres_text(),
        known.map_or(String::from("?"), Length::millimetres_text),
        effort.count(),
    );
    over
}

fn instances() -> Vec<Instance> {
    let mut instances = strips();
    instances.extend(small_cloths().into_iter().map(|it| Instance {
        name: it.name,
        cloth: it.cloth,
        pieces: it.pieces,
        optimum: Some(it.shortest),
    }));
    instances.extend([6, 20, 60].map(jabots));
    instances.extend([10, 60, 200, 500].map(workroom));
    instances
}

/// Jabots, long at one side; two of them, one turned end for end, make a rectangle.
fn jabots(count: u32) -> Instance {
    let corners = [(0, 0), (600, 0), (600, 200), (0, 800)].map(|(across, along)| OutlineCorner {
        across: Length::millimetres(across),
        along: Length::millimetres(along),
    });
    let outline = OutlinePolygon::through(corners.to_vec(), Length::ZERO);
    let (cloth, _) = plain_strip().job();
    Instance {
        name: String::from("jabots, plain"),
        cloth: LayoutCloth {
            one_way: false,
            usable_width: Length::millimetres(1200),
            ..cloth
        },
        pieces: vec![LayoutPiece {
            width: Length::millimetres(600),
            length: Length::millimetres(800),
            quantity: count,
            phase_along: None,
            phase_across: None,
            outline: Some(outline),
            on_fold: false,
        }],
        optimum: count
            .is_multiple_of(4)
            .then(|| Length::millimetres(250) * i64::from(count)),
    }
}

/// Pieces of a workroom's sizes, none alike, every other one held to one line of the print.
fn workroom(count: u32) -> Instance {
    let spread = |index: u32, by: u32, over: u32| i64::from(index.wrapping_mul(by) % over);
    let strip = Strip {
        gap: 6,
        repeat: Some(320),
        ..plain_strip()
    };
    let (cloth, _) = strip.job();
    let piece = |index: u32| LayoutPiece {
        width: Length::millimetres(80 + spread(index, 7_919, 900)),
        length: Length::millimetres(120 + spread(index, 104_729, 1_300)),
        quantity: 1,
        phase_along: index.is_multiple_of(2).then_some(Length::ZERO),
        phase_across: None,
        outline: None,
        on_fold: false,
    };
    Instance {
        name: String::from("workroom, repeat 320, gap 6"),
        cloth,
        pieces: (0..count).map(piece).collect(),
        optimum: None,
    }
}

fn plain_strip() -> Strip {
    Strip {
        width: 1360,
        length: 1000,
        pieces: 1,
        gap: 0,
        repeat: None,
        way: 1,
    }
}

fn strips() -> Vec<Instance> {
    let mut instances = Vec::new();
    for (pieces, length) in [
        (8, 1000),
        (12, 1500),
        (20, 2000),
        (30, 2500),
        (60, 4000),
        (200, 9000),
    ] {
        for (gap, repeat) in [(0, None), (6, None), (0, Some(160)), (6, Some(320))] {
            for way in 1..=2 {
                let strip = Strip {
                    length,
                    pieces,
                    gap,
                    repeat,
                    way,
                    ..plain_strip()
                };
                let (cloth, pieces) = strip.job();
                let print =
                    repeat.map_or(String::from("plain"), |repeat| format!("repeat {repeat}"));
                instances.push(Instance {
                    name: format!("strip {way}, {print}, gap {gap}"),
                    cloth,
                    pieces,
                    optimum: Some(strip.optimum()),
                });
            }
        }
    }
    instances
}
