//! Pieces wider than the cloth, joined from several widths.

use pelmet_measure::Length;
use pelmet_model::{
    Cut, Fabric, Layer, Matter, PanelOrder, PieceMade, PieceMatter, Railroad, Seam, WidthsMade,
};
use pelmet_workroom::{LEAST_PART, MAXIMUM_WIDTHS, strips_needed};

use crate::sample::{
    alone, centimetres, cloth, eighths, exactly, inches, knives, panel, ratio, seams,
};

fn face(order: &PanelOrder, cloth: &Fabric) -> (PieceMade, Vec<Matter>) {
    let (made, matters) = alone(order, cloth);
    (made.unwrap().pieces.remove(0), matters)
}

fn wide(width: Length) -> PanelOrder {
    PanelOrder {
        width: exactly(width),
        ..panel()
    }
}

/// Where the seams of a joined piece lie.
fn places(piece: PieceMade) -> Vec<Length> {
    let seams = piece.joined.unwrap().seams;
    seams.iter().map(|seam| seam.at).collect()
}

/// The sewn width of the strips together, the allowances at the outer edges counted in.
fn sewn(joined: &WidthsMade) -> Length {
    let cut: Length = joined.strips.iter().map(|strip| strip.cut_width).sum();
    let joins = i64::try_from(joined.strips.len()).unwrap() - 1;
    cut - joined.allowance * 2 * joins
}

#[test]
fn strips_needed_by_published_examples() {
    let millimetres = Length::millimetres;
    for (flat, usable, join, strips) in [
        // NIMI, Dress Making, p. 197: 5.40 m of frill from cloth 1.10 m wide.
        (centimetres(540), centimetres(110), Length::ZERO, 5),
        // NIMI p. 188: 236 cm from cloth 90 cm wide less 2 cm of seam.
        (centimetres(236), centimetres(90), centimetres(1), 3),
        // Merrick and Day, pp. 116-117: usable is the width less 1.5 cm of seam at each side.
        (millimetres(1340), millimetres(1370), millimetres(15), 1),
        (millimetres(1341), millimetres(1370), millimetres(15), 2),
        (Length::ZERO, inches(54), Length::ZERO, 0),
    ] {
        assert_eq!(
            strips_needed(flat, usable, join),
            Some(strips),
            "{flat:?} {usable:?}"
        );
    }
    assert_eq!(strips_needed(inches(1), inches(1), eighths(4)), None);
    assert_eq!(strips_needed(inches(1), inches(1), inches(4)), None);
    assert_eq!(
        strips_needed(Length::LARGEST, Length::from_nanometres(1), Length::ZERO),
        Some(u32::MAX)
    );
}

/// NIMI pp. 188 and 197: 3 strips of 15 cm make 45 cm of cloth, 5 strips make 75 cm.
#[test]
fn published_strips_come_out_as_pieces() {
    for (flat, width, join, strips, cloth_length) in [(540, 110, 0, 5, 75), (236, 90, 1, 3, 45)] {
        let mut order = wide(centimetres(flat));
        order.drop = centimetres(15);
        order.outline = pelmet_model::Outline::straight(centimetres(15));
        order.making.face = seams(Length::ZERO);
        order.making.join = centimetres(join);
        let cloth = Fabric {
            width: centimetres(width),
            selvage: Length::ZERO,
            ..cloth()
        };
        let (piece, matters) = face(&order, &cloth);
        assert_eq!(matters, []);
        let count = i64::try_from(piece.joined.unwrap().strips.len()).unwrap();
        assert_eq!(
            (count, piece.cut_length * count),
            (strips, centimetres(cloth_length))
        );
    }
}

/// UFGS 12 22 00 and Merrick and Day, p. 119: whole widths in the middle, part widths outside.
#[test]
fn whole_widths_lie_in_the_middle_and_like_parts_outside() {
    // Cloth of 53 in usable; the cut width is the flat width and an inch of seams.
    for (flat, strips) in [
        // Two parts of 14 1/2 in beside one whole width: 53 + 29 in less 2 in of seams.
        (79, vec![116, 424, 116]),
        (155, vec![420, 424, 420]),
        // Four widths would put a seam in the middle: three whole ones, two parts.
        (205, vec![204, 424, 424, 424, 204]),
        // Parts of less than 4 in would be too narrow; the middle gives them the rest.
        (54, vec![40, 376, 40]),
    ] {
        let (piece, _) = face(&wide(inches(flat)), &cloth());
        let joined = piece.joined.as_ref().unwrap();
        let cut: Vec<_> = joined.strips.iter().map(|strip| strip.cut_width).collect();
        let expected: Vec<_> = strips.into_iter().map(eighths).collect();
        assert_eq!(cut, expected, "{flat} in");
        assert_eq!(sewn(joined), piece.cut_width);
        assert!(cut.iter().all(|&width| width <= inches(53)));
        assert!(cut.iter().all(|&width| width - inches(1) >= LEAST_PART));
    }
}

