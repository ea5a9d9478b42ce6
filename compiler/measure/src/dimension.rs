//! What a quantity measures.

/// What a quantity measures: to what power it holds a length, a mass, money and an angle.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Default, Debug)]
pub struct Dimension {
    /// 1 for a length, 2 for an area, below zero for what is told per length or per area.
    pub length: i8,
    /// 1 for a weight, also for one per area.
    pub mass: i8,
    /// 1 for an amount, also for a price per length.
    pub money: i8,
    /// 1 for degrees.
    pub angle: i8,
}

impl Dimension {
    /// A plain number: a count, a ratio or a percentage.
    pub const NUMBER: Dimension = Dimension {
        length: 0,
        mass: 0,
        money: 0,
        angle: 0,
    };
    /// A length, such as a drop or a width.
    pub const LENGTH: Dimension = Dimension {
        length: 1,
        ..Dimension::NUMBER
    };
    /// The product of two lengths.
    pub const AREA: Dimension = Dimension {
        length: 2,
        ..Dimension::NUMBER
    };
    /// A mass, which the trade calls a weight.
    pub const MASS: Dimension = Dimension {
        mass: 1,
        ..Dimension::NUMBER
    };
    /// The weight of a cloth for its area.
    pub const MASS_PER_AREA: Dimension = Dimension {
        mass: 1,
        length: -2,
        ..Dimension::NUMBER
    };
    /// What is to be paid, in the currency the design is priced in.
    pub const MONEY: Dimension = Dimension {
        money: 1,
        ..Dimension::NUMBER
    };
    /// The price of a length of cloth.
    pub const MONEY_PER_LENGTH: Dimension = Dimension {
        money: 1,
        length: -1,
        ..Dimension::NUMBER
    };
    /// A turn, counted in degrees.
    pub const ANGLE: Dimension = Dimension {
        angle: 1,
        ..Dimension::NUMBER
    };

    /// The dimension as a message says it, with its article: `a length`.
    #[must_use]
    pub const fn in_words(self) -> &'static str {
        match self {
            Dimension::NUMBER => "a plain number",
            Dimension::LENGTH => "a length",
            Dimension::AREA => "an area",
            Dimension::MASS => "a weight",
            Dimension::MASS_PER_AREA => "a weight for its area",
            Dimension::MONEY => "an amount of money",
            Dimension::MONEY_PER_LENGTH => "a price for its length",
            Dimension::ANGLE => "an angle",
            _ => "something this language has no use for",
        }
    }

    /// The dimension of a product; `None` when a power grows beyond what can be held.
    pub(crate) fn times(self, other: Dimension) -> Option<Dimension> {
        self.combined(other, i8::checked_add)
    }

    /// The dimension of a quotient; `None` when a power grows beyond what can be held.
    pub(crate) fn over(self, other: Dimension) -> Option<Dimension> {
        self.combined(other, i8::checked_sub)
    }

    fn combined(self, other: Dimension, powers: fn(i8, i8) -> Option<i8>) -> Option<Dimension> {
        Some(Dimension {
            length: powers(self.length, other.length)?,
            mass: powers(self.mass, other.mass)?,
            money: powers(self.money, other.money)?,
            angle: powers(self.angle, other.angle)?,
        })
    }
}
