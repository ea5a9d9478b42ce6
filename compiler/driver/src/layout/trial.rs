//! A job with another fabric in the place of one of its cloths.

use pelmet_bolt::{LayingFinding, Layout};
use pelmet_design::Design;
use pelmet_diagnostics::Severity;
use pelmet_model::{Fabric, Finding, Job};
use pelmet_workroom::work;

use super::cloth_to_lay::{ClothToLay, cloths_to_lay};
use crate::watch::{ClothWatch, Stage, watched};

/// A job with another fabric in the place of one of its cloths, and nothing against it in the sums.
pub(crate) struct Trial<'d> {
    design: &'d Design,
    pub(crate) fabric: Fabric,
    /// What the sums found, none of it an error.
    pub(crate) findings: Vec<Finding>,
    /// What is cut from the fabric.
    to_lay: ClothToLay,
}

/// A trial that is laid out.
#[derive(Debug)]
pub(crate) struct Tried {
    pub(crate) fabric: Fabric,
    pub(crate) to_lay: ClothToLay,
    pub(crate) layout: Layout,
}

/// Why another fabric cannot take the place of a cloth.
pub(crate) enum Unfit {
    /// Nothing is cut from it.
    NotUsed,
    /// An error found by the sums, in words.
    Found(String),
    /// The pieces cannot be laid.
    CannotBeLaid(LayingFinding),
}

impl<'d> Trial<'d> {
    /// Does the sums of a job with `fabric` in the place of one of its cloths.
    ///
    /// # Errors
    ///
    /// Why the fabric cannot take that place.
    pub(crate) fn of(
        design: &'d Design,
        job: &Job,
        cloth: usize,
        fabric: Fabric,
    ) -> Result<Self, Unfit> {
        let mut job = job.clone();
        let place = job.fabrics.get_mut(cloth).ok_or(Unfit::NotUsed)?;
        place.clone_from(&fabric);
        let (work, findings) = work(&job);
        if let Some(error) = findings.iter().find_map(|finding| error(design, finding)) {
            return Err(Unfit::Found(error));
        }
        let cloths = cloths_to_lay(&job, &work, &design.style).into_iter();
        let mut cut = cloths.filter(|to_lay| to_lay.fabric == cloth);
        Ok(Self {
            design,
            fabric,
            findings,
            to_lay: cut.next().ok_or(Unfit::NotUsed)?,
        })
    }

    /// Lays out what is cut from the fabric, with so many times the usual effort.
    ///
    /// # Errors
    ///
    /// Why the pieces cannot be laid.
    pub(crate) fn laid(self, effort: u32, watch: &mut ClothWatch<'_>) -> Result<Tried, Unfit> {
        let Self {
            design,
            fabric,
            to_lay,
            ..
        } = self;
        let layout = to_lay.lay(
            effort,
            &mut watched(Stage::Comparing, &fabric.name, &design.style, watch),
        );
        let layout = layout.map_err(Unfit::CannotBeLaid)?;
        Ok(Tried {
            fabric,
            to_lay,
            layout,
        })
    }
}

/// What a finding is told as, if it is an error.
fn error(design: &Design, finding: &Finding) -> Option<String> {
    let diagnostic = design.report(finding);
    (diagnostic.severity == Severity::Error).then_some(diagnostic.title)
}
