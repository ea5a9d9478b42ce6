//! The cloths to buy and their layouts.

use std::collections::BTreeSet;

use pelmet_bolt::{BoltUsed as BoltMade, Corner, Outline, Placed, Section};
use pelmet_measure::{Length, Money};
use pelmet_model::{Fabric, Job, Price as PriceStated, Railroad, Repeat};

use super::printer::{Printer, cost, money};
use super::reckoning::Reckoning;
use super::{number, ordinal, piece, sections};
use crate::layout::{CutPiece, LaidCloth};
use pelmet_packet::{
    Amount, Band, BoltUsed, Cloth, Flaw, Measure, PiecesAlong, PlacedCorner, PlacedPiece, Price,
    PrintRepeat, WayCompared,
};

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
        at_least: printer.at_least(layout.at_least),
        cannot_be_beaten: layout.cannot_be_beaten(&laid.to_lay.cloth),
        search_stopped: layout.stopped_early,
        bolts: bolts(&layout.bolts, printer),
        price: fabric.price.as_ref().map(|stated| price(stated, printer)),
        cost: cost(layout.bought),
        exact_cost: cost(layout.exact),
        rule_of_thumb_cost: cost(by_rule),
        at_least_cost: cost(layout.at_least),
        ways_compared: ways_compared(fabric, laid, printer),
        sections: sections::sections(laid, printer),
        placed: placed_pieces(job, laid, printer),
        bands: bands(laid, printer),
    }
}

