//! Lines of a text, broken where so many columns end.

use textwrap::{Options, WordSeparator, WordSplitter, WrapAlgorithm};
use unicode_width::UnicodeWidthStr;

use crate::text::held_together::{HELD, held_together};

/// The lines of a text, none wider than `width` columns.
pub(crate) fn wrapped(text: &str, width: usize) -> Vec<String> {
    let options = Options::new(width.max(1))
        .wrap_algorithm(WrapAlgorithm::FirstFit)
        .word_separator(WordSeparator::AsciiSpace)
        .word_splitter(WordSplitter::NoHyphenation)
        .break_words(true);
    textwrap::wrap(&held_together(text), options)
        .into_iter()
        .map(|line| line.replace(HELD, " "))
        .collect()
}

/// The columns a text takes on one line.
pub(crate) fn columns(text: &str) -> usize {
    text.width()
}

/// The columns of the longest part of a text that is better not broken.
pub(crate) fn longest_word(text: &str) -> usize {
    held_together(text)
        .split(' ')
        .map(columns)
        .max()
        .unwrap_or(0)
}

#[cfg(test)]
mod tests {
    use super::{columns, longest_word, wrapped};

    #[test]
    fn a_line_breaks_between_words_and_never_inside_a_measure() {
        for (text, width, lines) in [
            ("cut at 15 1/2 in", 16, vec!["cut at 15 1/2 in"]),
            ("cut at 15 1/2 in", 15, vec!["cut at", "15 1/2 in"]),
            (
                "18 3/4 in x 24 1/2 in",
                12,
                vec!["18 3/4 in x", "24 1/2 in"],
            ),
            ("393.7 mm wide", 9, vec!["393.7 mm", "wide"]),
            ("(-1 1/2 in) off", 12, vec!["(-1 1/2 in)", "off"]),
            (
                "from corner 1, then 2",
                14,
                vec!["from corner 1,", "then 2"],
            ),
            ("bench-left", 5, vec!["bench", "-left"]),
            ("wing face, strip 2", 16, vec!["wing face,", "strip 2"]),
            (
                "wing face, 1 of 3, fold at 9 in",
                16,
                vec!["wing face,", "1 of 3, fold at", "9 in"],
            ),
            ("fenêtre côté cour", 12, vec!["fenêtre côté", "cour"]),
            ("窓の飾り 布", 8, vec!["窓の飾り", "布"]),
            ("", 8, vec![""]),
        ] {
            assert_eq!(wrapped(text, width), lines, "{text} in {width}");
        }
    }

    #[test]
    fn a_measure_counts_as_one_word() {
        assert_eq!(longest_word("at 15 1/2 in left"), columns("15 1/2 in"));
        assert_eq!(longest_word(""), 0);
    }
}
