//! From worked-out panels to pieces on cloth: what is cut from each cloth, and how it is laid.

use std::collections::BTreeSet;

use pelmet_bolt::{Cloth, Effort, Fault, Layout, LayoutTrouble, Outline, Watch};
use pelmet_measure::{Length, Style};
use pelmet_model::{
    Fabric, Flaw, Job, JoinedWidths, Layer, Match, PanelMade, Piece, Strip, Way, WindowOrder, Work,
};

use super::cut_line::cut_line;
use super::ways::WayCompared;

/// A cloth of the job and all that is cut from it.
#[derive(Clone, PartialEq, Debug)]
pub struct ClothToLay {
    /// The cloth, by index in the job.
    pub fabric: usize,
    /// The cloth as the layout sees it.
    pub cloth: Cloth,
    /// What is cut from it.
    pub cuts: Vec<CutPiece>,
    /// How far from the cut end the part of the print lies that is held: the motif's centre, or what
    /// hangs at the heading line. `None` where nothing is held.
    pub print_line: Option<Length>,
}

/// Pieces of one size, cut for one panel of one window.
#[derive(Clone, PartialEq, Debug)]
pub struct CutPiece {
    /// The window, by index in the job.
    pub window: usize,
    /// The panel, by index in the window.
    pub panel: usize,
    /// The layer of the panel.
    pub layer: Layer,
    /// Which strips of a joined piece have this size, numbered from the left and from 1; empty for
    /// a piece cut in one. The piece's quantity counts every strip.
    pub strips: Vec<u32>,
    /// Whether the piece is to be cut from cloth folded along its middle.
    pub on_fold: bool,
    /// Whether the piece lies along the cloth, its width running with the bolt's length.
    pub railroaded: bool,
    /// The piece as the layout sees it.
    pub piece: pelmet_bolt::Piece,
}

/// A cloth with its layout.
#[derive(Clone, PartialEq, Debug)]
pub struct LaidCloth {
    /// What was to be laid.
    pub to_lay: ClothToLay,
    /// How it lies.
    pub layout: Layout,
    /// The ways to lay it that were compared; none where there was no choice.
    pub ways: Vec<WayCompared>,
}

/// Every cloth that something is cut from, in the order of the job.
///
/// Pieces come window by window and then in the order the panels hang, so that the layout does not
/// depend on the order in which panels were written.
pub fn cloths_to_lay(job: &Job, work: &Work, style: &Style) -> Vec<ClothToLay> {
    let cut = all_cuts(job, work);
    job.fabrics
        .iter()
        .enumerate()
        .map(|(fabric, the)| {
            let of_fabric = cut.iter().filter(|(of, _)| *of == fabric);
            let cuts = of_fabric
                .flat_map(|(_, cut)| cut_pieces(cut, the, style))
                .collect();
            let (cuts, print_line) = from_the_first_print(cuts);
            ClothToLay {
                fabric,
                cloth: cloth(the, style),
                cuts,
                print_line,
            }
        })
        .filter(|to_lay| !to_lay.cuts.is_empty())
        .collect()
}

impl ClothToLay {
    /// Lays every piece, with so many times the usual effort, unless `watch` breaks the search off. A
    /// layout that the independent checker does not pass is not used.
    ///
    /// # Errors
    ///
    /// Why the pieces cannot be laid; the piece it names is an index into [`ClothToLay::cuts`].
    pub fn lay(&self, effort: u32, watch: &mut Watch<'_>) -> Result<Layout, LayoutTrouble> {
        let pieces = self.pieces();
        let effort = Effort::usual_for(&pieces).times(effort.into());
        let layout = pelmet_bolt::lay_watched(&self.cloth, &pieces, effort, watch)?;
        if self.faults(&layout).is_empty() {
            Ok(layout)
        } else {
            self.lay_quickly()
        }
    }

    /// Lays every piece without searching for a shorter layout: enough to know whether they fit.
    ///
    /// # Errors
    ///
    /// Why the pieces cannot be laid, as for [`ClothToLay::lay`].
    pub fn lay_quickly(&self) -> Result<Layout, LayoutTrouble> {
        pelmet_bolt::lay_with(&self.cloth, &self.pieces(), Effort::NONE)
    }

    /// What the independent checker holds against a layout; nothing for a sound one.
    pub fn faults(&self, layout: &Layout) -> Vec<Fault> {
        pelmet_bolt::check(&self.cloth, &self.pieces(), layout)
    }

    fn pieces(&self) -> Vec<pelmet_bolt::Piece> {
        self.cuts.iter().map(|cut| cut.piece.clone()).collect()
    }
}

/// The windows in the order of the packet: by name, numbers in names by their value, so that the
/// order in which they were written never shows.
pub(crate) fn window_order(job: &Job) -> Vec<usize> {
    let mut order: Vec<usize> = (0..job.windows.len()).collect();
    order.sort_by_cached_key(|index| {
        let name = job.windows.get(*index).map_or("", |window| &window.name);
        (by_value(name), name)
    });
    order
}

