//! Hanging a panel, and checking how it hangs.

use pelmet_diagnostics::listed;
use pelmet_model::{CautionKind, EdgeKind, Heading, NotionKind, SupportOrder};

use super::bench::Bench;
use super::draft::{Added, Draft, together};
use crate::assemble::heading::hang_range;

/// Bringing the panel to its place.
pub(super) fn hang(bench: Bench<'_>) -> Draft {
    let words = [
        Some(support(bench)),
        Some(laid(bench)),
        place(bench),
        returned(bench),
    ];
    let mut cautions = vec![CautionKind::Ladder, CautionKind::Fixing];
    if matches!(bench.window.support, SupportOrder::Rod(_)) {
        cautions.push(CautionKind::RodRating);
    }
    cautions.extend([CautionKind::Heat, CautionKind::Cords]);
    let words = vec![together(words.into_iter().flatten())];
    Draft::added(Added::Hang, words, &cautions)
}

/// The check that ends every order: how far the panel should hang, and what can be done about it.
pub(super) fn check(bench: Bench<'_>) -> Draft {
    let measured = format!(
        "Measure from {} straight down to {}: {}.",
        datum(bench),
        lowest(bench),
        bench.mark(bench.hung.order.drop),
    );
    let words = vec![together([measured, correction(bench)])];
    Draft::added(Added::HangCheck, words, &[CautionKind::Ladder])
}

fn support(bench: Bench<'_>) -> String {
    let name = bench.window.support.name();
    let word = bench.support_word();
    let top = bench.window.top_at.map_or_else(String::new, |top| {
        format!(
            ", its top {} above the floor",
            bench.printer.plain(top).text
        )
    });
    format!("See that the {word} `{name}` is up and level{top}.")
}

fn laid(bench: Bench<'_>) -> String {
    let made = bench.hung.made;
    match &bench.hung.order.heading {
        Heading::OverRod { tail, fastener } => format!(
            "Lay the panel over the rod, the face toward the room, the heading line along the top \
             of the rod and {} of tail down the back{}.",
            bench.printer.plain(*tail).text,
            if fastener.is_some() {
                "; press the strip on its mate"
            } else {
                ""
            },
        ),
        Heading::RodPocket { .. } if bench.is_gathered() => format!(
            "Slide the rod through the pocket and draw the cloth along it evenly until the panel \
             is {} wide.",
            bench.mark(made.finished)
        ),
        Heading::RodPocket { .. } => String::from("Slide the rod through the pocket."),
        Heading::OnBoard { fastener, .. } => format!(
            "Lay the top of the panel back on the board by {}, the heading line along the front \
             edge, and {}.",
            bench.mark(made.heading_depth),
            if fastener.is_some() {
                "press the strip on its mate"
            } else {
                "fasten it there"
            },
        ),
        Heading::Plain if has_rings(bench) => format!(
            "Run the {} through the rings and spread them evenly.",
            bench.support_word()
        ),
        Heading::Plain => format!(
            "Hang the panel from the {} by its top edge.",
            bench.support_word()
        ),
    }
}

fn has_rings(bench: Bench<'_>) -> bool {
    let needs = &bench.hung.made.needs;
    needs.iter().any(|need| need.kind == NotionKind::Rings)
}

/// Where along the row, for a row of several.
fn place(bench: Bench<'_>) -> Option<String> {
    let window = bench.window;
    if window.over_joins.contains(&bench.hung.index) {
        let joins: Vec<String> = bench.joins.iter().map(|at| bench.mark(*at)).collect();
        let noun = match joins.len() {
            1 => "the join",
            _ => "each join",
        };
        return Some(format!(
            "The middle of one goes over {noun} of the row, at {} from the left end.",
            listed(&joins, "and")
        ));
    }
    let places = window.row.iter().zip(1..);
    let places = places.filter(|(panel, _)| **panel == bench.hung.index);
    let places: Vec<String> = places
        .map(|(_, place): (_, i32)| place.to_string())
        .collect();
    let overlap = if window.overlap.is_positive() {
        let overlap = bench.mark(window.overlap);
        format!(", neighbours lying {overlap} over each other")
    } else {
        String::new()
    };
    (window.row.len() > 1).then(|| {
        let are = match places.as_slice() {
            [_] => "Its place in the row, from the left, is",
            _ => "The places in the row, from the left, are",
        };
        format!("{are} {}{overlap}.", listed(&places, "and"))
    })
}

