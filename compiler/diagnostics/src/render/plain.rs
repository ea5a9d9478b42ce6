//! Diagnostics as plain lines, for screen readers, pipes and tools that look for `file:line:column`.

use super::visible::visible_line;
use crate::{Diagnostic, Label, Sources, Span};

/// Every diagnostic as one line and, indented below it, its other places, its sum and its help.
///
/// The lines are not broken, since whoever reads them breaks them.
pub fn plain(diagnostics: &[Diagnostic], sources: &Sources) -> String {
    diagnostics
        .iter()
        .map(|diagnostic| one(diagnostic, sources))
        .collect()
}

fn one(diagnostic: &Diagnostic, sources: &Sources) -> String {
    let below = (diagnostic
        .labels
        .iter()
        .map(|label| place_and_text(label, sources)))
    .chain(diagnostic.sum.iter().map(|line| format!("sum: {line}")))
    .chain(diagnostic.help.iter().map(|text| format!("help: {text}")))
    .chain(
        diagnostic
            .accepted
            .iter()
            .map(|reason| format!("accepted: {reason}")),
    );
    let below: String = below
        .map(|text| format!("    {}\n", visible_line(&text)))
        .collect();
    format!("{}\n{below}", first_line(diagnostic, sources))
}

fn first_line(diagnostic: &Diagnostic, sources: &Sources) -> String {
    let place = diagnostic
        .primary()
        .map(|span| format!("{}: ", place(span, sources)));
    let (severity, slug) = (diagnostic.severity.word(), diagnostic.code.slug);
    let line = format!(
        "{}{severity}: {} [{slug}]",
        place.unwrap_or_default(),
        diagnostic.title
    );
    visible_line(&line)
}

fn place_and_text(label: &Label, sources: &Sources) -> String {
    format!("{}: {}", place(label.span, sources), label.text)
}

fn place(span: Span, sources: &Sources) -> String {
    let place = sources.place(span);
    format!(
        "{}:{}:{}",
        sources.name(span.file),
        place.line,
        place.column
    )
}
