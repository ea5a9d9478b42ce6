//! A flaw on a bolt that the cloth does not have.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "bolt-without-end",
    severity: Severity::Error,
    page: "\
A cloth that says nothing of the length of its bolt comes in one, however long it has to be. This flaw
lies on a later bolt, of which there is none.

Say how long a bolt is, as `bolt: 40 yd`, or take `on bolt` out.
",
    failing: Example::Text(
        "\
fabric calico { width: 45 in, flaws: 1 yd to 40 in on bolt 2 }
",
    ),
    mend: Example::Text(
        "\
fabric calico { width: 45 in, bolt: 40 yd, flaws: 1 yd to 40 in on bolt 2 }
",
    ),
};

/// The flaw at `span` lies on bolt `number` of the cloth `name`, whose bolt has no end.
pub fn bolt_without_end(span: Span, name: &str, number: u32) -> Diagnostic {
    CODE.report(format!(
        "a flaw lies on bolt {number} of `{name}`, which comes in one length without end"
    ))
    .label(span, format!("there is no bolt {number}"))
    .help("add how long a bolt is, such as `bolt: 40 yd`, or leave `on bolt` out")
}
