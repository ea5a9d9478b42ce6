//! Findings in pieces, headings and making methods.

use num_traits::CheckedAdd;
use pelmet_diagnostics::{Diagnostic, PlacedText, Span, codes};
use pelmet_measure::{Length, Ratio, number_text};
use pelmet_model::{
    FastenerOrder, Figure, Heading, Layer, PanelMeasure, PieceMatter, SupportKind, SupportOrder,
};

use super::place::PanelPlace;
use crate::{HeadingKey, MakingKey, PanelKey, WindowKey};

pub(super) fn report(panel: PanelPlace<'_>, matter: &PieceMatter) -> Diagnostic {
    match *matter {
        PieceMatter::NoWidth => no_width(panel),
        PieceMatter::WidthsDisagree {
            first,
            first_length,
            second,
            second_length,
        } => widths_disagree(panel, first, first_length, second, second_length),
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
        } => figure_absent(panel, step, sentence, figure),
        PieceMatter::TooManyWidths { layer, limit } => too_many_widths(panel, layer, limit),
    }
}

fn figure_absent(
    panel: PanelPlace<'_>,
    step: usize,
    sentence: usize,
    figure: Figure,
) -> Diagnostic {
    let place = panel.sentence(step, sentence);
    let words = place.map_or(panel.span(PanelKey::Making), |place| place.words);
    let named = place.and_then(|place| place.figures.iter().find(|(other, _)| *other == figure));
    let span = named.map_or(words, |(_, span)| *span);
    codes::FigureAbsent {
        panel: panel.name(),
        words,
        figure: PlacedText::new(span, figure.name()),
        bare: panel.is_always_said(step, sentence),
    }
    .into()
}

fn no_width(panel: PanelPlace<'_>) -> Diagnostic {
    codes::PanelWithoutWidth {
        panel: panel.name(),
        name: panel.place(),
        example: panel.example(),
    }
    .into()
}

fn widths_disagree(
    panel: PanelPlace<'_>,
    first_name: PanelMeasure,
    first: Length,
    second_name: PanelMeasure,
    second: Length,
) -> Diagnostic {
    codes::WidthsDisagree {
        panel: panel.name(),
        first_name: first_name.word(),
        first: placed_size(panel, first_name, first),
        second_name: second_name.word(),
        second: placed_size(panel, second_name, second),
        difference: panel.text((first - second).abs()),
    }
    .into()
}

fn nothing_left(panel: PanelPlace<'_>, size: PanelMeasure, length: Length) -> Diagnostic {
    codes::NothingLeft {
        panel: panel.name(),
        size: size.word(),
        length: placed_size(panel, size, length),
        sum: sum_to_nothing(panel, size, length),
    }
    .into()
}

