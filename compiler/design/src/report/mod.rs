//! What the workroom found, told at the places it was written.
//!
//! A finding names windows, panels and steps by number. Here each is led back to its text, its
//! lengths are printed in the house style, and what to write instead is worked out; the words are
//! those of the codes.

mod making;
mod outline;
mod piece;
mod place;
mod pleats;
mod row;
mod row_sums;

use pelmet_diagnostics::Diagnostic;
use pelmet_model::{Finding, Matter, Subject};
use place::WindowPlace;

use crate::Design;

impl Design {
    /// Tells a finding of the workroom: at every place that takes part, with the sum that shows
    /// why and with what to write instead.
    #[must_use]
    pub fn report(&self, finding: &Finding) -> Diagnostic {
        let (window, panel) = match finding.subject {
            Subject::Window(window) => (window, None),
            Subject::Panel { window, panel } => (window, Some(panel)),
        };
        let window = WindowPlace::new(self, window);
        let panel = window.panel(panel);
        let mut diagnostic = match &finding.matter {
            Matter::Pleats(matter) => pleats::report(panel, matter),
            Matter::Outline(matter) => outline::report(panel, matter),
            Matter::Row(matter) => row::report(window, matter),
            Matter::Piece(matter) => piece::report(panel, matter),
            Matter::Making(matter) => making::report(panel, matter),
        };
        // What the maker wrote goes before what the library says: there it can be mended.
        diagnostic
            .labels
            .sort_by_key(|label| self.source_map.library.contains(&label.span.file));
        diagnostic
    }
}
