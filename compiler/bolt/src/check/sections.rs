//! Whether the cloth can be folded where the layout says so.

use pelmet_measure::Length;

use super::Laid;
use crate::{Cloth, Fault, Layout, Section};

/// Reports pieces cut on the fold that lie in no section, sections that do not follow one another, and
/// folds that would cover or catch a piece that is not cut on them.
pub(super) fn check(cloth: &Cloth, layout: &Layout, laid: &[Laid], faults: &mut Vec<Fault>) {
    for it in laid.iter().filter(|it| it.piece.on_fold) {
        if !layout.sections.iter().any(|of| holds(of, it)) {
            faults.push(Fault::InNoSection { placed: it.index });
        }
    }
    let mut before: Option<&Section> = None;
    for (section, the) in layout.sections.iter().enumerate() {
        let follows = match before {
            Some(last) if last.bolt == the.bolt => last.to == the.from,
            Some(last) => last.bolt < the.bolt && the.from.is_zero(),
            None => the.from.is_zero(),
        };
        let is_whole = |it: &Laid| holds(the, it) || !meets(the, it);
        if !follows || the.to <= the.from || !laid.iter().all(is_whole) {
            faults.push(Fault::WrongSection { section });
        } else if laid
            .iter()
            .any(|it| holds(the, it) && is_caught(cloth, the, it))
        {
            faults.push(Fault::WrongFold { section });
        }
        before = Some(the);
    }
}

/// Whether a piece lies wholly in a section.
fn holds(section: &Section, it: &Laid) -> bool {
    it.placed.bolt == section.bolt && section.from <= it.placed.along && it.end() <= section.to
}

fn meets(section: &Section, it: &Laid) -> bool {
    it.placed.bolt == section.bolt && it.placed.along < section.to && section.from < it.end()
}

/// Whether a piece lies partly on cloth that is turned over or under it, and is not cut on the fold.
fn is_caught(cloth: &Cloth, section: &Section, it: &Laid) -> bool {
    let (left, right) = (it.placed.across, it.right());
    let catches = |fold: Length, reached: bool| reached && !is_image(it, fold);
    section
        .left_fold
        .is_some_and(|fold| catches(fold, left < fold + fold))
        || section.right_fold.is_some_and(|fold| {
            let turned_over = cloth.usable_width - fold;
            catches(fold, right > fold - turned_over)
        })
}

/// Whether a piece is cut on a fold through its middle, to the nanometre.
fn is_image(it: &Laid, fold: Length) -> bool {
    let over = (it.right() - fold) - (fold - it.placed.across);
    it.piece.on_fold && (over.is_zero() || over.nanometres() == 1)
}
