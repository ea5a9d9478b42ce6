//! Whether the cloth can be folded where the layout says so.

use pelmet_measure::Length;

use super::checked::CheckedPiece;
use super::finding::CheckerFinding;
use crate::given::LayoutCloth;
use crate::layout::{BoltSection, Layout};

/// Finds pieces cut on the fold that lie in no section, sections that do not follow one another, and
/// folds that would cover or catch a piece that is not cut on them.
pub(super) fn check(
    cloth: &LayoutCloth,
    layout: &Layout,
    laid: &[CheckedPiece],
    findings: &mut Vec<CheckerFinding>,
) {
    for it in laid.iter().filter(|it| it.piece.on_fold) {
        if !layout.sections.iter().any(|of| holds(of, it)) {
            findings.push(CheckerFinding::InNoSection { placed: it.index });
        }
    }
    let mut before: Option<&BoltSection> = None;
    for (section, the) in layout.sections.iter().enumerate() {
        let follows = match before {
            Some(last) if last.bolt == the.bolt => last.to == the.from,
            Some(last) => last.bolt < the.bolt && the.from.is_zero(),
            None => the.from.is_zero(),
        };
        let is_whole = |it: &CheckedPiece| holds(the, it) || !meets(the, it);
        if !follows || the.to <= the.from || !laid.iter().all(is_whole) {
            findings.push(CheckerFinding::WrongSection { section });
        } else if laid
            .iter()
            .any(|it| holds(the, it) && is_caught(cloth, the, it))
        {
            findings.push(CheckerFinding::WrongFold { section });
        }
        before = Some(the);
    }
}

/// Whether a piece lies wholly in a section.
fn holds(section: &BoltSection, it: &CheckedPiece) -> bool {
    it.placed.bolt == section.bolt && section.from <= it.placed.along && it.end() <= section.to
}

/// Whether a piece lies partly in a section.
fn meets(section: &BoltSection, it: &CheckedPiece) -> bool {
    it.placed.bolt == section.bolt && it.placed.along < section.to && section.from < it.end()
}

/// Whether a piece lies partly on cloth that is turned over or under it, and is not cut on the fold.
fn is_caught(cloth: &LayoutCloth, section: &BoltSection, it: &CheckedPiece) -> bool {
    let (left, right) = (it.placed.across, it.right());
    // Turned over, the edge comes to lie as far beyond the fold as it was before it, and covers all
    // between: what it reaches there lies under it, and what was between edge and fold lies in it.
    let catches = |fold: Length, reached: bool| reached && !is_image(it, fold);
    section
        .left_fold
        .is_some_and(|fold| catches(fold, left < fold + fold))
        || section.right_fold.is_some_and(|fold| {
            let turned_over = cloth.usable_width - fold;
            catches(fold, right > fold - turned_over)
        })
}

/// Whether a piece is cut on a fold through its middle, to the nanometre: of an odd number of them the two
/// halves cannot be alike.
fn is_image(it: &CheckedPiece, fold: Length) -> bool {
    let over = (it.right() - fold) - (fold - it.placed.across);
    it.piece.on_fold && (over.is_zero() || over.nanometres() == 1)
}
