//! A resolved design: the job as ordered, and the way back from each part of it to its text.

use pelmet_diagnostics::Span;
use pelmet_measure::{Length, Mass, Money, Style};
use pelmet_model::Job;

use crate::source_map::SourceMap;

/// A design with every name, template and sum resolved. What is left to do is workroom sums.
#[derive(Clone, Debug)]
pub struct Design {
    /// What the sheets are headed with.
    pub title: String,
    /// How lengths are written and rounded.
    pub style: Style,
    /// The sign or letters of the currency prices are in.
    pub currency: Option<String>,
    /// What is ordered.
    pub job: Job,
    /// What the design expects of its own answer.
    pub expectations: Vec<Expectation>,
    /// Where each part of the job was written.
    pub source_map: SourceMap,
    /// The warnings the maker accepts.
    pub suppressions: Vec<Suppression>,
}

/// A warning the maker accepts where it arises.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Suppression {
    /// The line that accepts it.
    pub span: Span,
    /// The slug of the warning's code.
    pub code: String,
    /// Why.
    pub reason: String,
    /// The file or block it holds for.
    pub within: Span,
}

/// What a design expects of its own answer: its own test.
#[derive(Clone, PartialEq, Debug)]
pub struct Expectation {
    /// The whole line.
    pub span: Span,
    /// The line as it was written.
    pub wording: String,
    /// What is looked at.
    pub subject: ExpectedSubject,
    /// What it should be.
    pub bound: ExpectedBound,
}

/// What an expectation looks at.
#[derive(Clone, PartialEq, Debug)]
pub enum ExpectedSubject {
    /// A size of a panel, in one window or in every window that has such a panel.
    Panel {
        /// The window, by index.
        window: Option<usize>,
        /// The panel's name.
        panel: String,
        /// Which size.
        size: PanelSize,
    },
    /// A length of cloth.
    Fabric {
        /// The cloth, by index.
        fabric: usize,
        /// Which length.
        size: FabricSize,
    },
    /// A size of a window.
    Window {
        /// The window, by index.
        window: usize,
        /// Which size.
        size: WindowSize,
    },
    /// What the whole job comes to.
    Job(JobSize),
}

/// Sizes of a panel that can be expected.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum PanelSize {
    /// As it hangs.
    FinishedWidth,
    /// Before pleating.
    FlatWidth,
    /// Of the face piece.
    CutWidth,
    /// Of the face piece.
    CutLength,
    /// Heading included.
    MadeLength,
    /// From the heading line down.
    Drop,
    /// How many pleats.
    Pleats,
    /// The most layers anywhere.
    Layers,
    /// What one such panel weighs.
    Weight,
    /// How thick its thickest stack is.
    ThickestStack,
    /// The tape along its edges.
    Tape,
}

/// Lengths of cloth that can be expected.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum FabricSize {
    /// Rounded up as it is bought.
    Bought,
    /// Exact.
    Exact,
    /// What its bought length costs.
    Cost,
}

/// Sizes of a window that can be expected.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum WindowSize {
    /// What the row covers.
    Covered,
    /// What all its panels weigh.
    Weight,
}

/// What can be expected of the whole job.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum JobSize {
    /// What all that is made weighs.
    Weight,
    /// What it costs to make.
    Cost,
    /// What is asked for it.
    Quote,
}

/// What a size should be.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum ExpectedBound {
    /// This much, give or take.
    Equals {
        /// How much.
        value: Expected,
        /// How far it may be out; zero unless said.
        within: Expected,
    },
    /// No more than this.
    AtMost(Expected),
    /// No less than this.
    AtLeast(Expected),
    /// From the first to the second.
    Between(Expected, Expected),
}

/// A value that can be expected.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum Expected {
    /// A length.
    Length(Length),
    /// A count.
    Count(u32),
    /// A weight.
    Weight(Mass),
    /// An amount of money.
    Money(Money),
}

impl Expected {
    /// Nothing, of the same kind.
    #[must_use]
    pub fn nothing(self) -> Self {
        self.with_units(0)
    }

    /// The value in the smallest units of its kind: nanometres, pieces, micrograms, hundredths.
    #[must_use]
    pub fn units(self) -> i64 {
        match self {
            Self::Length(length) => length.nanometres(),
            Self::Count(count) => count.into(),
            Self::Weight(weight) => weight.micrograms(),
            Self::Money(money) => money.hundredths(),
        }
    }

    /// So many of those units, of the same kind; a count is never less than none.
    #[must_use]
    pub fn with_units(self, units: i64) -> Self {
        match self {
            Self::Length(_) => Self::Length(Length::from_nanometres(units)),
            Self::Count(_) => Self::Count(u32::try_from(units.max(0)).unwrap_or(u32::MAX)),
            Self::Weight(_) => Self::Weight(Mass::from_micrograms(units)),
            Self::Money(_) => Self::Money(Money::from_hundredths(units)),
        }
    }

    /// Whether two values are of one kind.
    #[must_use]
    pub fn is_like(self, other: Self) -> bool {
        std::mem::discriminant(&self) == std::mem::discriminant(&other)
    }
}
