//! `pelmet build`: makes the packet.

use std::path::{Path, PathBuf};

use clap::Args;
use pelmet_diagnostics::codes;
use pelmet_packet::Packet;
use pelmet_sheets::{PacketChoice, PacketFile, is_of_a_packet, text};

use crate::choosing::Choosing;
use crate::compile::built;
use crate::console::Console;
use crate::effort::Effort;
use crate::interrupt;
use crate::job::Job;
use crate::write::replace_folder;

/// Make the packet of a design: buy list, cut sheet, mark list and what to check
///
/// The packet is a folder beside the design, `reading-room.packet` for `reading-room.pelmet`, with the
/// sheets and drawings in the forms chosen. It is written whole or not at all: after a mistake, the
/// last good packet stands as it was.
#[derive(Args, Debug)]
#[command(verbatim_doc_comment)]
pub struct Build {
    /// The main file of each design
    #[arg(required = true, value_name = "FILE")]
    files: Vec<PathBuf>,
    /// The folder of the packet, for one design
    #[arg(long, value_name = "FOLDER")]
    out: Option<PathBuf>,
    /// What is written.
    #[command(flatten)]
    choosing: Choosing,
    /// How long is searched.
    #[command(flatten)]
    effort: Effort,
    /// Print no sheets
    #[arg(long, short)]
    quiet: bool,
}

impl Build {
    pub fn run(&self, console: &mut Console) {
        if self.out.is_some() && self.files.len() > 1 {
            console.misused("--out names the packet of one design, and there are several");
            return;
        }
        interrupt::listen();
        for file in &self.files {
            match Job::open(file) {
                Ok(job) => self.build(&job, file, console),
                Err(report) => console.refuse(report),
            }
        }
    }

    fn build(&self, job: &Job, file: &Path, console: &mut Console) {
        console
            .progress()
            .tell(&format!("{}: doing the sums", file.display()));
        let Some(packet) = built(job, self.effort, console) else {
            return;
        };
        if packet.windows.is_empty() {
            console.fail(codes::nothing_to_make(&file.to_string_lossy()));
            return;
        }
        let choice = self.choosing.choice();
        let files = made(&packet, &choice, console);
        let beside = file.with_extension("packet");
        let folder = self.out.as_deref().unwrap_or(&beside);
        if let Err(report) = replace_folder(folder, &files, is_of_a_packet) {
            console.refuse(report);
        } else if !self.quiet {
            let sheets = text(&packet, &choice.sheets, console.text_options());
            console.say(&sheets);
        }
    }
}

/// The files of a packet, made form by form.
fn made(packet: &Packet, choice: &PacketChoice, console: &mut Console) -> Vec<PacketFile> {
    let mut files = Vec::new();
    for form in &choice.forms {
        console
            .progress()
            .tell(&format!("{}: writing {}", packet.title, form.word));
        files.extend(form.files(packet, choice));
    }
    console.progress().clear();
    files
}