/// How a size came out at nothing, where it was worked out from another.
fn sum_to_nothing(panel: PanelPlace<'_>, size: PanelMeasure, length: Length) -> Option<String> {
    let order = panel.order?;
    let (whole, taken) = match (size, order.width.cut) {
        (PanelMeasure::FastenerLength, _) => {
            let insets = order.heading.fastener()?.inset * 2;
            (("of top edge", length + insets), ("both insets", insets))
        }
        (PanelMeasure::FlatWidth | PanelMeasure::FinishedWidth, Some(cut)) => {
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

fn too_large(panel: PanelPlace<'_>, size: PanelMeasure) -> Diagnostic {
    let kilometres = Length::LARGEST
        .ratio_to(Length::METRE * 1000)
        .map(number_text);
    codes::SizeTooLarge {
        panel: panel.name(),
        place: size_place(panel, size),
        size: size.word(),
        largest: format!("{} km", kilometres.unwrap_or_default()),
    }
    .into()
}

fn fullness_under_one(panel: PanelPlace<'_>, fullness: Ratio) -> Diagnostic {
    let added = fullness
        .checked_add(&Ratio::from_integer(1))
        .unwrap_or(fullness);
    codes::FullnessUnderOne {
        panel: panel.name(),
        fullness: PlacedText::new(panel.span(PanelKey::Fullness), number_text(fullness)),
        added: number_text(added),
    }
    .into()
}

fn heading_needs_other(panel: PanelPlace<'_>, needs: SupportKind) -> Diagnostic {
    let window = panel.window;
    codes::HeadingNeedsOther {
        panel: panel.name(),
        needs: PlacedText::new(panel.span(PanelKey::Heading), needs.word()),
        has: PlacedText::new(window.support(), window.support_kind().word()),
    }
    .into()
}

fn drop_too_short(panel: PanelPlace<'_>, drop: Length, least: Length) -> Diagnostic {
    let (place, part) = match panel.order.map(|order| &order.heading) {
        Some(Heading::RodPocket { .. }) => {
            (panel.span(PanelKey::Heading), "the frill and the pocket")
        }
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
    codes::DropTooShort {
        panel: panel.name(),
        drop: panel.placed(PanelKey::Drop, drop),
        taker: PlacedText::new(place, part),
        least: panel.text(least),
        sum,
        missing: panel.text(least - drop),
        to_write: panel.states(PanelKey::Drop).then(|| panel.at_least(least)),
    }
    .into()
}

fn pocket_too_small(panel: PanelPlace<'_>, pocket: Length, least: Length) -> Diagnostic {
    let diameter = panel.text(rod_diameter(panel));
    codes::PocketTooSmall {
        panel: panel.name(),
        pocket: placed_heading(panel, HeadingKey::Pocket, pocket),
        diameter: PlacedText::new(panel.window.support(), diameter),
        least: panel.text(least),
        to_write: panel
            .heading(HeadingKey::Pocket)
            .map(|_| panel.at_least(least)),
    }
    .into()
}

fn fastener_too_wide(
    panel: PanelPlace<'_>,
    fastener: &FastenerOrder,
    carrier_length: Length,
) -> Diagnostic {
    let carrier = match panel.order.map(|order| &order.heading) {
        Some(Heading::OnBoard { .. }) => HeadingKey::Lap,
        _ => HeadingKey::Tail,
    };
    codes::FastenerWiderThanTail {
        panel: panel.name(),
        name: &fastener.name,
        width: placed_heading(panel, HeadingKey::Fastener, fastener.width),
        carrier: carrier.word(),
        length: placed_heading(panel, carrier, carrier_length),
        amount: panel.text(fastener.width - carrier_length),
    }
    .into()
}

fn tail_shows(panel: PanelPlace<'_>, tail: Length, drop: Length) -> Diagnostic {
    let half = rod_diameter(panel).divided(2);
    codes::TailShows {
        panel: panel.name(),
        tail: placed_heading(panel, HeadingKey::Tail, tail),
        drop: panel.placed(PanelKey::Drop, drop),
        half: panel.text(half),
        reached: panel.text(half + tail),
    }
    .into()
}

fn opening_too_wide(panel: PanelPlace<'_>, opening: Length, edge: Length) -> Diagnostic {
    let place = panel
        .making(MakingKey::TurningOpening)
        .unwrap_or(panel.span(PanelKey::Making));
    codes::OpeningTooWide {
        panel: panel.name(),
        opening: PlacedText::new(place, panel.text(opening)),
        edge: placed_size(panel, PanelMeasure::FlatWidth, edge),
    }
    .into()
}

fn longer_than_bolt(
    panel: PanelPlace<'_>,
    layer: Layer,
    cut_length: Length,
    bolt: Length,
) -> Diagnostic {
    codes::LongerThanBolt {
        panel: panel.name(),
        layer: layer.word(),
        drop: panel.span(PanelKey::Drop),
        cloth: panel.cloth(layer),
        fabric: panel.fabric(layer),
        cut_length: panel.at_least(cut_length),
        bolt: panel.text(bolt),
        amount: panel.at_least(cut_length - bolt),
    }
    .into()
}

fn cloth_too_narrow(
    panel: PanelPlace<'_>,
    layer: Layer,
    usable: Length,
    needed: Length,
) -> Diagnostic {
    codes::ClothTooNarrow {
        panel: panel.name(),
        layer: layer.word(),
        cloth: panel.cloth(layer),
        fabric: panel.fabric(layer),
        usable: panel.text(usable),
        needed: panel.text(needed),
    }
    .into()
}

fn seam_shows(
    panel: PanelPlace<'_>,
    layer: Layer,
    at: Length,
    hidden_at: Option<Length>,
) -> Diagnostic {
    // Pleats go the other way than the seam would.
    let moved = hidden_at.map(|hidden_at| {
        let way = if hidden_at > at { "left" } else { "right" };
        format!("{} to the {way}", panel.mark((hidden_at - at).abs()))
    });
    let sum = hidden_at.map(|hidden_at| {
        format!(
            "the seam lies at {}, and the nearest cloth that a pleat hides at {}: {} apart",
            panel.mark(at),
            panel.mark(hidden_at),
            panel.mark((hidden_at - at).abs()),
        )
    });
    codes::SeamShows {
        panel: panel.name(),
        layer: layer.word(),
        cloth: panel.cloth(layer),
        pleats: panel.span(PanelKey::Pleats),
        at: panel.mark(at),
        moved,
        sum,
    }
    .into()
}

fn halves_differ(panel: PanelPlace<'_>) -> Diagnostic {
    codes::HalvesDiffer {
        panel: panel.name(),
        cut: panel.span(PanelKey::Cut),
        outline: panel.span(PanelKey::Outline),
    }
    .into()
}

fn motif_below_drop(panel: PanelPlace<'_>, below_heading: Length, drop: Length) -> Diagnostic {
    codes::MotifBelowDrop {
        panel: panel.name(),
        below: panel.window.placed(WindowKey::Motif, below_heading),
        drop: panel.placed(PanelKey::Drop, drop),
        amount: panel.text(below_heading - drop),
    }
    .into()
}

fn motif_hidden(panel: PanelPlace<'_>, at: Length, (from, to): (Length, Length)) -> Diagnostic {
    codes::MotifHidden {
        panel: panel.name(),
        motif: panel.window.span(WindowKey::Motif),
        pleats: panel.span(PanelKey::Pleats),
        at: panel.mark(at),
        from: panel.mark(from),
        to: panel.mark(to),
    }
    .into()
}

fn stack_too_thick(panel: PanelPlace<'_>, layers: u32, layer: Length, limit: Length) -> Diagnostic {
    codes::StackTooThick {
        panel: panel.name(),
        pleats: panel.span(PanelKey::Pleats),
        method: stack_place(panel),
        layers,
        layer: panel.exact(layer),
        thickness: panel.exact(layer * i64::from(layers)),
        limit: panel.text(limit),
    }
    .into()
}

fn thickness_missing(panel: PanelPlace<'_>, layer: Layer, limit: Length) -> Diagnostic {
    codes::ThicknessMissing {
        panel: panel.name(),
        layer: layer.word(),
        cloth: panel.cloth(layer),
        method: stack_place(panel),
        limit: panel.text(limit),
    }
    .into()
}

fn too_many_widths(panel: PanelPlace<'_>, layer: Layer, limit: u32) -> Diagnostic {
    codes::TooManyWidths {
        panel: panel.name(),
        layer: layer.word(),
        cloth: panel.cloth(layer),
        width: size_place(panel, PanelMeasure::FlatWidth),
        limit,
    }
    .into()
}

/// A size, where what it is worked out from was written.
fn placed_size(panel: PanelPlace<'_>, size: PanelMeasure, length: Length) -> PlacedText {
    PlacedText::new(size_place(panel, size), panel.text(length))
}

/// A number of the heading, where it was written, or else the heading.
fn placed_heading(panel: PanelPlace<'_>, key: HeadingKey, length: Length) -> PlacedText {
    PlacedText::new(heading_place(panel, key), panel.text(length))
}

/// Where what a size is worked out from was written.
fn size_place(panel: PanelPlace<'_>, size: PanelMeasure) -> Span {
    match size {
        PanelMeasure::Drop | PanelMeasure::CutLength => panel.span(PanelKey::Drop),
        PanelMeasure::FastenerLength => heading_place(panel, HeadingKey::Fastener),
        PanelMeasure::FlatWidthByCut => panel.span(PanelKey::CutWidth),
        PanelMeasure::FlatWidthByFullness => panel.span(PanelKey::Fullness),
        PanelMeasure::FinishedWidth => panel.finished_width().span,
        PanelMeasure::FlatWidth | PanelMeasure::CutWidth => panel.flat_width().span,
    }
}

/// Where the limit of a stack was written, or else the making method.
fn stack_place(panel: PanelPlace<'_>) -> Span {
    panel
        .making(MakingKey::Stack)
        .unwrap_or(panel.span(PanelKey::Making))
}

/// Where a number of the heading was written, or else the heading.
fn heading_place(panel: PanelPlace<'_>, key: HeadingKey) -> Span {
    panel.heading(key).unwrap_or(panel.span(PanelKey::Heading))
}

fn rod_diameter(panel: PanelPlace<'_>) -> Length {
    match panel.window.order.map(|order| &order.support) {
        Some(SupportOrder::Rod(rod)) => rod.diameter,
        Some(SupportOrder::Board(_)) | None => Length::ZERO,
    }
}
