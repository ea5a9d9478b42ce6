//! Words on the page: measures are never parted, and fractions are set as such.

use maud::{Markup, html};

use crate::text::fractions::{TextPart, parts};
use crate::text::held_together::held_together;

/// The text as it stands on the page. Read aloud or copied it is the text itself.
pub(crate) fn words(text: &str) -> Markup {
    let text = held_together(text);
    html! {
        @for part in parts(&text) {
            @match part {
                TextPart::Plain(plain) => (plain),
                TextPart::Fraction(over, under) => span.fraction { sup { (over) } "/" sub { (under) } },
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::words;

    #[test]
    fn what_is_written_is_escaped() {
        assert_eq!(words("a & <b>").into_string(), "a &amp; &lt;b&gt;");
    }
}
