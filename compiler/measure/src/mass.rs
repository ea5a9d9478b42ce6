//! Weights, in whole micrograms, and the weight of a cloth for its area.

use crate::exact::{multiply, nearest, nearest_quotient, saturated};
use crate::operators::saturating_operators;
use crate::text::{decimal_text, rounded_text, without_trailing_zeros};
use crate::{Area, Ratio, Unit};

/// A mass, which the trade calls a weight: a whole number of micrograms.
///
/// Operators saturate at the ends of `i64`, some 9 million times [`Mass::LARGEST`].
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Default, Debug)]
pub struct Mass(i64);

impl Mass {
    /// No mass.
    pub const ZERO: Mass = Mass(0);
    /// The largest mass a design may state: 1000 kg.
    pub const LARGEST: Mass = Mass(1_000_000_000_000);

    /// A mass told in micrograms, the unit it is kept in.
    #[must_use]
    pub const fn from_micrograms(micrograms: i64) -> Mass {
        Mass(micrograms)
    }

    /// How many micrograms it has: exact, as it is kept.
    #[must_use]
    pub const fn micrograms(self) -> i64 {
        self.0
    }

    /// The mass times an exact number, to the nearest microgram, saturating.
    #[must_use]
    pub fn scaled(self, by: Ratio) -> Mass {
        Mass(saturated(nearest(self.0.into(), by)))
    }

    /// The mass in kilograms, for loads and other estimates only: it may be off in the last place.
    #[must_use]
    pub fn as_kilograms_f64(self) -> f64 {
        self.0 as f64 / MICROGRAMS_IN_A_KILOGRAM
    }

    /// A computed number of kilograms, to the nearest microgram; `None` when it is not a number or
    /// larger than [`Mass::LARGEST`]. For estimates only.
    #[must_use]
    #[expect(
        clippy::cast_possible_truncation,
        reason = "a whole number below the largest mass"
    )]
    pub fn from_kilograms_f64(kilograms: f64) -> Option<Mass> {
        let micrograms = (kilograms * MICROGRAMS_IN_A_KILOGRAM).round();
        let fits = micrograms.abs() <= Mass::LARGEST.0 as f64;
        fits.then_some(Mass(micrograms as i64))
    }

    /// The mass in whole grams below a kilogram, else in kilograms to the nearest hundredth:
    /// `350 g`, `1.25 kg`.
    #[must_use]
    pub fn metric_text(self) -> String {
        match nearest_quotient(self.0.into(), MICROGRAMS_IN_A_GRAM) {
            grams @ -999..=999 => format!("{grams} g"),
            _ => {
                let hundredths = nearest_quotient(self.0.into(), 10 * MICROGRAMS_IN_A_GRAM);
                format!(
                    "{} kg",
                    without_trailing_zeros(&decimal_text(hundredths, 2))
                )
            }
        }
    }

    /// The mass in ounces below a pound, else in pounds, to the nearest tenth: `12.3 oz`, `2.4 lb`.
    #[must_use]
    pub fn ounces_or_pounds_text(self) -> String {
        match self.tenths_of(Unit::Ounce) {
            tenths @ -159..=159 => tenths_text(tenths, Unit::Ounce),
            _ => tenths_text(self.tenths_of(Unit::Pound), Unit::Pound),
        }
    }

    fn tenths_of(self, unit: Unit) -> i128 {
        nearest(i128::from(self.0).saturating_mul(10), unit.size().recip())
    }
}

saturating_operators!(Mass);

/// What a cloth weighs for its area, exactly.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub struct MassPerArea(Ratio);

impl MassPerArea {
    /// The largest that a design may state, in grams per square metre.
    pub const LARGEST_IN_GRAMS_PER_SQUARE_METRE: i128 = 100_000;

    /// In micrograms per square nanometre, the base units of a [`crate::Quantity`].
    pub(crate) const fn from_base_units(amount: Ratio) -> MassPerArea {
        MassPerArea(amount)
    }

    /// What this area of the cloth weighs, to the nearest microgram, saturating.
    #[must_use]
    pub fn over(self, area: Area) -> Mass {
        Mass(saturated(nearest(area.square_nanometres(), self.0)))
    }

    /// In grams per square metre, to the nearest tenth: `210 g/m2`.
    #[must_use]
    pub fn grams_per_square_metre_text(self) -> String {
        self.text_in(Unit::GramPerSquareMetre)
    }

    /// In ounces per square yard, to the nearest tenth: `6.2 oz/yd2`.
    #[must_use]
    pub fn ounces_per_square_yard_text(self) -> String {
        self.text_in(Unit::OuncePerSquareYard)
    }

    fn text_in(self, unit: Unit) -> String {
        let amount = multiply(self.0, unit.size().recip()).unwrap_or_default();
        format!(
            "{} {}",
            without_trailing_zeros(&rounded_text(amount, 1)),
            unit.symbol()
        )
    }
}

fn tenths_text(tenths: i128, unit: Unit) -> String {
    format!(
        "{} {}",
        without_trailing_zeros(&decimal_text(tenths, 1)),
        unit.symbol()
    )
}

const MICROGRAMS_IN_A_GRAM: i128 = 1_000_000;
const MICROGRAMS_IN_A_KILOGRAM: f64 = 1e9;
