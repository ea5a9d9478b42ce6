//! Stretches of bolt that are folded on the table, and the pieces cut from doubled cloth.

use pelmet_bolt::{BoltSection, Placed};
use pelmet_measure::Length;
use pelmet_packet::{Fold, Section};

use super::printer::Printer;
use crate::layout::{CutPiece, LaidCloth};

/// The stretches of every bolt.
pub(super) fn sections(laid: &LaidCloth, printer: &Printer<'_>) -> Vec<Section> {
    let usable = laid.to_lay.cloth.usable_width;
    let fold = |at: Length, turned_over: Length| Fold {
        at: printer.mark(at),
        edge_comes_to: printer.mark(turned_over),
    };
    let section = |of: &BoltSection| Section {
        bolt: of.bolt.saturating_add(1),
        from: printer.cut(of.from),
        to: printer.cut(of.to),
        left_fold: of.left_fold.map(|at| fold(at, at * 2)),
        right_fold: of.right_fold.map(|at| fold(at, at * 2 - usable)),
    };
    laid.layout.sections.iter().map(section).collect()
}

/// The middle of a piece cut on the fold: where the cloth is folded for it, or else where its middle
/// lies on the open cloth.
pub(super) fn middle(
    placed: &Placed,
    cut: &CutPiece,
    sections: &[BoltSection],
) -> (Option<Length>, Option<Length>) {
    let piece = &cut.piece;
    let middle = if cut.railroaded {
        placed.along + piece.length.divided(2)
    } else {
        placed.across + piece.width.divided(2)
    };
    if sections.iter().any(|of| of.doubles(piece, placed)) {
        (Some(middle), None)
    } else {
        (None, cut.on_fold.then_some(middle))
    }
}
