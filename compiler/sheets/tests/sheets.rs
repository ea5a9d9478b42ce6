//! The sheets of jobs made by hand, printed at several widths.

#[path = "../../driver/tests/jobs/mod.rs"]
mod jobs;

use std::collections::BTreeSet;

use pelmet_packet::{Expectation, Note, Packet, SystemOfUnits, Warning};
use pelmet_sheets::{
    ALL, Choice, FORMS, Form, MINIMUM_WIDTH, Paper, SheetKind, TextOptions, elevations, files,
    html, is_of_a_packet, layouts, outline_drawings, outline_plots, sheet, text,
};
use unicode_width::UnicodeWidthStr;

fn at(width: usize) -> TextOptions {
    TextOptions { width }
}

/// The reading room with something to say under every heading of the checks.
fn reading_room() -> Packet {
    let mut packet = jobs::reading_room().packet();
    packet.expectations.push(Expectation {
        wording: String::from("bridge finished width = 10 in within 1/4 in"),
        came_out: String::from("10 in"),
    });
    packet.warnings.push(Warning {
        code: String::from("join-thinly-covered"),
        title: String::from("`bridge` covers its join by only 1/2 in on each side"),
        sum: vec![String::from("(1 in - 0 in) / 2 = 1/2 in")],
        accepted: Some(String::from("the join is stitched")),
    });
    packet.notes.push(Note {
        code: String::from("pocket-assumed"),
        title: String::from("the pocket is half the rod’s circumference and the ease"),
        sum: Vec::new(),
    });
    packet
}

fn winter_garden() -> Packet {
    jobs::winter_garden().packet()
}

#[test]
fn the_sheets_of_the_reading_room() {
    let packet = reading_room();
    for (name, kind) in [
        ("elevation", SheetKind::Elevation),
        ("yardage", SheetKind::Yardage),
        ("notions", SheetKind::Notions),
        ("cut-sheet", SheetKind::CutSheet),
        ("labels", SheetKind::Labels),
        ("mark-list", SheetKind::MarkList),
        ("folding-chart", SheetKind::FoldingChart),
        ("making-order", SheetKind::MakingOrder),
        ("quote", SheetKind::Quote),
        ("rod-check", SheetKind::RodCheck),
        ("checks", SheetKind::Checks),
    ] {
        insta::assert_snapshot!(name, sheet(&packet, kind, TextOptions::default()));
    }
}

#[test]
fn the_winter_garden_at_three_widths() {
    let packet = winter_garden();
    for width in [60, 88, 120] {
        insta::assert_snapshot!(
            format!("winter-garden-{width}"),
            text(&packet, &ALL, at(width))
        );
    }
}

