//! The independent checker: whether a layout keeps its promises.
//!
//! It shares no sum with the code that lays, so that one mistake does not hide another.

mod apart;
mod checked;
mod finding;
mod print;
mod sections;
mod shapes;
mod sums;
mod triangles;

use std::collections::BTreeSet;

use self::checked::CheckedPiece;
pub use self::finding::{BoltDirection, CheckerFinding};
use crate::given::{LayoutCloth, LayoutPiece};
use crate::layout::Layout;

/// Looks for every promise that `layout` breaks; a sound layout gives no finding.
///
/// Nothing about a layout is taken for granted: each look stands alone, and what one of them finds broken
/// the next can still read. Only what is to be cut at all is settled first, for a place that holds nothing
/// has no size. Where several pieces clash in one spot, at least one is told of, not every pair.
pub fn check(cloth: &LayoutCloth, pieces: &[LayoutPiece], layout: &Layout) -> Vec<CheckerFinding> {
    let mut findings = Vec::new();
    let laid = pieces_laid(pieces, layout, &mut findings);
    check_quantities(pieces, &laid, &mut findings);
    for it in &laid {
        check_bounds(cloth, it, &mut findings);
        check_flaws(cloth, it, &mut findings);
        print::check(cloth, it, &mut findings);
        if it.placed.orientation.is_turned() && cloth.one_way {
            findings.push(CheckerFinding::TurnedOneWay { placed: it.index });
        }
    }
    let shapes = shapes::Shapes::of(pieces, &mut findings);
    apart::check(cloth.gap, &shapes, &laid, &mut findings);
    sections::check(cloth, layout, &laid, &mut findings);
    sums::check(cloth, layout, &laid, &mut findings);
    findings
}

/// What lies where, as far as it is to be cut; finds what is not.
fn pieces_laid<'layout>(
    pieces: &'layout [LayoutPiece],
    layout: &'layout Layout,
    findings: &mut Vec<CheckerFinding>,
) -> Vec<CheckedPiece<'layout>> {
    let mut laid = Vec::with_capacity(layout.placed.len());
    for (index, placed) in layout.placed.iter().enumerate() {
        match pieces.get(placed.piece) {
            Some(piece) if placed.copy < piece.quantity => laid.push(CheckedPiece {
                index,
                piece,
                placed,
            }),
            _ => findings.push(CheckerFinding::NotToBeCut { placed: index }),
        }
    }
    laid
}

/// Finds copies that are cut twice, and pieces of which not all copies are cut.
fn check_quantities(
    pieces: &[LayoutPiece],
    laid: &[CheckedPiece],
    findings: &mut Vec<CheckerFinding>,
) {
    let mut copies = BTreeSet::new();
    for it in laid {
        if !copies.insert((it.placed.piece, it.placed.copy)) {
            findings.push(CheckerFinding::CutTwice { placed: it.index });
        }
    }
    for (piece, wanted) in pieces.iter().map(|piece| piece.quantity).enumerate() {
        let found = copies.range((piece, 0)..=(piece, u32::MAX)).count();
        let found = u32::try_from(found).unwrap_or(u32::MAX);
        if found != wanted {
            findings.push(CheckerFinding::WrongQuantity {
                piece,
                wanted,
                found,
            });
        }
    }
}

/// Finds a piece of which the width and length lie partly on a flaw.
fn check_flaws(cloth: &LayoutCloth, it: &CheckedPiece, findings: &mut Vec<CheckerFinding>) {
    for (flaw, the) in cloth.flaws.iter().enumerate() {
        let along = it.placed.along < the.to && the.from < it.end();
        let across = it.placed.across < the.right && the.left < it.right();
        if the.bolt == it.placed.bolt && along && across {
            let placed = it.index;
            findings.push(CheckerFinding::OnFlaw { placed, flaw });
        }
    }
}

/// Finds a piece outside the usable width, or outside its bolt.
fn check_bounds(cloth: &LayoutCloth, it: &CheckedPiece, findings: &mut Vec<CheckerFinding>) {
    if it.placed.across.is_negative() || it.right() > cloth.usable_width {
        findings.push(CheckerFinding::OutsideWidth { placed: it.index });
    }
    let ends_too_late = cloth.bolt_length.is_some_and(|bolt| it.end() > bolt);
    if it.placed.along.is_negative() || ends_too_late {
        findings.push(CheckerFinding::OutsideBolt { placed: it.index });
    }
}
