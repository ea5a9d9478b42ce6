//! The fractions that are letters of their own.

/// Each letter with its upper and its lower number.
const FRACTIONS: [(char, i128, i128); 18] = [
    ('½', 1, 2),
    ('¼', 1, 4),
    ('¾', 3, 4),
    ('⅛', 1, 8),
    ('⅜', 3, 8),
    ('⅝', 5, 8),
    ('⅞', 7, 8),
    ('⅓', 1, 3),
    ('⅔', 2, 3),
    ('⅕', 1, 5),
    ('⅖', 2, 5),
    ('⅗', 3, 5),
    ('⅘', 4, 5),
    ('⅙', 1, 6),
    ('⅚', 5, 6),
    ('⅐', 1, 7),
    ('⅑', 1, 9),
    ('⅒', 1, 10),
];

/// The upper and the lower number of a fraction that is one letter.
pub(crate) fn value(letter: char) -> Option<(i128, i128)> {
    FRACTIONS
        .iter()
        .find(|(fraction, ..)| *fraction == letter)
        .map(|(_, upper, lower)| (*upper, *lower))
}

/// The upper and the lower number of a text that is one such letter.
pub(crate) fn value_of_text(text: &str) -> Option<(i128, i128)> {
    let mut letters = text.chars();
    let (only, None) = (letters.next()?, letters.next()) else {
        return None;
    };
    value(only)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_letter_that_the_grammar_takes_has_its_numbers() {
        for letter in ('¼'..='¾').chain('⅐'..='⅞') {
            assert!(value(letter).is_some(), "{letter}");
        }
        assert_eq!(('¼'..='¾').chain('⅐'..='⅞').count(), FRACTIONS.len());
    }
}
