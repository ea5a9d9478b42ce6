//! What a treatment hangs from.

use pelmet_measure::Length;

use crate::closed_set::closed_set;

/// A rod or a board.
#[derive(Clone, PartialEq, Debug)]
pub enum SupportOrder {
    /// A round rod.
    Rod(Rod),
    /// A flat board.
    Board(Board),
}

/// A round rod on brackets.
#[derive(Clone, PartialEq, Debug)]
pub struct Rod {
    /// The name the maker gave it.
    pub name: String,
    /// The length the panels cover.
    pub length: Length,
    /// Outside diameter.
    pub diameter: Length,
    /// How far it stands off the wall.
    pub projection: Option<Length>,
    /// Wall of a tube; `None` for a solid rod.
    pub wall: Option<Length>,
    /// What it is made of, in the maker's words ("brass").
    pub material: Option<String>,
    /// How many brackets carry it.
    pub brackets: Option<u32>,
    /// How far it may sag between brackets; `None` for the usual limit.
    pub sag_limit: Option<Length>,
}

/// A board fixed to the wall, the treatment fastened along its front edge or its top.
#[derive(Clone, PartialEq, Debug)]
pub struct Board {
    /// The name the maker gave it.
    pub name: String,
    /// The length the panels cover.
    pub length: Length,
    /// From the wall to the front edge.
    pub depth: Length,
    /// How thick the board is.
    pub thickness: Option<Length>,
}

impl SupportOrder {
    /// Its kind.
    #[must_use]
    pub const fn kind(&self) -> SupportKind {
        match self {
            Self::Rod(_) => SupportKind::Rod,
            Self::Board(_) => SupportKind::Board,
        }
    }

    /// The name the maker gave it.
    pub fn name(&self) -> &str {
        match self {
            Self::Rod(rod) => &rod.name,
            Self::Board(board) => &board.name,
        }
    }

    /// The length the panels cover.
    pub fn length(&self) -> Length {
        match self {
            Self::Rod(rod) => rod.length,
            Self::Board(board) => board.length,
        }
    }

    /// How far the front stands off the wall.
    pub fn projection(&self) -> Option<Length> {
        match self {
            Self::Rod(rod) => rod.projection,
            Self::Board(board) => Some(board.depth),
        }
    }
}

closed_set! {
    /// The kinds of support. The word of each is also the property that names it.
    pub enum SupportKind {
        /// A round rod.
        Rod = "rod",
        /// A flat board.
        Board = "board",
    }
}
