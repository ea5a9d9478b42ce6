//! From a design's text to its packet.

mod broken;
mod expected;
mod judge;
mod layout;
mod panel_asked;

use pelmet_design::{Design, Project, load, resolve};
use pelmet_diagnostics::{Diagnostic, Diagnostics, FileId, Sources};
use pelmet_workroom::{Work, work};

use crate::lay::LaidCloth;
use crate::packet::Expectation;
use crate::{Packet, Parts, assemble};
use broken::Broken;
use judge::Judge;

/// What came of a design.
#[derive(Debug)]
pub struct Built {
    /// Every text that was read.
    pub sources: Sources,
    /// The main file, if it could be read at all.
    pub main: Option<FileId>,
    /// Everything found, in the order of the texts.
    pub diagnostics: Vec<Diagnostic>,
    /// The packet; exactly where nothing found is an error.
    pub packet: Option<Packet>,
}

/// Builds the packet of a design: reads it, resolves it, does the sums, lays every cloth out and
/// holds the answer against what the design expects.
///
/// No step stops at a mistake, so that one run finds all of them; and a mistake is told once, where
/// it was made, so whatever depends on it stays silent.
pub fn build(main: &str, project: &dyn Project) -> Built {
    let loaded = load(main, project);
    let resolved = resolve(&loaded);
    let design = resolved.design;
    let mut found = loaded.diagnostics;
    found.extend(resolved.diagnostics);
    let packet = make(&design, &mut found);
    let mut diagnostics = Diagnostics::new();
    diagnostics.extend(found);
    Built {
        diagnostics: diagnostics.settle(&loaded.sources),
        sources: loaded.sources,
        main: loaded.main,
        packet,
    }
}

/// Does all that follows from a resolved design; the packet where nothing found is an error.
fn make(design: &Design, found: &mut Vec<Diagnostic>) -> Option<Packet> {
    let (work, findings) = work(&design.job);
    found.extend(findings.iter().map(|finding| design.report(finding)));
    let laid = layout::lay_all(design, &work, found);
    let broken = Broken::of(design, &findings, found);
    let expectations = Judge {
        design,
        work: &work,
        laid: &laid,
        broken: &broken,
    }
    .judge(found);
    design.accept(found);
    if Broken::any(found) {
        return None;
    }
    let packet = assembled(design, &work, &laid, found, expectations);
    if packet.is_none() {
        found.push(layout::no_packet(design));
    }
    packet
}

fn assembled(
    design: &Design,
    work: &Work,
    laid: &[LaidCloth],
    found: &[Diagnostic],
    expectations: Vec<Expectation>,
) -> Option<Packet> {
    assemble(Parts {
        title: &design.title,
        style: design.style,
        currency: design.currency.as_deref(),
        job: &design.job,
        work,
        laid,
        diagnostics: found,
        expectations,
    })
}
