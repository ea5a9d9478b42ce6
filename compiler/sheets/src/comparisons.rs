//! What is told of more than one packet: two versions of a job, and a job of other cloths.

use pelmet_changes::JobChanges;
use pelmet_packet::{ClothComparison, Packet, SheetKind};

use crate::content::SheetBlocks;
use crate::paper::Paper;
use crate::sheet::{SHEETS, changes, cloths, sheet_title};
use crate::true_size::{TemplatesOf, templates};
use crate::writer::plain::{TextOptions, plain};
use crate::writer::{html, pdf};

/// Two versions of a job, and what changed from one to the other.
#[derive(Clone, Debug)]
pub struct Versions {
    /// Every change, part by part of the packet.
    pub changes: JobChanges,
    /// What is to be printed again, since it does not read or look as it did: sheets by their titles,
    /// and templates.
    pub to_print: Vec<&'static str>,
}

impl Versions {
    /// Compares two versions of a job of that name; either may be missing.
    pub fn new(name: &str, before: Option<&Packet>, after: Option<&Packet>) -> Versions {
        let both = before.zip(after);
        Versions {
            changes: JobChanges::between(name, before, after),
            to_print: both.map_or(Vec::new(), |(before, after)| to_print(before, after)),
        }
    }

    fn sheet(&self) -> SheetBlocks {
        let mut sheet = SheetBlocks::default();
        changes::print(&self.changes, &self.to_print, &mut sheet);
        sheet
    }
}

/// What changed in some jobs, as text.
pub fn changes_text(jobs: &[Versions], options: TextOptions) -> String {
    let told = jobs.iter().map(|job| plain(job.sheet(), options));
    told.collect::<Vec<String>>().join("\n\n")
}

/// What changed in some jobs, as one HTML page that asks for nothing outside itself.
pub fn changes_html(jobs: &[Versions]) -> String {
    let numbered = (1_u32..).zip(jobs);
    let sections = numbered.map(|(number, job)| html::HtmlSection {
        word: format!("job-{number}"),
        title: changes::heading(&job.changes),
        blocks: job.sheet().into_blocks(),
    });
    html::document("What changed", "Jobs", sections.collect(), None)
}

/// What a job would take of other cloths, as text.
pub fn cloths_text(comparison: &ClothComparison, options: TextOptions) -> String {
    let mut sheet = SheetBlocks::default();
    cloths::print(comparison, &mut sheet);
    plain(sheet, options)
}

/// The sheets that do not read or look the same, whatever title stands on them, and the templates
/// where they do not: their pages are laid on cloth, and so must not be those of another version.
fn to_print(before: &Packet, after: &Packet) -> Vec<&'static str> {
    let before = Packet {
        title: after.title.clone(),
        ..before.clone()
    };
    let page = |packet, kind| html::page(packet, &[kind], None);
    let differs = |kind: &SheetKind| page(&before, *kind) != page(after, *kind);
    let sheets = SHEETS.iter().copied().filter(differs).map(sheet_title);
    let templates = |packet: &Packet| {
        let paper = Paper::usual(&packet.units);
        pdf::pdf(&templates(packet, TemplatesOf::Shaped, paper))
    };
    let differ = templates(&before) != templates(after);
    sheets.chain(differ.then_some("templates")).collect()
}
