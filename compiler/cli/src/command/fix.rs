//! `pelmet fix`: makes the changes that a machine can make.

use std::collections::BTreeMap;
use std::path::PathBuf;

use clap::Args;
use pelmet_diagnostics::{Diagnostic, Edit, FileId, Fix, Sources, apply_fixes};
use pelmet_driver::Checked;
use pelmet_syntax::parse;

use crate::compile::{check, lay_on};
use crate::console::Console;
use crate::job::Job;
use crate::write::replace_file;

/// Make the changes to a design that a machine can make
///
/// Every report that comes with a change has it made, in the files the design uses too; then the
/// design is checked again, and what is left is reported.
#[derive(Args, Debug)]
#[command(verbatim_doc_comment)]
pub struct FixDesigns {
    /// The main file of each design
    #[arg(required = true, value_name = "FILE")]
    files: Vec<PathBuf>,
}

impl FixDesigns {
    pub fn run(&self, console: &mut Console) {
        console.expect_reports();
        for file in &self.files {
            match Job::open(file) {
                Ok(job) => fix(&job, console),
                Err(report) => console.refuse(report),
            }
        }
    }
}

/// Changes the files of a job, and reports what is left.
fn fix(job: &Job, console: &mut Console) {
    let Checked {
        sources,
        diagnostics,
        ..
    } = job.check(&mut |search| lay_on(search, console));
    for (file, changes) in changes(&sources, &diagnostics) {
        let name = sources.name(file);
        if !may_be_changed(name) || !is_no_worse(sources.text(file), &changes.text) {
            continue;
        }
        match replace_file(&job.path(name), &changes.text) {
            Ok(()) => console.remark(&changes.told(job, &sources)),
            Err(report) => console.refuse(report),
        }
    }
    check(job, console);
}

/// What becomes of one file.
#[derive(Default)]
struct Changes<'d> {
    text: String,
    edits: Vec<Edit>,
    made: Vec<&'d Fix>,
}

/// The changes of each file. One that goes against an earlier one is left for another run.
fn changes<'d>(sources: &Sources, reports: &'d [Diagnostic]) -> BTreeMap<FileId, Changes<'d>> {
    let mut files: BTreeMap<FileId, Changes<'d>> = BTreeMap::new();
    for fix in reports
        .iter()
        .filter(|report| report.accepted.is_none())
        .flat_map(|one| &one.fix)
    {
        let Some(file) = fix.edits.first().map(|edit| edit.span.file) else {
            continue;
        };
        files.entry(file).or_default().add(fix, sources.text(file));
    }
    files.retain(|_, changes| !changes.made.is_empty());
    files
}

impl<'d> Changes<'d> {
    fn add(&mut self, fix: &'d Fix, text: &str) {
        let edits = [self.edits.as_slice(), &fix.edits].concat();
        if let Some(changed) = apply_fixes(text, &edits) {
            self.text = changed;
            self.edits = edits;
            self.made.push(fix);
        }
    }

    /// One line a change, each with the place it was made at.
    fn told(&self, job: &Job, sources: &Sources) -> String {
        let line = |fix: &&Fix| {
            let span = fix.edits.first()?.span;
            let (name, place) = (job.shown(sources.name(span.file)), sources.place(span));
            Some(format!(
                "{name}:{}:{}: fixed: {}\n",
                place.line, place.column, fix.title
            ))
        };
        self.made.iter().filter_map(line).collect()
    }
}

/// The library is on no disk, and the cells of a list have quotes of their own to keep.
fn may_be_changed(name: &str) -> bool {
    !Job::is_library(name) && !name.ends_with(".csv")
}

/// A file that reads worse than before is not written.
fn is_no_worse(before: &str, after: &str) -> bool {
    let mistakes = |text: &str| parse(FileId(0), text).diagnostics.len();
    mistakes(after) <= mistakes(before)
}
