//! A sum in which the width of the panel is more than added and multiplied.

use crate::{Code, Diagnostic, Example, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "width-not-in-proportion",
    severity: Severity::Error,
    page: "\
An outline is drawn before the width of its panel is known, in proportion: a part of the width, plus
or minus a length. Widths multiplied with each other or used to divide by are no proportion.

Write the point as a part of the width and a length: `width * 2/5 + 1 in`.
",
    failing: Example::Text(
        "\
outline slanted {
    from (0, drop)
    to (width, drop - width * width / 40 in)
    up to heading
}
",
    ),
    mend: Example::Text(
        "\
outline slanted {
    from (0, drop)
    to (width, drop - width / 10)
    up to heading
}
",
    ),
};

/// The sum at `span` uses the width as no proportion can.
pub fn width_not_in_proportion(span: Span) -> Diagnostic {
    CODE.report("this sum does not keep in proportion to the width")
        .label(
            span,
            "the width can be multiplied or divided by plain numbers, and added to",
        )
        .help("write a part of the width and a length, such as `width * 2/5 + 1 in`")
}
