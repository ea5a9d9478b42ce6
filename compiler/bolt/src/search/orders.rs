//! Search among the orders in which pieces may be laid.

use std::cmp::Reverse;

use pelmet_measure::Length;

use super::dice::Dice;
use super::form::{Form, Laid};
use super::goal::{Cost, Goal};
use crate::Cloth;
use crate::effort::Steps;

/// After so many changes in vain the search goes on from the best order found, shaken.
const PATIENCE: usize = 400;

/// So many changes shake an order.
const SHAKES: usize = 4;

/// A way to lay forms in an order on a cloth, no further than a limit along one bolt.
pub(super) type Way =
    for<'forms> fn(&Cloth, &[&'forms Form], Length, &mut Steps) -> Option<Vec<Laid<'forms>>>;

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
    for order in first_orders(forms).into_iter().chain([as_laid(&best)]) {
        if let Some(laid) = way(goal.cloth, &order, goal.end_of(&best), steps)
            && goal.cost(&laid) <= best_cost
        {
            (best_cost, best_order, best) = (goal.cost(&laid), order, laid);
        }
    }
    let mut climb = Climb {
        way,
        dice,
        cost: best_cost,
        order: best_order.clone(),
        in_vain: 0,
    };
    while !steps.are_spent() && !goal.is_met(&best) {
        if climb.in_vain > PATIENCE {
            climb.start_from(&best_order);
        }
        let Some(laid) = climb.step(goal, steps) else {
            continue;
        };
        if climb.cost < best_cost {
            (best_cost, best_order, best) = (climb.cost, climb.order.clone(), laid);
        }
    }
    best
}

/// The orders that people try first.
fn first_orders<'forms>(forms: &[&'forms Form]) -> [Vec<&'forms Form>; 3] {
    let by = |key: fn(&Form) -> (Length, Length)| {
        let mut order = forms.to_vec();
        order.sort_by_key(|form| Reverse((key(form), form.number)));
        order
    };
    [
        by(|form| (form.length, form.width)),
        by(|form| (form.width, form.length)),
        by(|form| (form.width + form.length, form.length)),
    ]
}

/// The order in which pieces lie along the bolts.
fn as_laid<'forms>(laid: &[Laid<'forms>]) -> Vec<&'forms Form> {
    let mut in_order = laid.to_vec();
    in_order.sort_by_key(|it| (it.bolt, it.place.along, it.place.across));
    in_order.iter().map(|it| it.form).collect()
}

/// One climb from order to order.
struct Climb<'run, 'forms> {
    way: Way,
    dice: &'run mut Dice,
    /// What the layout of the order costs; after a shake, more than anything.
    cost: Cost,
    order: Vec<&'forms Form>,
    in_vain: usize,
}

impl<'forms> Climb<'_, 'forms> {
    fn start_from(&mut self, order: &[&'forms Form]) {
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
            .filter(|laid| goal.cost(laid) <= self.cost);
        match &laid {
            Some(laid) => {
                let cost = goal.cost(laid);
                if cost < self.cost {
                    self.in_vain = 0;
                }
                self.cost = cost;
            }
            None => self.order = before,
        }
        laid
    }

    /// Moves one piece to another place in the order, or lets two change places.
    fn change(&mut self) {
        let from = self.dice.throw(self.order.len());
        let to = self.dice.throw(self.order.len());
        if self.dice.throw(2) == 0 {
            self.order.swap(from, to);
        } else if !self.order.is_empty() {
            let form = self.order.remove(from);
            self.order.insert(to, form);
        }
    }
}
