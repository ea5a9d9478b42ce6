//! What is cut for a panel, layer by layer.

use pelmet_measure::Length;
use pelmet_model::{BandMade, Cut, Folding, Layer, Matter, PieceMade, PieceMatter, Point, Shape};

use crate::cut::band::{Banded, banded};
use crate::cut::pieces::Cutting;
use crate::cut::self_lined::{laid_open, upside_down};
use crate::draw::halves::{has_like_halves, mirrored};
use crate::hang::heading::HeadingMade;
use crate::panel::PanelTask;

/// A panel's cloth before it is cut.
#[derive(Copy, Clone)]
pub(crate) struct Cloth<'a> {
    pub(crate) shape: &'a Shape,
    pub(crate) folding: &'a Folding,
    pub(crate) heading: &'a HeadingMade,
    pub(crate) motif: Option<Point>,
}

impl PanelTask<'_> {
    /// The pieces of every layer, face first and bands last, with the bands as they are made up. `None`
    /// where one of them cannot be cut.
    pub(crate) fn pieces(
        &self,
        cloth: Cloth<'_>,
        matters: &mut Vec<Matter>,
    ) -> Option<(Vec<PieceMade>, Vec<BandMade>)> {
        let banded = self.banded(cloth.shape, matters)?;
        if self.order.cut == Cut::OnFold && !has_like_halves(cloth.shape) {
            matters.push(PieceMatter::HalvesDiffer.into());
        }
        let face = self.face_shape(cloth, banded.face, matters)?;
        // Right sides together, the lining lies turned over on the face; an interlining lies behind it.
        let turned_over = (!has_like_halves(cloth.shape)).then(|| mirrored(cloth.shape));
        let layers = Layer::ALL.into_iter().map(|layer| {
            let shape = match layer {
                Layer::Face => &face,
                Layer::Lining => turned_over.as_ref().unwrap_or(cloth.shape),
                Layer::Interlining | Layer::Band(_) => cloth.shape,
            };
            (layer, shape)
        });
        let bands = banded.shapes.iter();
        let bands = bands.map(|(edge, shape)| (Layer::Band(*edge), shape));
        let cuttings = layers
            .chain(bands)
            .filter_map(|(layer, shape)| self.cutting(layer, shape, cloth));
        let pieces: Vec<Option<PieceMade>> = cuttings.map(|cutting| cutting.cut(matters)).collect();
        let pieces: Option<Vec<PieceMade>> = pieces.into_iter().collect();
        Some((pieces?, banded.bands))
    }

    /// What the bands of the panel leave of its face, and the bands. `None` where they cannot be cut.
    fn banded(&self, shape: &Shape, matters: &mut Vec<Matter>) -> Option<Banded> {
        let Some(order) = &self.order.making.band else {
            return Some(Banded::default());
        };
        let made = banded(order, shape);
        let found = |found: Vec<_>| matters.extend(found.into_iter().map(Matter::from));
        made.map_err(found).ok()
    }

    /// The shape of the face alone: what its bands leave of it, or with the back half it is lined by.
    fn face_shape(
        &self,
        cloth: Cloth<'_>,
        left: Option<Shape>,
        matters: &mut Vec<Matter>,
    ) -> Option<Shape> {
        if !self.order.making.self_lined {
            return Some(left.unwrap_or_else(|| cloth.shape.clone()));
        }
        let face = self.fabrics.get(self.order.face)?;
        matters.extend(upside_down(face).map(Matter::from));
        let open = laid_open(cloth.shape);
        open.map_err(|matter| matters.push(matter.into())).ok()
    }

    /// One layer about to be cut; `None` for a layer the panel does not have.
    fn cutting<'a>(
        &'a self,
        layer: Layer,
        shape: &'a Shape,
        cloth: Cloth<'a>,
    ) -> Option<Cutting<'a>> {
        let making = &self.order.making;
        let fabric = self.order.cloth(layer)?;
        let is_face = layer == Layer::Face;
        let is_band = matches!(layer, Layer::Band(_));
        let level = if is_face {
            self.print_level
        } else {
            Length::ZERO
        };
        let print_down = if is_band {
            shape.bounds().0.down
        } else {
            cloth.heading.depth + level
        };
        Some(Cutting {
            layer,
            fabric,
            cloth: self.fabrics.get(fabric)?,
            making: making.layer(layer)?,
            join: making.join,
            shape,
            mirrored: layer == Layer::Lining && !has_like_halves(cloth.shape),
            fold_down: (is_face && making.self_lined).then(|| cloth.shape.bounds().1.down),
            folding: cloth.folding,
            print_down,
            on_fold: self.order.cut == Cut::OnFold && !is_band,
            quantity: self.quantity,
            motif: cloth.motif.filter(|_| is_face),
        })
    }
}
