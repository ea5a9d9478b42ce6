//! The lines of one file that take part in a diagnostic, made ready to be drawn.
//!
//! Only these lines are handed to the drawing library, in a form it draws well: without carriage
//! returns and byte-order mark, each with an end, the very last one too, and none endlessly long.
//! Characters are replaced one for one, so that columns stay what they are.

use std::collections::BTreeSet;
use std::ops::Range;

use miette::{MietteError, MietteSpanContents, SourceCode, SourceSpan, SpanContents};

use super::visible::{visible, visible_line};
use crate::{FileId, Sources, TextPlace};

/// Of a longer line, only this many characters are shown.
const LONGEST_LINE: usize = 300;

/// How many characters are shown before the first label of a line that is cut.
const LEAD: usize = 60;

const CUT: char = '…';

/// The lines of one file around some places.
#[derive(Debug)]
pub(super) struct Excerpt {
    name: String,
    /// The shown lines, one after the other, each with its end.
    text: String,
    lines: Vec<ShownLine>,
}

#[derive(Debug)]
struct ShownLine {
    /// The one-based number of the line in its file.
    number: usize,
    /// The bytes of the line in the text of the excerpt, with its end.
    range: Range<usize>,
    /// How many characters of the line are left out before the first one shown.
    hidden: usize,
}

impl Excerpt {
    /// The lines of `places`, and one around each.
    pub(super) fn new(sources: &Sources, file: FileId, places: &[TextPlace]) -> Excerpt {
        let name = visible_line(sources.name(file));
        let mut excerpt = Excerpt {
            name,
            text: String::new(),
            lines: Vec::new(),
        };
        for number in numbers_around(sources, file, places) {
            let columns = places.iter().filter(|place| place.line == number);
            let first_column = columns.map(|place| place.column).min().unwrap_or(1);
            let (shown, hidden) = cut(sources, file, number, first_column);
            excerpt.add(number, &shown, hidden);
        }
        excerpt
    }

    /// Where a place stands in the excerpt; of a place over several lines, its part in the first.
    pub(super) fn locate(&self, place: TextPlace) -> SourceSpan {
        let Some(line) = self.lines.iter().find(|line| line.number == place.line) else {
            return (0, 0).into();
        };
        let start = self.byte(line, place.column);
        let end_column = if place.end_line == place.line {
            place.end_column
        } else {
            usize::MAX
        };
        let end = self.byte(line, end_column);
        (start, end.saturating_sub(start)).into()
    }

    fn add(&mut self, number: usize, shown: &str, hidden: usize) {
        let start = self.text.len();
        self.text.push_str(&visible(shown));
        self.text.push('\n');
        self.lines.push(ShownLine {
            number,
            range: start..self.text.len(),
            hidden,
        });
    }

    /// The byte of a column in a shown line; of a column beyond it, the end of its text.
    fn byte(&self, line: &ShownLine, column: usize) -> usize {
        let text = self.shown(line);
        let index = column.saturating_sub(1).saturating_sub(line.hidden);
        let within = text
            .char_indices()
            .nth(index)
            .map_or(text.len(), |(at, _)| at);
        line.range.start.saturating_add(within)
    }

    /// The one-based column of a byte of a shown line.
    fn column(&self, line: &ShownLine, byte: usize) -> usize {
        let before = self
            .text
            .get(line.range.start..byte)
            .unwrap_or_default()
            .chars()
            .count();
        line.hidden.saturating_add(before).saturating_add(1)
    }

    /// A line without its end.
    fn shown(&self, line: &ShownLine) -> &str {
        self.text
            .get(line.range.clone())
            .unwrap_or_default()
            .trim_end_matches('\n')
    }

    /// The index of the line a byte stands in.
    fn line_at(&self, byte: usize) -> usize {
        self.lines
            .partition_point(|line| line.range.start <= byte)
            .saturating_sub(1)
    }

