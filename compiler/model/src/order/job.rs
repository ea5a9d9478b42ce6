//! A job as ordered: everything named and measured, nothing worked out.

use pelmet_measure::{Length, Ratio};

use crate::closed_set::closed_set;
use crate::{Fabric, Heading, Layer, Making, NotionOrder, Outline, PleatRule, SupportOrder};

/// Several windows made together from the same cloths.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Job {
    /// The cloths; panels name them by index.
    pub fabrics: Vec<Fabric>,
    /// The notions that are described, in the order written; panels name them by name.
    pub notions: Vec<NotionOrder>,
    /// The windows in the order written.
    pub windows: Vec<WindowOrder>,
    /// What an hour of work costs, in the job's currency.
    pub labour_per_hour: Option<Ratio>,
    /// The part of the cost that is added to it in a quote (0.4 = 40 percent).
    pub markup: Option<Ratio>,
}

/// One window and what dresses it.
#[derive(Clone, PartialEq, Debug)]
pub struct WindowOrder {
    /// The name the maker gave it.
    pub name: String,
    /// Width and height of the opening.
    pub opening: Option<(Length, Length)>,
    /// The rod or board.
    pub support: SupportOrder,
    /// Height of its top above the floor.
    pub top_at: Option<Length>,
    /// Whether the public comes into the room, so that its cloth must resist flame.
    pub public_room: bool,
    /// The return at each end, covered by the end panels beside the rod's own length.
    pub returns: Length,
    /// How far neighbours in the row lie over each other.
    pub overlap: Length,
    /// The panels; the row names them by index, each as often as it hangs.
    pub panels: Vec<PanelOrder>,
    /// The panels along the rod, left to right.
    pub row: Vec<usize>,
    /// Panels lying over the joins of the row, one of each over every join.
    pub over_joins: Vec<usize>,
    /// A motif to be placed on a panel.
    pub motif: Option<Motif>,
}

/// A motif of the print, centred across a panel at a height.
#[derive(Copy, Clone, PartialEq, Debug)]
pub struct Motif {
    /// The panel, by index.
    pub panel: usize,
    /// How far the motif's centre lies below the heading line.
    pub below_heading: Length,
}

/// One panel as ordered.
#[derive(Clone, PartialEq, Debug)]
pub struct PanelOrder {
    /// The name the maker gave it.
    pub name: String,
    /// What is known of its width.
    pub width: WidthOrder,
    /// Finished length from the heading line (top of the rod, front edge of the board) down.
    pub drop: Length,
    /// Its outline below the heading line.
    pub outline: Outline,
    /// How it is pleated; `None` for a panel that hangs flat, or gathered where it has a fullness.
    pub pleats: Option<PleatRule>,
    /// How it hangs.
    pub heading: Heading,
    /// How it is made up.
    pub making: Making,
    /// The face cloth, by index.
    pub face: usize,
    /// The interlining cloth, by index.
    pub interlining: Option<usize>,
    /// The lining cloth, by index.
    pub lining: Option<usize>,
    /// The cloth of its bands, by index.
    pub band: Option<usize>,
    /// By how much it must cover a join on each side, where it lies over joins.
    pub covers: Option<Length>,
    /// Whether its pieces are cut on the fold.
    pub cut: Cut,
}

impl PanelOrder {
    /// The cloth of a layer, by index; `None` for a layer the panel does not have.
    #[must_use]
    pub fn cloth(&self, layer: Layer) -> Option<usize> {
        match layer {
            Layer::Face => Some(self.face),
            Layer::Interlining => self.interlining,
            Layer::Lining => self.lining,
            Layer::Band(_) => self.band,
        }
    }
}

closed_set! {
    /// How a piece is cut.
    pub enum Cut {
        /// On the fold of doubled cloth: drawn at half its width.
        OnFold = "on fold",
        /// From cloth lying open: drawn at its whole width.
        Open = "open",
    }
}

/// What is known of a panel's width. Any one is enough; two must agree.
#[derive(Copy, Clone, PartialEq, Debug, Default)]
pub struct WidthOrder {
    /// As it hangs.
    pub finished: Option<FinishedOrder>,
    /// Made up, before pleating.
    pub flat: Option<Length>,
    /// As the shears follow it, face cloth, whole width.
    pub cut: Option<Length>,
    /// Flat width over finished width.
    pub fullness: Option<Ratio>,
}

/// The finished width as ordered.
#[derive(Copy, Clone, PartialEq, Debug)]
pub enum FinishedOrder {
    /// This wide.
    Exact(Length),
    /// An equal share of what the row leaves, between these limits.
    Fill {
        /// At least this wide.
        least: Option<Length>,
        /// At most this wide.
        most: Option<Length>,
    },
}
