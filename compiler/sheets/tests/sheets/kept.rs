//! Sheets and drawings as they were, so that whoever changes one sees what becomes of it.

use insta::assert_snapshot;
use pelmet_sheets::{PacketChoice, SHEETS, SheetKind, sheet_word, text};

use crate::{at, reading_room, usual, winter_garden, written};

#[test]
fn the_sheets_of_the_reading_room() {
    let packet = reading_room();
    for kind in SHEETS.iter().copied() {
        let mut packet = packet.clone();
        // Both windows are made alike, in many words.
        if kind == SheetKind::MakingOrder {
            packet.windows.truncate(1);
        }
        let name = format!("reading-room-{}", sheet_word(kind));
        assert_snapshot!(name, text(&packet, &[kind], usual()));
    }
}

#[test]
fn the_sheets_of_the_winter_garden() {
    let packet = winter_garden();
    for kind in SHEETS.iter().copied() {
        let name = format!("winter-garden-{}", sheet_word(kind));
        assert_snapshot!(name, text(&packet, &[kind], usual()));
    }
}

/// On a narrow page some tables are told entry by entry; on a wide one every cell has room.
#[test]
fn tables_on_a_narrow_and_on_a_wide_page() {
    let packet = winter_garden();
    for kind in [
        SheetKind::Yardage,
        SheetKind::CutSheet,
        SheetKind::MarkList,
        SheetKind::RodCheck,
    ] {
        for width in [60, 120] {
            let name = format!("winter-garden-{}-{width}", sheet_word(kind));
            assert_snapshot!(name, text(&packet, &[kind], at(width)));
        }
    }
}

#[test]
fn the_elevations_and_layouts_of_the_reading_room() {
    let drawings = written(&reading_room(), "drawings", &PacketChoice::default());
    let shown = ["elevation-", "layout-"];
    for (name, drawing) in drawings {
        if shown.iter().any(|begins| name.starts_with(begins)) {
            assert_snapshot!(name.trim_end_matches(".svg"), drawing);
        }
    }
}

/// The first outline of a job with a piece on the fold: opened out, its words and its layers.
#[test]
fn an_outline_of_the_winter_garden() {
    let packet = winter_garden();
    let of_form = |form| written(&packet, form, &PacketChoice::default());
    let (drawings, plots) = (of_form("outlines"), of_form("dxf"));
    let names = |of: &[(String, String)], ending: &str| -> Vec<String> {
        let names = of.iter().map(|(name, _)| name);
        let names = names.map(|name| name.strip_suffix(ending).unwrap().to_owned());
        names.collect()
    };
    assert_eq!(names(&drawings, ".svg"), names(&plots, ".dxf"));
    assert_snapshot!("outline-svg", drawings[0].1);
    assert_snapshot!("outline-dxf", pairs(&plots[0].1));
}

/// The group codes of a DXF file, each on one line with its value.
fn pairs(plot: &str) -> String {
    let lines: Vec<&str> = plot.split_terminator("\r\n").collect();
    assert!(
        lines.len().is_multiple_of(2) && plot.ends_with("\r\n") && !lines.concat().contains('\n')
    );
    let pairs = lines.chunks(2).map(|pair| pair.join(" "));
    pairs.collect::<Vec<String>>().join("\n")
}