#[test]
fn a_layout_whose_search_was_stopped_says_so() {
    let mut packet = winter_garden();
    let told = |packet: &Packet| {
        let yardage = sheet(packet, SheetKind::Yardage, TextOptions::default());
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
            for line in text(&packet, &ALL, at(width)).lines() {
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
            let text = text(&packet, &ALL, at(width));
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
        text(&packet, &ALL, at(0)),
        text(&packet, &ALL, at(MINIMUM_WIDTH))
    );
}

#[test]
fn every_sheet_begins_with_its_title_and_the_job_and_all_of_them_make_the_text() {
    let packet = reading_room();
    let mut sheets = Vec::new();
    for kind in ALL {
        let printed = sheet(&packet, kind, TextOptions::default());
        assert!(printed.starts_with(&format!("{}: Reading room\n==", pelmet_sheets::title(kind))));
        sheets.push(printed);
    }
    let all = text(&packet, &ALL, TextOptions::default());
    assert!(sheets.iter().all(|sheet| all.contains(sheet.trim_end())));
}

#[test]
fn every_caution_stands_on_its_sheet_and_every_piece_on_the_cut_sheet() {
    let wide = at(10_000);
    for packet in [reading_room(), winter_garden()] {
        for caution in &packet.cautions {
            for kind in &caution.sheets {
                assert!(sheet(&packet, *kind, wide).contains(&caution.text));
            }
        }
        let cut_sheet = sheet(&packet, SheetKind::CutSheet, wide);
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
    let printed = text(&packet, &ALL, TextOptions::default());
    assert_eq!(
        printed,
        text(&winter_garden(), &ALL, TextOptions::default())
    );
    assert!(
        printed
            .chars()
            .all(|character| character == '\n' || !character.is_control())
    );
}

#[test]
fn the_reading_room_as_drawings() {
    for (window, drawing) in elevations(&reading_room()) {
        insta::assert_snapshot!(format!("elevation-{window}"), drawing);
    }
    for (cloth, drawing) in layouts(&reading_room()) {
        insta::assert_snapshot!(format!("layout-{cloth}"), drawing);
    }
}

/// Names are the maker's own, and a title may hold anything that is text.
/// The first outline of a job with a piece on the fold: opened out, its words and its layers.
#[test]
fn the_winter_garden_as_outlines() {
    let packet = winter_garden();
    let (drawings, plots) = (outline_drawings(&packet), outline_plots(&packet));
    let names = |of: &[(String, String)]| -> Vec<String> {
        of.iter().map(|(name, _)| name.clone()).collect()
    };
    assert_eq!(names(&drawings), names(&plots));
    insta::assert_snapshot!("outline-svg", drawings[0].1);
    insta::assert_snapshot!("outline-dxf", plots[0].1.replace("\r\n", "\n"));
}

#[test]
fn whatever_a_job_is_called_the_page_stays_whole() {
    let mut packet = reading_room();
    packet.title = String::from("<script>alert(1)</script> & \"Fenêtres\" 🪡");
    let page = html(&packet, &ALL, None);
    assert!(
        page.contains("<title>&lt;script&gt;alert(1)&lt;/script&gt; &amp; "),
        "{page}"
    );
    assert!(!page.contains("<script"));
    for sheet in ALL {
        let anchor = pelmet_sheets::word(sheet);
        assert!(page.contains(&format!("href=\"#{anchor}\"")), "{anchor}");
        assert!(
            page.contains(&format!("<section id=\"{anchor}\"")),
            "{anchor}"
        );
    }
}

#[test]
fn the_page_asks_for_nothing_outside_itself() {
    let page = html(&reading_room(), &ALL, None);
    for asks in [" src=", "url(", "@import", "<link", "<iframe"] {
        assert!(!page.contains(asks), "{asks}");
    }
    let addresses = page.matches("http").count();
    assert_eq!(
        addresses,
        page.matches("http://www.w3.org/2000/svg").count()
    );
}

#[test]
fn a_sheet_is_chosen_by_its_title_made_one_word() {
    for kind in ALL {
        let title = pelmet_sheets::title(kind).to_lowercase();
        assert_eq!(pelmet_sheets::word(kind), title.replace(' ', "-"));
    }
}

#[test]
fn only_the_sheets_chosen_are_written_in_their_usual_order() {
    let packet = reading_room();
    let chosen = [SheetKind::CutSheet, SheetKind::Checks];
    let titled = |text: &str, kind| text.contains(&format!("{}: Read", pelmet_sheets::title(kind)));
    let (page, text) = (
        html(&packet, &chosen, Some(Paper::A4)),
        text(&packet, &chosen, at(88)),
    );
    for kind in ALL {
        let is_chosen = chosen.contains(&kind);
        let section = format!("<section id=\"{}\"", pelmet_sheets::word(kind));
        assert_eq!(page.contains(&section), is_chosen, "{kind:?}");
        assert_eq!(titled(&text, kind), is_chosen, "{kind:?}");
    }
    assert!(page.contains("@page { size: A4 }"));
    assert!(!html(&packet, &ALL, None).contains("@page"));
}

/// Each form alone writes the files it writes together with all the others.
#[test]
fn every_form_can_be_chosen_by_itself() {
    let packet = reading_room();
    let all = Choice {
        forms: FORMS.iter().collect(),
        ..Choice::default()
    };
    let mut together = Vec::new();
    for form in &FORMS {
        assert_eq!(Form::named(form.word), Some(form));
        let choice = Choice {
            forms: vec![form],
            ..Choice::default()
        };
        let files = files(&packet, &choice);
        assert!(!files.is_empty(), "{}", form.word);
        for file in &files {
            assert!(is_of_a_packet(&file.name), "{}", file.name);
            assert!(!file.contents.is_empty(), "{}", file.name);
        }
        together.extend(files);
    }
    let names: BTreeSet<&str> = together.iter().map(|file| file.name.as_str()).collect();
    assert_eq!(names.len(), together.len(), "no two files have one name");
    assert!(together == files(&packet, &all));
}

#[test]
fn the_usual_paper_is_that_of_the_house() {
    let mut packet = reading_room();
    for (system, paper) in [
        (SystemOfUnits::Inches, Paper::Letter),
        (SystemOfUnits::Metric, Paper::A4),
    ] {
        packet.units.system = system;
        assert_eq!(Choice::default().paper_for(&packet), paper);
    }
    let chosen = Choice {
        paper: Some(Paper::Letter),
        ..Choice::default()
    };
    assert_eq!(chosen.paper_for(&packet), Paper::Letter);
}
