//! An interlining without a method for it, or a method for an interlining without one.

use crate::example::one_window;
use crate::{Code, Diagnostic, Fix, Severity};

use super::lining_and_method_differ::LayerAndMethod;

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "interlining-and-method-differ",
    severity: Severity::Error,
    page: "\
The panel names an interlining and its making method has none, or the method interlines its panels
and this one names no interlining.

An interlining lies between face and lining. It is cut and bought like any other layer, and what it
gets at its edges is said by the making method: `interlining: as face`.

Name a cloth for the interlining, write `interlining: none`, or choose another making method.
",
    failing: one_window! {
        make: "seam: 1/2 in, lining: none",
        items: "fabric flannel { width: 54 in }\n",
        panel: ["finished width: 40 in", "drop: 14 in", "interlining: flannel"],
    },
    mend: one_window! {
        make: "seam: 1/2 in, lining: none, interlining: as face",
        items: "fabric flannel { width: 54 in }\n",
        panel: ["finished width: 40 in", "drop: 14 in", "interlining: flannel"],
    },
};

/// A panel names an interlining that its making method does not make, or names none where it does.
pub struct InterliningAndMethodDiffer<'a>(pub LayerAndMethod<'a>);

impl From<InterliningAndMethodDiffer<'_>> for Diagnostic {
    fn from(InterliningAndMethodDiffer(differ): InterliningAndMethodDiffer<'_>) -> Diagnostic {
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
                    "{panel} names no interlining, and its making method `{method}` needs one"
                ))
                .label(layer, "no interlining is named here")
                .label(make, "this method interlines the panel")
                .help(format!(
                    "add a line such as `interlining: {cloth}`, or choose a making method without an \
                     interlining"
                )),
            None => CODE
                .report(format!(
                    "{panel} names an interlining, and its making method `{method}` has none"
                ))
                .label(layer, "an interlining is named here")
                .label(make, "this method makes no interlining")
                .help(
                    "write `interlining: none`, or give the making method a line such as `interlining: as \
                     face`",
                )
                .fix(Fix::replace(
                    "leave the interlining out",
                    layer,
                    "none",
                )),
        }
    }
}
