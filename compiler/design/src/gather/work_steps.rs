//! The block `steps` of a making method.

use pelmet_diagnostics::codes;
use pelmet_syntax::tree::{Entry, Separator};

use super::Gathering;
use super::block::Parts;
use crate::item::WorkStep;
use crate::scope::Written;

/// A step that would do, for help.
const EXAMPLE: &str = "cut: \"Cut the face {face size}.\"";

impl<'t> Gathering<'t, '_> {
    /// `steps { cut: "…", fuse: "…" }`, each step on a line of its own.
    pub(super) fn work_steps(&mut self, entry: &'t Entry, parts: &mut Parts<'t>) {
        let told = self.diagnostics.len();
        let key_span = entry.head.span;
        match (&entry.block, parts.key_spans.insert("steps", key_span)) {
            _ if entry.head.is_broken() => parts.damaged = true,
            (_, Some(earlier)) => {
                let report = codes::property_twice(key_span, earlier, "steps");
                self.diagnostics.push(report);
            }
            (Some(block), None) => {
                for inner in &block.entries {
                    self.work_step(inner, parts);
                }
            }
            (None, None) => {
                let report = codes::block_missing(entry.span, "`steps`", EXAMPLE);
                self.diagnostics.push(report);
            }
        }
        parts.damaged |= self.diagnostics.len() > told;
    }

    fn work_step(&mut self, entry: &'t Entry, parts: &mut Parts<'t>) {
        if entry.is_broken() {
            parts.damaged = true;
            return;
        }
        let has_colon = matches!(entry.separator, Some(Separator::Colon | Separator::Equals));
        let span = entry.head.span;
        let (Some(name), true, None) = (entry.key(), has_colon, &entry.block) else {
            self.diagnostics.push(codes::not_understood(entry.span));
            return;
        };
        let earlier = parts.work_steps.iter().find(|step| step.name == name);
        if let Some(earlier) = earlier {
            let report = codes::property_twice(span, earlier.name_span, &name);
            self.diagnostics.push(report);
            return;
        }
        let Some(said) = &entry.value else {
            let example = format!("{name}: \"Say here what to do.\"");
            self.diagnostics
                .push(codes::property_empty(span, &name, &example));
            return;
        };
        parts.work_steps.push(WorkStep {
            name,
            name_span: span,
            said: Written::phrases(said),
        });
    }
}
