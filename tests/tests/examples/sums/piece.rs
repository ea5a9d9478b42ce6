//! What is cut: a piece is the flat panel and its allowances, and grows by what its cloth shrinks.

use serde_json::Value;

use super::{Sums, list, mm, number, text, total};

/// How far a line may lie from the points that stand for its curves, in millimetres.
const MOST_OF_A_CURVE: f64 = 0.1;

/// Adds up a piece of a panel.
pub fn check(panel_name: &str, panel: &Value, piece: &Value, sums: &mut Sums) {
    let name = format!("{} {}", panel_name, text(piece, "layer"));
    let is_folded = piece["on_fold"] == true;
    let halves = if is_folded { 2.0 } else { 1.0 };
    let (draw_width, cut_width) = (mm(piece, "draw_width"), mm(piece, "cut_width"));
    sums.same(
        &format!("width to draw of {name}"),
        draw_width * halves,
        cut_width,
    );

    let (width, length) = size(list(piece, "outline"));
    sums.within(
        &format!("outline of {name}, across"),
        width,
        draw_width,
        MOST_OF_A_CURVE,
    );
    let cut_length = mm(piece, "cut_length");
    sums.within(
        &format!("outline of {name}, down"),
        length,
        cut_length,
        MOST_OF_A_CURVE,
    );
    check_area(&name, piece, halves, sums);
    check_allowances(&name, panel, piece, sums);
    if piece["joined"].is_object() {
        check_strips(&name, piece, sums);
    }
    if text(piece, "layer") == "face" {
        sums.same(
            &format!("cut width of {name}"),
            mm(panel, "cut_width"),
            cut_width,
        );
        sums.same(
            &format!("cut length of {name}"),
            mm(panel, "cut_length"),
            cut_length,
        );
    }
}

/// The sewn line and what is added at every edge is what is cut, and the sewn line is the panel.
fn check_allowances(name: &str, panel: &Value, piece: &Value, sums: &mut Sums) {
    let left = what_is_left(piece);
    let sewn = list(piece, "sewn");
    let (width, length) = size(sewn);
    let sides = if piece["on_fold"] == true { 1.0 } else { 2.0 };
    let cut = width * left + sides * allowance(piece, "side");
    sums.same(
        &format!("cut width of {name}"),
        mm(piece, "draw_width") * left,
        cut,
    );
    let is_panel = text(piece, "layer") == "face" && list(panel, "bands").is_empty();
    if is_panel && piece["folded_at"].is_null() {
        let flat = mm(panel, "flat_width");
        sums.same(
            &format!("sewn width of {name}"),
            width * left * 2.0 / sides,
            flat,
        );
        let made = mm(panel, "made_length");
        sums.within(
            &format!("sewn length of {name}"),
            length * left,
            made,
            MOST_OF_A_CURVE,
        );
    }
    // At a slant or in a curve, an allowance reaches farther down than it is wide.
    if list(piece, "outline").len() == 4 && piece["folded_at"].is_null() {
        let cut = length * left + allowance(piece, "top") + allowance(piece, "lower");
        sums.same(
            &format!("cut length of {name}"),
            mm(piece, "cut_length") * left,
            cut,
        );
    }
}

/// The area inside the outline, by the sum over its corners (the shoelace formula).
fn check_area(name: &str, piece: &Value, halves: f64, sums: &mut Sums) {
    let points: Vec<(f64, f64)> = list(piece, "outline").iter().map(place).collect();
    let next = points.iter().cycle().skip(1);
    let steps = points.iter().zip(next);
    let twice: f64 = steps.map(|(from, to)| from.0 * to.1 - to.0 * from.1).sum();
    let area = (twice / 2.0).abs() * halves * what_is_left(piece).powi(2);
    let told = number(&piece["area"], "square_metres") * 1_000_000.0;
    let (width, length) = size(list(piece, "outline"));
    let most = MOST_OF_A_CURVE * 2.0 * (width + length);
    let most = if piece["outline"].to_string().contains("\"on_curve\":true") {
        most
    } else {
        1.0
    };
    sums.within(&format!("area of {name}"), told, area, most);
}

/// Strips that are joined make the piece, less two allowances at every seam, and the seams lie where
/// one ends.
fn check_strips(name: &str, piece: &Value, sums: &mut Sums) {
    let joined = &piece["joined"];
    let allowance = mm(joined, "allowance");
    let strips = list(joined, "strips");
    let mut end = -allowance;
    for (strip, seam) in strips.iter().zip(list(joined, "seams")) {
        end += number(strip, "mm");
        sums.same(&format!("a seam of {name}"), mm(seam, "from_cut_edge"), end);
        end -= 2.0 * allowance;
    }
    let last = strips.last().map_or(0.0, |strip| number(strip, "mm"));
    sums.same(
        &format!("strips of {name}"),
        end + last + allowance,
        mm(piece, "cut_width"),
    );
}

/// What is left of a length once the cloth has shrunk, as a part of it.
fn what_is_left(piece: &Value) -> f64 {
    let percent = piece["shrinkage"]
        .as_str()
        .and_then(|text| text.strip_suffix(" %"));
    1.0 - percent.map_or(0.0, |percent| {
        percent.parse::<f64>().expect(percent) / 100.0
    })
}

/// All that is added at this kind of edge.
fn allowance(piece: &Value, edge: &str) -> f64 {
    let allowances = list(piece, "allowances").iter();
    let of_edge: Vec<Value> = allowances
        .filter(|one| text(one, "edge") == edge)
        .cloned()
        .collect();
    total(&of_edge, "total")
}

/// How far a line reaches across and down.
fn size(line: &[Value]) -> (f64, f64) {
    let reach = |way: fn((f64, f64)) -> f64| {
        let along = line.iter().map(place).map(way);
        let (least, most) = along.fold((f64::MAX, f64::MIN), |(least, most), at| {
            (least.min(at), most.max(at))
        });
        most - least
    };
    (reach(|at| at.0), reach(|at| at.1))
}

fn place(point: &Value) -> (f64, f64) {
    (mm(&point["at"], "across"), mm(&point["at"], "down"))
}
