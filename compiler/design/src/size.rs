//! The sizes that can be expected, by their words.

use crate::closed_sets::ClosedSet;
use crate::design::{FabricSize, PanelSize, WindowSize};

/// What an expectation looks at, as its words say.
#[derive(Copy, Clone, PartialEq, Eq)]
pub(crate) enum Size {
    /// Of a panel.
    Panel(PanelSize),
    /// Of a cloth.
    Fabric(FabricSize),
    /// Of a window.
    Window(WindowSize),
    /// Of a panel, a window or the job, as the name says.
    Weight,
    /// Of a cloth or the job.
    Cost,
    /// Of the job.
    Quote,
}

/// What stands for the whole job.
pub(crate) const JOB: &str = "job";

impl ClosedSet for Size {
    const ALL: &'static [Self] = &[
        Self::Panel(PanelSize::FinishedWidth),
        Self::Panel(PanelSize::FlatWidth),
        Self::Panel(PanelSize::CutWidth),
        Self::Panel(PanelSize::CutLength),
        Self::Panel(PanelSize::MadeLength),
        Self::Panel(PanelSize::Drop),
        Self::Panel(PanelSize::Pleats),
        Self::Panel(PanelSize::Layers),
        Self::Fabric(FabricSize::Bought),
        Self::Fabric(FabricSize::Exact),
        Self::Window(WindowSize::Covered),
        Self::Panel(PanelSize::ThickestStack),
        Self::Panel(PanelSize::Tape),
        Self::Weight,
        Self::Cost,
        Self::Quote,
    ];

    fn word(self) -> &'static str {
        match self {
            Self::Panel(PanelSize::FinishedWidth) => "finished width",
            Self::Panel(PanelSize::FlatWidth) => "flat width",
            Self::Panel(PanelSize::CutWidth) => "cut width",
            Self::Panel(PanelSize::CutLength) => "cut length",
            Self::Panel(PanelSize::MadeLength) => "made length",
            Self::Panel(PanelSize::Drop) => "drop",
            Self::Panel(PanelSize::Pleats) => "pleats",
            Self::Panel(PanelSize::Layers) => "layers",
            Self::Panel(PanelSize::ThickestStack) => "thickest stack",
            Self::Panel(PanelSize::Tape) => "tape",
            Self::Fabric(FabricSize::Bought) => "bought",
            Self::Fabric(FabricSize::Exact) => "exact",
            Self::Window(WindowSize::Covered) => "covered",
            Self::Weight | Self::Panel(PanelSize::Weight) | Self::Window(WindowSize::Weight) => {
                "weight"
            }
            Self::Cost | Self::Fabric(FabricSize::Cost) => "cost",
            Self::Quote => "quote",
        }
    }
}

impl Size {
    /// Whether it is a number of things.
    pub(crate) fn counts(self) -> bool {
        matches!(self, Self::Panel(PanelSize::Pleats | PanelSize::Layers))
    }
}