#[test]
fn seams_lie_alike_from_both_edges() {
    let (piece, _) = face(&wide(inches(79)), &cloth());
    // A strip of 14 1/2 in less a seam at each side.
    assert_eq!(places(piece), [eighths(108), inches(79) - eighths(108)]);
}

#[test]
fn seams_of_cloth_that_shrinks_are_told_where_they_end_up() {
    let mut order = wide(inches(80));
    order.making.face = seams(Length::ZERO);
    order.making.join = Length::ZERO;
    let shrinking = Fabric {
        shrinkage: ratio(1, 5),
        ..cloth()
    };
    let (piece, _) = face(&order, &shrinking);
    assert_eq!(piece.cut_width, inches(100));
    // One whole width of 53 in between two parts of 23 1/2 in, of which four fifths are left.
    let first = eighths(188).scaled(ratio(4, 5));
    assert_eq!(
        places(piece),
        [first, eighths(188 + 424).scaled(ratio(4, 5))]
    );
}

#[test]
fn a_piece_that_fits_is_cut_in_one_and_railroading_avoids_joins() {
    let (piece, _) = face(&wide(inches(52)), &cloth());
    assert_eq!(
        (piece.cut_width, piece.joined, piece.railroaded),
        (inches(53), None, false)
    );
    let along = Fabric {
        railroad: Railroad::WhereTooWide,
        ..cloth()
    };
    let (piece, _) = face(&wide(inches(90)), &along);
    assert_eq!((piece.joined, piece.railroaded), (None, true));
    let (piece, _) = face(&wide(inches(40)), &along);
    assert!(!piece.railroaded);
    let mut long = wide(inches(90));
    long.drop = inches(60);
    long.outline = pelmet_model::Outline::straight(inches(60));
    assert!(face(&long, &along).0.joined.is_some());
}

#[test]
fn joined_pieces_are_not_cut_on_the_fold() {
    let folded = |width| PanelOrder {
        cut: Cut::OnFold,
        ..wide(inches(width))
    };
    assert!(face(&folded(50), &cloth()).0.on_fold);
    assert!(!face(&folded(80), &cloth()).0.on_fold);
}

#[test]
fn cloth_that_cannot_be_joined_is_reported() {
    let narrow = Fabric {
        width: inches(13),
        ..cloth()
    };
    let (made, matters) = alone(&wide(inches(40)), &narrow);
    let too_narrow = PieceMatter::ClothTooNarrow {
        layer: Layer::Face,
        usable: inches(12),
        needed: inches(13),
    };
    assert_eq!((made, matters), (None, vec![Matter::Piece(too_narrow)]));
    let (made, matters) = alone(&wide(inches(54) * 400), &cloth());
    let limit = MAXIMUM_WIDTHS;
    let too_many = PieceMatter::TooManyWidths {
        layer: Layer::Face,
        limit,
    };
    assert_eq!((made, matters), (None, vec![Matter::Piece(too_many)]));
}

/// Knives 2 in deep every 7 in, the first fold at 6 in: each hides the cloth from 2 to 6 in.
fn pleated(pleats: u32, flat: i64) -> (Vec<Seam>, Vec<Matter>) {
    pleated_deep(inches(2), pleats, flat)
}

fn pleated_deep(depth: Length, pleats: u32, flat: i64) -> (Vec<Seam>, Vec<Matter>) {
    let mut order = PanelOrder {
        pleats: Some(knives(pleats, depth)),
        ..panel()
    };
    order.width = pelmet_model::WidthOrder {
        flat: Some(inches(flat)),
        ..pelmet_model::WidthOrder::default()
    };
    order.lining = Some(0);
    order.making.lining = Some(seams(eighths(4)));
    let (made, mut matters) = alone(&order, &cloth());
    matters.retain(|matter| !matches!(matter, Matter::Row(_)));
    let joined = made.unwrap().pieces.remove(0).joined.unwrap();
    for strip in &joined.strips {
        assert!(strip.cut_width <= cloth().usable_width(), "{strip:?}");
    }
    (joined.seams, matters)
}

