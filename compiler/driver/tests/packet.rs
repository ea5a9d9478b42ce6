//! What a packet says of jobs made by hand.

#![expect(
    clippy::expect_used,
    reason = "a test stops at the first broken promise"
)]

mod jobs;

use pelmet_packet::Packet;
use pelmet_packet::{Measure, MeasuredFrom, Panel, Piece};
use serde_json::Value;

fn panel<'a>(packet: &'a Packet, window: &str, panel: &str) -> &'a Panel {
    let window = packet
        .windows
        .iter()
        .find(|of| of.name == window)
        .expect(window);
    window
        .panels
        .iter()
        .find(|of| of.name == panel)
        .expect(panel)
}

fn texts<'a>(measures: impl IntoIterator<Item = &'a Measure>) -> Vec<&'a str> {
    measures
        .into_iter()
        .map(|measure| measure.text.as_str())
        .collect()
}

fn outline(piece: &Piece) -> Vec<(&str, &str)> {
    let points = piece.outline.iter().map(|point| &point.at);
    points
        .map(|at| (at.across.text.as_str(), at.down.text.as_str()))
        .collect()
}

#[test]
fn the_same_job_gives_the_same_bytes_and_the_packet_comes_back_from_them() {
    for job in [jobs::reading_room, jobs::winter_garden] {
        let packet = job().packet();
        let json = serde_json::to_string(&packet).expect("a packet is plain data");
        let again = serde_json::to_string(&job().packet()).expect("a packet is plain data");
        assert_eq!(json, again);
        assert_eq!(
            serde_json::from_str::<Packet>(&json).expect("a packet comes back"),
            packet
        );
    }
}

#[test]
fn cloths_come_by_name_and_panels_as_they_hang() {
    let mut job = jobs::reading_room();
    let before = job.packet();
    job.job.fabrics.reverse();
    job.job.windows.reverse();
    for window in &mut job.job.windows {
        for panel in &mut window.panels {
            panel.face = 1 - panel.face;
            panel.lining = panel.lining.map(|lining| 1 - lining);
        }
        window.panels.reverse();
        for index in window.row.iter_mut().chain(&mut window.over_joins) {
            *index = 2 - *index;
        }
        if let Some(motif) = &mut window.motif {
            motif.panel = 2 - motif.panel;
        }
    }
    assert_eq!(job.packet(), before);
    let names: Vec<&str> = before.windows[0]
        .panels
        .iter()
        .map(|panel| panel.name.as_str())
        .collect();
    assert_eq!(names, ["wing", "bib", "bridge"]);
}

#[test]
fn a_panel_left_out_by_the_sums_leaves_no_packet() {
    let job = jobs::reading_room();
    let (mut work, laid) = job.worked();
    work.windows[1].panels[0] = None;
    let parts = pelmet_driver::Parts {
        title: job.title,
        style: job.style,
        currency: job.currency,
        job: &job.job,
        work: &work,
        laid: &laid,
        diagnostics: &[],
        expectations: Vec::new(),
    };
    assert_eq!(pelmet_driver::assemble(parts), None);
}

#[test]
fn the_row_is_written_out() {
    let packet = jobs::reading_room().packet();
    let row = &packet.windows[1].row;
    assert_eq!(row.sum, "wing 18 in + 2 x bib 15 in + wing 18 in = 66 in");
    assert_eq!(row.to_cover_sum, "brass-pole 66 in");
    assert_eq!(texts(&row.joins), ["18 in", "33 in", "48 in"]);
    assert_eq!(row.over_joins, ["bridge"]);

    let packet = jobs::winter_garden().packet();
    assert_eq!(
        packet.windows[1].row.to_cover_sum,
        "planche 2200 mm + 2 returns of 100 mm = 2400 mm"
    );
    assert_eq!(
        packet.windows[0].row.sum,
        "2 x brise-bise 620 mm - 1 overlap of 40 mm = 1200 mm"
    );
}

