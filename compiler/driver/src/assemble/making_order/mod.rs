//! The making order of one panel: the steps of its making method, then those every panel needs.
//!
//! A method that has a step named like one of the latter says it in its own words; only the hanging
//! and its check are always added.

mod cloth_check;
mod fold;
mod hang;
mod heading;
mod said;

use pelmet_measure::Length;
use pelmet_model::{CautionKind, Fabric, Support, WindowOrder};
use pelmet_packet::{OrderStep, WorkTime};

use super::printer::{Printer, quotient};
use super::quote::{in_hours_and_minutes, minutes_at};
use super::{HungPanel, ordinal};

/// A step before it has its number.
pub(super) struct Draft {
    name: String,
    words: Vec<String>,
    cautions: Vec<CautionKind>,
}

/// A panel with all that its steps speak of.
#[derive(Copy, Clone)]
pub(super) struct Bench<'a> {
    pub(super) hung: &'a HungPanel<'a>,
    pub(super) window: &'a WindowOrder,
    /// Where the joins of the row lie, from its left end.
    pub(super) joins: &'a [Length],
    pub(super) fabrics: &'a [Fabric],
    pub(super) printer: &'a Printer<'a>,
}

impl Bench<'_> {
    /// The steps, numbered.
    pub(super) fn making_order(self) -> Vec<OrderStep> {
        let drafts = self.drafts().into_iter().enumerate();
        drafts
            .map(|(index, draft)| OrderStep {
                number: ordinal(index),
                time: self.time(&draft.name),
                cautions: names(&draft.cautions),
                name: draft.name,
                words: draft.words,
            })
            .collect()
    }

    fn drafts(self) -> Vec<Draft> {
        let own = self.hung.made.steps.iter();
        let own: Vec<Draft> = own.map(|step| said::draft(self, step)).collect();
        let says_itself = |draft: &Draft| own.iter().any(|step| step.name == draft.name);
        let is_new = |draft: &Draft| !says_itself(draft);
        let added = [
            fold::fold(self),
            Some(fold::measure(self)),
            heading::heading(self),
        ];
        let added: Vec<Draft> = added.into_iter().flatten().filter(is_new).collect();
        let mark = fold::mark(self).filter(is_new);
        let unsaid = own.is_empty().then(|| said::unsaid(self));
        let (made, finished) = up_to_marks(own);
        cloth_check::cloth_check(self)
            .into_iter()
            .chain(unsaid)
            .chain(made)
            .chain(mark)
            .chain(finished)
            .chain(added)
            .chain([hang::hang(self), hang::check(self)])
            .collect()
    }

    /// The minutes that the method's `work` gives for a step of this name.
    fn time(self, name: &str) -> Option<WorkTime> {
        let work = &self.hung.order.making.work;
        let step = work.iter().find(|step| step.name == name)?;
        let minutes = minutes_at(step, self.hung.made)?;
        Some(WorkTime {
            minutes: quotient(minutes),
            text: in_hours_and_minutes(minutes),
        })
    }

    /// A length to mark or to check, in words.
    fn mark(self, length: Length) -> String {
        self.printer.mark(length).text
    }

    /// The word for what the panel hangs from.
    fn support_word(self) -> &'static str {
        match self.window.support {
            Support::Rod(_) => "rod",
            Support::Board(_) => "board",
        }
    }

    /// Whether the panel is wider flat than it hangs without a pleat to take up the difference.
    fn is_gathered(self) -> bool {
        let made = self.hung.made;
        made.pleating.pleats.is_empty() && made.finished < made.flat
    }
}

/// The steps that are added to those a method says.
#[derive(Copy, Clone, PartialEq, Eq)]
enum Added {
    ClothCheck,
    MakeUp,
    Mark,
    Pleat,
    Gather,
    Measure,
    Heading,
    Hang,
    HangCheck,
}

impl Added {
    /// Those that need what is marked on the made-up panel.
    const NEED_MARKS: [Self; 4] = [Self::Pleat, Self::Gather, Self::Measure, Self::Heading];

    /// Its name, by which a method says it in words of its own.
    fn name(self) -> &'static str {
        match self {
            Self::ClothCheck => "cloth check",
            Self::MakeUp => "make up",
            Self::Mark => "mark",
            Self::Pleat => "pleat",
            Self::Gather => "gather",
            Self::Measure => "measure",
            Self::Heading => "heading",
            Self::Hang => "hang",
            Self::HangCheck => "hang check",
        }
    }
}

impl Draft {
    fn added(step: Added, words: Vec<String>, cautions: &[CautionKind]) -> Self {
        Self::new(step.name(), words, cautions)
    }

    fn new(name: &str, words: Vec<String>, cautions: &[CautionKind]) -> Self {
        Self {
            name: name.to_owned(),
            words,
            cautions: cautions.to_vec(),
        }
    }
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

/// Sentences one behind the other.
fn together(sentences: impl IntoIterator<Item = String>) -> String {
    sentences.into_iter().collect::<Vec<_>>().join(" ")
}
