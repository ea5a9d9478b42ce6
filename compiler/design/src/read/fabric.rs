//! Reading cloth.

use pelmet_diagnostics::{Diagnostic, PlacedText, codes};
use pelmet_measure::{Dimension, Length, Ratio};
use pelmet_model::{Fabric, Match, PriceOrder, Railroad, Repeat, Way};
use pelmet_syntax::tree::{Phrase, Term};

use crate::closed_sets::RepeatDirection;
use crate::copying::Properties;
use crate::cursor::Cursor;
use crate::item::Item;
use crate::kind::Kind;
use crate::lengths::Sign;
use crate::reader::{Followed, Reader};
use crate::scope::{Scope, Value};

const REPEAT: &str = "lengths along and across, or `none`";

impl<'t> Reader<'t> {
    /// A fabric, by its item.
    pub fn fabric(&mut self, item: &'t Item<'t>) -> Option<Fabric> {
        let properties = self.properties(item, &Scope::default())?;
        let complete = self.has_all_needed(item, &properties);
        let width = self.length_if(&properties, "width", Sign::Positive);
        let mut fabric = Fabric {
            name: item.name.to_owned(),
            width: width.flatten().unwrap_or(Length::YARD),
            selvage: self.length_or(&properties, "selvage", Length::ZERO),
            repeat: properties
                .get("repeat")
                .and_then(|value| self.repeat(value)),
            print_begins: None,
            way: properties
                .get("way")
                .and_then(|value| self.choice(value, "way"))
                .unwrap_or(Way::Any),
            railroad: properties
                .get("railroad")
                .and_then(|value| self.choice(value, "railroad"))
                .unwrap_or(Railroad::Never),
            shear_gap: self.length_or(&properties, "gap", Length::ZERO),
            bolt_length: self
                .length_if(&properties, "bolt", Sign::Positive)
                .flatten(),
            flaws: Vec::new(),
            shrinkage: properties
                .get("shrinkage")
                .and_then(|value| self.part(value, "shrinkage"))
                .unwrap_or(Ratio::new_raw(0, 1)),
            grams_per_square_metre: properties
                .get("weight")
                .and_then(|value| self.weight(value)),
            thickness: self
                .length_if(&properties, "thickness", Sign::Positive)
                .flatten(),
            price: properties.get("price").and_then(|value| self.price(value)),
        };
        let usable = self.usable(&fabric, &properties);
        if let Some(value) = properties.get("print begins") {
            fabric.print_begins =
                self.print_begins(value, &fabric, properties.contains_key("repeat"));
        }
        if let Some(value) = properties.get("flaws") {
            fabric.flaws = self.flaws(value, &fabric);
        }
        let holds_repeat = self.bolt_holds_repeat(&fabric, &properties);
        let sound = complete && usable && holds_repeat;
        (sound && width.flatten().is_some()).then_some(fabric)
    }

    /// The fabric a value names, by its index in the job; `None` inside for `none`.
    pub fn fabric_or_none(&mut self, value: &Value<'t>, property: &str) -> Option<Option<usize>> {
        if let Followed::Value(followed) = self.follow(value)
            && let [Phrase { terms, .. }] = followed.phrases
            && let [term] = terms.as_slice()
            && term.word() == Some("none")
        {
            return Some(None);
        }
        self.fabric_named(value, property).map(Some)
    }

    /// The fabric a value names, by its index in the job.
    pub fn fabric_named(&mut self, value: &Value<'t>, property: &str) -> Option<usize> {
        let referred = self.item(value, Kind::Fabric, property)?;
        self.fabrics.get(referred.item.name).copied()
    }

    /// Whether the selvages leave any cloth between them.
    fn usable(&mut self, fabric: &Fabric, properties: &Properties<'t>) -> bool {
        let usable = fabric.usable_width().is_positive();
        if let Some(selvage) = properties.get("selvage")
            && !usable
        {
            let width = self.shown(fabric.width);
            let whole = format!("the whole width is {width}");
            let diagnostic = Diagnostic::from(codes::SelvagesTooWide {
                span: selvage.span,
                selvage: self.shown(fabric.selvage),
                width,
            });
            let span = properties.get("width").map(|width| width.span);
            self.report(diagnostic.label_if_known(span, whole));
        }
        usable
    }

    /// `12 1/2 in along, 9 in across, half-drop`, or `none`.
    fn repeat(&mut self, value: &Value<'t>) -> Option<Repeat> {
        let mut repeat = Repeat {
            along: None,
            across: None,
            matching: Match::Straight,
        };
        let mut half_drop = None;
        for mut cursor in self.phrases(value)? {
            let span = cursor.span();
            if cursor.words(&["none"]) {
                self.nothing_more(&cursor, "repeat", REPEAT)?;
                return None;
            }
            if cursor.words(&["half-drop"]) {
                repeat.matching = Match::HalfDrop;
                half_drop = Some(span);
                self.nothing_more(&cursor, "repeat", REPEAT)?;
                continue;
            }
            let length = self.length_at(&mut cursor, "repeat", Sign::Positive)?;
            let direction = self.repeat_direction(&mut cursor, &mut repeat)?;
            if direction.replace(length).is_some() {
                self.word_not_expected(span, "repeat", "one length along and one across");
                return None;
            }
            self.nothing_more(&cursor, "repeat", REPEAT)?;
        }
        if let Some(span) = half_drop.filter(|_| repeat.along.is_none()) {
            self.report(codes::half_drop_without_repeat(span));
            return None;
        }
        Some(repeat)
    }

