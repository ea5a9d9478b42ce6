//! The pieces of a panel: the cut line, the sizes the shears follow, joined widths.

use num_traits::{CheckedDiv, CheckedSub};
use pelmet_measure::{Length, Ratio};
use pelmet_model::PanelMeasure;
use pelmet_model::{
    Allowance, EdgeKind, Fabric, Folding, Layer, LayerMaking, Matter, OutlineMatter, PieceMade,
    PieceMatter, Point, Railroad, Seam, Shape, Strip, WidthsMade,
};

use crate::cut::allowance::{edge_allowances, grow};
use crate::cut::joined::{
    HeldAcross, LEAST_PART, fits, seam_positions, strip_widths, strips_on_print, whole_width,
};
use crate::fold::hiding::{Run, SeamRoom, hidden_runs, nearest_in};
use crate::fold::strip::is_hidden;

/// One layer of a panel, about to be cut.
#[derive(Copy, Clone)]
pub(crate) struct Cutting<'a> {
    pub(crate) layer: Layer,
    pub(crate) fabric: usize,
    pub(crate) cloth: &'a Fabric,
    pub(crate) making: &'a LayerMaking,
    /// Seam allowance on each side where widths are joined.
    pub(crate) join: Length,
    pub(crate) shape: &'a Shape,
    /// Whether that shape is the panel's turned over.
    pub(crate) mirrored: bool,
    /// How far below the made-up top edge the piece is folded for its back half.
    pub(crate) fold_down: Option<Length>,
    pub(crate) folding: &'a Folding,
    /// How far below the made-up top edge the print is held.
    pub(crate) print_down: Length,
    pub(crate) on_fold: bool,
    pub(crate) quantity: u32,
    /// Where the centre of a motif lies on the flat panel.
    pub(crate) motif: Option<Point>,
}

