//! `pelmet explain`: tells what the code of a report means.

use clap::Args;
use pelmet_diagnostics::{codes, did_you_mean, explain};

use crate::console::Console;

/// Tell what the code of a report means
#[derive(Args, Debug)]
pub struct Explain {
    /// The code, as it stands in square brackets in a report
    #[arg(required_unless_present = "list")]
    code: Option<String>,
    /// List all codes
    #[arg(long, conflicts_with = "code")]
    list: bool,
}

impl Explain {
    pub fn run(&self, console: &mut Console) {
        match &self.code {
            Some(slug) => page(slug, console),
            None => console.say(&list()),
        }
    }
}

fn page(slug: &str, console: &mut Console) {
    match codes::by_slug(slug) {
        Some(code) => console.say(&explain(code)),
        None => {
            let suggestion = did_you_mean(slug, codes::ALL.iter().map(|code| code.slug));
            console.refuse(codes::code_unknown(slug, suggestion));
        }
    }
}

fn list() -> String {
    codes::ALL
        .iter()
        .map(|code| format!("{:8} {}\n", code.severity.word(), code.slug))
        .collect()
}