#[test]
fn seams_of_the_face_move_to_where_pleats_hide_them() {
    for flat in 79..=93 {
        let (seams, matters) = pleated(9, flat);
        assert!(seams.iter().all(|seam| seam.hidden), "{flat} in: {seams:?}");
        for seam in seams {
            // Its allowance of half an inch lies between the fold and the crease behind it.
            let beyond = seam.at - (seam.at - inches(2)).round_down_to(inches(7));
            let clear = eighths(20)..=eighths(44);
            assert!(clear.contains(&beyond), "{flat} in: {beyond:?}");
        }
        assert_eq!(matters, [], "{flat} in");
    }
}

/// One knife near the left edge is out of reach of a strip that must meet a whole width.
#[test]
fn a_seam_that_no_pleat_can_hide_is_told_for_the_face_alone() {
    let (seams, matters) = pleated(1, 93);
    assert_eq!(seams.iter().filter(|seam| seam.hidden).count(), 0);
    let expected: Vec<_> = seams
        .iter()
        .map(|seam| {
            Matter::Piece(PieceMatter::SeamShows {
                layer: Layer::Face,
                at: seam.at,
                hidden_at: Some(inches(6)),
            })
        })
        .collect();
    assert_eq!(matters, expected);
}

/// Cloth that repeats so far across.
fn printed(across: i64) -> Fabric {
    Fabric {
        repeat: Some(pelmet_model::Repeat {
            along: None,
            across: Some(inches(across)),
            matching: pelmet_model::Match::Straight,
        }),
        ..cloth()
    }
}

/// Where each strip begins on the cut piece, and the point of it that sits on the print.
fn held(joined: &WidthsMade) -> Vec<(Length, Option<Length>)> {
    let mut left = Length::ZERO;
    let strips = joined.strips.iter().map(|strip| {
        let at = left;
        left += strip.cut_width - joined.allowance * 2;
        (at, strip.print_across)
    });
    strips.collect()
}

#[test]
fn the_print_meets_across_the_strips_where_a_strip_can_hold_a_repeat() {
    let (piece, _) = face(&wide(inches(100)), &printed(9));
    let joined = piece.joined.unwrap();
    let on_print: Vec<Length> = held(&joined)
        .iter()
        .map(|(at, held)| *at + held.unwrap())
        .collect();
    for pair in on_print.windows(2) {
        let apart = (pair[1] - pair[0]).ratio_to(inches(9)).unwrap();
        assert!(apart.is_integer(), "{joined:?}");
    }
    // Of 53 in a strip keeps 52 between its seams.
    let (just, _) = face(&wide(inches(100)), &printed(52));
    assert!(just.joined.unwrap().strips[0].print_across.is_some());
    let (wider, _) = face(&wide(inches(100)), &printed(53));
    assert_eq!(wider.joined.unwrap().strips[0].print_across, None);
}

#[test]
fn a_motif_on_a_joined_panel_sits_on_the_print_of_every_strip() {
    let mut order = crate::sample::window(inches(79), vec![wide(inches(79))], &[0]);
    order.motif = Some(pelmet_model::Motif {
        panel: 0,
        below_heading: inches(6),
    });
    let (made, _) = crate::sample::made(&order, &[printed(9)]);
    let piece = &made.panels[0].as_ref().unwrap().pieces[0];
    for (at, held) in held(piece.joined.as_ref().unwrap()) {
        // The middle of the panel, half an inch of seam from the edge of the piece.
        let motif = inches(40) - at - held.unwrap();
        assert!(motif.ratio_to(inches(9)).unwrap().is_integer());
    }
}

#[test]
fn no_strip_is_wider_than_the_cloth_for_a_seam_to_be_hidden() {
    // The strips of every panel are held to the cloth as it is made.
    for pleats in 1..8 {
        for flat in 60..140 {
            pleated_deep(inches(2), pleats, flat);
        }
    }
}

/// Each knife hides twice its depth; where that is no more than the allowances of a seam together,
/// the seam lies in the middle of it.
#[test]
fn a_seam_lies_in_the_middle_of_a_pleat_as_shallow_as_its_allowances() {
    let depth = eighths(2);
    for flat in 79..=93 {
        let (seams, _) = pleated_deep(depth, 22, flat);
        for seam in seams {
            // A pleat every 3 1/2 in from 2 in on.
            let beyond = seam.at - inches(2);
            let place = beyond - beyond.round_down_to(eighths(28));
            assert_eq!((seam.hidden, place), (true, depth), "{flat} in");
        }
    }
}
