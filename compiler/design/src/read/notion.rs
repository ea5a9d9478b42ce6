//! Reading notions: what is bought beside cloth.

use pelmet_diagnostics::codes;
use pelmet_measure::{Dimension, Length, Mass, Ratio};
use pelmet_model::{NotionOrder, NotionPrice, NotionWeight, PriceOrder};

use crate::cursor::Cursor;
use crate::item::Item;
use crate::kind::Kind;
use crate::lengths::Sign;
use crate::read::fabric::unit_of_length;
use crate::reader::Reader;
use crate::scope::{Scope, Value};

const PRICE: &str = "such as `2.40 per yd`, `6.50 per roll`, `4 per pack` or `0.35 each`";
const WEIGHT: &str = "such as `12 g each` or `30 g per m`";

impl<'t> Reader<'t> {
    /// A notion, by its item.
    pub fn notion(&mut self, item: &'t Item<'t>, scope: &Scope<'t>) -> Option<NotionOrder> {
        let properties = self.properties(item, scope)?;
        let notion = NotionOrder {
            name: item.name.to_owned(),
            roll: self
                .length_if(&properties, "roll", Sign::Positive)
                .flatten(),
            pack: properties
                .get("pack")
                .and_then(|value| self.only_count(value, "pack")),
            price: properties
                .get("price")
                .and_then(|value| self.notion_price(value)),
            weight: properties
                .get("weight")
                .and_then(|value| self.notion_weight(value)),
        };
        let wanting = match notion.price {
            Some(NotionPrice::PerRoll(_)) if !properties.contains_key("roll") => Some("roll"),
            Some(NotionPrice::PerPack(_)) if !properties.contains_key("pack") => Some("pack"),
            _ => None,
        };
        if let Some(key) = wanting {
            self.missing(item, key);
        }
        Some(notion)
    }

    /// Notes that a notion of this name is used, where one is described.
    pub fn uses_notion(&mut self, name: &str) {
        let definitions = self.definitions;
        if let Some(item) = definitions.item(Kind::Notion, name) {
            self.used.insert((Kind::Notion, item.name));
        }
    }

    /// `2.40 per yd`, `6.50 per roll`, `4 per pack`, `0.35 each`.
    fn notion_price(&mut self, value: &Value<'t>) -> Option<NotionPrice> {
        let mut cursor = self.one_phrase(value, "price", PRICE)?;
        let (amount, _) = self.plain_number(&mut cursor, "price")?;
        let price = match () {
            () if cursor.words(&["each"]) => NotionPrice::Each(amount),
            () if cursor.words(&["per", "roll"]) => NotionPrice::PerRoll(amount),
            () if cursor.words(&["per", "pack"]) => NotionPrice::PerPack(amount),
            () => NotionPrice::PerLength(PriceOrder {
                amount,
                per: self.per_length(&mut cursor, "price", PRICE)?,
            }),
        };
        self.nothing_more(&cursor, "price", PRICE)?;
        Some(price)
    }

    /// `12 g each`, `30 g per m`.
    fn notion_weight(&mut self, value: &Value<'t>) -> Option<NotionWeight> {
        let mut cursor = self.one_phrase(value, "weight", WEIGHT)?;
        let mass = self.mass_at(&mut cursor)?;
        let weight = if cursor.words(&["each"]) {
            NotionWeight::Each(mass)
        } else {
            let per = self.per_length(&mut cursor, "weight", WEIGHT)?;
            NotionWeight::PerLength { mass, per }
        };
        self.nothing_more(&cursor, "weight", WEIGHT)?;
        Some(weight)
    }

    fn mass_at(&mut self, cursor: &mut Cursor<'t>) -> Option<Mass> {
        let scope = cursor.scope.clone();
        let term = self.next_term(cursor, "weight", WEIGHT)?;
        let amount = self.amount(term, &scope)?;
        if amount.fixed.dimension != Dimension::MASS || !amount.is_fixed() {
            let found = amount.fixed.dimension.in_words();
            self.report(codes::KindWanted {
                span: term.span,
                wanted: "a weight, such as `12 g`",
                found,
            });
            return None;
        }
        let mass = amount.fixed.as_mass().ok();
        if mass.is_none() {
            self.report(codes::number_too_large(term.span));
        }
        mass
    }

    /// `per yd`.
    fn per_length(
        &mut self,
        cursor: &mut Cursor<'t>,
        property: &str,
        can_be: &str,
    ) -> Option<Length> {
        let per = cursor.words(&["per"]);
        let unit = cursor.peek().and_then(unit_of_length).filter(|_| per);
        if unit.is_none() {
            let place = cursor.peek().map_or(cursor.end(), |term| term.span);
            self.word_not_expected(place, property, can_be);
        }
        cursor.next();
        unit
    }

    /// A number that is more than nothing.
    pub fn positive_number(&mut self, cursor: &mut Cursor<'t>, property: &str) -> Option<Ratio> {
        let (number, span) = self.plain_number(cursor, property)?;
        if number > Ratio::new_raw(0, 1) {
            return Some(number);
        }
        let shown = pelmet_measure::number_text(number);
        self.report(codes::LengthNotPositive {
            span,
            what: property,
            length: &shown,
        });
        None
    }
}
