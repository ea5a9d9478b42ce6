//! Faces that line themselves, and bands along the edges of a panel.

use OutlineStep::UpToHeading;
use pelmet_measure::{Area, Length};
use pelmet_model::{
    Allowance, BandEdge, BandOrder, EdgeKind, Fabric, Layer, MakingMatter, Marked, Matter, Outline,
    OutlineStep, PanelMade, PanelOrder, PieceMade, Point, Way,
};
use proptest::prelude::*;

use crate::sample::{
    alone, arc, bulge, cloth, eighths, exactly, from, inches, outline, panel, seams, sound, to,
};

fn self_lined() -> PanelOrder {
    let mut order = panel();
    order.making.self_lined = true;
    order
}

#[test]
fn a_face_that_lines_itself_is_cut_twice_as_long_with_a_top_at_either_end() {
    let made = sound(&self_lined());
    let [face] = &made.pieces[..] else {
        panic!("{} pieces", made.pieces.len());
    };
    // 2 x 14 in and 1/2 in at either top.
    assert_eq!((face.cut_width, face.cut_length), (inches(41), inches(29)));
    assert_eq!(face.fold, Some(inches(14) + eighths(4)));
    let kinds: Vec<EdgeKind> = face
        .allowances
        .iter()
        .map(|allowance| allowance.0)
        .collect();
    assert_eq!(kinds, [EdgeKind::Top, EdgeKind::Side]);
    let fold = made
        .marks
        .iter()
        .find(|mark| mark.what == Marked::LowerFold);
    assert_eq!(fold.unwrap().down, Some(inches(14)));
}

#[test]
fn a_fold_is_not_sewn_nor_taped() {
    let mut order = self_lined();
    order.making.tape = Some(pelmet_model::TapeOrder {
        width: eighths(3),
        top: true,
        sides: true,
        lower: true,
        roll: None,
    });
    let tape = sound(&order).tape;
    assert_eq!(
        tape.iter().map(|run| run.length).sum::<Length>(),
        inches(40 + 14 + 14)
    );
    order.making.self_lined = false;
    assert_eq!(sound(&order).tape.len(), 4);
}

#[test]
fn both_layers_of_a_self_lined_panel_lie_in_a_stack() {
    let mut order = self_lined();
    (order.width.finished, order.width.flat) = (None, Some(inches(47)));
    order.pleats = Some(crate::sample::knives(2, inches(2)));
    let thick = Fabric {
        thickness: Some(Length::millimetres(1)),
        ..cloth()
    };
    let stack = alone(&order, &thick).0.unwrap().thickest_stack;
    assert_eq!(stack, Some(Length::millimetres(3 * 2)));
}

#[test]
fn only_a_level_lower_edge_is_a_fold() {
    let mut order = self_lined();
    order.outline = outline(false, &[from(0, 12), to(40, 14), UpToHeading]);
    let (made, matters) = alone(&order, &cloth());
    assert!(made.is_none());
    assert_eq!(
        matters,
        [Matter::Making(MakingMatter::FoldNotLevel {
            step: Some(1),
            highest: inches(12),
            lowest: inches(14),
        })]
    );
}

#[test]
fn the_back_of_a_one_way_cloth_hangs_upside_down() {
    let one_way = Fabric {
        way: Way::OneWay,
        ..cloth()
    };
    let (made, matters) = alone(&self_lined(), &one_way);
    assert!(made.is_some());
    assert_eq!(matters, [Matter::Making(MakingMatter::BackUpsideDown)]);
}

fn bands(top: i64, sides: i64, lower: i64, laid_on: bool) -> BandOrder {
    let depth = |depth: i64| (depth > 0).then(|| inches(depth));
    BandOrder {
        top: depth(top),
        sides: depth(sides),
        lower: depth(lower),
        laid_on,
    }
}

fn banded(order: BandOrder) -> PanelOrder {
    let mut panel = PanelOrder {
        band: Some(0),
        ..panel()
    };
    panel.making.band = Some(order);
    panel
}

fn piece(made: &PanelMade, layer: Layer) -> &PieceMade {
    made.pieces
        .iter()
        .find(|piece| piece.layer == layer)
        .unwrap()
}

fn point(across: Length, down: Length) -> Point {
    Point { across, down }
}

/// Worked by hand, with seams of 1/2 in: a band 3 in deep is cut 4 in deep, and the face under it
/// ends 3 in higher and has a seam.
#[test]
fn a_band_below_takes_the_place_of_the_face() {
    let made = sound(&banded(bands(0, 0, 3, false)));
    let (face, band) = (
        piece(&made, Layer::Face),
        piece(&made, Layer::Band(BandEdge::Lower)),
    );
    assert_eq!((face.cut_width, face.cut_length), (inches(41), inches(12)));
    assert_eq!((band.cut_width, band.cut_length), (inches(41), inches(4)));
    let seam: Length = made.bands[0].seams.iter().map(|seam| seam.length).sum();
    assert_eq!((made.bands.len(), seam), (1, inches(40)));
    let marks = made
        .marks
        .iter()
        .filter(|mark| matches!(mark.what, Marked::BandSeam { .. }));
    let marks: Vec<_> = marks.map(|mark| (mark.across, mark.down)).collect();
    assert_eq!(
        marks,
        [
            (inches(0), Some(inches(11))),
            (inches(40), Some(inches(11)))
        ]
    );
}

