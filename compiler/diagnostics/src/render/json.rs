//! Diagnostics as JSON, for editors and other programs.

use serde::Serialize;

use super::summary::Counts;
use crate::{Diagnostic, Edit, Fix, Label, Sources, Span};

/// The version of the form; it rises when a field changes its meaning or goes.
const VERSION: u32 = 1;

/// Every diagnostic as one JSON object, in the order given.
///
/// Places have a byte offset, counted from zero in the whole file, and a line and column, counted
/// from one in characters. Text stands as it is; whoever shows it must take care of odd characters.
pub fn json(diagnostics: &[Diagnostic], sources: &Sources) -> String {
    let all = AllDiagnostics {
        version: VERSION,
        summary: Summary::of(diagnostics),
        diagnostics: diagnostics
            .iter()
            .map(|one| OneDiagnostic::of(one, sources))
            .collect(),
    };
    // Nothing in these types can fail to be written: no map with odd keys, no number that is none.
    let mut text = serde_json::to_string_pretty(&all).unwrap_or_default();
    text.push('\n');
    text
}

#[derive(Serialize)]
struct AllDiagnostics<'a> {
    version: u32,
    summary: Summary,
    diagnostics: Vec<OneDiagnostic<'a>>,
}

#[derive(Serialize)]
struct Summary {
    errors: usize,
    warnings: usize,
    accepted_warnings: usize,
    notes: usize,
}

#[derive(Serialize)]
struct OneDiagnostic<'a> {
    code: &'a str,
    severity: &'a str,
    title: &'a str,
    /// The first is where it is wrong.
    labels: Vec<OneLabel<'a>>,
    sum: &'a [String],
    help: &'a [String],
    fix: Option<OneFix<'a>>,
    accepted: Option<&'a str>,
}

#[derive(Serialize)]
struct OneLabel<'a> {
    #[serde(flatten)]
    place: OnePlace<'a>,
    text: &'a str,
}

#[derive(Serialize)]
struct OneFix<'a> {
    title: &'a str,
    edits: Vec<OneEdit<'a>>,
}

#[derive(Serialize)]
struct OneEdit<'a> {
    #[serde(flatten)]
    place: OnePlace<'a>,
    text: &'a str,
}

#[derive(Serialize)]
struct OnePlace<'a> {
    file: &'a str,
    start: Position,
    end: Position,
}

#[derive(Serialize)]
struct Position {
    byte: u32,
    line: usize,
    column: usize,
}

impl Summary {
    fn of(diagnostics: &[Diagnostic]) -> Summary {
        let Counts {
            errors,
            warnings,
            accepted,
            notes,
        } = Counts::of(diagnostics);
        Summary {
            errors,
            warnings,
            accepted_warnings: accepted,
            notes,
        }
    }
}

impl<'a> OneDiagnostic<'a> {
    fn of(diagnostic: &'a Diagnostic, sources: &'a Sources) -> OneDiagnostic<'a> {
        OneDiagnostic {
            code: diagnostic.code.slug,
            severity: diagnostic.severity.word(),
            title: &diagnostic.title,
            labels: diagnostic
                .labels
                .iter()
                .map(|label| OneLabel::of(label, sources))
                .collect(),
            sum: &diagnostic.sum,
            help: &diagnostic.help,
            fix: diagnostic.fix.as_ref().map(|fix| OneFix::of(fix, sources)),
            accepted: diagnostic.accepted.as_deref(),
        }
    }
}

impl<'a> OneLabel<'a> {
    fn of(label: &'a Label, sources: &'a Sources) -> OneLabel<'a> {
        OneLabel {
            place: OnePlace::of(label.span, sources),
            text: &label.text,
        }
    }
}

impl<'a> OneFix<'a> {
    fn of(fix: &'a Fix, sources: &'a Sources) -> OneFix<'a> {
        let edits = fix
            .edits
            .iter()
            .map(|edit| OneEdit::of(edit, sources))
            .collect();
        OneFix {
            title: &fix.title,
            edits,
        }
    }
}

impl<'a> OneEdit<'a> {
    fn of(edit: &'a Edit, sources: &'a Sources) -> OneEdit<'a> {
        OneEdit {
            place: OnePlace::of(edit.span, sources),
            text: &edit.text,
        }
    }
}

impl<'a> OnePlace<'a> {
    fn of(span: Span, sources: &'a Sources) -> OnePlace<'a> {
        let place = sources.place(span);
        OnePlace {
            file: sources.name(span.file),
            start: Position {
                byte: span.start,
                line: place.line,
                column: place.column,
            },
            end: Position {
                byte: span.end,
                line: place.end_line,
                column: place.end_column,
            },
        }
    }
}
