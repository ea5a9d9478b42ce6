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

#[path = "../tests/common/strips.rs"]
mod strips;

use std::time::Instant;

use pelmet_bolt::{Cloth, Effort, Piece, check, lay_with};
use pelmet_measure::Length;
use strips::Strip;

/// A job with a name, and its optimum where that is known.
struct Instance {
    name: String,
    cloth: Cloth,
    pieces: Vec<Piece>,
    optimum: Option<Length>,
}

fn main() {
    println!(
        "| instance | pieces | rule of thumb | bound | result | optimum | over it | steps at most | seconds |"
    );
    println!("|---|---|---|---|---|---|---|---|---|");
    for instance in instances() {
        print_row(&instance);
    }
}

fn print_row(instance: &Instance) {
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
    let effort = Effort::usual(count);
    let start = Instant::now();
    let Ok(layout) = lay_with(cloth, pieces, effort) else {
        return println!("| {name} | cannot be laid |");
    };
    let seconds = start.elapsed().as_secs_f64();
    let sound = if check(cloth, pieces, &layout).is_empty() {
        ""
    } else {
        " (not sound)"
    };
    let known = optimum.or((layout.at_least == layout.exact).then_some(layout.exact));
    let over = known.map_or(String::from("?"), |known| {
        let (result, known) = (
            layout.exact.as_millimetres_f64(),
            known.as_millimetres_f64(),
        );
        format!("{:.2} %", (result / known - 1.0) * 100.0)
    });
    println!(
        "| {name} | {count} | {} | {} | {}{sound} | {} | {over} | {} | {seconds:.2} |",
        layout.rule_of_thumb.millimetres_text(),
        layout.at_least.millimetres_text(),
        layout.exact.millimetres_text(),
        known.map_or(String::from("?"), Length::millimetres_text),
        effort.count(),
    );
}

fn instances() -> Vec<Instance> {
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
                    width: 1360,
                    length,
                    pieces,
                    gap,
                    repeat,
                    way,
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
