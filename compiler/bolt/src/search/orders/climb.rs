//! From order to order, each a little change of the one before (local search, begun anew from a shaken
//! order where it comes no further: iterated local search, H. R. Lourenço, O. C. Martin and T. Stützle,
//! "Iterated local search", Handbook of Metaheuristics, 2003).

use pelmet_measure::Length;

use super::first_orders::{as_laid, first_orders};
use crate::given::LayoutCloth;
use crate::search::dice::Dice;
use crate::search::forms::{EITHER_WAY, Form, Laid, TURNED, UPRIGHT, Wanted};
use crate::search::goal::{Cost, Goal};
use crate::search::steps::Steps;

/// After so many changes in vain the search goes on from the best order found, shaken.
const PATIENCE: usize = 400;

/// So many changes shake an order.
const SHAKES: usize = 4;

/// A way to lay forms in an order on a cloth, no further than a limit along one bolt.
pub(crate) type Way = for<'forms> fn(
    &LayoutCloth,
    &[Wanted<'forms>],
    Length,
    &mut Steps,
) -> Option<Vec<Laid<'forms>>>;

/// Looks for the order that gives the cheapest layout. Gives that layout if it is better than
/// `best`, which it may start from; stops early at one that is good enough.
///
/// The last of the orders it begins with is that of `best` itself. Laid anew it may even come out
/// shorter, for each piece then goes to the first free place; and an order that gives as good a layout as
/// `best` is taken in its place, since only from an order can the climb go on.
pub(crate) fn best_order<'forms>(
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

/// One climb from order to order.
struct Climb<'run, 'forms> {
    way: Way,
    dice: &'run mut Dice,
    /// What the layout of the order costs; after a shake, more than anything.
    cost: Cost,
    order: Vec<Wanted<'forms>>,
    /// How many changes have been tried since one was for the better.
    in_vain: usize,
}

impl<'forms> Climb<'_, 'forms> {
    /// Goes back to an order and shakes it: far enough to come elsewhere, near enough to keep most of
    /// what is good about it.
    fn start_from(&mut self, order: &[Wanted<'forms>]) {
        self.order = order.to_vec();
        for _ in 0..SHAKES {
            self.change();
        }
        (self.cost, self.in_vain) = (Cost::MOST, 0);
    }

    /// Tries one change, and keeps it unless it is for the worse; gives the layout then.
    ///
    /// One that is neither better nor worse is kept too: most changes move pieces that lie behind each
    /// other anyway, and a long walk among orders as good as each other comes past one that is better.
    /// After a shake any layout will do, so the shaken order is laid as it is.
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
