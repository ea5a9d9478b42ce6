//! How thick a panel is, and what its creases lose for it.

use pelmet_measure::Length;
use pelmet_model::{Fabric, Layer, Matter, PanelMade, PanelOrder, PleatMatter, PleatRule};
use pelmet_workroom::{says_no_thickness, turn_of, turn_of_cloth};

use crate::sample::{cloth, eighths, exactly, inches, knives, made, panel, seams, window};

fn tenths(count: i64) -> Length {
    Length::from_nanometres(100_000) * count
}

fn thick(thickness: Option<i64>) -> Fabric {
    Fabric {
        thickness: thickness.map(tenths),
        ..cloth()
    }
}

/// 39 in finished, lined, two knives 2 in deep.
fn lined() -> PanelOrder {
    let mut order = PanelOrder {
        width: exactly(inches(39)),
        pleats: Some(knives(2, inches(2))),
        lining: Some(1),
        ..panel()
    };
    order.making.lining = Some(seams(eighths(4)));
    order
}

fn with_stated_turn(turn: Length) -> PanelOrder {
    let order = lined();
    let pleats = order.pleats.map(|rule| PleatRule {
        turn_of_cloth: Some(turn),
        ..rule
    });
    PanelOrder { pleats, ..order }
}

fn worked(order: &PanelOrder, fabrics: &[Fabric]) -> (PanelMade, Vec<Matter>) {
    let window = window(inches(39), vec![order.clone()], &[0]);
    let (mut window, matters) = made(&window, fabrics);
    (window.panels.remove(0).unwrap(), matters)
}

/// Half of the way round a circle as wide as the cloth is thick (geometry): pi / 2 = 1.570796...
#[test]
fn a_crease_loses_half_the_way_round_the_middle_of_the_cloth() {
    let cases = [(0, 0), (10, 1_570_796), (20, 3_141_592)];
    for (thickness, lost) in cases {
        let lost = Length::from_nanometres(lost);
        assert_eq!(turn_of(tenths(thickness)), lost);
    }
}

#[test]
fn all_layers_together_are_turned_and_a_stated_turn_comes_first() {
    let mut unlined = lined();
    (unlined.lining, unlined.making.lining) = (None, None);
    let mut folded_up = unlined.clone();
    folded_up.making.self_lined = true;
    let flat = PanelOrder {
        pleats: None,
        ..lined()
    };
    let stated = || with_stated_turn(inches(1));
    let as_thick = |thickness| Some(turn_of(tenths(thickness)));
    let cases = [
        ("face alone", &unlined, Some(3), None, as_thick(3)),
        ("face and lining", &lined(), Some(3), Some(4), as_thick(7)),
        ("face twice", &folded_up, Some(3), None, as_thick(6)),
        ("one not known", &lined(), Some(3), None, None),
        ("none known", &lined(), None, None, None),
        ("stated", &stated(), Some(3), Some(4), Some(inches(1))),
        ("stated alone", &stated(), None, None, Some(inches(1))),
        ("no pleats", &flat, Some(3), Some(4), None),
    ];
    for (name, order, face, lining, turn) in cases {
        let fabrics = [thick(face), thick(lining)];
        assert_eq!(turn_of_cloth(order, &fabrics), turn, "{name}");
    }
}

/// Each of two knives takes 2 x 2 in and has two creases.
#[test]
fn the_flat_width_is_larger_by_every_turn() {
    for (thickness, turn) in [(None, Length::ZERO), (Some(5), turn_of(tenths(10)))] {
        let (made, matters) = worked(&lined(), &[thick(thickness), thick(thickness)]);
        assert_eq!(matters, []);
        assert_eq!(made.flat, inches(39 + 2 * 4) + turn * 4);
        assert_eq!(made.finished, inches(39));
    }
}

#[test]
fn a_panel_says_no_thickness_only_where_no_layer_does() {
    let cases = [
        (None, None, true),
        (Some(3), None, false),
        (None, Some(3), false),
        (Some(3), Some(3), false),
    ];
    for (face, lining, says_none) in cases {
        let fabrics = [thick(face), thick(lining)];
        assert_eq!(says_no_thickness(&lined(), &fabrics), says_none);
    }
}

/// It is told where a turn would be counted but for one cloth, and nowhere else.
#[test]
fn a_layer_that_keeps_the_turn_from_being_counted_is_told() {
    let flat = PanelOrder {
        pleats: None,
        width: exactly(inches(39)),
        ..lined()
    };
    let stated = with_stated_turn(eighths(1));
    let cases = [
        ("lining", &lined(), Some(3), None, Some(Layer::Lining)),
        ("face", &lined(), None, Some(3), Some(Layer::Face)),
        ("none known", &lined(), None, None, None),
        ("all known", &lined(), Some(3), Some(3), None),
        ("stated", &stated, Some(3), None, None),
        ("no pleats", &flat, Some(3), None, None),
    ];
    for (name, order, face, lining, missing) in cases {
        let (_, matters) = worked(order, &[thick(face), thick(lining)]);
        let told = missing.map(|layer| PleatMatter::TurnNotCounted { layer }.into());
        assert_eq!(matters, Vec::from_iter(told), "{name}");
    }
}

/// A limit of the method asks for the same thickness.
#[test]
fn a_thickness_missing_for_a_limit_is_not_told_twice() {
    let mut order = lined();
    order.making.stack = Some(tenths(100));
    let (_, matters) = worked(&order, &[thick(Some(3)), thick(None)]);
    let missing = pelmet_model::PieceMatter::ThicknessMissing {
        layer: Layer::Lining,
        limit: tenths(100),
    };
    assert_eq!(matters, [Matter::Piece(missing)]);
}
