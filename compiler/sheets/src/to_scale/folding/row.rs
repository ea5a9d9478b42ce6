//! A folded panel in rows, each of them as much of the flat strip as a page is wide.

use pelmet_packet::Panel;

use super::lying::LyingStretch;
use crate::drawing::Scale;

/// As much of the flat strip as stands in one row.
#[derive(Copy, Clone, PartialEq, Debug)]
pub(crate) struct StripRow {
    /// Flat positions, in millimetres of cloth.
    pub(crate) from: f64,
    pub(crate) to: f64,
}

/// The least length of a stretch on the paper at which it can still be read.
const READABLE: f64 = 5.0;

/// The scale at which every stretch can be read: larger where all of the panel has room in one row.
pub(crate) fn scale(panel: &Panel, width: f64) -> Scale {
    let lengths = panel.stretches.iter().map(|stretch| {
        let flat = &stretch.flat;
        flat.to.mm - flat.from.mm
    });
    let shortest = lengths
        .filter(|length| *length > 1.0)
        .fold(f64::MAX, f64::min);
    let in_one_row = Scale::largest(|scale| scale.paper(&panel.flat_width) <= width);
    let readable = Scale::smallest(|scale| shortest / scale.ratio >= READABLE);
    if in_one_row.ratio < readable.ratio {
        in_one_row
    } else {
        readable
    }
}

/// The panel in rows no wider than so many millimetres of cloth, parted where one layer lies alone
/// if there is such a place.
pub(crate) fn rows(panel: &Panel, lying: &[LyingStretch<'_>], width: f64) -> Vec<StripRow> {
    let end = panel.flat_width.mm;
    let alone = places_alone(lying);
    let mut rows = Vec::new();
    let mut from = 0.0;
    while end - from > width {
        // As even as may be; then moved to the nearest place where one layer lies alone, or the fold of a pleat
        // would begin in one row and end in the next. Not so far back that a row is next to nothing.
        let even = from + (end - from) / ((end - from) / width).ceil();
        let within = alone
            .iter()
            .filter(|place| (from..=from + width).contains(*place));
        let nearest = within.min_by(|one, other| {
            let off = |place: &f64| (place - even).abs();
            off(one).total_cmp(&off(other))
        });
        let nearest = nearest.filter(|place| **place - from > width / 3.0);
        let to = nearest.copied().unwrap_or(from + width);
        rows.push(StripRow { from, to });
        from = to;
    }
    rows.push(StripRow { from, to: end });
    rows
}

/// Flat positions, from left to right, at which nothing lies beneath or over the cloth.
fn places_alone(lying: &[LyingStretch<'_>]) -> Vec<f64> {
    let parts = lying.iter().flat_map(|it| {
        let alone = it
            .parts
            .iter()
            .filter(|part| part.beneath == 0 && part.seen);
        alone.map(|part| it.flat((part.from + part.to) / 2.0))
    });
    parts.collect()
}

impl StripRow {
    /// As much of a run of flat positions as lies in this row.
    pub(crate) fn clip(&self, (from, to): (f64, f64)) -> Option<(f64, f64)> {
        let (from, to) = (from.max(self.from), to.min(self.to));
        (from < to).then_some((from, to))
    }

    /// Whether a flat position lies in it.
    pub(crate) fn holds(&self, flat: f64) -> bool {
        (self.from..=self.to).contains(&flat)
    }
}
