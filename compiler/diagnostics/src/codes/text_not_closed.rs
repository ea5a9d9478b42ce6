//! A text without its closing quote.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "text-not-closed",
    severity: Severity::Error,
    page: "\
A `\"` begins a text, and the line ends before a second `\"` closes it. A text never goes on over the
end of a line.

An inch mark is written with the same sign, and stands directly after its number: `54\"`. With a blank
between them it would begin a text.

Write the closing `\"`, or join the inch mark to its number.
",
    failing: Example::Text("fabric kelp-stripe { width: 54 \" }\n"),
    mend: Example::Text("fabric kelp-stripe { width: 54\" }\n"),
};

/// The text that begins at the start of `text` has no end on its line.
pub fn text_not_closed(text: Span) -> Diagnostic {
    CODE.report("a text has no closing `\"`")
        .label(text, "begins here, and the line ends before it does")
        .help("write `\"` where the text ends")
        .help("if it is an inch mark, join it to its number: `15\"`")
}
