//! Findings in pieces, headings and making methods.

use num_traits::CheckedAdd;
use pelmet_diagnostics::{Diagnostic, Span, codes};
use pelmet_measure::{Length, Ratio, number_text};
use pelmet_model::{FastenerOrder, Figure, Heading, Layer, PieceMatter, Support};

use super::place::PanelPlace;

pub(super) fn report(panel: PanelPlace<'_>, matter: &PieceMatter) -> Diagnostic {
    match *matter {
        PieceMatter::NoWidth => no_width(panel),
        PieceMatter::WidthsDisagree {
            first,
            first_length,
            second,
            second_length,
        } => widths_disagree(panel, (first, first_length), (second, second_length)),
        PieceMatter::NothingLeft { size, length } => nothing_left(panel, size, length),
        PieceMatter::TooLarge { size } => too_large(panel, size),
        PieceMatter::FullnessUnderOne { fullness } => fullness_under_one(panel, fullness),
        PieceMatter::HeadingNeedsOther { needs } => heading_needs_other(panel, needs),
        PieceMatter::DropTooShort { drop, least } => drop_too_short(panel, drop, least),
        PieceMatter::PocketTooSmall { pocket, least } => pocket_too_small(panel, pocket, least),
        PieceMatter::FastenerWiderThanTail { ref fastener, tail } => {
            fastener_too_wide(panel, fastener, tail)
        }
        PieceMatter::TailShows { tail, drop } => tail_shows(panel, tail, drop),
        PieceMatter::OpeningTooWide { opening, edge } => opening_too_wide(panel, opening, edge),
        PieceMatter::LongerThanBolt {
            layer,
            cut_length,
            bolt,
        } => longer_than_bolt(panel, layer, cut_length, bolt),
        PieceMatter::ClothTooNarrow {
            layer,
            usable,
            needed,
        } => cloth_too_narrow(panel, layer, usable, needed),
        PieceMatter::SeamShows {
            layer,
            at,
            hidden_at,
        } => seam_shows(panel, layer, at, hidden_at),
        PieceMatter::HalvesDiffer => halves_differ(panel),
        PieceMatter::MotifBelowDrop {
            below_heading,
            drop,
        } => motif_below_drop(panel, below_heading, drop),
        PieceMatter::MotifHidden { at, hidden } => motif_hidden(panel, at, hidden),
        PieceMatter::StackTooThick {
            layers,
            layer,
            limit,
        } => stack_too_thick(panel, layers, layer, limit),
        PieceMatter::ThicknessMissing { layer, limit } => thickness_missing(panel, layer, limit),
        PieceMatter::FigureAbsent {
            step,
            sentence,
            figure,
        } => figure_absent(panel, (step, sentence), figure),
        PieceMatter::TooManyWidths { layer, limit } => too_many_widths(panel, layer, limit),
    }
}

fn figure_absent(panel: PanelPlace<'_>, at: (usize, usize), figure: Figure) -> Diagnostic {
    let place = panel.sentence(at);
    let words = place.map_or(panel.span("make"), |place| place.words);
    let named = place.and_then(|place| place.figures.iter().find(|(other, _)| *other == figure));
    let span = named.map_or(words, |(_, span)| *span);
    let bare = panel.is_always_said(at);
    codes::figure_absent(&panel.name(), words, (span, figure.name()), bare)
}

fn no_width(panel: PanelPlace<'_>) -> Diagnostic {
    codes::panel_without_width(&panel.name(), panel.place(), panel.example())
}

fn widths_disagree(
    panel: PanelPlace<'_>,
    (first, first_length): (&str, Length),
    (second, second_length): (&str, Length),
) -> Diagnostic {
    codes::widths_disagree(
        &panel.name(),
        (size_place(panel, first), first, &panel.text(first_length)),
        (
            size_place(panel, second),
            second,
            &panel.text(second_length),
        ),
        &panel.text((first_length - second_length).abs()),
    )
}

fn nothing_left(panel: PanelPlace<'_>, size: &str, length: Length) -> Diagnostic {
    codes::nothing_left(
        &panel.name(),
        size_place(panel, size),
        (size, &panel.text(length)),
        sum_to_nothing(panel, size, length),
    )
}

