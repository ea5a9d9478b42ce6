//! What everything weighs.

use serde_json::Value;

use super::{Sums, list, number, text};

/// How far a weight in grams may lie from a sum of weights, each told to a millionth of a gram.
const MOST_GRAMS: f64 = 0.001;

/// Adds up the weights of a packet: of its windows, and in each of its panels.
pub fn check(packet: &Value, sums: &mut Sums) {
    let windows = list(packet, "windows");
    for window in windows {
        let panels = list(window, "panels").iter();
        let weights = panels.map(|panel| {
            let each = panel["weight"]["grams"].as_f64();
            each.map(|each| each * number(panel, "quantity"))
        });
        let what = format!("weight of {}", text(window, "name"));
        check_sum(&what, window, weights.sum(), sums);
    }
    let weights = windows
        .iter()
        .map(|window| window["weight"]["grams"].as_f64());
    check_sum("weight of all", packet, weights.sum(), sums);
}

/// Where one part has no weight, the whole has none.
fn check_sum(what: &str, of: &Value, worked_out: Option<f64>, sums: &mut Sums) {
    match (of["weight"]["grams"].as_f64(), worked_out) {
        (Some(told), Some(worked_out)) => sums.within(what, told, worked_out, MOST_GRAMS),
        (told, worked_out) => sums.holds(what, told.is_none() && worked_out.is_none()),
    }
}
