//! The cloths to buy and their layouts.

use pelmet_bolt::{BoltFlaw, BoltLengths, LayoutBand, LayoutCloth};
use pelmet_measure::{Length, Money};
use pelmet_model::{Fabric, Job, Railroad, Repeat};
use pelmet_packet::{Amount, Band, BoltUsed, Cloth, Flaw, PiecesAlong, PrintRepeat, WayCompared};

use super::count::{number, ordinal};
use super::placed_piece::placed_pieces;
use super::price::{cost, price};
use super::printer::Printer;
use super::sections;
use crate::layout::{LaidCloth, RailroadTried};

/// Every cloth that something is cut from, by name.
pub(crate) fn cloths(job: &Job, laid: &[LaidCloth], printer: &Printer<'_>) -> Vec<Cloth> {
    let mut cloths: Vec<Cloth> = laid
        .iter()
        .filter_map(|laid| {
            Some(cloth(
                job,
                job.fabrics.get(laid.to_lay.fabric)?,
                laid,
                printer,
            ))
        })
        .collect();
    cloths.sort_by(|one, other| one.name.cmp(&other.name));
    cloths
}

/// What all the cloths cost; `None` where one of them has no price.
pub(crate) fn cost_of_all(job: &Job, laid: &[LaidCloth], printer: &Printer<'_>) -> Option<Amount> {
    let costs = laid.iter().map(|laid| {
        let fabric = job.fabrics.get(laid.to_lay.fabric)?;
        cost(fabric.price.as_ref()?, laid.layout.bought)
    });
    let together: Money = costs.collect::<Option<Vec<Money>>>()?.into_iter().sum();
    (!laid.is_empty()).then(|| printer.amount(together))
}

fn cloth(job: &Job, fabric: &Fabric, laid: &LaidCloth, printer: &Printer<'_>) -> Cloth {
    let layout = &laid.layout;
    let cost = |length: Length| {
        let money = cost(fabric.price.as_ref()?, length)?;
        Some(printer.amount(money))
    };
    let by_rule = layout
        .rule_of_thumb
        .round_up_to(printer.style.buying_step());
    Cloth {
        name: fabric.name.clone(),
        width: printer.plain(fabric.width),
        usable_width: printer.plain(fabric.usable_width()),
        repeat: fabric.repeat.map(|repeat| print_repeat(repeat, printer)),
        print_line: laid.to_lay.print_line.map(|line| printer.mark(line)),
        print_line_across: print_line_across(fabric, laid).map(|line| printer.mark(line)),
        flaws: flaws(&laid.to_lay.cloth, printer),
        way_up: fabric.way,
        piece_count: number(layout.placed.len()),
        exact: printer.cut(layout.exact),
        bought: printer.bolt(layout.bought),
        rule_of_thumb: printer.bought(layout.rule_of_thumb),
        at_least: printer.at_least(layout.lower_bound),
        cannot_be_beaten: layout.cannot_be_beaten(&laid.to_lay.cloth),
        search_stopped: layout.stopped_early,
        bolts: bolts(&layout.bolts, printer),
        price: fabric.price.as_ref().map(|stated| price(stated, printer)),
        cost: cost(layout.bought),
        exact_cost: cost(layout.exact),
        rule_of_thumb_cost: cost(by_rule),
        at_least_cost: cost(layout.lower_bound),
        ways_compared: ways_compared(fabric, laid, printer),
        sections: sections::sections(laid, printer),
        placed: placed_pieces(job, laid, printer),
        bands: bands(laid, printer),
    }
}

fn ways_compared(fabric: &Fabric, laid: &LaidCloth, printer: &Printer<'_>) -> Vec<WayCompared> {
    let way = |way: &RailroadTried| WayCompared {
        along: pieces_along(way.railroad),
        bought: printer.bolt(way.bought),
        cost: fabric
            .price
            .as_ref()
            .and_then(|price| cost(price, way.bought))
            .map(|money| printer.amount(money)),
        is_used: way.railroad == fabric.railroad,
    };
    laid.ways.iter().map(way).collect()
}

fn bolts(used: &[BoltLengths], printer: &Printer<'_>) -> Vec<BoltUsed> {
    (1..)
        .zip(used)
        .map(|(number, used)| BoltUsed {
            number,
            exact: printer.cut(used.exact),
            bought: printer.bolt(used.bought),
        })
        .collect()
}

/// The first line of the print across the bolt within the usable width, where it holds a piece.
fn print_line_across(fabric: &Fabric, laid: &LaidCloth) -> Option<Length> {
    let mut cuts = laid.to_lay.cuts.iter();
    cuts.find(|cut| cut.piece.phase_across.is_some())?;
    let across = fabric.repeat?.across?;
    let line = fabric.print_line_across();
    Some(line - line.round_down_to(across))
}

/// The flaws between the selvages, in their order along the bolts.
fn flaws(cloth: &LayoutCloth, printer: &Printer<'_>) -> Vec<Flaw> {
    let mut in_order = cloth.flaws.clone();
    in_order.sort_unstable();
    let flaw = |flaw: &BoltFlaw| Flaw {
        bolt: flaw.bolt.saturating_add(1),
        from: printer.mark(flaw.from),
        to: printer.mark(flaw.to),
        left: printer.mark(flaw.left),
        right: printer.mark(flaw.right),
        whole_width: flaw.left.is_zero() && flaw.right == cloth.usable_width,
    };
    in_order.iter().map(flaw).collect()
}

pub(crate) fn pieces_along(railroad: Railroad) -> PiecesAlong {
    match railroad {
        Railroad::Never => PiecesAlong::None,
        Railroad::WhereTooWide | Railroad::WhereItSaves => PiecesAlong::TooWide,
        Railroad::Always => PiecesAlong::AllThatFit,
    }
}

pub(crate) fn print_repeat(repeat: Repeat, printer: &Printer<'_>) -> PrintRepeat {
    PrintRepeat {
        along: repeat.along.map(|along| printer.plain(along)),
        across: repeat.across.map(|across| printer.plain(across)),
        matching: repeat.matching,
    }
}

/// Parts the layout where it can be cut straight across without cutting into a piece; the pieces of each
/// part by their numbers, from left to right.
fn bands(laid: &LaidCloth, printer: &Printer<'_>) -> Vec<Band> {
    let across = |index: &usize| laid.layout.placed.get(*index).map(|placed| placed.across);
    let band = |mut band: LayoutBand| {
        band.placed.sort_by_key(|index| (across(index), *index));
        Band {
            bolt: band.bolt.saturating_add(1),
            from: printer.mark(band.from),
            to: printer.cut(band.to),
            pieces: band.placed.into_iter().map(ordinal).collect(),
        }
    };
    let bands = laid.layout.bands(&laid.to_lay.pieces());
    bands.into_iter().map(band).collect()
}