#[test]
fn a_band_laid_on_the_face_leaves_it_whole() {
    let made = sound(&banded(bands(0, 0, 3, true)));
    let face = piece(&made, Layer::Face);
    assert_eq!((face.cut_width, face.cut_length), (inches(41), inches(15)));
    let band = piece(&made, Layer::Band(BandEdge::Lower));
    assert_eq!((band.cut_width, band.cut_length), (inches(41), inches(4)));
}

/// Worked by hand: 3 in at the sides and below, seams 1/2 in. The mitre runs from the corner 3 in
/// across and 3 in up. Its seam lies 1/2 in off it, so the point on the cut side lies below the corner
/// by the root of 2 times 1/2 in, and by 1/2 in for being that much further out.
#[test]
fn bands_that_meet_are_mitred() {
    let made = sound(&banded(bands(0, 3, 3, false)));
    let edges: Vec<BandEdge> = made.bands.iter().map(|band| band.edge).collect();
    assert_eq!(edges, [BandEdge::Left, BandEdge::Lower, BandEdge::Right]);
    let face = piece(&made, Layer::Face);
    assert_eq!((face.cut_width, face.cut_length), (inches(35), inches(12)));
    let corner = point(inches(3) - eighths(4), -eighths(4));
    assert_eq!(face.outline.corners[0].at, corner);
    // Along the face 11 + 34 + 11 in, and two mitres of the root of 18 in.
    let seams = made.bands.iter().flat_map(|band| &band.seams);
    let sewn: Length = seams.map(|seam| seam.length).sum();
    let inches_of = |length: f64| Length::from_millimetres_f64(25.4 * length).unwrap();
    let off = sewn - inches_of(56.0 + 2.0 * 18_f64.sqrt());
    assert!(off.abs() <= Length::from_nanometres(2), "{off:?}");
    let left = piece(&made, Layer::Band(BandEdge::Left));
    // 3 in deep, a seam at either long edge.
    assert_eq!(left.cut_width, inches(4));
    let off = left.cut_length - inches_of(0.5 + 14.0 + 0.5 * 2_f64.sqrt() + 0.5);
    assert!(off.abs() <= Length::from_nanometres(2), "{off:?}");
}

#[test]
fn a_hem_of_the_edge_is_that_of_its_band() {
    let mut order = banded(bands(0, 0, 3, false));
    order.making.face.edges.lower = Allowance::DoubleHem(inches(2));
    let made = sound(&order);
    assert_eq!(piece(&made, Layer::Face).cut_length, inches(12));
    // 3 in of band, 2 x 2 in of hem, a seam.
    let band = piece(&made, Layer::Band(BandEdge::Lower));
    assert_eq!(band.cut_length, inches(7) + eighths(4));
}

#[test]
fn a_cut_width_is_that_of_the_face_between_its_bands() {
    let mut order = banded(bands(0, 2, 0, false));
    order.width = pelmet_model::WidthOrder {
        cut: Some(inches(37)),
        ..Default::default()
    };
    let made = sound(&order);
    assert_eq!(made.flat, inches(40));
    assert_eq!(piece(&made, Layer::Face).cut_width, inches(37));
}

#[test]
fn bands_with_no_room_are_reported() {
    let (made, matters) = alone(&banded(bands(0, 21, 0, false)), &cloth());
    assert!(made.is_none());
    let [
        Matter::Making(MakingMatter::BandTooDeep { room, needed, .. }),
        ..,
    ] = matters[..]
    else {
        panic!("{matters:?}");
    };
    assert_eq!((room, needed), (inches(40), inches(42)));
}

fn net(mut order: PanelOrder) -> Option<PanelMade> {
    order.making.face = seams(Length::ZERO);
    let wide = Fabric {
        width: Length::METRE * 20,
        ..cloth()
    };
    alone(&order, &wide).0
}

fn together(made: &PanelMade) -> Area {
    made.pieces.iter().map(|piece| piece.area).sum()
}

#[test]
fn a_band_follows_a_shaped_edge() {
    let mut order = banded(bands(0, 1, 2, false));
    order.outline = outline(
        false,
        &[
            from(0, 10),
            to(12, 14),
            arc(28, 14, bulge(2, false)),
            to(40, 10),
            UpToHeading,
        ],
    );
    let made = net(order).unwrap();
    assert_eq!(made.pieces.len(), 4);
    let off = together(&made).square_nanometres() - made.shape.area().square_nanometres();
    // The line between face and band is the same for both.
    assert!(off.abs() <= 8_000_000_000, "{off}");
    for seam in made.bands.iter().flat_map(|band| &band.seams) {
        let ends = std::iter::once(&seam.from)
            .chain(&seam.between)
            .chain([&seam.to]);
        let points: Vec<&Point> = ends.collect();
        let chords = points.windows(2).map(|pair| {
            let (across, down) = (pair[1].across - pair[0].across, pair[1].down - pair[0].down);
            across.as_millimetres_f64().hypot(down.as_millimetres_f64())
        });
        let off = chords.sum::<f64>() - seam.length.as_millimetres_f64();
        // Chords of a curve are a little shorter than the curve.
        assert!(
            (-0.2..=1e-5).contains(&off),
            "{off} mm, {} points",
            points.len()
        );
    }
}

