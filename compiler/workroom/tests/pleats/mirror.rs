//! The two halves of a mirrored panel, number by number.

use pelmet_measure::{Length, Ratio};
use pelmet_model::{FoldMade, PleatKind, Ranged, Start, StepKind, Toward, TowardOrder};
use pelmet_workroom::lay_out;

use crate::rules::*;

const INCH: Length = Length::INCH;

/// One of each kind with room on both sides.
fn one_of_each() -> Vec<StepKind> {
    let kinds = [
        pointing(PleatKind::Knife, TowardOrder::Centre),
        pointing(PleatKind::Tuck, TowardOrder::Edge),
        of(PleatKind::Box),
        of(PleatKind::Inverted),
        of(PleatKind::Pinch),
        drawn_up(
            PleatKind::Gathers,
            Some(Ratio::new(5, 2)),
            Some(Ranged::fixed(Length::inches(4))),
        ),
    ];
    let pleats = kinds.map(|kind| pleat(kind, Ranged::fixed(INCH)));
    let spaced = pleats
        .into_iter()
        .flat_map(|pleat| [pleat, plain(inches(20))]);
    [plain(Length::inches(3))]
        .into_iter()
        .chain(spaced)
        .collect()
}

#[test]
fn every_number_of_a_pleat_is_mirrored() {
    for start in [Start::Left, Start::Centre] {
        let laid = lay_out(&rule(start, true, one_of_each()), None, None).unwrap();
        let across = |at: Length| laid.flat - at;
        let turned = |fold: &FoldMade| FoldMade {
            crease: across(fold.crease),
            brought_to: across(fold.brought_to),
            finished: laid.finished - fold.finished,
            toward: if fold.toward == Toward::Left {
                Toward::Right
            } else {
                Toward::Left
            },
        };
        let (left, right) = laid.pleats.split_at(6);
        for (one, image) in left.iter().zip(right.iter().rev()) {
            assert_ne!(one.mirrored, image.mirrored);
            let images = (
                (across(image.to), across(image.from)),
                image.folds.iter().rev().map(turned).collect::<Vec<_>>(),
                image
                    .fingers
                    .iter()
                    .rev()
                    .copied()
                    .map(across)
                    .collect::<Vec<_>>(),
                (
                    image.take_up,
                    image.depth,
                    image.face,
                    image.held,
                    image.kind,
                ),
            );
            let own = (
                (one.from, one.to),
                one.folds.clone(),
                one.fingers.clone(),
                (one.take_up, one.depth, one.face, one.held, one.kind),
            );
            assert_eq!(own, images, "{start:?} {}", one.kind);
        }
        let ends: Vec<_> = laid.drawn.iter().map(|run| (run.from, run.to)).collect();
        let images = ends
            .iter()
            .rev()
            .map(|(from, to)| (across(*to), across(*from)));
        assert_eq!(ends, images.collect::<Vec<_>>(), "{start:?}");
    }
}

#[test]
fn every_crease_lies_on_the_pleat_it_belongs_to() {
    for mirrored in [false, true] {
        let laid = lay_out(&rule(Start::Left, mirrored, one_of_each()), None, None).unwrap();
        for crease in &laid.creases {
            let pleat = &laid.pleats[crease.pleat];
            assert!(
                pleat.from <= crease.at && crease.at <= pleat.to,
                "{crease:?}"
            );
        }
        assert_eq!(laid.creases.len(), if mirrored { 24 } else { 12 });
    }
}
