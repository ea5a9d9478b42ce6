//! Whether the print lies on each piece where it should.

use pelmet_measure::Length;

use super::checked::CheckedPiece;
use super::finding::{BoltDirection, CheckerFinding};
use crate::given::LayoutCloth;

/// Finds a piece whose point is off a line of the print, along or across.
pub(super) fn check(cloth: &LayoutCloth, it: &CheckedPiece, findings: &mut Vec<CheckerFinding>) {
    let mut off = |direction| {
        let placed = it.index;
        findings.push(CheckerFinding::OffRepeat { placed, direction });
    };
    let across = point(it, it.placed.across, it.piece.width, it.piece.phase_across);
    if let Some(point) = across
        && beyond_line(point, cloth.repeat_across) != Some(0)
    {
        off(BoltDirection::Across);
    }
    let along = point(it, it.placed.along, it.piece.length, it.piece.phase_along);
    if let Some(point) = along
        && beyond_line(point, cloth.repeat_along) != wanted_beyond_line(cloth, it, across)
    {
        off(BoltDirection::Along);
    }
}

/// Where on the cloth a piece's point lies in one direction; turned end for end, it is as far
/// from the piece's other edge.
fn point(it: &CheckedPiece, edge: Length, size: Length, phase: Option<Length>) -> Option<Length> {
    let phase = phase?;
    Some(if it.placed.orientation.is_turned() {
        edge + size - phase
    } else {
        edge + phase
    })
}

/// How many nanometres a point lies beyond the line of the print before it.
fn beyond_line(point: Length, repeat: Option<Length>) -> Option<i64> {
    point.nanometres().checked_rem_euclid(repeat?.nanometres())
}

/// How many nanometres beyond a line along the bolt the point should lie: half a repeat in every
/// other column of a half-drop print, or, where the piece may lie in any, in every other copy.
fn wanted_beyond_line(
    cloth: &LayoutCloth,
    it: &CheckedPiece,
    across: Option<Length>,
) -> Option<i64> {
    let lower = match (across, cloth.repeat_across) {
        _ if !cloth.half_drop => false,
        (Some(point), Some(column)) => {
            let columns = point.nanometres().checked_div_euclid(column.nanometres())?;
            columns.checked_rem_euclid(2)? == 1
        }
        _ => it.placed.copy.checked_rem(2)? == 1,
    };
    if lower {
        cloth.repeat_along?.nanometres().checked_div(2)
    } else {
        Some(0)
    }
}
