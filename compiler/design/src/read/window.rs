//! Reading windows.

use std::collections::BTreeMap;

use pelmet_diagnostics::{Diagnostic, Span, codes};
use pelmet_measure::Length;
use pelmet_model::{Motif, SupportOrder, WindowOrder};
use pelmet_syntax::tree::{Argument, Term, TermKind};

use crate::copying::{Properties, overlaid};
use crate::item::Item;
use crate::kind::Kind;
use crate::lengths::Sign;
use crate::read::places::places;
use crate::read::treatment::known_in_treatment;
use crate::reader::Reader;
use crate::scope::{Binding, Scope, Value, Written};
use crate::source_map::{ItemSource, WindowSource};
use crate::term::name_span;

/// How a window hangs: its rod or board and the height of its top.
type Hung = (SupportOrder, Option<Length>);

impl<'t> Reader<'t> {
    /// A window, by its item, with its places.
    pub fn window(&mut self, item: &'t Item<'t>) -> Option<(WindowOrder, WindowSource)> {
        let before = self.diagnostics.len();
        let chain = self.copies(item, &Scope::default(), &[])?;
        let properties = overlaid(&chain);
        let damaged = chain.iter().any(|(item, _)| item.damaged);
        let opening = properties
            .get("opening")
            .map(|value| self.size(value, "opening"));
        let hung = self.hung(item, &properties);
        let called = chain.iter().find_map(|(item, _)| item.treatment)?;
        let treatment = self.treatment_called(called)?;
        self.unknown_properties(item, treatment);
        let always =
            known_in_treatment(opening.flatten(), hung.as_ref().map(|(support, _)| support));
        let scope = self.treatment_scope(item, treatment, called, &properties, always)?;
        let read = self.treatment(treatment, &scope)?;
        let motif = properties
            .get("motif")
            .map(|value| self.motif(value, &read.panel_names));
        let public_room = properties
            .get("public room")
            .map(|value| self.choice(value, "public room"));
        let (support, top_at) = hung?;
        let (orders, ways): (Vec<_>, Vec<_>) = read
            .panels
            .into_iter()
            .collect::<Option<Vec<_>>>()?
            .into_iter()
            .unzip();
        let order = WindowOrder {
            name: item.name.to_owned(),
            opening: opening.flatten(),
            support,
            top_at,
            public_room: public_room.flatten().unwrap_or(false),
            returns: read.returns?,
            overlap: read.overlap?,
            panels: orders,
            row: read.row?,
            over_joins: read.over_joins?,
            motif: motif.flatten(),
        };
        let mut spans = places(&read.properties);
        spans.extend(places(&properties));
        let way = WindowSource {
            item: ItemSource {
                name: item.name_span,
                properties: spans,
            },
            panels: ways,
        };
        (!damaged && self.diagnostics.len() == before).then_some((order, way))
    }

    /// The rod or the board of a window; it needs one and only one.
    fn hung(&mut self, item: &'t Item<'t>, properties: &Properties<'t>) -> Option<Hung> {
        match (properties.get("rod"), properties.get("board")) {
            (Some(value), None) => self.support(value, Kind::Rod),
            (None, Some(value)) => self.support(value, Kind::Board),
            (Some(rod), Some(board)) => {
                self.report(codes::RodAndBoard {
                    board: board.span,
                    rod: rod.span,
                    name: item.name,
                });
                None
            }
            (None, None) => {
                self.missing(item, "rod");
                None
            }
        }
    }

    fn treatment_called(&mut self, called: &'t Term) -> Option<&'t Item<'t>> {
        let name = match &called.kind {
            TermKind::Name(name) => name,
            TermKind::Call(call) => &call.name.text,
            TermKind::Broken(_) => return None,
            _ => {
                self.word_not_expected(called.span, "window", "the name of a treatment");
                return None;
            }
        };
        let definitions = self.definitions;
        let found = definitions.item(Kind::Treatment, name);
        match found {
            Some(item) => {
                self.used.insert((Kind::Treatment, item.name));
                Some(item)
            }
            None => {
                self.no_such_item(name, name_span(called), Kind::Treatment);
                None
            }
        }
    }

