//! Pieces in their places before the layout is finished.

use pelmet_measure::Length;

use super::bands::out_of_rows;
use super::bought::{BoltLengths, lengths_of_bolts};
use super::edges::bring_to_edges;
use super::finished::Layout;
use super::placed::Placed;
use super::sections::sections;
use crate::given::{LayoutCloth, LayoutPiece};

/// Pieces in their places, not yet weighed against the rule and the bound.
pub(crate) struct Arrangement {
    placed: Vec<Placed>,
    bolts: Vec<BoltLengths>,
    out_of_rows: usize,
}

impl Arrangement {
    /// The arrangement of these pieces on this cloth.
    pub(crate) fn of(
        cloth: &LayoutCloth,
        pieces: &[LayoutPiece],
        mut placed: Vec<Placed>,
    ) -> Arrangement {
        placed.sort_by_key(Placed::cutting_order);
        Arrangement {
            out_of_rows: out_of_rows(pieces, &placed),
            bolts: lengths_of_bolts(cloth, pieces, &placed),
            placed,
        }
    }

    /// The pieces in their places, in cutting order.
    pub(crate) fn placed(&self) -> &[Placed] {
        &self.placed
    }

    /// The length used of all bolts together.
    pub(crate) fn exact(&self) -> Length {
        self.bolts.iter().map(|bolt| bolt.exact).sum()
    }

    /// The length bought of all bolts together.
    pub(crate) fn bought(&self) -> Length {
        self.bolts.iter().map(|bolt| bolt.bought).sum()
    }

    /// How many pieces do not lie in a row that can be cut off straight across the cloth and then
    /// apart with cuts along it.
    pub(crate) fn out_of_rows(&self) -> usize {
        self.out_of_rows
    }

    /// The finished layout, with pieces cut on the fold where the cloth can be folded.
    ///
    /// Only here are pieces brought to the edges. Before, they lie as they pack best, and no layout is
    /// passed over for the folding: moving pieces across within their row takes no length.
    pub(crate) fn into_layout(
        self,
        (cloth, pieces): (&LayoutCloth, &[LayoutPiece]),
        rule_of_thumb: Length,
        lower_bound: Length,
    ) -> Layout {
        let (exact, bought) = (self.exact(), self.bought());
        let Arrangement {
            mut placed, bolts, ..
        } = self;
        bring_to_edges(cloth, pieces, &mut placed);
        placed.sort_by_key(Placed::cutting_order);
        Layout {
            sections: sections(cloth, pieces, &placed),
            placed,
            bolts,
            exact,
            bought,
            rule_of_thumb,
            lower_bound,
            stopped_early: false,
        }
    }
}
