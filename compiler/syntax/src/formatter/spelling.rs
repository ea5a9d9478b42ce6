//! How a number is written.

use pelmet_measure::Unit;
use pest::Parser;
use pest::iterators::Pair;

use crate::fractions;
use crate::grammar::{Grammar, Rule};

/// A number in the one spelling; nothing if it is none.
pub(super) fn number(typed: &str) -> Option<String> {
    let number = Grammar::parse(Rule::number, typed).ok()?.next()?;
    let parts: Option<Vec<String>> = number.into_inner().map(part).collect();
    Some(parts?.join(" "))
}

fn part(pair: Pair<'_, Rule>) -> Option<String> {
    match pair.as_rule() {
        Rule::amount => amount(pair),
        _ => Unit::from_word(pair.as_str()).map(|unit| unit.symbol().to_owned()),
    }
}

fn amount(pair: Pair<'_, Rule>) -> Option<String> {
    pair.into_inner().try_fold(String::new(), |before, part| {
        let typed = part.as_str();
        Some(match part.as_rule() {
            Rule::decimals if before.is_empty() => format!("0{typed}"),
            Rule::lower => before + &typed.replace('⁄', "/"),
            Rule::fraction => format!("{before} {}", fraction(typed)?),
            Rule::glyph => fraction(typed)?,
            _ => before + typed,
        })
    })
}

/// `1/2` for `½`, `1⁄2` and `1/2`.
fn fraction(typed: &str) -> Option<String> {
    match fractions::value_of_text(typed) {
        Some((upper, lower)) => Some(format!("{upper}/{lower}")),
        None => Some(typed.replace('⁄', "/")),
    }
}
