//! Pieces that are alike to the search.

use std::collections::BTreeMap;

use pelmet_measure::Length;

use crate::Placed;
use crate::cut::Cut;
use crate::print::Grids;
use crate::space::Place;

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
}

/// The forms of a job, and the cuts of each.
pub(super) struct Forms {
    forms: Vec<(Form, Vec<Cut>)>,
}

impl Forms {
    /// The forms of these cuts.
    pub(super) fn of(cuts: &[Cut]) -> Forms {
        let mut alike: BTreeMap<_, Vec<Cut>> = BTreeMap::new();
        for cut in cuts {
            let key = (cut.width, cut.length, cut.grids);
            alike.entry(key).or_default().push(*cut);
        }
        let form = |(number, ((width, length, grids), cuts))| {
            let form = Form {
                number,
                width,
                length,
                grids,
            };
            (form, cuts)
        };
        Forms {
            forms: (0..).zip(alike).map(form).collect(),
        }
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
            Some(cut.placed(it.bolt, it.place))
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
}

impl Laid<'_> {
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

/// What `laid` denies to `form` at this place along the bolt, with `gap` between them.
pub(super) fn denied(gap: Length, laid: &Laid<'_>, form: &Form, along: Length) -> Option<Denied> {
    let (start, end) = (laid.place.along - gap, laid.end() + gap);
    let form_end = along + form.length;
    (along < end && form_end > start).then(|| Denied {
        from: laid.place.across - form.width - gap,
        to: laid.place.across + laid.form.width + gap,
        shared: (end - along).min(form_end - start),
    })
}
