//! The texts of one run, and how a byte in one becomes a line and a column.

use crate::{FileId, Span};

/// Characters are counted from the nearest of these many bytes, so that a column costs the same at
/// the end of a very long line as at its beginning.
const BLOCK: usize = 1024;

const BYTE_ORDER_MARK: char = '\u{feff}';

/// Every text of one run, by [`FileId`].
#[derive(Clone, Default, Debug)]
pub struct Sources {
    sources: Vec<Source>,
}

/// Where a span begins and ends, one-based and counted in characters, as an editor shows it.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct TextPlace {
    /// The line on which it begins.
    pub line: usize,
    /// The column of its first character.
    pub column: usize,
    /// The line on which it ends, for most spans the same.
    pub end_line: usize,
    /// The column after its last character, on that line.
    pub end_column: usize,
}

#[derive(Clone, Debug)]
struct Source {
    name: String,
    text: String,
    /// The first byte of every line.
    line_starts: Vec<usize>,
    /// How many characters begin before each whole block.
    characters_before_block: Vec<usize>,
}

impl Sources {
    /// No texts yet.
    pub fn new() -> Sources {
        Sources::default()
    }

    /// Adds a text under the name that is shown for it: its path within the project.
    pub fn add(&mut self, name: impl Into<String>, text: impl Into<String>) -> FileId {
        let id = u32::try_from(self.sources.len()).unwrap_or(u32::MAX);
        self.sources.push(Source::new(name.into(), text.into()));
        FileId(id)
    }

    /// The name shown for a file; empty if there is no such file.
    pub fn name(&self, file: FileId) -> &str {
        self.source(file).map_or("", |source| &source.name)
    }

    /// The whole text of a file, byte-order mark and all; empty if there is no such file.
    pub fn text(&self, file: FileId) -> &str {
        self.source(file).map_or("", |source| &source.text)
    }

    /// The files in the order they were added.
    pub fn files(&self) -> impl Iterator<Item = FileId> {
        (0..).map(FileId).take(self.sources.len())
    }

    /// The lines and columns of a span; a position beyond the text is taken as its end.
    pub fn place(&self, span: Span) -> TextPlace {
        let at = |byte: u32| match self.source(span.file) {
            Some(source) => source.line_and_column(byte as usize),
            None => (1, 1),
        };
        let (line, column) = at(span.start);
        let (end_line, end_column) = at(span.end);
        TextPlace {
            line,
            column,
            end_line,
            end_column,
        }
    }

    /// The text a span covers; empty if the span leaves the text or splits a character.
    pub fn snippet(&self, span: Span) -> &str {
        self.text(span.file).get(span.range()).unwrap_or("")
    }

    /// The text of a line, one-based, without its end and without a byte-order mark.
    pub fn line(&self, file: FileId, line: usize) -> Option<&str> {
        let source = self.source(file)?;
        source.text.get(source.line_range(line)?)
    }

    /// The byte at a line and column, both one-based, the column in characters; of a column beyond
    /// its line, the end of the line. Nothing if there is no such line.
    pub fn byte(&self, file: FileId, line: usize, column: usize) -> Option<usize> {
        let source = self.source(file)?;
        let range = source.line_range(line)?;
        let before_line = source.characters_before(range.start);
        let wanted = before_line.saturating_add(column.saturating_sub(1));
        Some(source.byte_of_character(wanted).min(range.end))
    }

    fn source(&self, file: FileId) -> Option<&Source> {
        self.sources.get(file.0 as usize)
    }
}

impl Source {
    fn new(name: String, text: String) -> Source {
        let breaks = text.match_indices('\n').map(|(at, _)| at.saturating_add(1));
        let line_starts = std::iter::once(first_byte(&text)).chain(breaks).collect();
        let characters_before_block = characters_before_blocks(&text);
        Source {
            name,
            text,
            line_starts,
            characters_before_block,
        }
    }

    fn line_and_column(&self, byte: usize) -> (usize, usize) {
        let line = self
            .line_starts
            .partition_point(|start| *start <= byte)
            .max(1);
        let range = self.line_range(line).unwrap_or_default();
        let byte = byte.clamp(range.start, range.end);
        let before = self
            .characters_before(byte)
            .saturating_sub(self.characters_before(range.start));
        (line, before.saturating_add(1))
    }

    /// The bytes of a line, without its end.
    fn line_range(&self, line: usize) -> Option<std::ops::Range<usize>> {
        let start = *self.line_starts.get(line.checked_sub(1)?)?;
        let next = self.line_starts.get(line).copied();
        let end = next.map_or(self.text.len(), |next| next.saturating_sub(1));
        let line = self.text.get(start..end)?;
        // A carriage return belongs to the end of the line only where there is a line feed too.
        let shown = if next.is_some() {
            line.strip_suffix('\r').unwrap_or(line)
        } else {
            line
        };
        Some(start..start.saturating_add(shown.len()))
    }

