//! The line a piece is cut along, as the layout sees it.

use pelmet_bolt::{MAXIMUM_OUTLINE_CORNERS, OutlineCorner, OutlinePolygon};
use pelmet_measure::Length;
use pelmet_model::{PieceMade, Point};

/// A curve is laid as straight sides that stay so near to it, which is half of what all of them
/// together may stray.
const NEAR: Length = Length::from_nanometres(50_000);

/// The outline of a piece, upright, within the width and length it is laid with; `None` for a
/// rectangle.
pub(crate) fn cut_line(
    piece: &PieceMade,
    (width, length): (Length, Length),
) -> Option<OutlinePolygon> {
    let (least, most) = piece.outline.bounds();
    let drawn = (most.across - least.across, most.down - least.down);
    let to_scale = |point: Point| {
        Some(OutlineCorner {
            across: scaled(point.across - least.across, drawn.0, piece.cut_width)?.min(width),
            along: scaled(point.down - least.down, drawn.1, piece.cut_length)?.min(length),
        })
    };
    let points = piece.outline.polygon().into_iter();
    let corners: Vec<OutlineCorner> = points.map(to_scale).collect::<Option<_>>()?;
    let outline = OutlinePolygon::near(&corners, NEAR, NEAR);
    let is_shaped = outline.corners().len() > 4 || !is_rectangle(&outline);
    (is_shaped && outline.corners().len() <= MAXIMUM_OUTLINE_CORNERS).then_some(outline)
}

/// A place as far along as before once the whole is cut larger, for what the cloth will lose.
fn scaled(place: Length, drawn: Length, cut: Length) -> Option<Length> {
    let whole = u64::try_from(drawn.nanometres()).ok()?;
    let part = u64::try_from(place.nanometres()).ok()?;
    (whole > 0).then(|| cut.portion(part, whole))
}

/// Whether all sides run across or along.
fn is_rectangle(outline: &OutlinePolygon) -> bool {
    let corners = outline.corners();
    let mut sides = corners.iter().zip(corners.iter().cycle().skip(1));
    sides.all(|(one, next)| one.across == next.across || one.along == next.along)
}
