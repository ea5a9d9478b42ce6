//! Whether shapes keep apart, by triangles: two of them that lie apart can be parted by a line along
//! a side of one of them (two convex polygons are apart if and only if a side of one parts them, which is
//! known as the separating axis theorem).
//!
//! It is slower than slabs and asks nothing of them: whatever is wrong with how slabs are cut, grown or
//! rounded shows here, for triangles have the corners of the outline itself and nothing is rounded.

use crate::given::OutlinePolygon;

/// A point in whole nanometres, across and along.
pub(super) type Point = (i128, i128);

/// Three corners, counted so that the inside is on the left of each side.
pub(super) type Triangle = [Point; 3];

/// The triangles that fill an outline; `None` where it crosses itself or encloses nothing.
///
/// Ears are cut off one by one (G. H. Meisters, "Polygons have ears", American Mathematical Monthly
/// 82, 1975). Every simple polygon with more than three corners has one, and is simple without it: so
/// where no ear is found, the outline is no polygon.
pub(super) fn triangles(outline: &OutlinePolygon) -> Option<Vec<Triangle>> {
    let corners = outline.corners().iter();
    let mut left: Vec<Point> = corners
        .map(|corner| {
            (
                corner.across.nanometres().into(),
                corner.along.nanometres().into(),
            )
        })
        .collect();
    if doubled_area(&left) < 0 {
        left.reverse();
    }
    let mut triangles = Vec::new();
    while left.len() > 2 {
        let ear = (0..left.len()).find(|at| is_ear(&left, *at))?;
        let [before, tip, after] = around(&left, ear)?;
        if turn(before, tip, after) > 0 {
            triangles.push([before, tip, after]);
        }
        left.remove(ear);
    }
    (!triangles.is_empty()).then_some(triangles)
}

/// Whether two triangles are nearer than `gap` to each other both across and along; with no gap,
/// whether they have cloth in common. Those that only touch have none.
pub(super) fn lie_within(one: &Triangle, other: &Triangle, gap: i128) -> bool {
    let normals = normals(one).into_iter().chain(normals(other));
    !normals
        .chain([(1, 0), (0, 1)])
        .any(|normal| parts(normal, one, other, gap))
}

/// Whether a line across this direction has one triangle, grown by the gap, on its one side and the
/// other triangle on the other.
///
/// Grown means by a square, as pieces keep their gap along or across. In the direction of a normal the
/// square reaches as far as its farthest corner: the gap times what the normal has across and along
/// together. The sum of a triangle and a square has the sides of both, so the two directions of the bolt
/// are tried beside the normals of the triangles. Normals are as long as the sides they belong to, and all
/// that is compared is longer by as much: no root is needed, and nothing is rounded.
fn parts(normal: Point, one: &Triangle, other: &Triangle, gap: i128) -> bool {
    let (across, along) = normal;
    let along_normal = |(x, y): &Point| product(*x, across).saturating_add(product(*y, along));
    let grown = product(
        across
            .saturating_abs()
            .saturating_add(along.saturating_abs()),
        gap,
    );
    let span = |triangle: &Triangle| {
        let places = triangle.each_ref().map(along_normal);
        (places.into_iter().min(), places.into_iter().max())
    };
    let ((one_from, one_to), (other_from, other_to)) = (span(one), span(other));
    let after = |to: Option<i128>, from: Option<i128>| {
        to.zip(from)
            .is_some_and(|(to, from)| to.saturating_add(grown) <= from)
    };
    after(one_to, other_from) || after(other_to, one_from)
}

/// For each side a direction square to it, as long as the side.
fn normals(triangle: &Triangle) -> [Point; 3] {
    let [one, two, three] = *triangle;
    let normal = |(x, y): Point, (other_x, other_y): Point| {
        (y.saturating_sub(other_y), other_x.saturating_sub(x))
    };
    [normal(one, two), normal(two, three), normal(three, one)]
}

/// Whether a corner can be cut off without cutting another part of the polygon: where it points outward
/// and no other corner lies in the triangle cut off. One in a straight line always can.
fn is_ear(corners: &[Point], at: usize) -> bool {
    let Some([before, tip, after]) = around(corners, at) else {
        return false;
    };
    match turn(before, tip, after) {
        ..0 => false,
        0 => true,
        _ => !corners.iter().any(|corner| {
            ![before, tip, after].contains(corner)
                && turn(before, tip, *corner) >= 0
                && turn(tip, after, *corner) >= 0
                && turn(after, before, *corner) >= 0
        }),
    }
}

/// A corner with the one before it and the one after it.
fn around(corners: &[Point], at: usize) -> Option<[Point; 3]> {
    let before = at
        .checked_sub(1)
        .map_or(corners.last(), |before| corners.get(before));
    let after = corners.get(at.saturating_add(1)).or(corners.first());
    Some([*before?, *corners.get(at)?, *after?])
}

/// Twice the area of a triangle, below zero where its corners go round the other way.
fn turn(one: Point, two: Point, three: Point) -> i128 {
    let (across, along) = (two.0.saturating_sub(one.0), two.1.saturating_sub(one.1));
    let (farther, further) = (three.0.saturating_sub(one.0), three.1.saturating_sub(one.1));
    product(across, further).saturating_sub(product(along, farther))
}

/// Twice the area within corners, below zero where they go round the other way (the shoelace formula).
fn doubled_area(corners: &[Point]) -> i128 {
    let next = corners.iter().cycle().skip(1);
    let over = |((x, y), (next_x, next_y)): (&Point, &Point)| {
        product(*x, *next_y).saturating_sub(product(*next_x, *y))
    };
    corners
        .iter()
        .zip(next)
        .map(over)
        .fold(0, i128::saturating_add)
}

fn product(one: i128, other: i128) -> i128 {
    one.saturating_mul(other)
}
