//! Kinds of piece, by all that the search minds of them.

use pelmet_measure::Length;

use super::shape::Shape;
use crate::layout::Orientation;
use crate::places::Grids;

/// A size of piece and how the print holds it. Cuts of one form may change places.
#[derive(Clone, PartialEq, Eq, Debug)]
pub(crate) struct Form {
    /// Its number among the forms of the job.
    pub number: usize,
    /// Its width, across the bolt.
    pub width: Length,
    /// Its length, along the bolt.
    pub length: Length,
    /// Where the print lets it lie.
    pub grids: Grids,
    /// How it is shaped, where any piece of the job is.
    pub shape: Option<Shape>,
}

impl Form {
    /// The form to be laid in any way it may lie.
    pub(crate) fn any_way(&self) -> Wanted<'_> {
        let may_turn = self.shape.as_ref().is_some_and(Shape::may_turn);
        let ways = if may_turn { EITHER_WAY } else { UPRIGHT };
        Wanted { form: self, ways }
    }

    /// What it takes to compare it with another, in steps: one for each slab.
    pub(crate) fn steps(&self) -> usize {
        self.shape.as_ref().map_or(1, Shape::count)
    }
}

/// Which ways up a form may lie, in the order they are tried.
pub(crate) type Ways = &'static [Orientation];

/// Its top nearer to the start of the bolt, as all rectangles are laid.
pub(crate) const UPRIGHT: Ways = &[Orientation::Upright];
/// Turned end for end.
pub(crate) const TURNED: Ways = &[Orientation::Turned];
/// Whichever is nearer to the start of the bolt.
pub(crate) const EITHER_WAY: Ways = &[Orientation::Upright, Orientation::Turned];

/// A form, and the ways in which it is wanted.
#[derive(Copy, Clone, Debug)]
pub(crate) struct Wanted<'forms> {
    pub form: &'forms Form,
    pub ways: Ways,
}

impl Wanted<'_> {
    /// Whether another way could be wanted.
    pub(crate) fn may_turn(&self) -> bool {
        self.form.any_way().ways.len() > 1
    }
}
