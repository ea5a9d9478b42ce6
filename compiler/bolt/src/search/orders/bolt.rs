//! One bolt, partly laid, and the first place on it that is free for a piece.

use std::collections::BTreeMap;
use std::mem;

use pelmet_measure::Length;

use super::columns::{OnBolt, first_in_columns};
use crate::given::LayoutCloth;
use crate::places::{Grid, Place};
use crate::search::forms::{Laid, Lying, NoFitAcross, Wanted, Ways, deny, deny_flaws};
use crate::search::near::Near;
use crate::search::steps::Steps;

/// The length of the longest piece.
pub(super) fn longest(order: &[Wanted<'_>]) -> Length {
    let lengths = order.iter().map(|wanted| wanted.form.length);
    lengths.max().unwrap_or_default()
}

/// One bolt, partly laid.
pub(super) struct Bolt<'cloth, 'forms> {
    cloth: &'cloth LayoutCloth,
    /// Which bolt, from 0.
    number: u32,
    /// Nothing may lie beyond this.
    end: Length,
    /// Nothing longer is laid on it.
    longest: Length,
    laid: Vec<Laid<'forms>>,
    near: Near,
    /// Where a piece may first be pushed up against another or against a flaw, in order; and the
    /// start of the bolt.
    contacts: Vec<Length>,
    /// Before this line a form, by number and the ways it is wanted, has found no place and never
    /// will.
    tried: BTreeMap<(usize, Ways), Length>,
    /// What is denied on the line at hand; kept for its memory.
    denied: Vec<NoFitAcross>,
}

impl<'cloth, 'forms> Bolt<'cloth, 'forms> {
    /// A bolt with nothing on it, nor anything to come that is longer than the `longest`.
    pub(super) fn new(
        cloth: &'cloth LayoutCloth,
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
            longest,
            laid: Vec::new(),
            near: Near::none(longest + cloth.gap),
            contacts,
            tried: BTreeMap::new(),
            denied: Vec::new(),
        }
    }

    /// Another bolt of the cloth, with nothing on it.
    pub(super) fn another(&self, number: u32) -> Bolt<'cloth, 'forms> {
        Bolt::new(self.cloth, number, self.end, self.longest)
    }

    /// Lays a form at the first free place, if there is one.
    pub(super) fn lay(&mut self, wanted: Wanted<'forms>, steps: &mut Steps) -> Option<()> {
        let laid = self.at_first_place(wanted, steps)?;
        self.add(laid);
        Some(())
    }

    /// Lays a form where it was found to have room.
    pub(super) fn add(&mut self, laid: Laid<'forms>) {
        let contact = laid.end() + self.cloth.gap;
        if let Err(at) = self.contacts.binary_search(&contact) {
            self.contacts.insert(at, contact);
        }
        self.near.add(laid.place.along, self.laid.len());
        self.laid.push(laid);
    }

    /// All that lies on it, as it was laid.
    pub(super) fn into_laid(self) -> Vec<Laid<'forms>> {
        self.laid
    }

    /// A form at the first free place, if there is one.
    ///
    /// Cloth only ever gets used up, so where a form has once found no place none will come free: each
    /// look for it begins where the last one ended. Of many pieces alike, laid one after another, all
    /// together then look along the bolt once.
    pub(super) fn at_first_place(
        &mut self,
        wanted: Wanted<'forms>,
        steps: &mut Steps,
    ) -> Option<Laid<'forms>> {
        let Wanted { form, ways } = wanted;
        let tried = self.tried.get(&(form.number, ways)).copied();
        let from = tried.unwrap_or(Length::ZERO);
        let mut best = None;
        for orientation in ways.iter().copied() {
            let it = Lying { form, orientation };
            for grid in form.grids.iter() {
                let last = best.map_or(self.end - form.length, |(best, _): (Place, _)| best.along);
                let found = self.first_free(it, grid, (from, last), steps);
                let found = self.nearer(it, grid, from, found, steps);
                best = [best, found.map(|place| (place, orientation))]
                    .into_iter()
                    .flatten()
                    .min_by_key(|(place, _)| (place.along, place.across));
            }
        }
        let (place, orientation) = best?;
        self.tried.insert((form.number, ways), place.along);
        Some(Laid {
            form,
            bolt: 0,
            place,
            orientation,
        })
    }

    /// The first free place on one grid, not before the first of two places along nor after the second.
    ///
    /// Pushed toward the start as far as it goes, a rectangle comes to lie against another piece, a flaw
    /// or the start itself, or on the first line of the print behind one of these. So the lines right
    /// behind them are all that need be looked at. (A shape may be pushed on into what another leaves
    /// free, which `nearer` looks for.)
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
            // Several contacts may come before one line of the print.
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

    /// The nearer of a place and what there is for shapes in columns along plain cloth.
    fn nearer(
        &self,
        it: Lying<'forms>,
        grid: Grid,
        from: Length,
        found: Option<Place>,
        steps: &mut Steps,
    ) -> Option<Place> {
        if it.form.shape.is_none() || !grid.along.are_anywhere() {
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

    /// The leftmost place across on one line along the bolt that nothing denies.
    ///
    /// In order of where they begin, what is denied is passed over from left to right: whatever begins at
    /// or behind the place reached leaves it free, and so does all that comes after.
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

    /// The pieces that may lie partly between two places along the bolt, with the gap beyond them.
    fn near(&self, from: Length, to: Length) -> impl Iterator<Item = &Laid<'forms>> {
        let near = self.near.between(from, to).iter();
        near.filter_map(|(_, number)| self.laid.get(*number))
    }
}
