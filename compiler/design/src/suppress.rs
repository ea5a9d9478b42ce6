//! Accepting warnings: read here, applied when every pass has had its say.

use pelmet_diagnostics::{Diagnostic, Diagnostics, Severity, Span, codes, did_you_mean};
use pelmet_syntax::tree::{Phrase, Term, TermKind};

use crate::design::{Design, Suppression};
use crate::gather::WrittenSuppression;
use crate::reader::Reader;

impl Design {
    /// Marks the warnings that the maker accepts, and reports what was accepted for nothing.
    ///
    /// A design with errors in it has not shown all its warnings, so nothing is said of those
    /// that did not arise.
    pub fn suppress(&self, diagnostics: &mut Diagnostics) {
        let errors = diagnostics.has_errors();
        for accepted in &self.suppressions {
            let mut found = false;
            for diagnostic in diagnostics
                .iter_mut()
                .filter(|diagnostic| accepted.is_for(diagnostic))
            {
                diagnostic.accepted = Some(accepted.reason.clone());
                found = true;
            }
            if !found && !errors {
                diagnostics.push(codes::nothing_to_accept(accepted.span, &accepted.code));
            }
        }
    }
}

impl Suppression {
    fn is_for(&self, diagnostic: &Diagnostic) -> bool {
        diagnostic.severity == Severity::Warning
            && diagnostic.code.slug == self.code
            && diagnostic
                .labels
                .iter()
                .any(|label| within(label.span, self.within))
    }
}

fn within(inner: Span, outer: Span) -> bool {
    inner.file == outer.file && outer.start <= inner.start && inner.end <= outer.end
}

/// Reads `accept CODE: "reason"` lines.
pub(crate) fn read_suppressions<'t>(
    reader: &mut Reader<'t>,
    suppressions: &[WrittenSuppression<'t>],
) -> Vec<Suppression> {
    suppressions
        .iter()
        .filter_map(|suppression| read_suppression(reader, suppression))
        .collect()
}

fn read_suppression<'t>(
    reader: &mut Reader<'t>,
    suppression: &WrittenSuppression<'t>,
) -> Option<Suppression> {
    let entry = suppression.entry;
    if entry.is_broken() {
        return None;
    }
    let head = entry
        .head
        .phrases
        .first()
        .map(|phrase| phrase.terms.as_slice());
    let reason = entry.value.as_ref().map(|value| value.phrases.as_slice());
    let (Some([_, code]), Some([Phrase { terms, .. }]), None) = (head, reason, &entry.block) else {
        reader.report(codes::accept_unclear(entry.span));
        return None;
    };
    let (
        Some(slug),
        [
            Term {
                kind: TermKind::Text(reason),
                ..
            },
        ],
    ) = (code.word(), terms.as_slice())
    else {
        reader.report(codes::accept_unclear(entry.span));
        return None;
    };
    let warnings = codes::ALL
        .iter()
        .filter(|code| code.severity == Severity::Warning);
    match codes::by_slug(slug) {
        None => {
            let suggestion = did_you_mean(slug, warnings.map(|code| code.slug));
            reader.report(codes::warning_unknown(code.span, slug, suggestion));
            None
        }
        Some(known) if known.severity != Severity::Warning => {
            reader.report(codes::cannot_be_accepted(code.span, slug));
            None
        }
        Some(_) => Some(Suppression {
            span: entry.span,
            code: slug.to_owned(),
            reason: reason.clone(),
            within: suppression.within,
        }),
    }
}
