//! What the sums find: mistakes, warnings and limits, by window, panel and step.

mod making;
mod outline;
mod piece;
mod pleats;
mod row;

pub use making::MakingMatter;
pub use outline::{ArcFault, OutlineLimit, OutlineMatter};
pub use piece::{PanelMeasure, PieceMatter};
pub use pleats::PleatMatter;
pub use row::{RowMatter, THIN_COVER};

/// One thing found, and where.
#[derive(Clone, PartialEq, Debug)]
pub struct Finding {
    /// What it concerns.
    pub subject: Subject,
    /// What was found.
    pub matter: Matter,
}

/// What a finding concerns.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub enum Subject {
    /// A window, by index in the job.
    Window(usize),
    /// A panel of a window, both by index.
    Panel {
        /// The window, by its index in the job.
        window: usize,
        /// The panel, by its index in the window.
        panel: usize,
    },
}

/// What was found, by the part of the sums that found it.
#[derive(Clone, PartialEq, Debug)]
pub enum Matter {
    /// In how a panel is pleated.
    Pleats(PleatMatter),
    /// In how a panel is shaped.
    Outline(OutlineMatter),
    /// In how the panels of a window hang side by side, and on what.
    Row(RowMatter),
    /// In the pieces or the heading.
    Piece(PieceMatter),
    /// In what the making method asks of the panel.
    Making(MakingMatter),
}

impl From<PleatMatter> for Matter {
    fn from(matter: PleatMatter) -> Self {
        Self::Pleats(matter)
    }
}

impl From<OutlineMatter> for Matter {
    fn from(matter: OutlineMatter) -> Self {
        Self::Outline(matter)
    }
}

impl From<RowMatter> for Matter {
    fn from(matter: RowMatter) -> Self {
        Self::Row(matter)
    }
}

impl From<PieceMatter> for Matter {
    fn from(matter: PieceMatter) -> Self {
        Self::Piece(matter)
    }
}

impl From<MakingMatter> for Matter {
    fn from(matter: MakingMatter) -> Self {
        Self::Making(matter)
    }
}
