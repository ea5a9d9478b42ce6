//! `pelmet new`: starts a project folder.

use std::path::PathBuf;

use clap::Args;

use crate::console::Console;
use crate::write::replace_folder;

/// What a new project holds, by path and text.
const FILES: [(&str, &str); 2] = [
    ("job.pelmet", include_str!("../../templates/job.pelmet")),
    (
        "styles/house.pelmet",
        include_str!("../../templates/styles/house.pelmet"),
    ),
];

/// Start a project folder
///
/// It holds a job with one window, and a house style for it to use. Nothing is ever written over:
/// the folder must be empty or not there yet.
#[derive(Args, Debug)]
#[command(verbatim_doc_comment)]
pub struct New {
    /// The folder to make
    folder: PathBuf,
}

impl New {
    pub fn run(&self, console: &mut Console) {
        if let Err(report) = replace_folder(&self.folder, &FILES, &[]) {
            console.refuse(report);
            return;
        }
        let job = self.folder.join("job.pelmet");
        let job = job.display();
        console.say(&format!(
            "Started a project in `{}`.\nNext: open `{job}`, set the sizes of your window, and run\n    \
             pelmet build {job}\n",
            self.folder.display()
        ));
    }
}
