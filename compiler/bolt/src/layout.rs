//! Where every piece lies, and how much cloth that takes.

use std::collections::BTreeMap;

use pelmet_measure::Length;

use crate::rows::out_of_rows;
use crate::section::{Section, bring_to_edges, sections};
use crate::{Cloth, Piece};

/// Every piece in its place, and the cloth that takes.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Layout {
    /// The pieces in cutting order: bolt by bolt, along each bolt, then across it.
    pub placed: Vec<Placed>,
    /// What is used of each bolt; one entry where the bolt has no end, none where nothing is cut. A
    /// bolt whose flaws leave no room for any piece is passed over and nothing of it used.
    pub bolts: Vec<BoltUsed>,
    /// Which stretches of the bolts are folded on the table and which lie open, in order; none where
    /// no piece is cut on the fold.
    pub sections: Vec<Section>,
    /// The length used of all bolts together, each to the end of its last piece.
    pub exact: Length,
    /// The length bought of all bolts together, each rounded up to the buying step.
    pub bought: Length,
    /// The length the workroom rule of thumb takes: each kind of piece on its own, as many side
    /// by side as the width holds, every cut rounded up to the repeat. Never less than `exact`.
    pub rule_of_thumb: Length,
    /// A length no layout can beat: never more than `exact`.
    pub at_least: Length,
    /// Whether the search for a shorter layout was broken off by whoever watched it.
    pub stopped_early: bool,
}

impl Layout {
    /// Whether no layout on this cloth can buy less.
    #[must_use]
    pub fn cannot_be_beaten(&self, cloth: &Cloth) -> bool {
        self.bought <= bought_at_least(cloth, self.at_least)
    }
}

/// One copy of a piece in its place.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct Placed {
    /// Which piece, by index.
    pub piece: usize,
    /// Which of its copies, from 0.
    pub copy: u32,
    /// Which bolt it is cut from, from 0.
    pub bolt: u32,
    /// From the left end of the usable width to the piece's left edge.
    pub across: Length,
    /// From the start of the bolt to the edge of the piece that is nearer to it.
    pub along: Length,
    /// Whether it lies turned end for end; otherwise its top is nearer to the start of the bolt.
    pub turned: bool,
}

/// What is used of one bolt.
#[derive(Copy, Clone, PartialEq, Eq, Debug, Default)]
pub struct BoltUsed {
    /// To the end of its last piece.
    pub exact: Length,
    /// The same rounded up to the buying step, but never more than the bolt holds.
    pub bought: Length,
}

/// Pieces in their places, not yet weighed against the rule and the bound.
pub(crate) struct Arrangement {
    placed: Vec<Placed>,
    bolts: Vec<BoltUsed>,
    out_of_rows: usize,
}

impl Arrangement {
    /// The arrangement of these pieces on this cloth.
    pub(crate) fn of(cloth: &Cloth, pieces: &[Piece], mut placed: Vec<Placed>) -> Arrangement {
        placed.sort_by_key(cutting_order);
        let ends = ends_of_bolts(pieces, &placed);
        let bolts = ends.last_key_value().map(|(last, _)| 0..=*last);
        let used = |bolt| {
            let exact = ends.get(&bolt).copied().unwrap_or_default();
            let bought = bought(cloth, exact);
            BoltUsed { exact, bought }
        };
        let bolts = bolts.into_iter().flatten().map(used).collect();
        Arrangement {
            out_of_rows: out_of_rows(pieces, &placed),
            placed,
            bolts,
        }
    }

    /// The pieces in their places.
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
    pub(crate) fn into_layout(
        self,
        (cloth, pieces): (&Cloth, &[Piece]),
        rule_of_thumb: Length,
        at_least: Length,
    ) -> Layout {
        let (exact, bought) = (self.exact(), self.bought());
        let Arrangement {
            mut placed, bolts, ..
        } = self;
        bring_to_edges(cloth, pieces, &mut placed);
        placed.sort_by_key(cutting_order);
        Layout {
            sections: sections(cloth, pieces, &placed),
            placed,
            bolts,
            exact,
            bought,
            rule_of_thumb,
            at_least,
            stopped_early: false,
        }
    }
}

/// Bolt by bolt, along each bolt, then across it.
fn cutting_order(it: &Placed) -> (u32, Length, Length, usize, u32) {
    (it.bolt, it.along, it.across, it.piece, it.copy)
}

fn ends_of_bolts(pieces: &[Piece], placed: &[Placed]) -> BTreeMap<u32, Length> {
    let mut ends = BTreeMap::new();
    for it in placed {
        let length = pieces
            .get(it.piece)
            .map_or(Length::ZERO, |piece| piece.length);
        let end: &mut Length = ends.entry(it.bolt).or_default();
        *end = (*end).max(it.along + length);
    }
    ends
}

/// What is bought of one bolt to use so much of it.
pub(crate) fn bought(cloth: &Cloth, exact: Length) -> Length {
    let rounded = exact.round_up_to(cloth.buying_step);
    cloth.bolt_length.map_or(rounded, |bolt| rounded.min(bolt))
}

/// What must be bought for a length used, whatever the bolts.
pub(crate) fn bought_at_least(cloth: &Cloth, length: Length) -> Length {
    if cloth.bolt_length.is_some() {
        length
    } else {
        length.round_up_to(cloth.buying_step)
    }
}
