//! What a person reads of a length is what a program reads of it, rounded to a step of the house.

use serde_json::Value;

use super::{Sums, mm, number, text};

/// Adds up every length of a packet, wherever it stands.
pub fn check(packet: &Value, sums: &mut Sums) {
    let units = &packet["units"];
    let steps = Steps {
        cut: mm(units, "cut_to"),
        buy: mm(units, "buy_to"),
    };
    steps.check("packet", packet, sums);
}

struct Steps {
    cut: f64,
    buy: f64,
}

impl Steps {
    fn check(&self, path: &str, value: &Value, sums: &mut Sums) {
        match value {
            Value::Object(fields) if fields.contains_key("mm") => {
                self.check_length(path, value, sums);
            }
            Value::Object(fields) => {
                for (name, field) in fields {
                    self.check(&format!("{path}/{name}"), field, sums);
                }
            }
            Value::Array(items) => {
                for (index, item) in items.iter().enumerate() {
                    self.check(&format!("{path}/{index}"), item, sums);
                }
            }
            Value::Null | Value::Bool(_) | Value::Number(_) | Value::String(_) => {}
        }
    }

    fn check_length(&self, path: &str, length: &Value, sums: &mut Sums) {
        let words = text(length, "text");
        let (millimetres, step) = self.read(words);
        let told = number(length, "mm");
        sums.within(
            &format!("{path}, {words}"),
            told,
            millimetres,
            step + 0.000_001,
        );
    }

    /// A length in words, in millimetres, and how much rounding may have made of it.
    fn read(&self, words: &str) -> (f64, f64) {
        let units = [
            ("in", 25.4, self.cut),
            ("mm", 1.0, self.cut),
            ("yd", 914.4, self.buy),
            ("m", 1000.0, self.buy),
        ];
        let is_of = |word: &str| units.iter().find(|(unit, ..)| *unit == word);
        let (_, millimetres, step) = words.split(' ').find_map(is_of).expect(words);
        let quantity: f64 = words.split(' ').filter_map(quantity).sum();
        let is_negative = words.starts_with('-') || words.ends_with(" left");
        let sign = if is_negative { -1.0 } else { 1.0 };
        (sign * quantity * millimetres, *step)
    }
}

/// How much a word says, without its sign: `5/8`, `19.05`; nothing for a word that says no quantity.
fn quantity(word: &str) -> Option<f64> {
    let word = word.trim_start_matches('-');
    match word.split_once('/') {
        Some((part, whole)) => Some(part.parse::<f64>().ok()? / whole.parse::<f64>().ok()?),
        None => word.parse().ok(),
    }
}
