//! The fractions that are letters of their own.

/// Each letter with its upper and its lower number.
const FRACTIONS: [(&str, i128, i128); 18] = [
    ("½", 1, 2),
    ("¼", 1, 4),
    ("¾", 3, 4),
    ("⅛", 1, 8),
    ("⅜", 3, 8),
    ("⅝", 5, 8),
    ("⅞", 7, 8),
    ("⅓", 1, 3),
    ("⅔", 2, 3),
    ("⅕", 1, 5),
    ("⅖", 2, 5),
    ("⅗", 3, 5),
    ("⅘", 4, 5),
    ("⅙", 1, 6),
    ("⅚", 5, 6),
    ("⅐", 1, 7),
    ("⅑", 1, 9),
    ("⅒", 1, 10),
];

/// The upper and the lower number of a fraction that is one letter.
pub(crate) fn value(letter: &str) -> Option<(i128, i128)> {
    FRACTIONS
        .iter()
        .find(|(fraction, ..)| *fraction == letter)
        .map(|(_, upper, lower)| (*upper, *lower))
}
