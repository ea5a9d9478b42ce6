//! Where the panels at the ends of a row turn back to the wall.

use pelmet_measure::Length;
use pelmet_model::{End, Folding, Lies, MarkMade, Marked, PanelMade, WindowOrder};

/// The lines on the flat panel along which it turns back once it hangs: at the left end of the row,
/// at its right end, at both, or at neither. The line is marked on the cloth that is seen there.
pub(crate) fn return_marks(window: &WindowOrder, panel: usize, made: &PanelMade) -> Vec<MarkMade> {
    let returns = window.returns;
    if !returns.is_positive() || returns >= made.finished {
        return Vec::new();
    }
    let left = (window.row.first() == Some(&panel)).then_some((End::Left, returns));
    let right =
        (window.row.last() == Some(&panel)).then_some((End::Right, made.finished - returns));
    let ends = left.into_iter().chain(right);
    ends.filter_map(|(end, finished)| {
        let across = flat_position(made, finished)?;
        Some(MarkMade {
            what: Marked::Return(end),
            across,
            from_centre: across - made.flat.divided(2),
            down: None,
        })
    })
    .collect()
}

/// The flat position of the cloth that is seen at a finished position. A panel gathered as a whole
/// is drawn up evenly.
fn flat_position(made: &PanelMade, finished: Length) -> Option<Length> {
    if made.pleating.pleats.is_empty() {
        return Some(finished.scaled(made.flat.ratio_to(made.finished)?));
    }
    on_top(&made.folding, finished)
}

fn on_top(folding: &Folding, finished: Length) -> Option<Length> {
    let lies_there = folding.stretches.iter().filter(|stretch| {
        let (from, to) = stretch.span();
        stretch.lies != Lies::BetweenFingers && (from..=to).contains(&finished)
    });
    let top = lies_there.max_by_key(|stretch| stretch.height)?;
    let along = (finished - top.finished_from).abs();
    let keeps = (top.finished_to - top.finished_from).abs();
    let flat = (top.flat_to - top.flat_from).ratio_to(keeps);
    Some(top.flat_from + flat.map_or(Length::ZERO, |flat| along.scaled(flat)))
}
