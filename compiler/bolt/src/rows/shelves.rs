//! Layout on shelves: the longest piece left opens a shelf across the cloth, and shorter ones
//! fill what it leaves free.

use pelmet_measure::Length;

use super::slots::{Slot, Slots};
use crate::given::LayoutCloth;
use crate::layout::{Orientation, Placed};
use crate::places::{Cut, Place, Space};

/// What decides how much of the bolt's length a shelf takes.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(crate) enum ShelfLength {
    /// As long as the cut that opens it.
    OfCut,
    /// As long as the workroom allows for that cut, so that cuts held elsewhere by the print may
    /// lie lower beside it.
    Allowed,
    /// As long as the cut that opens it, with all its cuts side by side and none above another.
    Row,
}

/// Lays the cuts on shelves, the longest first: so whatever comes later is short enough for every shelf
/// that is there, and a shelf wastes no more than what its pieces fall short of the first on it.
pub(crate) fn on_shelves(
    cloth: &LayoutCloth,
    cuts: &[Cut],
    shelf_length: ShelfLength,
) -> Vec<Placed> {
    let mut longest_first = cuts.to_vec();
    longest_first.sort_by_key(|cut| (-cut.length, -cut.width, cut.piece, cut.copy));
    let slots = Slots::for_cuts(cuts);
    let mut shelves = Shelves {
        cloth,
        shelf_length,
        slots,
        bolt: 0,
        next_shelf: Length::ZERO,
    };
    longest_first.iter().map(|cut| shelves.lay(cut)).collect()
}

/// Shelves laid so far, bolt by bolt.
struct Shelves<'cloth> {
    cloth: &'cloth LayoutCloth,
    shelf_length: ShelfLength,
    slots: Slots,
    bolt: u32,
    /// Where the next shelf may start.
    next_shelf: Length,
}

impl Shelves<'_> {
    /// Lays a cut in what earlier shelves leave free, or else on a shelf of its own, and keeps what is
    /// free around it.
    fn lay(&mut self, cut: &Cut) -> Placed {
        let (slot, place) = self
            .slots
            .take_for(cut)
            .unwrap_or_else(|| self.open_shelf(cut));
        let [left, right, above, beneath] = slot.space.around(&cut.space_at(place), self.cloth.gap);
        let (beside, over) = ([left, right], [above, beneath]);
        let is_row = self.shelf_length == ShelfLength::Row;
        let over = over.into_iter().filter(|_| !is_row);
        for space in beside.into_iter().chain(over) {
            self.add(Slot { space, ..slot });
        }
        Placed::of(cut, slot.bolt, place, Orientation::Upright)
    }

    /// Opens a shelf at the first place for the cut, on the next bolt where this one ends too soon.
    fn open_shelf(&mut self, cut: &Cut) -> (Slot, Place) {
        let bolt_end = self.cloth.bolt_end();
        let mut place = self.first_place(cut);
        while place.along + cut.length > bolt_end
            && self.cloth.has_better_bolt(self.bolt, self.next_shelf)
        {
            self.leave_free(bolt_end);
            self.bolt = self.bolt.saturating_add(1);
            self.next_shelf = Length::ZERO;
            place = self.first_place(cut);
        }
        self.leave_free(place.along - self.cloth.gap);
        let end = bolt_end.min(place.along + self.length_for(cut));
        self.next_shelf = end + self.cloth.gap;
        (self.across_cloth(place.along, end), place)
    }

    fn first_place(&self, cut: &Cut) -> Place {
        self.cloth
            .first_sound_place(self.bolt, cut, self.next_shelf)
    }

    /// Keeps what is sound of a free rectangle.
    fn add(&mut self, slot: Slot) {
        for space in self.cloth.sound_parts(slot.bolt, slot.space) {
            self.slots.add(Slot { space, ..slot });
        }
    }

    fn length_for(&self, cut: &Cut) -> Length {
        match self.shelf_length {
            ShelfLength::OfCut | ShelfLength::Row => cut.length,
            ShelfLength::Allowed => cut.allowed_length(self.cloth.gap) - self.cloth.gap,
        }
    }

    /// Keeps the cloth between the last shelf and `end` for shorter cuts.
    fn leave_free(&mut self, end: Length) {
        if self.shelf_length != ShelfLength::Row {
            self.add(self.across_cloth(self.next_shelf, end));
        }
    }

    fn across_cloth(&self, start: Length, end: Length) -> Slot {
        let near = Place {
            across: Length::ZERO,
            along: start,
        };
        let far = Place {
            across: self.cloth.usable_width,
            along: end,
        };
        Slot {
            bolt: self.bolt,
            space: Space { near, far },
        }
    }
}
