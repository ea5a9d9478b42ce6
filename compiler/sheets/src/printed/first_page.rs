//! The first page: the job, how to print it, and where each sheet begins.

use super::pages::Pages;
use super::row::Row;
use super::set;
use crate::drawing::{Drawing, Lettering, Line};
use crate::page::Block;
use crate::paper::Paper;

const ENTRY: Lettering = Lettering::plain(4.6);
/// How much stands between two entries.
const BETWEEN: f64 = 2.4;

/// The page, or pages if there were as many sheets: each with the page it begins on, counted from
/// nought among those that follow.
pub(super) fn pages(job: &str, sheets: &[(&str, usize)], paper: Paper) -> Vec<Drawing> {
    let before = filled(job, sheets, 0, paper).len();
    filled(job, sheets, before, paper)
}

/// The pages if so many of them come before the first sheet.
fn filled(job: &str, sheets: &[(&str, usize)], before: usize, paper: Paper) -> Vec<Drawing> {
    let mut pages = Pages::new(paper);
    let width = pages.width();
    let opening = vec![
        Block::Title(job.to_owned()),
        Block::Paragraph(format!(
            "For {} paper. Print at actual size, 100 %, not fitted to the page: drawings are to scale. \
            Measure the bar of a drawing before you take a length from it; the numbers hold in any case.",
            paper.name(),
        )),
        Block::Heading(String::from("Sheets")),
    ];
    pages.begin("Contents");
    pages.place(&set::rows(opening, width));
    let entries = sheets.iter().map(|(title, page)| {
        let number = page.saturating_add(before).saturating_add(1);
        entry(title, &number.to_string(), width)
    });
    pages.place(&entries.collect::<Vec<Row>>());
    pages.done
}

/// The title of a sheet, and the page it begins on.
fn entry(title: &str, page: &str, width: f64) -> Row {
    let mut row = Row::line(0.0, ENTRY, title);
    let left = width - ENTRY.width(page);
    row.write(left, ENTRY, page);
    row.height += BETWEEN / 2.0;
    row.rule(Line::Rule, (0.0, width), row.height);
    row.space = BETWEEN;
    row
}
