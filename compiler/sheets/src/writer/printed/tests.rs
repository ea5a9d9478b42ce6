use std::collections::BTreeMap;

use pelmet_packet::Packet;

use super::pages::{PrintedPages, SIDE};
use super::{printed, set};
use crate::content::{SheetBlock, SheetBlocks, TextColumn, TextTable};
use crate::drawing::{Drawing, Element, LineKind, PrintedFile, at};
use crate::examples::packets;
use crate::paper::Paper;
use crate::sheet::{SHEETS, sheet, sheet_title};

/// The texts set on a page, in order, without what is drawn.
fn texts(page: &Drawing) -> Vec<&str> {
    let set = page.elements.iter().filter_map(|element| match element {
        Element::Text { text, .. } => Some(text.as_str()),
        Element::Words { .. } | Element::Path { .. } => None,
    });
    set.collect()
}

/// How often each word stands in some texts.
fn words<'a>(texts: impl IntoIterator<Item = &'a str>) -> BTreeMap<String, usize> {
    let mut words = BTreeMap::new();
    for word in texts
        .into_iter()
        .flat_map(|text| text.split([' ', '\u{a0}']))
    {
        let found: &mut usize = words.entry(word.to_owned()).or_default();
        *found = found.saturating_add(1);
    }
    words
}

fn texts_of(block: &SheetBlock) -> Vec<&str> {
    match block {
        SheetBlock::Heading(text) | SheetBlock::Paragraph(text) => vec![text],
        SheetBlock::Panel(name, words) => vec![name, words],
        SheetBlock::Item(text) | SheetBlock::Part(text) | SheetBlock::Numbered(_, text) => {
            vec![text]
        }
        SheetBlock::Table(table) => table.rows().iter().flatten().map(String::as_str).collect(),
        SheetBlock::Labels(labels) => labels
            .iter()
            .flat_map(|label| [&label.cloth, &label.size, &label.remarks].map(String::as_str))
            .collect(),
        // Titles are asked for where pages are found by them.
        SheetBlock::Title(_) | SheetBlock::Drawing(_) | SheetBlock::Gap => Vec::new(),
    }
}

/// The packets of the examples, and one with a very long word for the name of everything.
fn on_paper() -> impl Iterator<Item = (Packet, Paper)> {
    let [mut long, ..] = packets();
    long.title = "Donaudampfschifffahrtsgesellschaft".repeat(12);
    for window in &mut long.windows {
        window.name = long.title.clone();
        for panel in &mut window.panels {
            panel.name = long.title.clone();
        }
    }
    for cloth in &mut long.cloths {
        cloth.name = long.title.clone();
    }
    let packets = packets().into_iter().chain([long]);
    packets.flat_map(|packet| Paper::ALL.map(|paper| (packet.clone(), paper)))
}

#[test]
fn every_word_of_every_sheet_is_on_paper() {
    for (packet, paper) in on_paper().filter(|(packet, _)| packet.title.len() < 100) {
        let pages = printed(&packet, SHEETS, paper).pages;
        let printed = words(pages.iter().flat_map(texts));
        let sheets: Vec<SheetBlock> = SHEETS
            .iter()
            .flat_map(|kind| sheet(&packet, *kind).into_blocks())
            .collect();
        for (word, count) in words(sheets.iter().flat_map(texts_of)) {
            assert!(
                printed.get(&word).is_some_and(|found| *found >= count),
                "{word}"
            );
        }
    }
}

#[test]
fn nothing_reaches_into_the_margins() {
    for (packet, paper) in on_paper() {
        for page in printed(&packet, SHEETS, paper).pages {
            for element in &page.elements {
                if let Element::Text {
                    at,
                    lettering,
                    text,
                } = element
                {
                    let end = at.x + lettering.width(text);
                    assert!(
                        at.x >= SIDE && end <= page.width - SIDE + 0.1,
                        "{text} in {}",
                        page.title
                    );
                    assert!(
                        at.y > 5.0 && at.y < page.height - 5.0,
                        "{text} in {}",
                        page.title
                    );
                }
            }
        }
    }
}

