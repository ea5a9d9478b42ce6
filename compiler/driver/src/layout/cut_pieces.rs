//! The pieces of a job as they lie on their cloths.

use pelmet_bolt::{LayoutPiece, OutlinePolygon};
use pelmet_measure::{Length, Style};
use pelmet_model::{Fabric, Job, Match, PanelMade, PieceMade, Strip, WidthsMade, Work};

use super::cloth_to_lay::CutPiece;
use super::cut_line::cut_line;
use crate::sequence::{hanging_order, window_order};

/// A piece and whose it is.
pub(super) struct Cut<'a> {
    window: usize,
    panel: usize,
    piece: &'a PieceMade,
}

/// Every piece of the job with the index of its cloth.
pub(super) fn all_cuts<'a>(job: &Job, work: &'a Work) -> Vec<(usize, Cut<'a>)> {
    let mut cuts = Vec::new();
    for window in window_order(job) {
        let order = job
            .windows
            .get(window)
            .map(hanging_order)
            .unwrap_or_default();
        for panel in order {
            let pieces = made(work, window, panel).map_or(&[][..], |made| &made.pieces);
            cuts.extend(pieces.iter().map(|piece| {
                (
                    piece.fabric,
                    Cut {
                        window,
                        panel,
                        piece,
                    },
                )
            }));
        }
    }
    cuts
}

fn made(work: &Work, window: usize, panel: usize) -> Option<&PanelMade> {
    work.windows.get(window)?.panels.get(panel)?.as_ref()
}

/// A piece as it lies on the cloth: one size, or one for each kind of strip it is joined from.
pub(super) fn cut_pieces(cut: &Cut<'_>, fabric: &Fabric, style: &Style) -> Vec<CutPiece> {
    let lying = Lying { cut, fabric, style };
    let Some(joined) = &cut.piece.joined else {
        return vec![lying.whole()];
    };
    strips_alike(joined)
        .into_iter()
        .map(|(strip, numbers)| lying.strip(strip, numbers))
        .collect()
}

/// A piece about to be laid on its cloth.
struct Lying<'a> {
    cut: &'a Cut<'a>,
    fabric: &'a Fabric,
    style: &'a Style,
}

impl Lying<'_> {
    fn whole(&self) -> CutPiece {
        let piece = self.cut.piece;
        // In a half-drop print the columns differ, so like panels are alike only if each begins on
        // a column of its own kind.
        let held_across = piece.print_held_across || self.is_half_drop();
        let held = held_across.then_some(piece.print_point.across);
        let mut whole = self.laid(piece.cut_width, piece.print_point.down, held, Vec::new());
        whole.piece.outline = self.outline(&whole.piece);
        whole
    }

    /// The outline of the whole piece as it lies. Widths are joined before the outline is cut (common
    /// practice, no source), so their strips have none.
    fn outline(&self, lying: &LayoutPiece) -> Option<OutlinePolygon> {
        let piece = self.cut.piece;
        if !piece.railroaded {
            return cut_line(piece, (lying.width, lying.length));
        }
        let outline = cut_line(piece, (lying.length, lying.width))?;
        Some(outline.on_its_side(lying.length))
    }

    fn strip(&self, strip: Strip, numbers: Vec<u32>) -> CutPiece {
        let along = self.fabric.repeat.and_then(|repeat| repeat.along);
        let half = along.filter(|_| strip.half_dropped && self.is_half_drop());
        let down = self.cut.piece.print_point.down + half.unwrap_or_default().divided(2);
        self.laid(strip.cut_width, down, strip.print_across, numbers)
    }

    fn is_half_drop(&self) -> bool {
        let repeat = self.fabric.repeat;
        repeat.is_some_and(|repeat| repeat.matching == Match::HalfDrop)
    }

    /// Sizes are laid as they are cut: rounded up to the cutting step, but never over the cloth for
    /// a strip that takes its whole width.
    fn laid(
        &self,
        width: Length,
        down: Length,
        across: Option<Length>,
        strips: Vec<u32>,
    ) -> CutPiece {
        let Cut {
            window,
            panel,
            piece,
        } = *self.cut;
        let strip_count = u32::try_from(strips.len().max(1)).unwrap_or(u32::MAX);
        let step = self.style.cut_step;
        let most = self.fabric.usable_width().max(width);
        let upright = LayoutPiece {
            width: width.round_up_to(step).min(most),
            length: piece.cut_length.round_up_to(step),
            quantity: piece.quantity.saturating_mul(strip_count),
            phase_along: Some(down),
            phase_across: across,
            outline: None,
            // Cloth is folded along the bolt, and a piece on its side has its middle across it.
            on_fold: piece.on_fold && !piece.railroaded,
        };
        let lying = if piece.railroaded {
            on_its_side(&upright)
        } else {
            upright
        };
        CutPiece {
            window,
            panel,
            layer: piece.layer,
            strips,
            on_fold: piece.on_fold,
            railroaded: piece.railroaded,
            piece: held_by(self.fabric, lying),
        }
    }
}

