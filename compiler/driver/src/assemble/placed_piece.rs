//! The pieces of a cloth where they lie on the bolt.

use std::collections::BTreeSet;

use pelmet_bolt::{BoltSection, OutlineCorner, OutlinePolygon, Placed};
use pelmet_measure::Length;
use pelmet_model::{Fabric, Job};
use pelmet_packet::{PlacedCorner, PlacedPiece};

use super::count::{number, ordinal};
use super::printer::Printer;
use super::{piece, sections};
use crate::layout::{CutPiece, LaidCloth};

/// Every piece, in cutting order.
pub(super) fn placed_pieces(
    job: &Job,
    laid: &LaidCloth,
    printer: &Printer<'_>,
) -> Vec<PlacedPiece> {
    let nested = nested(laid);
    laid.layout
        .placed
        .iter()
        .enumerate()
        .filter_map(|(index, placed)| {
            let cut = laid.to_lay.cuts.get(placed.piece)?;
            let sections = &laid.layout.sections;
            let piece = placed_piece(job, ordinal(index), (placed, cut), sections, printer)?;
            let (across, along) = print_held(job, laid, placed, cut);
            Some(PlacedPiece {
                nested: nested.contains(&index),
                print_across: across.map(|place| printer.mark(place)),
                print_along: along.map(|place| printer.mark(place)),
                ..piece
            })
        })
        .collect()
}

/// Where on the bolt a piece is held by the print, across and along.
fn print_held(
    job: &Job,
    laid: &LaidCloth,
    placed: &Placed,
    cut: &CutPiece,
) -> (Option<Length>, Option<Length>) {
    let fabric = job.fabrics.get(laid.to_lay.fabric);
    let line_across = fabric.map_or(Length::ZERO, Fabric::print_line_across);
    let line_along = laid.to_lay.print_line.unwrap_or_default();
    let across = cut.piece.phase_across;
    let along = cut.piece.phase_along;
    (
        across.map(|phase| placed.across + phase + line_across),
        along.map(|phase| placed.along + phase + line_along),
    )
}

/// Where the corners of an outline lie on the bolt.
fn placed_outline(placed: &Placed, cut: &CutPiece, printer: &Printer<'_>) -> Vec<PlacedCorner> {
    let piece = &cut.piece;
    let corners = piece
        .outline
        .as_ref()
        .map_or(&[][..], OutlinePolygon::corners);
    let on_bolt = |corner: &OutlineCorner| {
        let (across, along) = if placed.orientation.is_turned() {
            (piece.width - corner.across, piece.length - corner.along)
        } else {
            (corner.across, corner.along)
        };
        PlacedCorner {
            across: printer.mark(placed.across + across),
            along: printer.mark(placed.along + along),
        }
    };
    corners.iter().map(on_bolt).collect()
}

/// The pieces that lie partly within the width and length of another, by index.
fn nested(laid: &LaidCloth) -> BTreeSet<usize> {
    let placed = &laid.layout.placed;
    let boxed = |placed: &Placed| {
        let piece = laid.to_lay.cuts.get(placed.piece).map(|cut| &cut.piece)?;
        Some((placed.across + piece.width, placed.along + piece.length))
    };
    let mut nested = BTreeSet::new();
    for (index, one) in placed.iter().enumerate() {
        let Some((right, end)) = boxed(one) else {
            continue;
        };
        let after = placed.iter().enumerate().skip(index.saturating_add(1));
        let beside = after.take_while(|(_, it)| it.bolt == one.bolt && it.along < end);
        for (other, it) in beside {
            let meets = boxed(it).is_some_and(|(its_right, _)| one.across < its_right);
            if meets && it.across < right {
                nested.extend([index, other]);
            }
        }
    }
    nested
}

fn placed_piece(
    job: &Job,
    place: u32,
    (placed, cut): (&Placed, &CutPiece),
    layout_sections: &[BoltSection],
    printer: &Printer<'_>,
) -> Option<PlacedPiece> {
    let window = job.windows.get(cut.window)?;
    let panel = &window.panels.get(cut.panel)?.name;
    let Copy {
        strip,
        copy,
        copies,
    } = copy_of(cut, placed.copy);
    let whole = format!("{} {}", window.name, piece::label(panel, cut.layer));
    let (fold_at, middle_at) = sections::middle(placed, cut, layout_sections);
    let mark = |place: Option<Length>| place.map(|place| printer.mark(place));
    Some(PlacedPiece {
        number: place,
        name: strip.map_or(whole.clone(), |strip| format!("{whole}, strip {strip}")),
        window: window.name.clone(),
        panel: panel.clone(),
        layer: cut.layer.kind(),
        strip,
        copy,
        copies,
        bolt: placed.bolt.saturating_add(1),
        across: printer.mark(placed.across),
        along: printer.mark(placed.along),
        width: printer.cut(cut.piece.width),
        length: printer.cut(cut.piece.length),
        turned: placed.orientation.is_turned(),
        railroaded: cut.railroaded,
        nested: false,
        outline: placed_outline(placed, cut, printer),
        print_across: None,
        print_along: None,
        fold_at: mark(fold_at),
        middle_at: mark(middle_at),
    })
}

/// Which of the pieces alike a placed one is, numbered from 1.
struct Copy {
    strip: Option<u32>,
    copy: u32,
    copies: u32,
}

/// Copies of a joined piece are its strips by turns.
fn copy_of(cut: &CutPiece, copy: u32) -> Copy {
    let strips = number(cut.strips.len().max(1));
    let turn = copy.checked_rem(strips).unwrap_or(0);
    Copy {
        strip: usize::try_from(turn)
            .ok()
            .and_then(|turn| cut.strips.get(turn))
            .copied(),
        copy: copy.checked_div(strips).unwrap_or(copy).saturating_add(1),
        copies: cut
            .piece
            .quantity
            .checked_div(strips)
            .unwrap_or(cut.piece.quantity),
    }
}
