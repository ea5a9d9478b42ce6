//! Reading headings.

use std::collections::BTreeMap;

use pelmet_diagnostics::{Span, codes};
use pelmet_measure::Length;
use pelmet_model::{FastenerOrder, Heading};
use pelmet_syntax::tree::{Phrase, TermKind};

use crate::closed_sets::{ClosedSet, Hang};
use crate::cursor::Cursor;
use crate::item::Item;
use crate::kind::Kind;
use crate::lengths::Sign;
use crate::reader::{Followed, Reader};
use crate::scope::{Scope, Value};
use crate::source_map::HeadingKey;
use crate::term::name_span;

/// A heading with the place of each of its numbers.
pub(crate) type PlacedHeading = (Heading, BTreeMap<HeadingKey, Span>);

const HEAD: &str = "the name of a heading, or `over rod`, `rod pocket`, `on board` or `plain`";

/// The numbers of a heading, however they were written.
struct Parts<'t> {
    lengths: BTreeMap<&'t str, (Length, Span)>,
    fastener: Option<(FastenerOrder, Span)>,
}

impl<'t> Reader<'t> {
    /// What stands at `head:`, a heading by name or in words: `over rod, tail 4 in`.
    pub fn head(&mut self, value: &Value<'t>) -> Option<PlacedHeading> {
        let Followed::Value(value) = self.follow(value) else {
            return None;
        };
        let (first, others) = value.phrases.split_first()?;
        let mut cursor = Cursor::new(first, &value.scope);
        let Some(hang) = cursor.one_of::<Hang>() else {
            return self.named_head(&value, first);
        };
        if let Some((part, _)) = cursor.clone().any_word().filter(|(word, _)| is_part(word)) {
            self.comma_missing(&cursor, "head", part);
            return None;
        }
        self.nothing_more(&cursor, "head", &Hang::in_words())?;
        let mut parts = Parts {
            lengths: BTreeMap::new(),
            fastener: None,
        };
        for phrase in others {
            self.part_in_words(Cursor::new(phrase, &value.scope), &mut parts)?;
        }
        self.heading_of(hang, &parts, value.span)
    }

    fn named_head(&mut self, value: &Value<'t>, first: &'t Phrase) -> Option<PlacedHeading> {
        let named = first.terms.first()?;
        let looks_like_name = matches!(
            named.kind,
            TermKind::Name(_) | TermKind::Call(_) | TermKind::Broken(_)
        );
        if !looks_like_name || first.terms.len() > 1 {
            if !first.is_broken() {
                self.word_not_expected(first.span, "head", HEAD);
            }
            return None;
        }
        if let Some(more) = value.phrases.get(1) {
            self.word_not_expected(more.span, "head", "the name of a heading alone");
            return None;
        }
        let referred = self.item(value, Kind::Heading, "head")?;
        self.heading(referred.item, &referred.scope, name_span(named))
    }

    /// A heading, by its item; `place` is where it is used.
    pub fn heading(
        &mut self,
        item: &'t Item<'t>,
        scope: &Scope<'t>,
        place: Span,
    ) -> Option<PlacedHeading> {
        let properties = self.properties(item, scope)?;
        let complete = self.has_all_needed(item, &properties);
        let hang = properties
            .get("hang")
            .and_then(|value| self.choice(value, "hang"));
        let mut parts = Parts {
            lengths: BTreeMap::new(),
            fastener: None,
        };
        let mut sound = complete;
        for (key, value) in properties.iter().filter(|(key, _)| **key != "hang") {
            if *key == "fastener" {
                let fastener = self
                    .phrases(value)
                    .and_then(|cursors| self.fastener(cursors));
                sound &= fastener.is_some();
                parts.fastener = fastener.map(|fastener| (fastener, value.span));
            } else {
                let length = self.length(value, key, Sign::NotNegative);
                sound &= length.is_some();
                parts
                    .lengths
                    .extend(length.map(|length| (*key, (length, value.span))));
            }
        }
        let hang = hang?;
        if !sound {
            return None;
        }
        let place = if properties.contains_key("hang") {
            item.place()
        } else {
            place
        };
        self.heading_of(hang, &parts, place)
    }

