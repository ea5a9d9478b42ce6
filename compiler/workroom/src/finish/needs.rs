//! What one panel needs beside cloth, and what that weighs.

use pelmet_measure::{Length, Mass};
use pelmet_model::{
    CountedOrder, Edge, EdgeKind, FUSIBLE_TAPE, Layer, Making, MakingNotions, Matter, Need,
    NeedExtent, NotionKind, NotionOrder, NotionWeight, PanelMade, PanelOrder, PieceMade,
    PleatMatter, Pleating, StripOrder, StripsMade,
};

use crate::finish::counts::count_along;

/// The strips behind every fold that is laid. Longer than the shallowest pleat is deep, they show.
pub(crate) fn pleat_strips(
    order: Option<StripOrder>,
    pleating: &Pleating,
    matters: &mut Vec<Matter>,
) -> Option<StripsMade> {
    let order = order?;
    let folded = || {
        pleating
            .pleats
            .iter()
            .filter(|pleat| !pleat.folds.is_empty())
    };
    let shallowest = folded().min_by_key(|pleat| pleat.depth)?;
    let depth = shallowest.depth;
    let length = order.length.unwrap_or(depth);
    if length > depth {
        let step = shallowest.step;
        matters.push(
            PleatMatter::StripShows {
                step,
                length,
                depth,
            }
            .into(),
        );
    }
    let folds: usize = folded().map(|pleat| pleat.folds.len()).sum();
    let folds = u32::try_from(folds).unwrap_or(u32::MAX);
    Some(StripsMade {
        count: folds.saturating_mul(order.behind_each),
        length,
    })
}

/// Everything a panel needs beside cloth.
pub(crate) fn needs(order: &PanelOrder, made: &PanelMade) -> Vec<Need> {
    let MakingNotions {
        thread,
        rings,
        weights,
        ..
    } = &order.making.notions;
    let thread = thread.as_ref().map(|thread| Need {
        extent: NeedExtent::Length(sewn_length(&order.making, made).scaled(thread.times)),
        ..need(NotionKind::Thread, &thread.name)
    });
    let rings = rings
        .as_ref()
        .map(|rings| counted(NotionKind::Rings, rings, made.finished));
    let weights = weights
        .as_ref()
        .map(|weights| counted(NotionKind::Weights, weights, made.flat));
    tape(order, made)
        .into_iter()
        .chain(fasteners(made))
        .chain(thread)
        .chain(rings)
        .chain(weights)
        .collect()
}

/// What needs weigh, as far as their notions state it.
pub(crate) fn weight_of(needs: &[Need], notions: &[NotionOrder]) -> Mass {
    let weights = needs.iter().filter_map(|need| {
        let weight = NotionOrder::named(notions, &need.name)?.weight?;
        match (weight, need.extent) {
            (NotionWeight::PerLength { mass, per }, NeedExtent::Length(length)) => {
                Some(mass.scaled(length.ratio_to(per)?))
            }
            (NotionWeight::Each(mass), NeedExtent::Count(count)) => Some(mass * i64::from(count)),
            _ => None,
        }
    });
    weights.sum()
}

fn need(kind: NotionKind, name: &str) -> Need {
    Need {
        kind,
        name: name.to_owned(),
        width: None,
        roll: None,
        extent: NeedExtent::Length(Length::ZERO),
    }
}

fn counted(kind: NotionKind, order: &CountedOrder, edge: Length) -> Need {
    Need {
        extent: NeedExtent::Count(count_along(order.how_many, edge)),
        ..need(kind, &order.name)
    }
}

fn tape(order: &PanelOrder, made: &PanelMade) -> Option<Need> {
    let tape = order.making.tape.as_ref()?;
    let runs: Length = made.tape.iter().map(|run| run.length).sum();
    let strips = made.pleat_strips.map_or(Length::ZERO, StripsMade::together);
    Some(Need {
        width: Some(tape.width),
        roll: tape.roll,
        extent: NeedExtent::Length(runs + strips),
        ..need(NotionKind::FusibleTape, FUSIBLE_TAPE)
    })
}

fn fasteners(made: &PanelMade) -> impl Iterator<Item = Need> + '_ {
    made.fasteners.iter().map(|run| Need {
        width: Some(run.width),
        extent: NeedExtent::Length(run.length),
        ..need(NotionKind::Fastener, &run.name)
    })
}

/// Every edge of the panel once but for a fold, every seam of its bands, and every seam between widths
/// over the length of its piece.
fn sewn_length(making: &Making, made: &PanelMade) -> Length {
    let is_fold = |edge: &&Edge| making.self_lined && edge.kind == EdgeKind::Lower;
    let edges = made.shape.edges.iter().filter(|edge| !is_fold(edge));
    let around: Length = edges.map(|edge| edge.length).sum();
    let bands = made.bands.iter().flat_map(|band| &band.seams);
    let bands: Length = bands.map(|seam| seam.length).sum();
    let seams = made
        .pieces
        .iter()
        .filter_map(|piece| Some((piece, piece.joined.as_ref()?)));
    let joins: Length = seams
        .flat_map(|(piece, joined)| joined.seams.iter().map(|_| seam_length(piece, made)))
        .sum();
    around + bands + joins
}

/// How long a seam between the widths of a piece is.
fn seam_length(piece: &PieceMade, made: &PanelMade) -> Length {
    match piece.layer {
        Layer::Band(_) => piece.cut_length,
        _ if piece.fold.is_some() => made.made_length * 2,
        _ => made.made_length,
    }
}