/// The piece turned so that its top lies to the left, and its right side toward the cut end.
fn on_its_side(upright: &LayoutPiece) -> LayoutPiece {
    LayoutPiece {
        width: upright.length,
        length: upright.width,
        quantity: upright.quantity,
        phase_along: upright.phase_across.map(|across| upright.width - across),
        phase_across: upright.phase_along,
        outline: None,
        on_fold: upright.on_fold,
    }
}

/// The cloth is cut off square where its print suits the piece that needs the least before its
/// print point, so that nothing is left over at the start of the bolt. Gives where the print then
/// lies, from the cut end.
pub(super) fn from_the_first_print(mut cuts: Vec<CutPiece>) -> (Vec<CutPiece>, Option<Length>) {
    let phases = cuts.iter().filter_map(|cut| cut.piece.phase_along);
    let print_line = phases.min();
    let first = print_line.unwrap_or_default();
    for cut in &mut cuts {
        cut.piece.phase_along = cut.piece.phase_along.map(|phase| phase - first);
    }
    (cuts, print_line)
}

/// The piece held only by the repeats its cloth has.
fn held_by(fabric: &Fabric, mut piece: LayoutPiece) -> LayoutPiece {
    let repeat = fabric.repeat;
    piece.phase_along = piece
        .phase_along
        .filter(|_| repeat.is_some_and(|of| of.along.is_some()));
    piece.phase_across = piece
        .phase_across
        .filter(|_| repeat.is_some_and(|of| of.across.is_some()))
        .map(|phase| phase - fabric.print_line_across());
    piece
}

/// The strips of a joined piece, those alike together: they share the width of the cloth.
fn strips_alike(joined: &WidthsMade) -> Vec<(Strip, Vec<u32>)> {
    let mut alike: Vec<(Strip, Vec<u32>)> = Vec::new();
    for (number, strip) in (1..).zip(&joined.strips) {
        match alike.iter_mut().find(|(other, _)| other == strip) {
            Some((_, numbers)) => numbers.push(number),
            None => alike.push((*strip, vec![number])),
        }
    }
    alike
}

#[cfg(test)]
mod tests {
    use pelmet_bolt::LayoutPiece;
    use pelmet_measure::Length;

    use super::on_its_side;

    /// A mark 30 mm from the left edge and 10 mm below the top of a piece 100 mm wide and 40 mm long.
    #[test]
    fn a_piece_on_its_side_is_turned_and_not_mirrored() {
        let mm = Length::millimetres;
        let upright = LayoutPiece {
            width: mm(100),
            length: mm(40),
            quantity: 2,
            phase_along: Some(mm(10)),
            phase_across: Some(mm(30)),
            outline: None,
            on_fold: false,
        };
        let turned = on_its_side(&upright);
        assert_eq!((turned.width, turned.length), (mm(40), mm(100)));
        // Its top to the left, the mark keeps its distance from it; what was its left is its foot.
        assert_eq!(turned.phase_across, Some(mm(10)));
        assert_eq!(turned.phase_along, Some(mm(70)));
        let four_times = (0..3).fold(turned, |piece, _| on_its_side(&piece));
        assert_eq!(four_times, upright);
    }
}
