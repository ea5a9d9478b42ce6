//! What changed between two versions of a job, for people.

use pelmet_changes::{Change, ChangeKind, JobChanges, Named, Part};
use pelmet_packet::{Packet, SheetKind};

use crate::options::TextOptions;
use crate::page::Page;
use crate::table::{Column, Table};
use crate::words::counted;
use crate::{ALL, Choice, Form, html, plain, title};

/// Two versions of a job, and what changed from one to the other.
#[derive(Clone, Debug)]
pub struct Versions {
    /// What changed.
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
}

/// What changed in some jobs, as text.
pub fn changes_text(jobs: &[Versions], options: TextOptions) -> String {
    let told = jobs.iter().map(|job| plain::plain(page(job), options));
    told.collect::<Vec<String>>().join("\n\n")
}

/// What changed in some jobs, as one HTML page that asks for nothing outside itself.
pub fn changes_html(jobs: &[Versions]) -> String {
    let numbered = (1_u32..).zip(jobs);
    let sections = numbered.map(|(number, job)| html::Section {
        word: format!("job-{number}"),
        title: heading(&job.changes),
        blocks: page(job).into_blocks(),
    });
    html::document("What changed", "Jobs", sections.collect(), None)
}

/// The sheets that do not read or look the same, whatever title stands on them, and the templates
/// where they do not.
fn to_print(before: &Packet, after: &Packet) -> Vec<&'static str> {
    let before = Packet {
        title: after.title.clone(),
        ..before.clone()
    };
    let page = |packet, kind| html::page(packet, &[kind], None);
    let differs = |kind: &SheetKind| page(&before, *kind) != page(after, *kind);
    let sheets = ALL.into_iter().filter(differs).map(title);
    let choice = Choice::default();
    let templates = Form::named(TEMPLATES)
        .filter(|form| form.files(&before, &choice) != form.files(after, &choice));
    sheets.chain(templates.map(|form| form.word)).collect()
}

/// The form whose pages are laid on cloth, and so must not be those of another version.
const TEMPLATES: &str = "templates";

fn heading(job: &JobChanges) -> String {
    let title = job.after.as_ref().or(job.before.as_ref());
    let title = title.map_or("", String::as_str);
    if job.name.is_empty() {
        format!("What changed: {title}")
    } else {
        format!("What changed: {title} ({})", job.name)
    }
}

fn page(job: &Versions) -> Page {
    let mut page = Page::default();
    page.title(&heading(&job.changes));
    match (&job.changes.before, &job.changes.after) {
        (None, Some(_)) => page.paragraph("This job is new."),
        (Some(_), None) => page.paragraph("This job is gone."),
        _ => print(job, &mut page),
    }
    page
}

fn print(job: &Versions, page: &mut Page) {
    let changes = &job.changes.changes;
    if changes.is_empty() {
        page.paragraph("Nothing that is printed changed.");
        return;
    }
    page.paragraph(&format!("{}.", counted(changes.len(), "change", "changes")));
    if !job.to_print.is_empty() {
        let again = job.to_print.join(", ").to_lowercase();
        page.paragraph(&format!("To print again: {again}."));
    }
    for of_part in changes.chunk_by(|one, other| one.part == other.part) {
        if let Some(first) = of_part.first() {
            page.heading(part(first.part));
            page.table(&table(of_part));
        }
    }
}

fn table(changes: &[Change]) -> Table {
    let mut table = Table::new([
        Column::text("Where"),
        Column::text("What"),
        Column::text("Before"),
        Column::text("Now"),
        Column::text("Difference"),
    ]);
    for change in changes {
        table.row([
            place(&change.of),
            change.what.clone(),
            before(change),
            now(change),
            change.difference.clone().unwrap_or_default(),
        ]);
    }
    table
}

fn before(change: &Change) -> String {
    match change.kind {
        ChangeKind::Added => String::from("not there"),
        _ => change.before.clone().unwrap_or_default(),
    }
}

fn now(change: &Change) -> String {
    let text = change.after.clone().unwrap_or_default();
    match change.kind {
        ChangeKind::Removed => String::from("gone"),
        ChangeKind::Added if text.is_empty() => String::from("new"),
        ChangeKind::Changed if text.is_empty() && change.before.is_none() => {
            String::from("differs")
        }
        _ => text,
    }
}

/// Window, panel and piece in one: `left wing face`. A piece has the name of its panel in its own.
fn place(of: &[Named]) -> String {
    let names: Vec<&str> = of.iter().map(|thing| thing.name.as_str()).collect();
    let said_again = |at: usize, name: &str| {
        let next = names.get(at.saturating_add(1));
        next.is_some_and(|next| next.starts_with(name))
    };
    let told = names.iter().enumerate();
    let told: Vec<&str> = told
        .filter(|(at, name)| !said_again(*at, name))
        .map(|(_, name)| *name)
        .collect();
    told.join(" ")
}

fn part(part: Part) -> &'static str {
    match part {
        Part::Job => "The job",
        Part::Buying => "To buy",
        Part::Quote => "Quote",
        Part::Windows => "Windows",
        Part::Panels => "Panels",
        Part::Pieces => "Pieces to cut",
        Part::Marks => "Marks",
        Part::Folding => "Pleats and folding",
        Part::Making => "Making order",
        Part::Rods => "Rods",
        Part::Checks => "What to check",
    }
}
