//! The units that people write.

use crate::{Dimension, Ratio};

/// A unit as people write it.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Unit {
    /// 25.4 mm.
    Inch,
    /// 12 in.
    Foot,
    /// 36 in.
    Yard,
    /// A thousandth of a metre.
    Millimetre,
    /// 10 mm.
    Centimetre,
    /// 1000 mm, in which cloth is sold.
    Metre,
    /// A thousandth of a kilogram.
    Gram,
    /// 1000 g.
    Kilogram,
    /// The avoirdupois ounce, a sixteenth of a pound: some 28.3 g.
    Ounce,
    /// The avoirdupois pound: exactly 453.59237 g.
    Pound,
    /// What a metric maker states of a cloth's weight.
    GramPerSquareMetre,
    /// What a maker in inches states of it: some 33.9 g/m2.
    OuncePerSquareYard,
    /// A hundredth part.
    Percent,
    /// A 360th of a full turn.
    Degree,
}

impl Unit {
    /// Every unit.
    pub const ALL: &[Unit] = &[
        Unit::Inch,
        Unit::Foot,
        Unit::Yard,
        Unit::Millimetre,
        Unit::Centimetre,
        Unit::Metre,
        Unit::Gram,
        Unit::Kilogram,
        Unit::Ounce,
        Unit::Pound,
        Unit::GramPerSquareMetre,
        Unit::OuncePerSquareYard,
        Unit::Percent,
        Unit::Degree,
    ];

    /// The words to offer to someone who wrote a word that is no unit.
    pub const WORDS: &[&str] = &[
        "in", "inch", "inches", "ft", "foot", "feet", "yd", "yard", "yards", "mm", "cm", "m", "g",
        "kg", "oz", "lb", "g/m2", "oz/yd2", "percent", "deg", "degrees",
    ];

    /// The unit that a word or sign stands for; `None` when it stands for none.
    #[must_use]
    pub fn from_word(word: &str) -> Option<Unit> {
        Some(match word {
            "in" | "inch" | "inches" | "″" | "”" | "\"" => Unit::Inch,
            "ft" | "foot" | "feet" | "′" | "’" | "'" => Unit::Foot,
            "yd" | "yds" | "yard" | "yards" => Unit::Yard,
            "mm" | "millimetre" | "millimetres" | "millimeter" | "millimeters" => Unit::Millimetre,
            "cm" | "centimetre" | "centimetres" | "centimeter" | "centimeters" => Unit::Centimetre,
            "m" | "metre" | "metres" | "meter" | "meters" => Unit::Metre,
            "g" | "gram" | "grams" => Unit::Gram,
            "kg" | "kilogram" | "kilograms" => Unit::Kilogram,
            "oz" | "ounce" | "ounces" => Unit::Ounce,
            "lb" | "lbs" | "pound" | "pounds" => Unit::Pound,
            "g/m2" | "g/m²" | "gsm" => Unit::GramPerSquareMetre,
            "oz/yd2" | "oz/yd²" => Unit::OuncePerSquareYard,
            "%" | "percent" => Unit::Percent,
            "deg" | "degree" | "degrees" | "°" => Unit::Degree,
            _ => return None,
        })
    }

    /// The one spelling that the formatter and the sheets use.
    #[must_use]
    pub const fn symbol(self) -> &'static str {
        match self {
            Unit::Inch => "in",
            Unit::Foot => "ft",
            Unit::Yard => "yd",
            Unit::Millimetre => "mm",
            Unit::Centimetre => "cm",
            Unit::Metre => "m",
            Unit::Gram => "g",
            Unit::Kilogram => "kg",
            Unit::Ounce => "oz",
            Unit::Pound => "lb",
            Unit::GramPerSquareMetre => "g/m2",
            Unit::OuncePerSquareYard => "oz/yd2",
            Unit::Percent => "%",
            Unit::Degree => "deg",
        }
    }

    /// What the unit measures.
    #[must_use]
    pub const fn dimension(self) -> Dimension {
        match self {
            Unit::Inch
            | Unit::Foot
            | Unit::Yard
            | Unit::Millimetre
            | Unit::Centimetre
            | Unit::Metre => Dimension::LENGTH,
            Unit::Gram | Unit::Kilogram | Unit::Ounce | Unit::Pound => Dimension::MASS,
            Unit::GramPerSquareMetre | Unit::OuncePerSquareYard => Dimension::MASS_PER_AREA,
            Unit::Percent => Dimension::NUMBER,
            Unit::Degree => Dimension::ANGLE,
        }
    }

    /// The unit's exact size in base units: nanometres, micrograms, micrograms per square
    /// nanometre, one, or degrees. The figures are those of NIST SP 811, appendix B.8.
    #[must_use]
    pub fn size(self) -> Ratio {
        match self {
            Unit::Inch => Ratio::from_integer(25_400_000),
            Unit::Foot => Ratio::from_integer(12 * 25_400_000),
            Unit::Yard => Ratio::from_integer(YARD),
            Unit::Millimetre => Ratio::from_integer(1_000_000),
            Unit::Centimetre => Ratio::from_integer(10_000_000),
            Unit::Metre => Ratio::from_integer(METRE),
            Unit::Gram => Ratio::from_integer(GRAM),
            Unit::Kilogram => Ratio::from_integer(1_000 * GRAM),
            Unit::Ounce => Ratio::new(POUND, 16),
            Unit::Pound => Ratio::from_integer(POUND),
            Unit::GramPerSquareMetre => Ratio::new(GRAM, METRE * METRE),
            Unit::OuncePerSquareYard => Ratio::new(POUND, 16 * YARD * YARD),
            Unit::Percent => Ratio::new(1, 100),
            Unit::Degree => Ratio::from_integer(1),
        }
    }
}

/// In nanometres: 36 inches of 25.4 mm.
const YARD: i128 = 914_400_000;
/// In nanometres.
const METRE: i128 = 1_000_000_000;
/// In micrograms.
const GRAM: i128 = 1_000_000;
/// In micrograms: exactly 453.59237 g.
const POUND: i128 = 453_592_370;
