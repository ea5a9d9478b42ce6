//! Shapes as the search sees them: each way they may lie, along the bolt and across it.

use pelmet_measure::Length;

use crate::outline::{Corner, Outline};
use crate::slabs::{Between, Slabs};

/// A shaped piece, upright and turned end for end. A side of the bolt that the search asks about
/// may be along or across, so that each shape is cut in slabs both ways.
#[derive(Clone, PartialEq, Eq, Debug)]
pub(super) struct Shape {
    upright: Posture,
    turned: Option<Posture>,
    is_rectangle: bool,
}

/// A shape in one position.
#[derive(Clone, PartialEq, Eq, Debug)]
struct Posture {
    across: Cutting,
    along: Cutting,
}

/// A shape in slabs, and grown by what must be left free between two pieces.
#[derive(Clone, PartialEq, Eq, Debug)]
struct Cutting {
    slabs: Slabs,
    grown: Slabs,
}

/// How two shapes lie: which of them are turned.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(super) struct Turned {
    pub ours: bool,
    pub theirs: bool,
}

impl Shape {
    /// A shape within an outline, to be kept so far from others.
    pub(super) fn of(
        outline: &Outline,
        (width, length): (Length, Length),
        free: Length,
        may_turn: bool,
    ) -> Shape {
        let corners = outline.corners().to_vec();
        let turned = corners.iter().map(|corner| Corner {
            across: width - corner.across,
            along: length - corner.along,
        });
        let turned = may_turn.then(|| Posture::of(turned.collect(), free));
        let upright = Posture::of(corners, free);
        Shape {
            turned: turned.filter(|turned| *turned != upright),
            upright,
            is_rectangle: false,
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

    /// How many slabs it has.
    pub(super) fn count(&self) -> usize {
        self.upright.across.grown.count()
    }

    /// The places across that `other` may not have so far ahead along the bolt.
    pub(super) fn denied_across(
        &self,
        other: &Shape,
        turned: Turned,
        ahead: Length,
    ) -> Vec<Between> {
        let (ours, theirs) = (self.posture(turned.ours), other.posture(turned.theirs));
        ours.across.grown.denied(&theirs.across.slabs, ahead)
    }

    /// The places along that `other` may not have so far to the right.
    pub(super) fn denied_along(
        &self,
        other: &Shape,
        turned: Turned,
        right: Length,
    ) -> Vec<Between> {
        let (ours, theirs) = (self.posture(turned.ours), other.posture(turned.theirs));
        ours.along.grown.denied(&theirs.along.slabs, right)
    }

    fn posture(&self, is_turned: bool) -> &Posture {
        self.turned
            .as_ref()
            .filter(|_| is_turned)
            .unwrap_or(&self.upright)
    }
}

impl Posture {
    fn of(corners: Vec<Corner>, free: Length) -> Posture {
        let swapped = corners.iter().map(|corner| Corner {
            across: corner.along,
            along: corner.across,
        });
        let along = Outline::through(swapped.collect(), Length::ZERO);
        let across = Outline::through(corners, Length::ZERO);
        Posture {
            across: Cutting::of(Slabs::within(&across), free),
            along: Cutting::of(Slabs::within(&along), free),
        }
    }
}

impl Cutting {
    fn of(slabs: Slabs, free: Length) -> Cutting {
        let grown = slabs.grown(free);
        Cutting { slabs, grown }
    }
}
