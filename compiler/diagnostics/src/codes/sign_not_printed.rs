//! A sign that the letters of printed sheets do not have.

use crate::words::shown;
use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "sign-not-printed",
    severity: Severity::Error,
    page: "\
Names, titles and sentences are printed on the sheets, the labels and the templates. Sheets are printed
letter by letter, from left to right, in letters that go with the file. There are those of Latin, Greek
and Cyrillic, with their accents, and of a few scripts more; fractions, arrows and usual signs.

A sign that is missing would leave a hole on the paper, and letters of scripts that join or run from
right to left would not be read as the word they are. So they are reported rather than printed wrong.

Write the name in other letters, or take the sign out. Comments after `#` are not printed, and any sign
may stand in them.
",
    failing: Example::Text("job \"Porch \u{1fa9f}\"\nfabric calico { width: 45 in }\n"),
    mend: Example::Text("job \"Porch\"\nfabric calico { width: 45 in }  # \u{1fa9f}\n"),
};

/// The `sign` at `span`, alone or put on a letter there, cannot be printed.
pub fn sign_not_printed(span: Span, sign: char) -> Diagnostic {
    let help = if sign.is_alphabetic() {
        "write it in Latin, Greek or Cyrillic letters"
    } else {
        "take it out, or say it in letters"
    };
    CODE.report(format!("sheets cannot be printed with {}", shown(sign)))
        .label(span, "it cannot be set in the letters of printed sheets")
        .help(help)
}
