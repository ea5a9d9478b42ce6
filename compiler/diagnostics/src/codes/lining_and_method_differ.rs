//! A lining without a method for it, or a method for a lining without one.

use crate::example::one_window;
use crate::{Code, Diagnostic, Fix, Severity, Span};

/// Its page for `pelmet explain`, with an example and the mend.
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

/// A layer that a panel and its making method do not agree on.
pub struct LayerAndMethod<'a> {
    /// The panel, as a sentence names it: "the panel `bib` of `north`".
    pub panel: String,
    /// Where the panel names the cloth of the layer, or else was named itself.
    pub layer: Span,
    /// Where the panel names its making method.
    pub make: Span,
    /// What the making method is called.
    pub method: &'a str,
    /// A cloth that the layer could be made of, where the method makes it and the panel names none;
    /// nothing where the panel names one in vain.
    pub cloth: Option<&'a str>,
}

/// A panel names a lining that its making method does not make, or names none where it does.
pub struct LiningAndMethodDiffer<'a>(pub LayerAndMethod<'a>);

impl From<LiningAndMethodDiffer<'_>> for Diagnostic {
    fn from(LiningAndMethodDiffer(differ): LiningAndMethodDiffer<'_>) -> Diagnostic {
        let LayerAndMethod {
            panel,
            layer,
            make,
            method,
            cloth,
        } = differ;
        match cloth {
            Some(cloth) => CODE
                .report(format!(
                    "{panel} names no lining, and its making method `{method}` needs one"
                ))
                .label(layer, "no lining is named here")
                .label(make, "this method lines the panel")
                .help(format!(
                    "add a line such as `lining: {cloth}`, or choose a making method without a lining"
                )),
            None => CODE
                .report(format!(
                    "{panel} names a lining, and its making method `{method}` has none"
                ))
                .label(layer, "a lining is named here")
                .label(make, "this method makes no lining")
                .help("write `lining: none`, or choose a making method with a lining")
                .fix(Fix::replace("leave the lining out", layer, "none")),
        }
    }
}
