//! How a panel is folded: from its flat width to its finished one, stretch by stretch.

use serde_json::Value;

use super::{Sums, list, mm, number, text, total};

/// Adds up the folding of a panel.
pub fn check(name: &str, panel: &Value, sums: &mut Sums) {
    check_sizes(name, panel, sums);
    check_pleats(name, panel, sums);
    check_stretches(name, panel, sums);
    check_layers(name, panel, sums);
    check_outline(name, panel, sums);
}

fn check_sizes(name: &str, panel: &Value, sums: &mut Sums) {
    let made = mm(panel, "heading_depth") + mm(panel, "drop");
    sums.same(
        &format!("made length of {name}"),
        mm(panel, "made_length"),
        made,
    );

    let fullness = mm(panel, "flat_width") / mm(panel, "finished_width");
    sums.same(
        &format!("fullness of {name}"),
        number(&panel["fullness"], "times"),
        fullness,
    );

    if let Some(range) = panel["hang_range"].as_object() {
        let middle = (number(&range["shortest"], "mm") + number(&range["longest"], "mm")) / 2.0;
        sums.same(&format!("hang range of {name}"), middle, mm(panel, "drop"));
    }
}

/// What the pleats take up, and what their creases lose in their turns, is what the panel becomes
/// narrower; and they lie side by side.
fn check_pleats(name: &str, panel: &Value, sums: &mut Sums) {
    let pleats = list(panel, "pleats");
    let turn = &panel["turn_of_cloth"];
    let turned = turn.as_object().map_or(0.0, |_| mm(turn, "together"));
    if !pleats.is_empty() {
        let flat = mm(panel, "finished_width") + total(pleats, "take_up") + turned;
        sums.same(
            &format!("flat width of {name}"),
            mm(panel, "flat_width"),
            flat,
        );
    }
    let mut end = 0.0;
    for pleat in pleats {
        let (from, to) = (mm(&pleat["flat"], "from"), mm(&pleat["flat"], "to"));
        sums.holds(
            &format!("a pleat of {name} begins behind the last"),
            from >= end - 0.001,
        );
        end = to;
        let own = list(panel, "creases").iter();
        for crease in own.filter(|crease| crease["pleat"] == pleat["number"]) {
            let lies_in = (from - 0.001..=to + 0.001).contains(&mm(crease, "at"));
            sums.holds(&format!("a crease of {name} lies in its pleat"), lies_in);
        }
    }
    let is_within = end <= mm(panel, "flat_width") + 0.001;
    sums.holds(
        &format!("the last pleat of {name} ends on the panel"),
        is_within,
    );
}

/// The stretches lie end to end, from one edge to the other, both flat and folded, and a crease lies
/// between any two.
fn check_stretches(name: &str, panel: &Value, sums: &mut Sums) {
    let stretches = list(panel, "stretches");
    let creases = list(panel, "creases");
    let mut flat = 0.0;
    let mut finished = 0.0;
    for (index, stretch) in stretches.iter().enumerate() {
        let (on_flat, on_finished) = (&stretch["flat"], &stretch["finished"]);
        sums.same(
            &format!("a stretch of {name}, flat"),
            mm(on_flat, "from"),
            flat,
        );
        sums.same(
            &format!("a stretch of {name}, folded"),
            mm(on_finished, "from"),
            finished,
        );
        flat = mm(on_flat, "to");
        finished = mm(on_finished, "to");
        if let Some(crease) = creases.get(index) {
            sums.same(&format!("a crease of {name}"), mm(crease, "at"), flat);
        }
        let is_forward = finished >= mm(on_finished, "from");
        let is_so = Some(is_forward) == stretch["face_up"].as_bool();
        sums.holds(
            &format!("a stretch of {name} runs back where it is turned over"),
            is_so,
        );
    }
    sums.same(
        &format!("the stretches of {name}"),
        flat,
        mm(panel, "flat_width"),
    );
    if panel["folded"].is_object() {
        sums.same(
            &format!("the stretches of {name}"),
            finished,
            mm(panel, "finished_width"),
        );
    }
}

/// As many layers lie over a run as stretches that come to lie there cover it.
fn check_layers(name: &str, panel: &Value, sums: &mut Sums) {
    let mut thickest = 0.0;
    for run in list(panel, "layers") {
        let [from, to] = ends(run);
        let covered = list(panel, "stretches").iter().map(|stretch| {
            let [one, other] = ends(stretch);
            (to.min(one.max(other)) - from.max(one.min(other))).max(0.0)
        });
        let layers = number(run, "layers");
        let what = format!("layers of {name}");
        sums.same(&what, layers * (to - from), covered.sum());
        thickest = layers.max(thickest);
    }
    sums.same(
        &format!("thickest of {name}"),
        number(panel, "thickest"),
        thickest,
    );
}

/// From where to where something comes to lie.
fn ends(of: &Value) -> [f64; 2] {
    ["from", "to"].map(|end| mm(&of["finished"], end))
}

/// The sewn outline is as wide as the flat panel and as deep as the made-up one, and its straight
/// edges are as long as their ends lie apart.
fn check_outline(name: &str, panel: &Value, sums: &mut Sums) {
    let corners = list(panel, "outline");
    let widest = corners.iter().map(|corner| mm(&corner["at"], "across"));
    let widest = widest.fold(0.0, f64::max);
    sums.same(
        &format!("outline of {name}, across"),
        widest,
        mm(panel, "flat_width"),
    );
    let deepest = corners.iter().flat_map(points).map(|at| mm(at, "down"));
    let deepest = deepest.fold(0.0, f64::max);
    sums.within(
        &format!("outline of {name}, down"),
        deepest,
        mm(panel, "made_length"),
        0.1,
    );

    for (corner, next) in corners.iter().zip(corners.iter().cycle().skip(1)) {
        let steps = points(corner).chain([&next["at"]]).collect::<Vec<_>>();
        let length: f64 = steps.windows(2).map(|ends| apart(ends[0], ends[1])).sum();
        let most = if corner["curve"].is_null() {
            0.000_01
        } else {
            0.1
        };
        let what = format!(
            "edge {} of {name}, {}",
            number(corner, "number"),
            text(corner, "edge")
        );
        sums.within(&what, mm(corner, "edge_length"), length, most);
    }
}

/// The places of a corner and of the curve that leads on from it.
fn points(corner: &Value) -> impl Iterator<Item = &Value> {
    std::iter::once(&corner["at"]).chain(list(&corner["curve"], "between"))
}

fn apart(from: &Value, to: &Value) -> f64 {
    let [across, down] = ["across", "down"].map(|way| mm(to, way) - mm(from, way));
    across.hypot(down)
}