/// Where no band meets it, a band ends in the hem of the edge it comes to: 14 in between 2 x 1 in
/// above and 2 x 2 in below.
#[test]
fn a_band_that_meets_no_other_ends_in_the_hem_of_the_edge_there() {
    let mut order = banded(bands(0, 3, 0, false));
    let edges = &mut order.making.face.edges;
    (edges.top, edges.lower) = (
        Allowance::DoubleHem(inches(1)),
        Allowance::DoubleHem(inches(2)),
    );
    let made = sound(&order);
    for edge in [BandEdge::Left, BandEdge::Right] {
        assert_eq!(piece(&made, Layer::Band(edge)).cut_length, inches(20));
    }
}

/// Either end of a band along an even curve is the mirror image of the other.
#[test]
fn a_band_along_an_even_curve_is_cut_alike_at_both_ends() {
    let mut order = banded(bands(0, 0, 3, false));
    order.outline = outline(
        false,
        &[from(0, 10), arc(40, 10, bulge(4, true)), UpToHeading],
    );
    let made = sound(&order);
    let corners = &piece(&made, Layer::Band(BandEdge::Lower)).outline.corners;
    let near = |one: Length, other: Length| (one - other).abs() < Length::from_nanometres(1_000);
    assert_eq!(corners.len(), 4);
    for Point { across, down } in corners.iter().map(|corner| corner.at) {
        let is_image = |at: Point| near(at.across, inches(40) - across) && near(at.down, down);
        let mirrored = corners.iter().any(|corner| is_image(corner.at));
        assert!(mirrored, "{across:?}, {down:?}: {corners:?}");
    }
}

/// The half circle has a radius of 5 in.
#[test]
fn a_curve_tighter_than_a_band_is_deep_is_reported() {
    let mut order = banded(bands(0, 0, 6, false));
    let half_circle = arc(25, 7, bulge(5, true));
    order.outline = outline(
        false,
        &[from(0, 7), to(15, 7), half_circle, to(40, 7), UpToHeading],
    );
    let (made, matters) = alone(&order, &cloth());
    assert!(made.is_none());
    let too_tight = |matter: &Matter| {
        matches!(matter, Matter::Making(MakingMatter::BandTooDeep { step: 2, room, needed })
            if *needed == inches(6) && (*room - inches(5)).abs() < eighths(1))
    };
    assert!(matters.iter().any(too_tight), "{matters:?}");
}

/// A lower edge that comes back to the side and leaves it again is more than one run.
#[test]
fn a_band_follows_a_panel_without_sides_but_not_one_with_two_lower_edges() {
    let pointed = [from(0, 0), to(20, 14), to(40, 0), UpToHeading];
    let notched = [from(0, 4), to(5, 6), to(0, 8), to(0, 14), to(40, 14)];
    let notched = [&notched[..], &[UpToHeading]].concat();
    for (steps, follows) in [(&pointed[..], true), (&notched[..], false)] {
        let mut order = banded(bands(0, 0, 1, false));
        order.outline = outline(false, steps);
        let (made, matters) = alone(&order, &cloth());
        assert_eq!(made.is_some(), follows, "{matters:?}");
        let cannot = |matter: &Matter| {
            matches!(
                matter,
                Matter::Making(MakingMatter::BandCannotFollow { .. })
            )
        };
        assert_eq!(matters.iter().any(cannot), !follows, "{matters:?}");
    }
}

proptest! {
    /// Without allowances, face and bands together are the flat panel; laid on it, the bands come over.
    #[test]
    fn face_and_bands_together_are_the_flat_panel(
        width in 300_i64..3_000, drop in 300_i64..3_000,
        top in 0_i64..5, sides in 0_i64..5, lower in 0_i64..5, laid_on: bool,
    ) {
        let mut order = banded(bands(top, sides, lower, laid_on));
        (order.width, order.drop) = (exactly(Length::millimetres(width)), Length::millimetres(drop));
        order.outline = Outline::straight(order.drop);
        let made = net(order).unwrap();
        let whole = made.shape.area();
        let bands: Area = made.pieces.iter().skip(1).map(|piece| piece.area).sum();
        let expected = if laid_on { whole + bands } else { whole };
        prop_assert_eq!(together(&made), expected);
    }

    /// A self-lined panel is the flat panel twice.
    #[test]
    fn a_self_lined_face_is_the_flat_panel_twice(width in 1_i64..5_000, drop in 1_i64..3_000) {
        let mut order = self_lined();
        (order.width, order.drop) = (exactly(Length::millimetres(width)), Length::millimetres(drop));
        order.outline = Outline::straight(order.drop);
        let made = net(order).unwrap();
        prop_assert_eq!(together(&made), made.shape.area() + made.shape.area());
    }
}
