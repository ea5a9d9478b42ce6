//! The subcommands, one module each.

mod build;
mod changes;
mod check;
mod cloths;
mod completions;
mod explain;
mod fix;
mod format;
mod new;

use std::ops::ControlFlow;

use clap::Subcommand;
use pelmet_driver::{Search, Stage};

use crate::console::Console;
use crate::effort::Effort;
use crate::interrupt;
use crate::job::Job;
use crate::outcome::Outcome;

/// What can be done; each is documented where it is.
#[derive(Subcommand, Debug)]
pub enum Command {
    New(new::New),
    Check(check::Check),
    Build(build::Build),
    Changes(changes::Changes),
    Cloths(cloths::Cloths),
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
            Command::Changes(changes) => changes.run(console),
            Command::Cloths(cloths) => cloths.run(console),
            Command::Format(format) => format.run(console),
            Command::Fix(fix) => fix.run(console),
            Command::Explain(explain) => explain.run(console),
            Command::Completions(completions) => completions.run(console),
        }
    }
}

/// Checks a job and takes its reports.
fn check(job: &Job, console: &mut Console) {
    let checked = job.check(&mut |search| lay_on(search, console));
    if checked.main.is_none() {
        console.worsen(Outcome::NotCarriedOut);
    }
    console.report(&checked.sources, checked.diagnostics, |name| {
        job.shown(name)
    });
}

/// Tells how far a search for a shorter layout has come, and lets it go on until Ctrl-C is pressed.
fn lay_on(search: &Search<'_>, console: &mut Console) -> ControlFlow<()> {
    if interrupt::is_asked_to_stop() {
        console.remark_once(STOPPING);
        return ControlFlow::Break(());
    }
    let Search {
        stage,
        cloth,
        progress,
        bought,
    } = search;
    let doing = match stage {
        Stage::Comparing => "comparing ways to lay out",
        Stage::Laying => "laying out",
    };
    let part = progress.spent.saturating_mul(100);
    let part = part.checked_div(progress.allowed).unwrap_or(100).min(100);
    console.progress().tell(&format!(
        "{doing} {cloth}: {part} % of the search, {bought} to buy so far (Ctrl-C stops it)"
    ));
    ControlFlow::Continue(())
}

const STOPPING: &str = "The search for shorter layouts is stopped; the shortest found so far are \
    kept. Ctrl-C once more ends the program.\n";

/// Compiles a job and takes its reports; gives the packet of a sound one.
fn built(job: &Job, effort: Effort, console: &mut Console) -> Option<pelmet_packet::Packet> {
    let built = job.build(effort.times, &mut |search| lay_on(search, console));
    if built.main.is_none() {
        console.worsen(Outcome::NotCarriedOut);
    }
    console.report(&built.sources, built.diagnostics, |name| job.shown(name));
    built.packet
}
