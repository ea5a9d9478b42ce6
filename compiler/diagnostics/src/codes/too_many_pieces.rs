//! More pieces to cut from one cloth than the limit.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "too-many-pieces",
    severity: Severity::Error,
    page: "\
More pieces are to be cut from one cloth than the limit.

The limit is far beyond what any workroom cuts for one job, and is there so that no file can wear
out the machine that lays the pieces out. A length in another unit than was meant is the most likely
reason: each panel is then joined from many strips.

Correct the length, or part the job into several.
",
    failing: Example::Made {
        words: "A row of a thousand panels, each joined from more than a hundred strips.",
        make: thousand_panels,
    },
    mend: Example::Made {
        words: "A row of ten such panels.",
        make: ten_panels,
    },
};

/// More pieces are to be cut from one cloth than are laid.
pub struct TooManyPieces<'a> {
    /// The cloth that they are cut from.
    pub name: &'a str,
    /// Where the cloth was described, if that is known.
    pub fabric: Option<Span>,
    /// How many pieces.
    pub count: u64,
    /// The most that are laid.
    pub limit: u32,
}

impl From<TooManyPieces<'_>> for Diagnostic {
    fn from(told: TooManyPieces<'_>) -> Diagnostic {
        let TooManyPieces {
            name,
            fabric,
            count,
            limit,
        } = told;
        CODE.report(format!(
            "{count} pieces are to be cut from `{name}`, more than the limit of {limit}"
        ))
        .label_if_known(fabric, format!("{count} pieces of this cloth"))
        .help("look for a length in a wrong unit, or part the job into several")
    }
}

fn thousand_panels() -> Vec<u8> {
    row_of(1_000)
}

fn ten_panels() -> Vec<u8> {
    row_of(10)
}

/// So many gathered panels of 9 m on one rod, from a narrow cloth.
fn row_of(panels: usize) -> Vec<u8> {
    let row = vec!["front"; panels].join(", ");
    format!(
        "\
units inches
fabric braid {{ width: 14 in }}
rod pole {{ length: {panels} * 9 m, diameter: 1 in }}
make seamed {{ seam: 1/2 in, join: 1/4 in, lining: none }}
treatment valance {{
    panel front {{
        finished width: 9 m
        fullness: 4 times
        drop: 14 in
        head: over rod, tail 4 in
        make: seamed
        face: braid
    }}
    row: {row}
}}
window hall: valance {{ rod: pole }}
"
    )
    .into_bytes()
}
