//! Reading how the edges of a panel are finished.

use pelmet_diagnostics::codes;
use pelmet_measure::Length;
use pelmet_model::{Allowance, EdgeAllowances, Layer};

use crate::closed_sets::Corners;
use crate::copying::Properties;
use crate::item::Item;
use crate::lengths::Sign;
use crate::read::making_layers::allowance_keys;
use crate::reader::Reader;
use crate::scope::Value;

const ALLOWANCE: &str = "`3/8 in`, `hem 2 in, turn 1/2 in` or `double hem 2 in`";

impl<'t> Reader<'t> {
    /// The allowances of the face, and whether its hems are mitred where they meet.
    pub fn edges_of_face(
        &mut self,
        item: &Item<'t>,
        properties: &Properties<'t>,
        seam: Length,
    ) -> (EdgeAllowances, bool) {
        let before = self.diagnostics.len();
        let seam = Allowance::Seam(seam);
        let seams = EdgeAllowances::all(seam);
        let edges = self.edges(properties, allowance_keys(Layer::Face), seams);
        let corners = properties.get("corners");
        let corners = corners.and_then(|value| self.choice(value, "corners"));
        let mitred = corners == Some(Corners::Mitred);
        if mitred && self.diagnostics.len() == before {
            self.check_hems_to_mitre(item, properties);
        }
        (edges, mitred)
    }

    /// The allowances that these properties give to the top, the sides and the lower edge.
    pub fn edges(
        &mut self,
        properties: &Properties<'t>,
        [top, sides, lower]: [&str; 3],
        otherwise: EdgeAllowances,
    ) -> EdgeAllowances {
        EdgeAllowances {
            top: self.allowance_or(properties, top, otherwise.top),
            sides: self.allowance_or(properties, sides, otherwise.sides),
            lower: self.allowance_or(properties, lower, otherwise.lower),
            band: otherwise.band,
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
        if let Some(turn) = turn.filter(|turn| *turn > length) {
            self.report(codes::TurnDeeperThanHem {
                span: value.span,
                turn: self.shown(turn),
                depth: self.shown(length),
                beyond: self.shown(turn - length),
            });
            return None;
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

    /// Reports the edges that a mitre would join and that have no hem. A depth that is not known yet, as
    /// that of a method only looked over, may be one.
    fn check_hems_to_mitre(&mut self, item: &Item<'t>, properties: &Properties<'t>) {
        let Some(corners) = properties.get("corners") else {
            return;
        };
        for (edges, example) in [("sides", "hem 1 in"), ("lower edge", "hem 2 in")] {
            let stated = properties.get(edges);
            let allowance = stated.map(|value| self.allowance(value, edges));
            let is_hem = |allowance: Allowance| allowance.hem_depth().is_some();
            if !allowance.is_some_and(|allowance| allowance.is_none_or(is_hem)) {
                self.report(codes::MitreWithoutHem {
                    method: item.name,
                    corners: corners.span,
                    edges,
                    stated: stated.map(|value| value.span),
                    example,
                });
            }
        }
    }
}
