//! The first page: the job, how to print it, and where each sheet begins.

use super::Listed;
use super::faces::BODY;
use super::pages::PrintedPages;
use super::row::{PrintedRow, kept_within, spaced};
use super::set;
use crate::content::SheetBlock;
use crate::drawing::{Drawing, Lettering, LineKind, at, lines};
use crate::paper::Paper;

const ENTRY: Lettering = Lettering::plain(4.6);
/// Where a sentence begins that is all a sheet says.
const SAID: f64 = 60.0;
/// How much stands between two entries.
const BETWEEN: f64 = 2.4;

/// The page, or pages if there were as many sheets.
pub(super) fn pages(job: &str, sheets: &[Listed], paper: Paper) -> Vec<Drawing> {
    // The numbers told depend on how many pages the list itself takes, and it takes as many whatever they
    // are, since each stands on the line of its title. So it is set twice and no more.
    let before = filled(job, sheets, 0, paper).len();
    filled(job, sheets, before, paper)
}

/// The pages if so many of them come before the first sheet.
fn filled(job: &str, sheets: &[Listed], before: usize, paper: Paper) -> Vec<Drawing> {
    let mut pages = PrintedPages::new(paper);
    let width = pages.width();
    let opening = vec![
        SheetBlock::Title(job.to_owned()),
        SheetBlock::Paragraph(format!(
            "For {} paper. Print at actual size, 100 %, not fitted to the page: drawings are to scale. \
            Measure the bar of a drawing before you take a length from it; the numbers hold in any case.",
            paper.name(),
        )),
        SheetBlock::Heading(String::from("Sheets")),
    ];
    pages.begin("Contents");
    pages.place(&set::rows(opening, width));
    for sheet in sheets {
        pages.place(&entry(sheet, before, width));
    }
    pages.done
}

/// The title of a sheet and the page it begins on, or all that it says.
fn entry(sheet: &Listed, before: usize, width: f64) -> Vec<PrintedRow> {
    let mut rows = match sheet {
        Listed::Begins { title, page } => {
            let number = page.saturating_add(before).saturating_add(1).to_string();
            let mut row = PrintedRow::line(0.0, ENTRY, *title);
            row.write(width - ENTRY.width(&number), ENTRY, number);
            vec![row]
        }
        Listed::Only { title, sentence } => {
            let said = lines(sentence, BODY, width - SAID).into_iter();
            let mut rows: Vec<PrintedRow> = said
                .map(|line| PrintedRow::line(SAID, BODY, line))
                .collect();
            if let Some(first) = rows.first_mut() {
                first.begin_with(at(0.0, ENTRY.height), ENTRY, *title);
            }
            rows
        }
    };
    if let Some(last) = rows.last_mut() {
        last.height += BETWEEN / 2.0;
        last.rule(LineKind::Rule, (0.0, width), last.height);
    }
    spaced(BETWEEN, kept_within(rows))
}