    /// The direction of a repeat, which comes next.
    fn repeat_direction<'r>(
        &mut self,
        cursor: &mut Cursor<'t>,
        repeat: &'r mut Repeat,
    ) -> Option<&'r mut Option<Length>> {
        match cursor.one_of() {
            Some(RepeatDirection::Along) => Some(&mut repeat.along),
            Some(RepeatDirection::Across) => Some(&mut repeat.across),
            None => {
                self.direction_missing(cursor);
                None
            }
        }
    }

    /// Whether a bolt holds a whole repeat, where both are said.
    fn bolt_holds_repeat(&mut self, fabric: &Fabric, properties: &Properties<'t>) -> bool {
        let repeat = fabric.repeat.and_then(|repeat| repeat.along);
        let Some((repeat, bolt)) = repeat.zip(fabric.bolt_length) else {
            return true;
        };
        let said = properties.get("repeat").zip(properties.get("bolt"));
        if let Some((repeat_said, bolt_said)) = said.filter(|_| repeat > bolt) {
            self.report(codes::RepeatLongerThanBolt {
                repeat: PlacedText::new(repeat_said.span, self.shown(repeat)),
                bolt: PlacedText::new(bolt_said.span, self.shown(bolt)),
                over: self.shown(repeat - bolt),
            });
        }
        repeat <= bolt
    }

    fn direction_missing(&mut self, cursor: &Cursor<'t>) {
        let place = cursor.peek().map_or(cursor.end(), |term| term.span);
        self.word_not_expected(place, "repeat", "`along` or `across` after the length");
    }

    /// Mass for its area, in grams a square metre.
    fn weight(&mut self, value: &Value<'t>) -> Option<Ratio> {
        let amount = self.amount_of(value)?;
        let unit = pelmet_measure::Quantity::of(
            Ratio::new_raw(1, 1),
            pelmet_measure::Unit::GramPerSquareMetre,
        )
        .ok()?;
        if amount.fixed.dimension != Dimension::MASS_PER_AREA || !amount.is_fixed() {
            let found = amount.fixed.dimension.in_words();
            self.report(codes::KindWanted {
                span: value.span,
                wanted: "a weight for its area, such as `210 g/m2`",
                found,
            });
            return None;
        }
        amount.fixed.divide(unit).ok()?.as_ratio().ok()
    }

    /// `14.50 per yd`.
    fn price(&mut self, value: &Value<'t>) -> Option<PriceOrder> {
        const PRICE: &str = "money for a length, such as `14.50 per yd`";
        let mut cursor = self.one_phrase(value, "price", PRICE)?;
        let (amount, _) = self.plain_number(&mut cursor, "price")?;
        if !cursor.words(&["per"]) {
            let place = cursor.peek().map_or(cursor.end(), |term| term.span);
            self.word_not_expected(place, "price", PRICE);
            return None;
        }
        let term = self.next_term(&mut cursor, "price", "`yd` or `m`")?;
        let Some(per) = unit_of_length(term) else {
            self.word_not_expected(term.span, "price", "`yd` or `m`");
            return None;
        };
        self.nothing_more(&cursor, "price", PRICE)?;
        Some(PriceOrder { amount, per })
    }

    /// The length of a property that may be left out; the inner `None` is one that was reported.
    pub fn length_if(
        &mut self,
        properties: &Properties<'t>,
        key: &str,
        sign: Sign,
    ) -> Option<Option<Length>> {
        let value = properties.get(key)?;
        Some(self.length(value, key, sign))
    }

    /// The length of a property, or another where it is left out or was reported.
    pub fn length_or(
        &mut self,
        properties: &Properties<'t>,
        key: &str,
        otherwise: Length,
    ) -> Length {
        self.length_if(properties, key, Sign::NotNegative)
            .flatten()
            .unwrap_or(otherwise)
    }
}

/// The length that a unit of length stands for where cloth is sold by it.
pub(crate) fn unit_of_length(term: &Term) -> Option<Length> {
    match pelmet_measure::Unit::from_word(term.word()?)? {
        pelmet_measure::Unit::Yard => Some(Length::YARD),
        pelmet_measure::Unit::Metre => Some(Length::METRE),
        pelmet_measure::Unit::Foot => Some(Length::FOOT),
        _ => None,
    }
}
