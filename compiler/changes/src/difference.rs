//! How much more or less something is.

use num_traits::ToPrimitive;
use pelmet_measure::{Length, Money, Style, System};
use pelmet_packet::{SystemOfUnits, Units};
use serde_json::Value;

/// Writes differences as a house writes lengths and money.
pub(super) struct Differences {
    style: Style,
}

impl Differences {
    /// As they are written in a packet.
    pub(super) fn written_in(units: &Units) -> Differences {
        let length = |measure: f64, usual| Length::from_millimetres_f64(measure).unwrap_or(usual);
        let usual = match units.system {
            SystemOfUnits::Inches => Style::INCHES,
            SystemOfUnits::Metric => Style::METRIC,
        };
        Differences {
            style: Style {
                system: usual.system,
                cut_step: length(units.cut_to.mm, usual.cut_step),
                mark_step: length(units.mark_to.mm, usual.mark_step),
            },
        }
    }

    /// By how much more or less an amount is than it was; nothing of what is neither a length nor
    /// money, or differs by less than is printed.
    pub(super) fn between(&self, before: &Value, after: &Value) -> Option<String> {
        let by = |field| Some(number(after, field)? - number(before, field)?);
        let (longer, dearer) = (by("/mm").or_else(|| by("/length/mm")), by("/amount"));
        let (more, size) = match (longer, dearer) {
            (Some(longer), _) => (longer, self.length(longer.abs(), is_bought(after))?),
            (None, Some(dearer)) => (dearer, money(dearer.abs())?),
            (None, None) => return None,
        };
        let is_nothing = ["0 in", "0 mm", "0 yd", "0 m", "0.00"].contains(&size.as_str());
        let word = if more > 0.0 { "more" } else { "less" };
        (!is_nothing).then(|| format!("{size} {word}"))
    }

    /// A length, in the unit that cloth is bought in where that is what it is of.
    fn length(&self, millimetres: f64, bought: bool) -> Option<String> {
        let length = Length::from_millimetres_f64(millimetres)?;
        Some(if bought {
            self.style.bolt(length)
        } else {
            self.style.mark(length)
        })
    }
}

fn number(amount: &Value, field: &str) -> Option<f64> {
    amount.pointer(field)?.as_f64()
}

fn money(amount: f64) -> Option<String> {
    let hundredths = (amount * 100.0).round().to_i64()?;
    Some(Money::from_hundredths(hundredths).text())
}

/// Whether a length is printed in the unit that cloth is bought in.
fn is_bought(length: &Value) -> bool {
    let text = length.get("text").and_then(Value::as_str).unwrap_or("");
    [System::Inches, System::Metric]
        .map(bought_in)
        .iter()
        .any(|unit| text.ends_with(unit))
}

fn bought_in(system: System) -> &'static str {
    match system {
        System::Inches => " yd",
        System::Metric => " m",
    }
}
