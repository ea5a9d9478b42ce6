//! One panel worked out, once its widths are known.

use pelmet_measure::{Length, Mass};
use pelmet_model::PanelMeasure;
use pelmet_model::{
    Fabric, Folding, Held, Matter, MitreMade, NotionOrder, PanelMade, PanelOrder, PieceMatter,
    PleatMade, Pleating, Point, Shape, SupportOrder,
};

use crate::cut::mitre::{cut_from, mark_mitred, mitres};
use crate::cut::panel::Cloth;
use crate::draw::outline::draw;
use crate::draw::shape::{Ground, shape_of};
use crate::finish::marks::Markings;
use crate::finish::needs::{needs, pleat_strips, weight_of};
use crate::finish::steps::steps;
use crate::finish::tape::{fastener_runs, tape_runs, turning_opening};
use crate::fold::hiding::{hidden_runs, run_around};
use crate::fold::outline::fold_outline;
use crate::fold::strip::{fold_pleating, is_hidden};
use crate::hang::heading::{HeadingMade, make_heading};
use crate::hang::weight::cloth_weight;
use crate::pleat::{check, tolerance};
use crate::rounding::ROUNDING;

/// A panel to be worked out, with what it is made from and hangs on.
pub(crate) struct PanelTask<'a> {
    pub(crate) order: &'a PanelOrder,
    pub(crate) fabrics: &'a [Fabric],
    pub(crate) notions: &'a [NotionOrder],
    pub(crate) support: &'a SupportOrder,
    /// How many are made.
    pub(crate) quantity: u32,
    /// How far below the heading line the centre of a motif is to lie.
    pub(crate) motif: Option<Length>,
    /// How far below the heading line the print of the face is held.
    pub(crate) print_level: Length,
}

