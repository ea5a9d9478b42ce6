//! Small words around names and numbers.

use std::borrow::Borrow;
use std::fmt::Display;

/// The noun with its article: "a rod", "an outline".
pub fn with_article(noun: &str) -> String {
    let article = if noun.starts_with(['a', 'e', 'i', 'o', 'u']) {
        "an"
    } else {
        "a"
    };
    format!("{article} {noun}")
}

/// The number with its noun: "1 error", "2 errors".
pub fn counted<Count: Copy + Display + PartialEq + From<u8>>(count: Count, noun: &str) -> String {
    let ending = if count == Count::from(1) { "" } else { "s" };
    format!("{count} {noun}{ending}")
}

/// The words as a person lists them: "width, repeat or way".
pub fn listed<Word: Borrow<str>>(words: &[Word], last_joined_by: &str) -> String {
    match words {
        [] => String::new(),
        [only] => only.borrow().to_owned(),
        [rest @ .., last] => {
            format!("{} {last_joined_by} {}", rest.join(", "), last.borrow())
        }
    }
}

/// A character as a diagnostic shows it; one that cannot be seen is shown by its number.
pub(crate) fn shown(character: char) -> String {
    let number = u32::from(character);
    if character.is_alphanumeric() || character.is_ascii_graphic() {
        format!("`{character}`")
    } else if character.is_control() || character.is_whitespace() {
        format!("the unseen character U+{number:04X}")
    } else {
        format!("the character `{character}` (U+{number:04X})")
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_article_follows_the_sound() {
        assert_eq!(with_article("rod"), "a rod");
        assert_eq!(with_article("outline"), "an outline");
    }

    #[test]
    fn only_one_is_singular() {
        assert_eq!(counted(0, "error"), "0 errors");
        assert_eq!(counted(1, "error"), "1 error");
        assert_eq!(counted(2, "error"), "2 errors");
    }

    #[test]
    fn a_list_ends_in_its_joining_word() {
        assert_eq!(listed::<&str>(&[], "or"), "");
        assert_eq!(listed(&["width"], "or"), "width");
        assert_eq!(listed(&["width", "way"], "or"), "width or way");
        assert_eq!(
            listed(&["width", "repeat", "way"], "and"),
            "width, repeat and way"
        );
    }
}
