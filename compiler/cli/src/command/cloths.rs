//! `pelmet cloths`: what a job would take of other cloths.

use std::path::PathBuf;

use clap::{Args, ValueEnum};
use pelmet_driver::{ASKED_FOR, ClothsAsked};
use pelmet_sheets::cloths_text;

use crate::console::Console;
use crate::job::Job;
use crate::outcome::Outcome;

/// Compare what a job takes of its cloths with what it would take of others
///
/// The whole job is laid out again with each of the others in the place of the cloth. Without --with
/// and --other, a cloth is compared with itself without its print, with itself lying along, and with
/// every other cloth of the design.
///
///     pelmet cloths porch.pelmet --cloth fern --with "width: 60 in" --with "repeat: none"
#[derive(Args, Debug)]
#[command(verbatim_doc_comment)]
pub struct Cloths {
    /// The main file of the design
    file: PathBuf,
    /// A cloth of the job; without any, all of them
    #[arg(long, value_name = "NAME")]
    cloth: Vec<String>,
    /// Properties it might have instead, as in a design: "width: 60 in, repeat: none"
    #[arg(long, value_name = "PROPERTIES")]
    with: Vec<String>,
    /// Another fabric of the design that might take its place
    #[arg(long, value_name = "NAME")]
    other: Vec<String>,
    /// What to write
    #[arg(long, value_enum, value_name = "FORM", default_value_t = Form::Text)]
    write: Form,
}

/// In what form a comparison is told.
#[derive(ValueEnum, Copy, Clone, PartialEq, Eq, Debug)]
pub enum Form {
    /// Plain text
    Text,
    /// For programs
    Json,
}

impl Cloths {
    pub fn run(&self, console: &mut Console) {
        let job = match Job::open(&self.file) {
            Ok(job) => job,
            Err(report) => return console.refuse(report),
        };
        let asked = ClothsAsked {
            cloths: self.cloth.clone(),
            properties: self.with.clone(),
            others: self.other.clone(),
        };
        let compared = job.compare_cloths(&asked);
        if !compared.is_read {
            console.worsen(Outcome::NotCarriedOut);
        }
        console.report(&compared.sources, compared.diagnostics, |name| {
            if name == ASKED_FOR {
                name.to_owned()
            } else {
                job.shown(name)
            }
        });
        if let Some(comparison) = compared.comparison {
            let told = match self.write {
                Form::Text => cloths_text(&comparison, console.text_options()),
                Form::Json => comparison.to_json(),
            };
            console.say(&told);
        }
    }
}
