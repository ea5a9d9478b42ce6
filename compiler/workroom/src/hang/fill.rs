//! Sharing out what a row leaves among the panels that fill it.

use std::collections::BTreeMap;

use pelmet_measure::Length;
use pelmet_model::{FinishedOrder, RowMatter, WindowOrder};

use crate::hang::row::RowFinding;

/// The finished width of every filling panel of a row, by panel. `widths` are those of the panels
/// that do not fill; where one of them is not known there is nothing to share out.
///
/// All get the same, except those a limit stops: what they leave or take is shared by the rest.
/// Shares are whole nanometres; the few that do not divide are left over.
pub(crate) fn shares(
    order: &WindowOrder,
    to_cover: Length,
    widths: &[Option<Length>],
) -> Result<BTreeMap<usize, Length>, RowFinding> {
    let fillers = Filler::all_of(order);
    let Some(taken) = taken_by_others(order, widths, &fillers) else {
        return Ok(BTreeMap::new());
    };
    let left = to_cover - taken;
    let level = level(&fillers, left).ok_or_else(|| {
        let (panel, share, limit) = broken_limit(&fillers, left);
        let matter = RowMatter::FillOutOfRange {
            panel,
            share,
            limit,
            taken,
            to_cover,
        };
        (Some(panel), matter)
    })?;
    Ok(fillers
        .into_iter()
        .map(|(panel, filler)| (panel, filler.at(level)))
        .collect())
}

/// Whether a panel fills.
pub(crate) fn fills(order: &WindowOrder, panel: usize) -> bool {
    let finished = order
        .panels
        .get(panel)
        .and_then(|panel| panel.width.finished);
    matches!(finished, Some(FinishedOrder::Fill { .. }))
}

/// A panel that fills, and how often it hangs in the row.
#[derive(Copy, Clone)]
struct Filler {
    count: i64,
    least: Length,
    most: Length,
}

impl Filler {
    /// Those of a row, by panel.
    fn all_of(order: &WindowOrder) -> BTreeMap<usize, Self> {
        let mut fillers = BTreeMap::new();
        for &panel in &order.row {
            let finished = order
                .panels
                .get(panel)
                .and_then(|panel| panel.width.finished);
            if let Some(FinishedOrder::Fill { least, most }) = finished {
                let least = least.unwrap_or(Length::ZERO);
                let most = most.unwrap_or(Length::LARGEST);
                let filler = fillers.entry(panel).or_insert(Self {
                    count: 0,
                    least,
                    most,
                });
                filler.count = filler.count.saturating_add(1);
            }
        }
        fillers
    }

    /// Its width where the common share is this.
    fn at(&self, share: Length) -> Length {
        share.min(self.most).max(self.least)
    }
}

/// What the panels that do not fill take, overlaps taken off.
fn taken_by_others(
    order: &WindowOrder,
    widths: &[Option<Length>],
    fillers: &BTreeMap<usize, Filler>,
) -> Option<Length> {
    let others = order
        .row
        .iter()
        .filter(|panel| !fillers.contains_key(panel));
    let sum: Option<Length> = others
        .map(|&panel| widths.get(panel).copied().flatten())
        .sum();
    Some(sum? - order.overlap * joins(order))
}

/// How many joins a row has.
pub(crate) fn joins(order: &WindowOrder) -> i64 {
    i64::try_from(order.row.len().saturating_sub(1)).unwrap_or(i64::MAX)
}

/// The common share at which the fillers take what is left: the highest that does not take more.
/// `None` where no share does, give or take a nanometre a panel.
fn level(fillers: &BTreeMap<usize, Filler>, left: Length) -> Option<Length> {
    let taken = |share: Length| {
        fillers
            .values()
            .map(|filler| filler.at(share) * filler.count)
            .sum()
    };
    if fillers.is_empty() {
        return Some(Length::ZERO);
    }
    let one = Length::from_nanometres(1);
    let (mut fits, mut exceeds) = (one, Length::LARGEST + one);
    if !left.is_positive() || left < taken(fits) {
        return None;
    }
    while exceeds - fits > one {
        let middle = fits + (exceeds - fits).divided(2);
        if taken(middle) <= left {
            fits = middle;
        } else {
            exceeds = middle;
        }
    }
    let short_by: Length = left - taken(fits);
    (short_by < one * count(fillers)).then_some(fits)
}