fn ways_compared(fabric: &Fabric, laid: &LaidCloth, printer: &Printer<'_>) -> Vec<WayCompared> {
    let way = |way: &crate::layout::WayCompared| WayCompared {
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

fn bolts(used: &[BoltMade], printer: &Printer<'_>) -> Vec<BoltUsed> {
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
fn flaws(cloth: &pelmet_bolt::Cloth, printer: &Printer<'_>) -> Vec<Flaw> {
    let mut in_order = cloth.flaws.clone();
    in_order.sort_unstable();
    let flaw = |flaw: &pelmet_bolt::Flaw| Flaw {
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

/// A price for a length, in words too.
pub(super) fn price(stated: &PriceStated, printer: &Printer<'_>) -> Price {
    let amount = printer.amount(money(stated.amount));
    let per = per(stated.per, printer);
    let text = format!("{} per {}", amount.text, per.text.trim_start_matches("1 "));
    Price { amount, per, text }
}

/// How what a length costs comes about; `None` for a price that buys no length.
pub(super) fn reckoning(
    price: &PriceStated,
    length: Length,
    printer: &Printer<'_>,
) -> Option<Reckoning> {
    let per = per(price.per, printer);
    Some(Reckoning {
        quantity: length.ratio_to(price.per)?,
        unit: per.text.trim_start_matches("1 ").to_owned(),
        price: price.amount,
    })
}

/// The length a price buys; a yard and a metre keep their names in either system of units.
fn per(length: Length, printer: &Printer<'_>) -> Measure {
    let named = |text: &str| Measure {
        text: text.to_owned(),
        ..printer.plain(length)
    };
    match length {
        Length::YARD => named("1 yd"),
        Length::METRE => named("1 m"),
        other => printer.plain(other),
    }
}

fn placed_pieces(job: &Job, laid: &LaidCloth, printer: &Printer<'_>) -> Vec<PlacedPiece> {
    let nested = nested(laid);
    laid.layout
        .placed
        .iter()
        .enumerate()
        .filter_map(|(index, placed)| {
            let cut = laid.to_lay.cuts.get(placed.piece)?;
            let sections = &laid.layout.sections;
            let piece = placed_piece(job, ordinal(index), (placed, cut), sections, printer)?;
            let (across, along) = print_held(job, laid, placed, cut);
            Some(PlacedPiece {
                nested: nested.contains(&index),
                print_across: across.map(|place| printer.mark(place)),
                print_along: along.map(|place| printer.mark(place)),
                ..piece
            })
        })
        .collect()
}

/// Where on the bolt a piece is held by the print, across and along.
fn print_held(
    job: &Job,
    laid: &LaidCloth,
    placed: &Placed,
    cut: &CutPiece,
) -> (Option<Length>, Option<Length>) {
    let fabric = job.fabrics.get(laid.to_lay.fabric);
    let line_across = fabric.map_or(Length::ZERO, Fabric::print_line_across);
    let line_along = laid.to_lay.print_line.unwrap_or_default();
    let across = cut.piece.phase_across;
    let along = cut.piece.phase_along;
    (
        across.map(|phase| placed.across + phase + line_across),
        along.map(|phase| placed.along + phase + line_along),
    )
}

/// Where the corners of an outline lie on the bolt.
fn placed_outline(placed: &Placed, cut: &CutPiece, printer: &Printer<'_>) -> Vec<PlacedCorner> {
    let piece = &cut.piece;
    let corners = piece.outline.as_ref().map_or(&[][..], Outline::corners);
    let on_bolt = |corner: &Corner| {
        let (across, along) = if placed.turned {
            (piece.width - corner.across, piece.length - corner.along)
        } else {
            (corner.across, corner.along)
        };
        PlacedCorner {
            across: printer.mark(placed.across + across),
            along: printer.mark(placed.along + along),
        }
    };
    corners.iter().map(on_bolt).collect()
}

/// The pieces that lie partly within the width and length of another, by index.
fn nested(laid: &LaidCloth) -> BTreeSet<usize> {
    let placed = &laid.layout.placed;
    let boxed = |placed: &Placed| {
        let piece = laid.to_lay.cuts.get(placed.piece).map(|cut| &cut.piece)?;
        Some((placed.across + piece.width, placed.along + piece.length))
    };
    let mut nested = BTreeSet::new();
    for (index, one) in placed.iter().enumerate() {
        let Some((right, end)) = boxed(one) else {
            continue;
        };
        let after = placed.iter().enumerate().skip(index.saturating_add(1));
        let beside = after.take_while(|(_, it)| it.bolt == one.bolt && it.along < end);
        for (other, it) in beside {
            let meets = boxed(it).is_some_and(|(its_right, _)| one.across < its_right);
            if meets && it.across < right {
                nested.extend([index, other]);
            }
        }
    }
    nested
}

fn placed_piece(
    job: &Job,
    place: u32,
    (placed, cut): (&Placed, &CutPiece),
    layout_sections: &[Section],
    printer: &Printer<'_>,
) -> Option<PlacedPiece> {
    let window = job.windows.get(cut.window)?;
    let panel = &window.panels.get(cut.panel)?.name;
    let Copy {
        strip,
        copy,
        copies,
    } = copy_of(cut, placed.copy);
    let whole = format!("{} {}", window.name, piece::label(panel, cut.layer));
    let (fold_at, middle_at) = sections::middle(placed, cut, layout_sections);
    let mark = |place: Option<Length>| place.map(|place| printer.mark(place));
    Some(PlacedPiece {
        number: place,
        name: strip.map_or(whole.clone(), |strip| format!("{whole}, strip {strip}")),
        window: window.name.clone(),
        panel: panel.clone(),
        layer: cut.layer.kind(),
        strip,
        copy,
        copies,
        bolt: placed.bolt.saturating_add(1),
        across: printer.mark(placed.across),
        along: printer.mark(placed.along),
        width: printer.cut(cut.piece.width),
        length: printer.cut(cut.piece.length),
        turned: placed.turned,
        railroaded: cut.railroaded,
        nested: false,
        outline: placed_outline(placed, cut, printer),
        print_across: None,
        print_along: None,
        fold_at: mark(fold_at),
        middle_at: mark(middle_at),
    })
}

/// Which of the pieces alike a placed one is, numbered from 1.
struct Copy {
    strip: Option<u32>,
    copy: u32,
    copies: u32,
}

/// Copies of a joined piece are its strips by turns.
fn copy_of(cut: &CutPiece, copy: u32) -> Copy {
    let strips = number(cut.strips.len().max(1));
    let turn = copy.checked_rem(strips).unwrap_or(0);
    Copy {
        strip: usize::try_from(turn)
            .ok()
            .and_then(|turn| cut.strips.get(turn))
            .copied(),
        copy: copy.checked_div(strips).unwrap_or(copy).saturating_add(1),
        copies: cut
            .piece
            .quantity
            .checked_div(strips)
            .unwrap_or(cut.piece.quantity),
    }
}

/// Parts the layout where it can be cut straight across without cutting into a piece.
fn bands(laid: &LaidCloth, printer: &Printer<'_>) -> Vec<Band> {
    let mut bands: Vec<OpenBand> = Vec::new();
    for (index, placed) in laid.layout.placed.iter().enumerate() {
        let length = laid
            .to_lay
            .cuts
            .get(placed.piece)
            .map_or(Length::ZERO, |cut| cut.piece.length);
        let to = placed.along + length;
        let piece = (placed.across, ordinal(index));
        match bands.last_mut() {
            Some(band) if band.bolt == placed.bolt && placed.along < band.to => {
                band.to = band.to.max(to);
                band.pieces.push(piece);
            }
            _ => bands.push(OpenBand {
                bolt: placed.bolt,
                from: placed.along,
                to,
                pieces: vec![piece],
            }),
        }
    }
    bands.into_iter().map(|band| band.closed(printer)).collect()
}

/// A band to which pieces are still added; each piece with its place across and its number.
struct OpenBand {
    bolt: u32,
    from: Length,
    to: Length,
    pieces: Vec<(Length, u32)>,
}

impl OpenBand {
    fn closed(mut self, printer: &Printer<'_>) -> Band {
        self.pieces.sort();
        Band {
            bolt: self.bolt.saturating_add(1),
            from: printer.mark(self.from),
            to: printer.cut(self.to),
            pieces: self.pieces.into_iter().map(|(_, number)| number).collect(),
        }
    }
}
