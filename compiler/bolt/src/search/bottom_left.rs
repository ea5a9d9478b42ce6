//! Laying pieces one after another, each at the first place that is free.

use std::collections::BTreeMap;
use std::mem;

use pelmet_measure::Length;

use super::columns::{OnBolt, first_in_columns};
use super::form::{Denied, Laid, Lying, Wanted, Ways, are_too_near, deny, deny_flaws};
use super::near::Near;
use crate::Cloth;
use crate::effort::Steps;
use crate::print::Grid;
use crate::space::Place;

/// Lays the forms in this order, each as near to the start of the first bolt and then as far to
/// the left as it may lie. `None` where the steps run out first, or the cloth used of one bolt
/// passes `limit`.
pub(super) fn bottom_left<'forms>(
    cloth: &Cloth,
    order: &[Wanted<'forms>],
    limit: Length,
    steps: &mut Steps,
) -> Option<Vec<Laid<'forms>>> {
    let end = cloth.far_corner().along.min(limit);
    let mut bolts = vec![Bolt::new(cloth, 0, end, longest(order))];
    for wanted in order {
        let found = bolts
            .iter_mut()
            .find_map(|bolt| bolt.lay(*wanted, steps))
            .is_some();
        if !found {
            // Only a bolt with an end has another after it.
            cloth.bolt_length?;
            lay_on_next(&mut bolts, *wanted, longest(order), steps)?;
        }
        if steps.are_spent() {
            return None;
        }
    }
    let laid = (0..).zip(bolts).flat_map(|(number, bolt)| {
        let numbered = move |it| Laid { bolt: number, ..it };
        bolt.laid.into_iter().map(numbered)
    });
    Some(laid.collect())
}

/// Lays a form on the next bolt that has room for it: flaws may leave none on a bolt.
fn lay_on_next<'cloth, 'forms>(
    bolts: &mut Vec<Bolt<'cloth, 'forms>>,
    wanted: Wanted<'forms>,
    longest: Length,
    steps: &mut Steps,
) -> Option<()> {
    let (cloth, end) = bolts.first().map(|bolt| (bolt.cloth, bolt.end))?;
    loop {
        let number = u32::try_from(bolts.len()).ok()?;
        let mut next = Bolt::new(cloth, number, end, longest);
        let found = next.lay(wanted, steps).is_some();
        bolts.push(next);
        if found {
            return Some(());
        }
        if !cloth.has_better_bolt(number, Length::ZERO) {
            return None;
        }
    }
}

/// Lays the forms on one bolt from its start on: of those that may lie at the first free place,
/// the first in this order. `None` where the steps run out first, or the cloth used passes `limit`.
pub(super) fn best_fit<'forms>(
    cloth: &Cloth,
    order: &[Wanted<'forms>],
    limit: Length,
    steps: &mut Steps,
) -> Option<Vec<Laid<'forms>>> {
    let mut bolt = Bolt::new(
        cloth,
        0,
        cloth.far_corner().along.min(limit),
        longest(order),
    );
    let mut waiting = Vec::with_capacity(order.len());
    for wanted in order {
        waiting.push((*wanted, bolt.at_first_place(*wanted, steps)?));
    }
    while let Some(first) = first_of(&waiting) {
        let (_, laid) = waiting.remove(first);
        bolt.add(laid);
        steps.spend(waiting.len());
        for (wanted, it) in &mut waiting {
            if are_too_near(cloth.gap, &laid, it) {
                *it = bolt.at_first_place(*wanted, steps)?;
            }
        }
        if steps.are_spent() {
            return None;
        }
    }
    Some(bolt.laid)
}

