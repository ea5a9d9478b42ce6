//! Why a rule cannot be laid out, and what would do instead.

use std::cmp::Reverse;

use pelmet_measure::Length;
use pelmet_model::{MAXIMUM_PLEATS, PleatMatter, PleatRule};

use super::counts::{Counts, settled, written_for};
use super::halves::Halves;
use super::lay_out::lay_out;
use super::piece::Measure;
use super::reach::{Reach, is_within_limits, panel_pleats};
use super::rule::turn;
use super::strip::{Steps, written};

/// Refuses a rule that comes to too many pleats whatever its open counts.
pub(super) fn too_many_pleats(
    steps: &Steps,
    choices: &[Counts],
    halves: Halves,
) -> Result<(), PleatMatter> {
    let least = settled(steps, choices.first().map_or(&[], Vec::as_slice));
    if is_within_limits(&written(&least, steps.turn), halves) {
        return Ok(());
    }
    let mut so_far = Vec::new();
    let over = least.iter().find(|step| {
        so_far.extend(written(std::slice::from_ref(step), steps.turn));
        !is_within_limits(&so_far, halves)
    });
    let step = over.map_or(0, |step| step.number);
    Err(PleatMatter::TooManyPleats {
        step,
        limit: MAXIMUM_PLEATS,
    })
}

/// What to say of widths that nothing the rule allows will meet.
pub(super) fn nothing_meets(
    rule: &PleatRule,
    steps: &Steps,
    choices: &[Counts],
    finished: Option<Length>,
    flat: Option<Length>,
) -> PleatMatter {
    let halves = Halves::of(rule);
    let search = Search {
        steps,
        choices,
        halves,
    };
    match (finished, flat) {
        (Some(finished), Some(flat)) => match lay_out(rule, Some(finished), None) {
            Err(matter) => matter,
            Ok(alone) => PleatMatter::WidthsContradict {
                flat,
                finished,
                take_up: search
                    .nearest_take_up(finished, flat)
                    .unwrap_or(alone.flat - alone.finished),
                turn: turn(rule),
            },
        },
        (Some(finished), None) => search.no_fit(finished, true, halves.finished_wanted(finished).0),
        (None, Some(flat)) => search.no_fit(flat, false, Measure::Flat),
        (None, None) => PleatMatter::WidthMissing,
    }
}

struct Search<'rule> {
    steps: &'rule Steps,
    choices: &'rule [Counts],
    halves: Halves,
}

impl Search<'_> {
    /// What each choice reaches, with the pleats it makes on the panel.
    fn reaches(&self, measure: Measure) -> impl Iterator<Item = (Reach, u32)> {
        let written = self
            .choices
            .iter()
            .map(|counts| written_for(self.steps, counts));
        let sewable = written.filter(|written| is_within_limits(written, self.halves));
        sewable.map(move |written| {
            let pleats = panel_pleats(&written, self.halves);
            (
                Reach::of(&written, measure),
                u32::try_from(pleats).unwrap_or(u32::MAX),
            )
        })
    }

    /// The nearest widths below and above that work, each with the fewest pleats that give it.
    fn no_fit(&self, wanted: Length, finished: bool, measure: Measure) -> PleatMatter {
        let (mut below, mut above) = (None, None);
        for (reach, pleats) in self.reaches(measure) {
            let most = reach
                .most
                .map(|most| self.halves.panel_width(measure, most));
            let least = self.halves.panel_width(measure, reach.least);
            if let Some(most) = most.filter(|most| *most < wanted) {
                below = below.max(Some((most, Reverse(pleats))));
            }
            if least > wanted {
                above = above.into_iter().chain([(least, pleats)]).min();
            }
        }
        let below = below.map(|(width, Reverse(pleats))| (width, pleats));
        PleatMatter::NoFit {
            wanted,
            finished,
            below,
            above,
        }
    }

    /// The take-up that comes nearest the one that would join both widths; `None` where that one
    /// can be made and it is the plain cloth that does not fit.
    fn nearest_take_up(&self, finished: Length, flat: Length) -> Option<Length> {
        let wanted = flat - finished;
        let take_ups = self.reaches(Measure::TakeUp).map(|(reach, _)| {
            let least = self.halves.panel_take_up(reach.least);
            let most = self.halves.panel_take_up(reach.most.unwrap_or(reach.least));
            wanted.clamp(least, most.max(least))
        });
        take_ups
            .min_by_key(|take_up| (*take_up - wanted).abs())
            .filter(|take_up| *take_up != wanted)
    }
}
