//! `pelmet build`: makes the packet.

use std::path::{Path, PathBuf};

use clap::Args;
use pelmet_diagnostics::{Diagnostic, codes};
use pelmet_packet::Packet;
use pelmet_sheets::TextOptions;

use super::built;
use crate::arguments::STANDARD_WIDTH;
use crate::console::Console;
use crate::job::Job;
use crate::write::replace_folder;

/// The whole packet, for programs.
const PACKET: &str = "packet.json";

/// Every sheet of it, for people.
const SHEETS: &str = "sheets.txt";

/// Make the packet of a design: buy list, cut sheet, mark list and what to check
///
/// The packet is a folder beside the design, `reading-room.packet` for `reading-room.pelmet`. It is
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
        let Some(packet) = built(job, console) else {
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

/// The sheets are as wide as ever, whatever the terminal, so that the packet is the same anywhere.
fn write(packet: &Packet, folder: &Path) -> Result<(), Diagnostic> {
    let sheets = pelmet_sheets::text(
        packet,
        TextOptions {
            width: usize::from(STANDARD_WIDTH),
        },
    );
    let files = [(PACKET, packet.to_json()), (SHEETS, sheets)];
    let files = files.each_ref().map(|(name, text)| (*name, text.as_str()));
    replace_folder(folder, &files, &[PACKET, SHEETS])
}
