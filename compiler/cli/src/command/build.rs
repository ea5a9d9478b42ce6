//! `pelmet build`: makes the packet.

use std::path::{Path, PathBuf};

use clap::{Args, value_parser};
use pelmet_diagnostics::{Diagnostic, codes};
use pelmet_packet::Packet;
use pelmet_sheets::{Choice, files, is_of_a_packet};

use super::built;
use crate::console::Console;
use crate::job::Job;
use crate::write::replace_folder;

/// Make the packet of a design: buy list, cut sheet, mark list and what to check
///
/// The packet is a folder beside the design, `reading-room.packet` for `reading-room.pelmet`: every
/// sheet as text and as one page for a tablet, every window and the layout of every cloth as drawings, and the whole of it for programs. It is
/// written whole or not at all: after a mistake, the last good packet stands as it was.
#[derive(Args, Debug)]
#[command(verbatim_doc_comment)]
pub struct Build {
    /// The main file of each design
    #[arg(required = true, value_name = "FILE")]
    files: Vec<PathBuf>,
    /// The folder of the packet, for one design
    #[arg(long, value_name = "FOLDER")]
    out: Option<PathBuf>,
    /// Search so many times as long for layouts that buy less cloth
    #[arg(long, value_name = "TIMES", default_value_t = 1, value_parser = value_parser!(u32).range(1..=1000))]
    effort: u32,
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
        for file in &self.files {
            match Job::open(file) {
                Ok(job) => self.build(&job, file, console),
                Err(report) => console.refuse(report),
            }
        }
    }

    fn build(&self, job: &Job, file: &Path, console: &mut Console) {
        let Some(packet) = built(job, self.effort, console) else {
            return;
        };
        if packet.windows.is_empty() {
            console.fail(codes::nothing_to_make(&file.to_string_lossy()));
            return;
        }
        let beside = file.with_extension("packet");
        match write(&packet, self.out.as_deref().unwrap_or(&beside)) {
            Ok(()) if self.quiet => {}
            Ok(()) => console.say(&pelmet_sheets::text(&packet, console.text_options())),
            Err(report) => console.refuse(report),
        }
    }
}

fn write(packet: &Packet, folder: &Path) -> Result<(), Diagnostic> {
    let files = files(packet, &Choice::default());
    replace_folder(folder, &files, is_of_a_packet)
}
