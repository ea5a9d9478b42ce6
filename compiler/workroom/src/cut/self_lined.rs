//! A self-lined panel: its face goes on below the lower edge, is folded there and comes up behind.

use pelmet_measure::Length;
use pelmet_model::geometry::Vector;
use pelmet_model::{Corner, Edge, EdgeKind, Fabric, MakingMatter, Point, Shape, Way};

/// The shape of the face laid open, its back half below the line it is folded on: as wide as the panel
/// and twice as long, with a top edge at either end.
///
/// # Errors
///
/// A lower edge that is not level: only a straight one can be a fold.
pub(crate) fn laid_open(shape: &Shape) -> Result<Shape, MakingMatter> {
    let lower = shape.sides().filter(|side| side.0.kind == EdgeKind::Lower);
    let ends: Vec<(Option<usize>, Length)> = lower
        .flat_map(|(edge, from, to)| [(edge.step, from.down), (edge.step, to.down)])
        .collect();
    let (least, most) = shape.bounds();
    let off_level = ends.iter().find(|(_, down)| *down != most.down);
    if let Some((step, _)) = off_level {
        let highest = ends.iter().map(|(_, down)| *down).min();
        return Err(MakingMatter::FoldNotLevel {
            step: *step,
            highest: highest.unwrap_or_default(),
            lowest: most.down,
        });
    }
    let bottom = most.down + (most.down - least.down);
    let at = |across, down| Point { across, down };
    let corners = [
        (at(least.across, least.down), EdgeKind::Side),
        (at(least.across, bottom), EdgeKind::Top),
        (at(most.across, bottom), EdgeKind::Side),
        (at(most.across, least.down), EdgeKind::Top),
    ];
    let ends = corners.iter().cycle().skip(1);
    let edges = corners
        .iter()
        .zip(ends)
        .map(|(&(from, kind), &(to, _))| Edge {
            kind,
            length: Vector::between(from, to).length(),
            step: None,
            curve: None,
        });
    Ok(Shape {
        edges: edges.collect(),
        corners: corners.iter().map(|(at, _)| Corner::plain(*at)).collect(),
    })
}

/// What is to be known of a face whose back half hangs upside down.
pub(crate) fn upside_down(face: &Fabric) -> Option<MakingMatter> {
    (face.way == Way::OneWay).then_some(MakingMatter::BackUpsideDown)
}
