//! The names that an expectation speaks of.

use pelmet_diagnostics::Span;
use pelmet_syntax::tree::Term;

use super::declare::Item;
use super::refer::Referring;
use super::table::{DefinitionId, Meaning};
use crate::kind::Kind;
use crate::size::{JOB, Size};

/// A name and where it stands.
type Named<'t> = (&'t str, Span);

impl<'t> Referring<'t, '_> {
    /// The names before a size: `[WINDOW] PANEL`, `FABRIC`, `WINDOW` or `job`.
    pub(super) fn subject(&mut self, names: &'t [Term], size: Option<Size>) {
        let names = names.iter();
        let names: Vec<Named<'t>> = names
            .filter_map(|term| Some((term.word()?, term.span)))
            .collect();
        match names.as_slice() {
            [(JOB, span)] => self.refer(*span, Meaning::Word(JOB)),
            [named] => self.subject_alone(*named, size),
            [window, panel] => self.panel_in_window(*window, *panel),
            _ => {}
        }
    }

    fn panel_in_window(&mut self, (window, window_span): Named<'t>, (panel, span): Named<'t>) {
        let Some(window) = self.item_of_name(Kind::Window, window, window_span) else {
            return;
        };
        let treatment = self.declared.treatment_of(window);
        if let Some(panel) = treatment.and_then(|it| self.declared.panel_of(it, panel)) {
            self.refer(span, Meaning::Definition(panel));
        }
    }

    /// A name alone is that of what has such a size. A panel of that name may hang in several
    /// treatments: then all of them are meant.
    fn subject_alone(&mut self, (name, span): Named<'t>, size: Option<Size>) {
        let is_window = self.declared.named(Kind::Window, name).is_some();
        match size {
            Some(Size::Fabric(_) | Size::Cost) => {
                self.item_of_name(Kind::Fabric, name, span);
            }
            Some(Size::Window(_)) => {
                self.item_of_name(Kind::Window, name, span);
            }
            Some(Size::Weight) if is_window => {
                self.item_of_name(Kind::Window, name, span);
            }
            Some(Size::Panel(_) | Size::Weight) => {
                for panel in self.panels_hung(name) {
                    self.refer(span, Meaning::Definition(panel));
                }
            }
            Some(Size::Quote) | None => {}
        }
    }

    /// The panels of this name in the treatments that windows have.
    fn panels_hung(&self, name: &str) -> Vec<DefinitionId> {
        let treatments = self.hung.get_or_init(|| self.declared.treatments_hung());
        let panel = |treatment: &&Item<'t>| self.declared.panel_of(treatment, name);
        treatments.iter().filter_map(panel).collect()
    }
}
