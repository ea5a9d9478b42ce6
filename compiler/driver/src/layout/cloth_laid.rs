//! A cloth as the layout sees it.

use pelmet_bolt::{BoltFlaw, LayoutCloth};
use pelmet_measure::{Length, Style};
use pelmet_model::{Fabric, FlawOrder, Match, Way};

/// The cloth between its selvages.
pub(super) fn cloth(fabric: &Fabric, style: &Style) -> LayoutCloth {
    let repeat = fabric.repeat;
    LayoutCloth {
        usable_width: fabric.usable_width(),
        gap: fabric.shear_gap,
        repeat_along: repeat.and_then(|repeat| repeat.along),
        repeat_across: repeat.and_then(|repeat| repeat.across),
        // Where the print does not say how wide its columns are, each strip says where it stands.
        half_drop: repeat
            .is_some_and(|repeat| repeat.matching == Match::HalfDrop && repeat.across.is_some()),
        one_way: fabric.way == Way::OneWay,
        bolt_length: fabric.bolt_length,
        buying_step: style.buying_step(),
        flaws: fabric
            .flaws
            .iter()
            .filter_map(|flaw| flaw_laid(fabric, flaw))
            .collect(),
    }
}

/// A flaw as the layout sees it; `None` for one that lies in a selvage.
fn flaw_laid(fabric: &Fabric, flaw: &FlawOrder) -> Option<BoltFlaw> {
    let usable = fabric.usable_width();
    let within = |edge: Length| (edge - fabric.selvage).max(Length::ZERO).min(usable);
    let (left, right) = flaw.across.map_or((Length::ZERO, usable), |(left, right)| {
        (within(left), within(right))
    });
    (left < right).then(|| BoltFlaw {
        bolt: flaw.bolt.saturating_sub(1),
        from: flaw.from,
        to: flaw.to,
        left,
        right,
    })
}
