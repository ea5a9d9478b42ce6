//! Reading panels.

use num_traits::{CheckedAdd, Signed};
use pelmet_diagnostics::{Span, codes};
use pelmet_measure::{Length, Ratio, Unit, number_text};
use pelmet_model::{BandEdge, Cut, FinishedOrder, Layer, Outline, PanelOrder, WidthOrder};
use pelmet_syntax::tree::{Number, Phrase, Term, TermKind};

use crate::copying::{Properties, overlaid};
use crate::item::Item;
use crate::kind::Kind;
use crate::lengths::Sign;
use crate::read::heading::PlacedHeading;
use crate::read::making::PlacedMaking;
use crate::read::outline::PlacedOutline;
use crate::read::places::panel_places;
use crate::read::pleats::PlacedRule;
use crate::reader::{Followed, Reader};
use crate::scope::{Scope, Value};
use crate::source_map::{ItemSource, PanelSource};

const FULLNESS: &str = "such as `2 1/2 times`";

/// Everything read of a panel before it is known to be whole.
struct Parts {
    width: WidthOrder,
    drop: Option<Length>,
    outline: Option<Option<PlacedOutline>>,
    pleats: Option<Option<PlacedRule>>,
    heading: Option<PlacedHeading>,
    making: Option<PlacedMaking>,
    face: Option<usize>,
    interlining: Option<Option<usize>>,
    lining: Option<Option<usize>>,
    band: Option<Option<usize>>,
    covers: Option<Length>,
    cut: Cut,
}

