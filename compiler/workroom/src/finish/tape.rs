//! What is bought beside cloth: fusible tape edge by edge, and fasteners.

use pelmet_measure::Length;
use pelmet_model::PanelMeasure;
use pelmet_model::{
    BandMade, Edge, EdgeKind, FastenerOrder, FastenerRun, Making, Matter, PieceMatter, Shape,
    TapeMade, TapeOrder,
};

/// The turning opening of a panel: its ends on the made-up top edge, in the middle of it.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(crate) struct TurningOpening {
    pub(crate) from: Length,
    pub(crate) to: Length,
}

/// Sets the opening in the top edge; none where it does not fit.
pub(crate) fn turning_opening(
    making: &Making,
    edge: Length,
    matters: &mut Vec<Matter>,
) -> Option<TurningOpening> {
    let opening = making.turning_opening?;
    if opening >= edge {
        matters.push(PieceMatter::OpeningTooWide { opening, edge }.into());
        return None;
    }
    let from = (edge - opening).divided(2);
    Some(TurningOpening {
        from,
        to: from + opening,
    })
}

/// One length of tape for each straight run of a taped edge, corner to corner, and for each seam of a
/// band; the opening is left out of the top one. Common practice, no source: tape is not folded round a corner.
pub(crate) fn tape_runs(
    making: &Making,
    shape: &Shape,
    opening: Option<TurningOpening>,
    bands: &[BandMade],
) -> Vec<TapeMade> {
    let Some(order) = &making.tape else {
        return vec![];
    };
    let left_out = opening.map_or(Length::ZERO, |opening| opening.to - opening.from);
    // A fold needs no tape.
    let is_fold = |edge: &Edge| making.self_lined && edge.kind == EdgeKind::Lower;
    let taped = shape
        .runs()
        .filter(|(edge, ..)| covers(order, edge) && !is_fold(edge));
    let runs = taped.map(|(edge, from, to)| {
        let gap = if edge.kind == EdgeKind::Top {
            left_out
        } else {
            Length::ZERO
        };
        TapeMade {
            kind: edge.kind,
            from,
            to,
            length: edge.length - gap,
        }
    });
    let seams = bands.iter().flat_map(|band| &band.seams);
    let seams = seams.map(|seam| TapeMade {
        kind: EdgeKind::Band,
        from: seam.from,
        to: seam.to,
        length: seam.length,
    });
    runs.chain(seams).collect()
}

/// The strip of fastener on the made-up top edge, clear of both sides.
pub(crate) fn fastener_runs(
    order: Option<&FastenerOrder>,
    finished: Length,
    matters: &mut Vec<Matter>,
) -> Vec<FastenerRun> {
    let Some(order) = order else { return vec![] };
    let length = finished - order.inset * 2;
    if !length.is_positive() {
        matters.push(
            PieceMatter::NothingLeft {
                size: PanelMeasure::FastenerLength,
                length,
            }
            .into(),
        );
        return vec![];
    }
    let (name, width) = (order.name.clone(), order.width);
    vec![FastenerRun {
        name,
        width,
        length,
        down: Length::ZERO,
    }]
}

/// Whether an edge is taped.
fn covers(order: &TapeOrder, edge: &Edge) -> bool {
    match edge.kind {
        EdgeKind::Top => order.top,
        EdgeKind::Side => order.sides,
        EdgeKind::Lower => order.lower,
        EdgeKind::Band => true,
    }
}
