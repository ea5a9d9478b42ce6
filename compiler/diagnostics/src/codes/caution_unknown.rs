//! A caution that is not one.

use crate::example::one_window;
use crate::{Code, Diagnostic, Fix, Severity, Span, did_you_mean, listed};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "caution-unknown",
    severity: Severity::Error,
    page: "\
A making step asks for a caution by a name that no caution has. Most often a letter is missing.

A caution is there so that nobody is hurt and no cloth is spoilt; one that is left out in silence is
worse than none.

Write the name of a caution, or say the warning in your own words in the step.
",
    failing: one_window! {
        make: "seam: 1/2 in, lining: none, steps { cut: \"Cut the face {face size}.\", caution sheers }",
        panel: ["finished width: 40 in", "drop: 14 in"],
    },
    mend: one_window! {
        make: "seam: 1/2 in, lining: none, steps { cut: \"Cut the face {face size}.\", caution shears }",
        panel: ["finished width: 40 in", "drop: 14 in"],
    },
};

/// No caution has the `name` at `span`; those there are, are `known`.
pub fn caution_unknown(span: Span, name: &str, known: &[&str]) -> Diagnostic {
    let diagnostic = CODE
        .report(format!("no caution is called `{name}`"))
        .label(span, "not a caution");
    match did_you_mean(name, known.iter().copied()) {
        Some(nearest) => diagnostic
            .help(format!("did you mean `{nearest}`?"))
            .fix(Fix::replace(format!("write `{nearest}`"), span, nearest)),
        None => diagnostic.help(format!("cautions are {}", listed(known, "and"))),
    }
}