    /// How many characters begin before a byte of the text.
    fn characters_before(&self, byte: usize) -> usize {
        let block = byte / BLOCK;
        let known = self
            .characters_before_block
            .get(block)
            .copied()
            .unwrap_or_default();
        let rest = self
            .text
            .as_bytes()
            .get(block.saturating_mul(BLOCK)..byte)
            .unwrap_or_default();
        known.saturating_add(characters_beginning(rest))
    }

    /// The first byte of the character before which so many others begin.
    fn byte_of_character(&self, wanted: usize) -> usize {
        let blocks = &self.characters_before_block;
        let block = blocks
            .partition_point(|before| *before <= wanted)
            .saturating_sub(1);
        let known = blocks.get(block).copied().unwrap_or_default();
        let start = block.saturating_mul(BLOCK);
        let rest = self.text.as_bytes().get(start..).unwrap_or_default();
        let mut beginnings = rest
            .iter()
            .enumerate()
            .filter(|(_, byte)| begins_character(**byte));
        let within = beginnings.nth(wanted.saturating_sub(known));
        within.map_or(self.text.len(), |(at, _)| start.saturating_add(at))
    }
}

/// A byte-order mark belongs to no line.
fn first_byte(text: &str) -> usize {
    if text.starts_with(BYTE_ORDER_MARK) {
        BYTE_ORDER_MARK.len_utf8()
    } else {
        0
    }
}

fn characters_before_blocks(text: &str) -> Vec<usize> {
    let counts = text.as_bytes().chunks(BLOCK).map(characters_beginning);
    let sums = counts.scan(0_usize, |sum, count| {
        *sum = sum.saturating_add(count);
        Some(*sum)
    });
    std::iter::once(0).chain(sums).collect()
}

fn characters_beginning(bytes: &[u8]) -> usize {
    bytes.iter().filter(|byte| begins_character(**byte)).count()
}

/// Every byte of UTF-8 begins a character, but those of the form 10xxxxxx.
fn begins_character(byte: u8) -> bool {
    byte & 0b1100_0000 != 0b1000_0000
}

#[cfg(test)]
mod tests {
    use super::*;

    fn place_of(text: &str, start: usize, end: usize) -> (usize, usize, usize, usize) {
        let mut sources = Sources::new();
        let file = sources.add("text", text);
        let place = sources.place(Span::new(file, start, end));
        (place.line, place.column, place.end_line, place.end_column)
    }

    #[test]
    fn places_are_counted_from_one_in_characters() {
        for (text, start, end, place) in [
            ("drop: 17 in", 0, 4, (1, 1, 1, 5)),
            ("drop: 17 in", 6, 11, (1, 7, 1, 12)),
            ("é: 17 in", 4, 6, (1, 4, 1, 6)),
            ("\tdrop", 1, 5, (1, 2, 1, 6)),
            ("a\nb\n", 2, 3, (2, 1, 2, 2)),
            ("a\nb\n", 0, 3, (1, 1, 2, 2)),
            ("a\nb\n", 4, 4, (3, 1, 3, 1)),
            ("a\nb", 3, 3, (2, 2, 2, 2)),
            ("a\r\nb", 3, 4, (2, 1, 2, 2)),
            ("a\r\nb", 2, 2, (1, 2, 1, 2)),
            ("a\rb\n", 2, 3, (1, 3, 1, 4)),
            ("a\r\r\n", 2, 2, (1, 3, 1, 3)),
            ("\u{feff}drop", 3, 7, (1, 1, 1, 5)),
            ("\u{feff}drop", 0, 0, (1, 1, 1, 1)),
            ("", 0, 0, (1, 1, 1, 1)),
            ("abc", 90, 99, (1, 4, 1, 4)),
        ] {
            assert_eq!(place_of(text, start, end), place, "{text:?} {start}..{end}");
        }
    }

    #[test]
    fn lines_have_no_ends_and_no_mark() {
        let mut sources = Sources::new();
        let file = sources.add("text", "\u{feff}one\r\ntwo\n\nfour");
        let lines: Vec<_> = (0..=5).map(|line| sources.line(file, line)).collect();
        assert_eq!(
            lines,
            [None, Some("one"), Some("two"), Some(""), Some("four"), None]
        );
    }

    #[test]
    fn names_texts_and_snippets_are_kept() {
        let mut sources = Sources::new();
        let first = sources.add("first", "one");
        let second = sources.add("second", "é two");
        assert_eq!(
            (sources.name(first), sources.text(second)),
            ("first", "é two")
        );
        assert_eq!(sources.snippet(Span::new(second, 3, 6)), "two");
        assert_eq!(
            sources.snippet(Span::new(second, 1, 6)),
            "",
            "splits a character"
        );
        assert_eq!(
            sources.snippet(Span::new(second, 3, 7)),
            "",
            "leaves the text"
        );
        assert_eq!(sources.files().collect::<Vec<_>>(), [first, second]);
    }
}