/// Common practice, no source: on the fold, half the width is drawn and cut.
#[test]
fn a_piece_on_the_fold_is_drawn_at_half_its_width_from_the_fold() {
    let packet = jobs::reading_room().packet();
    let face = &panel(&packet, "bench-left", "wing").pieces[0];
    // Flat 18 in and 3/8 in at each side; half of 18 3/4 in, and the step 3 in wide at each side.
    assert_eq!(
        (face.cut_width.text.as_str(), face.draw_width.text.as_str()),
        ("18 3/4 in", "9 3/8 in")
    );
    assert_eq!(face.outline_from, MeasuredFrom::Fold);
    let across: Vec<&str> = outline(face).iter().map(|(across, _)| *across).collect();
    assert_eq!(
        across,
        [
            "0 in", "6 3/8 in", "6 3/8 in", "9 3/8 in", "9 3/8 in", "0 in"
        ]
    );
    // The step is 4 in high, between cut lines that lie 3/8 in below their sewn lines.
    let down: Vec<f64> = face.outline.iter().map(|point| point.at.down.mm).collect();
    assert!((down[0] - down[2] - 4.0 * 25.4).abs() < 1e-9);
    assert!((down[4]).abs() < 1e-9 && (down[5]).abs() < 1e-9);
}

#[test]
fn a_piece_cut_open_is_drawn_whole_from_its_left_edge() {
    let packet = jobs::reading_room().packet();
    let face = &panel(&packet, "bench-left", "bib").pieces[0];
    assert_eq!(face.cut_width, face.draw_width);
    assert_eq!(face.outline_from, MeasuredFrom::LeftEdge);
    assert_eq!(outline(face)[0], ("0 in", "0 in"));
    assert_eq!(face.outline.len(), 8);
}

#[test]
fn shrinkage_is_in_the_cutting_line_as_in_the_size() {
    let packet = jobs::winter_garden().packet();
    let face = &packet.windows[1].panels[0].pieces[0];
    let widest = face
        .outline
        .iter()
        .map(|point| point.at.across.mm)
        .fold(0.0, f64::max);
    let lowest = face
        .outline
        .iter()
        .map(|point| point.at.down.mm)
        .fold(0.0, f64::max);
    assert!(
        (widest - face.cut_width.mm).abs() < 1e-5,
        "{widest} {}",
        face.cut_width.mm
    );
    assert!(
        (lowest - face.cut_length.mm).abs() < 1e-5,
        "{lowest} {}",
        face.cut_length.mm
    );
}

#[test]
fn strips_of_a_joined_piece_are_named_and_each_is_placed_once() {
    let packet = jobs::winter_garden().packet();
    let joined = packet.windows[1].panels[0].pieces[0]
        .joined
        .as_ref()
        .expect("it is joined");
    let toile = packet
        .cloths
        .iter()
        .find(|cloth| cloth.name == "toile-à-rayures")
        .expect("toile");
    let mut strips: Vec<u32> = toile
        .placed
        .iter()
        .filter_map(|placed| placed.strip)
        .collect();
    strips.sort_unstable();
    assert_eq!(strips.len(), joined.strips.len());
    assert!(
        (1..).zip(&strips).all(|(number, strip)| number == *strip),
        "{strips:?}"
    );
    assert_eq!(joined.seams.len() + 1, strips.len());
}

