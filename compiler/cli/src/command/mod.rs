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

use clap::Subcommand;

use crate::console::Console;

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
    Fix(fix::FixDesigns),
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