#[test]
fn the_contents_name_the_page_each_sheet_begins_on() {
    for (packet, paper) in on_paper() {
        let PrintedFile {
            pages, bookmarks, ..
        } = printed(&packet, SHEETS, paper);
        let contents = texts(&pages[0]);
        let titles = SHEETS
            .iter()
            .map(|kind| sheet_title(*kind))
            .filter(|name| bookmarks.iter().any(|it| it.title == *name));
        for (name, bookmark) in titles.zip(&bookmarks) {
            let entry = contents.iter().position(|text| *text == name).unwrap();
            let number: usize = contents[entry + 1].parse().unwrap();
            assert_eq!(bookmark.page + 1, number, "{name}");
            assert_eq!(pages[number - 1].title, name);
            assert_ne!(pages[number - 2].title, name);
            let last = *texts(&pages[number - 1]).last().unwrap();
            assert_eq!(last, format!("page {number} of {}", pages.len()));
        }
    }
}

#[test]
fn a_sheet_of_one_sentence_is_said_in_the_contents() {
    let [packet, ..] = packets();
    let PrintedFile {
        pages, bookmarks, ..
    } = printed(&packet, SHEETS, Paper::Letter);
    let contents = texts(&pages[0]);
    let entry = contents
        .iter()
        .position(|text| *text == "Folding chart")
        .unwrap();
    assert_eq!(contents[entry + 1], "No panel of this job is pleated.");
    assert!(
        bookmarks
            .iter()
            .all(|bookmark| bookmark.title != "Folding chart")
    );
}

/// A table of so many rows; every seventh takes several lines.
fn long_table(count: usize) -> TextTable {
    let mut table = TextTable::new([
        TextColumn::count("No"),
        TextColumn::text("Piece"),
        TextColumn::text("Size"),
    ]);
    for number in 1..=count {
        let piece = if number % 7 == 0 {
            "a piece with a name that goes on ".repeat(6)
        } else {
            String::from("wing face")
        };
        table.row([number.to_string(), piece, String::from("15 1/2 in x 20 in")]);
    }
    table
}

#[test]
fn a_long_table_repeats_its_head_and_no_row_is_cut() {
    let mut page = SheetBlocks::default();
    page.table(&long_table(200));
    let mut pages = PrintedPages::new(Paper::A4);
    pages.begin("Cut sheet");
    pages.place(&set::rows(page.into_blocks(), pages.width()));
    assert!(pages.done.len() > 4);
    let mut numbers = Vec::new();
    for page in &pages.done {
        let texts = texts(page);
        assert_eq!(texts[..3], ["No", "Piece", "Size"]);
        assert!(
            texts[3].parse::<usize>().is_ok(),
            "begins inside a row: {}",
            texts[3]
        );
        numbers.extend(texts.iter().filter_map(|text| text.parse::<usize>().ok()));
    }
    assert_eq!(numbers, (1..=200).collect::<Vec<usize>>());
}

#[test]
fn a_row_that_goes_on_with_the_one_before_is_not_parted_from_it() {
    let mut table = TextTable::new([TextColumn::count("No"), TextColumn::text("Mark")]);
    for number in 1..=90 {
        table.row([
            number.to_string(),
            format!("pleat {number}, {}", "folded as the others are ".repeat(3)),
        ]);
        table.row([String::new(), String::from("brought to")]);
    }
    let mut page = SheetBlocks::default();
    page.table(&table);
    let mut pages = PrintedPages::new(Paper::A4);
    pages.begin("Mark list");
    pages.place(&set::rows(page.into_blocks(), pages.width()));
    assert!(pages.done.len() > 2);
    for page in &pages.done {
        let texts = texts(page);
        assert!(texts[2].parse::<usize>().is_ok(), "{}", texts[2]);
        assert_eq!(texts.last(), Some(&"brought to"));
    }
}

