//! Laying every cloth out, and what there is to say against it.

use pelmet_bolt::{CheckerFinding, LayingFinding, Layout};
use pelmet_design::{Design, PanelKey};
use pelmet_diagnostics::{Diagnostic, Diagnostics, Span, codes};
use pelmet_measure::Length;

use super::cloth_to_lay::{ClothToLay, CutPiece, cloths_to_lay};
use super::laid_cloth::LaidCloth;
use super::ways::{Decision, Settled};
use crate::purpose::{Purpose, expects_length};
use crate::watch::{ClothWatch, Stage, watched};
use crate::words::part_of_panel;

/// Lays every cloth that something is cut from. Every layout is checked by the independent checker
/// before anything is made of it.
///
/// Where only the diagnostics are wanted, a cloth of which nothing is expected is laid without a search.
pub(crate) fn lay_all(
    design: &Design,
    settled: &Settled,
    purpose: Purpose,
    watch: &mut ClothWatch<'_>,
    found: &mut Diagnostics,
) -> Vec<LaidCloth> {
    let cloths = cloths_to_lay(settled.job(design), &settled.work, &design.style);
    let mut laid_cloths = Vec::new();
    for to_lay in cloths {
        let cloth = ClothPlace {
            design,
            to_lay: &to_lay,
        };
        let effort = purpose.effort(expects_length(design, to_lay.fabric));
        let decision = settled.decision(to_lay.fabric);
        let laid = match decision.and_then(|decision| decision.laid_out(&to_lay, effort)) {
            Some(layout) => Ok(layout),
            None => {
                let mut watch = watched(Stage::Laying, cloth.name(), &design.style, watch);
                to_lay.lay(effort, &mut watch)
            }
        };
        match laid {
            Err(finding) => {
                let told = found.has_errors();
                found.extend(cloth.cannot_be_laid(&finding, told));
            }
            Ok(layout) => {
                found.extend(cloth.not_as_promised(&to_lay.findings(&layout)));
                laid_cloths.push(LaidCloth::of(to_lay, layout, decision));
            }
        }
    }
    laid_cloths
}

impl Decision {
    /// The layout of what is to be laid, where it was laid out as thoroughly to decide.
    fn laid_out(&self, to_lay: &ClothToLay, effort: u32) -> Option<Layout> {
        let is_laid = self.effort >= effort && self.taken.to_lay == *to_lay;
        is_laid.then(|| self.taken.layout.clone())
    }
}

impl LaidCloth {
    fn of(to_lay: ClothToLay, layout: Layout, decision: Option<&Decision>) -> Self {
        let stopped_early = decision.is_some_and(|decision| decision.stopped_early);
        Self {
            to_lay,
            layout: Layout {
                stopped_early: layout.stopped_early || stopped_early,
                ..layout
            },
            ways: decision.map_or_else(Vec::new, |decision| decision.compared.clone()),
        }
    }
}

/// The sums are without an error and there is no packet all the same.
pub(crate) fn no_packet(design: &Design) -> Diagnostic {
    let left_out = String::from("a panel was left out of the sums, and nothing was said of it");
    codes::layout_not_sound(&design.title, None, vec![left_out])
}

/// A cloth being laid, with the way back to its text.
struct ClothPlace<'a> {
    design: &'a Design,
    to_lay: &'a ClothToLay,
}

impl ClothPlace<'_> {
    /// Tells why the pieces cannot be laid. What only follows from an error told already (a piece longer
    /// than the bolt) is not told again.
    fn cannot_be_laid(&self, finding: &LayingFinding, told: bool) -> Option<Diagnostic> {
        match *finding {
            LayingFinding::TooMany { count, limit } => Some(self.too_many(count, limit)),
            LayingFinding::HeldBeyondWidth {
                piece,
                across,
                width,
                usable,
            } => self.no_room(piece, across, width, usable),
            LayingFinding::HeldBeyondBolt {
                piece,
                along,
                length,
                bolt,
            } => self.no_room(piece, along, length, bolt),
            LayingFinding::NoUsableWidth
            | LayingFinding::ClothOutOfRange
            | LayingFinding::PieceOutOfRange { .. }
            | LayingFinding::OutlineOutOfRange { .. }
            | LayingFinding::FlawOutOfRange { .. }
            | LayingFinding::TooWide { .. }
            | LayingFinding::TooLong { .. }
            | LayingFinding::PhaseNeedsRepeat { .. } => {
                (!told).then(|| self.not_sound(vec![finding.to_string()]))
            }
        }
    }

    /// Tells what the checker found; nothing where it found nothing.
    fn not_as_promised(&self, findings: &[CheckerFinding]) -> Option<Diagnostic> {
        let findings: Vec<String> = findings
            .iter()
            .take(FINDINGS_TOLD)
            .map(CheckerFinding::to_string)
            .collect();
        (!findings.is_empty()).then(|| self.not_sound(findings))
    }

    fn too_many(&self, count: u64, limit: u32) -> Diagnostic {
        codes::TooManyPieces {
            name: self.name(),
            fabric: self.place(),
            count,
            limit,
        }
        .into()
    }

    fn not_sound(&self, findings: Vec<String>) -> Diagnostic {
        codes::layout_not_sound(self.name(), self.place(), findings)
    }

    fn no_room(
        &self,
        piece: usize,
        start: Length,
        size: Length,
        room: Length,
    ) -> Option<Diagnostic> {
        let cut = self.to_lay.cuts.get(piece)?;
        let (style, end) = (self.design.style, start + size);
        let no_room = codes::PrintLeavesNoRoom {
            piece: self.in_words(cut)?,
            cloth: self.named_in(cut)?,
            fabric: self.place(),
            start: style.plain(start),
            size: style.plain(size),
            end: style.plain(end),
            room: style.plain(room),
            beyond: style.plain(end - room),
        };
        Some(no_room.into())
    }

    /// A piece in a sentence.
    fn in_words(&self, cut: &CutPiece) -> Option<String> {
        let window = self.design.job.windows.get(cut.window)?;
        let panel = window.panels.get(cut.panel)?;
        Some(part_of_panel(cut.layer.word(), &panel.name, &window.name))
    }

    /// Where the panel names this cloth.
    fn named_in(&self, cut: &CutPiece) -> Option<Span> {
        let window = self.design.source_map.windows.get(cut.window)?;
        Some(
            window
                .panels
                .get(cut.panel)?
                .item
                .property_or_name(PanelKey::of_layer(cut.layer.kind())),
        )
    }

    fn name(&self) -> &str {
        let fabric = self.design.job.fabrics.get(self.to_lay.fabric);
        fabric.map_or("", |fabric| &fabric.name)
    }

    fn place(&self) -> Option<Span> {
        self.design
            .source_map
            .fabrics
            .get(self.to_lay.fabric)
            .copied()
    }
}

/// How many findings of one layout are told; a layout that is wrong is wrong in many places.
const FINDINGS_TOLD: usize = 5;
