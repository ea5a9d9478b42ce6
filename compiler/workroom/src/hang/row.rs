//! The row: panels side by side along a rod or board, and those that lie over their joins.

use pelmet_measure::Length;
use pelmet_model::{RowMatter, THIN_COVER, WindowOrder};

use crate::hang::fill::{fills, joins};

/// A finding of the row and the panel it is about, where it is about one.
pub(crate) type RowFinding = (Option<usize>, RowMatter);

/// How far a row covers.
#[derive(Clone, PartialEq, Debug)]
pub(crate) struct Coverage {
    pub(crate) to_cover: Length,
    pub(crate) covered: Length,
    pub(crate) joins: Vec<Length>,
}

/// The length the row must cover: the rod or board, and a return at each end.
pub(crate) fn length_to_cover(order: &WindowOrder) -> Length {
    order.support.length() + order.returns * 2
}

/// How often each panel of the window is made: once for each place in the row, and once for each
/// join it lies over.
pub(crate) fn quantities(order: &WindowOrder) -> Vec<u32> {
    let mut quantities = vec![0_u32; order.panels.len()];
    let over_each = u32::try_from(joins(order)).unwrap_or(u32::MAX);
    let hung = order.row.iter().map(|&panel| (panel, 1));
    let over = order.over_joins.iter().map(|&panel| (panel, over_each));
    for (panel, times) in hung.chain(over) {
        if let Some(quantity) = quantities.get_mut(panel) {
            *quantity = quantity.saturating_add(times);
        }
    }
    quantities
}

/// What can be said of the row before any width is known.
pub(crate) fn check_hanging(order: &WindowOrder) -> Vec<RowFinding> {
    let mut found: Vec<RowFinding> = return_and_projection(order).into_iter().collect();
    if order.row.is_empty() {
        found.push((None, RowMatter::Empty));
    } else {
        found.extend(unhung(order));
    }
    found.extend(longer_than_height(order));
    found
}

/// Adds up the row. Where a width is not known, nothing is said of what is covered.
pub(crate) fn cover(order: &WindowOrder, widths: &[Option<Length>]) -> (Coverage, Vec<RowFinding>) {
    let to_cover = length_to_cover(order);
    let in_row = order
        .row
        .iter()
        .map(|&panel| widths.get(panel).copied().flatten());
    let known: Option<Vec<Length>> = in_row.collect();
    let Some(row) = known.filter(|row| !row.is_empty()) else {
        return (
            Coverage {
                to_cover,
                covered: Length::ZERO,
                joins: vec![],
            },
            vec![],
        );
    };
    let summed = row.iter().copied().sum::<Length>() - order.overlap * joins(order);
    // Widths are whole nanometres: what rounding left over, at most one a panel, is no gap.
    let over = summed - to_cover;
    let rounding = i64::try_from(row.len()).unwrap_or(i64::MAX);
    let covered = if over.abs().nanometres() <= rounding {
        to_cover
    } else {
        summed
    };
    let mut found: Vec<RowFinding> = coverage_matter(to_cover, covered).into_iter().collect();
    found.extend(too_wide_overlaps(order, widths));
    found.extend(join_covers(order, widths));
    (
        Coverage {
            to_cover,
            covered,
            joins: join_positions(&row, order.overlap),
        },
        found,
    )
}

/// For each panel of the window whether it is among these.
fn marked(order: &WindowOrder, panels: &[usize]) -> Vec<bool> {
    let mut marked = vec![false; order.panels.len()];
    for &panel in panels {
        if let Some(mark) = marked.get_mut(panel) {
            *mark = true;
        }
    }
    marked
}

/// Panels that no place in the row or over its joins accounts for.
fn unhung(order: &WindowOrder) -> Vec<RowFinding> {
    let in_row = marked(order, &order.row);
    let over_joins = marked(order, &order.over_joins);
    let hung = in_row.into_iter().zip(over_joins).enumerate();
    let unhung = hung.filter_map(|(panel, (in_row, over_joins))| {
        let matter = if !in_row && fills(order, panel) {
            RowMatter::FillOutsideRow { panel }
        } else if !in_row && !over_joins {
            RowMatter::NotHung { panel }
        } else if over_joins && joins(order) == 0 {
            RowMatter::NoJoin { panel }
        } else {
            return None;
        };
        Some((Some(panel), matter))
    });
    unhung.collect()
}

