//! `pelmet format`: brings files into their usual form.

use std::path::{Path, PathBuf};

use clap::Args;
use pelmet_diagnostics::{Diagnostic, Diagnostics, Sources, codes};
use pelmet_syntax::FormatRefusal;

use crate::console::Console;
use crate::folder::StandardInput;
use crate::job::{Job, text};
use crate::outcome::Outcome;
use crate::write::replace_file;

/// Bring a file into its usual form
///
/// Only the files that are named are changed, not those they use. A file with mistakes in it is
/// left as it is.
#[derive(Args, Debug)]
#[command(verbatim_doc_comment)]
pub struct Format {
    /// The files; `-` formats standard input to standard output
    #[arg(required = true, value_name = "FILE")]
    files: Vec<PathBuf>,
    /// Change nothing; name the files that would change, and end with status 1 if there are any
    #[arg(long)]
    check: bool,
}

impl Format {
    pub fn run(&self, console: &mut Console) {
        for file in &self.files {
            if let Err(report) = self.format(file, console) {
                console.refuse(report);
            }
        }
    }

    fn format(&self, file: &Path, console: &mut Console) -> Result<(), Diagnostic> {
        let from_input = file == Path::new(StandardInput::NAME);
        let text = if from_input {
            text(StandardInput::NAME, &StandardInput::alone())?
        } else {
            Job::open(file)?.text()?
        };
        let shown = file.to_string_lossy();
        let Some(formatted) = formatted(&shown, &text, console) else {
            return Ok(());
        };
        if self.check {
            if formatted != text {
                console.say(&format!("{shown}\n"));
                console.worsen(Outcome::Errors);
            }
        } else if from_input {
            console.say(&formatted);
        } else if formatted != text {
            replace_file(file, &formatted)?;
        }
        Ok(())
    }
}

/// The text in its usual form; nothing, after reporting why, if it is better left as it is.
fn formatted(shown: &str, text: &str, console: &mut Console) -> Option<String> {
    let mut sources = Sources::new();
    let file = sources.add(shown, text);
    match pelmet_syntax::format(file, text) {
        Ok(formatted) => return Some(formatted),
        Err(FormatRefusal::Diagnostics(diagnostics)) => {
            let mut settled = Diagnostics::new();
            settled.extend(diagnostics);
            console.report(&sources, settled.settle(&sources), str::to_owned);
        }
        Err(FormatRefusal::WouldChange) => console.refuse(codes::format_would_change(shown)),
    }
    None
}
