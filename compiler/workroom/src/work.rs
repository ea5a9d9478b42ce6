//! The whole job worked out, window by window, panel by panel.

use pelmet_measure::{Length, Mass};
use pelmet_model::{
    Fabric, Finding, Job, Matter, Motif, NotionOrder, PanelMade, PanelOrder, Pleating, RodChecked,
    RodUnknown, Subject, SupportOrder, WindowMade, WindowOrder, Work,
};

use crate::hang::fill::{fills, shares};
use crate::hang::returns::return_marks;
use crate::hang::rod_check::{check_rod, sags};
use crate::hang::row::{RowFinding, check_hanging, cover, length_to_cover, quantities};
use crate::hang::weight::window_weight;
use crate::panel::PanelTask;
use crate::pleat::width::lay_widths;

/// Works out a job: every panel with its sizes, folds, pieces and marks, and everything there is to
/// say against the order.
///
/// A panel that cannot be worked out is left empty and the rest goes on, so that one reading of the
/// findings shows every mistake; what depends on a mistake stays silent about it.
pub fn work(job: &Job) -> (Work, Vec<Finding>) {
    let mut findings = Vec::new();
    let windows = job.windows.iter().enumerate().map(|(window, order)| {
        let mut bench = Bench {
            order,
            fabrics: &job.fabrics,
            notions: &job.notions,
            window,
            findings: &mut findings,
        };
        bench.make_window()
    });
    (
        Work {
            windows: windows.collect(),
        },
        findings,
    )
}

/// Where one window is worked out.
struct Bench<'a> {
    order: &'a WindowOrder,
    fabrics: &'a [Fabric],
    notions: &'a [NotionOrder],
    window: usize,
    findings: &'a mut Vec<Finding>,
}

impl Bench<'_> {
    fn make_window(&mut self) -> WindowMade {
        self.report_row(check_hanging(self.order));
        let pleatings = self.lay_all();
        let widths = finished_widths(&pleatings);
        let (coverage, found) = cover(self.order, &widths);
        self.report_row(found);
        let quantities = quantities(self.order);
        let panels = pleatings.into_iter().zip(quantities).enumerate();
        let panels: Vec<Option<PanelMade>> = panels
            .map(|(panel, (pleating, quantity))| self.make_panel(panel, pleating, quantity))
            .collect();
        let weight = window_weight(&panels);
        WindowMade {
            weight,
            rod_check: self.check_rod(weight),
            panels,
            to_cover: coverage.to_cover,
            covered: coverage.covered,
            joins: coverage.joins,
        }
    }

    /// What the rod makes of the weight that hangs from it.
    fn check_rod(&mut self, weight: Option<Mass>) -> Option<Result<RodChecked, RodUnknown>> {
        let SupportOrder::Rod(rod) = &self.order.support else {
            return None;
        };
        let checked = check_rod(rod, weight);
        let found = checked.ok().and_then(|check| sags(&check));
        self.report_row(found.map(|matter| (None, matter)).into_iter().collect());
        Some(checked)
    }

    /// Lays out every panel across its width: those that know theirs, then those that fill what
    /// the row leaves.
    fn lay_all(&mut self) -> Vec<Option<Pleating>> {
        let count = self.order.panels.len();
        let lay_known = |panel| {
            if fills(self.order, panel) {
                None
            } else {
                self.lay(panel, None)
            }
        };
        let mut pleatings: Vec<Option<Pleating>> = (0..count).map(lay_known).collect();
        let to_cover = length_to_cover(self.order);
        match shares(self.order, to_cover, &finished_widths(&pleatings)) {
            Ok(shares) => {
                for (panel, share) in shares {
                    let laid = self.lay(panel, Some(share));
                    if let Some(pleating) = pleatings.get_mut(panel) {
                        *pleating = laid;
                    }
                }
            }
            Err(found) => self.report_row(vec![found]),
        }
        pleatings
    }

    fn lay(&mut self, panel: usize, share: Option<Length>) -> Option<Pleating> {
        let order = self.order.panels.get(panel)?;
        let face = self.fabrics.get(order.face)?;
        let laid = lay_widths(order, self.fabrics, face, share);
        laid.map_err(|matter| self.report(panel, [matter])).ok()
    }

    fn make_panel(
        &mut self,
        panel: usize,
        pleating: Option<Pleating>,
        quantity: u32,
    ) -> Option<PanelMade> {
        let order = self.order.panels.get(panel)?;
        let motif = self.order.motif.filter(|motif| motif.panel == panel);
        let task = PanelTask {
            order,
            fabrics: self.fabrics,
            notions: self.notions,
            support: &self.order.support,
            quantity,
            motif: motif.map(|motif| motif.below_heading),
            print_level: self.print_level(order),
        };
        let mut matters = Vec::new();
        let mut made = task.make(pleating, &mut matters);
        self.report(panel, matters);
        if let Some(made) = &mut made {
            let marks = return_marks(self.order, panel, made);
            made.marks.extend(marks);
        }
        made
    }

    /// How far below the heading line the print of a panel's face is held. Faces cut from the cloth
    /// that carries the motif are held at its height, so that neighbours match across the row.
    fn print_level(&self, panel: &PanelOrder) -> Length {
        let carries = |motif: &Motif| {
            let carrier = self.order.panels.get(motif.panel);
            carrier.is_some_and(|carrier| carrier.face == panel.face)
        };
        let motif = self.order.motif.filter(carries);
        motif.map_or(Length::ZERO, |motif| motif.below_heading)
    }

    fn report(&mut self, panel: usize, matters: impl IntoIterator<Item = Matter>) {
        let subject = Subject::Panel {
            window: self.window,
            panel,
        };
        let told = matters
            .into_iter()
            .map(|matter| Finding { subject, matter });
        self.findings.extend(told);
    }

    fn report_row(&mut self, found: Vec<RowFinding>) {
        let window = self.window;
        let told = found.into_iter().map(|(panel, matter)| Finding {
            subject: panel.map_or(Subject::Window(window), |panel| Subject::Panel {
                window,
                panel,
            }),
            matter: matter.into(),
        });
        self.findings.extend(told);
    }
}

fn finished_widths(pleatings: &[Option<Pleating>]) -> Vec<Option<Length>> {
    pleatings
        .iter()
        .map(|pleating| Some(pleating.as_ref()?.finished))
        .collect()
}
