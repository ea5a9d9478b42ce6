//! Reading the bands of a making method, and what cannot stand beside one another in it.

use pelmet_diagnostics::{PlacedText, codes};
use pelmet_measure::Length;
use pelmet_model::BandOrder;

use crate::closed_sets::PanelEdge;
use crate::copying::Properties;
use crate::cursor::Cursor;
use crate::item::Item;
use crate::lengths::Sign;
use crate::reader::Reader;
use crate::scope::Value;

const BAND: &str = "such as `3 in at lower edge, 2 in at sides`, then perhaps `laid on face`";

/// What a panel whose face is folded up behind itself has no edge or no cloth for.
const NOT_BESIDE_SELF: &[&str] = &[
    "lower edge",
    "lining top",
    "lining sides",
    "lining lower edge",
    "band",
];

impl<'t> Reader<'t> {
    /// `3 in at lower edge, 2 in at sides`, `3 in at lower edge, laid on face`, `none`.
    pub fn bands(&mut self, value: &Value<'t>) -> Option<BandOrder> {
        let mut order = BandOrder {
            top: None,
            sides: None,
            lower: None,
            laid_on: false,
        };
        for mut cursor in self.phrases(value)? {
            if cursor.words(&["none"]) {
                self.nothing_more(&cursor, "band", BAND)?;
                return None;
            }
            if cursor.words(&["laid", "on", "face"]) {
                order.laid_on = true;
            } else {
                let depth = self.length_at(&mut cursor, "band", Sign::Positive)?;
                self.band_at(&mut cursor, depth, &mut order)?;
            }
            self.nothing_more(&cursor, "band", BAND)?;
        }
        Some(order)
    }

    fn band_at(
        &mut self,
        cursor: &mut Cursor<'t>,
        depth: Length,
        order: &mut BandOrder,
    ) -> Option<()> {
        match cursor.word_and_one_of("at") {
            Some(PanelEdge::Top) => order.top = Some(depth),
            Some(PanelEdge::Sides) => order.sides = Some(depth),
            Some(PanelEdge::Lower) => order.lower = Some(depth),
            None => {
                let place = cursor.peek().map_or(cursor.end(), |term| term.span);
                self.word_not_expected(place, "band", BAND);
                return None;
            }
        }
        Some(())
    }

    /// Whether the face of a method lines itself: `lining: self`.
    pub fn is_self_lined(&mut self, properties: &Properties<'t>) -> bool {
        let lining = properties.get("lining");
        lining.is_some_and(|value| self.is_word(value, "self"))
    }

    /// Reports the properties that another one of the same method leaves nothing to do.
    pub fn check_contradictions(
        &mut self,
        item: &Item<'t>,
        properties: &Properties<'t>,
        self_lined: bool,
        band: Option<BandOrder>,
    ) {
        let mut pairs: Vec<(&str, &str, &str)> = vec![];
        if self_lined {
            let folded = "the face is folded up here, and makes the lining";
            pairs.extend(NOT_BESIDE_SELF.iter().map(|key| ("lining", *key, folded)));
        }
        if band.is_some_and(|band| !band.laid_on) {
            let replaced =
                "the bands take the place of the face's edge, and are mitred as they are";
            pairs.push(("band", "corners", replaced));
        }
        for (first, second, reason) in pairs {
            if let Some((one, other)) = properties.get(first).zip(properties.get(second)) {
                self.report(codes::MakingContradictsItself {
                    method: item.name,
                    first: PlacedText::new(one.span, first),
                    second: PlacedText::new(other.span, second),
                    reason,
                });
            }
        }
    }
}
