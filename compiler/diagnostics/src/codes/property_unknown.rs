//! A property that this kind of item does not have.

use crate::{Code, Diagnostic, Example, Fix, Severity, Span, did_you_mean, listed, with_article};

/// Its page for `pelmet explain`, with an example and the mend.
pub const CODE: Code = Code {
    slug: "property-unknown",
    severity: Severity::Error,
    page: "\
The item has no property of this name. The name may be misspelt, or the property may belong to another
kind of item.

A property that is passed over in silence is the worst of mistakes: the file says one thing and the
shears follow another.

Write one of the properties the item has, or move the line to the item it belongs to.
",
    failing: Example::Text("\
fabric kelp-stripe {
    width: 54 in
    wieght: 210 g/m2
}
"),
    mend: Example::Text("\
fabric kelp-stripe {
    width: 54 in
    weight: 210 g/m2
}
"),
};

/// An item is given a property that its kind does not have.
pub struct PropertyUnknown<'a> {
    /// The name that is no property.
    pub span: Span,
    /// What the item is, without an article: "fabric".
    pub item: &'a str,
    /// The same as it is written.
    pub property: &'a str,
    /// The properties that such an item has.
    pub known: &'a [&'a str],
}

impl From<PropertyUnknown<'_>> for Diagnostic {
    fn from(told: PropertyUnknown<'_>) -> Diagnostic {
        let PropertyUnknown {
            span,
            item,
            property,
            known,
        } = told;
        let item = with_article(item);
        let diagnostic = CODE
            .report(format!("{item} has no `{property}`"))
            .label(span, "no such property here");
        match did_you_mean(property, known.iter().copied()) {
            Some(nearest) => diagnostic
                .help(format!("did you mean `{nearest}`?"))
                .fix(Fix::replace(format!("write `{nearest}`"), span, nearest)),
            None if known.is_empty() => diagnostic.help("take it out"),
            None => diagnostic.help(format!("{item} has {}", listed(known, "and"))),
        }
    }
}
