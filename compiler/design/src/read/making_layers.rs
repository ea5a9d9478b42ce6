//! Reading what a making method gives the layers behind the face.

use pelmet_measure::Length;
use pelmet_model::{EdgeAllowances, Layer, LayerMaking};

use crate::closed_sets::Difference;
use crate::copying::Properties;
use crate::lengths::Sign;
use crate::reader::Reader;
use crate::scope::Value;

const LAYER: &str = "`none`, `as face`, or lengths `longer`, `shorter`, `wider` or `narrower`";
const LINING: &str =
    "`none`, `self`, `as face`, or lengths `longer`, `shorter`, `wider` or `narrower`";

impl<'t> Reader<'t> {
    /// What a layer behind the face gets; the inner `None` where the method does not make it. Its
    /// edges are made as those of the face where it has no allowances of its own.
    pub fn layer_behind(
        &mut self,
        properties: &Properties<'t>,
        layer: Layer,
        face: EdgeAllowances,
    ) -> Option<Option<LayerMaking>> {
        let as_face = LayerMaking {
            edges: self.edges(properties, allowance_keys(layer), face),
            longer: Length::ZERO,
            wider: Length::ZERO,
        };
        match properties.get(layer.word()) {
            Some(value) => self.layer_making(value, layer.word(), as_face),
            // A method lines its panels unless it says otherwise, and interlines them only where it
            // says so.
            None => Some((layer == Layer::Lining).then_some(as_face)),
        }
    }

    /// `none`, `as face`, `3/8 in longer, 1/4 in wider`.
    fn layer_making(
        &mut self,
        value: &Value<'t>,
        property: &str,
        as_face: LayerMaking,
    ) -> Option<Option<LayerMaking>> {
        let mut making = as_face;
        let can_be_self = property == Layer::Lining.word();
        let can_be = if can_be_self { LINING } else { LAYER };
        for mut cursor in self.phrases(value)? {
            // A face that lines itself has no cloth behind it that is made by itself.
            if cursor.words(&["none"]) || can_be_self && cursor.words(&["self"]) {
                self.nothing_more(&cursor, property, can_be)?;
                return Some(None);
            }
            if cursor.words(&["as", "face"]) {
                self.nothing_more(&cursor, property, can_be)?;
                continue;
            }
            let length = self.length_at(&mut cursor, property, Sign::NotNegative)?;
            match cursor.one_of() {
                Some(Difference::Longer) => making.longer = length,
                Some(Difference::Shorter) => making.longer = -length,
                Some(Difference::Wider) => making.wider = length,
                Some(Difference::Narrower) => making.wider = -length,
                None => {
                    let word = cursor.any_word();
                    let place = word.map_or(cursor.end(), |(_, span)| span);
                    self.word_not_expected(place, property, can_be);
                    return None;
                }
            }
            self.nothing_more(&cursor, property, can_be)?;
        }
        Some(Some(making))
    }
}

/// The properties that give a layer its allowances at the top, the sides and the lower edge.
pub(crate) fn allowance_keys(layer: Layer) -> [&'static str; 3] {
    match layer {
        Layer::Face | Layer::Band(_) => ["top", "sides", "lower edge"],
        Layer::Interlining => [
            "interlining top",
            "interlining sides",
            "interlining lower edge",
        ],
        Layer::Lining => ["lining top", "lining sides", "lining lower edge"],
    }
}