/// The length of the longest piece.
fn longest(order: &[Wanted<'_>]) -> Length {
    let lengths = order.iter().map(|wanted| wanted.form.length);
    lengths.max().unwrap_or_default()
}

/// Which of the pieces lies first along the bolt, then across it.
fn first_of(waiting: &[(Wanted<'_>, Laid<'_>)]) -> Option<usize> {
    let key = |(_, (_, it)): &(usize, &(Wanted<'_>, Laid<'_>))| (it.place.along, it.place.across);
    waiting.iter().enumerate().min_by_key(key).map(|(at, _)| at)
}

/// One bolt, partly laid.
struct Bolt<'cloth, 'forms> {
    cloth: &'cloth Cloth,
    number: u32,
    /// Nothing may lie beyond this.
    end: Length,
    laid: Vec<Laid<'forms>>,
    near: Near,
    /// Where a piece may first be pushed up against another or against a flaw, in order; and the
    /// start of the bolt.
    contacts: Vec<Length>,
    /// Before this line a form, by number and the ways it is wanted, has found no place and never
    /// will.
    tried: BTreeMap<(usize, Ways), Length>,
    /// What is denied on the line at hand; kept for its memory.
    denied: Vec<Denied>,
}

impl<'cloth, 'forms> Bolt<'cloth, 'forms> {
    /// A bolt with nothing on it, nor anything to come that is longer than the `longest`.
    fn new(
        cloth: &'cloth Cloth,
        number: u32,
        end: Length,
        longest: Length,
    ) -> Bolt<'cloth, 'forms> {
        let mut contacts = vec![Length::ZERO];
        contacts.extend(cloth.flaws_of(number).map(|flaw| flaw.to));
        contacts.sort_unstable();
        contacts.dedup();
        Bolt {
            cloth,
            number,
            end,
            laid: Vec::new(),
            near: Near::none(longest + cloth.gap),
            contacts,
            tried: BTreeMap::new(),
            denied: Vec::new(),
        }
    }

    /// Lays a form at the first free place, if there is one.
    fn lay(&mut self, wanted: Wanted<'forms>, steps: &mut Steps) -> Option<()> {
        let laid = self.at_first_place(wanted, steps)?;
        self.add(laid);
        Some(())
    }

    /// A form at the first free place, if there is one.
    fn at_first_place(
        &mut self,
        wanted: Wanted<'forms>,
        steps: &mut Steps,
    ) -> Option<Laid<'forms>> {
        let Wanted { form, ways } = wanted;
        let tried = self.tried.get(&(form.number, ways)).copied();
        let from = tried.unwrap_or(Length::ZERO);
        let mut best: Option<(Place, bool)> = None;
        for turned in ways {
            let it = Lying {
                form,
                turned: *turned,
            };
            for grid in form.grids.iter() {
                let last = best.map_or(self.end - form.length, |(best, _)| best.along);
                let found = self.first_free(it, grid, (from, last), steps);
                let found = self.nearer(it, grid, from, found, steps);
                best = [best, found.map(|place| (place, *turned))]
                    .into_iter()
                    .flatten()
                    .min_by_key(|(place, _)| (place.along, place.across));
            }
        }
        let (place, turned) = best?;
        self.tried.insert((form.number, ways), place.along);
        Some(Laid {
            form,
            bolt: 0,
            place,
            turned,
        })
    }

    /// The nearer of a place and what there is for shapes in columns along plain cloth.
    fn nearer(
        &self,
        it: Lying<'forms>,
        grid: Grid,
        from: Length,
        found: Option<Place>,
        steps: &mut Steps,
    ) -> Option<Place> {
        if it.form.shape.is_none() || grid.along.period.is_positive() {
            return found;
        }
        let end = found.map_or(self.end - it.form.length, |place| place.along);
        let last = end + it.form.length + self.cloth.gap;
        let near: Vec<Laid<'_>> = self.near(from, last).copied().collect();
        let on = OnBolt {
            cloth: self.cloth,
            number: self.number,
            laid: &near,
        };
        let in_columns = first_in_columns(on, it, grid.across, (from, end), steps);
        in_columns.or(found)
    }

    fn add(&mut self, laid: Laid<'forms>) {
        let contact = laid.end() + self.cloth.gap;
        if let Err(at) = self.contacts.binary_search(&contact) {
            self.contacts.insert(at, contact);
        }
        self.near.add(laid.place.along, self.laid.len());
        self.laid.push(laid);
    }

    /// The first free place on one grid, not before the first of `lines` nor after the second.
    fn first_free(
        &mut self,
        it: Lying<'_>,
        grid: Grid,
        (from, last): (Length, Length),
        steps: &mut Steps,
    ) -> Option<Place> {
        let mut line = Length::from_nanometres(-1);
        let before = |contact: &Length| grid.along.at_or_after(*contact) < from;
        for at in self.contacts.partition_point(before)..self.contacts.len() {
            let contact = self.contacts.get(at)?;
            let next = grid.along.at_or_after(*contact);
            if next <= line {
                continue;
            }
            if next > last {
                return None;
            }
            line = next;
            if let Some(across) = self.first_across(it, grid, line, steps) {
                return Some(Place {
                    across,
                    along: line,
                });
            }
        }
        None
    }

    /// The pieces that may lie partly between two places along the bolt, with the gap beyond them.
    fn near(&self, from: Length, to: Length) -> impl Iterator<Item = &Laid<'forms>> {
        let near = self.near.between(from, to).iter();
        near.filter_map(|(_, number)| self.laid.get(*number))
    }

    fn first_across(
        &mut self,
        it: Lying<'_>,
        grid: Grid,
        along: Length,
        steps: &mut Steps,
    ) -> Option<Length> {
        let gap = self.cloth.gap;
        let mut all_denied = mem::take(&mut self.denied);
        all_denied.clear();
        let mut looks = 1_usize;
        for laid in self.near(along, along + it.form.length + gap) {
            looks = looks.saturating_add(1);
            deny(gap, laid, it, along, &mut all_denied);
        }
        deny_flaws(self.cloth, self.number, it.form, along, &mut all_denied);
        self.denied = all_denied;
        steps.spend(looks.saturating_mul(it.form.steps()));
        self.denied.sort_unstable();
        let mut across = grid.across.at_or_after(Length::ZERO);
        for denied in &self.denied {
            if denied.from >= across {
                break;
            }
            if across < denied.to {
                across = grid.across.at_or_after(denied.to);
            }
        }
        (across + it.form.width <= self.cloth.usable_width).then_some(across)
    }
}
