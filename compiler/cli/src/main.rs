//! The binary: arguments, files and exit status.
//!
//! Only this crate touches files, terminal and environment; everything it calls is a function of
//! texts. Each subcommand is a module of [`command`].

#![expect(
    clippy::disallowed_methods,
    reason = "what the rest of the compiler may not touch is touched here"
)]
#![expect(
    clippy::result_large_err,
    reason = "a command is refused once, at its end"
)]

mod arguments;
mod choosing;
mod command;
mod compile;
mod console;
mod display;
mod effort;
mod folder;
mod interrupt;
mod job;
mod outcome;
mod progress;
mod reports;
mod version;
mod write;

use std::process::ExitCode;

use clap::{CommandFactory, Parser};

use arguments::Arguments;
use console::Console;

fn main() -> ExitCode {
    let arguments = Arguments::parse();
    let mut console = Console::new(arguments.display, Arguments::command());
    arguments.command.run(&mut console);
    console.finish().into()
}
