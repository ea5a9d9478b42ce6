//! Reading treatments: panels, their row, and what is always known inside.

use std::collections::BTreeMap;

use pelmet_diagnostics::{Diagnostic, codes, did_you_mean};
use pelmet_measure::{Length, Quantity};
use pelmet_model::{PanelOrder, SupportOrder};

use crate::amount::Amount;
use crate::closed_sets::{ClosedSet, KnownName};
use crate::copying::{Properties, overlaid};
use crate::item::Item;
use crate::kind::Kind;
use crate::lengths::Sign;
use crate::reader::Reader;
use crate::scope::{Binding, Scope, Value};
use crate::source_map::PanelSource;

/// A treatment read for one window. A panel that could not be read is missing, and the row with it.
pub(crate) struct TreatmentRead<'t> {
    /// Its panels with their places; `None` for one with anything wrong in it.
    pub panels: Vec<Option<(PanelOrder, PanelSource)>>,
    /// The names of the panels, in the same order.
    pub panel_names: Vec<&'t str>,
    /// The row, by index of panels.
    pub row: Option<Vec<usize>>,
    /// The panels over the joins.
    pub over_joins: Option<Vec<usize>>,
    /// How far neighbours lie over each other.
    pub overlap: Option<Length>,
    /// The return at each end.
    pub returns: Option<Length>,
    /// Its own properties, for their places.
    pub properties: Properties<'t>,
}

impl<'t> Reader<'t> {
    /// A treatment, its parameters and what is always known bound in `scope`.
    pub fn treatment(
        &mut self,
        item: &'t Item<'t>,
        scope: &Scope<'t>,
    ) -> Option<TreatmentRead<'t>> {
        let chain = self.copies(item, scope, &[])?;
        let properties = overlaid(&chain);
        let complete = self.has_all_needed(item, &properties);
        // A treatment that copies another and makes no panels of its own has those of the other.
        let (maker, maker_scope) = chain
            .iter()
            .find(|(item, _)| !item.panels.is_empty())
            .or(chain.first())?;
        let measures = maker
            .measures
            .iter()
            .map(|(name, written)| (*name, Binding::Here(*written)));
        let inner = maker_scope.with(measures.collect());
        let panels: Vec<Option<(PanelOrder, PanelSource)>> = maker
            .panels
            .iter()
            .map(|panel| self.panel(panel, &inner, &maker.panels))
            .collect();
        let panel_names: Vec<&'t str> = maker.panels.iter().map(|panel| panel.name).collect();
        let row = properties
            .get("row")
            .and_then(|value| self.panels_named(value, "row", &panel_names));
        let over_joins = match properties.get("over joins") {
            Some(value) => self.panels_named(value, "over joins", &panel_names),
            None => Some(Vec::new()),
        };
        Some(TreatmentRead {
            panels,
            panel_names,
            row: row.filter(|_| complete),
            over_joins,
            overlap: self.length_or_none(&properties, "overlap"),
            returns: self.length_or_none(&properties, "returns"),
            properties,
        })
    }

    /// Nothing where the property is left out, `None` where it was reported.
    fn length_or_none(&mut self, properties: &Properties<'t>, key: &str) -> Option<Length> {
        self.length_if(properties, key, Sign::NotNegative)
            .unwrap_or(Some(Length::ZERO))
    }

    /// `wing, bib, bib, wing`, as indexes of panels.
    fn panels_named(
        &mut self,
        value: &Value<'t>,
        property: &str,
        names: &[&'t str],
    ) -> Option<Vec<usize>> {
        let mut found = Vec::new();
        let mut sound = true;
        for mut cursor in self.phrases(value)? {
            let Some((name, span)) = cursor.any_word() else {
                if !cursor.is_broken() {
                    self.word_not_expected(cursor.span(), property, "names of panels");
                }
                sound = false;
                continue;
            };
            sound &= self
                .nothing_more(&cursor, property, "names of panels, with commas between")
                .is_some();
            match names.iter().position(|other| *other == name) {
                Some(index) => found.push(index),
                None => {
                    self.no_such_panel(name, span, names);
                    sound = false;
                }
            }
        }
        sound.then_some(found)
    }

    pub(crate) fn no_such_panel(
        &mut self,
        name: &str,
        span: pelmet_diagnostics::Span,
        names: &[&str],
    ) {
        let suggestion = did_you_mean(name, names.iter().copied());
        let diagnostic = Diagnostic::from(codes::NameUnknown {
            span,
            noun: "panel",
            word: "panel",
            name,
            suggestion,
        });
        let at_file_level = self.definitions.item(Kind::Panel, name).is_some();
        self.report(if at_file_level {
            diagnostic.help(format!("to hang the panel `{name}` here, write `panel {name} like {name} {{ }}` in the treatment"))
        } else {
            diagnostic
        });
    }
}

/// What is always known inside a treatment for this window.
pub(crate) fn known_in_treatment<'t>(
    opening: Option<(Length, Length)>,
    support: Option<&SupportOrder>,
) -> BTreeMap<&'t str, Binding<'t>> {
    let known = |length: Length| Binding::Known(Amount::fixed(Quantity::length(length)));
    let or_absent =
        |length: Option<Length>, property| length.map_or(Binding::Absent(property), known);
    let diameter = match support {
        Some(SupportOrder::Rod(rod)) => Some(rod.diameter),
        _ => None,
    };
    let mut bindings = BTreeMap::new();
    for name in Kind::Treatment.known_names() {
        let binding = match name {
            KnownName::OpeningWidth => or_absent(opening.map(|(width, _)| width), "opening"),
            KnownName::OpeningHeight => or_absent(opening.map(|(_, height)| height), "opening"),
            KnownName::RodLength => {
                support.map_or(Binding::Unknown, |support| known(support.length()))
            }
            KnownName::RodDiameter if support.is_some() => or_absent(diameter, "rod"),
            KnownName::Projection if support.is_some() => {
                or_absent(support.and_then(SupportOrder::projection), "projection")
            }
            KnownName::RodDiameter | KnownName::Projection | KnownName::Width | KnownName::Drop => {
                Binding::Unknown
            }
        };
        bindings.insert(name.word(), binding);
    }
    bindings
}
