//! Reading making methods.

use std::collections::BTreeMap;

use pelmet_diagnostics::Span;
use pelmet_measure::Length;
use pelmet_workroom::{Allowance, EdgeAllowances, LayerMaking, Making, TapeOrder};

use crate::copying::Properties;
use crate::item::Item;
use crate::lengths::Sign;
use crate::reader::Reader;
use crate::scope::{Scope, Value};

const ALLOWANCE: &str = "`3/8 in`, `hem 2 in, turn 1/2 in` or `double hem 2 in`";
const LINING: &str = "`none`, `as face`, or lengths `longer`, `shorter`, `wider` or `narrower`";
const TAPE: &str = "a width, then perhaps `on top`, `on sides`, `on lower edge`";

/// A making method with the place of each of its numbers.
pub(crate) type PlacedMaking = (Making, BTreeMap<String, Span>);

impl<'t> Reader<'t> {
    /// A making method, by its item.
    pub fn making(&mut self, item: &'t Item<'t>, scope: &Scope<'t>) -> Option<PlacedMaking> {
        let properties = self.properties(item, scope)?;
        let complete = self.has_all_needed(item, &properties);
        let seam = self
            .length_if(&properties, "seam", Sign::NotNegative)
            .flatten();
        let seam = Allowance::Seam(seam.unwrap_or(Length::ZERO));
        let edges = self.edges(&properties, ["top", "sides", "lower edge"], [seam; 3]);
        let face = LayerMaking {
            edges,
            longer: Length::ZERO,
            wider: Length::ZERO,
        };
        let lining_edges = self.edges(
            &properties,
            ["lining top", "lining sides", "lining lower edge"],
            [edges.top, edges.sides, edges.lower],
        );
        let lining = match properties.get("lining") {
            Some(value) => self.lining_making(value, lining_edges)?,
            None => Some(LayerMaking {
                edges: lining_edges,
                ..face
            }),
        };
        let making = Making {
            name: item.name.to_owned(),
            face,
            lining,
            join: self.length_or(&properties, "join", seam.total()),
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
        };
        let spans = properties
            .iter()
            .map(|(key, value)| ((*key).to_owned(), value.span))
            .collect();
        complete.then_some((making, spans))
    }

    fn edges(
        &mut self,
        properties: &Properties<'t>,
        keys: [&str; 3],
        otherwise: [Allowance; 3],
    ) -> EdgeAllowances {
        let [top, sides, lower] = keys;
        let [top_otherwise, sides_otherwise, lower_otherwise] = otherwise;
        EdgeAllowances {
            top: self.allowance_or(properties, top, top_otherwise),
            sides: self.allowance_or(properties, sides, sides_otherwise),
            lower: self.allowance_or(properties, lower, lower_otherwise),
        }
    }

    fn allowance_or(
        &mut self,
        properties: &Properties<'t>,
        key: &str,
        otherwise: Allowance,
    ) -> Allowance {
        properties
            .get(key)
            .and_then(|value| self.allowance(value, key))
            .unwrap_or(otherwise)
    }

    /// `3/8 in`, `hem 2 in, turn 1/2 in`, `double hem 2 in`.
    fn allowance(&mut self, value: &Value<'t>, key: &str) -> Option<Allowance> {
        let mut cursors = self.phrases(value)?.into_iter();
        let mut first = cursors.next()?;
        let (double, single) = (first.words(&["double", "hem"]), first.words(&["hem"]));
        let length = self.length_at(&mut first, key, Sign::NotNegative)?;
        self.nothing_more(&first, key, ALLOWANCE)?;
        let mut turn = None;
        for mut cursor in cursors {
            if !single || !cursor.words(&["turn"]) {
                self.word_not_expected(cursor.span(), key, ALLOWANCE);
                return None;
            }
            turn = Some(self.length_at(&mut cursor, key, Sign::NotNegative)?);
            self.nothing_more(&cursor, key, ALLOWANCE)?;
        }
        Some(if double {
            Allowance::DoubleHem(length)
        } else if single {
            Allowance::SingleHem {
                depth: length,
                turn: turn.unwrap_or(Length::ZERO),
            }
        } else {
            Allowance::Seam(length)
        })
    }

    /// What the lining gets; the inner `None` for a method without lining.
    fn lining_making(
        &mut self,
        value: &Value<'t>,
        edges: EdgeAllowances,
    ) -> Option<Option<LayerMaking>> {
        let mut making = LayerMaking {
            edges,
            longer: Length::ZERO,
            wider: Length::ZERO,
        };
        for mut cursor in self.phrases(value)? {
            if cursor.words(&["none"]) {
                self.nothing_more(&cursor, "lining", LINING)?;
                return Some(None);
            }
            if cursor.words(&["as", "face"]) {
                self.nothing_more(&cursor, "lining", LINING)?;
                continue;
            }
            let length = self.length_at(&mut cursor, "lining", Sign::NotNegative)?;
            let word = cursor.any_word();
            match word.map(|(word, _)| word) {
                Some("longer") => making.longer = length,
                Some("shorter") => making.longer = -length,
                Some("wider") => making.wider = length,
                Some("narrower") => making.wider = -length,
                _ => {
                    let place = word.map_or(cursor.end(), |(_, span)| span);
                    self.word_not_expected(place, "lining", LINING);
                    return None;
                }
            }
            self.nothing_more(&cursor, "lining", LINING)?;
        }
        Some(Some(making))
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
            match () {
                () if cursor.words(&["on", "top"]) => tape.top = true,
                () if cursor.words(&["on", "sides"]) => tape.sides = true,
                () if cursor.words(&["on", "lower", "edge"]) => tape.lower = true,
                () => {
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
