//! The layers of a panel: whether each suits its method and the others, and how thick they are.

use pelmet_measure::Length;

use crate::work_panel::PanelTask;
use crate::{Fabric, Folding, Layer, MakingMatter, Matter, PieceMatter};

impl PanelTask<'_> {
    /// Every layer behind the face as the method wants it, and as it suits the face.
    pub(crate) fn check_layers(&self, matters: &mut Vec<Matter>) {
        for layer in Layer::BEHIND_FACE {
            let panel_has = self.order.cloth(layer).is_some();
            if panel_has != self.order.making.layer(layer).is_some() {
                matters.push(MakingMatter::LayerMismatch { layer, panel_has }.into());
            }
            matters.extend(self.shrinks_more(layer).map(Matter::from));
        }
    }

    /// How thick one layer of the panel is, all its cloths together, where each of them says.
    fn layer_thickness(&self) -> Option<Length> {
        let cloths = Layer::ALL.into_iter().filter_map(|layer| self.cloth(layer));
        cloths.map(|cloth| cloth.thickness).sum()
    }

    /// How thick the thickest stack of the folded panel is, where all its cloths say.
    pub(crate) fn thickest_stack(&self, folding: &Folding) -> Option<Length> {
        Some(self.layer_thickness()? * i64::from(folding.thickest))
    }

    /// What keeps a pleated panel from the limit its method sets, where it sets one.
    pub(crate) fn stack_beyond_limit(&self, folding: &Folding) -> Option<PieceMatter> {
        let limit = self.order.making.stack.filter(|_| folding.thickest > 1)?;
        let has_no_thickness = |layer: &Layer| {
            let cloth = self.cloth(*layer);
            cloth.is_some_and(|cloth| cloth.thickness.is_none())
        };
        if let Some(layer) = Layer::ALL.into_iter().find(has_no_thickness) {
            return Some(PieceMatter::ThicknessMissing { layer, limit });
        }
        let (layers, layer) = (folding.thickest, self.layer_thickness()?);
        (layer * i64::from(layers) > limit).then_some(PieceMatter::StackTooThick {
            layers,
            layer,
            limit,
        })
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
