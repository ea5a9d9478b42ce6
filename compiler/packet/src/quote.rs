//! What a job costs to make, and what is asked for it.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

use super::Amount;

/// A quote. Each line is rounded to the hundredth once, and the sums are sums of lines.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Quote {
    /// Cloth, notions and work, line by line.
    pub lines: Vec<QuoteLine>,
    /// The sum of the lines.
    pub cost: Amount,
    /// What is added to the cost, where a markup is stated.
    pub markup: Option<Markup>,
    /// What is asked: the cost and the markup.
    pub total: Amount,
    /// What is needed and has no price that suits how it is bought; nothing of it is in the sums.
    pub not_priced: Vec<String>,
}

/// Something that is paid for, and how much of it.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct QuoteLine {
    /// What kind of thing it is.
    pub kind: QuoteKind,
    /// What it is called.
    pub name: String,
    /// How much of it, in words.
    pub amount: String,
    /// How its cost comes about.
    pub reckoned: Reckoned,
    /// The money, rounded once from the quantity and the price.
    pub cost: Amount,
}

/// How a cost comes about: the quantity times the price, rounded to the hundredth.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Reckoned {
    /// How many units of it are paid for.
    pub quantity: f64,
    /// The unit the price is for, in words: `yd`, `roll`, `h` for an hour of work.
    pub unit: String,
    /// What one unit costs, in the job's currency.
    pub price: f64,
}

/// The kinds of line in a quote.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum QuoteKind {
    /// Cloth as it is bought.
    Cloth,
    /// A notion as it is bought.
    Notion,
    /// A step of the work, all panels together.
    Labour,
}

/// What is added to the cost.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, JsonSchema)]
pub struct Markup {
    /// The part of the cost, in percent.
    pub percent: String,
    /// The same as a part of one: 0.4 for 40 percent.
    pub part: f64,
    /// What that comes to.
    pub amount: Amount,
}
