//! Sheets as plain text, at every width.

use pelmet_packet::Packet;
use pelmet_sheets::{MINIMUM_WIDTH, SHEETS, SheetKind, sheet_title, text};
use unicode_width::UnicodeWidthStr;

use crate::{at, reading_room, usual, winter_garden};

#[test]
fn a_layout_whose_search_was_stopped_says_so() {
    let mut packet = winter_garden();
    let told = |packet: &Packet| {
        let yardage = text(packet, &[SheetKind::Yardage], usual());
        yardage.matches("was stopped before its end").count()
    };
    assert_eq!(told(&packet), 0);
    if let Some(cloth) = packet.cloths.first_mut() {
        cloth.search_stopped = true;
    }
    assert_eq!(told(&packet), 1);
}

#[test]
fn no_line_is_wider_than_asked_nor_ends_in_a_blank() {
    for packet in [reading_room(), winter_garden()] {
        for width in MINIMUM_WIDTH..132 {
            for line in text(&packet, SHEETS, at(width)).lines() {
                assert!(line.width() <= width, "{width}: {line}");
                assert_eq!(line.trim_end(), line, "{width}");
            }
        }
    }
}

#[test]
fn no_number_is_parted_from_its_unit() {
    for packet in [reading_room(), winter_garden()] {
        for width in MINIMUM_WIDTH..132 {
            let text = text(&packet, SHEETS, at(width));
            let lines: Vec<&str> = text.lines().collect();
            for pair in lines.windows(2) {
                let parted = ends_in_a_digit(pair[0]) && begins_with_a_unit(pair[1]);
                assert!(!parted, "{width}: {pair:?}");
            }
        }
    }
}

fn ends_in_a_digit(line: &str) -> bool {
    line.ends_with(|last: char| last.is_ascii_digit())
}

fn begins_with_a_unit(line: &str) -> bool {
    let first = line.split_whitespace().next().unwrap_or_default();
    ["in", "yd", "mm", "m", "sq"].contains(&first.trim_end_matches(['.', ',', ';']))
}

#[test]
fn a_width_too_narrow_to_print_is_taken_for_the_narrowest() {
    let packet = winter_garden();
    assert_eq!(
        text(&packet, SHEETS, at(0)),
        text(&packet, SHEETS, at(MINIMUM_WIDTH))
    );
}

#[test]
fn every_sheet_begins_with_its_title_and_the_job_and_all_of_them_make_the_text() {
    let packet = reading_room();
    let mut sheets = Vec::new();
    for kind in SHEETS.iter().copied() {
        let printed = text(&packet, &[kind], usual());
        assert!(printed.starts_with(&format!("{}: Reading room\n==", sheet_title(kind))));
        sheets.push(printed);
    }
    let all = text(&packet, SHEETS, usual());
    assert!(sheets.iter().all(|sheet| all.contains(sheet.trim_end())));
}

#[test]
fn every_caution_stands_on_its_sheet_and_every_piece_on_the_cut_sheet() {
    let wide = at(10_000);
    for packet in [reading_room(), winter_garden()] {
        for caution in &packet.cautions {
            for kind in &caution.sheets {
                assert!(text(&packet, &[*kind], wide).contains(&caution.text));
            }
        }
        let cut_sheet = text(&packet, &[SheetKind::CutSheet], wide);
        let panels = packet.windows.iter().flat_map(|window| &window.panels);
        for piece in panels.flat_map(|panel| &panel.pieces) {
            let size = format!("{} x {}", piece.cut_width.text, piece.cut_length.text);
            let line = cut_sheet
                .lines()
                .find(|line| line.contains(&size) && line.contains(&piece.label));
            assert!(
                line.is_some_and(|line| line.contains(&piece.cloth)),
                "{} {size}",
                piece.label
            );
        }
    }
}

#[test]
fn printing_is_plain_text_and_the_same_every_time() {
    let packet = winter_garden();
    let printed = text(&packet, SHEETS, usual());
    assert_eq!(printed, text(&winter_garden(), SHEETS, usual()));
    assert!(
        printed
            .chars()
            .all(|character| character == '\n' || !character.is_control())
    );
}
