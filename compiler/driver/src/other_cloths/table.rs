//! What a job takes of a cloth and of each that might take its place.

use pelmet_design::Design;
use pelmet_measure::{Length, Money};
use pelmet_model::Fabric;
use pelmet_packet::{Amount, ClothCompared, ClothTaken, ClothTrial, Measure};

use super::sheet::Asked;
use crate::assemble::{Printer, cost, pieces_along, print_repeat};
use crate::layout::{Tried, Unfit, tried};

/// The trials of one cloth.
pub(super) struct Table<'a> {
    pub(super) design: &'a Design,
    pub(super) cloth: usize,
    pub(super) printer: Printer<'a>,
}

impl Table<'_> {
    /// `None` where nothing is cut from the cloth.
    pub(super) fn of(&self, asked: &Asked) -> Option<ClothCompared> {
        let now = self.design.job.fabrics.get(self.cloth)?;
        let as_it_is = self.tried(now)?;
        let mut trials = vec![self.trial("as it is", now, Some(&as_it_is), None)];
        for (what, name) in &asked.others {
            let fabrics = &self.design.job.fabrics;
            let other = fabrics.iter().find(|fabric| fabric.name == *name)?;
            let tried = self.tried(other)?;
            trials.push(self.trial(what, other, Some(&tried), Some(&as_it_is)));
        }
        Some(ClothCompared {
            name: asked.cloth.clone(),
            trials,
        })
    }

    /// The job with this cloth, or why not; `None` where nothing would be cut from it.
    fn tried(&self, fabric: &Fabric) -> Option<Result<Tried, String>> {
        match tried(self.design, self.cloth, fabric) {
            Ok(tried) => Some(Ok(tried)),
            Err(Unfit::NotUsed) => None,
            Err(Unfit::Found(why)) => Some(Err(why)),
            Err(Unfit::CannotBeLaid(finding)) => Some(Err(finding.to_string())),
        }
    }

    fn trial(
        &self,
        what: &str,
        fabric: &Fabric,
        tried: Option<&Result<Tried, String>>,
        before: Option<&Result<Tried, String>>,
    ) -> ClothTrial {
        let taken = tried.and_then(|tried| tried.as_ref().ok());
        let before = before.and_then(|before| before.as_ref().ok());
        let railroad = taken.map_or(fabric.railroad, |taken| taken.fabric.railroad);
        ClothTrial {
            what: what.to_owned(),
            width: self.printer.plain(fabric.width),
            repeat: fabric
                .repeat
                .map(|repeat| print_repeat(repeat, &self.printer)),
            way_up: fabric.way,
            along: pieces_along(railroad),
            taken: taken.map(|taken| self.taken(taken, before)),
            impossible: tried.and_then(|tried| tried.as_ref().err()).cloned(),
        }
    }

    fn taken(&self, tried: &Tried, before: Option<&Tried>) -> ClothTaken {
        let (layout, printer) = (&tried.layout, &self.printer);
        let money = self.money(tried);
        let was = before.and_then(|before| self.money(before));
        let more = money.zip(was).map(|(now, was)| now - was);
        ClothTaken {
            piece_count: u32::try_from(layout.placed.len()).unwrap_or(u32::MAX),
            exact: printer.cut(layout.exact),
            bought: printer.bolt(layout.bought),
            rule_of_thumb: printer.bought(layout.rule_of_thumb),
            at_least: printer.at_least(layout.lower_bound),
            cost: money.map(|money| printer.amount(money)),
            more_bought: before.map(|before| self.more(layout.bought - before.layout.bought)),
            more_cost: more.map(|more| self.more_money(more)),
        }
    }

    fn money(&self, tried: &Tried) -> Option<Money> {
        cost(tried.fabric.price.as_ref()?, tried.layout.bought)
    }

    /// A difference of lengths, in words of its own.
    fn more(&self, length: Length) -> Measure {
        let size = self.printer.bolt(length.abs());
        Measure {
            mm: length.as_millimetres_f64(),
            text: differing(&size.text, length.is_zero(), length.is_negative()),
        }
    }

    fn more_money(&self, money: Money) -> Amount {
        let none = Money::from_hundredths(0);
        let size = if money < none { none - money } else { money };
        let size = self.printer.amount(size);
        Amount {
            amount: if money < none {
                -size.amount
            } else {
                size.amount
            },
            text: differing(&size.text, money == none, money < none),
        }
    }
}

fn differing(size: &str, is_none: bool, is_less: bool) -> String {
    match (is_none, is_less) {
        (true, _) => String::from("the same"),
        (false, true) => format!("{size} less"),
        (false, false) => format!("{size} more"),
    }
}
