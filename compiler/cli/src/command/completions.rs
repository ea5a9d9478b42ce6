//! `pelmet completions`: lets a shell complete the words of this command.

use clap::{Args, CommandFactory};
use clap_complete::Shell;

use crate::arguments::Arguments;
use crate::console::Console;

/// Print what lets a shell complete the words of this command
#[derive(Args, Debug)]
pub struct Completions {
    /// The shell
    #[arg(value_enum)]
    shell: Shell,
}

impl Completions {
    pub fn run(&self, console: &mut Console) {
        let mut script = Vec::new();
        clap_complete::generate(self.shell, &mut Arguments::command(), "pelmet", &mut script);
        console.say(&String::from_utf8_lossy(&script));
    }
}
