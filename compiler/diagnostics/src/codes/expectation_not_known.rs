//! Something expected that follows from what no cloth or notion states.

use crate::example::one_window;
use crate::{Code, Diagnostic, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "expectation-not-known",
    severity: Severity::Error,
    page: "\
The design expects a weight, a cost or a thickness, and what it follows from is not stated: the weight,
the price or the thickness of a cloth. So nobody can tell whether it came out.

An expectation that is never judged would look as if it were met.

State it in every fabric that takes part, or leave the expectation out. Cloth that is drawn up into
gathers has no thickest stack.
",
    failing: one_window! {
        items: "expect kitchen weight at most 2 kg\n",
        panel: ["finished width: 40 in", "drop: 14 in"],
    },
    mend: one_window! {
        fabric: "width: 54 in, weight: 300 g/m2",
        items: "expect kitchen weight at most 2 kg\n",
        panel: ["finished width: 40 in", "drop: 14 in"],
    },
};

/// Something that a design expects cannot be worked out, since a property is not stated.
pub struct ExpectationNotKnown<'a> {
    /// The `expect` line.
    pub line: Span,
    /// What it expects: "weight".
    pub what: &'a str,
    /// The property of a cloth that it follows from.
    pub property: &'a str,
}

impl From<ExpectationNotKnown<'_>> for Diagnostic {
    fn from(told: ExpectationNotKnown<'_>) -> Diagnostic {
        let ExpectationNotKnown {
            line,
            what,
            property,
        } = told;
        CODE.report(format!(
            "the {what} expected here is not known: a {property} it follows from is not stated"
        ))
        .label(line, "cannot be judged")
        .help(match property {
            "price" => String::from(
                "state the `price` of every cloth and notion that takes part, and `labour` for work that is \
                 listed",
            ),
            _ => format!("state the `{property}` of every cloth that takes part"),
        })
    }
}
