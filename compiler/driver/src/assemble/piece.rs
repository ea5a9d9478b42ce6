//! The pieces of a panel.

use num_traits::{CheckedMul, Signed};
use pelmet_measure::{Length, Ratio, number_text};
use pelmet_model::{Allowance, EdgeKind, Fabric, Layer, PieceMade, Shape, WidthsMade};
use pelmet_packet::{CutAllowance, JoinSeam, JoinedWidths, MeasuredFrom, Piece, Place};

use super::outline::{cutting_line, sewn_line};
use super::printer::Printer;

/// A piece of a panel of that name and of that sewn shape.
pub(crate) fn piece(
    panel: &str,
    made: &PieceMade,
    shape: &Shape,
    fabrics: &[Fabric],
    printer: &Printer<'_>,
) -> Piece {
    let draw_width = if made.on_fold {
        made.cut_width.divided(2)
    } else {
        made.cut_width
    };
    Piece {
        label: label(panel, made.layer),
        layer: made.layer.kind(),
        cloth: fabrics
            .get(made.fabric)
            .map(|fabric| fabric.name.clone())
            .unwrap_or_default(),
        quantity: made.quantity,
        cut_width: printer.cut(made.cut_width),
        cut_length: printer.cut(made.cut_length),
        on_fold: made.on_fold,
        mirrored: made.mirrored,
        railroaded: made.railroaded,
        draw_width: printer.cut(draw_width),
        folded_at: made.fold.map(|fold| printer.cut(fold)),
        shrinkage: fabrics.get(made.fabric).and_then(shrinkage),
        allowances: made
            .allowances
            .iter()
            .map(|(edge, allowance, total)| cut_allowance(*edge, *allowance, *total, printer))
            .collect(),
        outline_from: if made.on_fold {
            MeasuredFrom::Fold
        } else {
            MeasuredFrom::LeftEdge
        },
        outline: cutting_line(made, printer),
        sewn: sewn_line(made, shape, printer),
        motif: motif(made, printer),
        area: printer.surface(made.area),
        joined: made
            .joined
            .as_ref()
            .map(|joined| joined_widths(joined, printer)),
    }
}

/// `3 %`, for a cloth that shrinks.
fn shrinkage(fabric: &Fabric) -> Option<String> {
    let part = fabric.shrinkage;
    let percent = part.checked_mul(&Ratio::from_integer(100))?;
    part.is_positive()
        .then(|| format!("{} %", number_text(percent)))
}

/// What a piece is, in words.
pub(crate) fn label(panel: &str, layer: Layer) -> String {
    let edge = match layer {
        Layer::Band(edge) => format!(" {edge}"),
        Layer::Face | Layer::Interlining | Layer::Lining => String::new(),
    };
    format!("{panel} {}{edge}", layer.word())
}

fn cut_allowance(
    edge: EdgeKind,
    allowance: Allowance,
    total: Length,
    printer: &Printer<'_>,
) -> CutAllowance {
    let extra = total - allowance.total();
    let text = format!(
        "{}{}",
        allowance_text(allowance, printer),
        extra_text(edge, extra, printer)
    );
    CutAllowance {
        edge,
        total: printer.plain(total),
        text,
    }
}

fn allowance_text(allowance: Allowance, printer: &Printer<'_>) -> String {
    let text = |length| printer.style.plain(length);
    match allowance {
        nothing if nothing.total().is_zero() => String::from("nothing"),
        Allowance::Seam(width) => format!("{} seam", text(width)),
        Allowance::SingleHem { depth, turn } if turn.is_zero() => format!("{} hem", text(depth)),
        Allowance::SingleHem { depth, turn } => {
            format!("{} hem, {} turned under", text(depth), text(turn))
        }
        Allowance::DoubleHem(depth) => format!("{} double hem", text(depth)),
    }
}

/// What a layer has beyond its allowance, or lacks.
fn extra_text(edge: EdgeKind, extra: Length, printer: &Printer<'_>) -> String {
    let (more, less) = match edge {
        EdgeKind::Top | EdgeKind::Lower | EdgeKind::Band => ("longer", "shorter"),
        EdgeKind::Side => ("wider", "narrower"),
    };
    match extra {
        extra if extra.is_zero() => String::new(),
        extra if extra.is_positive() => format!(", {} {more}", printer.style.plain(extra)),
        extra => format!(", {} {less}", printer.style.plain(extra.abs())),
    }
}

fn joined_widths(joined: &WidthsMade, printer: &Printer<'_>) -> JoinedWidths {
    JoinedWidths {
        strips: joined
            .strips
            .iter()
            .map(|strip| printer.cut(strip.cut_width))
            .collect(),
        seams: joined
            .seams
            .iter()
            .zip(seams_on_cut(joined))
            .map(|(seam, from_cut_edge)| JoinSeam {
                at: printer.mark(seam.at),
                from_cut_edge: printer.mark(from_cut_edge),
                hidden: seam.hidden,
            })
            .collect(),
        allowance: printer.plain(joined.allowance),
    }
}

/// Where the strips of a joined piece are sewn together, from its left cut edge: each lies over the one
/// before by both their seam allowances.
fn seams_on_cut(joined: &WidthsMade) -> impl Iterator<Item = Length> {
    let allowance = joined.allowance;
    let strips = joined.strips.iter();
    strips.scan(allowance, move |sewn, strip| {
        *sewn += strip.cut_width - allowance * 2;
        Some(*sewn)
    })
}

/// The centre of a motif, from the edges that the cutting line is measured from.
fn motif(made: &PieceMade, printer: &Printer<'_>) -> Option<Place> {
    let from = if made.on_fold {
        made.cut_width.divided(2)
    } else {
        Length::ZERO
    };
    let at = made.print_point;
    made.carries_motif
        .then(|| printer.place(at.across - from, at.down))
}