/// The first filler whose limit an equal share breaks, with the share and the limit.
fn broken_limit(fillers: &BTreeMap<usize, Filler>, left: Length) -> (usize, Length, Length) {
    let share = left.divided(u32::try_from(count(fillers)).unwrap_or(u32::MAX));
    let broken = fillers.iter().find_map(|(&panel, filler)| {
        let limit = if share < filler.least || !share.is_positive() {
            filler.least
        } else if share > filler.most {
            filler.most
        } else {
            return None;
        };
        Some((panel, share, limit))
    });
    broken.unwrap_or((0, share, share))
}

fn count(fillers: &BTreeMap<usize, Filler>) -> i64 {
    fillers
        .values()
        .map(|filler| filler.count)
        .fold(0, i64::saturating_add)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn filler(count: i64, least: i64, most: i64) -> Filler {
        Filler {
            count,
            least: Length::inches(least),
            most: Length::inches(most),
        }
    }

    fn shared(fillers: &[Filler], left: Length) -> Option<Vec<Length>> {
        let fillers: BTreeMap<usize, Filler> = fillers.iter().copied().enumerate().collect();
        let level = level(&fillers, left)?;
        Some(fillers.values().map(|filler| filler.at(level)).collect())
    }

    #[test]
    fn what_a_limit_stops_goes_to_the_rest() {
        type Case<'a> = (&'a [Filler], i64, Option<&'a [i64]>);
        let cases: &[Case<'_>] = &[
            (&[filler(1, 0, 100)], 30, Some(&[30])),
            (&[filler(3, 0, 100)], 30, Some(&[10])),
            (&[filler(1, 0, 10), filler(1, 0, 100)], 50, Some(&[10, 40])),
            (&[filler(1, 20, 100), filler(2, 0, 100)], 30, Some(&[20, 5])),
            (
                &[filler(1, 20, 100), filler(1, 0, 5), filler(1, 0, 100)],
                40,
                Some(&[20, 5, 15]),
            ),
            (&[filler(2, 20, 30)], 60, Some(&[30])),
            (&[filler(2, 20, 30)], 40, Some(&[20])),
            (&[filler(2, 20, 30)], 61, None),
            (&[filler(2, 20, 30)], 39, None),
            (&[filler(1, 0, 30)], 0, None),
            (&[filler(1, 0, 30)], -4, None),
        ];
        for (fillers, left, expected) in cases {
            let expected =
                expected.map(|widths| widths.iter().map(|&w| Length::inches(w)).collect());
            assert_eq!(
                shared(fillers, Length::inches(*left)),
                expected,
                "{left} in"
            );
        }
    }

    /// Shares are whole nanometres, so what cannot be shared out is left over.
    #[test]
    fn less_than_a_nanometre_a_panel_may_be_left_over() {
        let pair = [filler(2, 20, 30)];
        let nanometres = Length::from_nanometres;
        let most = Length::inches(60);
        assert!(shared(&pair, most + nanometres(1)).is_some());
        assert_eq!(shared(&pair, most + nanometres(2)), None);
        let one = Filler {
            count: 1,
            least: Length::ZERO,
            most: Length::LARGEST,
        };
        assert_eq!(shared(&[one], Length::LARGEST), Some(vec![Length::LARGEST]));
    }

    #[test]
    fn an_equal_share_names_the_limit_it_breaks() {
        // The share of 10 in is just what the panel of the first pair may have, at least or at most.
        for first in [filler(2, 0, 100), filler(2, 10, 100), filler(2, 0, 10)] {
            let fillers = [(4, first), (7, filler(1, 20, 30))].into_iter().collect();
            let (panel, share, limit) = broken_limit(&fillers, Length::inches(30));
            assert_eq!(
                (panel, share, limit),
                (7, Length::inches(10), Length::inches(20))
            );
        }
    }
}
