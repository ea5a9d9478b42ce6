//! The widths of a panel: what is known of them, made to agree and handed to the pleats.

use num_traits::CheckedSub;
use pelmet_measure::{Length, Ratio};
use pelmet_model::PanelMeasure;
use pelmet_model::{
    Fabric, FinishedOrder, Matter, PanelOrder, PieceMatter, PleatMatter, PleatRule, Pleating,
};

use crate::pleat::follow::follow_print;
use crate::pleat::lay_out::{lay_out, no_pleats};
use crate::pleat::turn_of_cloth::pleats_with_turn;

/// How many times the finished width the flat width is; `None` where there is no finished width.
///
/// A fullness of 200 % means twice the width to be covered (UFGS 12 22 00).
pub fn fullness_of(finished: Length, flat: Length) -> Option<Ratio> {
    flat.ratio_to(finished)
}

/// Lays out the cloth of a panel across its width. `share` is what the row leaves a panel that
/// fills; such a panel has no other finished width.
pub(crate) fn lay_widths(
    order: &PanelOrder,
    fabrics: &[Fabric],
    face: &Fabric,
    share: Option<Length>,
) -> Result<Pleating, Matter> {
    let known = known_widths(order, face, share)?;
    known.check()?;
    let pleats = pleats_with_turn(order, fabrics);
    let pleating = match (pleats, known.flat.or(known.finished)) {
        (Some(rule), _) => {
            let rule = follow_print(&rule, print_across(&rule, face)?)?;
            lay_out(&rule, known.finished, known.flat)?
        }
        (None, Some(flat)) => {
            // Gathers have no creases; they only draw the flat width together.
            Pleating {
                finished: known.finished.unwrap_or(flat),
                ..no_pleats(flat)
            }
        }
        (None, None) => return Err(PieceMatter::NoWidth.into()),
    };
    Widths {
        finished: Some(pleating.finished),
        flat: Some(pleating.flat),
    }
    .check()?;
    Ok(pleating)
}

/// The period across of the print that a rule follows, on the cloth once it has shrunk.
fn print_across(rule: &PleatRule, face: &Fabric) -> Result<Length, PleatMatter> {
    let printed = face.repeat.and_then(|repeat| repeat.across);
    let kept = Ratio::new_raw(1, 1).checked_sub(&face.shrinkage);
    let across = printed.zip(kept).map(|(across, kept)| across.scaled(kept));
    match across.filter(|across| across.is_positive()) {
        None if rule.print.is_some() => Err(PleatMatter::NoPrintAcross),
        across => Ok(across.unwrap_or_default()),
    }
}

/// The widths as far as they are known before the pleats are laid out.
#[derive(Copy, Clone)]
struct Widths {
    finished: Option<Length>,
    flat: Option<Length>,
}

impl Widths {
    /// Holds the widths to what can be made.
    fn check(self) -> Result<(), PieceMatter> {
        let sized = [
            (PanelMeasure::FinishedWidth, self.finished),
            (PanelMeasure::FlatWidth, self.flat),
        ];
        for (size, length) in sized
            .into_iter()
            .filter_map(|(size, width)| Some((size, width?)))
        {
            if !length.is_positive() {
                return Err(PieceMatter::NothingLeft { size, length });
            }
            if length > Length::LARGEST {
                return Err(PieceMatter::TooLarge { size });
            }
        }
        Ok(())
    }
}

/// A width and which one it is.
type Named = (PanelMeasure, Option<Length>);

fn known_widths(
    order: &PanelOrder,
    face: &Fabric,
    share: Option<Length>,
) -> Result<Widths, PieceMatter> {
    let exact = match order.width.finished {
        Some(FinishedOrder::Exact(width)) => Some(width),
        Some(FinishedOrder::Fill { .. }) => share,
        None => None,
    };
    let left_by_cut = order.width.cut.map(|cut| flat_from_cut(cut, order, face));
    let flat = (PanelMeasure::FlatWidth, order.width.flat);
    let flat = agreed(flat, (PanelMeasure::FlatWidthByCut, left_by_cut))?;
    let Some(fullness) = order.width.fullness else {
        return match order.pleats {
            Some(_) => Ok(Widths {
                finished: exact,
                flat,
            }),
            None => agreed(
                (PanelMeasure::FlatWidth, flat),
                (PanelMeasure::FinishedWidth, exact),
            )
            .map(|width| Widths {
                finished: width,
                flat: width,
            }),
        };
    };
    if fullness < Ratio::new_raw(1, 1) {
        return Err(PieceMatter::FullnessUnderOne { fullness });
    }
    let filled = exact.map(|finished| finished.scaled(fullness));
    let flat = agreed(
        (PanelMeasure::FlatWidth, flat),
        (PanelMeasure::FlatWidthByFullness, filled),
    )?;
    let gathered = flat.map(|flat| flat.scaled(fullness.recip()));
    Ok(Widths {
        finished: exact.or(gathered),
        flat,
    })
}

/// The one width that two say alike, or the one that is known.
fn agreed(first: Named, second: Named) -> Result<Option<Length>, PieceMatter> {
    match (first, second) {
        ((first, Some(first_length)), (second, Some(second_length)))
            if first_length != second_length =>
        {
            Err(PieceMatter::WidthsDisagree {
                first,
                first_length,
                second,
                second_length,
            })
        }
        ((_, one), (_, other)) => Ok(one.or(other)),
    }
}

/// What is left of a cut width once the cloth has shrunk and the sides are made up.
fn flat_from_cut(cut: Length, order: &PanelOrder, face: &Fabric) -> Length {
    let making = &order.making.face;
    let one = Ratio::new_raw(1, 1);
    let left = one
        .checked_sub(&face.shrinkage)
        .map_or(cut, |part| cut.scaled(part));
    left - order.making.beyond_sides() * 2 - making.wider
}
