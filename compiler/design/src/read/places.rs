//! Where properties were written, for the source map.

use std::collections::BTreeMap;

use pelmet_diagnostics::Span;

use crate::closed_sets::ClosedSet;
use crate::copying::Properties;
use crate::scope::Value;
use crate::source_map::PanelKey;

/// The places of those properties that a diagnostic may point at.
pub(crate) fn places<Key: ClosedSet + Ord>(properties: &Properties<'_>) -> BTreeMap<Key, Span> {
    let places = properties.iter();
    places
        .filter_map(|(key, value)| Some((Key::of_word(key)?, value.span)))
        .collect()
}

/// Where the properties of a panel were written; a size where the number stands that it follows from.
pub(crate) fn panel_places(properties: &Properties<'_>) -> BTreeMap<PanelKey, Span> {
    let place = |key: PanelKey, value: &Value<'_>| {
        if key.is_size() {
            value.origin()
        } else {
            value.span
        }
    };
    let keys = properties.iter();
    keys.filter_map(|(word, value)| {
        let key = ClosedSet::of_word(word)?;
        Some((key, place(key, value)))
    })
    .collect()
}
