//! Whether the lengths stated for a layout are those its pieces take.

use std::collections::BTreeMap;

use pelmet_measure::Length;

use super::checked::CheckedPiece;
use super::finding::CheckerFinding;
use crate::given::{BoltFlaw, LayoutCloth};
use crate::layout::{BoltLengths, Layout};

/// Finds bolts and totals that do not agree with the pieces.
pub(super) fn check(
    cloth: &LayoutCloth,
    layout: &Layout,
    laid: &[CheckedPiece],
    findings: &mut Vec<CheckerFinding>,
) {
    check_bolts(cloth, layout, laid, findings);
    let exact: Length = layout.bolts.iter().map(|bolt| bolt.exact).sum();
    let bought: Length = layout.bolts.iter().map(|bolt| bolt.bought).sum();
    if (exact, bought) != (layout.exact, layout.bought) {
        findings.push(CheckerFinding::WrongTotal);
    }
    if layout.exact > layout.rule_of_thumb {
        findings.push(CheckerFinding::LongerThanRule);
    }
    if layout.exact < layout.lower_bound {
        findings.push(CheckerFinding::ShorterThanBound);
    }
}

fn check_bolts(
    cloth: &LayoutCloth,
    layout: &Layout,
    laid: &[CheckedPiece],
    findings: &mut Vec<CheckerFinding>,
) {
    let mut ends: BTreeMap<usize, Length> = BTreeMap::new();
    for it in laid {
        let bolt = usize::try_from(it.placed.bolt).unwrap_or(usize::MAX);
        if bolt >= layout.bolts.len() {
            findings.push(CheckerFinding::UnknownBolt { placed: it.index });
        }
        let end = ends.entry(bolt).or_insert(it.end());
        *end = it.end().max(*end);
    }
    for (bolt, used) in layout.bolts.iter().enumerate() {
        let is_right = match ends.get(&bolt) {
            Some(end) => *end == used.exact && is_bought_rightly(cloth, used),
            None => *used == BoltLengths::default() && may_be_passed_over(cloth, bolt),
        };
        let is_last = bolt.checked_add(1) == Some(layout.bolts.len());
        if !is_right || is_last && !ends.contains_key(&bolt) {
            findings.push(CheckerFinding::WrongBolt { bolt });
        }
    }
}

/// Whether a bolt may be left unused before one that is used.
fn may_be_passed_over(cloth: &LayoutCloth, bolt: usize) -> bool {
    let is_on_it = |flaw: &BoltFlaw| usize::try_from(flaw.bolt) == Ok(bolt);
    cloth.flaws.iter().any(is_on_it)
}

/// Whether just enough is bought: whole steps, less than one step over; or the whole bolt.
fn is_bought_rightly(cloth: &LayoutCloth, used: &BoltLengths) -> bool {
    let spare = used.bought - used.exact;
    if spare.is_negative() || spare >= cloth.buying_step {
        return false;
    }
    let over_steps = used
        .bought
        .nanometres()
        .checked_rem(cloth.buying_step.nanometres());
    over_steps == Some(0) || cloth.bolt_length == Some(used.bought)
}
