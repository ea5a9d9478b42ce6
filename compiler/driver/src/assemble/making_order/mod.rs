//! The making order of one panel: the steps of its making method, then those every panel needs.
//!
//! A method that has a step named like one of the latter says it in its own words; only the hanging
//! and its check are always added.

mod bench;
mod cloth_check;
mod draft;
mod fold;
mod hang;
mod heading;
mod said;

use pelmet_model::CautionKind;
use pelmet_packet::{OrderStep, WorkTime};

use super::count::ordinal;
use super::printer::quotient;
use super::quote::{in_hours_and_minutes, minutes_at};
pub(super) use bench::Bench;
use draft::{Added, Draft};

/// The steps of a panel, numbered.
pub(super) fn making_order(bench: Bench<'_>) -> Vec<OrderStep> {
    let drafts = drafts(bench).into_iter().enumerate();
    drafts
        .map(|(index, draft)| OrderStep {
            number: ordinal(index),
            time: time(bench, &draft.name),
            cautions: names(&draft.cautions),
            name: draft.name,
            words: draft.words,
        })
        .collect()
}

fn drafts(bench: Bench<'_>) -> Vec<Draft> {
    let own = bench.hung.made.steps.iter();
    let own: Vec<Draft> = own.map(|step| said::draft(bench, step)).collect();
    let says_itself = |draft: &Draft| own.iter().any(|step| step.name == draft.name);
    let is_new = |draft: &Draft| !says_itself(draft);
    let added = [
        fold::fold(bench),
        Some(fold::measure(bench)),
        heading::heading(bench),
    ];
    let added: Vec<Draft> = added.into_iter().flatten().filter(is_new).collect();
    let mark = fold::mark(bench).filter(is_new);
    let unsaid = own.is_empty().then(|| said::unsaid(bench));
    let (made, finished) = up_to_marks(own);
    cloth_check::cloth_check(bench)
        .into_iter()
        .chain(unsaid)
        .chain(made)
        .chain(mark)
        .chain(finished)
        .chain(added)
        .chain([hang::hang(bench), hang::check(bench)])
        .collect()
}

/// The minutes that the method's `work` gives for a step of this name.
fn time(bench: Bench<'_>, name: &str) -> Option<WorkTime> {
    let work = &bench.hung.order.making.work;
    let step = work.iter().find(|step| step.name == name)?;
    let minutes = minutes_at(step, bench.hung.made)?;
    Some(WorkTime {
        minutes: quotient(minutes),
        text: in_hours_and_minutes(minutes),
    })
}

/// A method's own steps, parted before the first that needs what is marked on the made-up panel.
fn up_to_marks(mut steps: Vec<Draft>) -> (Vec<Draft>, Vec<Draft>) {
    let needs_marks = |step: &Draft| Added::NEED_MARKS.iter().any(|it| it.name() == step.name);
    let at = steps.iter().position(needs_marks).unwrap_or(steps.len());
    let finished = steps.split_off(at);
    (steps, finished)
}

fn names(cautions: &[CautionKind]) -> Vec<String> {
    let names = cautions.iter().map(|caution| caution.word().to_owned());
    names.collect()
}
