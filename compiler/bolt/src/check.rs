//! The independent checker: whether a layout keeps its promises.
//!
//! It shares no sum with the code that lays, so that one mistake does not hide another.

mod apart;
mod print;
mod sections;
mod shapes;
mod sums;
mod triangles;

use std::collections::BTreeSet;

use pelmet_measure::Length;

use crate::{Cloth, Fault, Layout, Piece, Placed};

/// Looks for every promise that `layout` breaks; a sound layout gives none.
///
/// Where several pieces clash in one spot, at least one fault is found, not every pair.
pub fn check(cloth: &Cloth, pieces: &[Piece], layout: &Layout) -> Vec<Fault> {
    let mut faults = Vec::new();
    let laid = pieces_laid(pieces, layout, &mut faults);
    check_quantities(pieces, &laid, &mut faults);
    for it in &laid {
        check_bounds(cloth, it, &mut faults);
        check_flaws(cloth, it, &mut faults);
        print::check(cloth, it, &mut faults);
        if it.placed.turned && cloth.one_way {
            faults.push(Fault::TurnedOneWay { placed: it.index });
        }
    }
    let shapes = shapes::Shapes::of(pieces, &mut faults);
    apart::check(cloth.gap, &shapes, &laid, &mut faults);
    sections::check(cloth, layout, &laid, &mut faults);
    sums::check(cloth, layout, &laid, &mut faults);
    faults
}

/// A piece that lies somewhere.
#[derive(Copy, Clone)]
struct Laid<'layout> {
    /// Its index in the layout.
    index: usize,
    piece: &'layout Piece,
    placed: &'layout Placed,
}

impl Laid<'_> {
    fn right(&self) -> Length {
        self.placed.across + self.piece.width
    }

    fn end(&self) -> Length {
        self.placed.along + self.piece.length
    }
}

fn pieces_laid<'layout>(
    pieces: &'layout [Piece],
    layout: &'layout Layout,
    faults: &mut Vec<Fault>,
) -> Vec<Laid<'layout>> {
    let mut laid = Vec::with_capacity(layout.placed.len());
    for (index, placed) in layout.placed.iter().enumerate() {
        match pieces.get(placed.piece) {
            Some(piece) if placed.copy < piece.quantity => laid.push(Laid {
                index,
                piece,
                placed,
            }),
            _ => faults.push(Fault::NotToBeCut { placed: index }),
        }
    }
    laid
}

fn check_quantities(pieces: &[Piece], laid: &[Laid], faults: &mut Vec<Fault>) {
    let mut copies = BTreeSet::new();
    for it in laid {
        if !copies.insert((it.placed.piece, it.placed.copy)) {
            faults.push(Fault::CutTwice { placed: it.index });
        }
    }
    for (piece, wanted) in pieces.iter().map(|piece| piece.quantity).enumerate() {
        let found = copies.range((piece, 0)..=(piece, u32::MAX)).count();
        let found = u32::try_from(found).unwrap_or(u32::MAX);
        if found != wanted {
            faults.push(Fault::WrongQuantity {
                piece,
                wanted,
                found,
            });
        }
    }
}

/// Reports a piece of which the width and length lie partly on a flaw.
fn check_flaws(cloth: &Cloth, it: &Laid, faults: &mut Vec<Fault>) {
    for (flaw, the) in cloth.flaws.iter().enumerate() {
        let along = it.placed.along < the.to && the.from < it.end();
        let across = it.placed.across < the.right && the.left < it.right();
        if the.bolt == it.placed.bolt && along && across {
            let placed = it.index;
            faults.push(Fault::OnFlaw { placed, flaw });
        }
    }
}

fn check_bounds(cloth: &Cloth, it: &Laid, faults: &mut Vec<Fault>) {
    if it.placed.across.is_negative() || it.right() > cloth.usable_width {
        faults.push(Fault::OutsideWidth { placed: it.index });
    }
    let ends_too_late = cloth.bolt_length.is_some_and(|bolt| it.end() > bolt);
    if it.placed.along.is_negative() || ends_too_late {
        faults.push(Fault::OutsideBolt { placed: it.index });
    }
}
