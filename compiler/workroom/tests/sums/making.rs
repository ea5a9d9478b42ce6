//! Making methods: the layers between face and lining, and how edges are finished.

use pelmet_measure::{Area, Length};
use pelmet_model::{Fabric, Layer, Matter, PanelOrder, PieceMatter};
use proptest::prelude::*;

use pelmet_model::OutlineStep::UpToHeading;

use crate::sample::{
    assert_told_to_shrink_more, cloth, eighths, exactly, from, inches, made, outline, panel, ratio,
    seams, sound, to, window,
};

/// Three layers of one cloth, the interlining cut to the finished size.
fn interlined() -> PanelOrder {
    let mut order = PanelOrder {
        interlining: Some(0),
        lining: Some(0),
        ..panel()
    };
    order.making.interlining = Some(seams(Length::ZERO));
    order.making.lining = Some(seams(eighths(4)));
    order
}

#[test]
fn an_interlining_is_cut_by_its_own_allowances_between_face_and_lining() {
    let pieces = sound(&interlined()).pieces;
    let cut: Vec<_> = pieces
        .iter()
        .map(|piece| (piece.layer, piece.cut_width, piece.cut_length))
        .collect();
    assert_eq!(
        cut,
        [
            (Layer::Face, inches(41), inches(15)),
            (Layer::Interlining, inches(40), inches(14)),
            (Layer::Lining, inches(41), inches(15)),
        ]
    );
}

#[test]
fn an_interlining_of_unlike_halves_lies_behind_the_face_as_the_face_lies() {
    let mut order = interlined();
    order.outline = outline(false, &[from(0, 10), to(40, 14), UpToHeading]);
    let mirrored: Vec<_> = sound(&order)
        .pieces
        .iter()
        .map(|piece| piece.mirrored)
        .collect();
    assert_eq!(mirrored, [false, false, true]);
}

#[test]
fn an_interlining_wider_than_its_cloth_is_joined_from_strips_of_its_own() {
    let mut order = interlined();
    order.width = exactly(inches(60));
    order.interlining = Some(1);
    let narrow = Fabric {
        width: inches(31),
        ..cloth()
    };
    let wide = Fabric {
        width: inches(100),
        ..cloth()
    };
    let (window, matters) = made(&window(inches(60), vec![order], &[0]), &[wide, narrow]);
    assert_eq!(matters, []);
    let panel = window.panels[0].as_ref().unwrap();
    let strips = |layer| {
        let piece = panel.pieces.iter().find(|piece| piece.layer == layer);
        piece
            .unwrap()
            .joined
            .as_ref()
            .map_or(1, |joined| joined.strips.len())
    };
    assert_eq!(
        [Layer::Face, Layer::Interlining, Layer::Lining].map(strips),
        [1, 3, 1]
    );
}

#[test]
fn an_interlining_lies_in_every_layer_of_a_stack() {
    let mut order = interlined();
    order.width = exactly(inches(39));
    order.pleats = Some(crate::sample::knives(2, inches(2)));
    order.interlining = Some(1);
    order.making.stack = Some(Length::millimetres(100));
    let thick = |thickness| Fabric {
        thickness,
        width: inches(100),
        ..cloth()
    };
    let millimetres = |whole| Some(Length::millimetres(whole));
    let stack = |face, interlining| {
        let order = window(inches(39), vec![order.clone()], &[0]);
        let (window, matters) = made(&order, &[thick(face), thick(interlining)]);
        (window.panels[0].as_ref().unwrap().thickest_stack, matters)
    };
    // A knife pleat lies three deep: three times face, interlining and lining.
    assert_eq!(
        stack(millimetres(1), millimetres(3)),
        (millimetres(3 * (1 + 3 + 1)), vec![])
    );
    let missing = PieceMatter::ThicknessMissing {
        layer: Layer::Interlining,
        limit: Length::millimetres(100),
    };
    assert_eq!(
        stack(millimetres(1), None),
        (None, vec![Matter::Piece(missing)])
    );
}

#[test]
fn an_interlining_that_shrinks_more_than_the_face_is_reported() {
    let mut order = interlined();
    order.interlining = Some(1);
    assert_told_to_shrink_more(order, Layer::Interlining, ratio(2, 100));
}

/// What the pieces of a panel come to, cut without allowances.
fn net_area(order: &PanelOrder) -> Area {
    sound_in_wide_cloth(order)
        .iter()
        .map(|piece| piece.area)
        .sum()
}

fn sound_in_wide_cloth(order: &PanelOrder) -> Vec<pelmet_model::PieceMade> {
    let wide = Fabric {
        width: Length::METRE * 20,
        ..cloth()
    };
    let (made, matters) = crate::sample::alone(order, &wide);
    assert_eq!(matters, []);
    made.unwrap().pieces
}

proptest! {
    /// Every layer is the flat panel once.
    #[test]
    fn without_allowances_the_pieces_are_the_flat_panel_as_often_as_it_has_layers(
        width in 1_i64..5_000, drop in 1_i64..3_000, is_interlined: bool, is_lined: bool,
    ) {
        let mut order = panel();
        (order.width, order.drop) = (exactly(Length::millimetres(width)), Length::millimetres(drop));
        order.outline = pelmet_model::Outline::straight(order.drop);
        order.making.face = seams(Length::ZERO);
        order.interlining = is_interlined.then_some(0);
        order.making.interlining = is_interlined.then(|| seams(Length::ZERO));
        order.lining = is_lined.then_some(0);
        order.making.lining = is_lined.then(|| seams(Length::ZERO));
        let layers = 1 + i64::from(is_interlined) + i64::from(is_lined);
        prop_assert_eq!(
            net_area(&order),
            Area::of(Length::millimetres(width * layers), Length::millimetres(drop))
        );
    }
}
