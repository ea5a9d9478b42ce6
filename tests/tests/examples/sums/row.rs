//! The row of a window: what its panels cover, where they join and how many of each there are.

use serde_json::Value;

use super::{Sums, list, mm, number, text, total};

/// Adds up the row of a window.
pub fn check(window: &Value, sums: &mut Sums) {
    let name = text(window, "name");
    let row = &window["row"];
    let panels = list(row, "panels");
    let joins = list(row, "joins");
    let overlap = mm(row, "overlap");

    let overlaps = overlap * joins.len() as f64;
    let covered = total(panels, "finished_width") - overlaps;
    sums.same(&format!("covered by {name}"), mm(row, "covered"), covered);

    let to_cover = mm(&window["support"], "length") + 2.0 * mm(row, "returns");
    sums.same(
        &format!("to cover of {name}"),
        mm(row, "to_cover"),
        to_cover,
    );
    sums.same(
        &format!("spare of {name}"),
        mm(row, "spare"),
        covered - to_cover,
    );

    check_joins(name, row, sums);
    for panel in list(window, "panels") {
        let so_called = |other: &&Value| text(other, "name") == text(panel, "name");
        let in_row = panels.iter().filter(so_called).count();
        let over_joins = list(row, "over_joins").iter();
        let over_joins = over_joins.filter(|other| **other == panel["name"]).count();
        let quantity = in_row as f64 + over_joins as f64 * joins.len() as f64;
        let what = format!("how many {} of {name}", text(panel, "name"));
        sums.same(&what, number(panel, "quantity"), quantity);
    }
}

/// Every join lies in the middle of the overlap of two neighbours.
fn check_joins(name: &str, row: &Value, sums: &mut Sums) {
    let overlap = mm(row, "overlap");
    let mut end = overlap / 2.0;
    for (panel, join) in list(row, "panels").iter().zip(list(row, "joins")) {
        end += mm(panel, "finished_width") - overlap;
        sums.same(&format!("a join of {name}"), number(join, "mm"), end);
    }
}
