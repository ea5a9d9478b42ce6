//! What can be typed.

use clap::Parser;

use crate::command::Command;
use crate::display::Display;

/// The compiler for valance panels and curtains.
///
/// Describe a window once in a text file, and get what to buy, what to cut and where to mark.
///
/// Exit status: 0 all is sound, 1 a design has errors, 2 the command could not be carried out.
#[derive(Parser, Debug)]
#[command(
    name = "pelmet",
    version,
    max_term_width = 100,
    arg_required_else_help = true
)]
pub struct Arguments {
    /// What to do.
    #[command(subcommand)]
    pub command: Command,
    /// How to show it.
    #[command(flatten)]
    pub display: Display,
}

#[cfg(test)]
mod tests {
    use clap::CommandFactory;

    #[test]
    fn the_arguments_do_not_contradict_each_other() {
        super::Arguments::command().debug_assert();
    }
}