#[test]
fn a_fold_is_marked_with_the_line_it_is_brought_to_on_both_sides_of_the_centre() {
    let packet = jobs::reading_room().packet();
    let folds: Vec<_> = panel(&packet, "bench-left", "bridge")
        .marks
        .iter()
        .filter_map(|mark| Some((mark, mark.fold.as_ref()?)))
        .collect();
    assert_eq!(folds.len(), 6);
    let (first, fold) = folds[0];
    // Knives at 2, 5 1/4 and 10 1/2 in from the centre of 28 in, 3/4, 1 1/4 and 2 in deep, toward it.
    assert_eq!(
        first.from_left.as_ref().expect("a fold has a place").text,
        "3 1/2 in"
    );
    assert_eq!(
        first.from_centre.as_ref().expect("a fold has a place").text,
        "10 1/2 in left"
    );
    assert_eq!(fold.brought_to_from_left.text, "7 1/2 in");
    assert_eq!(fold.brought_to_from_centre.text, "6 1/2 in left");
    assert_eq!(fold.depth.text, "2 in");
    let (last, fold) = folds[5];
    assert_eq!(
        last.from_centre.as_ref().expect("a fold has a place").text,
        "10 1/2 in right"
    );
    assert_eq!(fold.brought_to_from_centre.text, "6 1/2 in right");
}

/// Common practice, no source.
#[test]
fn the_hang_can_be_corrected_by_half_of_half_the_fastener_over_a_rod() {
    let packet = jobs::reading_room().packet();
    let range = panel(&packet, "bench-left", "wing")
        .hang_range
        .as_ref()
        .expect("it has a fastener");
    assert_eq!(
        (range.shortest.text.as_str(), range.longest.text.as_str()),
        ("16 13/16 in", "17 3/16 in")
    );
    assert_eq!(
        panel(&jobs::winter_garden().packet(), "fenêtre-est", "brise-bise").hang_range,
        None
    );
}

#[test]
fn notions_are_summed_over_all_panels_and_tape_is_bought_by_the_roll() {
    let packet = jobs::reading_room().packet();
    let tape = packet
        .notions
        .iter()
        .find(|notion| notion.name == "fusible tape")
        .expect("tape");
    assert_eq!(tape.parts.len(), 6);
    let together: f64 = tape
        .parts
        .iter()
        .map(|part| long(&part.each) * f64::from(part.quantity))
        .sum();
    assert!((together - long(&tape.exact)).abs() < 1e-6);
    let rolls = tape.rolls.expect("the length of a roll is known");
    let roll = tape
        .roll
        .as_ref()
        .expect("the length of a roll is known")
        .mm;
    assert!(f64::from(rolls) * roll >= together && (f64::from(rolls) - 1.0) * roll < together);
}

fn long(extent: &pelmet_packet::Extent) -> f64 {
    extent.length.as_ref().expect("it is measured").mm
}

#[test]
fn cloth_is_priced_as_it_is_bought() {
    let packet = jobs::reading_room().packet();
    let price = |index: usize| packet.cloths[index].price.as_ref().expect("it has a price");
    assert_eq!(price(0).text, "32.00 USD per yd");
    let costs: Vec<f64> = packet
        .cloths
        .iter()
        .map(|cloth| cloth.cost.as_ref().expect("it has a price").amount)
        .collect();
    let yards = packet.cloths[0].bought.mm / 914.4;
    assert!(
        (costs[0] - yards * 32.0).abs() < 0.005,
        "{} for {yards} yd",
        costs[0]
    );
    let together = packet
        .cloth_cost
        .as_ref()
        .expect("every cloth has a price")
        .amount;
    assert!((together - costs.iter().sum::<f64>()).abs() < 0.005);
    assert_eq!(jobs::winter_garden().packet().cloth_cost, None);
}

#[test]
fn every_piece_lies_in_one_band_and_bands_follow_each_other() {
    for job in [jobs::reading_room(), jobs::winter_garden()] {
        for cloth in job.packet().cloths {
            let mut banded: Vec<u32> = cloth
                .bands
                .iter()
                .flat_map(|band| band.pieces.clone())
                .collect();
            banded.sort_unstable();
            assert!((1..=cloth.piece_count).eq(banded));
            for pair in cloth.bands.windows(2) {
                assert!(pair[0].bolt < pair[1].bolt || pair[0].to.mm <= pair[1].from.mm);
            }
            assert!(cloth.at_least.mm <= cloth.exact.mm && cloth.exact.mm <= cloth.bought.mm);
            assert!(cloth.exact.mm <= cloth.rule_of_thumb.mm);
        }
    }
}

