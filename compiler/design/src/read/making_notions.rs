//! Reading what a making method takes beside cloth, and the work it makes.

use pelmet_diagnostics::codes;
use pelmet_measure::Ratio;
use pelmet_model::{
    CountedOrder, FUSIBLE_TAPE, HowMany, MakingNotions, StripOrder, ThreadOrder, WorkPer, WorkStep,
};

use crate::copying::Properties;
use crate::cursor::Cursor;
use crate::item::Item;
use crate::lengths::Sign;
use crate::reader::Reader;
use crate::scope::Value;

const STRIPS: &str = "such as `2 behind each fold`, then perhaps `, 1 in long`";
const THREAD: &str = "a notion, then perhaps `, 3 times`";
const COUNTED: &str = "a notion, then `, 8 each panel` or `, 6 in apart`";
const WORK: &str = "steps such as `cut 20 minutes` or `pleat 3 minutes per pleat`";

/// How many times the sewn length the thread of a seam takes, where it is not said. Common practice,
/// no source.
const USUAL_THREAD: i128 = 3;

impl<'t> Reader<'t> {
    /// The notions of a making method.
    pub fn making_notions(
        &mut self,
        item: &Item<'t>,
        properties: &Properties<'t>,
    ) -> MakingNotions {
        let strips = properties.get("pleat strips");
        if properties.contains_key("tape") {
            self.uses_notion(FUSIBLE_TAPE);
        } else if strips.is_some() && !item.damaged {
            let owner = format!("the pleat strips of `{}`", item.name);
            self.report(codes::PropertyMissing {
                span: item.place(),
                item: &owner,
                property: "tape",
                line: "tape: 3/8 in wide",
            });
        }
        MakingNotions {
            pleat_strips: strips.and_then(|value| self.pleat_strips(value)),
            thread: properties
                .get("thread")
                .and_then(|value| self.thread(value)),
            rings: properties
                .get("rings")
                .and_then(|value| self.counted(value, "rings")),
            weights: properties
                .get("weights")
                .and_then(|value| self.counted(value, "weights")),
        }
    }

    /// `2 behind each fold, 1 in long`.
    fn pleat_strips(&mut self, value: &Value<'t>) -> Option<StripOrder> {
        let mut cursors = self.phrases(value)?.into_iter();
        let mut first = cursors.next()?;
        let (behind_each, _) = self.count(&mut first, "pleat strips")?;
        first.words(&["behind", "each", "fold"]);
        self.nothing_more(&first, "pleat strips", STRIPS)?;
        let mut length = None;
        for mut cursor in cursors {
            length = Some(self.length_at(&mut cursor, "pleat strips", Sign::Positive)?);
            cursor.words(&["long"]);
            self.nothing_more(&cursor, "pleat strips", STRIPS)?;
        }
        Some(StripOrder {
            behind_each,
            length,
        })
    }

    /// `cotton-thread, 3 times`.
    fn thread(&mut self, value: &Value<'t>) -> Option<ThreadOrder> {
        let mut cursors = self.phrases(value)?.into_iter();
        let name = self.notion_name(&mut cursors.next()?, "thread", THREAD)?;
        let mut times = Ratio::from_integer(USUAL_THREAD);
        for mut cursor in cursors {
            times = self.positive_number(&mut cursor, "thread")?;
            cursor.words(&["times"]);
            self.nothing_more(&cursor, "thread", THREAD)?;
        }
        Some(ThreadOrder { name, times })
    }

    /// `brass-ring, 6 in apart`, `lead-weight, 2 each panel`.
    fn counted(&mut self, value: &Value<'t>, property: &str) -> Option<CountedOrder> {
        let mut cursors = self.phrases(value)?.into_iter();
        let name = self.notion_name(&mut cursors.next()?, property, COUNTED)?;
        let (Some(mut cursor), None) = (cursors.next(), cursors.next()) else {
            self.word_not_expected(value.span, property, COUNTED);
            return None;
        };
        let mut after = cursor.clone();
        after.next();
        let how_many = if after.words(&["apart"]) {
            let apart = self.length_at(&mut cursor, property, Sign::Positive)?;
            cursor.words(&["apart"]);
            HowMany::Apart(apart)
        } else {
            let (count, _) = self.count(&mut cursor, property)?;
            cursor.words(&["each", "panel"]);
            HowMany::Each(count)
        };
        self.nothing_more(&cursor, property, COUNTED)?;
        Some(CountedOrder { name, how_many })
    }

    /// A notion by its name alone. It need not be described: then it has no price.
    fn notion_name(
        &mut self,
        cursor: &mut Cursor<'t>,
        property: &str,
        can_be: &str,
    ) -> Option<String> {
        let Some((name, _)) = cursor.any_word() else {
            self.word_not_expected(cursor.span(), property, can_be);
            return None;
        };
        self.nothing_more(cursor, property, can_be)?;
        self.uses_notion(name);
        Some(name.to_owned())
    }

    /// `cut 20 minutes, pleat 3 minutes per pleat`.
    pub fn work(&mut self, value: &Value<'t>) -> Option<Vec<WorkStep>> {
        let cursors = self.phrases(value)?;
        cursors
            .into_iter()
            .map(|cursor| self.work_step(cursor))
            .collect()
    }

    fn work_step(&mut self, mut cursor: Cursor<'t>) -> Option<WorkStep> {
        let mut words = Vec::new();
        while let Some((word, _)) = cursor.any_word() {
            words.push(word);
        }
        if words.is_empty() || cursor.peek().is_none() {
            self.word_not_expected(cursor.span(), "work", WORK);
            return None;
        }
        let minutes = self.positive_number(&mut cursor, "work")?;
        if !cursor.words(&["minutes"]) && !cursor.words(&["minute"]) {
            let place = cursor.peek().map_or(cursor.end(), |term| term.span);
            self.word_not_expected(place, "work", "`minutes` after the number");
            return None;
        }
        let per = if cursor.words(&["per", "pleat"]) {
            WorkPer::Pleat
        } else {
            cursor.words(&["per", "panel"]);
            WorkPer::Panel
        };
        self.nothing_more(&cursor, "work", WORK)?;
        Some(WorkStep {
            name: words.join(" "),
            minutes,
            per,
        })
    }
}