/// How a size came out at nothing, where it was worked out from another.
fn sum_to_nothing(panel: PanelPlace<'_>, size: &str, length: Length) -> Option<String> {
    let order = panel.order?;
    let (whole, taken) = match (size, order.width.cut) {
        ("fastener length", _) => {
            let insets = order.heading.fastener()?.inset * 2;
            (("of top edge", length + insets), ("both insets", insets))
        }
        ("flat width" | "finished width", Some(cut)) => {
            (("cut", cut), ("allowances and shrinkage", cut - length))
        }
        _ => return None,
    };
    Some(format!(
        "{} {} - {} for {} = {}",
        panel.text(whole.1),
        whole.0,
        panel.text(taken.1),
        taken.0,
        panel.text(length)
    ))
}

fn too_large(panel: PanelPlace<'_>, size: &str) -> Diagnostic {
    let kilometres = Length::LARGEST
        .ratio_to(Length::METRE * 1000)
        .map(number_text);
    let largest = format!("{} km", kilometres.unwrap_or_default());
    codes::size_too_large(&panel.name(), size_place(panel, size), size, &largest)
}

fn fullness_under_one(panel: PanelPlace<'_>, fullness: Ratio) -> Diagnostic {
    let added = fullness
        .checked_add(&Ratio::from_integer(1))
        .unwrap_or(fullness);
    let (fullness, added) = (number_text(fullness), number_text(added));
    codes::fullness_under_one(&panel.name(), panel.span("fullness"), &fullness, &added)
}

fn heading_needs_other(panel: PanelPlace<'_>, needs: &str) -> Diagnostic {
    let window = panel.window;
    let has = (window.support(), window.support_word());
    codes::heading_needs_other(&panel.name(), (panel.span("head"), needs), has)
}

fn drop_too_short(panel: PanelPlace<'_>, drop: Length, least: Length) -> Diagnostic {
    let (taker, part) = match panel.order.map(|order| &order.heading) {
        Some(Heading::RodPocket { .. }) => (panel.span("head"), "the frill and the pocket"),
        _ => (panel.window.support(), "half of the rod"),
    };
    let sum = match panel.order.map(|order| &order.heading) {
        Some(Heading::RodPocket { above, .. }) => format!(
            "{} of frill + {} of pocket = {}",
            panel.text(*above),
            panel.text(least - *above),
            panel.text(least)
        ),
        _ => format!(
            "{} through the rod / 2 = {}",
            panel.text(rod_diameter(panel)),
            panel.text(least)
        ),
    };
    let to_write = panel.states("drop").then(|| panel.at_least(least));
    codes::drop_too_short(
        &panel.name(),
        (panel.span("drop"), &panel.text(drop)),
        (taker, part, &panel.text(least)),
        (sum, &panel.text(least - drop)),
        to_write.as_deref(),
    )
}

fn pocket_too_small(panel: PanelPlace<'_>, pocket: Length, least: Length) -> Diagnostic {
    let to_write = panel.heading("pocket").map(|_| panel.at_least(least));
    codes::pocket_too_small(
        &panel.name(),
        (heading_place(panel, "pocket"), &panel.text(pocket)),
        (panel.window.support(), &panel.text(rod_diameter(panel))),
        &panel.text(least),
        to_write.as_deref(),
    )
}

fn fastener_too_wide(
    panel: PanelPlace<'_>,
    fastener: &FastenerOrder,
    carrier_length: Length,
) -> Diagnostic {
    let carrier = match panel.order.map(|order| &order.heading) {
        Some(Heading::OnBoard { .. }) => "lap",
        _ => "tail",
    };
    codes::fastener_wider_than_tail(
        &panel.name(),
        &fastener.name,
        (
            heading_place(panel, "fastener"),
            &panel.text(fastener.width),
        ),
        (
            carrier,
            heading_place(panel, carrier),
            &panel.text(carrier_length),
        ),
        &panel.text(fastener.width - carrier_length),
    )
}

fn tail_shows(panel: PanelPlace<'_>, tail: Length, drop: Length) -> Diagnostic {
    let half = rod_diameter(panel).divided(2);
    codes::tail_shows(
        &panel.name(),
        (heading_place(panel, "tail"), &panel.text(tail)),
        (panel.span("drop"), &panel.text(drop)),
        (&panel.text(half), &panel.text(half + tail)),
    )
}

fn opening_too_wide(panel: PanelPlace<'_>, opening: Length, edge: Length) -> Diagnostic {
    let place = panel
        .making("turning opening")
        .unwrap_or(panel.span("make"));
    codes::opening_too_wide(
        &panel.name(),
        (place, &panel.text(opening)),
        (size_place(panel, "flat width"), &panel.text(edge)),
    )
}

