//! The subcommands, one module each.

mod build;
mod check;
mod completions;
mod explain;
mod fix;
mod format;
mod new;

use clap::Subcommand;

use crate::console::Console;
use crate::job::Job;
use crate::outcome::Outcome;

/// What can be done; each is documented where it is.
#[derive(Subcommand, Debug)]
pub enum Command {
    New(new::New),
    Check(check::Check),
    Build(build::Build),
    #[command(visible_alias = "fmt")]
    Format(format::Format),
    Fix(fix::Fix),
    Explain(explain::Explain),
    Completions(completions::Completions),
}

impl Command {
    /// Carries the command out.
    pub fn run(&self, console: &mut Console) {
        match self {
            Command::New(new) => new.run(console),
            Command::Check(check) => check.run(console),
            Command::Build(build) => build.run(console),
            Command::Format(format) => format.run(console),
            Command::Fix(fix) => fix.run(console),
            Command::Explain(explain) => explain.run(console),
            Command::Completions(completions) => completions.run(console),
        }
    }
}

/// Checks a job and takes its reports.
fn check(job: &Job, console: &mut Console) {
    let checked = job.check();
    if checked.main.is_none() {
        console.worsen(Outcome::NotCarriedOut);
    }
    console.report(&checked.sources, checked.diagnostics, |name| {
        job.shown(name)
    });
}

/// Compiles a job and takes its reports; gives the packet of a sound one.
fn built(job: &Job, effort: u32, console: &mut Console) -> Option<pelmet_packet::Packet> {
    let built = job.build(effort);
    if built.main.is_none() {
        console.worsen(Outcome::NotCarriedOut);
    }
    console.report(&built.sources, built.diagnostics, |name| job.shown(name));
    built.packet
}