impl<'t> Reader<'t> {
    /// A panel of a treatment, or at file level where `siblings` is empty, with its places.
    pub fn panel(
        &mut self,
        item: &'t Item<'t>,
        scope: &Scope<'t>,
        siblings: &'t [Item<'t>],
    ) -> Option<(PanelOrder, PanelSource)> {
        let before = self.diagnostics.len();
        let chain = self.copies(item, scope, siblings)?;
        let properties = panel_properties(&chain);
        let damaged = chain.iter().any(|(item, _)| item.damaged);
        let complete = self.has_all_needed(item, &properties);
        let parts = self.panel_parts(&properties);
        let sound = complete && !damaged && self.diagnostics.len() == before;
        let (heading, heading_spans) = parts.heading?;
        let (making, making_spans, making_steps) = parts.making?;
        let drop = parts.drop?;
        let (outline, outline_steps) = parts
            .outline?
            .unwrap_or_else(|| (Outline::straight(drop), Vec::new()));
        let (pleats, pleat_steps) = parts
            .pleats?
            .map_or((None, Vec::new()), |(rule, spans)| (Some(rule), spans));
        let order = PanelOrder {
            name: item.name.to_owned(),
            width: parts.width,
            drop,
            outline,
            pleats,
            heading,
            making,
            face: parts.face?,
            interlining: parts.interlining?,
            lining: parts.lining?,
            band: parts.band?,
            covers: parts.covers,
            cut: parts.cut,
        };
        let way = PanelSource {
            item: ItemSource {
                name: item.name_span,
                properties: panel_places(&properties),
            },
            pleat_steps,
            outline_steps,
            heading: heading_spans,
            making: making_spans,
            making_steps,
        };
        sound.then_some((order, way))
    }

    fn panel_parts(&mut self, properties: &Properties<'t>) -> Parts {
        let drop = self.length_if(properties, "drop", Sign::Positive).flatten();
        Parts {
            width: self.width(properties),
            drop,
            outline: self.panel_outline(properties, drop),
            pleats: self.panel_pleats(properties),
            heading: properties.get("head").and_then(|value| self.head(value)),
            making: properties
                .get("make")
                .and_then(|value| self.panel_making(value)),
            face: properties
                .get("face")
                .and_then(|value| self.fabric_named(value, "face")),
            interlining: self.layer_cloth(properties, Layer::Interlining),
            lining: self.layer_cloth(properties, Layer::Lining),
            band: self.layer_cloth(properties, Layer::Band(BandEdge::Lower)),
            covers: properties
                .get("covers")
                .and_then(|value| self.covers(value)),
            cut: properties
                .get("cut")
                .and_then(|value| self.choice(value, "cut"))
                .unwrap_or(Cut::Open),
        }
    }

    /// The cloth of a layer beside the face; the inner `None` where the panel has no such layer.
    fn layer_cloth(&mut self, properties: &Properties<'t>, layer: Layer) -> Option<Option<usize>> {
        match properties.get(layer.word()) {
            Some(value) => self.fabric_or_none(value, layer.word()),
            None => Some(None),
        }
    }

    fn width(&mut self, properties: &Properties<'t>) -> WidthOrder {
        WidthOrder {
            finished: properties
                .get("finished width")
                .and_then(|value| self.finished_width(value)),
            flat: self
                .length_if(properties, "flat width", Sign::Positive)
                .flatten(),
            cut: self
                .length_if(properties, "cut width", Sign::Positive)
                .flatten(),
            fullness: properties
                .get("fullness")
                .and_then(|value| self.fullness(value)),
        }
    }

    /// `18 in`, `fill`, `fill 20 in to 30 in`, `fill at least 20 in`, `fill at most 30 in`.
    fn finished_width(&mut self, value: &Value<'t>) -> Option<FinishedOrder> {
        const WIDTH: &str = "a length, `fill`, or `fill 20 in to 30 in`";
        let property = "finished width";
        let mut cursor = self.one_phrase(value, property, WIDTH)?;
        if !cursor.words(&["fill"]) {
            return self
                .length(value, property, Sign::Positive)
                .map(FinishedOrder::Exact);
        }
        let (mut least, mut most) = (None, None);
        if cursor.words(&["at", "least"]) {
            least = Some(self.length_at(&mut cursor, property, Sign::Positive)?);
        } else if cursor.words(&["at", "most"]) {
            most = Some(self.length_at(&mut cursor, property, Sign::Positive)?);
        } else if cursor.peek().is_some() {
            let range = self.ranged_length(&mut cursor, property)?;
            (least, most) = (Some(range.least), Some(range.most));
        }
        self.nothing_more(&cursor, property, WIDTH)?;
        Some(FinishedOrder::Fill { least, most })
    }

    /// `2 1/2 times`, `250 % of finished width`, `150 % added`. A bare percentage is refused: some
    /// people call twice the width 200 percent, others 100.
    fn fullness(&mut self, value: &Value<'t>) -> Option<Ratio> {
        let mut cursor = self.one_phrase(value, "fullness", FULLNESS)?;
        let percent = cursor.peek().is_some_and(is_percent);
        let (ratio, span) = self.plain_number(&mut cursor, "fullness")?;
        if percent && cursor.words(&["of", "finished", "width"]) {
            self.nothing_more(&cursor, "fullness", FULLNESS)?;
            return self.positive_ratio(ratio, span);
        }
        if percent && cursor.words(&["added"]) {
            self.nothing_more(&cursor, "fullness", FULLNESS)?;
            return self.one_more(ratio, span);
        }
        if percent {
            let typed = self.sources.snippet(span).to_owned();
            let times = |ratio| format!("{} times", number_text(ratio));
            let whole = times(ratio);
            let added = times(self.one_more(ratio, span)?);
            self.report(codes::FullnessPercentUnclear {
                span,
                typed: &typed,
                whole: &whole,
                added: &added,
            });
            return None;
        }
        cursor.words(&["times"]);
        self.nothing_more(&cursor, "fullness", FULLNESS)?;
        self.positive_ratio(ratio, span)
    }

    /// What is added to the width, and the width itself.
    fn one_more(&mut self, added: Ratio, span: Span) -> Option<Ratio> {
        let whole = added.checked_add(&Ratio::new_raw(1, 1));
        if whole.is_none() {
            self.report(codes::number_too_large(span));
        }
        whole
    }

    fn positive_ratio(&mut self, ratio: Ratio, span: Span) -> Option<Ratio> {
        if ratio.is_positive() {
            return Some(ratio);
        }
        self.part_out_of_range(span, "fullness", ratio);
        None
    }

    /// An outline; the inner `None` where the panel names none.
    fn panel_outline(
        &mut self,
        properties: &Properties<'t>,
        drop: Option<Length>,
    ) -> Option<Option<PlacedOutline>> {
        let Some(value) = properties.get("outline") else {
            return Some(None);
        };
        let referred = self.item(value, Kind::Outline, "outline")?;
        self.outline(&referred, drop).map(Some)
    }

    /// A pleat rule; the inner `None` where the panel names none.
    fn panel_pleats(&mut self, properties: &Properties<'t>) -> Option<Option<PlacedRule>> {
        let Some(value) = properties.get("pleats") else {
            return Some(None);
        };
        if self.is_none_word(value) {
            return Some(None);
        }
        let referred = self.item(value, Kind::Pleats, "pleats")?;
        self.pleat_rule(&referred).map(Some)
    }

    fn panel_making(&mut self, value: &Value<'t>) -> Option<PlacedMaking> {
        let referred = self.item(value, Kind::Make, "make")?;
        self.making(referred.item, &referred.scope)
    }

    /// `1 1/2 in each side`.
    fn covers(&mut self, value: &Value<'t>) -> Option<Length> {
        let can_be = "a length, such as `1 1/2 in each side`";
        let mut cursor = self.one_phrase(value, "covers", can_be)?;
        let length = self.length_at(&mut cursor, "covers", Sign::NotNegative)?;
        cursor.words(&["each", "side"]);
        self.nothing_more(&cursor, "covers", can_be)?;
        Some(length)
    }

    /// Whether a value is the word `none`.
    pub fn is_none_word(&mut self, value: &Value<'t>) -> bool {
        self.is_word(value, "none")
    }

    /// Whether a value is this word alone.
    pub fn is_word(&mut self, value: &Value<'t>, word: &str) -> bool {
        let Followed::Value(value) = self.follow(value) else {
            return false;
        };
        match value.phrases {
            [Phrase { terms, .. }] => {
                matches!(terms.as_slice(), [only] if only.word() == Some(word))
            }
            _ => false,
        }
    }
}

/// The ways of saying how wide a panel is. One is enough, and several must agree.
const WIDTHS: &[&str] = &["finished width", "flat width", "cut width", "fullness"];

/// The properties of a panel over those of the panels it copies. A width of its own takes the
/// place of every width it would have copied, whichever way either was said.
fn panel_properties<'t>(chain: &[(&'t Item<'t>, Scope<'t>)]) -> Properties<'t> {
    let mut properties = Properties::new();
    for link in chain.iter().rev() {
        if WIDTHS.iter().any(|key| link.0.properties.contains_key(key)) {
            properties.retain(|key, _| !WIDTHS.contains(key));
        }
        properties.extend(overlaid(std::slice::from_ref(link)));
    }
    properties
}

fn is_percent(term: &Term) -> bool {
    matches!(
        &term.kind,
        TermKind::Number(Number {
            unit: Some((Unit::Percent, _)),
            ..
        })
    )
}
