//! The ways in which the pieces of a cloth may lie, and which of them is taken where that is left to
//! what saves.

use pelmet_design::Design;
use pelmet_model::{Fabric, Finding, Job, Railroad, Work};
use pelmet_workroom::work;

use super::laid_cloth::RailroadTried;
use super::trial::{Trial, Tried, Unfit};
use crate::purpose::{Purpose, USUAL, expects_length, expects_weight};
use crate::watch::{ClothWatch, unwatched};

/// The ways that are compared; of two that buy the same, the first is taken.
const WAYS: [Railroad; 3] = [Railroad::WhereTooWide, Railroad::Never, Railroad::Always];

/// How it was decided in which way the pieces of a cloth lie.
#[derive(Debug)]
pub(crate) struct Decision {
    /// The way that is taken, laid out.
    pub(crate) taken: Tried,
    /// All that were compared.
    pub(crate) compared: Vec<RailroadTried>,
    /// Whether a search was broken off; a whole one might have decided otherwise.
    pub(crate) stopped_early: bool,
    /// How many times the usual effort was spent on each way.
    pub(crate) effort: u32,
}

/// The sums of a design in which nothing is left to what saves.
#[derive(Debug)]
pub(crate) struct Settled {
    /// The job with the ways that were decided on; nothing where there was nothing to decide.
    job: Option<Job>,
    /// What was decided, for each cloth of the job.
    decisions: Vec<Option<Decision>>,
    pub(crate) work: Work,
    pub(crate) findings: Vec<Finding>,
}

impl Settled {
    /// Decides, cloth by cloth, in which way the pieces lie where the design leaves that to what saves,
    /// and does the sums of the job that comes of it.
    pub(crate) fn of(design: &Design, purpose: Purpose, watch: &mut ClothWatch<'_>) -> Self {
        let mut job: Option<Job> = None;
        let mut decisions = Vec::new();
        for (cloth, fabric) in design.job.fabrics.iter().enumerate() {
            let so_far = job.as_ref().unwrap_or(&design.job);
            let decision = decide(design, so_far, cloth, fabric, purpose, watch);
            if let Some(decision) = &decision {
                let job = job.get_or_insert_with(|| design.job.clone());
                if let Some(place) = job.fabrics.get_mut(cloth) {
                    place.clone_from(&decision.taken.fabric);
                }
            }
            decisions.push(decision);
        }
        let (work, findings) = work(job.as_ref().unwrap_or(&design.job));
        Self {
            job,
            decisions,
            work,
            findings,
        }
    }

    /// The job that was worked out.
    pub(crate) fn job<'s>(&'s self, design: &'s Design) -> &'s Job {
        self.job.as_ref().unwrap_or(&design.job)
    }

    /// What was decided of a cloth; nothing where nothing was left open.
    pub(crate) fn decision(&self, cloth: usize) -> Option<&Decision> {
        self.decisions.get(cloth)?.as_ref()
    }
}

/// Lays a job out, with the usual effort, with `fabric` in the place of one of its cloths; where that
/// is left to what saves, in the way that is decided on.
///
/// # Errors
///
/// Why the fabric cannot take that place.
pub(crate) fn tried(design: &Design, cloth: usize, fabric: &Fabric) -> Result<Tried, Unfit> {
    let purpose = Purpose::Packet { effort: USUAL };
    match decide(design, &design.job, cloth, fabric, purpose, &mut unwatched) {
        Some(decision) => Ok(decision.taken),
        None => {
            let trial = Trial::of(design, &design.job, cloth, fabric.clone())?;
            trial.laid(USUAL, &mut unwatched)
        }
    }
}

/// Lays a job out in every way that is possible with `fabric` in the place of one of its cloths, and
/// takes the one that buys least; nothing where the fabric leaves no choice, or none of them is
/// possible.
///
/// For diagnostics alone it is searched only where one of them depends on it, so that a check tells what
/// the packet would.
fn decide(
    design: &Design,
    job: &Job,
    cloth: usize,
    fabric: &Fabric,
    purpose: Purpose,
    watch: &mut ClothWatch<'_>,
) -> Option<Decision> {
    if fabric.railroad != Railroad::WhereItSaves {
        return None;
    }
    let trials: Vec<Trial<'_>> = WAYS
        .into_iter()
        .map(|railroad| Fabric {
            railroad,
            ..fabric.clone()
        })
        .filter_map(|fabric| Trial::of(design, job, cloth, fabric).ok())
        .collect();
    let is_told =
        expects_length(design, cloth) || expects_weight(design) || find_different(&trials);
    let effort = purpose.effort(is_told).min(USUAL);
    let tried: Vec<Tried> = trials
        .into_iter()
        .filter_map(|trial| trial.laid(effort, watch).ok())
        .collect();
    let compared = tried.iter().map(|tried| RailroadTried {
        railroad: tried.fabric.railroad,
        bought: tried.layout.bought,
    });
    Some(Decision {
        compared: compared.collect(),
        stopped_early: tried.iter().any(|tried| tried.layout.stopped_early),
        effort,
        taken: tried.into_iter().min_by_key(|tried| tried.layout.bought)?,
    })
}

/// Whether the sums find something in one way that they do not find in another.
fn find_different(trials: &[Trial<'_>]) -> bool {
    let mut neighbours = trials.iter().zip(trials.iter().skip(1));
    neighbours.any(|(one, other)| one.findings != other.findings)
}
