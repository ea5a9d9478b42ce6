//! The sizes that an expectation can look at, each with what made it so.

use pelmet_design::{
    Expected, ExpectedSubject, FabricSize, JobSize, PanelSize, WindowKey, WindowSize,
};
use pelmet_diagnostics::Span;
use pelmet_measure::Length;
use pelmet_model::{WindowMade, WindowOrder};

use super::came_out::CameOut;
use super::judge::Judge;
use super::panel::PanelAsked;
use crate::assemble::{Asked, cost, quoted, weight};
use crate::sequence::window_order;

impl Judge<'_> {
    /// A size of every panel of a name, in one window or in all.
    pub(super) fn of_panels(
        &self,
        only: Option<usize>,
        name: &str,
        size: PanelSize,
    ) -> Vec<CameOut> {
        let windows = &self.design.job.windows;
        let mut sizes = Vec::new();
        for index in window_order(&self.design.job) {
            let looked_at = only.is_none_or(|only| only == index);
            let window = windows.get(index).filter(|_| looked_at);
            let panels = window.into_iter().flat_map(|window| &window.panels);
            let named = panels.enumerate().filter(|(_, panel)| panel.name == name);
            sizes.extend(named.filter_map(|(panel, _)| self.of_panel(index, panel, size)));
        }
        sizes
    }

    fn of_panel(&self, window: usize, panel: usize, size: PanelSize) -> Option<CameOut> {
        if !self.broken.spares_panel(window, panel) {
            return None;
        }
        let order = self.design.job.windows.get(window)?;
        let made = self.work.windows.get(window)?.panels.get(panel)?.as_ref()?;
        let way = self
            .design
            .source_map
            .windows
            .get(window)?
            .panels
            .get(panel)?;
        let asked = PanelAsked {
            order: order.panels.get(panel)?,
            made,
            way,
            style: self.design.style,
        };
        asked.came_out(size, &order.name)
    }

    /// What is bought of a cloth, or used of it, or what it costs.
    pub(super) fn of_fabric(&self, fabric: usize, size: FabricSize) -> Option<CameOut> {
        if !self.is_sound {
            return None;
        }
        let style = self.design.style;
        let laid = self.laid.iter().find(|laid| laid.to_lay.fabric == fabric);
        let layout = laid.map(|laid| &laid.layout);
        let bought = layout.map_or(Length::ZERO, |layout| layout.bought);
        let exact = layout.map_or(Length::ZERO, |layout| layout.exact);
        let (word, length, text) = match size {
            FabricSize::Cost => return self.of_cost(fabric, bought),
            FabricSize::Bought => ("length bought of", bought, style.bolt(bought)),
            FabricSize::Exact => ("exact length of", exact, style.cut(exact)),
        };
        let name = &self.design.job.fabrics.get(fabric)?.name;
        let sum = format!(
            "{} to cut take {}, bought as {}",
            layout.map_or(0, |layout| layout.placed.len()),
            style.cut(exact),
            style.bolt(bought)
        );
        Some(CameOut {
            what: format!("the {word} `{name}`"),
            value: Expected::Length(length),
            text,
            cause: self.of_this_cloth(fabric),
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
            cause: self.of_this_cloth(fabric),
        })
    }

    fn of_this_cloth(&self, fabric: usize) -> Option<(Span, &'static str)> {
        let place = self.design.source_map.fabrics.get(fabric)?;
        Some((*place, "of this cloth"))
    }

    /// What the whole job comes to.
    pub(super) fn of_job(&self, size: JobSize) -> Option<CameOut> {
        if !self.is_sound {
            return None;
        }
        let (what, value) = match size {
            JobSize::Weight => ("weight", Expected::Weight(weight(self.work)?)),
            JobSize::Cost => ("cost", Expected::Money(self.quoted()?.cost)),
            JobSize::Quote => ("quote", Expected::Money(self.quoted()?.asked)),
        };
        Some(CameOut {
            what: format!("the {what} of the job"),
            value,
            text: self.printed(&ExpectedSubject::Job(size), value),
            cause: None,
            sum: Vec::new(),
        })
    }

    fn quoted(&self) -> Option<Asked> {
        quoted(&self.design.job, self.work, self.laid, &self.printer())
    }

    /// What the row of a window covers, or what all that hangs there weighs.
    pub(super) fn of_window(&self, window: usize, size: WindowSize) -> Option<CameOut> {
        if !self.broken.spares_window(window) {
            return None;
        }
        let order = self.design.job.windows.get(window)?;
        let made = self.work.windows.get(window)?;
        match size {
            WindowSize::Covered => self.covered(window, order, made),
            WindowSize::Weight => self.window_weight(order, made),
        }
    }

    fn covered(&self, window: usize, order: &WindowOrder, made: &WindowMade) -> Option<CameOut> {
        let way = self.design.source_map.windows.get(window)?;
        let text = self.design.style.plain(made.covered);
        Some(CameOut {
            what: format!("the length covered at `{}`", order.name),
            value: Expected::Length(made.covered),
            cause: Some((
                way.item.property_or_name(WindowKey::Row),
                "covered by this row",
            )),
            sum: self.row_sum(order, made, &text).into_iter().collect(),
            text,
        })
    }

    /// The sum of a row of several panels: `20 in + 20 in - 1 x 2 in overlap = 38 in`.
    fn row_sum(&self, order: &WindowOrder, made: &WindowMade, covered: &str) -> Option<String> {
        let style = self.design.style;
        let hung = order.row.iter();
        let hung = hung.filter_map(|panel| made.panels.get(*panel)?.as_ref());
        let widths: Vec<String> = hung.map(|panel| style.plain(panel.finished)).collect();
        let overlaps = if order.overlap.is_zero() || made.joins.is_empty() {
            String::new()
        } else {
            let (joins, overlap) = (made.joins.len(), style.plain(order.overlap));
            format!(" - {joins} x {overlap} overlap")
        };
        (widths.len() > 1).then(|| format!("{}{overlaps} = {covered}", widths.join(" + ")))
    }

    fn window_weight(&self, order: &WindowOrder, made: &WindowMade) -> Option<CameOut> {
        let style = self.design.style;
        let each = order.panels.iter().zip(&made.panels);
        let each = each.filter_map(|(order, made)| {
            let made = made.as_ref()?;
            let weight = style.mass(made.weight?);
            Some(format!("{} x `{}` at {weight}", made.quantity, order.name))
        });
        let each: Vec<String> = each.collect();
        let weight = made.weight?;
        let text = style.mass(weight);
        Some(CameOut {
            what: format!("the weight of `{}`", order.name),
            value: Expected::Weight(weight),
            cause: None,
            sum: vec![format!("{} = {text}", each.join(" + "))],
            text,
        })
    }
}