fn return_and_projection(order: &WindowOrder) -> Option<RowFinding> {
    let projection = order.support.projection()?;
    let returns = order.returns;
    (returns.is_positive() && returns != projection).then_some((
        None,
        RowMatter::ReturnAndProjectionDiffer {
            returns,
            projection,
        },
    ))
}

fn longer_than_height(order: &WindowOrder) -> Vec<RowFinding> {
    let Some(height) = order.top_at else {
        return vec![];
    };
    let longer = |(panel, drop): (usize, Length)| {
        let matter = RowMatter::LongerThanHeight {
            panel,
            drop,
            height,
        };
        (drop > height).then_some((Some(panel), matter))
    };
    order
        .panels
        .iter()
        .map(|panel| panel.drop)
        .enumerate()
        .filter_map(longer)
        .collect()
}

fn coverage_matter(to_cover: Length, covered: Length) -> Option<RowFinding> {
    let over = covered - to_cover;
    if over.is_positive() {
        Some((
            None,
            RowMatter::Crowded {
                amount: over,
                to_cover,
                covered,
            },
        ))
    } else if over.is_negative() {
        Some((
            None,
            RowMatter::Uncovered {
                amount: -over,
                to_cover,
                covered,
            },
        ))
    } else {
        None
    }
}

/// The middle of each overlap between neighbours, from the left end of the row.
fn join_positions(row: &[Length], overlap: Length) -> Vec<Length> {
    let mut reached = Length::ZERO;
    let ends = row.iter().map(|&width| {
        reached += width - overlap;
        reached + overlap - overlap.divided(2)
    });
    ends.take(row.len().saturating_sub(1)).collect()
}

/// Every panel of the row, once, with what it covers being swallowed by the overlap.
fn too_wide_overlaps(order: &WindowOrder, widths: &[Option<Length>]) -> Vec<RowFinding> {
    let overlap = order.overlap;
    if joins(order) == 0 || !overlap.is_positive() {
        return vec![];
    }
    let hung = widths.iter().zip(marked(order, &order.row)).enumerate();
    let swallowed = hung.filter_map(|(panel, (width, in_row))| {
        let finished = width.filter(|width| in_row && overlap >= *width)?;
        Some((
            Some(panel),
            RowMatter::OverlapTooWide {
                panel,
                finished,
                overlap,
            },
        ))
    });
    swallowed.collect()
}

/// Whether each panel over the joins reaches far enough on both sides of the overlap it hides.
fn join_covers(order: &WindowOrder, widths: &[Option<Length>]) -> Vec<RowFinding> {
    if joins(order) == 0 {
        return vec![];
    }
    let over = order
        .panels
        .iter()
        .zip(widths)
        .zip(marked(order, &order.over_joins))
        .enumerate();
    let covers = over.filter_map(|(panel, ((ordered, width), over_joins))| {
        let finished = width.filter(|_| over_joins)?;
        let matter = join_cover(panel, finished, order.overlap, ordered.covers)?;
        Some((Some(panel), matter))
    });
    covers.collect()
}

fn join_cover(
    panel: usize,
    finished: Length,
    overlap: Length,
    margin: Option<Length>,
) -> Option<RowMatter> {
    let covers = (finished - overlap).divided(2);
    let wanted = margin.unwrap_or(Length::ZERO);
    if covers < wanted {
        Some(RowMatter::JoinNotCovered {
            panel,
            covers,
            wanted,
            finished,
        })
    } else if margin.is_none() && covers < THIN_COVER {
        Some(RowMatter::JoinThinlyCovered {
            panel,
            covers,
            finished,
        })
    } else {
        None
    }
}
