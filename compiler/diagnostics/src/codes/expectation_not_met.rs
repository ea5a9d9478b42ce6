//! Something a design expects of itself that did not come out so.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Something a design expects of itself that did not come out so.
pub const CODE: Code = Code {
    slug: "expectation-not-met",
    severity: Severity::Error,
    page: "\
The design says what it expects to come out, and something else came out. No packet is made: an
expectation is there to stop the shears when a change elsewhere has reached further than was meant.

The report says by how much the size is out, and what made it so. Change that, or change the
expectation where what came out is what is wanted now.
",
    failing: one_window! {
        items: "expect front finished width = 38 in within 1/4 in\n",
        panel: ["finished width: 40 in", "drop: 14 in"],
    },
    mend: one_window! {
        items: "expect front finished width = 40 in within 1/4 in\n",
        panel: ["finished width: 40 in", "drop: 14 in"],
    },
};

/// The size `what` came out as `actual`, which is `out` ("2 in too much"); the line expects
/// `expected`. `cause` is what made it so, with what it does, and `sum` the lines of the sum.
pub fn expectation_not_met(
    (line, expected): (Span, &str),
    (what, actual, out): (&str, &str, &str),
    cause: Option<(Span, &str)>,
    sum: Vec<String>,
) -> Diagnostic {
    let report = CODE
        .report(format!("{what} is {actual}, {out}"))
        .label(line, format!("expected {expected}"));
    let report = match cause {
        Some((span, text)) => report.label(span, text),
        None => report,
    };
    sum.into_iter()
        .fold(report, Diagnostic::sum)
        .help("change what makes it so, or expect what came out")
}
