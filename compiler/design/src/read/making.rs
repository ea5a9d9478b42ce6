//! Reading making methods.

use std::collections::BTreeMap;

use pelmet_diagnostics::Span;
use pelmet_measure::Length;
use pelmet_model::{Layer, LayerMaking, Making, TapeOrder};

use crate::closed_sets::PanelEdge;
use crate::copying::{Properties, overlaid};
use crate::item::Item;
use crate::lengths::Sign;
use crate::read::places::places;
use crate::reader::Reader;
use crate::scope::{Scope, Value};
use crate::source_map::{MakingKey, SentencePlace};

const TAPE: &str = "a width, then perhaps `on top`, `on sides`, `on lower edge`";

/// A making method with the place of each of its numbers and of the words of its steps.
pub(crate) type PlacedMaking = (Making, BTreeMap<MakingKey, Span>, Vec<Vec<SentencePlace>>);

impl<'t> Reader<'t> {
    /// A making method, by its item.
    pub fn making(&mut self, item: &'t Item<'t>, scope: &Scope<'t>) -> Option<PlacedMaking> {
        let chain = self.copies(item, scope, &[])?;
        let properties = overlaid(&chain);
        let steps = chain.iter().find(|(item, _)| !item.work_steps.is_empty());
        let (steps, step_places) = steps.map_or_else(Default::default, |(item, scope)| {
            self.work_steps(&item.work_steps, scope)
        });
        let complete = self.has_all_needed(item, &properties);
        let seam = self.length_or(&properties, "seam", Length::ZERO);
        let (edges, mitred) = self.edges_of_face(item, &properties, seam);
        let face = LayerMaking {
            edges,
            longer: Length::ZERO,
            wider: Length::ZERO,
        };
        let interlining = self.layer_behind(&properties, Layer::Interlining, edges)?;
        let lining = self.layer_behind(&properties, Layer::Lining, edges)?;
        let self_lined = self.is_self_lined(&properties);
        let band = properties.get("band").and_then(|value| self.bands(value));
        self.check_contradictions(item, &properties, self_lined, band);
        let making = Making {
            name: item.name.to_owned(),
            face,
            interlining,
            lining,
            self_lined,
            band,
            mitred,
            seam,
            join: self.length_or(&properties, "join", seam),
            tape: self.tape(&properties),
            turning_opening: properties
                .get("turning opening")
                .and_then(|value| self.turning_opening(value)),
            stack: properties.get("stack").and_then(|value| self.stack(value)),
            notions: self.making_notions(item, &properties),
            work: properties
                .get("work")
                .and_then(|value| self.work(value))
                .unwrap_or_default(),
            steps,
        };
        complete.then_some((making, places(&properties), step_places))
    }

    /// `3/8 in wide, on sides, on lower edge`.
    fn tape(&mut self, properties: &Properties<'t>) -> Option<TapeOrder> {
        let value = properties.get("tape")?;
        let mut cursors = self.phrases(value)?.into_iter();
        let mut first = cursors.next()?;
        let width = self.length_at(&mut first, "tape", Sign::Positive)?;
        first.words(&["wide"]);
        self.nothing_more(&first, "tape", TAPE)?;
        let mut tape = TapeOrder {
            width,
            top: false,
            sides: false,
            lower: false,
            roll: self
                .length_if(properties, "tape roll", Sign::Positive)
                .flatten(),
        };
        let mut anywhere = false;
        for mut cursor in cursors {
            anywhere = true;
            match cursor.word_and_one_of("on") {
                Some(PanelEdge::Top) => tape.top = true,
                Some(PanelEdge::Sides) => tape.sides = true,
                Some(PanelEdge::Lower) => tape.lower = true,
                None => {
                    self.word_not_expected(cursor.span(), "tape", TAPE);
                    return None;
                }
            }
            self.nothing_more(&cursor, "tape", TAPE)?;
        }
        if !anywhere {
            (tape.top, tape.sides, tape.lower) = (true, true, true);
        }
        Some(tape)
    }

    /// `5 in at top`.
    fn turning_opening(&mut self, value: &Value<'t>) -> Option<Length> {
        let can_be = "a length, such as `6 in at top`";
        let mut cursor = self.one_phrase(value, "turning opening", can_be)?;
        let length = self.length_at(&mut cursor, "turning opening", Sign::Positive)?;
        cursor.words(&["at", "top"]);
        self.nothing_more(&cursor, "turning opening", can_be)?;
        Some(length)
    }
    /// `at most 1/4 in`.
    fn stack(&mut self, value: &Value<'t>) -> Option<Length> {
        let can_be = "`at most` and a length";
        let mut cursor = self.one_phrase(value, "stack", can_be)?;
        cursor.words(&["at", "most"]);
        let length = self.length_at(&mut cursor, "stack", Sign::Positive)?;
        self.nothing_more(&cursor, "stack", can_be)?;
        Some(length)
    }
}
