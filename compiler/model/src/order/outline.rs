//! The outline of a panel below its heading line, drawn in proportion to its width.

use std::collections::BTreeMap;

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
    /// The names given to points: each to the point where the step of this number ends.
    pub names: BTreeMap<usize, String>,
}

/// One written step of an outline. Each is numbered by its place in [`Outline::steps`].
#[derive(Clone, PartialEq, Debug)]
pub enum OutlineStep {
    /// Where the outline starts; the first step of every outline.
    From {
        /// From the left edge, or from the fold where one half is drawn.
        across: Proportion,
        /// From the heading line.
        down: Proportion,
    },
    /// A straight line to a point.
    To {
        /// Where it ends, from the left edge or from the fold.
        across: Proportion,
        /// Where it ends, from the heading line.
        down: Proportion,
    },
    /// A straight line by so much across (negative: back) and so much down (negative: up).
    By {
        /// To the right of where it begins.
        across: Proportion,
        /// Below where it begins.
        down: Proportion,
    },
    /// An arc of a circle to a point.
    ArcTo {
        /// Where it ends, from the left edge or from the fold.
        across: Proportion,
        /// Where it ends, from the heading line.
        down: Proportion,
        /// Which of all such arcs.
        arc: ArcOrder,
    },
    /// A cubic curve to a point, drawn toward two others on its way.
    CurveTo {
        /// Where it ends, from the left edge or from the fold.
        across: Proportion,
        /// Where it ends, from the heading line.
        down: Proportion,
        /// The point it sets out toward, across and down.
        first: (Proportion, Proportion),
        /// The point it comes in from, across and down.
        second: (Proportion, Proportion),
    },
    /// Equal arcs side by side along a straight line to a point.
    Scallops {
        /// Where it ends, from the left edge or from the fold.
        across: Proportion,
        /// Where it ends, from the heading line.
        down: Proportion,
        /// How many.
        number: ScallopNumber,
        /// How far each swells from the line.
        depth: Proportion,
        /// Whether they swell away from the panel.
        outward: bool,
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

/// Which of the arcs between two points is meant.
#[derive(Copy, Clone, PartialEq, Debug)]
pub enum ArcOrder {
    /// The one through a third point.
    Through {
        /// From the left edge, or from the fold.
        across: Proportion,
        /// From the heading line.
        down: Proportion,
    },
    /// The one that swells so far from the straight line.
    Bulge {
        /// How far.
        bulge: Proportion,
        /// Whether away from the panel.
        outward: bool,
    },
    /// The shorter one of this radius.
    Radius {
        /// Of the circle the arc is part of.
        radius: Proportion,
        /// Whether it swells away from the panel.
        outward: bool,
    },
    /// The one that is level where it starts: the point of the compass stands right above or below.
    StartingLevel,
    /// The one that is level where it ends.
    EndingLevel,
}

/// How the number of scallops is said.
#[derive(Copy, Clone, PartialEq, Debug)]
pub enum ScallopNumber {
    /// So many.
    Count(u32),
    /// As many as come nearest to this width.
    About(Proportion),
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
            names: BTreeMap::new(),
        }
    }
}
