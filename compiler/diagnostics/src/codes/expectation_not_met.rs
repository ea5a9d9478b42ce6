//! Something a design expects of itself that did not come out so.

use crate::example::one_window;
use crate::{Code, Diagnostic, PlacedText, Severity};

/// Its page for `pelmet explain`, with an example and the mend.
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

/// A size came out otherwise than the design expects.
pub struct ExpectationNotMet<'a> {
    /// What is expected, at the line that does.
    pub expected: PlacedText,
    /// Which size: "the flat width of the panel `bib`".
    pub what: &'a str,
    /// What it came out as.
    pub actual: &'a str,
    /// What that is against what is expected: "2 in too much".
    pub difference: String,
    /// What made it so, where that was written.
    pub cause: Option<PlacedText>,
    /// How it came about, how it compares, and what else the line does not hold for.
    pub sum: Vec<String>,
}

impl From<ExpectationNotMet<'_>> for Diagnostic {
    fn from(told: ExpectationNotMet<'_>) -> Diagnostic {
        let ExpectationNotMet {
            expected,
            what,
            actual,
            difference,
            cause,
            sum,
        } = told;
        let diagnostic = CODE
            .report(format!("{what} is {actual}, {difference}"))
            .label(expected.span, format!("expected {expected}"));
        let diagnostic = match cause {
            Some(cause) => diagnostic.label(cause.span, cause.text),
            None => diagnostic,
        };
        sum.into_iter()
            .fold(diagnostic, Diagnostic::sum)
            .help("change what makes it so, or expect what came out")
    }
}
