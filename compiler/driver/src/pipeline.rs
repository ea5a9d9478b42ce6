//! From a design's text to its packet.

use pelmet_design::{Design, Project, load, resolve};
use pelmet_diagnostics::{Diagnostic, Diagnostics, FileId, Severity, Sources, Span, codes};
use pelmet_packet::{ExpectationMet, Packet};

use crate::assemble::{Parts, assemble};
use crate::expectations::Judge;
use crate::findings::tell;
use crate::layout::{LaidCloth, Settled, lay_all, no_packet};
use crate::purpose::Purpose;
use crate::watch::{ClothWatch, unwatched};

/// The most errors that are told of one design.
pub const MAXIMUM_ERRORS_TOLD: usize = 200;

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

/// A design with every sum done and nothing put together yet.
#[derive(Debug)]
pub struct Checked {
    /// Every text that was read.
    pub sources: Sources,
    /// The main file, if it could be read at all.
    pub main: Option<FileId>,
    /// Everything found, in the order of the texts.
    pub diagnostics: Vec<Diagnostic>,
    pub(crate) answer: Option<Answer>,
}

/// All that a packet is put together from.
#[derive(Debug)]
pub(crate) struct Answer {
    pub(crate) design: Design,
    settled: Settled,
    pub(crate) laid: Vec<LaidCloth>,
    expectations: Vec<ExpectationMet>,
}

/// Checks a design: reads it, resolves it, does the sums, lays every cloth out and holds the answer
/// against what the design expects.
///
/// No step stops at an error, so that one run finds all of them; and what is wrong is told once, where
/// it was made, so whatever depends on it stays silent.
pub fn check(main: &str, project: &dyn Project) -> Checked {
    check_with(main, project, &mut unwatched)
}

/// Checks a design as [`check`] does. A layout is searched only where a diagnostic depends on how much is
/// bought; `watch` is told how far each search has come, and may break it off.
pub fn check_with(main: &str, project: &dyn Project, watch: &mut ClothWatch<'_>) -> Checked {
    check_for(Purpose::Diagnostics, main, project, watch)
}

fn check_for(
    purpose: Purpose,
    main: &str,
    project: &dyn Project,
    watch: &mut ClothWatch<'_>,
) -> Checked {
    let loaded = load(main, project);
    let resolved = resolve(&loaded);
    let mut found = Diagnostics::new();
    found.extend(loaded.diagnostics);
    found.extend(resolved.diagnostics);
    let answer = answer(resolved.design, purpose, watch, &mut found);
    Checked {
        diagnostics: up_to_limit(found.settle(&loaded.sources)),
        sources: loaded.sources,
        main: loaded.main,
        answer,
    }
}

/// Builds the packet of a design that has been checked and found sound.
pub fn build(main: &str, project: &dyn Project) -> Built {
    build_with(1, main, project, &mut unwatched)
}

/// Builds the packet of a design as [`build`] does, and looks for layouts that buy less with so many
/// times the usual effort. `watch` is told how far each search has come, and may break it off; the
/// best layout found until then is used.
pub fn build_with(
    effort: u32,
    main: &str,
    project: &dyn Project,
    watch: &mut ClothWatch<'_>,
) -> Built {
    let mut checked = check_for(Purpose::Packet { effort }, main, project, watch);
    let answer = checked.answer.as_ref();
    let packet = answer.and_then(|answer| answer.packet(&checked.diagnostics));
    if let (Some(answer), None) = (answer, &packet) {
        checked.diagnostics.push(no_packet(&answer.design));
    }
    Built {
        sources: checked.sources,
        main: checked.main,
        diagnostics: checked.diagnostics,
        packet,
    }
}

/// The diagnostics up to the last error that is told; so many more would hide the first.
fn up_to_limit(mut diagnostics: Vec<Diagnostic>) -> Vec<Diagnostic> {
    let mut errors = diagnostics
        .iter()
        .enumerate()
        .filter(|(_, diagnostic)| diagnostic.severity == Severity::Error);
    if let Some((first_untold, diagnostic)) = errors.nth(MAXIMUM_ERRORS_TOLD) {
        let here = diagnostic.primary().map(Span::start_of);
        diagnostics.truncate(first_untold);
        diagnostics.push(codes::too_many_mistakes(here, MAXIMUM_ERRORS_TOLD));
    }
    diagnostics
}

/// Does all that follows from a resolved design; nothing where anything found is an error.
fn answer(
    design: Design,
    purpose: Purpose,
    watch: &mut ClothWatch<'_>,
    found: &mut Diagnostics,
) -> Option<Answer> {
    let settled = Settled::of(&design, purpose, watch);
    let broken = tell(&design, &settled.findings, found);
    let laid = lay_all(&design, &settled, purpose, watch, found);
    let expectations = Judge {
        design: &design,
        work: &settled.work,
        laid: &laid,
        broken: &broken,
        is_sound: !found.has_errors(),
    }
    .judge(found);
    design.suppress(found);
    (!found.has_errors()).then_some(Answer {
        design,
        settled,
        laid,
        expectations,
    })
}

impl Answer {
    /// The packet; nothing where the compiler itself is at fault.
    fn packet(&self, diagnostics: &[Diagnostic]) -> Option<Packet> {
        let design = &self.design;
        assemble(Parts {
            title: &design.title,
            style: design.style,
            currency: design.currency.as_deref(),
            job: self.settled.job(design),
            work: &self.settled.work,
            laid: &self.laid,
            diagnostics,
            expectations: self.expectations.clone(),
        })
    }
}
