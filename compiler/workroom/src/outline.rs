//! The outline of a panel below its heading line, drawn in proportion to its width.

use pelmet_measure::{Length, Ratio};

/// A length that follows the width of the panel: `part` of the width, plus `plus`.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Proportion {
    /// The part of the width (2/5 of it, none of it).
    pub part: Ratio,
    /// What is added, or taken away where negative.
    pub plus: Length,
}

impl Proportion {
    /// A length that does not follow the width.
    pub fn fixed(plus: Length) -> Self {
        Self {
            part: Ratio::new_raw(0, 1),
            plus,
        }
    }

    /// The length for a panel of this width, to the nearest nanometre.
    pub fn at(self, width: Length) -> Length {
        width.scaled(self.part) + self.plus
    }
}

/// An outline as the maker wrote it.
///
/// `across` runs from the left edge of a whole outline, or from the fold of a half one; `down`
/// from the heading line. In a half outline the width that proportions follow is half the flat
/// width. The heading line itself is straight and is not written.
#[derive(Clone, PartialEq, Debug)]
pub struct Outline {
    /// The name the maker gave it.
    pub name: String,
    /// Whether only the right half is drawn, from the fold outward, and mirrored about it.
    pub half: bool,
    /// The steps, from the start to the heading line.
    pub steps: Vec<OutlineStep>,
}

/// One written step of an outline. Each is numbered by its place in [`Outline::steps`].
#[derive(Clone, PartialEq, Debug)]
pub enum OutlineStep {
    /// Where the outline starts; the first step of every outline.
    From {
        /// Across.
        across: Proportion,
        /// Down.
        down: Proportion,
    },
    /// A straight line to a point.
    To {
        /// Across.
        across: Proportion,
        /// Down.
        down: Proportion,
    },
    /// A straight line by so much across (negative: back) and so much down (negative: up).
    By {
        /// Across.
        across: Proportion,
        /// Down.
        down: Proportion,
    },
    /// A notch cut upward into a level edge: a line to its near corner, in to the tip and out.
    Notch {
        /// The middle of its mouth, across.
        across: Proportion,
        /// The level edge, down.
        down: Proportion,
        /// Width of its mouth.
        width: Proportion,
        /// How far it goes in.
        depth: Proportion,
        /// Square (four corners) or pointed (three).
        square: bool,
    },
    /// A straight line up to the heading line.
    UpToHeading,
}

impl Outline {
    /// The straight outline, used where a panel names none: down both sides and level below.
    pub fn straight(drop: Length) -> Self {
        let whole = Proportion {
            part: Ratio::new_raw(1, 1),
            plus: Length::ZERO,
        };
        let (left, lower) = (Proportion::fixed(Length::ZERO), Proportion::fixed(drop));
        Self {
            name: String::from("straight"),
            half: false,
            steps: vec![
                OutlineStep::From {
                    across: left,
                    down: lower,
                },
                OutlineStep::To {
                    across: whole,
                    down: lower,
                },
                OutlineStep::UpToHeading,
            ],
        }
    }
}
