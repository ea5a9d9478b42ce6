//! More flaws on one cloth than the limit.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "too-many-flaws",
    severity: Severity::Error,
    page: "\
The cloth has more flaws to cut around than the limit. The limit is there since every place for a
piece is held against every flaw of its bolt.

Cloth with so many flaws goes back to whoever sold it. Where some lie close together, write them as
one.
",
    failing: Example::Made {
        words: "A cloth with three hundred flaws.",
        make: || flawed(300),
    },
    mend: Example::Made {
        words: "The same cloth with ten of them.",
        make: || flawed(10),
    },
};

/// What stands at `here` is the first beyond the `limit`.
pub fn too_many_flaws(here: Span, limit: usize) -> Diagnostic {
    CODE.report(format!("the cloth has more than {limit} flaws"))
        .label(here, "this is one too many")
        .help("write flaws that lie close together as one, or take another cloth")
}

/// A cloth with so many flaws, one each inch.
fn flawed(count: usize) -> Vec<u8> {
    let flaws: Vec<String> = (1..=count)
        .map(|inch| format!("{inch} in to {inch} 1/4 in"))
        .collect();
    format!(
        "fabric calico {{ width: 45 in, flaws: {} }}\n",
        flaws.join(", ")
    )
    .into_bytes()
}