#[test]
fn a_long_narrow_table_stands_in_parts_side_by_side_and_loses_no_row() {
    for count in [3, 9, 12, 50, 200] {
        let mut table =
            TextTable::new([TextColumn::count("No"), TextColumn::text("From left edge")]);
        for number in 1..=count {
            table.row([number.to_string(), String::from("15 1/2 in")]);
        }
        let mut page = SheetBlocks::default();
        page.table(&table);
        let mut pages = PrintedPages::new(Paper::A4);
        pages.begin("Cut sheet");
        pages.place(&set::rows(page.into_blocks(), pages.width()));
        let all = pages.done.iter().flat_map(texts);
        let mut numbers: Vec<usize> = all.filter_map(|text| text.parse().ok()).collect();
        numbers.sort_unstable();
        assert_eq!(numbers, (1..=count).collect::<Vec<usize>>());
        let first = texts(&pages.done[0])
            .into_iter()
            .filter(|text| *text == "No")
            .count();
        assert!(
            (first > 1) == (count > 8),
            "{count} rows under {first} heads"
        );
    }
}

#[test]
fn a_table_too_wide_for_the_paper_is_told_entry_by_entry() {
    let headings = [
        "One", "Two", "Three", "Four", "Five", "Six", "Seven", "Eight",
    ];
    let mut table = TextTable::new(headings.map(TextColumn::text));
    table.row(headings.map(|name| format!("{name}-is-a-word-that-cannot-be-broken")));
    let mut page = SheetBlocks::default();
    page.table(&table);
    let mut pages = PrintedPages::new(Paper::Letter);
    pages.begin("Cut sheet");
    pages.place(&set::rows(page.into_blocks(), pages.width()));
    let printed = words(pages.done.iter().flat_map(texts));
    for name in headings {
        assert!(printed.contains_key(name), "{name}");
    }
}

#[test]
fn what_leads_up_to_a_table_stands_above_it_on_the_same_page() {
    for lines in 0..60 {
        let mut page = SheetBlocks::default();
        for _ in 0..lines {
            page.item("An entry.");
        }
        page.heading("Window garden");
        page.paragraph("Panel wing: 2 panels alike.");
        page.table(&long_table(3));
        let mut pages = PrintedPages::new(Paper::A4);
        pages.begin("Cut sheet");
        pages.place(&set::rows(page.into_blocks(), pages.width()));
        let on = |wanted: &str| {
            pages
                .done
                .iter()
                .position(|page| texts(page).contains(&wanted))
        };
        assert_eq!(
            on("Window\u{a0}garden").or(on("Window garden")),
            on("1"),
            "{lines}"
        );
    }
}

/// A drawing of this size on a page.
fn page_of(width: f64, height: f64) -> Vec<Drawing> {
    let mut drawing = Drawing {
        title: String::from("Layout"),
        description: String::new(),
        width,
        height,
        elements: Vec::new(),
    };
    drawing.line(LineKind::Cut, [at(0.0, 0.0), at(width, height)]);
    let mut page = SheetBlocks::default();
    page.drawing(drawing);
    let mut pages = PrintedPages::new(Paper::A4);
    pages.begin("Yardage");
    pages.place(&set::rows(page.into_blocks(), pages.width()));
    pages.done
}

#[test]
fn a_drawing_is_never_made_smaller() {
    for ((width, height), paper) in [
        ((180.0, 240.0), (210.0, 297.0)),
        ((240.0, 150.0), (297.0, 210.0)),
        ((400.0, 150.0), (430.0, 297.0)),
        ((100.0, 500.0), (210.0, 529.0)),
    ] {
        let pages = page_of(width, height);
        assert_eq!(pages.len(), 1);
        assert_eq!((pages[0].width, pages[0].height), paper);
        let Element::Path { points, .. } = &pages[0].elements[0] else {
            panic!("no line");
        };
        let (across, down) = (points[1].x - points[0].x, points[1].y - points[0].y);
        assert!((across - width).abs() < 1e-9 && (down - height).abs() < 1e-9);
        assert!(points[1].x <= paper.0 && points[1].y <= paper.1);
    }
}
