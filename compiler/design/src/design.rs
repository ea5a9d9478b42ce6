//! A resolved design: the job as ordered, and the way back from each part of it to its text.

use std::collections::{BTreeMap, BTreeSet};

use pelmet_diagnostics::{FileId, Span};
use pelmet_measure::{Length, Mass, Money, Style};
use pelmet_model::{Figure, Job};

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
    pub ways: Ways,
    /// The warnings the maker accepts.
    pub acceptances: Vec<Accepted>,
}

/// A warning the maker accepts where it arises.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Accepted {
    /// The line that accepts it.
    pub span: Span,
    /// The slug of the warning's code.
    pub code: String,
    /// Why.
    pub reason: String,
    /// The file or block it holds for.
    pub within: Span,
}

/// Where each part of a job was written; windows and cloths by their index in the job.
#[derive(Clone, Debug, Default)]
pub struct Ways {
    /// The name of each cloth.
    pub fabrics: Vec<Span>,
    /// The windows.
    pub windows: Vec<WindowWay>,
    /// The files of the standard library, in which no maker mends anything.
    pub library: BTreeSet<FileId>,
}

/// Where a window or a panel was written.
#[derive(Clone, Debug)]
pub struct WrittenItem {
    /// Its name.
    pub name: Span,
    /// The value of each property, by key; for a window those of its treatment too.
    pub properties: BTreeMap<String, Span>,
}

/// Where a window was written.
#[derive(Clone, Debug)]
pub struct WindowWay {
    /// Its name and its properties, the treatment's (row, over joins) included.
    pub item: WrittenItem,
    /// Its panels, by their index in the window.
    pub panels: Vec<PanelWay>,
}

/// Where a panel was written.
#[derive(Clone, Debug)]
pub struct PanelWay {
    /// Its name and its properties.
    pub item: WrittenItem,
    /// The written steps of its pleat rule, by their number.
    pub pleat_steps: Vec<Span>,
    /// The written steps of its outline, by their number.
    pub outline_steps: Vec<Span>,
    /// Where each number of the heading was written, by key ("tail", "pocket").
    pub heading: BTreeMap<String, Span>,
    /// Where each number of the making method was written, by key ("turning opening").
    pub making: BTreeMap<String, Span>,
    /// The steps of its making method, each with its sentences.
    pub making_steps: Vec<Vec<SentencePlace>>,
}

/// Where the words of a making step stand.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct SentencePlace {
    /// The words, with their quotes.
    pub words: Span,
    /// The figures named in them, each with the place of its name.
    pub figures: Vec<(Figure, Span)>,
}

impl WrittenItem {
    /// Whether a property was written.
    #[must_use]
    pub fn states(&self, key: &str) -> bool {
        self.properties.contains_key(key)
    }

    /// Where a property was written, or else the name.
    #[must_use]
    pub fn property(&self, key: &str) -> Span {
        self.properties.get(key).copied().unwrap_or(self.name)
    }
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