    /// The lines from the first to the last byte of a span, and up to so many before and after as
    /// follow each other in the file.
    fn lines_around(&self, span: &SourceSpan, before: usize, after: usize) -> Option<&[ShownLine]> {
        let end = span.offset().saturating_add(span.len());
        let (mut first, mut last) = (self.line_at(span.offset()), self.line_at(end));
        for _ in 0..before {
            first = first
                .checked_sub(1)
                .filter(|at| self.followed(*at))
                .unwrap_or(first);
        }
        for _ in 0..after {
            last = if self.followed(last) {
                last.saturating_add(1)
            } else {
                last
            };
        }
        self.lines.get(first..=last)
    }

    /// Whether the next line of the excerpt is the next line of the file too.
    fn followed(&self, index: usize) -> bool {
        let number = |index: usize| self.lines.get(index).map(|line| line.number);
        let next = number(index.saturating_add(1));
        next.is_some() && next == number(index).map(|number| number.saturating_add(1))
    }
}

impl SourceCode for Excerpt {
    fn read_span<'a>(
        &'a self,
        span: &SourceSpan,
        before: usize,
        after: usize,
    ) -> Result<Box<dyn SpanContents<'a> + 'a>, MietteError> {
        let lines = self
            .lines_around(span, before, after)
            .ok_or(MietteError::OutOfBounds)?;
        let [first, ..] = lines else {
            return Err(MietteError::OutOfBounds);
        };
        let end = lines.last().map_or(first.range.end, |last| last.range.end);
        let range = first.range.start..end;
        let data = self
            .text
            .get(range.clone())
            .ok_or(MietteError::OutOfBounds)?;
        let (number, column) = (first.number, self.column(first, span.offset()));
        Ok(Box::new(MietteSpanContents::new_named(
            format!("{}:{number}:{column}", self.name),
            data.as_bytes(),
            (range.start, range.len()).into(),
            number.saturating_sub(1),
            0,
            lines.len(),
        )))
    }
}

/// The numbers of the lines of `places` and of those around them, in order.
fn numbers_around(sources: &Sources, file: FileId, places: &[TextPlace]) -> BTreeSet<usize> {
    let labelled: BTreeSet<usize> = places.iter().map(|place| place.line).collect();
    let around = labelled
        .iter()
        .flat_map(|line| line.saturating_sub(1)..=line.saturating_add(1));
    let is_shown = |line: &usize| labelled.contains(line) || has_text(sources, file, *line);
    around.filter(is_shown).collect()
}

/// Whether there is such a line, and not just the nothing after the end of the last one.
fn has_text(sources: &Sources, file: FileId, line: usize) -> bool {
    let is_last = sources.line(file, line.saturating_add(1)).is_none();
    sources
        .line(file, line)
        .is_some_and(|text| !(is_last && text.is_empty()))
}

/// The part of a line that is shown, and how many characters are left out before it.
fn cut(sources: &Sources, file: FileId, line: usize, first_column: usize) -> (String, usize) {
    let text = sources.line(file, line).unwrap_or_default();
    if text.chars().nth(LONGEST_LINE).is_none() {
        return (text.to_owned(), 0);
    }
    let hidden = first_column.saturating_sub(LEAD);
    let mut rest = rest_of_line(sources, file, line, hidden).chars();
    let mut shown: Vec<char> = rest.by_ref().take(LONGEST_LINE).collect();
    if let Some(first) = shown.first_mut().filter(|_| hidden > 0) {
        *first = CUT;
    }
    if let Some(last) = shown.last_mut().filter(|_| rest.next().is_some()) {
        *last = CUT;
    }
    (shown.into_iter().collect(), hidden)
}

/// A line without so many of its first characters.
fn rest_of_line(sources: &Sources, file: FileId, line: usize, hidden: usize) -> &str {
    let start = sources.byte(file, line, hidden.saturating_add(1));
    let end = sources.byte(file, line, usize::MAX);
    let range = start.unwrap_or_default()..end.unwrap_or_default();
    sources.text(file).get(range).unwrap_or_default()
}
