//! Which sheets, forms and paper are chosen.

use std::collections::BTreeSet;

use pelmet_packet::SystemOfUnits;
use pelmet_sheets::{
    FORMS, PacketChoice, PacketForm, Paper, SHEETS, SheetKind, files, is_of_a_packet, sheet_title,
    sheet_word, text,
};

use crate::{page, reading_room, usual};

#[test]
fn a_sheet_is_chosen_by_its_title_made_one_word() {
    for kind in SHEETS.iter().copied() {
        let title = sheet_title(kind).to_lowercase();
        assert_eq!(sheet_word(kind), title.replace(' ', "-"));
    }
}

#[test]
fn only_the_sheets_chosen_are_written_in_their_usual_order() {
    let packet = reading_room();
    let chosen = [SheetKind::CutSheet, SheetKind::Checks];
    let titled = |text: &str, kind| text.contains(&format!("{}: Read", sheet_title(kind)));
    let on_a4 = PacketChoice {
        sheets: chosen.to_vec(),
        paper: Some(Paper::A4),
        ..PacketChoice::default()
    };
    let (html, text) = (page(&packet, &on_a4), text(&packet, &chosen, usual()));
    for kind in SHEETS.iter().copied() {
        let is_chosen = chosen.contains(&kind);
        let section = format!("<section id=\"{}\"", sheet_word(kind));
        assert_eq!(html.contains(&section), is_chosen, "{kind:?}");
        assert_eq!(titled(&text, kind), is_chosen, "{kind:?}");
    }
    assert!(html.contains("@page { size: A4 }"));
    assert!(!page(&packet, &PacketChoice::default()).contains("@page"));
}

/// Each form alone writes the files it writes together with all the others.
#[test]
fn every_form_can_be_chosen_by_itself() {
    let packet = reading_room();
    let all = PacketChoice {
        forms: FORMS.iter().collect(),
        ..PacketChoice::default()
    };
    let mut together = Vec::new();
    for form in FORMS {
        assert_eq!(PacketForm::named(form.word), Some(form));
        let choice = PacketChoice {
            forms: vec![form],
            ..PacketChoice::default()
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
        assert_eq!(PacketChoice::default().paper_for(&packet), paper);
    }
    let chosen = PacketChoice {
        paper: Some(Paper::Letter),
        ..PacketChoice::default()
    };
    assert_eq!(chosen.paper_for(&packet), Paper::Letter);
}
