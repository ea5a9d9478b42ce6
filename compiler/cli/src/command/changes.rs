//! `pelmet changes`: tells what changed from one version of a design to another.

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};

use clap::{Args, ValueEnum};
use pelmet_changes::ChangesReport;
use pelmet_diagnostics::codes;
use pelmet_packet::Packet;
use pelmet_sheets::{Versions, changes_html, changes_text};

use crate::compile::built;
use crate::console::Console;
use crate::effort::Effort;
use crate::interrupt;
use crate::outcome::Outcome;
use crate::version::{Source, Version};
use crate::write::write_file;

/// Tell what changed from one version of a design to another
///
/// A version is a design, the packet of one (its folder, or the `packet.json` in it), or a folder of
/// designs, which are compared by the names of their files. A file that another design of its folder
/// uses is compared as a part of that one.
///
/// Exit status: 0 both versions were compared, 1 one of them has errors (or, with --check, anything
/// changed), 2 the command could not be carried out.
#[derive(Args, Debug)]
#[command(verbatim_doc_comment)]
pub struct Changes {
    /// The version before; `-` reads a design from standard input, in the place of NEW
    old: PathBuf,
    /// The version after
    new: PathBuf,
    /// What to write
    #[arg(long, value_enum, value_name = "FORM", default_value_t = Form::Text)]
    write: Form,
    /// Write it to this file, not to the terminal
    #[arg(long, value_name = "FILE")]
    out: Option<PathBuf>,
    /// End with status 1 if anything changed
    #[arg(long)]
    check: bool,
    /// How long is searched.
    #[command(flatten)]
    effort: Effort,
}

/// In what form changes are told.
#[derive(ValueEnum, Copy, Clone, PartialEq, Eq, Debug)]
pub enum Form {
    /// Plain text
    Text,
    /// A page for a browser or a printer
    Html,
    /// For programs
    Json,
}

impl Changes {
    pub fn run(&self, console: &mut Console) {
        interrupt::listen();
        let Some(versions) = self.versions(console) else {
            return;
        };
        let changed = versions.iter().any(|job| job.changes.is_changed());
        if self.check && changed {
            console.worsen(Outcome::Errors);
        }
        let told = match self.write {
            Form::Text => changes_text(&versions, console.text_options()),
            Form::Html => changes_html(&versions),
            Form::Json => {
                let jobs = versions.into_iter().map(|job| job.changes);
                ChangesReport::of(jobs.collect()).to_json()
            }
        };
        match &self.out {
            None => console.say(&told),
            Some(file) => {
                if let Err(report) = write_file(file, &told) {
                    console.refuse(report);
                }
            }
        }
    }

    /// The versions of every job, compared; nothing, after reporting why, where none can be.
    fn versions(&self, console: &mut Console) -> Option<Vec<Versions>> {
        let before = opened(&self.old, &self.new, console);
        let after = opened(&self.new, &self.old, console);
        match (before?, after?) {
            (Version::One(before), Version::One(after)) => {
                let before = self.packet("before", &self.old, &before, console);
                let after = self.packet("after", &self.new, &after, console);
                Some(vec![Versions::new("", Some(&before?), Some(&after?))])
            }
            (Version::Folder(before), Version::Folder(after)) => {
                Some(self.folders(&before, &after, console))
            }
            _ => {
                console.misused("one version is a single job, and the other a folder of designs");
                None
            }
        }
    }

    /// The jobs of two folders, compared by the names of their files. One that has errors is left out.
    fn folders(
        &self,
        before: &BTreeMap<String, Source>,
        after: &BTreeMap<String, Source>,
        console: &mut Console,
    ) -> Vec<Versions> {
        let names: BTreeSet<&String> = before.keys().chain(after.keys()).collect();
        let mut compared = Vec::new();
        for name in names {
            let mut packet = |which, folder: &Path, sources: &BTreeMap<String, Source>| {
                let source = sources.get(name)?;
                Some(self.packet(which, &folder.join(name), source, console))
            };
            let was = packet("before", &self.old, before);
            let is = packet("after", &self.new, after);
            let has_errors = |version: &Option<Option<Packet>>| matches!(version, Some(None));
            if !has_errors(&was) && !has_errors(&is) {
                let [was, is] = [was, is].map(|version| version.flatten().filter(has_windows));
                let job = Versions::new(name, was.as_ref(), is.as_ref());
                compared.extend((was.is_some() || is.is_some()).then_some(job));
            }
        }
        if compared.is_empty() {
            console.fail(codes::nothing_to_make(&self.new.to_string_lossy()));
        }
        compared
    }

    /// The packet of one version; nothing, after reporting why, where it has none.
    fn packet(
        &self,
        which: &str,
        path: &Path,
        source: &Source,
        console: &mut Console,
    ) -> Option<Packet> {
        let packet = match source {
            Source::Packet(packet) => Some((**packet).clone()),
            Source::Design(job) => built(job, self.effort, console),
        };
        if packet.is_none() {
            console.fail(codes::VersionNotSound {
                which,
                path: &path.to_string_lossy(),
            });
        }
        packet
    }
}

/// A house style has none, and is no job.
fn has_windows(packet: &Packet) -> bool {
    !packet.windows.is_empty()
}

fn opened(path: &Path, other: &Path, console: &mut Console) -> Option<Version> {
    Version::open(path, other)
        .map_err(|report| console.refuse(report))
        .ok()
}
