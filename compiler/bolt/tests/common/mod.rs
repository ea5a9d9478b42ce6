//! Cloths and pieces that the tests share.

#![allow(
    dead_code,
    clippy::allow_attributes,
    reason = "each test file takes what it needs of these"
)]

use pelmet_bolt::{
    BoltFlaw, LayoutCloth, LayoutPiece, OutlineCorner, OutlinePolygon, SearchEffort,
};
use pelmet_measure::Length;
use proptest::option;
use proptest::prelude::*;

/// Enough for both searches to take their turns, and little enough for a thousand jobs.
pub const LITTLE: SearchEffort = SearchEffort::steps(20_000);

/// A thousand cases of a property, many of which may be passed over.
pub fn a_thousand_cases() -> ProptestConfig {
    ProptestConfig {
        cases: 1000,
        failure_persistence: None,
        max_global_rejects: 20_000,
        ..ProptestConfig::default()
    }
}

/// So many millimetres.
pub fn mm(millimetres: i64) -> Length {
    Length::millimetres(millimetres)
}

/// Plain cloth without an end, sold by 0.1 m.
pub fn plain_cloth(usable_width: Length) -> LayoutCloth {
    LayoutCloth {
        usable_width,
        gap: Length::ZERO,
        repeat_along: None,
        repeat_across: None,
        half_drop: false,
        one_way: false,
        bolt_length: None,
        buying_step: mm(100),
        flaws: Vec::new(),
    }
}

/// Pieces that the print does not hold.
pub fn plain_piece(width: Length, length: Length, quantity: u32) -> LayoutPiece {
    LayoutPiece {
        width,
        length,
        quantity,
        phase_along: None,
        phase_across: None,
        outline: None,
        on_fold: false,
    }
}

/// Cloths and pieces of workroom sizes, to the nanometre.
pub fn any_job() -> impl Strategy<Value = (LayoutCloth, Vec<LayoutPiece>)> {
    let usable = mm(1372).nanometres();
    let cloth = (
        0..mm(20).nanometres(),
        option::of(mm(50).nanometres()..mm(900).nanometres()),
        option::of(mm(50).nanometres()..mm(700).nanometres()),
        any::<bool>(),
        option::of(mm(3000).nanometres()..mm(9000).nanometres()),
        prop::collection::vec(any_flaw(), 0..3),
    )
        .prop_map(
            |(gap, repeat_along, repeat_across, half_drop, bolt_length, flaws)| LayoutCloth {
                gap: Length::from_nanometres(gap),
                repeat_along: repeat_along.map(Length::from_nanometres),
                repeat_across: repeat_across.map(Length::from_nanometres),
                half_drop,
                one_way: true,
                bolt_length: bolt_length.map(Length::from_nanometres),
                flaws,
                ..plain_cloth(mm(1372))
            },
        );
    let piece = (
        mm(40).nanometres()..=usable,
        mm(40).nanometres()..mm(2900).nanometres(),
        0..9_u32,
        option::of(0..mm(500).nanometres()),
        option::of(0..mm(500).nanometres()),
    );
    (cloth, prop::collection::vec(piece, 0..9)).prop_map(|(cloth, pieces)| {
        let pieces = pieces
            .into_iter()
            .map(
                |(width, length, quantity, phase_along, phase_across)| LayoutPiece {
                    width: Length::from_nanometres(width),
                    length: Length::from_nanometres(length),
                    quantity,
                    phase_along: phase_along
                        .filter(|_| cloth.repeat_along.is_some())
                        .map(Length::from_nanometres),
                    phase_across: phase_across
                        .filter(|_| cloth.repeat_across.is_some())
                        .map(Length::from_nanometres),
                    outline: None,
                    on_fold: width % 3 == 0,
                },
            )
            .collect();
        (cloth, pieces)
    })
}

/// A flaw across the whole of that cloth or a part of it.
fn any_flaw() -> impl Strategy<Value = BoltFlaw> {
    let along = (0..mm(6000).nanometres(), 1..mm(400).nanometres());
    let across = option::of((0..mm(1000).nanometres(), 1..mm(372).nanometres()));
    (0..3_u32, along, across).prop_map(|(bolt, (from, length), across)| {
        let (left, width) = across.unwrap_or((0, mm(1372).nanometres()));
        let (from, left) = (Length::from_nanometres(from), Length::from_nanometres(left));
        BoltFlaw {
            bolt,
            from,
            to: from + Length::from_nanometres(length),
            left,
            right: left + Length::from_nanometres(width),
        }
    })
}

/// Any length at all, for input that nobody has looked at.
pub fn any_length() -> impl Strategy<Value = Length> {
    prop_oneof![
        any::<i64>().prop_map(Length::from_nanometres),
        (-3..12_i64).prop_map(mm),
        Just(Length::LARGEST),
    ]
}

/// A corner, in millimetres.
pub fn corner(across: i64, along: i64) -> OutlineCorner {
    OutlineCorner {
        across: mm(across),
        along: mm(along),
    }
}

/// A piece cut along straight sides through these corners, in millimetres, as wide and long as they
/// reach.
pub fn shaped_piece(corners: &[(i64, i64)], quantity: u32) -> LayoutPiece {
    let widest = corners.iter().map(|(across, _)| *across).max();
    let longest = corners.iter().map(|(_, along)| *along).max();
    let corners = corners
        .iter()
        .map(|(across, along)| corner(*across, *along));
    LayoutPiece {
        outline: Some(OutlinePolygon::through(corners.collect(), Length::ZERO)),
        ..plain_piece(
            mm(widest.unwrap_or_default()),
            mm(longest.unwrap_or_default()),
            quantity,
        )
    }
}

/// The same jobs, with some of the pieces cut to a shape below: a jagged or slanting lower edge.
pub fn any_shaped_job() -> impl Strategy<Value = (LayoutCloth, Vec<LayoutPiece>)> {
    let depths = option::of(prop::collection::vec(1..=1000_i64, 2..7));
    let jagged = prop::collection::vec((depths, 0..mm(2).nanometres()), 9);
    (any_job(), jagged, any::<bool>()).prop_map(|((mut cloth, mut pieces), edges, one_way)| {
        cloth.one_way = one_way;
        for (piece, (depths, strays)) in pieces.iter_mut().zip(edges) {
            let strays = Length::from_nanometres(strays);
            piece.outline = depths.map(|depths| jagged_below(piece, &depths, strays));
        }
        (cloth, pieces)
    })
}

/// An outline with a lower edge through so many thousandths of the piece's length.
fn jagged_below(piece: &LayoutPiece, depths: &[i64], strays: Length) -> OutlinePolygon {
    let last = u32::try_from(depths.len().saturating_sub(1)).unwrap_or(1);
    let below = (0..).zip(depths).map(|(at, depth)| OutlineCorner {
        across: piece.width - piece.width.divided(last) * at,
        along: piece.length.divided(1000) * *depth,
    });
    let top = [Length::ZERO, piece.width].map(|across| OutlineCorner {
        across,
        along: Length::ZERO,
    });
    OutlinePolygon::through(top.into_iter().chain(below).collect(), strays)
}
