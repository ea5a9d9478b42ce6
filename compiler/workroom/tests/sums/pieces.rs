//! What is cut: layers, sizes, shrinkage, the fold, the bolt and the print.

use OutlineStep::UpToHeading;
use pelmet_measure::{Area, Length};
use pelmet_model::PanelMeasure;
use pelmet_model::{
    Cut, Fabric, Heading, Layer, MakingMatter, Match, Matter, Motif, Outline, OutlineStep,
    PanelOrder, PieceMade, PieceMatter, Point, Proportion, Railroad, Repeat,
};
use pelmet_workroom::mirrored;

use crate::sample::{
    alone, assert_told_to_shrink_more, cloth, eighths, from, inches, knives, made, outline, panel,
    ratio, seams, sound, to, window,
};

fn lined() -> PanelOrder {
    let mut order = PanelOrder {
        lining: Some(0),
        ..panel()
    };
    order.making.lining = Some(seams(eighths(4)));
    order
}

fn point(across: Length, down: Length) -> Point {
    Point { across, down }
}

/// Common practice, no source: the lining of a fused panel is cut 1/2 in longer than the face and
/// a little wider.
#[test]
fn a_lining_is_cut_by_its_own_allowances() {
    let mut order = lined();
    let lining = order.making.lining.as_mut().unwrap();
    (lining.longer, lining.wider) = (eighths(4), eighths(2));
    let pieces = sound(&order).pieces;
    assert_eq!(
        [pieces[0].layer, pieces[1].layer],
        [Layer::Face, Layer::Lining]
    );
    assert_eq!(
        (pieces[0].cut_width, pieces[0].cut_length),
        (inches(41), inches(15))
    );
    assert_eq!(pieces[1].cut_length - pieces[0].cut_length, eighths(4));
    assert_eq!(pieces[1].cut_width - pieces[0].cut_width, eighths(2));
    // The length is added at the top, the width half at each side.
    assert_eq!(
        pieces[1].outline.corners[0].at,
        point(-eighths(5), -inches(1))
    );
    assert_eq!(pieces[1].area, Area::of(eighths(330), eighths(124)));
}

#[test]
fn layers_must_suit_the_method_and_one_another() {
    let mut without = panel();
    without.lining = Some(0);
    let mut with = panel();
    with.making.lining = Some(seams(eighths(4)));
    let mut only_interlined = panel();
    only_interlined.interlining = Some(0);
    let mut to_interline = panel();
    to_interline.making.interlining = Some(seams(eighths(4)));
    for (order, layer, panel_has) in [
        (without, Layer::Lining, true),
        (with, Layer::Lining, false),
        (only_interlined, Layer::Interlining, true),
        (to_interline, Layer::Interlining, false),
    ] {
        let (made, matters) = alone(&order, &cloth());
        assert_eq!(made.unwrap().pieces.len(), 1);
        assert_eq!(
            matters,
            [Matter::Making(MakingMatter::LayerMismatch {
                layer,
                panel_has
            })]
        );
    }
    let order = PanelOrder {
        lining: Some(1),
        ..lined()
    };
    assert_told_to_shrink_more(order, Layer::Lining, ratio(3, 100));
}

#[test]
fn cloth_that_shrinks_is_cut_larger() {
    for (shrinkage, width, length) in [
        (ratio(0, 1), inches(41), inches(15)),
        (ratio(1, 2), inches(82), inches(30)),
        // 41 in / 0.97 = 1 073 608 247.4 nm, 15 in / 0.97 = 392 783 505.2 nm; rounded up.
        (
            ratio(3, 100),
            Length::from_nanometres(1_073_608_248),
            Length::from_nanometres(392_783_506),
        ),
    ] {
        let wide = Fabric {
            shrinkage,
            width: inches(100),
            ..cloth()
        };
        let (made, matters) = alone(&panel(), &wide);
        let piece = &made.unwrap().pieces[0];
        assert_eq!(matters, []);
        assert_eq!((piece.cut_width, piece.cut_length), (width, length));
        // The drawn outline is the size that is left.
        assert_eq!(piece.area, Area::of(inches(41), inches(15)));
    }
    for shrinkage in [
        ratio(1, 1),
        ratio(2, 1),
        ratio(i128::MAX - 1, i128::MAX),
        ratio(i128::MIN + 1, 1),
    ] {
        let (made, matters) = alone(
            &panel(),
            &Fabric {
                shrinkage,
                ..cloth()
            },
        );
        if made.is_none() {
            assert_eq!(
                matters,
                [Matter::Piece(PieceMatter::TooLarge {
                    size: PanelMeasure::CutWidth
                })]
            );
        }
    }
}

#[test]
fn on_the_fold_both_halves_must_be_alike() {
    let skewed = outline(false, &[from(0, 14), to(40, 10), UpToHeading]);
    let mirrored = outline(true, &[from(0, 14), to(20, 10), UpToHeading]);
    for (outline, alike) in [
        (Outline::straight(inches(14)), true),
        (mirrored, true),
        (skewed, false),
    ] {
        let order = PanelOrder {
            outline,
            cut: Cut::OnFold,
            ..panel()
        };
        let (made, matters) = alone(&order, &cloth());
        let piece = &made.unwrap().pieces[0];
        assert!(piece.on_fold);
        // Sizes stay those of the whole piece.
        assert_eq!(piece.cut_width, inches(41));
        let expected = if alike {
            vec![]
        } else {
            vec![Matter::Piece(PieceMatter::HalvesDiffer)]
        };
        assert_eq!(matters, expected);
    }
}