#[test]
fn a_pleated_panel_is_folded_layer_upon_layer() {
    let packet = jobs::reading_room().packet();
    let bridge = panel(&packet, "bench-left", "bridge");
    let folded = bridge.folded.as_ref().expect("it is folded");
    let heights: Vec<u32> = folded.layers.iter().map(|layer| layer.height).collect();
    assert!(heights.is_sorted());
    let mut stretches: Vec<u32> = folded.layers.iter().map(|layer| layer.stretch).collect();
    stretches.sort_unstable();
    assert!((1..=13).eq(stretches));
    let seen = folded.seen.as_ref().expect("it can be followed");
    let lowest = seen.lowest.as_ref().expect("it has a lower edge");
    assert_eq!(lowest.down, bridge.made_length);
    assert_eq!(
        texts([&folded.extent.from, &folded.extent.to]),
        ["0 in", "12 in"]
    );
    assert_eq!(bridge.thickest_stack, None);
}

#[test]
fn the_thickest_stack_is_as_thick_as_its_layers_together() {
    let mut job = jobs::reading_room();
    for (fabric, tenths) in job.job.fabrics.iter_mut().zip([6, 3]) {
        fabric.thickness = Some(pelmet_measure::Length::MILLIMETRE.portion(tenths, 10));
    }
    // Its folds lie edge to edge; the turn of thick cloth would push them over one another.
    let panels = job
        .job
        .windows
        .iter_mut()
        .flat_map(|window| &mut window.panels);
    for pleats in panels.filter_map(|panel| panel.pleats.as_mut()) {
        pleats.turn_of_cloth = Some(pelmet_measure::Length::ZERO);
    }
    let packet = job.packet();
    let stack = |name| {
        panel(&packet, "bench-left", name)
            .thickest_stack
            .as_ref()
            .map(|of| of.mm)
    };
    // Three layers of the pleated, unlined bridge, one of the flat, lined bib.
    assert_eq!((stack("bridge"), stack("bib")), (Some(1.8), Some(0.9)));
}

/// A part of a packet as it is written, but for lengths, which are shown as they are printed.
fn shown(part: impl serde::Serialize) -> String {
    let part = serde_json::to_value(part).expect("a packet is plain data");
    serde_json::to_string_pretty(&printed(part)).expect("a packet is plain data")
}

fn printed(part: Value) -> Value {
    match part {
        Value::Object(mut fields) if fields.contains_key("mm") => {
            fields.remove("text").unwrap_or_default()
        }
        Value::Object(fields) => {
            let fields = fields.into_iter();
            Value::Object(fields.map(|(name, of)| (name, printed(of))).collect())
        }
        Value::Array(items) => Value::Array(items.into_iter().map(printed).collect()),
        Value::Null | Value::Bool(_) | Value::Number(_) | Value::String(_) => part,
    }
}

/// The whole of a packet that was made from a text stands in `examples`.
#[test]
fn the_packet_of_one_gathered_pair() {
    let mut job = jobs::winter_garden();
    job.job.windows.remove(0);
    let packet = job.packet();
    let window = &packet.windows[0];
    let pair = &window.panels[0];
    insta::assert_snapshot!("gathered_pair_cloth", shown(&packet.cloths));
    insta::assert_snapshot!("gathered_pair_row", shown((&window.support, &window.row)));
    insta::assert_snapshot!("gathered_pair_pieces", shown(&pair.pieces));
    insta::assert_snapshot!("gathered_pair_marks", shown(&pair.marks));
    insta::assert_snapshot!("gathered_pair_steps", shown(&pair.making_order));
    let rest = Panel {
        pieces: vec![],
        marks: vec![],
        making_order: vec![],
        ..pair.clone()
    };
    insta::assert_snapshot!("gathered_pair_panel", shown(rest));
}
