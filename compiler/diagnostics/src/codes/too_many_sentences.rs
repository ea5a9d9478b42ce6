//! More sentences in one making method than the limit.

use std::fmt::Write as _;

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "too-many-sentences",
    severity: Severity::Error,
    page: "\
The steps of the making method have more sentences and cautions than the limit. An order that long is
not followed at the table.

The limit is there since a sentence may be said again for each pleat of each panel.

Say less, or divide the method into several.
",
    failing: Example::Made {
        words: "A making method with a thousand steps.",
        make: || method(1_000),
    },
    mend: Example::Made {
        words: "The same method with ten of them.",
        make: || method(10),
    },
};

/// What stands at `here` is the first beyond the `limit`.
pub fn too_many_sentences(here: Span, limit: usize) -> Diagnostic {
    CODE.report(format!(
        "the steps of the making method have more than {limit} sentences and cautions"
    ))
    .label(here, "this is one too many")
    .help("say less, or divide the method into several")
}

/// A window whose making method has so many steps.
fn method(count: usize) -> Vec<u8> {
    let mut steps = String::new();
    for number in 0..count {
        // Writing to a string cannot fail.
        let _ = writeln!(steps, "        step-{number}: \"Press.\"");
    }
    format!(
        "units inches
fabric sailcloth {{ width: 54 in }}
rod pole {{ length: 40 in, diameter: 1 in }}
make pressed {{
    seam: 1/2 in
    lining: none
    steps {{
{steps}    }}
}}
treatment valance {{
    panel front {{ finished width: fill, drop: 14 in, head: plain, make: pressed, face: sailcloth }}
    row: front
}}
window kitchen: valance {{ rod: pole }}
"
    )
    .into_bytes()
}
