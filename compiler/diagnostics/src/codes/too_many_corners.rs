//! An outline of more corners than the limit.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "too-many-corners",
    severity: Severity::Error,
    page: "\
The outline has more corners than the limit.

Each corner is marked, snipped or trimmed, and turned. The limit is far beyond what anyone makes,
and is there so that no file can wear out the machine that reads it.

Draw the outline with fewer steps.
",
    failing: Example::Made {
        words: "A valance whose lower edge has thousands of little steps.",
        make: thousands_of_steps,
    },
    mend: Example::Made {
        words: "The same valance with four steps.",
        make: four_steps,
    },
};

/// The outline of `panel` has more corners than the `limit`.
pub fn too_many_corners(panel: &str, outline: Span, limit: u32) -> Diagnostic {
    CODE.report(format!(
        "the outline of {panel} has more than {limit} corners"
    ))
    .label(outline, format!("more than {limit} corners"))
    .help("draw it with fewer steps")
}

fn thousands_of_steps() -> Vec<u8> {
    stepped(5_000)
}

fn four_steps() -> Vec<u8> {
    stepped(4)
}

/// A valance 40 inches wide whose lower edge rises to the right in so many steps.
fn stepped(steps: usize) -> Vec<u8> {
    let edge = format!("    across width / {steps}\n    up 2 in / {steps}\n").repeat(steps);
    format!(
        "\
units inches
fabric sailcloth {{ width: 54 in }}
rod pole {{ length: 40 in, diameter: 1 in }}
make seamed {{ seam: 0 in, lining: none }}
outline stepped whole {{
    from (0, drop)
{edge}    up to heading
}}
treatment valance {{
    panel front {{
        finished width: 40 in
        drop: 14 in
        outline: stepped
        head: over rod, tail 4 in
        make: seamed
        face: sailcloth
    }}
    row: front
}}
window kitchen: valance {{ opening: 36 in x 40 in, rod: pole }}
"
    )
    .into_bytes()
}
