//! What a design is worked out for, and how long layouts are searched for that.

use pelmet_design::{Design, ExpectedSubject, JobSize, PanelSize, WindowSize};

/// What a design is worked out for.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(crate) enum Purpose {
    /// What there is to tell of it alone.
    Diagnostics,
    /// Its packet, with so many times the usual effort for short layouts.
    Packet {
        /// How many times the usual effort.
        effort: u32,
    },
}

/// No search at all: enough to know whether pieces can be laid.
pub(crate) const NO_SEARCH: u32 = 0;

/// The usual effort, once.
pub(crate) const USUAL: u32 = 1;

impl Purpose {
    /// How many times the usual effort is spent on a search whose result a diagnostic may tell, or none
    /// can.
    ///
    /// Where only the diagnostics are wanted, what none of them can tell is not looked for.
    pub(crate) fn effort(self, is_told: bool) -> u32 {
        match self {
            Self::Packet { effort } => effort,
            Self::Diagnostics if is_told => USUAL,
            Self::Diagnostics => NO_SEARCH,
        }
    }
}

/// Whether a diagnostic may tell how much of a cloth is bought: what the design expects follows from it.
pub(crate) fn expects_length(design: &Design, cloth: usize) -> bool {
    let follows = |subject: &ExpectedSubject| match subject {
        ExpectedSubject::Fabric { fabric, size: _ } => *fabric == cloth,
        ExpectedSubject::Job(JobSize::Cost | JobSize::Quote) => true,
        ExpectedSubject::Job(JobSize::Weight)
        | ExpectedSubject::Window { .. }
        | ExpectedSubject::Panel { .. } => false,
    };
    let mut lines = design.expectations.iter();
    lines.any(|line| follows(&line.subject))
}

/// Whether the design expects a weight: of a panel that is joined, the seams weigh too.
pub(crate) fn expects_weight(design: &Design) -> bool {
    let is_weight = |subject: &ExpectedSubject| match subject {
        ExpectedSubject::Panel { size, .. } => *size == PanelSize::Weight,
        ExpectedSubject::Window { size, .. } => *size == WindowSize::Weight,
        ExpectedSubject::Job(size) => *size == JobSize::Weight,
        ExpectedSubject::Fabric { .. } => false,
    };
    let mut lines = design.expectations.iter();
    lines.any(|line| is_weight(&line.subject))
}
