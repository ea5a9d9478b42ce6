//! From the cuts of a job to its forms, and back.

use std::collections::BTreeMap;

use pelmet_measure::Length;

use super::form::Form;
use super::laid::Laid;
use super::shape::Shape;
use crate::given::{LayoutCloth, LayoutPiece, OutlinePolygon};
use crate::layout::Placed;
use crate::places::{Cut, Grids, Place};

/// The forms of a job, and the cuts of each.
///
/// Twenty pieces alike can be laid in one order and not in as many as twenty have: so the search knows
/// forms, and which cut comes to lie where is settled when it is over.
pub(crate) struct Forms {
    forms: Vec<(Form, Vec<Cut>)>,
}

impl Forms {
    /// The forms of these cuts of the pieces.
    ///
    /// Two pieces are kept apart by the gap and by what both their outlines may stray. Each shape is
    /// grown once, by the same length for all, so the most that any outline strays is counted twice.
    pub(crate) fn of(cloth: &LayoutCloth, pieces: &[LayoutPiece], cuts: &[Cut]) -> Forms {
        let outline = |cut: &Cut| pieces.get(cut.piece)?.outline.as_ref();
        let strays = cuts
            .iter()
            .filter_map(outline)
            .map(OutlinePolygon::strays)
            .max();
        let free = strays.map(|strays| cloth.gap + strays * 2);
        let mut alike: BTreeMap<_, Vec<Cut>> = BTreeMap::new();
        for cut in cuts {
            let key = (cut.width, cut.length, cut.grids, outline(cut));
            alike.entry(key).or_default().push(*cut);
        }
        let form = |(number, ((width, length, grids, outline), cuts))| {
            let shape = free.map(|free| shape(cloth, (width, length), &grids, outline, free));
            let form = Form {
                number,
                width,
                length,
                grids,
                shape,
            };
            (form, cuts)
        };
        Forms {
            forms: (0..).zip(alike).map(form).collect(),
        }
    }

    /// Whether some of the forms are shaped.
    pub(crate) fn are_shaped(&self) -> bool {
        self.forms.iter().any(|(form, _)| form.shape.is_some())
    }

    /// Every form, as often as it is cut.
    pub(crate) fn all(&self) -> Vec<&Form> {
        self.forms
            .iter()
            .flat_map(|(form, cuts)| std::iter::repeat_n(form, cuts.len()))
            .collect()
    }

    /// Every form, and how often it is cut.
    pub(crate) fn counted(&self) -> Vec<(&Form, u32)> {
        self.forms
            .iter()
            .map(|(form, cuts)| (form, u32::try_from(cuts.len()).unwrap_or(u32::MAX)))
            .collect()
    }

    /// The forms of pieces that lie somewhere.
    pub(crate) fn laid(&self, placed: &[Placed]) -> Vec<Laid<'_>> {
        let of_cut: BTreeMap<(usize, u32), &Form> = self
            .forms
            .iter()
            .flat_map(|(form, cuts)| cuts.iter().map(move |cut| ((cut.piece, cut.copy), form)))
            .collect();
        let laid = |it: &Placed| {
            Some(Laid {
                form: of_cut.get(&(it.piece, it.copy))?,
                bolt: it.bolt,
                place: Place {
                    across: it.across,
                    along: it.along,
                },
                orientation: it.orientation,
            })
        };
        placed.iter().filter_map(laid).collect()
    }

    /// The cuts in the places of their forms: along the bolts in the order of the copies.
    pub(crate) fn placed(&self, laid: &[Laid<'_>]) -> Vec<Placed> {
        let mut in_order = laid.to_vec();
        in_order.sort_by_key(|it| (it.bolt, it.place.along, it.place.across));
        let mut left: Vec<_> = self.forms.iter().map(|(_, cuts)| cuts.iter()).collect();
        let next = |it: &Laid<'_>| {
            let cut = left.get_mut(it.form.number)?.next()?;
            Some(Placed::of(cut, it.bolt, it.place, it.orientation))
        };
        in_order.iter().filter_map(next).collect()
    }
}

/// A piece as a shape among shapes; it may be turned where neither pile nor print says which way up it
/// lies.
fn shape(
    cloth: &LayoutCloth,
    (width, length): (Length, Length),
    grids: &Grids,
    outline: Option<&OutlinePolygon>,
    free: Length,
) -> Shape {
    match outline {
        None => Shape::rectangle(width, length, free),
        Some(outline) if !cloth.one_way && grids.are_anywhere() => {
            Shape::either_way(outline, (width, length), free)
        }
        Some(outline) => Shape::upright(outline, free),
    }
}
