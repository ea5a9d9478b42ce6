//! Lays the cloths of a text like `tests/independent/small_cloths.txt`, read from the input, and
//! prints how far each layout is from its bound. `tests/independent/hopper_turton.py` prints such a
//! text.

#![expect(
    clippy::print_stdout,
    clippy::disallowed_methods,
    reason = "it reads what is to be measured, and prints what it measured"
)]

#[path = "../tests/common/small_cloths.rs"]
mod small_cloths;

use std::time::Instant;

use pelmet_bolt::{check, lay};
use small_cloths::{SmallCloth, cloths_in};

fn main() {
    let text = std::io::read_to_string(std::io::stdin()).unwrap_or_default();
    println!("| cloth | pieces | bound | result | over it | seconds |");
    println!("|---|---|---|---|---|---|");
    let over: Vec<f64> = cloths_in(&text).iter().filter_map(print_row).collect();
    let count = f64::from(u32::try_from(over.len()).unwrap_or(u32::MAX));
    println!(
        "\nResults are {:.2} % over the bounds on average.",
        over.iter().sum::<f64>() / count
    );
}

/// Prints a row, and gives by how much its result is over the bound, in percent.
fn print_row(it: &SmallCloth) -> Option<f64> {
    let start = Instant::now();
    let layout = lay(&it.cloth, &it.pieces).ok()?;
    let seconds = start.elapsed().as_secs_f64();
    if !check(&it.cloth, &it.pieces, &layout).is_empty() {
        println!("| {} | not sound |", it.name);
        return None;
    }
    let bound = layout.lower_bound.as_millimetres_f64();
    let over = (layout.exact.as_millimetres_f64() / bound - 1.0) * 100.0;
    println!(
        "| {} | {} | {} | {} | {over:.2} % | {seconds:.2} |",
        it.name,
        it.pieces.len(),
        layout.lower_bound.millimetres_text(),
        layout.exact.millimetres_text(),
    );
    Some(over)
}
