//! How the pleats of a panel follow its print.

use std::collections::BTreeSet;

use pelmet_measure::Length;
use pelmet_model::{PleatMade, PleatRule};
use pelmet_packet::PrintFollowed;

use super::printer::Printer;

/// From the middle of a pleat to the middle of the next, on the flat panel; nothing for a rule that
/// does not follow the print. A mirrored half keeps to itself.
pub(crate) fn print_followed(
    rule: Option<&PleatRule>,
    pleats: &[PleatMade],
    printer: &Printer<'_>,
) -> Option<PrintFollowed> {
    rule?.print?;
    let halves = pleats.chunk_by(|one, other| one.mirrored == other.mirrored);
    let pairs = halves.flat_map(|half| half.iter().zip(half.iter().skip(1)));
    let apart: BTreeSet<Length> = pairs
        .map(|(one, other)| middle(other) - middle(one))
        .collect();
    Some(PrintFollowed {
        apart: apart
            .into_iter()
            .map(|apart| printer.plain(apart))
            .collect(),
        in_each_half: pleats.iter().any(|pleat| pleat.mirrored),
    })
}

fn middle(pleat: &PleatMade) -> Length {
    (pleat.from + pleat.to).divided(2)
}
