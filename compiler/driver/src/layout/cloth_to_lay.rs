//! What is cut from each cloth of a job, and how it is laid.

use pelmet_bolt::{
    CheckerFinding, LayingFinding, Layout, LayoutCloth, LayoutPiece, SearchEffort, SearchWatch,
};
use pelmet_measure::{Length, Style};
use pelmet_model::{Job, Layer, Work};

use super::cloth_laid::cloth;
use super::cut_pieces::{all_cuts, cut_pieces, from_the_first_print};

/// A cloth of the job and all that is cut from it.
#[derive(Clone, PartialEq, Debug)]
pub struct ClothToLay {
    /// The cloth, by index in the job.
    pub fabric: usize,
    /// The cloth as the layout sees it.
    pub cloth: LayoutCloth,
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
    pub piece: LayoutPiece,
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
    /// Lays every piece, with so many times the usual effort, unless `watch` breaks the search off; with
    /// none, without a search, which is enough to know whether they fit. A layout that the independent
    /// checker does not pass is not used.
    ///
    /// # Errors
    ///
    /// Why the pieces cannot be laid; the piece it names is an index into [`ClothToLay::cuts`].
    pub fn lay(&self, effort: u32, watch: &mut SearchWatch<'_>) -> Result<Layout, LayingFinding> {
        let pieces = self.pieces();
        let effort = SearchEffort::usual_for(&pieces).times(effort.into());
        let layout = pelmet_bolt::lay_watched(&self.cloth, &pieces, effort, watch)?;
        if self.findings(&layout).is_empty() {
            Ok(layout)
        } else {
            pelmet_bolt::lay_with(&self.cloth, &pieces, SearchEffort::NONE)
        }
    }

    /// What the independent checker holds against a layout; nothing for a sound one.
    pub fn findings(&self, layout: &Layout) -> Vec<CheckerFinding> {
        pelmet_bolt::check(&self.cloth, &self.pieces(), layout)
    }

    /// The pieces as the layout sees them, in the order of [`ClothToLay::cuts`].
    pub(crate) fn pieces(&self) -> Vec<LayoutPiece> {
        self.cuts.iter().map(|cut| cut.piece.clone()).collect()
    }
}
