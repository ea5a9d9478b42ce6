//! More pieces to cut from one cloth than the limit.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// More pieces to cut from one cloth than the limit.
pub const CODE: Code = Code {
    slug: "too-many-pieces",
    severity: Severity::Error,
    page: "\
More pieces are to be cut from one cloth than the limit.

The limit is far beyond what any workroom cuts for one job, and is there so that no file can wear
out the machine that lays the pieces out. A width of cloth in another unit than was meant is the
most likely reason: each panel is then joined from many strips.

Correct the width of the cloth, or part the job into several.
",
    failing: Example::Made {
        words: "A row of a thousand panels, each joined from more than a hundred strips.",
        make: narrow_cloth,
    },
    mend: Example::Made {
        words: "The same row, its cloth as wide as was meant.",
        make: wide_cloth,
    },
};

/// So many pieces (`count`) are to be cut from one cloth, more than the `limit`.
pub fn too_many_pieces(name: &str, fabric: Option<Span>, count: u64, limit: u32) -> Diagnostic {
    CODE.report(format!(
        "{count} pieces are to be cut from `{name}`, more than the limit of {limit}"
    ))
    .label_if_known(fabric, format!("{count} pieces of this cloth"))
    .help("look for a unit that is wrong in the width of the cloth, or part the job into several")
}

fn narrow_cloth() -> Vec<u8> {
    row_of_a_thousand("54 mm")
}

fn wide_cloth() -> Vec<u8> {
    row_of_a_thousand("54 in")
}

/// A thousand panels of 5 m on one rod, from a cloth of this width.
fn row_of_a_thousand(width: &str) -> Vec<u8> {
    let row = vec!["front"; 1_000].join(", ");
    format!(
        "\
units inches
fabric sailcloth {{ width: {width} }}
rod pole {{ length: 5000 m, diameter: 1 in }}
make seamed {{ seam: 1/2 in, join: 1/4 in, lining: none }}
treatment valance {{
    panel front {{
        finished width: 5 m
        drop: 14 in
        head: over rod, tail 4 in
        make: seamed
        face: sailcloth
    }}
    row: {row}
}}
window hall: valance {{ rod: pole }}
"
    )
    .into_bytes()
}
