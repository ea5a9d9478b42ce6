//! `pelmet build`: makes the packet.

use std::path::{Path, PathBuf};

use clap::{Args, value_parser};
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

/// Every sheet and drawing on one page, for a tablet or a printer.
const WEB_PAGE: &str = "packet.html";

/// What drawings are called, before their numbers: of windows, and of how cloths are laid out.
const ELEVATION: &str = "elevation-";
const LAYOUT: &str = "layout-";
const DRAWING: &str = ".svg";

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

/// The file of a drawing: `layout-1-kelp-stripe.svg`. The number keeps two names apart that a file
/// system takes for one.
fn drawing_file(of: &str, number: usize, name: &str) -> String {
    format!("{of}{number}-{name}{DRAWING}")
}

/// Whether a file is one that a build writes, and so may be replaced.
fn is_ours(file: &str) -> bool {
    let drawing = [ELEVATION, LAYOUT]
        .iter()
        .find_map(|of| file.strip_prefix(of));
    [PACKET, SHEETS, WEB_PAGE].contains(&file)
        || drawing.is_some_and(|rest| rest.ends_with(DRAWING))
}

/// The sheets are as wide as ever, whatever the terminal, so that the packet is the same anywhere.
fn write(packet: &Packet, folder: &Path) -> Result<(), Diagnostic> {
    let sheets = pelmet_sheets::text(
        packet,
        TextOptions {
            width: usize::from(STANDARD_WIDTH),
        },
    );
    let mut files = vec![
        (PACKET.to_owned(), packet.to_json()),
        (SHEETS.to_owned(), sheets),
        (WEB_PAGE.to_owned(), pelmet_sheets::html(packet)),
    ];
    let elevations = pelmet_sheets::elevations(packet).into_iter().zip(1..);
    files.extend(
        elevations
            .map(|((window, drawing), number)| (drawing_file(ELEVATION, number, window), drawing)),
    );
    let layouts = pelmet_sheets::layouts(packet).into_iter().zip(1..);
    files.extend(
        layouts.map(|((cloth, drawing), number)| (drawing_file(LAYOUT, number, cloth), drawing)),
    );
    replace_folder(folder, &files, is_ours)
}
