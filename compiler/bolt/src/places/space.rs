//! Places and rectangles of cloth.

use pelmet_measure::Length;

/// A point on a bolt; of a piece that lies there, its top left corner.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(crate) struct Place {
    /// From the left end of the usable width.
    pub across: Length,
    /// From the start of the bolt.
    pub along: Length,
}

/// A rectangle of cloth, from its corner nearest the start of the bolt to the opposite one.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(crate) struct Space {
    /// Its left corner nearest the start of the bolt.
    pub near: Place,
    /// Its right corner farthest from the start of the bolt.
    pub far: Place,
}

impl Space {
    /// Its width, across the bolt; below zero for a space that is not there.
    pub(crate) fn width(&self) -> Length {
        self.far.across - self.near.across
    }

    /// Its length, along the bolt; below zero for a space that is not there.
    pub(crate) fn length(&self) -> Length {
        self.far.along - self.near.along
    }

    /// Whether it lies wholly within `outer`.
    pub(crate) fn is_within(&self, outer: &Space) -> bool {
        outer.near.across <= self.near.across
            && outer.near.along <= self.near.along
            && self.far.across <= outer.far.across
            && self.far.along <= outer.far.along
    }

    /// Whether it has cloth in common with `other`.
    pub(crate) fn meets(&self, other: &Space) -> bool {
        self.near.across < other.far.across
            && other.near.across < self.far.across
            && self.near.along < other.far.along
            && other.near.along < self.far.along
    }

    /// The part of it that `outer` holds, where they meet.
    pub(crate) fn within(&self, outer: &Space) -> Space {
        let near = Place {
            across: self.near.across.max(outer.near.across),
            along: self.near.along.max(outer.near.along),
        };
        let far = Place {
            across: self.far.across.min(outer.far.across),
            along: self.far.along.min(outer.far.along),
        };
        Space { near, far }
    }

    /// What is left once `used` is cut out of it with `gap` all round: the whole length to the
    /// left and to the right, and the used width above and beneath.
    ///
    /// The four do not overlap, so that whatever is laid in one leaves the others free. The first two
    /// get the corners: on a shelf, what is left beside a piece is of more use than what is left below
    /// it.
    pub(crate) fn around(&self, used: &Space, gap: Length) -> [Space; 4] {
        let (near, far) = (used.near, used.far);
        let left = Place {
            across: near.across - gap,
            ..self.far
        };
        let right = Place {
            across: far.across + gap,
            ..self.near
        };
        let above = Place {
            across: far.across,
            along: near.along - gap,
        };
        let beneath = Place {
            across: near.across,
            along: far.along + gap,
        };
        [
            Space { far: left, ..*self },
            Space {
                near: right,
                ..*self
            },
            Space {
                near: Place {
                    across: near.across,
                    ..self.near
                },
                far: above,
            },
            Space {
                near: beneath,
                far: Place {
                    across: far.across,
                    ..self.far
                },
            },
        ]
    }
}
