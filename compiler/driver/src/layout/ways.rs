//! The ways in which the pieces of a cloth may lie, and what another cloth in its place would take.

use std::ops::ControlFlow;

use pelmet_bolt::{LayingFinding, Layout};
use pelmet_design::Design;
use pelmet_diagnostics::Severity;
use pelmet_measure::Length;
use pelmet_model::{Fabric, Finding, Railroad};
use pelmet_workroom::work;

use super::cloth_to_lay::cloths_to_lay;

/// The ways that are compared; of two that buy the same, the first is taken.
const WAYS: [Railroad; 3] = [Railroad::WhereTooWide, Railroad::Never, Railroad::Always];

/// One of the ways that were compared, and what it buys.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct WayCompared {
    /// When pieces lie along the cloth.
    pub railroad: Railroad,
    /// What is bought.
    pub bought: Length,
}

/// Settles how the pieces of every cloth lie that leaves it to what saves; gives what was compared, for
/// each cloth of the job.
pub(crate) fn settle_ways(design: &mut Design) -> Vec<Vec<WayCompared>> {
    let mut compared = Vec::new();
    for cloth in 0..design.job.fabrics.len() {
        let fabric = design.job.fabrics.get(cloth);
        let ways = fabric.map_or_else(Vec::new, |fabric| ways_of(design, cloth, fabric));
        if let (Some(best), Some(fabric)) = (best(&ways), design.job.fabrics.get_mut(cloth)) {
            fabric.railroad = best;
        }
        compared.push(ways);
    }
    compared
}

/// A fabric for the place of one of the job's cloths, with the way its pieces lie settled.
pub(crate) fn settled(design: &Design, cloth: usize, fabric: Fabric) -> Fabric {
    let best = best(&ways_of(design, cloth, &fabric));
    Fabric {
        railroad: best.unwrap_or(fabric.railroad),
        ..fabric
    }
}

fn best(ways: &[WayCompared]) -> Option<Railroad> {
    let best = ways.iter().min_by_key(|way| way.bought);
    best.map(|way| way.railroad)
}

/// What each way buys that is possible; none where nothing is left to what saves.
fn ways_of(design: &Design, cloth: usize, fabric: &Fabric) -> Vec<WayCompared> {
    if fabric.railroad != Railroad::WhereItSaves {
        return Vec::new();
    }
    let compared = |railroad| {
        let fabric = Fabric {
            railroad,
            ..fabric.clone()
        };
        let bought = tried(design, cloth, fabric).ok()?.layout.bought;
        Some(WayCompared { railroad, bought })
    };
    WAYS.into_iter().filter_map(compared).collect()
}

/// A fabric in the place of one of the job's cloths, laid out.
pub(crate) struct Tried {
    pub(crate) fabric: Fabric,
    pub(crate) layout: Layout,
}

/// Why another fabric cannot take the place of a cloth.
pub(crate) enum Unfit {
    /// Nothing is cut from it.
    NotUsed,
    /// A mistake found by the sums, in words.
    Found(String),
    /// The pieces cannot be laid.
    CannotBeLaid(LayingFinding),
}

/// Lays a job out, with the usual effort, with `fabric` in the place of one of its cloths.
pub(crate) fn tried(design: &Design, cloth: usize, fabric: Fabric) -> Result<Tried, Unfit> {
    let mut job = design.job.clone();
    let place = job.fabrics.get_mut(cloth).ok_or(Unfit::NotUsed)?;
    place.clone_from(&fabric);
    let (work, findings) = work(&job);
    if let Some(error) = findings.iter().find_map(|finding| error(design, finding)) {
        return Err(Unfit::Found(error));
    }
    let cloths = cloths_to_lay(&job, &work, &design.style);
    let to_lay = cloths.iter().find(|to_lay| to_lay.fabric == cloth);
    let layout = to_lay
        .ok_or(Unfit::NotUsed)?
        .lay(1, &mut |_| ControlFlow::Continue(()))
        .map_err(Unfit::CannotBeLaid)?;
    Ok(Tried { fabric, layout })
}

/// What a finding says, if it is a mistake.
fn error(design: &Design, finding: &Finding) -> Option<String> {
    let report = design.report(finding);
    (report.severity == Severity::Error).then_some(report.title)
}
