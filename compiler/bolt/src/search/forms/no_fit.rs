//! Which places pieces deny each other, on one line along the bolt or in one column across it: slices of
//! what nesting calls the no-fit polygon.

use pelmet_measure::Length;

use super::form::Form;
use super::laid::{Laid, Lying};
use crate::given::LayoutCloth;
use crate::places::NoFit;

/// Places across that a piece denies to another: all between these two, but not these themselves.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub(crate) struct NoFitAcross {
    pub from: Length,
    pub to: Length,
    /// How far the two share the bolt's length at most.
    pub shared: Length,
}

impl NoFitAcross {
    /// Whether a place across is one of those denied.
    pub(crate) fn holds(&self, across: Length) -> bool {
        self.from < across && across < self.to
    }
}

/// Adds what `laid` denies to a form at this place along the bolt, with `gap` between them.
///
/// No piece leaves its width and length, however far its outline may stray: what the shapes deny is cut
/// short to what their rectangles would, and `grown` slabs that reach beyond count for nothing.
pub(crate) fn deny(
    gap: Length,
    laid: &Laid<'_>,
    it: Lying<'_>,
    along: Length,
    denied: &mut Vec<NoFitAcross>,
) {
    let (start, end) = (laid.place.along - gap, laid.end() + gap);
    let form_end = along + it.form.length;
    if along >= end || form_end <= start {
        return;
    }
    let shared = (end - along).min(form_end - start);
    let left = laid.place.across;
    let (least, most) = (-(it.form.width + gap), laid.form.width + gap);
    let mut add = |(from, to): NoFit| {
        denied.push(NoFitAcross {
            from: left + from.max(least),
            to: left + to.min(most),
            shared,
        });
    };
    match laid.lying().shapes_with(it) {
        None => add((least, most)),
        Some((ours, theirs)) => {
            let ahead = along - laid.place.along;
            let between = ours.no_fit_across(theirs, ahead);
            between.into_iter().for_each(add);
        }
    }
}

/// Adds what `laid` denies to a form in this column across the bolt, with `gap` between them: places
/// along it.
pub(crate) fn deny_along(
    gap: Length,
    laid: &Laid<'_>,
    it: Lying<'_>,
    across: Length,
    denied: &mut Vec<NoFit>,
) {
    let start = laid.place.along;
    let right = across - laid.place.across;
    if right >= laid.form.width + gap || -right >= it.form.width + gap {
        return;
    }
    let (least, most) = (-(it.form.length + gap), laid.form.length + gap);
    match laid.lying().shapes_with(it) {
        None => denied.push((start + least, start + most)),
        Some((ours, theirs)) => {
            let between = ours.no_fit_along(theirs, right);
            let clipped = |(from, to): NoFit| (start + from.max(least), start + to.min(most));
            denied.extend(between.into_iter().map(clipped));
        }
    }
}

/// Adds what the flaws of a bolt deny to a form at this place along it. The whole width and length of
/// a shape keeps clear of them.
pub(crate) fn deny_flaws(
    cloth: &LayoutCloth,
    bolt: u32,
    form: &Form,
    along: Length,
    denied: &mut Vec<NoFitAcross>,
) {
    let end = along + form.length;
    for flaw in cloth.flaws_of(bolt) {
        if flaw.lies_between(along, end) {
            denied.push(NoFitAcross {
                from: flaw.left - form.width,
                to: flaw.right,
                shared: (flaw.to - along).min(end - flaw.from),
            });
        }
    }
}

/// Whether two pieces overlap or lie nearer than `gap` to each other.
pub(crate) fn are_too_near(gap: Length, laid: &Laid<'_>, it: &Laid<'_>) -> bool {
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
    if laid.lying().shapes_with(it.lying()).is_none() {
        return true;
    }
    let mut denied = Vec::new();
    deny(gap, laid, it.lying(), it.place.along, &mut denied);
    denied.iter().any(|denied| denied.holds(it.place.across))
}
