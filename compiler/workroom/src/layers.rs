//! The layers of a panel: whether each suits its method and the others, and how thick they are.

use pelmet_measure::Length;
use pelmet_model::{
    BandEdge, Fabric, Folding, Layer, MakingMatter, Matter, PieceMatter, PleatMatter, Pleating,
};

use crate::panel::PanelTask;
use crate::pleat::turn_of_cloth::{
    layer_without_thickness, says_no_thickness, thickness, turn_of_cloth,
};

impl PanelTask<'_> {
    /// Every cloth beside the face as the method wants it, and as it suits the face.
    pub(crate) fn check_layers(&self, matters: &mut Vec<Matter>) {
        // One band stands for all.
        let band = Layer::Band(BandEdge::Lower);
        for layer in [Layer::Interlining, Layer::Lining, band] {
            let panel_has = self.order.cloth(layer).is_some();
            if panel_has != self.order.making.layer(layer).is_some() {
                matters.push(MakingMatter::LayerMismatch { layer, panel_has }.into());
            }
            matters.extend(self.shrinks_more(layer).map(Matter::from));
        }
    }

    /// How thick the thickest stack of the folded panel is, where all its cloths say.
    pub(crate) fn thickest_stack(&self, folding: &Folding) -> Option<Length> {
        Some(thickness(self.order, self.fabrics)? * i64::from(folding.thickest))
    }

    /// What keeps a pleated panel from the limit its method sets, where it sets one.
    pub(crate) fn stack_beyond_limit(&self, folding: &Folding) -> Option<PieceMatter> {
        let limit = self.order.making.stack.filter(|_| folding.thickest > 1)?;
        if let Some(layer) = layer_without_thickness(self.order, self.fabrics) {
            return Some(PieceMatter::ThicknessMissing { layer, limit });
        }
        let (layers, layer) = (folding.thickest, thickness(self.order, self.fabrics)?);
        (layer * i64::from(layers) > limit).then_some(PieceMatter::StackTooThick {
            layers,
            layer,
            limit,
        })
    }

    /// A layer without which the turn of the cloth cannot be counted, where another says how thick
    /// it is and nothing else asks for it.
    pub(crate) fn turn_not_counted(&self, pleating: &Pleating) -> Option<PleatMatter> {
        let order = self.order;
        let layer = layer_without_thickness(order, self.fabrics)?;
        let is_wanted = pleating.is_pressed() && turn_of_cloth(order, self.fabrics).is_none();
        let is_told = order.making.stack.is_some() || says_no_thickness(order, self.fabrics);
        (is_wanted && !is_told).then_some(PleatMatter::TurnNotCounted { layer })
    }

    /// The cloth a layer is cut from.
    pub(crate) fn cloth(&self, layer: Layer) -> Option<&Fabric> {
        self.fabrics.get(self.order.cloth(layer)?)
    }

    fn shrinks_more(&self, layer: Layer) -> Option<MakingMatter> {
        let face = self.cloth(Layer::Face)?.shrinkage;
        let behind = self.cloth(layer)?.shrinkage;
        (behind > face).then_some(MakingMatter::LayerShrinksMore {
            layer,
            face,
            behind,
        })
    }
}
