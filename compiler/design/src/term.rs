//! What a term looks like, whatever it will mean.

use pelmet_diagnostics::{Diagnostic, Span, codes};
use pelmet_syntax::tree::{Term, TermKind};

/// The name that a term is, alone or with arguments.
pub(crate) fn name_of(term: &Term) -> Option<&str> {
    match &term.kind {
        TermKind::Name(name) => Some(name),
        TermKind::Call(call) => Some(&call.name.text),
        _ => None,
    }
}

/// The diagnostic of a bracket that was meant for the name before it and does not touch it.
pub(crate) fn bracket_apart(named: &Term, after: Option<&Term>) -> Option<Diagnostic> {
    let (name, after) = (named.word()?, after?);
    let is_bracket = matches!(after.kind, TermKind::Group(_) | TermKind::Point(_));
    is_bracket.then(|| {
        let gap = Span {
            start: named.span.end,
            end: after.span.start,
            ..named.span
        };
        codes::bracket_apart(gap, name)
    })
}

/// Where the name of a term stands, its arguments left out.
pub(crate) fn name_span(term: &Term) -> Span {
    match &term.kind {
        TermKind::Call(call) => call.name.span,
        _ => term.span,
    }
}
