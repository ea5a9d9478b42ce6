//! Reading rods and boards.

use pelmet_diagnostics::{Diagnostic, codes};
use pelmet_measure::Length;
use pelmet_model::{Board, Rod, SupportOrder};

use crate::copying::Properties;
use crate::item::Item;
use crate::kind::Kind;
use crate::lengths::Sign;
use crate::reader::Reader;
use crate::scope::{Scope, Value};

impl<'t> Reader<'t> {
    /// The rod or board of a window and the height of its top: `brass-pole(72 in), top at 86 in`.
    pub fn support(
        &mut self,
        value: &Value<'t>,
        kind: Kind,
    ) -> Option<(SupportOrder, Option<Length>)> {
        let property = kind.word();
        let mut cursors = self.phrases(value)?.into_iter();
        let mut first = cursors.next()?;
        let referred = self.item_at(&mut first, kind, property);
        if first.clone().words(&["top", "at"]) {
            self.comma_missing(&first, property, "top at");
            return None;
        }
        let wanted = self.wanted(kind);
        self.nothing_more(&first, property, &wanted)?;
        let mut top_at = None;
        for mut cursor in cursors {
            if !cursor.words(&["top", "at"]) {
                self.word_not_expected(cursor.span(), property, "`top at` and a height");
                return None;
            }
            top_at = Some(self.length_at(&mut cursor, property, Sign::Positive)?);
            self.nothing_more(&cursor, property, "`top at` and a height")?;
        }
        let referred = referred?;
        let support = self.support_item(referred.item, &referred.scope)?;
        Some((support, top_at))
    }

    /// A rod or board, by its item.
    pub fn support_item(&mut self, item: &'t Item<'t>, scope: &Scope<'t>) -> Option<SupportOrder> {
        let properties = self.properties(item, scope)?;
        let complete = self.has_all_needed(item, &properties);
        let support = match item.kind {
            Kind::Board => self.board(item, &properties).map(SupportOrder::Board),
            _ => self.rod(item, &properties).map(SupportOrder::Rod),
        };
        support.filter(|_| complete)
    }

    fn rod(&mut self, item: &'t Item<'t>, properties: &Properties<'t>) -> Option<Rod> {
        let length = self
            .length_if(properties, "length", Sign::Positive)
            .flatten();
        let diameter = self
            .length_if(properties, "diameter", Sign::Positive)
            .flatten();
        let rod = Rod {
            name: item.name.to_owned(),
            length: length.unwrap_or(Length::ZERO),
            diameter: diameter.unwrap_or(Length::ZERO),
            projection: self
                .length_if(properties, "projection", Sign::NotNegative)
                .flatten(),
            wall: self.length_if(properties, "wall", Sign::Positive).flatten(),
            material: properties
                .get("material")
                .and_then(|value| self.plain_words(value, "material")),
            brackets: properties
                .get("brackets")
                .and_then(|value| self.only_count(value, "brackets")),
            sag_limit: self
                .length_if(properties, "sag limit", Sign::Positive)
                .flatten(),
        };
        self.wall_within(&rod, properties);
        (length.is_some() && diameter.is_some()).then_some(rod)
    }

    fn wall_within(&mut self, rod: &Rod, properties: &Properties<'t>) {
        if let (Some(wall), Some(value)) = (rod.wall, properties.get("wall"))
            && rod.diameter.is_positive()
            && wall * 2 > rod.diameter
        {
            let (wall, diameter) = (self.shown(wall), self.shown(rod.diameter));
            let across = format!("the rod is {diameter} across");
            let diagnostic = Diagnostic::from(codes::WallTooThick {
                span: value.span,
                wall,
                diameter,
            });
            let span = properties.get("diameter").map(|diameter| diameter.span);
            self.report(diagnostic.label_if_known(span, across));
        }
    }

    fn board(&mut self, item: &'t Item<'t>, properties: &Properties<'t>) -> Option<Board> {
        let length = self
            .length_if(properties, "length", Sign::Positive)
            .flatten();
        let depth = self
            .length_if(properties, "depth", Sign::Positive)
            .flatten();
        let thickness = self
            .length_if(properties, "thickness", Sign::Positive)
            .flatten();
        Some(Board {
            name: item.name.to_owned(),
            length: length?,
            depth: depth?,
            thickness,
        })
    }

    /// A value of words alone.
    pub fn plain_words(&mut self, value: &Value<'t>, property: &str) -> Option<String> {
        let cursor = self.one_phrase(value, property, "words")?;
        let words: Option<Vec<&str>> = cursor.terms().iter().map(|term| term.word()).collect();
        if words.is_none() && !cursor.is_broken() {
            self.word_not_expected(cursor.span(), property, "words");
        }
        words.map(|words| words.join(" "))
    }

    /// A value that is one count.
    pub fn only_count(&mut self, value: &Value<'t>, property: &str) -> Option<u32> {
        let mut cursor = self.one_phrase(value, property, "a count")?;
        let (count, _) = self.count(&mut cursor, property)?;
        self.nothing_more(&cursor, property, "one count")?;
        Some(count)
    }
}
