//! Cloths and pieces that the tests share.

#![allow(
    dead_code,
    clippy::allow_attributes,
    reason = "each test file takes what it needs of these"
)]

use pelmet_bolt::{Cloth, Effort, Piece};
use pelmet_measure::Length;
use proptest::option;
use proptest::prelude::*;

/// Enough for both searches to take their turns, and little enough for a thousand jobs.
pub const LITTLE: Effort = Effort::steps(20_000);

/// So many millimetres.
pub fn mm(millimetres: i64) -> Length {
    Length::millimetres(millimetres)
}

/// Plain cloth without an end, sold by 0.1 m.
pub fn plain_cloth(usable_width: Length) -> Cloth {
    Cloth {
        usable_width,
        gap: Length::ZERO,
        repeat_along: None,
        repeat_across: None,
        half_drop: false,
        one_way: false,
        bolt_length: None,
        buying_step: mm(100),
    }
}

/// Pieces that the print does not hold.
pub fn plain_piece(width: Length, length: Length, quantity: u32) -> Piece {
    Piece {
        width,
        length,
        quantity,
        phase_along: None,
        phase_across: None,
    }
}

/// Cloths and pieces of workroom sizes, to the nanometre.
pub fn any_job() -> impl Strategy<Value = (Cloth, Vec<Piece>)> {
    let usable = mm(1372).nanometres();
    let cloth = (
        0..mm(20).nanometres(),
        option::of(mm(50).nanometres()..mm(900).nanometres()),
        option::of(mm(50).nanometres()..mm(700).nanometres()),
        any::<bool>(),
        option::of(mm(3000).nanometres()..mm(9000).nanometres()),
    )
        .prop_map(
            |(gap, repeat_along, repeat_across, half_drop, bolt_length)| Cloth {
                gap: Length::from_nanometres(gap),
                repeat_along: repeat_along.map(Length::from_nanometres),
                repeat_across: repeat_across.map(Length::from_nanometres),
                half_drop,
                one_way: true,
                bolt_length: bolt_length.map(Length::from_nanometres),
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
                |(width, length, quantity, phase_along, phase_across)| Piece {
                    width: Length::from_nanometres(width),
                    length: Length::from_nanometres(length),
                    quantity,
                    phase_along: phase_along
                        .filter(|_| cloth.repeat_along.is_some())
                        .map(Length::from_nanometres),
                    phase_across: phase_across
                        .filter(|_| cloth.repeat_across.is_some())
                        .map(Length::from_nanometres),
                },
            )
            .collect();
        (cloth, pieces)
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
