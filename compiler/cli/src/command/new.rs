//! `pelmet new`: starts a project folder.

use std::path::PathBuf;

use clap::Args;
use pelmet_sheets::PacketFile;

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
        let files = FILES.map(|(path, text)| PacketFile {
            name: path.to_owned(),
            contents: text.into(),
        });
        if let Err(report) = replace_folder(&self.folder, &files, |_| false) {
            console.refuse(report);
            return;
        }
        let job = self.folder.join("job.pelmet").display().to_string();
        let typed = as_typed(&job);
        console.say(&format!(
            "Started a project in `{}`.\nNext: open `{job}`, set the sizes of your window, and run\n    \
             pelmet build {typed}\n",
            self.folder.display()
        ));
    }
}

/// A path as it is typed at a shell: in quotes where it has letters that mean something there.
fn as_typed(path: &str) -> String {
    let is_plain = |letter: char| letter.is_alphanumeric() || "/\\._-:".contains(letter);
    if path.chars().all(is_plain) {
        path.to_owned()
    } else {
        format!("'{}'", path.replace('\'', r"'\''"))
    }
}

#[cfg(test)]
mod tests {
    use super::as_typed;

    #[test]
    fn a_path_with_blanks_or_quotes_is_typed_in_quotes() {
        for (path, typed) in [
            ("bay/job.pelmet", "bay/job.pelmet"),
            ("salle-à-manger/job.pelmet", "salle-à-manger/job.pelmet"),
            ("it s/job.pelmet", "'it s/job.pelmet'"),
            ("it's/job.pelmet", r"'it'\''s/job.pelmet'"),
            ("a;b/job.pelmet", "'a;b/job.pelmet'"),
        ] {
            assert_eq!(as_typed(path), typed);
        }
    }
}
