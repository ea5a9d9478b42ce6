//! Search among the orders in which pieces may be laid.

use std::cmp::Reverse;

use pelmet_measure::Length;

use super::dice::Dice;
use super::form::{EITHER_WAY, Form, Laid, TURNED, UPRIGHT, Wanted};
use super::goal::{Cost, Goal};
use crate::Cloth;
use crate::effort::Steps;

/// After so many changes in vain the search goes on from the best order found, shaken.
const PATIENCE: usize = 400;

/// So many changes shake an order.
const SHAKES: usize = 4;

/// A way to lay forms in an order on a cloth, no further than a limit along one bolt.
pub(super) type Way =
    for<'forms> fn(&Cloth, &[Wanted<'forms>], Length, &mut Steps) -> Option<Vec<Laid<'forms>>>;

/// Looks for the order that gives the cheapest layout. Gives that layout if it is better than
/// `best`, which it may start from; stops early at one that is good enough.
pub(super) fn best_order<'forms>(
    goal: &Goal<'_>,
    way: Way,
    forms: &[&'forms Form],
    mut best: Vec<Laid<'forms>>,
    dice: &mut Dice,
    steps: &mut Steps,
) -> Vec<Laid<'forms>> {
    let mut best_cost = goal.cost(&best);
    let mut best_order = as_laid(&best);
    for order in first_orders(goal.cloth, forms)
        .into_iter()
        .chain([as_laid(&best)])
    {
        if let Some(laid) = way(goal.cloth, &order, best_cost.longest_bolt, steps)
            && goal.cost(&laid) <= best_cost
        {
            (best_cost, best_order, best) = (goal.cost(&laid), order, laid);
            steps.found(best_cost.bought);
        }
    }
    let mut climb = Climb {
        way,
        dice,
        cost: best_cost,
        order: best_order.clone(),
        in_vain: 0,
    };
    while !steps.are_spent() && !goal.is_met(&best_cost) {
        if climb.in_vain > PATIENCE {
            climb.start_from(&best_order);
        }
        let Some(laid) = climb.step(goal, steps) else {
            continue;
        };
        if climb.cost < best_cost {
            (best_cost, best_order, best) = (climb.cost, climb.order.clone(), laid);
            steps.found(best_cost.bought);
        }
    }
    best
}

/// The orders that people try first.
fn first_orders<'forms>(cloth: &Cloth, forms: &[&'forms Form]) -> Vec<Vec<Wanted<'forms>>> {
    let by = |key: fn(&Form) -> (Length, Length)| {
        let mut order = forms.to_vec();
        order.sort_by_key(|form| Reverse((key(form), form.number)));
        order.into_iter().map(Form::any_way).collect()
    };
    let longest_first: Vec<Wanted<'forms>> = by(|form| (form.length, form.width));
    let head_to_tail = head_to_tail(cloth, &longest_first);
    let mut orders = vec![
        longest_first,
        by(|form| (form.width, form.length)),
        by(|form| (form.width + form.length, form.length)),
    ];
    orders.extend(head_to_tail);
    orders
}

/// Of each form that may be turned as many as lie abreast upright, then as many turned, and so on by
/// turns; `None` where no form may be turned.
fn head_to_tail<'forms>(cloth: &Cloth, order: &[Wanted<'forms>]) -> Option<Vec<Wanted<'forms>>> {
    let mut rows = order.to_vec();
    for alike in rows.chunk_by_mut(|one, next| one.form.number == next.form.number) {
        let Some(first) = alike.first().filter(|first| first.may_turn()) else {
            continue;
        };
        let width = first.form.width + cloth.gap;
        let abreast = (cloth.usable_width + cloth.gap)
            .nanometres()
            .checked_div(width.nanometres());
        let abreast = usize::try_from(abreast.unwrap_or(1)).unwrap_or(1).max(1);
        for (wanted, ways) in alike
            .chunks_mut(abreast)
            .zip([UPRIGHT, TURNED].into_iter().cycle())
        {
            wanted.iter_mut().for_each(|wanted| wanted.ways = ways);
        }
    }
    order.iter().any(Wanted::may_turn).then_some(rows)
}

/// The order in which pieces lie along the bolts, each wanted as it lies.
fn as_laid<'forms>(laid: &[Laid<'forms>]) -> Vec<Wanted<'forms>> {
    let mut in_order = laid.to_vec();
    in_order.sort_by_key(|it| (it.bolt, it.place.along, it.place.across));
    let wanted = |it: &Laid<'forms>| Wanted {
        form: it.form,
        ways: if it.turned { TURNED } else { UPRIGHT },
    };
    in_order.iter().map(wanted).collect()
}

/// One climb from order to order.
struct Climb<'run, 'forms> {
    way: Way,
    dice: &'run mut Dice,
    /// What the layout of the order costs; after a shake, more than anything.
    cost: Cost,
    order: Vec<Wanted<'forms>>,
    in_vain: usize,
}

impl<'forms> Climb<'_, 'forms> {
    fn start_from(&mut self, order: &[Wanted<'forms>]) {
        self.order = order.to_vec();
        for _ in 0..SHAKES {
            self.change();
        }
        (self.cost, self.in_vain) = (Cost::MOST, 0);
    }

    /// Tries one change, and keeps it unless it is for the worse; gives the layout then.
    fn step(&mut self, goal: &Goal<'_>, steps: &mut Steps) -> Option<Vec<Laid<'forms>>> {
        steps.spend(1);
        self.in_vain = self.in_vain.saturating_add(1);
        let before = self.order.clone();
        if self.cost != Cost::MOST {
            self.change();
        }
        let laid = (self.way)(goal.cloth, &self.order, self.cost.longest_bolt, steps)
            .map(|laid| (goal.cost(&laid), laid))
            .filter(|(cost, _)| *cost <= self.cost);
        let Some((cost, laid)) = laid else {
            self.order = before;
            return None;
        };
        if cost < self.cost {
            self.in_vain = 0;
        }
        self.cost = cost;
        Some(laid)
    }

    /// Moves one piece to another place in the order, lets two change places, or wants one laid in
    /// another way.
    fn change(&mut self) {
        let from = self.dice.throw(self.order.len());
        if let Some(wanted) = self.order.get_mut(from)
            && wanted.may_turn()
            && self.dice.throw(2) == 0
        {
            let ways = [UPRIGHT, TURNED, EITHER_WAY];
            let thrown = ways.get(self.dice.throw(ways.len())).copied();
            wanted.ways = thrown.unwrap_or(EITHER_WAY);
            return;
        }
        let to = self.dice.throw(self.order.len());
        if self.dice.throw(2) == 0 {
            self.order.swap(from, to);
        } else if !self.order.is_empty() {
            let wanted = self.order.remove(from);
            self.order.insert(to, wanted);
        }
    }
}