/// The panels of a window in the order they are met: along the row, then over its joins, then
/// whatever does not hang.
pub(crate) fn hanging_order(window: &WindowOrder) -> Vec<usize> {
    let mut met = BTreeSet::new();
    let hung = window.row.iter().chain(&window.over_joins).copied();
    hung.chain(0..window.panels.len())
        .filter(|panel| met.insert(*panel))
        .collect()
}

/// A piece and whose it is.
struct Cut<'a> {
    window: usize,
    panel: usize,
    piece: &'a Piece,
}

/// Every piece of the job with the index of its cloth.
fn all_cuts<'a>(job: &Job, work: &'a Work) -> Vec<(usize, Cut<'a>)> {
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

/// A name with its numbers written out to one length, so that `bay-2` stands before `bay-10`.
fn by_value(name: &str) -> String {
    let parts = name.split_inclusive(|end: char| !end.is_ascii_digit());
    parts
        .map(|part| {
            let word = part.trim_start_matches(|digit: char| digit.is_ascii_digit());
            let number = part.strip_suffix(word).unwrap_or_default();
            if number.is_empty() {
                part.to_owned()
            } else {
                format!("{number:0>20}{word}")
            }
        })
        .collect()
}

/// A piece as it lies on the cloth: one size, or one for each kind of strip it is joined from.
fn cut_pieces(cut: &Cut<'_>, fabric: &Fabric, style: &Style) -> Vec<CutPiece> {
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
    fn outline(&self, lying: &pelmet_bolt::Piece) -> Option<Outline> {
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
        let upright = pelmet_bolt::Piece {
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
fn on_its_side(upright: &pelmet_bolt::Piece) -> pelmet_bolt::Piece {
    pelmet_bolt::Piece {
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
fn from_the_first_print(mut cuts: Vec<CutPiece>) -> (Vec<CutPiece>, Option<Length>) {
    let phases = cuts.iter().filter_map(|cut| cut.piece.phase_along);
    let print_line = phases.min();
    let first = print_line.unwrap_or_default();
    for cut in &mut cuts {
        cut.piece.phase_along = cut.piece.phase_along.map(|phase| phase - first);
    }
    (cuts, print_line)
}

/// The piece held only by the repeats its cloth has.
fn held_by(fabric: &Fabric, mut piece: pelmet_bolt::Piece) -> pelmet_bolt::Piece {
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
fn strips_alike(joined: &JoinedWidths) -> Vec<(Strip, Vec<u32>)> {
    let mut alike: Vec<(Strip, Vec<u32>)> = Vec::new();
    for (number, strip) in (1..).zip(&joined.strips) {
        match alike.iter_mut().find(|(other, _)| other == strip) {
            Some((_, numbers)) => numbers.push(number),
            None => alike.push((*strip, vec![number])),
        }
    }
    alike
}

fn cloth(fabric: &Fabric, style: &Style) -> Cloth {
    let repeat = fabric.repeat;
    Cloth {
        usable_width: fabric.usable_width(),
        gap: fabric.shear_gap,
        repeat_along: repeat.and_then(|repeat| repeat.along),
        repeat_across: repeat.and_then(|repeat| repeat.across),
        // Where the print does not say how wide its columns are, each strip says where it stands.
        half_drop: repeat
            .is_some_and(|repeat| repeat.matching == Match::HalfDrop && repeat.across.is_some()),
        one_way: fabric.way == Way::OneWay,
        bolt_length: fabric.bolt_length,
        buying_step: style.buying_step(),
        flaws: fabric
            .flaws
            .iter()
            .filter_map(|flaw| flaw_laid(fabric, flaw))
            .collect(),
    }
}

/// A flaw as the layout sees it; `None` for one that lies in a selvage.
fn flaw_laid(fabric: &Fabric, flaw: &Flaw) -> Option<pelmet_bolt::Flaw> {
    let usable = fabric.usable_width();
    let within = |edge: Length| (edge - fabric.selvage).max(Length::ZERO).min(usable);
    let (left, right) = flaw.across.map_or((Length::ZERO, usable), |(left, right)| {
        (within(left), within(right))
    });
    (left < right).then(|| pelmet_bolt::Flaw {
        bolt: flaw.bolt.saturating_sub(1),
        from: flaw.from,
        to: flaw.to,
        left,
        right,
    })
}

#[cfg(test)]
mod tests {
    use pelmet_bolt::Piece;
    use pelmet_measure::Length;

    use super::{by_value, on_its_side};

    /// A mark 30 mm from the left edge and 10 mm below the top of a piece 100 mm wide and 40 mm long.
    #[test]
    fn a_piece_on_its_side_is_turned_and_not_mirrored() {
        let mm = Length::millimetres;
        let upright = Piece {
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

    #[test]
    fn names_are_ordered_by_the_value_of_their_numbers() {
        let ordered = [
            "bay", "bay-2", "bay-10", "bay-10-a", "bay-10-b", "bench", "été-1", "été-11",
        ];
        for pair in ordered.windows(2) {
            assert!(by_value(pair[0]) < by_value(pair[1]), "{pair:?}");
        }
    }
}
