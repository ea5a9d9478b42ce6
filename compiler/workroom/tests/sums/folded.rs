//! A panel once its pleats are laid: its folded outline, and how thick it lies.

use pelmet_measure::Length;
use pelmet_model::{Fabric, Layer, Matter, PanelOrder, PieceMatter, PleatRule};

use crate::sample::{alone, cloth, eighths, exactly, inches, knives, panel, ratio, seams, sound};

/// 28 in finished from 46 in, three knives 3 in deep, each lying three layers thick.
fn pleated() -> PanelOrder {
    PanelOrder {
        width: exactly(inches(28)),
        pleats: Some(knives(3, inches(3))),
        ..panel()
    }
}

fn tenths(count: i64) -> Length {
    Length::from_nanometres(100_000) * count
}

fn thick(thickness: i64) -> Fabric {
    Fabric {
        thickness: Some(tenths(thickness)),
        ..cloth()
    }
}

#[test]
fn a_panel_without_pleats_hangs_as_its_outline_and_a_gathered_one_is_not_folded() {
    let flat = sound(&panel());
    let folded = flat.folded.unwrap();
    assert_eq!(folded.layers.len(), 1);
    assert_eq!(folded.layers[0].parts, [flat.shape.polygon()]);

    let mut gathered = panel();
    gathered.width.fullness = Some(ratio(2, 1));
    assert_eq!(sound(&gathered).folded, None);

    let pleated = sound(&pleated());
    let layers = pleated.folded.unwrap().layers;
    assert_eq!(layers.len(), pleated.folding.stretches.len());
}

#[test]
fn a_stack_is_held_to_the_limit_of_its_method() {
    let too_thick = |limit| PieceMatter::StackTooThick {
        layers: 3,
        layer: tenths(6),
        limit,
    };
    let cases = [
        ("no limit", Some(6), None, None),
        ("just as thick as allowed", Some(6), Some(18), None),
        (
            "a hair too thick",
            Some(6),
            Some(17),
            Some(too_thick(tenths(17))),
        ),
        ("no thickness and no limit", None, None, None),
        (
            "no thickness to hold to the limit",
            None,
            Some(18),
            Some(PieceMatter::ThicknessMissing {
                layer: Layer::Face,
                limit: tenths(18),
            }),
        ),
    ];
    for (name, thickness, limit, matter) in cases {
        let mut order = pleated();
        order.making.stack = limit.map(tenths);
        let cloth = thickness.map_or_else(cloth, thick);
        let (made, matters) = alone(&order, &cloth);
        let found: Vec<Matter> = matter.into_iter().map(Matter::from).collect();
        assert_eq!(matters, found, "{name}");
        let stack = thickness.map(|thickness| tenths(thickness) * 3);
        assert_eq!(made.unwrap().thickest_stack, stack, "{name}");
    }
}

#[test]
fn a_flat_panel_needs_no_thickness_and_a_lining_counts_in_every_layer() {
    let mut flat = panel();
    flat.making.stack = Some(tenths(1));
    assert_eq!(alone(&flat, &cloth()).1, []);

    let mut lined = pleated();
    lined.lining = Some(0);
    lined.making.lining = Some(seams(inches(1)));
    let (made, _) = alone(&lined, &thick(6));
    assert_eq!(made.unwrap().thickest_stack, Some(tenths(6) * 6));
}

/// The formula of the sums: 2en at worst, 2e*sqrt(n) likely. What is drawn up is not folded.
#[test]
fn the_width_may_be_out_by_what_its_folds_may() {
    let careful = PleatRule {
        folding_error: Some(eighths(1)),
        ..knives(4, inches(1))
    };
    let mut order = panel();
    order.width = exactly(inches(40));
    order.pleats = Some(careful.clone());
    assert_eq!(sound(&order).tolerance, Some((inches(1), eighths(4))));
    order.pleats = Some(PleatRule {
        folding_error: None,
        ..careful
    });
    assert_eq!(sound(&order).tolerance, None);
}
