//! A cloth for bands without a method for them, or a method with bands without a cloth.

use crate::example::one_window;
use crate::{Code, Diagnostic, Fix, Severity};

use super::lining_and_method_differ::LayerAndMethod;

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "band-and-method-differ",
    severity: Severity::Error,
    page: "\
The panel names a cloth for its bands and its making method has none, or the method bands its panels
and this one names no cloth for it.

Where bands lie and how deep they are is said by the making method: `band: 3 in at lower edge`. Of what
they are cut is said by the panel.

Name a cloth for the band, write `band: none`, or choose another making method.
",
    failing: one_window! {
        make: "seam: 1/2 in, lining: none, band: 3 in at lower edge",
        panel: ["finished width: 40 in", "drop: 14 in"],
    },
    mend: one_window! {
        make: "seam: 1/2 in, lining: none, band: 3 in at lower edge",
        items: "fabric rust { width: 54 in }\n",
        panel: ["finished width: 40 in", "drop: 14 in", "band: rust"],
    },
};

/// A panel names a cloth for bands that its making method does not make, or names none where it does.
pub struct BandAndMethodDiffer<'a>(pub LayerAndMethod<'a>);

impl From<BandAndMethodDiffer<'_>> for Diagnostic {
    fn from(BandAndMethodDiffer(differ): BandAndMethodDiffer<'_>) -> Diagnostic {
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
                    "{panel} names no cloth for its bands, and its making method `{method}` needs one"
                ))
                .label(layer, "no cloth for a band is named here")
                .label(make, "this method bands the panel")
                .help(format!(
                    "add a line such as `band: {cloth}`, or choose a making method without bands"
                )),
            None => CODE
                .report(format!(
                    "{panel} names a cloth for its bands, and its making method `{method}` has none"
                ))
                .label(layer, "a cloth for a band is named here")
                .label(make, "this method makes no band")
                .help(
                    "write `band: none`, or give the making method a line such as `band: 3 in at lower edge`",
                )
                .fix(Fix::replace("leave the band out", layer, "none")),
        }
    }
}
