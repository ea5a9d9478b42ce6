//! Holding the answer against what the design expects of it.

use pelmet_design::{
    Design, Expectation, Expected, ExpectedSubject, FabricSize, JobSize, PanelSize, WindowSize,
};
use pelmet_diagnostics::{Diagnostic, Diagnostics, PlacedText, codes};
use pelmet_measure::{Length, Style};
use pelmet_model::Work;
use pelmet_packet::ExpectationMet;

use super::bound::{bound_in_words, out_of_bound};
use super::broken::Broken;
use super::came_out::CameOut;
use crate::assemble::Printer;
use crate::layout::LaidCloth;

/// The answer of a design, to be held against its expectations.
pub(crate) struct Judge<'a> {
    pub(crate) design: &'a Design,
    pub(crate) work: &'a Work,
    pub(crate) laid: &'a [LaidCloth],
    /// What has an error of its own.
    pub(crate) broken: &'a Broken,
    /// Whether there is no error anywhere; a length of cloth follows from every panel.
    pub(crate) is_sound: bool,
}

impl Judge<'_> {
    /// How every expectation came out, by its wording; of those that are not met a diagnostic tells.
    pub(crate) fn judge(&self, found: &mut Diagnostics) -> Vec<ExpectationMet> {
        let mut judged = Vec::new();
        for line in &self.design.expectations {
            let sizes = self.sizes(&line.subject);
            found.extend(self.not_known(line, &sizes));
            found.extend(self.not_met(line, &sizes));
            judged.extend(came_out(line, &sizes));
        }
        judged.sort_by(|one, other| one.wording.cmp(&other.wording));
        judged
    }

    /// The diagnostic of an expectation that at least one size does not meet: the first is told in
    /// full, the others in a line each.
    fn not_met(&self, line: &Expectation, sizes: &[CameOut]) -> Option<Diagnostic> {
        let printed = |value| self.printed(&line.subject, value);
        let mut unmet = sizes.iter().filter_map(|size| {
            let out = out_of_bound(size.value, line.bound)?;
            Some((size, out, out.in_words(printed)))
        });
        let (first, by, out) = unmet.next()?;
        let expected = bound_in_words(line.bound, printed);
        let others = unmet.map(|(size, _, out)| format!("{} is {}, {out}", size.what, size.text));
        let by = by.sum(first.value, &first.text, printed);
        let sum = first.sum.iter().cloned();
        let sum = sum.chain([by]).chain(others).collect();
        let not_met = codes::ExpectationNotMet {
            expected: PlacedText::new(line.span, expected),
            what: &first.what,
            actual: &first.text,
            difference: out,
            cause: first.cause.map(|(span, text)| PlacedText::new(span, text)),
            sum,
        };
        Some(not_met.into())
    }

    /// The diagnostic of an expectation that cannot be judged, since something it follows from is not
    /// stated.
    fn not_known(&self, line: &Expectation, sizes: &[CameOut]) -> Option<Diagnostic> {
        let (what, property) = match line.subject {
            ExpectedSubject::Panel { size, .. } => unstated_of_panel(size)?,
            ExpectedSubject::Window { size, .. } => match size {
                WindowSize::Weight => ("weight", "weight"),
                WindowSize::Covered => return None,
            },
            ExpectedSubject::Fabric { size, .. } => match size {
                FabricSize::Cost => ("cost", "price"),
                FabricSize::Bought | FabricSize::Exact => return None,
            },
            ExpectedSubject::Job(size) => match size {
                JobSize::Weight => ("weight", "weight"),
                JobSize::Cost => ("cost", "price"),
                JobSize::Quote => ("quote", "price"),
            },
        };
        let is_silent = sizes.is_empty() && self.is_sound;
        let not_known = codes::ExpectationNotKnown {
            line: line.span,
            what,
            property,
        };
        is_silent.then(|| not_known.into())
    }

    /// A value in the unit its size is told in.
    pub(super) fn printed(&self, subject: &ExpectedSubject, value: Expected) -> String {
        let style = &self.design.style;
        match (value, subject) {
            (Expected::Length(length), ExpectedSubject::Fabric { .. }) => of_cloth(length, style),
            (Expected::Length(length), _) => style.plain(length),
            (Expected::Count(count), _) => count.to_string(),
            (Expected::Weight(weight), _) => style.mass(weight),
            (Expected::Money(money), _) => self.printer().amount(money).text,
        }
    }

    pub(super) fn printer(&self) -> Printer<'_> {
        Printer {
            style: self.design.style,
            currency: self.design.currency.as_deref(),
        }
    }

    /// The sizes an expectation looks at; none where an error told elsewhere keeps them from
    /// being judged.
    fn sizes(&self, subject: &ExpectedSubject) -> Vec<CameOut> {
        match subject {
            ExpectedSubject::Panel {
                window,
                panel,
                size,
            } => self.of_panels(*window, panel, *size),
            ExpectedSubject::Fabric { fabric, size } => {
                self.of_fabric(*fabric, *size).into_iter().collect()
            }
            ExpectedSubject::Window { window, size } => {
                self.of_window(*window, *size).into_iter().collect()
            }
            ExpectedSubject::Job(size) => self.of_job(*size).into_iter().collect(),
        }
    }
}

/// What a size of a panel is called, and the property it follows from, where that may be left unstated.
fn unstated_of_panel(size: PanelSize) -> Option<(&'static str, &'static str)> {
    match size {
        PanelSize::Weight => Some(("weight", "weight")),
        PanelSize::ThickestStack => Some(("thickest stack", "thickness")),
        PanelSize::FinishedWidth
        | PanelSize::FlatWidth
        | PanelSize::CutWidth
        | PanelSize::CutLength
        | PanelSize::MadeLength
        | PanelSize::Drop
        | PanelSize::Pleats
        | PanelSize::Layers
        | PanelSize::Tape => None,
    }
}

/// How an expectation came out: each size once, though several panels share it. One that could not
/// be judged says nothing.
fn came_out(line: &Expectation, sizes: &[CameOut]) -> Option<ExpectationMet> {
    let mut texts: Vec<&str> = sizes.iter().map(|size| size.text.as_str()).collect();
    texts.sort_unstable();
    texts.dedup();
    (!texts.is_empty()).then(|| ExpectationMet {
        wording: line.wording.clone(),
        came_out: texts.join(", "),
    })
}

/// A length of cloth in the unit it is bought in, where that says it exactly.
fn of_cloth(length: Length, style: &Style) -> String {
    if length.round_up_to(style.buying_step()) == length {
        style.bolt(length)
    } else {
        style.plain(length)
    }
}