    /// `tail 4 in`, `fastener hook-and-loop 3/4 in wide`.
    fn part_in_words(&mut self, mut cursor: Cursor<'t>, parts: &mut Parts<'t>) -> Option<()> {
        let known: Vec<&str> = Kind::Heading
            .properties()
            .iter()
            .map(|property| property.key)
            .filter(|key| *key != "hang")
            .collect();
        let whole = cursor.span();
        let Some((key, key_span)) = cursor.any_word() else {
            if !cursor.is_broken() {
                self.word_not_expected(whole, "head", "such as `tail 4 in`");
            }
            return None;
        };
        if key == "fastener" {
            let fastener = self.fastener(vec![cursor])?;
            parts.fastener = Some((fastener, whole));
            return Some(());
        }
        if !known.contains(&key) {
            self.report(codes::PropertyUnknown {
                span: key_span,
                item: "heading",
                property: key,
                known: &known,
            });
            return None;
        }
        let number = cursor.rest().unwrap_or(whole);
        let length = self.length_at(&mut cursor, key, Sign::NotNegative)?;
        self.nothing_more(&cursor, key, "one length")?;
        match parts.lengths.insert(key, (length, number)) {
            Some((_, first)) => {
                self.report(codes::PropertyTwice {
                    second: whole,
                    first,
                    property: key,
                });
                None
            }
            None => Some(()),
        }
    }

    /// `hook-and-loop 3/4 in wide, 1/2 in clear`.
    fn fastener(&mut self, cursors: Vec<Cursor<'t>>) -> Option<FastenerOrder> {
        const FASTENER: &str = "a name and a width, such as `hook-and-loop 3/4 in wide`";
        let mut cursors = cursors.into_iter();
        let mut first = cursors.next()?;
        let Some((name, _)) = first.any_word() else {
            self.word_not_expected(first.span(), "fastener", FASTENER);
            return None;
        };
        self.uses_notion(name);
        let width = self.length_at(&mut first, "fastener", Sign::Positive)?;
        first.words(&["wide"]);
        self.nothing_more(&first, "fastener", FASTENER)?;
        let mut inset = Length::ZERO;
        for mut cursor in cursors {
            inset = self.length_at(&mut cursor, "fastener", Sign::NotNegative)?;
            cursor.words(&["clear"]);
            self.nothing_more(&cursor, "fastener", "a length and `clear`")?;
        }
        Some(FastenerOrder {
            name: name.to_owned(),
            width,
            inset,
        })
    }

    fn heading_of(&mut self, hang: Hang, parts: &Parts<'t>, place: Span) -> Option<PlacedHeading> {
        let spans = parts.spans();
        let allowed = hang.properties();
        if let Some((key, span)) = spans.iter().find(|(key, _)| !allowed.contains(key)) {
            let heading = format!("heading hung {}", hang.word());
            let known: Vec<&str> = allowed.iter().map(|key| key.word()).collect();
            self.report(codes::PropertyUnknown {
                span: *span,
                item: &heading,
                property: key.word(),
                known: &known,
            });
            return None;
        }
        let fastener = parts
            .fastener
            .as_ref()
            .map(|(fastener, _)| fastener.clone());
        let heading = match hang {
            Hang::OverRod => {
                let Some(tail) = parts.length("tail") else {
                    self.report(codes::PropertyMissing {
                        span: place,
                        item: "this heading",
                        property: "tail",
                        line: "tail 4 in",
                    });
                    return None;
                };
                Heading::OverRod { tail, fastener }
            }
            Hang::RodPocket => Heading::RodPocket {
                pocket: parts.length("pocket"),
                ease: parts.length("ease").unwrap_or(Length::ZERO),
                above: parts.length("above").unwrap_or(Length::ZERO),
                turn: parts.length("turn").unwrap_or(Length::ZERO),
            },
            Hang::OnBoard => Heading::OnBoard {
                lap: parts.length("lap"),
                fastener,
            },
            Hang::Plain => Heading::Plain,
        };
        Some((heading, spans))
    }
}

/// Whether a word is the name of one of a heading's numbers.
fn is_part(word: &str) -> bool {
    word != "hang" && Kind::Heading.property(word).is_some()
}

impl Hang {
    /// The properties that mean something for a heading hung this way.
    fn properties(self) -> &'static [HeadingKey] {
        use HeadingKey::{Above, Ease, Fastener, Lap, Pocket, Tail, Turn};
        match self {
            Self::OverRod => &[Tail, Fastener],
            Self::RodPocket => &[Pocket, Ease, Above, Turn],
            Self::OnBoard => &[Lap, Fastener],
            Self::Plain => &[],
        }
    }
}

impl Parts<'_> {
    fn length(&self, key: &str) -> Option<Length> {
        self.lengths.get(key).map(|(length, _)| *length)
    }

    fn spans(&self) -> BTreeMap<HeadingKey, Span> {
        let lengths = self
            .lengths
            .iter()
            .filter_map(|(key, (_, span))| Some((ClosedSet::of_word(key)?, *span)));
        let fastener = self
            .fastener
            .as_ref()
            .map(|(_, span)| (HeadingKey::Fastener, *span));
        lengths.chain(fastener).collect()
    }
}
