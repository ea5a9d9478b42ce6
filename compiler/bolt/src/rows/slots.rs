//! The free rectangles of a layout, and the search for the one that suits a cut best.

use std::collections::BTreeMap;

use pelmet_measure::Length;

use crate::places::{Cut, Place, Space};

/// How many free rectangles are looked at for one cut. On plain cloth the first one fits; only
/// the print can refuse a cut that is narrow and short enough.
const MOST_LOOKS: usize = 64;

/// A free rectangle of one bolt.
#[derive(Copy, Clone, Debug)]
pub(super) struct Slot {
    /// Which bolt, from 0.
    pub bolt: u32,
    /// Where nothing lies yet, less the gap to what does.
    pub space: Space,
}

/// The free rectangles, for cuts that come longest first.
///
/// A slot sleeps until the cuts are short enough for it, so that a search through those awake need
/// only mind the width.
pub(super) struct Slots {
    /// No cut is narrower than this, nor shorter than the next: smaller slots are waste.
    narrowest: Length,
    shortest: Length,
    /// Slots long enough for the cut at hand, by width, then in the order they came up.
    awake: BTreeMap<(Length, u64), Slot>,
    /// Slots too short as yet, by length.
    asleep: BTreeMap<(Length, u64), Slot>,
    /// How many came up so far: among slots alike the one that came up first goes first.
    count: u64,
}

impl Slots {
    /// No slots yet, for these cuts.
    pub(super) fn for_cuts(cuts: &[Cut]) -> Slots {
        Slots {
            narrowest: cuts.iter().map(|cut| cut.width).min().unwrap_or_default(),
            shortest: cuts.iter().map(|cut| cut.length).min().unwrap_or_default(),
            awake: BTreeMap::new(),
            asleep: BTreeMap::new(),
            count: 0,
        }
    }

    /// Adds a slot, unless it is too small for any cut.
    pub(super) fn add(&mut self, slot: Slot) {
        if slot.space.width() >= self.narrowest && slot.space.length() >= self.shortest {
            self.count = self.count.saturating_add(1);
            self.asleep.insert((slot.space.length(), self.count), slot);
        }
    }

    /// Takes out the narrowest slot that holds the cut, and says where in it the cut lies.
    pub(super) fn take_for(&mut self, cut: &Cut) -> Option<(Slot, Place)> {
        self.wake(cut.length);
        let (key, place) = self
            .awake
            .range((cut.width, 0)..)
            .take(MOST_LOOKS)
            .find_map(|(key, slot)| Some((*key, cut.place_in(&slot.space)?)))?;
        Some((self.awake.remove(&key)?, place))
    }

    /// Wakes every slot that is at least so long.
    fn wake(&mut self, length: Length) {
        while let Some(longest) = self.asleep.last_entry() {
            let (slot_length, count) = *longest.key();
            if slot_length < length {
                break;
            }
            let slot = longest.remove();
            self.awake.insert((slot.space.width(), count), slot);
        }
    }
}