/// The return of an end panel.
fn returned(bench: Bench<'_>) -> Option<String> {
    let row = &bench.window.row;
    let ends = [row.first(), row.last()];
    let is_end = ends
        .into_iter()
        .flatten()
        .any(|end| *end == bench.hung.index);
    let returns = bench.window.returns;
    (is_end && returns.is_positive()).then(|| {
        let returns = bench.mark(returns);
        match row.len() {
            1 => format!("Turn the outer {returns} on each side back to the wall, at the marks."),
            _ => format!(
                "At the end of the row turn the outer {returns} back to the wall, at the mark."
            ),
        }
    })
}

/// Where the drop is measured from.
fn datum(bench: Bench<'_>) -> &'static str {
    match &bench.hung.order.heading {
        Heading::OverRod { .. } => "the top of the rod",
        Heading::RodPocket { .. } => "the fold above the rod",
        Heading::OnBoard { .. } => "the front edge of the board",
        Heading::Plain => "the top edge of the panel",
    }
}

/// Where it is measured to: a level edge shows by three measures whether it hangs level.
fn lowest(bench: Bench<'_>) -> &'static str {
    let made = bench.hung.made;
    let lower = made.shape.edges.iter().zip(&made.shape.corners);
    let mut lower = lower.filter(|(edge, _)| edge.kind == EdgeKind::Lower);
    let level = lower.all(|(edge, from)| edge.curve.is_none() && from.at.down == made.made_length);
    if level {
        "the lower edge, at both sides and in the middle"
    } else {
        "the lowest point of the lower edge"
    }
}

/// What can still be put right, and how far.
fn correction(bench: Bench<'_>) -> String {
    let order = bench.hung.order;
    if let Some(range) = hang_range(&order.heading, order.drop, bench.printer) {
        let moves = match order.heading {
            Heading::OverRod { .. } => " It moves by half of what the strip is shifted.",
            Heading::RodPocket { .. } | Heading::OnBoard { .. } | Heading::Plain => "",
        };
        return format!(
            "If it is out, open the strip and shift it on its mate: with at least half of the \
             strip holding it can hang from {} to {}.{moves} Further than that, move the mate.",
            range.shortest.text, range.longest.text,
        );
    }
    match &order.heading {
        Heading::OverRod { tail, .. } => format!(
            "If it is out, draw it over the rod: what the front loses the tail gains, and the \
             tail has {}.",
            bench.printer.plain(*tail).text
        ),
        Heading::RodPocket { .. } => format!(
            "A pocket cannot be shifted: what is too long or too short is put right {}; what hangs \
             too high or too low at the height of the rod.",
            at_lower_edge(bench)
        ),
        Heading::OnBoard { .. } => {
            String::from("If it is out, fasten the top anew, so much further back or forward.")
        }
        Heading::Plain => format!(
            "What is too long or too short is put right {}; what hangs too high or too low at the \
             height of the {}.",
            at_lower_edge(bench),
            bench.support_word(),
        ),
    }
}

fn at_lower_edge(bench: Bench<'_>) -> String {
    let hem = bench.hung.order.making.face.edges.lower.hem_depth();
    hem.map_or_else(
        || String::from("at the lower edge"),
        |hem| {
            let deep = bench.printer.plain(hem).text;
            format!("in the lower hem, which is {deep} deep")
        },
    )
}
