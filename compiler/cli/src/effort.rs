//! How long layouts that buy less are looked for.

use clap::{Args, value_parser};

/// How long layouts that buy less are looked for.
#[derive(Args, Copy, Clone, Debug)]
pub struct Effort {
    /// Search so many times as long for layouts that buy less cloth
    ///
    /// Ctrl-C stops the search and keeps the shortest layouts found until then; the sheets say so.
    #[arg(long = "effort", value_name = "TIMES", default_value_t = 1, value_parser = value_parser!(u32).range(1..=1000))]
    pub times: u32,
}
