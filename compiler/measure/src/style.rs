//! How a house writes its lengths, weights and areas.

use crate::text::fraction_text;
use crate::{Area, Length, Mass, MassPerArea};

/// The system of units a house works in.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum System {
    /// Inches and yards, ounces and pounds.
    Inches,
    /// Millimetres and metres, grams and kilograms.
    Metric,
}

/// How a house writes its lengths: in which system, and to what step.
///
/// A step that the system cannot write (a millimetre in inches) is followed by a second rounding,
/// the same way, to the finest that it can: 1/64 in or 0.01 mm.
#[derive(Copy, Clone, PartialEq, Eq, Hash, Debug)]
pub struct Style {
    /// Which units are written.
    pub system: System,
    /// Cuts are rounded up to a multiple of this.
    pub cut_step: Length,
    /// Marks are rounded to the nearest multiple of this.
    pub mark_step: Length,
}

impl Style {
    /// Inches: cuts to 1/8 in, marks to 1/16 in.
    pub const INCHES: Style = Style {
        system: System::Inches,
        cut_step: Length::inch_fraction(1, 8),
        mark_step: Length::inch_fraction(1, 16),
    };

    /// Metric: cuts and marks to 1 mm.
    pub const METRIC: Style = Style {
        system: System::Metric,
        cut_step: Length::MILLIMETRE,
        mark_step: Length::MILLIMETRE,
    };

    /// A length to cut, rounded up: `15 5/8 in`, `397 mm`. Never less than the length.
    #[must_use]
    pub fn cut(&self, length: Length) -> String {
        let rounded = length
            .round_up_to(self.cut_step)
            .round_up_to(self.system.finest_step());
        self.system.text(rounded)
    }

    /// A mark, rounded to the nearest: `15 9/16 in`, `396 mm`.
    #[must_use]
    pub fn mark(&self, length: Length) -> String {
        let rounded = length
            .round_to(self.mark_step)
            .round_to(self.system.finest_step());
        self.system.text(rounded)
    }

    /// A length for a message: exact where 1/64 in or 0.01 mm can say it, otherwise the nearest of
    /// those: `2 1/2 in`, `about 14 61/64 in`.
    #[must_use]
    pub fn plain(&self, length: Length) -> String {
        let nearest = length.round_to(self.system.finest_step());
        let about = if nearest == length { "" } else { "about " };
        format!("{about}{}", self.system.text(nearest))
    }

    /// A length of cloth to buy, rounded up to the buying step: `3 5/8 yd`, `3.4 m`.
    #[must_use]
    pub fn bolt(&self, length: Length) -> String {
        let bought = length.round_up_to(self.buying_step());
        match self.system {
            System::Inches => format!("{} yd", fraction_of(bought, Length::YARD)),
            System::Metric => format!("{} m", bought.metres_text()),
        }
    }

    /// The step in which cloth is bought: 1/8 yd or 0.1 m (common practice, no source).
    #[must_use]
    pub fn buying_step(&self) -> Length {
        match self.system {
            System::Inches => Length::YARD.divided(8),
            System::Metric => Length::METRE.divided(10),
        }
    }

    /// A size to cut, each side rounded up: `18 in x 24 1/2 in`.
    #[must_use]
    pub fn size(&self, width: Length, length: Length) -> String {
        format!("{} x {}", self.cut(width), self.cut(length))
    }

    /// An area: `432 sq in`, `0.279 m2`.
    #[must_use]
    pub fn area(&self, area: Area) -> String {
        match self.system {
            System::Inches => format!("{} sq in", area.square_inches_text()),
            System::Metric => format!("{} m2", area.square_metres_text()),
        }
    }

    /// A weight: `12.3 oz`, `2.4 lb`; `350 g`, `1.25 kg`.
    #[must_use]
    pub fn mass(&self, mass: Mass) -> String {
        match self.system {
            System::Inches => mass.ounces_or_pounds_text(),
            System::Metric => mass.metric_text(),
        }
    }

    /// What a cloth weighs for its area: `6.2 oz/yd2`, `210 g/m2`.
    #[must_use]
    pub fn mass_per_area(&self, weight: MassPerArea) -> String {
        match self.system {
            System::Inches => weight.ounces_per_square_yard_text(),
            System::Metric => weight.grams_per_square_metre_text(),
        }
    }
}

impl System {
    /// The finest length the system can write.
    const fn finest_step(self) -> Length {
        match self {
            System::Inches => Length::inch_fraction(1, 64),
            System::Metric => Length::from_nanometres(10_000),
        }
    }

    /// The length, which is a multiple of the finest step, in the system's small unit.
    fn text(self, length: Length) -> String {
        match self {
            System::Inches => format!("{} in", fraction_of(length, Length::INCH)),
            System::Metric => format!("{} mm", length.millimetres_text()),
        }
    }
}

fn fraction_of(length: Length, unit: Length) -> String {
    length.ratio_to(unit).map(fraction_text).unwrap_or_default()
}
