//! Running text broken into lines.

use textwrap::{Options, WordSeparator, WordSplitter};

/// Text is not squeezed into fewer columns than this, however narrow the terminal is.
const NARROWEST: usize = 40;

/// The text in lines of at most `width` columns, the first after `first`, the others after `rest`.
///
/// Lines break at blanks only, since a name broken at its hyphen could not be typed again.
pub(crate) fn wrapped(first: &str, rest: &str, text: &str, width: usize) -> String {
    let options = Options::new(width.max(NARROWEST))
        .initial_indent(first)
        .subsequent_indent(rest)
        .word_separator(WordSeparator::AsciiSpace)
        .word_splitter(WordSplitter::NoHyphenation)
        .break_words(false);
    let mut lines = textwrap::fill(text, options);
    lines.push('\n');
    lines
}
