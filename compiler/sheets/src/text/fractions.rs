//! Fractions in a text.

/// A stretch of a text that is set in one way.
#[derive(PartialEq, Eq, Debug)]
pub(crate) enum TextPart<'a> {
    Plain(&'a str),
    /// The number over the line and the one under it.
    Fraction(&'a str, &'a str),
}

/// The text in runs; a stroke between two whole numbers makes a fraction.
pub(crate) fn parts(text: &str) -> Vec<TextPart<'_>> {
    let mut parts = Vec::new();
    let mut rest = text;
    let mut from = 0;
    while let Some(stroke) = rest.get(from..).and_then(|ahead| ahead.find('/')) {
        let at = from.saturating_add(stroke);
        let (before, after) = (
            rest.get(..at).unwrap_or(""),
            rest.get(at.saturating_add(1)..).unwrap_or(""),
        );
        let plain = before.trim_end_matches(|sign: char| sign.is_ascii_digit());
        let over = before.get(plain.len()..).unwrap_or("");
        let left = after.trim_start_matches(|sign: char| sign.is_ascii_digit());
        let under = after.strip_suffix(left).unwrap_or("");
        if over.is_empty() || under.is_empty() {
            from = at.saturating_add(1);
            continue;
        }
        parts.extend([TextPart::Plain(plain), TextPart::Fraction(over, under)]);
        (rest, from) = (left, 0);
    }
    parts.push(TextPart::Plain(rest));
    parts.retain(|part| *part != TextPart::Plain(""));
    parts
}

#[cfg(test)]
mod tests {
    use super::{TextPart, parts};

    #[test]
    fn a_stroke_between_two_numbers_makes_a_fraction() {
        use TextPart::{Fraction, Plain};
        for (text, runs) in [
            (
                "15 1/2 in",
                vec![Plain("15 "), Fraction("1", "2"), Plain(" in")],
            ),
            (
                "1/2 in x 11/16 in",
                vec![
                    Fraction("1", "2"),
                    Plain(" in x "),
                    Fraction("11", "16"),
                    Plain(" in"),
                ],
            ),
            ("210 g/m2", vec![Plain("210 g/m2")]),
            ("and/or 3/", vec![Plain("and/or 3/")]),
            ("1//2", vec![Plain("1//2")]),
            ("", vec![]),
        ] {
            assert_eq!(parts(text), runs, "{text}");
        }
    }
}
