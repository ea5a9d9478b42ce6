//! How a panel meets its rod or board.

use pelmet_measure::Length;

/// The top of a panel and how it hangs.
#[derive(Clone, PartialEq, Debug)]
pub enum Heading {
    /// Folded over the rod; the tail runs down the back from the rod's centre line.
    OverRod {
        /// Length of the tail.
        tail: Length,
        /// What holds the tail.
        fastener: Option<FastenerOrder>,
    },
    /// A pocket the rod runs through.
    RodPocket {
        /// Depth of the pocket, flat; `None` means half the rod's circumference plus the ease.
        pocket: Option<Length>,
        /// What is added to half the circumference so that the cloth slides.
        ease: Length,
        /// The frill standing above the pocket.
        above: Length,
        /// The raw edge turned under at the back of the pocket.
        turn: Length,
    },
    /// Laid on top of a board and fastened there; the drop hangs from its front edge.
    OnBoard {
        /// How far the panel lies back over the board; `None` means the board's depth.
        lap: Option<Length>,
        /// What holds it.
        fastener: Option<FastenerOrder>,
    },
    /// Hung from its own top edge, nothing added.
    Plain,
}

impl Heading {
    /// What holds it, where anything does.
    pub fn fastener(&self) -> Option<&FastenerOrder> {
        match self {
            Self::OverRod { fastener, .. } | Self::OnBoard { fastener, .. } => fastener.as_ref(),
            Self::RodPocket { .. } | Self::Plain => None,
        }
    }
}

/// A strip of fastener along the heading.
#[derive(Clone, PartialEq, Debug)]
pub struct FastenerOrder {
    /// What it is called ("hook-and-loop").
    pub name: String,
    /// Width of the strip.
    pub width: Length,
    /// How far it stays clear of each side edge.
    pub inset: Length,
}
