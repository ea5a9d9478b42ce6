//! A lining without a method for it, or a method for a lining without one.

use crate::example::one_window;
use crate::{Code, Diagnostic, Fix, Severity, Span};

/// A lining without a method for it, or a method for a lining without one.
pub const CODE: Code = Code {
    slug: "lining-and-method-differ",
    severity: Severity::Error,
    page: "\
The panel names a lining and its making method has none, or the method lines its panels and this one
names no lining.

Whether there is a lining decides how the edges are made and how much cloth is bought.

Name a cloth for the lining, write `lining: none`, or choose another making method.
",
    failing: one_window! {
        panel: ["finished width: 40 in", "drop: 14 in", "lining: sailcloth"],
    },
    mend: one_window! {
        panel: ["finished width: 40 in", "drop: 14 in", "lining: none"],
    },
};

/// `panel` names a `lining` and its `method` has none; or, with the `cloth` it could be lined with, the
/// method lines and the panel names no lining.
pub fn lining_and_method_differ(
    panel: &str,
    (lining, make): (Span, Span),
    method: &str,
    cloth: Option<&str>,
) -> Diagnostic {
    match cloth {
        Some(cloth) => CODE
            .report(format!(
                "{panel} names no lining, and its making method `{method}` needs one"
            ))
            .label(lining, "no lining is named here")
            .label(make, "this method lines the panel")
            .help(format!(
                "add a line such as `lining: {cloth}`, or choose a making method without a lining"
            )),
        None => CODE
            .report(format!(
                "{panel} names a lining, and its making method `{method}` has none"
            ))
            .label(lining, "a lining is named here")
            .label(make, "this method makes no lining")
            .help("write `lining: none`, or choose a making method with a lining")
            .fix(Fix::replace("leave the lining out", lining, "none")),
    }
}
