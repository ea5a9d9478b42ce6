//! A number that is off is found: each sum is shown one, planted in the packet of an example.

use serde_json::json;

use crate::{example_called, sums};

/// By how much a planted number is off: millimetres, grams, money or a count.
const OFF: f64 = 7.0;

/// What is found once the number at this place of a packet is off.
fn found(example: &str, place: &str) -> Vec<String> {
    let mut packet = example_called(example).packet.clone();
    let number = packet.pointer_mut(place);
    let number = number.unwrap_or_else(|| panic!("{example} has no {place}"));
    *number = json!(number.as_f64().expect(place) + OFF);
    sums::of(&packet).faults
}

#[track_caller]
fn assert_found(example: &str, within: &str, planted: &[(&str, &str)]) {
    for (place, fault) in planted {
        let found = found(example, &format!("{within}{place}"));
        let is_found = found.iter().any(|line| line.starts_with(fault));
        assert!(is_found, "{place}, {fault}: {found:#?}");
    }
}

#[test]
fn a_row_that_is_off_is_found() {
    assert_found(
        "reading-room",
        "/windows/0",
        &[
            ("/row/overlap/mm", "covered by garden"),
            ("/row/panels/1/finished_width/mm", "covered by garden"),
            ("/row/spare/mm", "spare of garden"),
            ("/row/joins/1/mm", "a join of garden"),
            ("/support/length/mm", "to cover of garden"),
            ("/panels/0/quantity", "how many wing of garden"),
            ("/opening/width/mm", "packet/windows/0/opening/width"),
        ],
    );
}

#[test]
fn a_panel_that_is_off_is_found() {
    assert_found(
        "hall",
        "/windows/0/panels/0",
        &[
            ("/drop/mm", "made length of valance of hall-door"),
            ("/finished_width/mm", "fullness of valance"),
            ("/hang_range/longest/mm", "hang range of valance"),
            ("/pleats/0/take_up/mm", "flat width of valance"),
            ("/turn_of_cloth/together/mm", "flat width of valance"),
            (
                "/pleats/0/flat/from/mm",
                "a crease of valance of hall-door lies in",
            ),
            ("/creases/2/at/mm", "a crease of valance"),
            (
                "/stretches/3/flat/to/mm",
                "a stretch of valance of hall-door, flat",
            ),
            (
                "/stretches/3/finished/to/mm",
                "a stretch of valance of hall-door, folded",
            ),
            ("/layers/1/layers", "layers of valance"),
            ("/thickest", "thickest of valance"),
            ("/outline/1/at/down/mm", "edge 1 of valance"),
            ("/outline/2/edge_length/mm", "edge 3 of valance"),
            ("/marks/2/from_left/mm", "mark 3 of valance"),
            ("/marks/7/fold/brought_to_from_left/mm", "mark 8 of valance"),
            ("/marks/7/number", "mark 8 of valance"),
            ("/making_order/1/number", "step "),
            ("/weight/grams", "weight of hall-door"),
        ],
    );
}

#[test]
fn a_piece_that_is_off_is_found() {
    assert_found(
        "hall",
        "/windows/0/panels/0/pieces/0",
        &[
            (
                "/cut_width/mm",
                "width to draw of valance of hall-door face",
            ),
            (
                "/outline/2/at/across/mm",
                "outline of valance of hall-door face, across",
            ),
            (
                "/outline/2/at/down/mm",
                "outline of valance of hall-door face, down",
            ),
            ("/sewn/2/at/across/mm", "sewn width of valance"),
            ("/sewn/2/at/down/mm", "sewn length of valance"),
            ("/allowances/0/total/mm", "cut length of valance"),
            ("/allowances/1/total/mm", "cut width of valance"),
            ("/area/square_metres", "area of valance"),
            ("/joined/strips/0/mm", "a seam of valance"),
            ("/joined/seams/1/from_cut_edge/mm", "a seam of valance"),
            ("/joined/strips/2/mm", "strips of valance"),
        ],
    );
}

#[test]
fn a_cloth_that_is_off_is_found() {
    assert_found(
        "boathouse",
        "/cloths/1",
        &[
            ("/exact/mm", "exact length of reed-print"),
            ("/bolts/0/bought/mm", "bought of reed-print, in steps"),
            ("/bought/mm", "bought of reed-print"),
            ("/piece_count", "piece count of reed-print"),
            (
                "/placed/0/width/mm",
                "width of river-1 flank face on its cloth",
            ),
            ("/placed/0/across/mm", "river-1 flank face lies apart from"),
            ("/placed/0/print_along/mm", "print of reed-print along"),
            ("/bands/0/from/mm", "piece 1 of reed-print lies in its band"),
            (
                "/bands/0/pieces/0",
                "every piece of reed-print lies in one band",
            ),
            ("/cost/amount", "cost of reed-print"),
            ("/at_least_cost/amount", "at_least_cost of reed-print"),
        ],
    );
}

#[test]
fn what_is_bought_that_is_off_is_found() {
    assert_found(
        "boathouse",
        "",
        &[
            ("/windows/0/panels/0/tape/0/length/mm", "tape of flank"),
            (
                "/notions/0/parts/0/each/length/mm",
                "fusible tape of flank river-1, together",
            ),
            (
                "/notions/0/parts/0/quantity",
                "fusible tape of flank river-1, how many",
            ),
            ("/notions/0/exact/length/mm", "exact of fusible tape"),
            ("/notions/0/rolls", "rolls of fusible tape"),
            ("/quote/lines/2/reckoned/price", "quote for fusible tape"),
            ("/quote/lines/2/cost/amount", "cost of the quote"),
            ("/quote/markup/amount/amount", "markup"),
            ("/quote/total/amount", "total of the quote"),
            ("/weight/grams", "weight of all"),
        ],
    );
}
