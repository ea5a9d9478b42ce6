//! What a panel and a window weigh.

use pelmet_measure::{Length, Mass};
use pelmet_model::{Fabric, PanelOrder};
use proptest::prelude::*;

use crate::sample::{
    alone, centimetres, cloth, exactly, inches, made, panel, ratio, seams, window,
};

/// Cloth of so many grams a square metre, wide enough for anything here.
fn weighing(grams: i128) -> Fabric {
    Fabric {
        width: centimetres(400),
        selvage: Length::ZERO,
        grams_per_square_metre: Some(ratio(grams, 1)),
        ..cloth()
    }
}

/// A flat panel of a metre by half a metre, cut without allowances.
fn half_a_square_metre() -> PanelOrder {
    let mut order = panel();
    order.width = exactly(centimetres(100));
    order.drop = centimetres(50);
    order.outline = pelmet_model::Outline::straight(order.drop);
    order.making.face = seams(Length::ZERO);
    order
}

fn grams(whole: i64) -> Mass {
    Mass::from_micrograms(whole * 1_000_000)
}

fn weight_of(order: &PanelOrder, fabrics: &[Fabric]) -> Option<Mass> {
    let length = centimetres(100);
    let (window, _) = made(&window(length, vec![order.clone()], &[0]), fabrics);
    window.weight
}

#[test]
fn a_layer_weighs_its_area_times_what_its_cloth_weighs() {
    let plain = half_a_square_metre();
    assert_eq!(weight_of(&plain, &[weighing(210)]), Some(grams(105)));
    let mut lined = plain;
    lined.lining = Some(1);
    lined.making.lining = Some(seams(Length::ZERO));
    assert_eq!(
        weight_of(&lined, &[weighing(210), weighing(140)]),
        Some(grams(175))
    );
}

#[test]
fn what_is_turned_in_at_the_edges_hangs_too() {
    let mut order = half_a_square_metre();
    order.making.face = seams(centimetres(5));
    // 110 cm x 60 cm.
    assert_eq!(weight_of(&order, &[weighing(100)]), Some(grams(66)));
}

#[test]
fn cloth_is_weighed_before_it_shrinks() {
    let shrinking = Fabric {
        shrinkage: ratio(1, 5),
        ..weighing(64)
    };
    // 1 m / 0.8 = 125 cm, 50 cm / 0.8 = 62.5 cm.
    assert_eq!(
        weight_of(&half_a_square_metre(), &[shrinking]),
        Some(grams(50))
    );
}

#[test]
fn seams_between_widths_lie_double() {
    let mut order = half_a_square_metre();
    order.making.join = centimetres(2);
    let narrow = Fabric {
        width: centimetres(60),
        ..weighing(100)
    };
    // A whole width in the middle and a part at each side: two seams, 4 cm of allowance in each,
    // over 50 cm.
    assert_eq!(weight_of(&order, &[narrow]), Some(grams(54)));
}

#[test]
fn a_cloth_without_a_weight_leaves_it_unknown() {
    let mut lined = half_a_square_metre();
    lined.lining = Some(1);
    lined.making.lining = Some(seams(Length::ZERO));
    assert_eq!(weight_of(&lined, &[weighing(210), cloth()]), None);
}

#[test]
fn a_window_weighs_every_panel_as_often_as_it_hangs() {
    let mut half = panel();
    half.width = exactly(inches(20));
    let order = window(inches(60), vec![half.clone()], &[0, 0, 0]);
    let (three, _) = made(&order, &[weighing(150)]);
    let (one, _) = alone(&half, &weighing(150));
    let one = one.and_then(|panel| panel.weight);
    assert_eq!(three.weight, one.map(|weight| weight * 3));
}

proptest! {
    #[test]
    fn weight_grows_with_the_cloth(weight in 1_i128..2_000, more in 1_i128..500) {
        let order = half_a_square_metre();
        let lighter = weight_of(&order, &[weighing(weight)]);
        let heavier = weight_of(&order, &[weighing(weight + more)]);
        prop_assert!(lighter < heavier && lighter.is_some());
    }
}
