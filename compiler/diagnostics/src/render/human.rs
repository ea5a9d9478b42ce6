//! Diagnostics drawn for people: the lines of the design, with what is wrong written under them.

use std::fmt;

use miette::{GraphicalReportHandler, GraphicalTheme, LabeledSpan, SourceCode};

use super::excerpt::Excerpt;
use super::visible::visible_line;
use super::wrapped;
use crate::{Diagnostic, FileId, Label, Severity, Sources, TextPlace};

/// Of a diagnostic with more labels, only so many are drawn; nobody follows a circle of a hundred steps.
const MOST_LABELS: usize = 24;

/// How far a tab reaches when drawn, in columns.
const TAB_WIDTH: usize = 4;

/// What the place of reading can show.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct HumanOptions {
    /// The columns of the terminal.
    pub width: usize,
    /// Whether it shows colours.
    pub color: bool,
    /// Whether it shows line-drawing characters.
    pub unicode: bool,
}

impl Default for HumanOptions {
    fn default() -> HumanOptions {
        HumanOptions {
            width: 80,
            color: false,
            unicode: true,
        }
    }
}

/// Draws every diagnostic, with an empty line between two.
pub fn human(diagnostics: &[Diagnostic], sources: &Sources, options: HumanOptions) -> String {
    let drawn: Vec<String> = diagnostics
        .iter()
        .map(|diagnostic| one(diagnostic, sources, options))
        .collect();
    drawn.join("\n")
}

/// One diagnostic: its title, the places file by file, the sum, and what to do.
fn one(diagnostic: &Diagnostic, sources: &Sources, options: HumanOptions) -> String {
    let mut drawn = title(diagnostic, options);
    let labels = diagnostic
        .labels
        .get(..MOST_LABELS)
        .unwrap_or(&diagnostic.labels);
    for file in files_of(labels) {
        drawn.push_str(&snippets(file, labels, sources, options));
    }
    drawn.push_str(&below(diagnostic, options));
    drawn
}

fn title(diagnostic: &Diagnostic, options: HumanOptions) -> String {
    let severity = diagnostic.severity;
    let first = format!(
        "{}: ",
        painted(severity.word(), paint_of(severity), options)
    );
    let title = format!(
        "{} [{}]",
        visible_line(&diagnostic.title),
        diagnostic.code.slug
    );
    wrapped(&first, "  ", &title, options.width)
}

/// Everything that stands below the lines of the design.
fn below(diagnostic: &Diagnostic, options: HumanOptions) -> String {
    let left_out = diagnostic.labels.len().saturating_sub(MOST_LABELS);
    let more = (left_out > 0).then(|| format!("{left_out} more places are not drawn"));
    let accepted = diagnostic
        .accepted
        .iter()
        .map(|reason| ("accepted", reason));
    let notes = (more.iter().map(|text| ("note", text)))
        .chain(diagnostic.sum.iter().map(|line| ("sum", line)))
        .chain(diagnostic.help.iter().map(|text| ("help", text)))
        .chain(accepted);
    notes
        .map(|(word, text)| note(word, text, options))
        .collect()
}

fn note(word: &str, text: &str, options: HumanOptions) -> String {
    let first = format!("  {}: ", painted(word, CYAN, options));
    let rest = " ".repeat(word.len().saturating_add(4));
    wrapped(&first, &rest, &visible_line(text), options.width)
}

/// The files of some labels, in the order in which they first come.
fn files_of(labels: &[Label]) -> Vec<FileId> {
    let mut files = Vec::new();
    for label in labels {
        if !files.contains(&label.span.file) {
            files.push(label.span.file);
        }
    }
    files
}

/// The lines of one file, with its labels under them.
fn snippets(file: FileId, labels: &[Label], sources: &Sources, options: HumanOptions) -> String {
    let labels: Vec<&Label> = labels
        .iter()
        .filter(|label| label.span.file == file)
        .collect();
    let places: Vec<TextPlace> = labels
        .iter()
        .map(|label| sources.place(label.span))
        .collect();
    let excerpt = Excerpt::new(sources, file, &places);
    let spans = labels
        .iter()
        .zip(&places)
        .enumerate()
        .map(|(index, (label, place))| {
            let (text, span) = (Some(visible_line(&label.text)), excerpt.locate(*place));
            if index == 0 {
                LabeledSpan::new_primary_with_span(text, span)
            } else {
                LabeledSpan::new_with_span(text, span)
            }
        });
    let labels = spans.collect();
    drawn(&Snippets { excerpt, labels }, options)
}

/// The drawing library puts a title before the lines; ours stands already, so its own goes.
fn drawn(snippets: &Snippets, options: HumanOptions) -> String {
    let handler = GraphicalReportHandler::new_themed(theme(options))
        .with_context_lines(1)
        .tab_width(TAB_WIDTH)
        .without_primary_span_start()
        .without_syntax_highlighting();
    let mut text = String::new();
    // Writing into a string does not fail, and every label lies in the excerpt made for it.
    let _ = handler.render_report(&mut text, snippets);
    text.lines()
        .skip(1)
        .map(|line| format!("{}\n", line.trim_end()))
        .collect()
}

fn theme(options: HumanOptions) -> GraphicalTheme {
    match (options.unicode, options.color) {
        (true, true) => GraphicalTheme::unicode(),
        (true, false) => GraphicalTheme::unicode_nocolor(),
        (false, true) => GraphicalTheme::ascii(),
        (false, false) => GraphicalTheme::none(),
    }
}

/// What the drawing library is given: the lines of one file, and nothing else.
#[derive(Debug)]
struct Snippets {
    excerpt: Excerpt,
    labels: Vec<LabeledSpan>,
}

impl fmt::Display for Snippets {
    fn fmt(&self, _: &mut fmt::Formatter<'_>) -> fmt::Result {
        Ok(())
    }
}

impl std::error::Error for Snippets {}

impl miette::Diagnostic for Snippets {
    fn source_code(&self) -> Option<&dyn SourceCode> {
        Some(&self.excerpt)
    }

    fn labels(&self) -> Option<Box<dyn Iterator<Item = LabeledSpan> + '_>> {
        Some(Box::new(self.labels.iter().cloned()))
    }
}

const RED: &str = "\u{1b}[1;31m";
const YELLOW: &str = "\u{1b}[1;33m";
const CYAN: &str = "\u{1b}[36m";
const NO_PAINT: &str = "\u{1b}[0m";

fn paint_of(severity: Severity) -> &'static str {
    match severity {
        Severity::Error => RED,
        Severity::Warning => YELLOW,
        Severity::Note => CYAN,
    }
}

fn painted(word: &str, paint: &str, options: HumanOptions) -> String {
    if options.color {
        format!("{paint}{word}{NO_PAINT}")
    } else {
        word.to_owned()
    }
}