impl Cutting<'_> {
    /// The piece. `None` where it has no size.
    pub(crate) fn cut(&self, matters: &mut Vec<Matter>) -> Option<PieceMade> {
        let outline = match grow(self.shape, &edge_allowances(self.shape, self.making)) {
            Ok(outline) => outline,
            // Turned over, a lining finds the narrow places of its face from the other side.
            Err(_) if self.mirrored && matters.iter().any(is_too_narrow) => return None,
            Err(too_narrow) => {
                add_once(matters, too_narrow);
                return None;
            }
        };
        let (least, most) = outline.bounds();
        let cut_width = self.size(PanelMeasure::CutWidth, most.across - least.across, matters)?;
        let cut_length = self.size(PanelMeasure::CutLength, most.down - least.down, matters)?;
        let usable = self.cloth.usable_width();
        let too_wide = cut_width > usable;
        let railroaded = self.lies_along(too_wide) && cut_length <= usable;
        let joined = if too_wide && !railroaded {
            Some(self.joined(cut_width, least.across, matters)?)
        } else {
            None
        };
        self.check_bolt(if railroaded { cut_width } else { cut_length }, matters);
        Some(PieceMade {
            layer: self.layer,
            fabric: self.fabric,
            quantity: self.quantity,
            // Strips are joined from open cloth, whatever was asked for.
            on_fold: self.on_fold && joined.is_none(),
            mirrored: self.mirrored,
            railroaded,
            cut_width,
            cut_length,
            area: outline.area(),
            allowances: self.allowances(),
            joined,
            fold: self
                .fold_down
                .map(|down| self.cut_length_of(down - least.down)),
            print_point: self.print_point(least),
            print_held_across: self.motif.is_some() && self.cloth.repeats_across(),
            carries_motif: self.motif.is_some(),
            outline,
            sewn: self.shape.clone(),
        })
    }

    /// Whether a piece lies along the cloth if it is not too long for that.
    fn lies_along(&self, too_wide: bool) -> bool {
        match self.cloth.railroad {
            Railroad::Never => false,
            Railroad::WhereTooWide | Railroad::WhereItSaves => too_wide,
            Railroad::Always => true,
        }
    }

    /// A size with what the cloth will lose added, so that it comes out right.
    fn size(
        &self,
        size: PanelMeasure,
        length: Length,
        matters: &mut Vec<Matter>,
    ) -> Option<Length> {
        let cut = before_shrinking(length, self.cloth.shrinkage);
        if cut.is_none() {
            matters.push(PieceMatter::TooLarge { size }.into());
        }
        cut
    }

    /// What is added at each kind of edge the piece has.
    fn allowances(&self) -> Vec<(EdgeKind, Allowance, Length)> {
        let edges = self.making.edges;
        let more = |kind| match kind {
            EdgeKind::Top => self.making.longer,
            EdgeKind::Side => self.making.wider.divided(2),
            EdgeKind::Lower | EdgeKind::Band => Length::ZERO,
        };
        let has = |kind: &EdgeKind| self.shape.edges.iter().any(|edge| edge.kind == *kind);
        EdgeKind::ALL
            .iter()
            .copied()
            .filter(has)
            .map(|kind| {
                let allowance = edges.of(kind);
                (kind, allowance, allowance.total() + more(kind))
            })
            .collect()
    }

    /// A length of the finished piece as it measures on the cut one.
    fn cut_length_of(&self, length: Length) -> Length {
        before_shrinking(length, self.cloth.shrinkage).unwrap_or(length)
    }

    /// The sewn left edge at the height where the print is held, so that equal parts of it hang
    /// level in every panel; on the panel that carries a motif, its centre.
    fn print_point(&self, corner: Point) -> Point {
        let level = Point {
            across: self.shape.bounds().0.across,
            down: self.print_down,
        };
        let held = self.motif.unwrap_or(level);
        Point {
            across: self.cut_length_of(held.across - corner.across),
            down: self.cut_length_of(held.down - corner.down),
        }
    }

    fn joined(
        &self,
        cut_width: Length,
        left: Length,
        matters: &mut Vec<Matter>,
    ) -> Option<WidthsMade> {
        let (usable, repeat) = (self.cloth.usable_width(), self.repeat_across());
        let motif = self.motif.is_some();
        let line = self.cloth.print_line_across();
        let print = repeat.map(|repeat| HeldAcross {
            repeat,
            line,
            motif,
        });
        let whole = whole_width(usable, self.join, print);
        let widths = strip_widths(self.layer, cut_width, whole, self.join);
        let strips = widths.map_err(|matter| matters.push(matter.into())).ok()?;
        let kept = Ratio::new_raw(1, 1).checked_sub(&self.cloth.shrinkage)?;
        let held = self
            .motif
            .map(|motif| (motif.across - left).scaled(self.grown()));
        let on_print = |strips: &[Length]| strips_on_print(strips, self.join, repeat, held);
        let fit = |strip: &Strip| fits(strip, usable, print);
        let moved = self.hide_seams(&strips, cut_width, left);
        // A strip moved along the print may no longer find its place on the cloth.
        let moved = moved.filter(|moved| on_print(moved).iter().all(fit));
        let strips = moved.unwrap_or(strips);
        let seams = seam_positions(&strips, self.join)
            .into_iter()
            .map(|position| {
                let at = left + position.scaled(kept);
                Seam {
                    at,
                    hidden: is_hidden(self.folding, at),
                }
            });
        let seams: Vec<Seam> = seams.collect();
        matters.extend(self.showing(&seams));
        Some(WidthsMade {
            strips: on_print(&strips),
            seams,
            allowance: self.join,
        })
    }

    /// The strips of a pleated face with their seams brought to where pleats hide them. A seam
    /// keeps its allowance clear of the folds where the pleat is deep enough.
    fn hide_seams(
        &self,
        strips: &[Length],
        cut_width: Length,
        left: Length,
    ) -> Option<Vec<Length>> {
        if self.layer != Layer::Face {
            return None;
        }
        let on_cut = |at: Length| (at - left).scaled(self.grown());
        let clear = |(from, to): Run| {
            let by = self.join.min((to - from).divided(2));
            (on_cut(from + by), on_cut(to - by))
        };
        let hidden: Vec<Run> = hidden_runs(self.folding).into_iter().map(clear).collect();
        let room = SeamRoom {
            ends: (self.join, cut_width - self.join),
            strip: (LEAST_PART, self.cloth.usable_width() - self.join * 2),
            hidden: &hidden,
        };
        let seams = room.hide(&seam_positions(strips, self.join));
        let (begin, end) = room.ends;
        let starts = [begin].into_iter().chain(seams.iter().copied());
        let stops = seams.iter().copied().chain([end]);
        let between = starts.zip(stops).map(|(from, to)| to - from);
        Some(between.map(|sewn| sewn + self.join * 2).collect())
    }

    /// The repeat across that a strip of this cloth can hold; a wider one cannot meet at a seam.
    fn repeat_across(&self) -> Option<Length> {
        let across = self.cloth.repeat.and_then(|repeat| repeat.across);
        let widest = self.cloth.usable_width() - self.join * 2;
        across.filter(|across| *across <= widest)
    }

    /// By how much a size is cut larger for what the cloth will lose.
    fn grown(&self) -> Ratio {
        let one = Ratio::new_raw(1, 1);
        let kept = one.checked_sub(&self.cloth.shrinkage);
        kept.and_then(|kept| one.checked_div(&kept)).unwrap_or(one)
    }

    /// The seams that a pleated face lets be seen; a flat or gathered one has nowhere to hide them.
    fn showing(&self, seams: &[Seam]) -> Vec<Matter> {
        let pleated = self.folding.stretches.len() > 1;
        if !pleated || self.layer != Layer::Face {
            return vec![];
        }
        let hidden = hidden_runs(self.folding);
        let seen = seams.iter().filter(|seam| !seam.hidden);
        seen.map(|seam| {
            PieceMatter::SeamShows {
                layer: self.layer,
                at: seam.at,
                hidden_at: nearest_in(&hidden, seam.at),
            }
            .into()
        })
        .collect()
    }

    fn check_bolt(&self, along: Length, matters: &mut Vec<Matter>) {
        if let Some(bolt) = self.cloth.bolt_length.filter(|bolt| along > *bolt) {
            let layer = self.layer;
            matters.push(
                PieceMatter::LongerThanBolt {
                    layer,
                    cut_length: along,
                    bolt,
                }
                .into(),
            );
        }
    }
}

