//! Text that a spreadsheet would take for a formula.

use std::borrow::Cow;

/// The signs at which spreadsheets begin a formula, also in their wide forms, and blanks that some of
/// them pass over before one.
const BEGIN_A_FORMULA: [char; 11] = ['=', '+', '-', '@', '\t', '\r', '\n', '＝', '＋', '－', '＠'];

/// The text, made harmless with an apostrophe before it if it would be taken for a formula.
pub(super) fn harmless(text: &str) -> Cow<'_, str> {
    if text.starts_with(BEGIN_A_FORMULA) {
        Cow::Owned(format!("'{text}"))
    } else {
        Cow::Borrowed(text)
    }
}

#[cfg(test)]
mod tests {
    use super::harmless;

    #[test]
    fn only_what_begins_like_a_formula_is_changed() {
        for (text, told) in [
            ("=1+1", "'=1+1"),
            ("-1/4 in", "'-1/4 in"),
            ("@SUM(A1)", "'@SUM(A1)"),
            ("\t=1", "'\t=1"),
            ("＝1", "'＝1"),
            ("1 = 1", "1 = 1"),
            ("leaf-linen", "leaf-linen"),
            ("", ""),
        ] {
            assert_eq!(harmless(text), told, "{text}");
        }
    }
}
