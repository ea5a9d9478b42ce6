//! What shaped pieces take at least.

use pelmet_measure::Length;

use crate::given::{LayoutCloth, LayoutPiece, OutlineCorner, OutlinePolygon};
use crate::places::{Cut, Slabs};

/// Slabs are wider than what they cover by less than this.
const ROUNDING: Length = Length::from_nanometres(2);

/// The length over which the area of all pieces fills the cloth, rounded down; zero where none is
/// shaped.
pub(super) fn over_area(cloth: &LayoutCloth, pieces: &[LayoutPiece]) -> Length {
    if pieces.iter().all(|piece| piece.outline.is_none()) {
        return Length::ZERO;
    }
    let area = |piece: &LayoutPiece| area(piece).saturating_mul(piece.quantity.into());
    let all = pieces.iter().map(area).fold(0, u128::saturating_add);
    let width = u128::try_from(cloth.usable_width.nanometres()).unwrap_or(0);
    let length = all.checked_div(width).unwrap_or(0);
    Length::from_nanometres(i64::try_from(length).unwrap_or(0))
}

/// The cuts, each only as large as the rectangle at its top.
pub(super) fn whole_parts(pieces: &[LayoutPiece], cuts: &[Cut]) -> Vec<Cut> {
    let sizes: Vec<_> = pieces.iter().map(whole_part).collect();
    let whole = |cut: &Cut| {
        let (width, length) = (*sizes.get(cut.piece)?)?;
        Some(Cut {
            width,
            length,
            ..*cut
        })
    };
    cuts.iter().filter_map(whole).collect()
}

/// The area a piece covers for sure: what strays from the outline is not counted, which is no more than
/// a strip along all of it, as wide as the line may stray.
fn area(piece: &LayoutPiece) -> u128 {
    match &piece.outline {
        None => Slabs::rectangle(piece.width, piece.length).area(),
        Some(outline) => {
            let strip = Slabs::rectangle(around(outline), outline.strays() + ROUNDING).area();
            Slabs::within(outline).area().saturating_sub(strip)
        }
    }
}

/// Not less than the length of an outline, all round: each side by its reach across and along together,
/// which needs no root.
fn around(outline: &OutlinePolygon) -> Length {
    let corners = outline.corners();
    let next = corners.iter().cycle().skip(1);
    let side = |(one, other): (&OutlineCorner, &OutlineCorner)| {
        (one.across - other.across).abs() + (one.along - other.along).abs()
    };
    corners.iter().zip(next).map(side).sum()
}

/// The width and length of the part of a piece that is a rectangle from its top left corner.
fn whole_part(piece: &LayoutPiece) -> Option<(Length, Length)> {
    let Some(outline) = &piece.outline else {
        return Some((piece.width, piece.length));
    };
    let (width, length) = Slabs::within(outline).whole_from_top_left();
    let less = outline.strays() * 2;
    let is_some = width > less && length > less;
    is_some.then(|| (width - less, length - less))
}