fn longer_than_bolt(
    panel: PanelPlace<'_>,
    layer: Layer,
    cut_length: Length,
    bolt: Length,
) -> Diagnostic {
    codes::longer_than_bolt(
        &panel.name(),
        (layer.word(), &panel.at_least(cut_length)),
        (panel.span("drop"), panel.cloth(layer), panel.fabric(layer)),
        (&panel.text(bolt), &panel.at_least(cut_length - bolt)),
    )
}

fn cloth_too_narrow(
    panel: PanelPlace<'_>,
    layer: Layer,
    usable: Length,
    needed: Length,
) -> Diagnostic {
    codes::cloth_too_narrow(
        &panel.name(),
        layer.word(),
        (panel.cloth(layer), panel.fabric(layer)),
        (&panel.text(usable), &panel.text(needed)),
    )
}

fn seam_shows(
    panel: PanelPlace<'_>,
    layer: Layer,
    at: Length,
    hidden_at: Option<Length>,
) -> Diagnostic {
    let places = (panel.cloth(layer), panel.span("pleats"));
    // Pleats go the other way than the seam would.
    let pleats_by = hidden_at.map(|hidden_at| {
        let way = if hidden_at > at { "left" } else { "right" };
        (panel.mark((hidden_at - at).abs()), way)
    });
    let pleats_by = pleats_by.as_ref().map(|(by, way)| (&**by, *way));
    let sum = hidden_at.map(|hidden_at| {
        format!(
            "the seam lies at {}, and the nearest cloth that a pleat hides at {}: {} apart",
            panel.mark(at),
            panel.mark(hidden_at),
            panel.mark((hidden_at - at).abs()),
        )
    });
    let (name, layer) = (panel.name(), layer.word());
    codes::seam_shows(&name, layer, places, &panel.mark(at), pleats_by, sum)
}

fn halves_differ(panel: PanelPlace<'_>) -> Diagnostic {
    codes::halves_differ(&panel.name(), (panel.span("cut"), panel.span("outline")))
}

fn motif_below_drop(panel: PanelPlace<'_>, below_heading: Length, drop: Length) -> Diagnostic {
    codes::motif_below_drop(
        &panel.name(),
        (panel.window.span("motif"), &panel.text(below_heading)),
        (panel.span("drop"), &panel.text(drop)),
        &panel.text(below_heading - drop),
    )
}

fn motif_hidden(panel: PanelPlace<'_>, at: Length, (from, to): (Length, Length)) -> Diagnostic {
    let places = (panel.window.span("motif"), panel.span("pleats"));
    codes::motif_hidden(
        &panel.name(),
        places,
        &panel.mark(at),
        (&panel.mark(from), &panel.mark(to)),
    )
}

fn stack_too_thick(panel: PanelPlace<'_>, layers: u32, layer: Length, limit: Length) -> Diagnostic {
    codes::stack_too_thick(
        &panel.name(),
        (panel.span("pleats"), stack_place(panel)),
        (layers, &panel.exact(layer)),
        (&panel.exact(layer * i64::from(layers)), &panel.text(limit)),
    )
}

fn thickness_missing(panel: PanelPlace<'_>, layer: Layer, limit: Length) -> Diagnostic {
    codes::thickness_missing(
        &panel.name(),
        layer.word(),
        (panel.cloth(layer), stack_place(panel)),
        &panel.text(limit),
    )
}

fn too_many_widths(panel: PanelPlace<'_>, layer: Layer, limit: u32) -> Diagnostic {
    let places = (panel.cloth(layer), size_place(panel, "flat width"));
    codes::too_many_widths(&panel.name(), layer.word(), places, limit)
}

/// Where what a size is worked out from was written.
fn size_place(panel: PanelPlace<'_>, size: &str) -> Span {
    match size {
        "drop" | "cut length" => panel.span("drop"),
        "fastener length" => heading_place(panel, "fastener"),
        "flat width that the cut width leaves" => panel.span("cut width"),
        "flat width that the fullness makes" => panel.span("fullness"),
        width => panel.width(width).span,
    }
}

/// Where the limit of a stack was written, or else the making method.
fn stack_place(panel: PanelPlace<'_>) -> Span {
    panel.making("stack").unwrap_or(panel.span("make"))
}

/// Where a number of the heading was written, or else the heading.
fn heading_place(panel: PanelPlace<'_>, key: &str) -> Span {
    panel.heading(key).unwrap_or(panel.span("head"))
}

fn rod_diameter(panel: PanelPlace<'_>) -> Length {
    match panel.window.order.map(|order| &order.support) {
        Some(Support::Rod(rod)) => rod.diameter,
        Some(Support::Board(_)) | None => Length::ZERO,
    }
}