#[test]
fn a_piece_longer_than_the_bolt_is_reported() {
    let bolt = |length| Fabric {
        bolt_length: Some(inches(length)),
        ..cloth()
    };
    let longer = |cut_length, bolt| PieceMatter::LongerThanBolt {
        layer: Layer::Face,
        cut_length: inches(cut_length),
        bolt: inches(bolt),
    };
    assert_eq!(alone(&panel(), &bolt(15)).1, []);
    assert_eq!(
        alone(&panel(), &bolt(14)).1,
        [Matter::Piece(longer(15, 14))]
    );
    let mut wide = panel();
    wide.width = crate::sample::exactly(inches(80));
    let along = Fabric {
        railroad: Railroad::WhereTooWide,
        ..bolt(60)
    };
    assert_eq!(alone(&wide, &along).1, [Matter::Piece(longer(81, 60))]);
}

/// Panels with unlike headings show equal parts of the print at equal heights.
#[test]
fn the_print_is_held_at_the_heading_line() {
    let mut order = panel();
    order.heading = Heading::OverRod {
        tail: inches(5),
        fastener: None,
    };
    let made = sound(&order);
    let piece = &made.pieces[0];
    assert_eq!(
        piece.print_point,
        point(eighths(4), eighths(4) + made.heading_depth)
    );
    assert!(!piece.print_held_across);
}

fn motif(below_heading: Length) -> Option<Motif> {
    Some(Motif {
        panel: 0,
        below_heading,
    })
}

#[test]
fn a_motif_is_held_at_its_centre() {
    let across = Repeat {
        along: Some(inches(12)),
        across: Some(inches(9)),
        matching: Match::Straight,
    };
    let printed = Fabric {
        repeat: Some(across),
        ..cloth()
    };
    let mut order = window(inches(40), vec![lined()], &[0]);
    order.motif = motif(inches(8));
    for (cloth, held) in [(printed, true), (cloth(), false)] {
        let (made, matters) = made(&order, &[cloth]);
        assert_eq!(matters, []);
        let pieces = &made.panels[0].as_ref().unwrap().pieces;
        assert_eq!(pieces[0].print_point, point(eighths(164), eighths(68)));
        assert_eq!(pieces[0].print_held_across, held);
        // The lining carries none.
        assert_eq!(pieces[1].print_point, point(eighths(4), eighths(4)));
        assert!(!pieces[1].print_held_across);
    }
}

#[test]
fn neighbours_of_one_cloth_hold_their_print_level_with_the_motif() {
    let mut neighbour = panel();
    neighbour.name = String::from("neighbour");
    let mut order = window(inches(80), vec![panel(), neighbour], &[0, 1]);
    order.motif = motif(inches(8));
    let (made, _) = made(&order, &[cloth()]);
    let downs: Vec<Length> = made
        .panels
        .iter()
        .map(|panel| panel.as_ref().unwrap().pieces[0].print_point.down)
        .collect();
    assert_eq!(downs[0], downs[1]);
    // Without the motif both are held at the heading line, 8 in higher.
    order.motif = None;
    let (plain, _) = crate::sample::made(&order, &[cloth()]);
    let plain = plain.panels[1].as_ref().unwrap().pieces[0].print_point.down;
    assert_eq!(downs[1], plain + inches(8));
}

#[test]
fn a_motif_that_cannot_be_seen_is_reported() {
    let mut order = window(inches(40), vec![panel()], &[0]);
    order.motif = motif(inches(15));
    let below = PieceMatter::MotifBelowDrop {
        below_heading: inches(15),
        drop: inches(14),
    };
    assert_eq!(made(&order, &[cloth()]).1, [Matter::Piece(below)]);
    order.motif = motif(inches(14));
    assert_eq!(made(&order, &[cloth()]).1, []);
    // Knives 3 in deep from 2 in on, each 9 in further: the one from 20 in hides up to 26 in.
    order.motif = motif(inches(8));
    order.panels[0].pleats = Some(knives(3, inches(3)));
    order.panels[0].width = crate::sample::exactly(inches(28));
    order.support = pelmet_model::SupportOrder::Rod(crate::sample::rod(inches(28)));
    let (window, matters) = made(&order, &[cloth()]);
    let flat = window.panels[0].as_ref().unwrap().flat;
    assert_eq!(flat, inches(46));
    let hidden = PieceMatter::MotifHidden {
        at: inches(23),
        hidden: (inches(20), inches(26)),
    };
    assert_eq!(matters, [Matter::Piece(hidden)]);
}

#[test]
fn the_lining_of_unlike_halves_is_cut_turned_over() {
    let mut order = lined();
    order.outline = Outline {
        name: String::from("slanted"),
        half: false,
        steps: vec![
            OutlineStep::From {
                across: Proportion::fixed(Length::ZERO),
                down: Proportion::fixed(inches(14)),
            },
            OutlineStep::To {
                across: Proportion {
                    part: ratio(1, 1),
                    plus: Length::ZERO,
                },
                down: Proportion::fixed(inches(10)),
            },
            UpToHeading,
        ],
        names: std::collections::BTreeMap::new(),
    };
    let made = sound(&order);
    let [face, lining] = &made.pieces[..] else {
        panic!("two pieces");
    };
    assert!(!face.mirrored && lining.mirrored);
    let lowest = |piece: &PieceMade| {
        let corners = piece.outline.corners.iter().map(|corner| corner.at);
        corners.max_by_key(|at| at.down).unwrap().across
    };
    // The long side is the face's left and the lining's right.
    assert!(lowest(face) < inches(20) && lowest(lining) > inches(20));
    assert_eq!(mirrored(&mirrored(&face.outline)), face.outline);
    assert!(sound(&lined()).pieces.iter().all(|piece| !piece.mirrored));
}

#[test]
fn every_layer_goes_by_the_word_that_names_its_cloth() {
    let words = Layer::ALL.map(Layer::word);
    assert_eq!(words, ["face", "interlining", "lining"]);
}
