//! The names in what could not be read, for those who look for what a mistake stands beside.

use pest::Parser;

use crate::grammar::{Grammar, Rule};

/// The names in a text, with the byte where each begins. What is a label of an argument or the unit of a
/// number is left out.
pub(super) fn names(text: &str) -> Vec<(usize, &str)> {
    let mut names = Vec::new();
    let mut from = 0;
    while let Some((start, name)) = next_name(text, from) {
        from = start.saturating_add(name.len());
        let (before, after) = (text.get(..start), text.get(from..));
        if !ends_with_number(before.unwrap_or_default()) && !is_label(after.unwrap_or_default()) {
            names.push((start, name));
        }
    }
    names
}

fn next_name(text: &str, from: usize) -> Option<(usize, &str)> {
    let rest = text.get(from..)?;
    let start = rest.find(char::is_alphabetic)?;
    let name = Grammar::parse(Rule::name, rest.get(start..)?).ok()?;
    Some((from.saturating_add(start), name.as_str()))
}

fn ends_with_number(before: &str) -> bool {
    before
        .trim_end()
        .ends_with(|letter: char| letter.is_numeric())
}

fn is_label(after: &str) -> bool {
    after.trim_start().starts_with(['=', ':'])
}
