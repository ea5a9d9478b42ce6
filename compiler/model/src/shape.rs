//! Closed outlines, and what can be asked of them.

use pelmet_measure::{Area, Length};

use crate::closed_set::closed_set;
use crate::geometry::{Vector, doubled_area};
use crate::{EdgeKind, Point};

/// A closed outline: edge `i` runs from corner `i` to the next.
///
/// The first corner is the left end of the top edge; corners follow down the left side, along the
/// lower edge, up the right side and back along the top.
#[derive(Clone, PartialEq, Debug)]
pub struct Shape {
    /// The corners in order.
    pub corners: Vec<Corner>,
    /// One edge for each corner, starting at it.
    pub edges: Vec<Edge>,
}

/// A corner of an outline.
#[derive(Clone, PartialEq, Debug)]
pub struct Corner {
    /// Where it is.
    pub at: Point,
    /// What its seam allowance calls for once sewn; `None` where there is no turn worth the name.
    pub relief: Option<Relief>,
    /// The outline step that drew it, where one did.
    pub step: Option<usize>,
    /// The name the maker gave it.
    pub name: Option<String>,
}

impl Corner {
    /// A corner of a piece: nothing is said of it but where it is.
    pub fn plain(at: Point) -> Self {
        Self {
            at,
            relief: None,
            step: None,
            name: None,
        }
    }
}

/// The circle that an arc runs along.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct Circle {
    /// In the coordinates of the outline it belongs to; it may lie outside the cloth.
    pub centre: Point,
    /// From the centre to the arc; more than nothing.
    pub radius: Length,
    /// Whether the arc bends away from the cloth beside it; otherwise it hollows it.
    pub swells: bool,
}

impl Circle {
    /// The circle about the same centre with the arc so far out from the cloth (in, where that is
    /// negative).
    #[must_use]
    pub fn grown(self, by: Length) -> Self {
        let radius = if self.swells {
            self.radius + by
        } else {
            self.radius - by
        };
        Self { radius, ..self }
    }

    /// The same circle with cloth on the other side of its arc.
    #[must_use]
    pub fn with_cloth_beyond(self) -> Self {
        Self {
            swells: !self.swells,
            ..self
        }
    }
}

closed_set! {
    /// What the allowance at a corner calls for.
    pub enum Relief {
        /// A concave turn: snip to the corner so that it opens.
        Snip = "snip",
        /// A convex turn: trim the corner so that it turns sharp.
        Trim = "trim",
        /// A corner where two hems meet in a mitre.
        Mitre = "mitre",
    }
}

/// An edge of an outline.
#[derive(Clone, PartialEq, Debug)]
pub struct Edge {
    /// Which edge of the panel it belongs to.
    pub kind: EdgeKind,
    /// Its length, along the curve where it is one, to the nearest nanometre.
    pub length: Length,
    /// The outline step that drew it, where one did.
    pub step: Option<usize>,
    /// How it curves; `None` for a straight edge.
    pub curve: Option<Curve>,
}

/// How an edge curves.
#[derive(Clone, PartialEq, Debug)]
pub struct Curve {
    /// The points between its corners, so many that the straight lines between them stay with the curve
    /// as nearly as its sums allow.
    pub between: Vec<Point>,
    /// Slits to clip in the allowance where the edge is concave, so that it opens.
    pub clips: u32,
    /// Wedges to cut out of the allowance where the edge is convex, so that it lies flat.
    pub wedges: u32,
    /// The circle it runs along; `None` where it follows no one circle.
    pub circle: Option<Circle>,
    /// The way it leaves its first corner.
    pub leaves: Vector,
    /// The way it comes to its second.
    pub arrives: Vector,
}

impl Shape {
    /// The area inside.
    pub fn area(&self) -> Area {
        Area::from_square_nanometres(doubled_area(&self.polygon()).saturating_abs() >> 1)
    }

    /// The top left and the lower right corner of the rectangle it just fits into.
    pub fn bounds(&self) -> (Point, Point) {
        let points = self.polygon();
        let origin = Point {
            across: Length::ZERO,
            down: Length::ZERO,
        };
        let first = points.first().copied().unwrap_or(origin);
        points
            .into_iter()
            .fold((first, first), |(least, most), point| {
                let (across, down) = (point.across, point.down);
                (
                    Point {
                        across: least.across.min(across),
                        down: least.down.min(down),
                    },
                    Point {
                        across: most.across.max(across),
                        down: most.down.max(down),
                    },
                )
            })
    }

    /// Each edge with the corners it runs between.
    pub fn runs(&self) -> impl Iterator<Item = (&Edge, Point, Point)> {
        let ends = self.corners.iter().cycle().skip(1);
        let starts = self.corners.iter().zip(ends);
        self.edges
            .iter()
            .zip(starts)
            .map(|(edge, (from, to))| (edge, from.at, to.at))
    }

    /// The closed line as a polygon: every corner in order, and every curve as points so near to one
    /// another that the line between them stays with it.
    #[must_use]
    pub fn polygon(&self) -> Vec<Point> {
        self.corners
            .iter()
            .zip(&self.edges)
            .flat_map(|(corner, edge)| {
                std::iter::once(corner.at).chain(edge.between().iter().copied())
            })
            .collect()
    }

    /// The polygon side by side: the edge each side belongs to, its start and its end.
    pub fn sides(&self) -> impl Iterator<Item = (&Edge, Point, Point)> {
        self.runs().flat_map(|(edge, from, to)| {
            let between = edge.between();
            let starts = std::iter::once(from).chain(between.iter().copied());
            let ends = between.iter().copied().chain([to]);
            starts.zip(ends).map(move |(from, to)| (edge, from, to))
        })
    }
}

impl Edge {
    /// The points of its curve between its corners; none where it is straight.
    #[must_use]
    pub fn between(&self) -> &[Point] {
        self.curve.as_ref().map_or(&[], |curve| &curve.between)
    }
}