impl PanelTask<'_> {
    /// Works the panel out. Without its widths, only what does not depend on them is looked at.
    pub(crate) fn make(
        &self,
        pleating: Option<Pleating>,
        matters: &mut Vec<Matter>,
    ) -> Option<PanelMade> {
        self.check_layers(matters);
        let heading = self.heading(matters);
        let pleating = pleating?;
        let folding = self.folded(&pleating, matters);
        let opening = turning_opening(&self.order.making, pleating.flat, matters);
        let shape = self.shape(&pleating, heading.as_ref(), matters);
        let heading = heading?;
        let fasteners = fastener_runs(heading.fastener.as_ref(), pleating.finished, matters);
        let motif = self.motif_centre(heading.depth, &folding, pleating.flat, matters);
        let (shape, mitres) = self.mitred(shape?, matters)?;
        let cloth = Cloth {
            shape: &shape,
            folding: &folding,
            heading: &heading,
            motif,
        };
        let (pieces, bands) = self.pieces(cloth, matters)?;
        let face = pieces.first().and_then(|piece| piece.joined.as_ref());
        let markings = Markings {
            pleating: &pleating,
            shape: &shape,
            heading_line: heading.line,
            heading_work: &heading.lines,
            opening,
            motif,
            fasteners: &fasteners,
            seams: face.map_or(&[], |joined| &joined.seams),
            bands: &bands,
            folded_below: self.order.making.self_lined,
        };
        let folds = hung_by_folds(&pleating, &folding);
        let stack = self.stack_beyond_limit(&folding).filter(|_| folds);
        matters.extend(stack.map(Matter::from));
        let mut made = PanelMade {
            quantity: self.quantity,
            finished: pleating.finished,
            flat: pleating.flat,
            made_length: heading.depth + self.order.drop,
            heading_depth: heading.depth,
            tape: tape_runs(&self.order.making, &shape, opening, &bands),
            marks: markings.marks(),
            tolerance: self.tolerance(&pleating),
            pleat_strips: pleat_strips(self.order.making.notions.pleat_strips, &pleating, matters),
            needs: Vec::new(),
            weight: None,
            steps: Vec::new(),
            fasteners,
            mitres,
            bands,
            pieces,
            folded: folds.then(|| fold_outline(&shape.polygon(), &folding)),
            thickest_stack: self.thickest_stack(&folding).filter(|_| folds),
            pleating,
            folding,
            shape,
        };
        made.needs = needs(self.order, &made);
        made.weight = self.weight(&made);
        made.steps = steps(self.order, &made, self.fabrics, matters);
        Some(made)
    }

    /// What it weighs, its notions as far as they say.
    fn weight(&self, made: &PanelMade) -> Option<Mass> {
        let cloth = cloth_weight(&made.pieces, self.fabrics)?;
        Some(cloth + weight_of(&made.needs, self.notions))
    }

    fn heading(&self, matters: &mut Vec<Matter>) -> Option<HeadingMade> {
        let drop = self.order.drop;
        if !drop.is_positive() {
            matters.push(
                PieceMatter::NothingLeft {
                    size: PanelMeasure::Drop,
                    length: drop,
                }
                .into(),
            );
            return None;
        }
        make_heading(&self.order.heading, self.support, drop, matters)
    }

    fn tolerance(&self, pleating: &Pleating) -> Option<(Length, Length)> {
        let folded = |pleat: &&PleatMade| pleat.held != Held::Drawn;
        let pleats = pleating.pleats.iter().filter(folded).count();
        tolerance(self.order.pleats.as_ref()?, pleats)
    }

    fn folded(&self, pleating: &Pleating, matters: &mut Vec<Matter>) -> Folding {
        let folding = fold_pleating(pleating);
        matters.extend(self.turn_not_counted(pleating).map(Matter::from));
        if let Some(rule) = &self.order.pleats {
            matters.extend(
                check(rule, pleating, &folding)
                    .into_iter()
                    .map(Matter::from),
            );
        }
        folding
    }

    /// The made-up shape. Without a heading it is only looked at for mistakes.
    fn shape(
        &self,
        pleating: &Pleating,
        heading: Option<&HeadingMade>,
        matters: &mut Vec<Matter>,
    ) -> Option<Shape> {
        if !self.order.drop.is_positive() {
            return None;
        }
        let outline = &self.order.outline;
        let heading_depth = heading.map_or(Length::ZERO, |heading| heading.depth);
        let ground = Ground {
            flat: pleating.flat,
            heading_depth,
            half: outline.half,
        };
        let drawn = draw(outline, ground.drawn_width(), self.order.drop, matters)?;
        shape_of(drawn, ground, matters)
    }

    /// The shape with its mitred corners, and their mitres as they are marked on the cut face. `None`
    /// where one cannot be made.
    fn mitred(
        &self,
        mut shape: Shape,
        matters: &mut Vec<Matter>,
    ) -> Option<(Shape, Vec<MitreMade>)> {
        let face = self.fabrics.get(self.order.face)?;
        let made = mitres(&self.order.making, &shape);
        let made = made.map_err(|matter| matters.push(matter.into())).ok()?;
        mark_mitred(&mut shape.corners, &made);
        let cut = made.into_iter().map(|mitre| cut_from(mitre, face));
        Some((shape, cut.collect()))
    }

    fn motif_centre(
        &self,
        heading_depth: Length,
        folding: &Folding,
        flat: Length,
        matters: &mut Vec<Matter>,
    ) -> Option<Point> {
        let (below_heading, drop) = (self.motif?, self.order.drop);
        let centre = Point {
            across: flat.divided(2),
            down: heading_depth + below_heading,
        };
        if below_heading > drop {
            matters.push(
                PieceMatter::MotifBelowDrop {
                    below_heading,
                    drop,
                }
                .into(),
            );
        }
        if is_hidden(folding, centre.across) {
            let at = centre.across;
            let hidden = run_around(&hidden_runs(folding), at);
            matters.push(PieceMatter::MotifHidden { at, hidden }.into());
        }
        Some(centre)
    }
}

/// Whether the creases alone bring a panel to its finished width.
fn hung_by_folds(pleating: &Pleating, folding: &Folding) -> bool {
    pleating.drawn.is_empty() && (pleating.finished - folding.finished).abs() <= ROUNDING
}
