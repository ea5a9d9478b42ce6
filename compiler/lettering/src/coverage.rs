//! Which texts can be printed.

use std::ops::RangeInclusive;

use unicode_normalization::UnicodeNormalization;

use crate::FontWeight;

/// Scripts that run from right to left, or whose letters change beside one another: each letter would
/// be printed, but not the word. The typeface has signs of Hebrew, Arabic, N'Ko and Lao; the ranges
/// are those of the Unicode blocks from Hebrew to Arabic Extended-A, of Lao, and of the presentation
/// forms of Hebrew and Arabic.
const NOT_LETTER_BY_LETTER: [RangeInclusive<char>; 4] = [
    '\u{590}'..='\u{8ff}',
    '\u{e80}'..='\u{eff}',
    '\u{fb1d}'..='\u{fdff}',
    '\u{fe70}'..='\u{feff}',
];

/// Signs whose meaning each typeface makes up for itself, and those that stand for no sign.
const WITHOUT_MEANING: [RangeInclusive<char>; 2] =
    ['\u{e000}'..='\u{f8ff}', '\u{fff0}'..='\u{ffff}'];

/// The text with each letter and the marks put on it as one sign, wherever there is one.
pub fn composed(text: &str) -> String {
    text.nfc().collect()
}

/// The first sign of a text that cannot be printed, and the byte at which the letter with its marks
/// begins to which it belongs; `None` where the whole text can be.
pub fn first_not_printable(text: &str) -> Option<(usize, char)> {
    // Most texts are plain, and then nothing need be looked up.
    if text.chars().all(|sign| matches!(sign, ' '..='~')) {
        return None;
    }
    let mut starts = text.char_indices().peekable();
    while let Some((start, first)) = starts.next() {
        let mut letter = String::from(first);
        while let Some((_, mark)) = starts.next_if(|(_, next)| is_put_on(*next)) {
            letter.push(mark);
        }
        let missing = letter.nfc().find(|sign| !is_printable(*sign));
        if let Some(missing) = missing {
            return Some((start, missing));
        }
    }
    None
}

/// Whether a sign is put on the letter before it.
fn is_put_on(character: char) -> bool {
    unicode_normalization::char::is_combining_mark(character)
}

/// Whether each weight has the sign, and it can stand by itself.
fn is_printable(character: char) -> bool {
    let excluded = NOT_LETTER_BY_LETTER.iter().chain(&WITHOUT_MEANING);
    // What takes no room is a mark for the letter before it, or steers what cannot be done here.
    let stands =
        |weight: FontWeight| weight.glyph(character).is_some() && weight.advance(character) > 0.0;
    !character.is_control()
        && !excluded.into_iter().any(|range| range.contains(&character))
        && FontWeight::ALL.into_iter().all(stands)
}

#[cfg(test)]
mod tests {
    use super::{composed, first_not_printable};

    #[test]
    fn what_stands_letter_by_letter_is_printed() {
        for text in [
            "",
            "Fenêtre & Söhne, Žižkov <\"'>",
            "Ελληνικά Кириллица",
            "15 ½ × ⅞ ± 3′ 4″ ≤ → ↑ ☐",
            "fene\u{302}tre",
            "a\u{a0}b\u{2009}c",
        ] {
            assert_eq!(first_not_printable(text), None, "{text}");
        }
    }

    #[test]
    fn the_first_sign_that_is_missing_is_found() {
        for (text, at, sign) in [
            ("a 🪡", 2, '🪡'),
            ("窓", 0, '窓'),
            ("ab שלום", 3, 'ש'),
            ("سلام", 0, 'س'),
            ("ລາວ", 0, 'ລ'),
            ("हिन्दी", 0, 'ह'),
            ("no\u{7}", 2, '\u{7}'),
            ("a\u{200d}b", 1, '\u{200d}'),
            ("\u{202e}abc", 0, '\u{202e}'),
            ("ab\u{e000}", 2, '\u{e000}'),
            // There is no single sign for an x with a circumflex.
            ("abx\u{302}c", 2, '\u{302}'),
        ] {
            assert_eq!(first_not_printable(text), Some((at, sign)), "{text}");
        }
    }

    #[test]
    fn a_letter_and_its_mark_become_one_sign() {
        assert_eq!(composed("fene\u{302}tre"), "fen\u{ea}tre");
    }
}
