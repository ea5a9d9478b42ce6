//! Changes: what differs between two versions of a job. It is about two packets and no sheet of either.

use pelmet_changes::{Change, ChangeKind, JobChanges, Named, PacketPart};

use crate::content::{SheetBlocks, TextColumn, TextTable};
use crate::text::words::counted;

/// What the sheet of a job is called, by its title and, where there are several jobs, its file.
pub(crate) fn heading(job: &JobChanges) -> String {
    let title = job.after.as_ref().or(job.before.as_ref());
    let title = title.map_or("", String::as_str);
    if job.name.is_empty() {
        format!("What changed: {title}")
    } else {
        format!("What changed: {title} ({})", job.name)
    }
}

pub(crate) fn print(job: &JobChanges, to_print: &[&str], sheet: &mut SheetBlocks) {
    sheet.title(&heading(job));
    match (&job.before, &job.after) {
        (None, Some(_)) => sheet.paragraph("This job is new."),
        (Some(_), None) => sheet.paragraph("This job is gone."),
        (Some(_), Some(_)) | (None, None) => print_changes(job, to_print, sheet),
    }
}

fn print_changes(job: &JobChanges, to_print: &[&str], sheet: &mut SheetBlocks) {
    let changes = &job.changes;
    if changes.is_empty() {
        sheet.paragraph("Nothing that is printed changed.");
        return;
    }
    sheet.paragraph(&format!("{}.", counted(changes.len(), "change", "changes")));
    if !to_print.is_empty() {
        let again = to_print.join(", ").to_lowercase();
        sheet.paragraph(&format!("To print again: {again}."));
    }
    for of_part in changes.chunk_by(|one, other| one.part == other.part) {
        if let Some(first) = of_part.first() {
            sheet.heading(part(first.part));
            sheet.table(&table(of_part));
        }
    }
}

fn table(changes: &[Change]) -> TextTable {
    let mut table = TextTable::new([
        TextColumn::text("Where"),
        TextColumn::text("What"),
        TextColumn::text("Before"),
        TextColumn::text("Now"),
        TextColumn::text("Difference"),
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
        ChangeKind::Changed | ChangeKind::Removed => change.before.clone().unwrap_or_default(),
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
        ChangeKind::Added | ChangeKind::Changed => text,
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

fn part(part: PacketPart) -> &'static str {
    match part {
        PacketPart::Job => "The job",
        PacketPart::Buying => "To buy",
        PacketPart::Quote => "Quote",
        PacketPart::Windows => "Windows",
        PacketPart::Panels => "Panels",
        PacketPart::Pieces => "Pieces to cut",
        PacketPart::Marks => "Marks",
        PacketPart::Folding => "Pleats and folding",
        PacketPart::Making => "Making order",
        PacketPart::Rods => "Rods",
        PacketPart::Checks => "What to check",
    }
}