/// The length to cut so that `length` is left once the cloth has lost `shrinkage` of it, rounded up
/// to the nanometre. `None` where nothing would be left or the cut is past any bolt.
pub(crate) fn before_shrinking(length: Length, shrinkage: Ratio) -> Option<Length> {
    let kept = Ratio::new_raw(1, 1).checked_sub(&shrinkage)?;
    if kept <= Ratio::new_raw(0, 1) {
        return None;
    }
    let scaled = i128::from(length.nanometres()).checked_mul(*kept.denom())?;
    let down = scaled.checked_div_euclid(*kept.numer())?;
    let rest = scaled.checked_rem_euclid(*kept.numer())?;
    let up = down.checked_add(i128::from(rest > 0))?;
    let cut = Length::from_nanometres(i64::try_from(up).ok()?);
    (cut <= Length::LARGEST).then_some(cut)
}

fn is_too_narrow(matter: &Matter) -> bool {
    matches!(matter, Matter::Outline(OutlineMatter::TooNarrow { .. }))
}

/// Adds reports of narrow places; one that another layer gave already says it for this one too.
fn add_once(matters: &mut Vec<Matter>, too_narrow: Vec<OutlineMatter>) {
    let place = |matter: &OutlineMatter| match matter {
        OutlineMatter::TooNarrow { step, .. } => Some(*step),
        _ => None,
    };
    for matter in too_narrow {
        let told = matters.iter().any(|other| match other {
            Matter::Outline(other) => place(other) == place(&matter),
            _ => false,
        });
        if !told {
            matters.push(matter.into());
        }
    }
}
