//! What of a text stays on one line: a number with its fraction and its unit.

/// A blank that keeps its two sides on one line.
pub(crate) const HELD: &str = "\u{a0}";

/// The text with every blank after a number made unbreakable, and the one before a number that
/// ends a phrase: `15 1/2 in` stays in one piece, and so do `strip 2` and `1 of 3`.
pub(crate) fn held_together(text: &str) -> String {
    let mut held = String::with_capacity(text.len());
    let mut words = text.split(' ').peekable();
    while let Some(word) = words.next() {
        held.push_str(word);
        if let Some(next) = words.peek().copied() {
            let is_last = words.clone().nth(1).is_none();
            let ends_phrase = is_count(next) && (is_last || next.ends_with(','));
            held.push_str(if is_number(word) || ends_phrase {
                HELD
            } else {
                " "
            });
        }
    }
    held
}

/// Whether a word is a number that something more belongs to.
fn is_number(word: &str) -> bool {
    let begins = word
        .trim_start_matches(['-', '('])
        .starts_with(|first: char| first.is_ascii_digit());
    begins && word.ends_with(|last: char| last.is_ascii_digit())
}

/// Whether a word is a whole number and nothing more.
fn is_count(word: &str) -> bool {
    let digits = word.trim_end_matches(',');
    !digits.is_empty() && digits.chars().all(|digit| digit.is_ascii_digit())
}
