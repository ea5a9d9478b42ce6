//! A fullness in percent, which is said in two ways.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// A fullness in percent, which is said in two ways.
pub const CODE: Code = Code {
    slug: "fullness-percent-unclear",
    severity: Severity::Error,
    page: "\
Fullness is flat width over finished width. In percent it is said in two ways. Specifications write
twice the finished width as 200 %: the whole cloth. Many workrooms call the same cloth 100 % full: the
cloth that is added.

The two differ by one whole finished width of cloth for each panel, so neither is assumed.

Write the number of times: `2 times` is a flat width of twice the finished width.
",
    failing: Example::Text("pleats soft { fullness: 200 % }\n"),
    mend: Example::Text("pleats soft { fullness: 2 times }\n"),
};

/// The fullness `typed` at `span` is `whole` if the whole cloth is meant, and `added` if only what
/// is added to the finished width is: "200 %" is "2 times" or "3 times".
pub fn fullness_percent_unclear(span: Span, typed: &str, whole: &str, added: &str) -> Diagnostic {
    CODE.report(format!("a fullness of `{typed}` can mean two things"))
        .label(span, "of the finished width, or added to it?")
        .sum(format!(
            "{typed} of the finished width: {whole} the finished width"
        ))
        .sum(format!(
            "{typed} added to the finished width: {added} the finished width"
        ))
        .help(format!(
            "write `{whole}` if all the cloth is meant, as in specifications"
        ))
        .help(format!("write `{added}` if only the added cloth is meant"))
}
