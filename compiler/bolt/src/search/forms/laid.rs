//! Forms as they lie.

use pelmet_measure::Length;

use super::form::Form;
use super::shape::Posture;
use crate::layout::Orientation;
use crate::places::Place;

/// A form in its place.
#[derive(Copy, Clone, Debug)]
pub(crate) struct Laid<'forms> {
    pub form: &'forms Form,
    /// Which bolt it lies on, from 0.
    pub bolt: u32,
    /// Where its top left corner lies, or the corner that is there when it is turned.
    pub place: Place,
    pub orientation: Orientation,
}

impl<'forms> Laid<'forms> {
    /// The form and how it lies.
    pub(crate) fn lying(&self) -> Lying<'forms> {
        Lying {
            form: self.form,
            orientation: self.orientation,
        }
    }

    /// Where it ends along the bolt.
    pub(crate) fn end(&self) -> Length {
        self.place.along + self.form.length
    }
}

/// A form that may lie turned, not yet placed.
#[derive(Copy, Clone, Debug)]
pub(crate) struct Lying<'forms> {
    pub form: &'forms Form,
    pub orientation: Orientation,
}

impl<'forms> Lying<'forms> {
    /// Its shape as it lies and that of another, unless both are rectangles: what these deny each other
    /// needs no slabs.
    pub(super) fn shapes_with(
        self,
        other: Lying<'forms>,
    ) -> Option<(&'forms Posture, &'forms Posture)> {
        let (ours, theirs) = self.form.shape.as_ref().zip(other.form.shape.as_ref())?;
        let is_plain = ours.is_rectangle() && theirs.is_rectangle();
        (!is_plain).then(|| {
            (
                ours.posture(self.orientation),
                theirs.posture(other.orientation),
            )
        })
    }
}
