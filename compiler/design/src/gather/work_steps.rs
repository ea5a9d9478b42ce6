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
                self.report(codes::PropertyTwice {
                    second: key_span,
                    first: earlier,
                    property: "steps",
                });
            }
            (Some(block), None) => {
                for inner in &block.entries {
                    self.work_step(inner, parts);
                }
            }
            (None, None) => {
                self.report(codes::BlockMissing {
                    span: entry.span,
                    item: "`steps`",
                    line: EXAMPLE,
                });
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
            self.report(codes::not_understood(entry.span));
            return;
        };
        let earlier = parts.work_steps.iter().find(|step| step.name == name);
        if let Some(earlier) = earlier {
            self.report(codes::PropertyTwice {
                second: span,
                first: earlier.name_span,
                property: &name,
            });
            return;
        }
        let Some(said) = &entry.value else {
            let example = format!("{name}: \"Say here what to do.\"");
            self.report(codes::PropertyEmpty {
                span,
                property: &name,
                line: &example,
            });
            return;
        };
        parts.work_steps.push(WorkStep {
            name,
            name_span: span,
            said: Written::phrases(said),
        });
    }
}
