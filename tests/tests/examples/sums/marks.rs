//! The marks of a panel: each lies on it, and says the same of its place from the left and from the
//! centre.

use serde_json::Value;

use super::{Sums, list, mm, number, text};

/// Adds up the marks of a panel, and the numbers of the steps in which it is made.
pub fn check(name: &str, panel: &Value, sums: &mut Sums) {
    let flat = mm(panel, "flat_width");
    for (mark, place) in list(panel, "marks").iter().zip(1_u32..) {
        let what = format!("mark {place} of {name}, {}", text(mark, "name"));
        sums.same(
            &format!("{what}: its number"),
            number(mark, "number"),
            f64::from(place),
        );
        if mark["from_left"].is_object() {
            let from_left = mm(mark, "from_left");
            sums.holds(
                &format!("{what} lies on the panel"),
                (0.0..=flat).contains(&from_left),
            );
            sums.same(&what, mm(mark, "from_centre"), from_left - flat / 2.0);
        }
        if mark["fold"].is_object() {
            check_fold(&what, mark, panel, sums);
        }
        if mark["stitch"].is_object() {
            check_stitch(&what, mark, flat, sums);
        }
    }
    check_steps(name, panel, sums);
}

/// A fold is brought over by twice its depth, as far on as the cloth under it goes back; the cloth
/// goes round half a turn at the fold itself and a whole one at the crease behind it.
fn check_fold(what: &str, mark: &Value, panel: &Value, sums: &mut Sums) {
    let fold = &mark["fold"];
    let to = mm(fold, "brought_to_from_left");
    let centre = mm(panel, "flat_width") / 2.0;
    sums.same(what, mm(fold, "brought_to_from_centre"), to - centre);
    let turn = &panel["turn_of_cloth"];
    let turn = turn.as_object().map_or(0.0, |_| mm(turn, "each"));
    let over = 2.0 * mm(fold, "depth") + 1.5 * turn;
    let over = match text(fold, "toward") {
        "left" => -over,
        _ => over,
    };
    sums.same(
        &format!("{what}: brought to"),
        to,
        mm(mark, "from_left") + over,
    );
}

/// Two points that are stitched together lie as far from the centre as they say.
fn check_stitch(what: &str, mark: &Value, flat: f64, sums: &mut Sums) {
    let stitch = &mark["stitch"];
    let other = mm(stitch, "other_from_left");
    sums.same(what, mm(stitch, "other_from_centre"), other - flat / 2.0);
}

fn check_steps(name: &str, panel: &Value, sums: &mut Sums) {
    for (step, place) in list(panel, "making_order").iter().zip(1_u32..) {
        let what = format!("step {} of {name}", text(step, "name"));
        sums.same(&what, number(step, "number"), f64::from(place));
    }
}
