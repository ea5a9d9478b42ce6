//! Pieces that are alike to the search.

use std::collections::BTreeMap;

use pelmet_measure::Length;

use super::shape::{Shape, Turned};
use crate::cut::Cut;
use crate::outline::Outline;
use crate::print::Grids;
use crate::slabs::Between;
use crate::space::Place;
use crate::{Cloth, Piece, Placed};

/// A size of piece and how the print holds it. Cuts of one form may change places.
#[derive(Clone, PartialEq, Eq, Debug)]
pub(super) struct Form {
    /// Its number among the forms of the job.
    pub number: usize,
    /// Its width, across the bolt.
    pub width: Length,
    /// Its length, along the bolt.
    pub length: Length,
    /// Where the print lets it lie.
    pub grids: Grids,
    /// How it is shaped, where any piece of the job is.
    pub shape: Option<Shape>,
}

impl Form {
    /// The form to be laid in any way it may lie.
    pub(super) fn any_way(&self) -> Wanted<'_> {
        let may_turn = self.shape.as_ref().is_some_and(Shape::may_turn);
        let ways = if may_turn { EITHER_WAY } else { UPRIGHT };
        Wanted { form: self, ways }
    }

    /// What it takes to compare it with another, in steps.
    pub(super) fn steps(&self) -> usize {
        self.shape.as_ref().map_or(1, Shape::count)
    }
}

/// Ways a form may lie: turned end for end or not.
pub(super) type Ways = &'static [bool];

pub(super) const UPRIGHT: Ways = &[false];
pub(super) const TURNED: Ways = &[true];
pub(super) const EITHER_WAY: Ways = &[false, true];

/// A form, and the ways in which it is wanted.
#[derive(Copy, Clone, Debug)]
pub(super) struct Wanted<'forms> {
    pub form: &'forms Form,
    pub ways: Ways,
}

impl Wanted<'_> {
    /// Whether another way could be wanted.
    pub(super) fn may_turn(&self) -> bool {
        self.form.any_way().ways.len() > 1
    }
}

/// The forms of a job, and the cuts of each.
pub(super) struct Forms {
    forms: Vec<(Form, Vec<Cut>)>,
}

impl Forms {
    /// The forms of these cuts of the pieces.
    pub(super) fn of(cloth: &Cloth, pieces: &[Piece], cuts: &[Cut]) -> Forms {
        let outline = |cut: &Cut| pieces.get(cut.piece)?.outline.as_ref();
        let strays = cuts.iter().filter_map(outline).map(Outline::strays).max();
        let mut alike: BTreeMap<_, Vec<Cut>> = BTreeMap::new();
        for cut in cuts {
            let key = (cut.width, cut.length, cut.grids, outline(cut));
            alike.entry(key).or_default().push(*cut);
        }
        let form = |(number, ((width, length, grids, outline), cuts))| {
            let shape = strays.map(|strays| {
                let free = cloth.gap + strays * 2;
                let may_turn = !cloth.one_way && Grids::are_anywhere(&grids);
                match outline {
                    Some(outline) => Shape::of(outline, (width, length), free, may_turn),
                    None => Shape::rectangle(width, length, free),
                }
            });
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
    pub(super) fn are_shaped(&self) -> bool {
        self.forms.iter().any(|(form, _)| form.shape.is_some())
    }

    /// Every form, as often as it is cut.
    pub(super) fn all(&self) -> Vec<&Form> {
        self.forms
            .iter()
            .flat_map(|(form, cuts)| std::iter::repeat_n(form, cuts.len()))
            .collect()
    }

    /// Every form, and how often it is cut.
    pub(super) fn counted(&self) -> Vec<(&Form, u32)> {
        self.forms
            .iter()
            .map(|(form, cuts)| (form, u32::try_from(cuts.len()).unwrap_or(u32::MAX)))
            .collect()
    }

    /// The forms of pieces that lie somewhere.
    pub(super) fn laid(&self, placed: &[Placed]) -> Vec<Laid<'_>> {
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
                turned: it.turned,
            })
        };
        placed.iter().filter_map(laid).collect()
    }

    /// The cuts in the places of their forms: along the bolts in the order of the copies.
    pub(super) fn placed(&self, laid: &[Laid<'_>]) -> Vec<Placed> {
        let mut in_order = laid.to_vec();
        in_order.sort_by_key(|it| (it.bolt, it.place.along, it.place.across));
        let mut left: Vec<_> = self.forms.iter().map(|(_, cuts)| cuts.iter()).collect();
        let next = |it: &Laid<'_>| {
            let cut = left.get_mut(it.form.number)?.next()?;
            Some(cut.placed(it.bolt, it.place, it.turned))
        };
        in_order.iter().filter_map(next).collect()
    }
}

