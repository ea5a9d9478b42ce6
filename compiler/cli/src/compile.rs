//! Checking and compiling a job for whoever types, who may end the search for layouts.

use std::ops::ControlFlow;

use pelmet_driver::{Search, Stage};
use pelmet_packet::Packet;

use crate::console::Console;
use crate::effort::Effort;
use crate::interrupt;
use crate::job::Job;
use crate::outcome::Outcome;

/// Checks a job and takes its reports.
pub fn check(job: &Job, console: &mut Console) {
    let checked = job.check(&mut |search| lay_on(search, console));
    if checked.main.is_none() {
        console.worsen(Outcome::NotCarriedOut);
    }
    console.report(&checked.sources, checked.diagnostics, |name| {
        job.shown(name)
    });
}

/// Tells how far a search for a shorter layout has come, and lets it go on until Ctrl-C is pressed.
pub fn lay_on(search: &Search<'_>, console: &mut Console) -> ControlFlow<()> {
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
pub fn built(job: &Job, effort: Effort, console: &mut Console) -> Option<Packet> {
    let built = job.build(effort.times, &mut |search| lay_on(search, console));
    if built.main.is_none() {
        console.worsen(Outcome::NotCarriedOut);
    }
    console.report(&built.sources, built.diagnostics, |name| job.shown(name));
    built.packet
}
