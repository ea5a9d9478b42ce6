//! Shapes as the search sees them: each way they may lie, along the bolt and across it.

use pelmet_measure::Length;

use crate::given::{OutlineCorner, OutlinePolygon};
use crate::layout::Orientation;
use crate::places::{NoFit, Slabs};

/// A shaped piece, upright and turned end for end.
#[derive(Clone, PartialEq, Eq, Debug)]
pub(crate) struct Shape {
    upright: Posture,
    /// `None` where it may not be turned, or lies turned as it does upright.
    turned: Option<Posture>,
    is_rectangle: bool,
}

/// A shape in one position, cut in slabs both ways: on a line along the bolt the search asks which
/// places across are denied, and in a column across it which places along.
#[derive(Clone, PartialEq, Eq, Debug)]
pub(super) struct Posture {
    across: Cutting,
    along: Cutting,
}

/// A shape in slabs, and grown by what must be left free between two pieces. Of each two shapes one is
/// taken grown and the other as it is, so that what must be free is left once.
#[derive(Clone, PartialEq, Eq, Debug)]
struct Cutting {
    slabs: Slabs,
    grown: Slabs,
}

impl Shape {
    /// A shape within an outline, to be kept so far from others and never to be turned.
    pub(super) fn upright(outline: &OutlinePolygon, free: Length) -> Shape {
        Shape {
            upright: Posture::of(outline.corners().to_vec(), free),
            turned: None,
            is_rectangle: false,
        }
    }

    /// A shape within an outline, to be kept so far from others, that may be turned end for end within
    /// its width and length.
    pub(super) fn either_way(
        outline: &OutlinePolygon,
        (width, length): (Length, Length),
        free: Length,
    ) -> Shape {
        let turned = outline.corners().iter().map(|corner| OutlineCorner {
            across: width - corner.across,
            along: length - corner.along,
        });
        let turned = Posture::of(turned.collect(), free);
        let shape = Shape::upright(outline, free);
        Shape {
            turned: Some(turned).filter(|turned| *turned != shape.upright),
            ..shape
        }
    }

    /// A rectangle among shapes.
    pub(super) fn rectangle(width: Length, length: Length, free: Length) -> Shape {
        let upright = Posture {
            across: Cutting::of(Slabs::rectangle(width, length), free),
            along: Cutting::of(Slabs::rectangle(length, width), free),
        };
        Shape {
            upright,
            turned: None,
            is_rectangle: true,
        }
    }

    /// Whether it is a rectangle among shapes.
    pub(super) fn is_rectangle(&self) -> bool {
        self.is_rectangle
    }

    /// Whether it lies otherwise when it is turned.
    pub(super) fn may_turn(&self) -> bool {
        self.turned.is_some()
    }

    /// How many slabs are looked at to compare it with another.
    pub(super) fn count(&self) -> usize {
        self.upright.across.grown.count()
    }

    /// The shape as it lies one way up.
    pub(super) fn posture(&self, orientation: Orientation) -> &Posture {
        match orientation {
            Orientation::Upright => &self.upright,
            Orientation::Turned => self.turned.as_ref().unwrap_or(&self.upright),
        }
    }
}

impl Posture {
    fn of(corners: Vec<OutlineCorner>, free: Length) -> Posture {
        let swapped = corners.iter().map(|corner| OutlineCorner {
            across: corner.along,
            along: corner.across,
        });
        let along = OutlinePolygon::through(swapped.collect(), Length::ZERO);
        let across = OutlinePolygon::through(corners, Length::ZERO);
        Posture {
            across: Cutting::of(Slabs::within(&across), free),
            along: Cutting::of(Slabs::within(&along), free),
        }
    }

    /// The places across, from ours on, that `other` may not have so far ahead along the bolt.
    pub(super) fn no_fit_across(&self, other: &Posture, ahead: Length) -> Vec<NoFit> {
        self.across.grown.no_fit(&other.across.slabs, ahead)
    }

    /// The places along, from ours on, that `other` may not have so far to the right.
    pub(super) fn no_fit_along(&self, other: &Posture, right: Length) -> Vec<NoFit> {
        self.along.grown.no_fit(&other.along.slabs, right)
    }
}

impl Cutting {
    fn of(slabs: Slabs, free: Length) -> Cutting {
        let grown = slabs.grown(free);
        Cutting { slabs, grown }
    }
}
