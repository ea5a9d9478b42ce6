//! How what a command says is shown.

use clap::{Args, ValueEnum, value_parser};

/// How reports and sheets are shown.
#[derive(Args, Copy, Clone, Debug)]
pub struct Display {
    /// How reports are written; `human` on a terminal and `plain` in a pipe unless said
    #[arg(long, value_enum, global = true)]
    pub format: Option<Form>,
    /// Whether reports have colours; `auto` asks the terminal and the variable `NO_COLOR`
    #[arg(long, value_enum, value_name = "WHEN", global = true, default_value_t = When::Auto)]
    pub color: When,
    /// The most columns a line takes
    #[arg(
        long,
        value_name = "COLUMNS",
        global = true,
        default_value_t = STANDARD_WIDTH,
        value_parser = value_parser!(u16).range(40..=400)
    )]
    pub width: u16,
}

/// How wide sheets and reports are unless said, in columns; a packet's sheets always are.
const STANDARD_WIDTH: u16 = 88;

/// How reports are written: drawn for people, in plain lines for screen readers and pipes, or as one
/// JSON object for editors and other programs.
#[derive(ValueEnum, Copy, Clone, PartialEq, Eq, Debug)]
pub enum Form {
    Human,
    Plain,
    Json,
}

/// When something is done; `Auto` is when it suits.
#[derive(ValueEnum, Copy, Clone, PartialEq, Eq, Debug)]
pub enum When {
    Auto,
    Always,
    Never,
}