/// A form in its place.
#[derive(Copy, Clone, Debug)]
pub(super) struct Laid<'forms> {
    pub form: &'forms Form,
    pub bolt: u32,
    pub place: Place,
    /// Whether it is turned end for end.
    pub turned: bool,
}

impl<'forms> Laid<'forms> {
    /// The form and how it lies.
    pub(super) fn lying(&self) -> Lying<'forms> {
        Lying {
            form: self.form,
            turned: self.turned,
        }
    }

    /// Where it ends along the bolt.
    pub(super) fn end(&self) -> Length {
        self.place.along + self.form.length
    }
}

/// Places across that a piece denies to another: all between these two, but not these themselves.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub(super) struct Denied {
    pub from: Length,
    pub to: Length,
    /// How far the two share the bolt's length at most.
    pub shared: Length,
}

impl Denied {
    /// Whether a place across is one of those denied.
    pub(super) fn holds(&self, across: Length) -> bool {
        self.from < across && across < self.to
    }
}

/// A form that may lie turned, not yet placed.
#[derive(Copy, Clone, Debug)]
pub(super) struct Lying<'forms> {
    pub form: &'forms Form,
    pub turned: bool,
}

/// Adds what `laid` denies to a form at this place along the bolt, with `gap` between them. No
/// piece leaves its width and length, however far its outline may stray.
pub(super) fn deny(
    gap: Length,
    laid: &Laid<'_>,
    it: Lying<'_>,
    along: Length,
    denied: &mut Vec<Denied>,
) {
    let (start, end) = (laid.place.along - gap, laid.end() + gap);
    let form_end = along + it.form.length;
    if along >= end || form_end <= start {
        return;
    }
    let shared = (end - along).min(form_end - start);
    let left = laid.place.across;
    let (least, most) = (-(it.form.width + gap), laid.form.width + gap);
    let mut add = |(from, to): Between| {
        denied.push(Denied {
            from: left + from.max(least),
            to: left + to.min(most),
            shared,
        });
    };
    match shapes(laid, it) {
        None => add((least, most)),
        Some((ours, theirs)) => {
            let turned = Turned {
                ours: laid.turned,
                theirs: it.turned,
            };
            let ahead = along - laid.place.along;
            let between = ours.denied_across(theirs, turned, ahead);
            between.into_iter().for_each(add);
        }
    }
}

/// Adds what the flaws of a bolt deny to a form at this place along it. The whole width and length of
/// a shape keeps clear of them.
pub(super) fn deny_flaws(
    cloth: &Cloth,
    bolt: u32,
    form: &Form,
    along: Length,
    denied: &mut Vec<Denied>,
) {
    let end = along + form.length;
    for flaw in cloth.flaws_of(bolt) {
        if along < flaw.to && flaw.from < end {
            denied.push(Denied {
                from: flaw.left - form.width,
                to: flaw.right,
                shared: (flaw.to - along).min(end - flaw.from),
            });
        }
    }
}

/// Whether two pieces overlap or lie nearer than `gap` to each other.
pub(super) fn are_too_near(gap: Length, laid: &Laid<'_>, it: &Laid<'_>) -> bool {
    let apart = |near: Length, far: Length| near + gap <= far;
    let (left, right) = (laid.place.across, laid.place.across + laid.form.width);
    let its_right = it.place.across + it.form.width;
    if apart(laid.end(), it.place.along)
        || apart(it.end(), laid.place.along)
        || apart(right, it.place.across)
        || apart(its_right, left)
    {
        return false;
    }
    if shapes(laid, it.lying()).is_none() {
        return true;
    }
    let mut denied = Vec::new();
    deny(gap, laid, it.lying(), it.place.along, &mut denied);
    denied.iter().any(|denied| denied.holds(it.place.across))
}

/// The shapes of two forms that are not both rectangles.
pub(super) fn shapes<'forms>(
    laid: &Laid<'forms>,
    it: Lying<'forms>,
) -> Option<(&'forms Shape, &'forms Shape)> {
    let shapes = laid.form.shape.as_ref().zip(it.form.shape.as_ref());
    shapes.filter(|(ours, theirs)| !(ours.is_rectangle() && theirs.is_rectangle()))
}
