//! `pelmet check`: reports every mistake.

use std::path::PathBuf;

use clap::Args;

use crate::compile::check;
use crate::console::Console;
use crate::job::Job;

/// Report every mistake in a design
#[derive(Args, Debug)]
pub struct Check {
    /// The main file of each design
    #[arg(required = true, value_name = "FILE")]
    files: Vec<PathBuf>,
}

impl Check {
    pub fn run(&self, console: &mut Console) {
        console.expect_reports();
        for file in &self.files {
            match Job::open(file) {
                Ok(job) => check(&job, console),
                Err(report) => console.refuse(report),
            }
        }
    }
}
