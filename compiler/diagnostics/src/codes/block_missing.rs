//! An item without its properties.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "block-missing",
    severity: Severity::Error,
    page: "\
The line names an item, and the curly brackets with its properties are missing.

Write them after the name: `fabric kelp-stripe { width: 54 in }`.
",
    failing: Example::Text("fabric kelp-stripe\n"),
    mend: Example::Text("fabric kelp-stripe { width: 54 in }\n"),
};

/// An item ends where the block with its properties should begin.
pub struct BlockMissing<'a> {
    /// The item, as far as it goes.
    pub span: Span,
    /// What it is, as a sentence names it: "the fabric".
    pub item: &'a str,
    /// A line that belongs in the block.
    pub line: &'a str,
}

impl From<BlockMissing<'_>> for Diagnostic {
    fn from(told: BlockMissing<'_>) -> Diagnostic {
        let BlockMissing { span, item, line } = told;
        CODE.report(format!("{item} is not described"))
            .label(span, "its properties are missing")
            .help(format!(
                "write them between curly brackets after the name: `{{ {line} }}`"
            ))
    }
}
