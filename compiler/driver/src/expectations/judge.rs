//! Holding the answer against what the design expects of it.

use pelmet_design::{
    Design, Expectation as Line, Expected, ExpectedSubject, FabricSize, JobSize, PanelSize,
    WindowSize,
};
use pelmet_diagnostics::{Diagnostic, PlacedText, Span, codes};
use pelmet_measure::{Length, Style};
use pelmet_model::Work;
use pelmet_packet::Expectation;

use super::bound::{bound_in_words, out_of_bound};
use super::broken::Broken;
use super::panel::PanelAsked;
use crate::assemble::{Printer, cost, quoted, weight};
use crate::layout::LaidCloth;
use crate::sequence::window_order;

/// The answer of a design, to be held against its expectations.
pub(crate) struct Judge<'a> {
    pub(crate) design: &'a Design,
    pub(crate) work: &'a Work,
    pub(crate) laid: &'a [LaidCloth],
    pub(crate) broken: &'a Broken,
}

/// A size that came out, and why.
pub(super) struct CameOut {
    /// The size in a sentence.
    pub(super) what: String,
    pub(super) value: Expected,
    /// The value as printed.
    pub(super) text: String,
    /// What made it so.
    pub(super) cause: Option<(Span, &'static str)>,
    pub(super) sum: Vec<String>,
}

impl Judge<'_> {
    /// How every expectation came out, by its wording; those that are not met are reported.
    pub(crate) fn judge(&self, found: &mut Vec<Diagnostic>) -> Vec<Expectation> {
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

    /// The report of an expectation that at least one size does not meet: the first is told in
    /// full, the others in a line each.
    fn not_met(&self, line: &Line, sizes: &[CameOut]) -> Option<Diagnostic> {
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

    /// The report of an expectation that cannot be judged, since something it follows from is not
    /// stated.
    fn not_known(&self, line: &Line, sizes: &[CameOut]) -> Option<Diagnostic> {
        let (what, property) = match line.subject {
            ExpectedSubject::Panel { size, .. } => match size {
                PanelSize::Weight => ("weight", "weight"),
                PanelSize::ThickestStack => ("thickest stack", "thickness"),
                _ => return None,
            },
            ExpectedSubject::Window { .. } | ExpectedSubject::Job(JobSize::Weight) => {
                ("weight", "weight")
            }
            ExpectedSubject::Fabric { .. } | ExpectedSubject::Job(JobSize::Cost) => {
                ("cost", "price")
            }
            ExpectedSubject::Job(JobSize::Quote) => ("quote", "price"),
        };
        let is_silent = sizes.is_empty() && self.broken.spares_cloth();
        let not_known = codes::ExpectationNotKnown {
            line: line.span,
            what,
            property,
        };
        is_silent.then(|| not_known.into())
    }

    /// A value in the unit its size is told in.
    fn printed(&self, subject: &ExpectedSubject, value: Expected) -> String {
        let style = &self.design.style;
        match (value, subject) {
            (Expected::Length(length), ExpectedSubject::Fabric { .. }) => of_cloth(length, style),
            (Expected::Length(length), _) => style.plain(length),
            (Expected::Count(count), _) => count.to_string(),
            (Expected::Weight(weight), _) => style.mass(weight),
            (Expected::Money(money), _) => self.printer().amount(money).text,
        }
    }

    fn printer(&self) -> Printer<'_> {
        Printer {
            style: self.design.style,
            currency: self.design.currency.as_deref(),
        }
    }

    /// The sizes an expectation looks at; none where a mistake told elsewhere keeps them from
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

    fn of_panels(&self, only: Option<usize>, name: &str, size: PanelSize) -> Vec<CameOut> {
        let mut sizes = Vec::new();
        let windows = window_order(&self.design.job).into_iter();
        for window in windows.filter(|window| only.is_none_or(|only| only == *window)) {
            let panels = self
                .design
                .job
                .windows
                .get(window)
                .map(|order| order.panels.iter());
            for (panel, order) in panels.into_iter().flatten().enumerate() {
                let size = (order.name == name).then(|| self.of_panel(window, panel, size));
                sizes.extend(size.flatten());
            }
        }
        sizes
    }

    fn of_panel(&self, window: usize, panel: usize, size: PanelSize) -> Option<CameOut> {
        if !self.broken.spares_panel(window, panel) {
            return None;
        }
        let order = self.design.job.windows.get(window)?;
        let made = self.work.windows.get(window)?.panels.get(panel)?.as_ref()?;
        let way = self.design.ways.windows.get(window)?.panels.get(panel)?;
        let asked = PanelAsked {
            order: order.panels.get(panel)?,
            made,
            way,
            style: self.design.style,
        };
        asked.came_out(size, &order.name)
    }

    fn of_fabric(&self, fabric: usize, size: FabricSize) -> Option<CameOut> {
        let name = &self.design.job.fabrics.get(fabric)?.name;
        if !self.broken.spares_cloth() {
            return None;
        }
        let style = self.design.style;
        let laid = self.laid.iter().find(|laid| laid.to_lay.fabric == fabric);
        let (exact, bought) = laid.map_or_else(Default::default, |laid| {
            (laid.layout.exact, laid.layout.bought)
        });
        if size == FabricSize::Cost {
            return self.of_cost(fabric, bought);
        }
        let (word, length, text) = match size {
            FabricSize::Bought | FabricSize::Cost => {
                ("length bought of", bought, style.bolt(bought))
            }
            FabricSize::Exact => ("exact length of", exact, style.cut(exact)),
        };
        let pieces = laid.map_or(0, |laid| laid.layout.placed.len());
        let sum = format!(
            "{pieces} to cut take {}, bought as {}",
            style.cut(exact),
            style.bolt(bought)
        );
        Some(CameOut {
            what: format!("the {word} `{name}`"),
            value: Expected::Length(length),
            text,
            cause: self
                .design
                .ways
                .fabrics
                .get(fabric)
                .map(|span| (*span, "of this cloth")),
            sum: vec![sum],
        })
    }

    fn of_cost(&self, fabric: usize, bought: Length) -> Option<CameOut> {
        let cloth = self.design.job.fabrics.get(fabric)?;
        let money = cost(cloth.price.as_ref()?, bought)?;
        let text = self.printer().amount(money).text;
        Some(CameOut {
            what: format!("the cost of `{}`", cloth.name),
            sum: vec![format!(
                "{} bought = {text}",
                self.design.style.bolt(bought)
            )],
            value: Expected::Money(money),
            text,
            cause: self
                .design
                .ways
                .fabrics
                .get(fabric)
                .map(|span| (*span, "of this cloth")),
        })
    }

    fn of_job(&self, size: JobSize) -> Option<CameOut> {
        if !self.broken.spares_cloth() {
            return None;
        }
        let (what, value) = match size {
            JobSize::Weight => ("weight", Expected::Weight(weight(self.work)?)),
            JobSize::Cost | JobSize::Quote => {
                let quote = quoted(&self.design.job, self.work, self.laid, &self.printer())?;
                match size {
                    JobSize::Quote => ("quote", Expected::Money(quote.asked)),
                    _ => ("cost", Expected::Money(quote.cost)),
                }
            }
        };
        Some(CameOut {
            what: format!("the {what} of the job"),
            value,
            text: self.printed(&ExpectedSubject::Job(size), value),
            cause: None,
            sum: Vec::new(),
        })
    }

    fn of_window(&self, window: usize, size: WindowSize) -> Option<CameOut> {
        if size == WindowSize::Weight {
            return self.of_window_weight(window);
        }
        if !self.broken.spares_window(window) {
            return None;
        }
        let order = self.design.job.windows.get(window)?;
        let made = self.work.windows.get(window)?;
        let way = self.design.ways.windows.get(window)?;
        let style = self.design.style;
        let widths = order.row.iter().filter_map(|panel| {
            let made = made.panels.get(*panel)?.as_ref()?;
            Some(style.plain(made.finished))
        });
        let widths = widths.collect::<Vec<String>>();
        let overlaps = if order.overlap.is_zero() || made.joins.is_empty() {
            String::new()
        } else {
            format!(
                " - {} x {} overlap",
                made.joins.len(),
                style.plain(order.overlap)
            )
        };
        let sum = format!(
            "{}{overlaps} = {}",
            widths.join(" + "),
            style.plain(made.covered)
        );
        let sum = if widths.len() > 1 {
            vec![sum]
        } else {
            Vec::new()
        };
        Some(CameOut {
            what: format!("the length covered at `{}`", order.name),
            value: Expected::Length(made.covered),
            text: style.plain(made.covered),
            cause: Some((way.property("row"), "covered by this row")),
            sum,
        })
    }
}

impl Judge<'_> {
    fn of_window_weight(&self, window: usize) -> Option<CameOut> {
        if !self.broken.spares_window(window) {
            return None;
        }
        let order = self.design.job.windows.get(window)?;
        let made = self.work.windows.get(window)?;
        let style = self.design.style;
        let each = order.panels.iter().zip(&made.panels);
        let each = each.filter_map(|(order, made)| {
            let made = made.as_ref()?;
            let weight = style.mass(made.weight?);
            Some(format!("{} x `{}` at {weight}", made.quantity, order.name))
        });
        let weight = made.weight?;
        Some(CameOut {
            what: format!("the weight of `{}`", order.name),
            value: Expected::Weight(weight),
            text: style.mass(weight),
            cause: None,
            sum: vec![format!(
                "{} = {}",
                each.collect::<Vec<String>>().join(" + "),
                style.mass(weight)
            )],
        })
    }
}

/// How an expectation came out: each size once, though several panels share it. One that could not
/// be judged says nothing.
fn came_out(line: &Line, sizes: &[CameOut]) -> Option<Expectation> {
    let mut texts: Vec<&str> = sizes.iter().map(|size| size.text.as_str()).collect();
    texts.sort_unstable();
    texts.dedup();
    (!texts.is_empty()).then(|| Expectation {
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
