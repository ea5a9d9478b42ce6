//! The panels of a job as they hang.

use pelmet_model::{Job, PanelMade, PanelOrder, Work};

use crate::sequence::{hanging_order, window_order};

/// A panel that hangs: as ordered and as worked out.
pub(super) struct HungPanel<'a> {
    pub(super) window: usize,
    pub(super) window_name: &'a str,
    pub(super) index: usize,
    pub(super) order: &'a PanelOrder,
    pub(super) made: &'a PanelMade,
}

/// Every panel of the job, window by window, in the order it is met along the row.
pub(super) fn hung_panels<'a>(job: &'a Job, work: &'a Work) -> Option<Vec<HungPanel<'a>>> {
    let mut panels = Vec::new();
    for window in window_order(job) {
        let order = job.windows.get(window)?;
        let made = work.windows.get(window)?;
        for index in hanging_order(order) {
            panels.push(HungPanel {
                window,
                window_name: &order.name,
                index,
                order: order.panels.get(index)?,
                made: made.panels.get(index)?.as_ref()?,
            });
        }
    }
    Some(panels)
}
