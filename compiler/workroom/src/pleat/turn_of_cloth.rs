//! How thick a panel is, and what that takes of its flat width wherever it is creased.

use pelmet_measure::Length;
use pelmet_model::{Fabric, Layer, PanelOrder, PleatRule};

use crate::hang::heading::QUARTER_PI;

/// What a crease in cloth of this thickness loses of the flat width: the cloth goes half round its
/// own middle line, `pi * t / 2` for a thickness `t` (geometry), to the even nanometre.
pub fn turn_of(thickness: Length) -> Length {
    thickness.scaled(QUARTER_PI) * 2
}

/// How thick the panel is where it lies single, all its layers together; `None` where one of
/// its cloths does not say.
pub fn thickness(order: &PanelOrder, fabrics: &[Fabric]) -> Option<Length> {
    layers(order, fabrics)
        .map(|(_, cloth)| cloth.thickness)
        .sum()
}

/// What each pressed crease of the panel loses: as its pleat rule states, or by its thickness.
/// `None` where neither is known, and nothing is counted.
pub fn turn_of_cloth(order: &PanelOrder, fabrics: &[Fabric]) -> Option<Length> {
    let stated = order.pleats.as_ref()?.turn_of_cloth;
    stated.or_else(|| thickness(order, fabrics).map(turn_of))
}

/// The pleat rule with its turn of cloth settled.
pub(crate) fn pleats_with_turn(order: &PanelOrder, fabrics: &[Fabric]) -> Option<PleatRule> {
    Some(PleatRule {
        turn_of_cloth: turn_of_cloth(order, fabrics),
        ..order.pleats.clone()?
    })
}

/// The first layer whose cloth does not say how thick it is.
pub(crate) fn layer_without_thickness(order: &PanelOrder, fabrics: &[Fabric]) -> Option<Layer> {
    let mut layers = layers(order, fabrics);
    let (layer, _) = layers.find(|(_, cloth)| cloth.thickness.is_none())?;
    Some(layer)
}

/// Whether none of its cloths says how thick it is.
pub fn says_no_thickness(order: &PanelOrder, fabrics: &[Fabric]) -> bool {
    let mut layers = layers(order, fabrics);
    layers.all(|(_, cloth)| cloth.thickness.is_none())
}

/// Its layers, each with its cloth; a face that lines itself lies there twice.
fn layers<'a>(
    order: &PanelOrder,
    fabrics: &'a [Fabric],
) -> impl Iterator<Item = (Layer, &'a Fabric)> {
    let twice = order.making.self_lined.then_some(Layer::Face);
    let layers = Layer::ALL.into_iter().chain(twice);
    layers.filter_map(|layer| Some((layer, fabrics.get(order.cloth(layer)?)?)))
}
