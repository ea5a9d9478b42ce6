//! A panel on the bench.

use pelmet_measure::Length;
use pelmet_model::{Fabric, SupportOrder, WindowOrder};

use crate::assemble::hung_panel::HungPanel;
use crate::assemble::printer::Printer;

/// A panel with all that its steps speak of.
#[derive(Copy, Clone)]
pub(crate) struct Bench<'a> {
    pub(crate) hung: &'a HungPanel<'a>,
    pub(crate) window: &'a WindowOrder,
    /// Where the joins of the row lie, from its left end.
    pub(crate) joins: &'a [Length],
    pub(crate) fabrics: &'a [Fabric],
    pub(crate) printer: &'a Printer<'a>,
}

impl Bench<'_> {
    /// A length to mark or to check, in words.
    pub(super) fn mark(self, length: Length) -> String {
        self.printer.mark(length).text
    }

    /// The word for what the panel hangs from.
    pub(super) fn support_word(self) -> &'static str {
        match self.window.support {
            SupportOrder::Rod(_) => "rod",
            SupportOrder::Board(_) => "board",
        }
    }

    /// Whether the panel is wider flat than it hangs without a pleat to take up the difference.
    pub(super) fn is_gathered(self) -> bool {
        let made = self.hung.made;
        made.pleating.pleats.is_empty() && made.finished < made.flat
    }
}