    /// A window has its own properties and the parameters of its treatment, and no others.
    fn unknown_properties(&mut self, item: &'t Item<'t>, treatment: &'t Item<'t>) {
        let parameters: Vec<&str> = treatment.parameter_names().collect();
        for key in item.properties.keys() {
            if Kind::Window.property(key).is_some() || parameters.contains(key) {
                continue;
            }
            let mut known: Vec<&str> = Kind::Window
                .properties()
                .iter()
                .map(|property| property.key)
                .collect();
            known.extend(&parameters);
            self.report(codes::PropertyUnknown {
                span: item.key_span(key),
                item: "window",
                property: key,
                known: &known,
            });
        }
    }

    /// The parameters of a treatment: given in brackets, as properties of the window, or by default.
    fn treatment_scope(
        &mut self,
        window: &'t Item<'t>,
        treatment: &'t Item<'t>,
        called: &'t Term,
        properties: &Properties<'t>,
        mut bindings: BTreeMap<&'t str, Binding<'t>>,
    ) -> Option<Scope<'t>> {
        let arguments: &[Argument] = match &called.kind {
            TermKind::Call(call) => &call.arguments,
            _ => &[],
        };
        let root = Scope::default();
        let mut sound = true;
        for (position, argument) in arguments.iter().enumerate() {
            let parameter = self.parameter_for(treatment, position, argument);
            sound &= parameter.is_some();
            if let (Some(parameter), Some(phrase)) = (parameter, &argument.value) {
                bindings.insert(
                    parameter,
                    Binding::Given(Written::phrase(phrase).within(&root)),
                );
            }
        }
        for parameter in &treatment.parameters {
            if let Some(value) = properties.get(parameter.name) {
                bindings.insert(parameter.name, Binding::Given(value.clone()));
            } else if bindings.contains_key(parameter.name) {
                // Given in brackets.
            } else if let Some(default) = parameter.default {
                bindings.insert(parameter.name, Binding::Here(default));
            } else {
                sound = false;
                if !window.damaged {
                    let owner = format!("the window `{}`", window.name);
                    let line = self.line_for_parameter(parameter.name);
                    let diagnostic = Diagnostic::from(codes::PropertyMissing {
                        span: window.place(),
                        item: &owner,
                        property: parameter.name,
                        line: &line,
                    });
                    self.report(diagnostic.label(parameter.span, "the treatment asks for it here"));
                }
            }
        }
        sound.then(|| Scope::default().with(bindings))
    }

    /// A line that gives a parameter of a treatment, as the property of a panel would be given that
    /// has its name.
    fn line_for_parameter(&self, name: &str) -> String {
        match Kind::Panel.property(name) {
            Some(property) => self.line_for(None, property),
            None => format!("{name}: …"),
        }
    }

    /// `centred on bib, 8 in below heading`.
    fn motif(&mut self, value: &Value<'t>, names: &[&'t str]) -> Option<Motif> {
        const MOTIF: &str = "such as `centred on bib, 8 in below heading`";
        let cursors = self.phrases(value)?;
        let [mut on, mut height]: [crate::cursor::Cursor<'t>; 2] = match cursors.try_into() {
            Ok(both) => both,
            Err(_) => {
                self.word_not_expected(value.span, "motif", MOTIF);
                return None;
            }
        };
        if !on.words(&["centred", "on"]) {
            self.word_not_expected(on.span(), "motif", MOTIF);
            return None;
        }
        let Some((name, span)) = on.any_word() else {
            self.word_not_expected(on.end(), "motif", MOTIF);
            return None;
        };
        self.nothing_more(&on, "motif", MOTIF)?;
        height.words(&["at"]);
        let below_heading = self.length_at(&mut height, "motif", Sign::NotNegative)?;
        height.words(&["below", "heading"]);
        self.nothing_more(&height, "motif", MOTIF)?;
        let Some(panel) = names.iter().position(|other| *other == name) else {
            self.no_such_panel(name, span, names);
            return None;
        };
        Some(Motif {
            panel,
            below_heading,
        })
    }
}

impl Item<'_> {
    /// Where a property's key stands, or its value for a window of a list.
    fn key_span(&self, key: &str) -> Span {
        let written = self.properties.get(key).map(|written| written.span);
        self.key_spans
            .get(key)
            .copied()
            .or(written)
            .unwrap_or(self.name_span)
    }
}
