//! Reading pleat rules.

use pelmet_diagnostics::{PlacedText, Span, codes};
use pelmet_measure::Length;
use pelmet_model::{
    CreasePattern, FoldPlace, PatternFace, PleatKind, PleatMake, PleatOrder, PleatRule, PleatStep,
    Ranged, Start, StepKind, TowardOrder,
};
use pelmet_syntax::tree::{Phrase, Term};

use crate::cursor::Cursor;
use crate::item::{Item, Step};
use crate::keyword::MIRRORED;
use crate::lengths::Sign;
use crate::reader::Reader;
use crate::reference::Referred;
use crate::scope::{Scope, Value};

/// A pleat rule with the place of each of its steps, by number.
pub(crate) type PlacedRule = (PleatRule, Vec<Span>);

/// The most pleats one panel may have; a count that is left open ends here.
const MOST_TURNS: u32 = pelmet_model::MAXIMUM_PLEATS;

const PLEAT: &str = "a depth, then perhaps `toward centre`, `face` and `fold at`";

impl<'t> Reader<'t> {
    /// A pleat rule, by its item and arguments.
    pub fn pleat_rule(&mut self, referred: &Referred<'t>) -> Option<PlacedRule> {
        let chain = self.copies(referred.item, &referred.scope, &[])?;
        let (written, scope) = chain
            .iter()
            .find(|(item, _)| !item.steps.is_empty())
            .or(chain.first())?;
        if written.steps.is_empty() {
            if !written.damaged {
                self.report(codes::pleats_empty(written.place(), written.name));
            }
            return None;
        }
        let manner = self.manner(written);
        let mut spans = Vec::new();
        let steps = self.pleat_steps(&written.steps, scope, &mut spans);
        let properties = crate::copying::overlaid(&chain);
        let layers = properties.get("layers").map(|value| self.layers(value));
        let folding_error = self.length_if(&properties, "folding error", Sign::NotNegative);
        let print = properties
            .get("print")
            .map(|value| self.choice(value, "print"));
        let turn_of_cloth = properties
            .get("turn of cloth")
            .map(|value| self.turn_of_cloth(value));
        let (start, mirrored) = manner?;
        let rule = PleatRule {
            name: referred.item.name.to_owned(),
            start,
            mirrored,
            steps: steps?,
            layers: layers.flatten(),
            print: print.flatten(),
            folding_error: folding_error.flatten(),
            turn_of_cloth: turn_of_cloth.flatten(),
        };
        (!written.damaged).then_some((rule, spans))
    }

    /// `from centre, mirrored`.
    fn manner(&mut self, item: &'t Item<'t>) -> Option<(Start, bool)> {
        const MANNER: &str = "`from left` or `from centre`, and perhaps `mirrored`";
        let (mut start, mut mirrored) = (Start::Left, false);
        for terms in &item.manner {
            let words: Vec<&str> = terms.iter().filter_map(Term::word).collect();
            let said = words.join(" ");
            let only_words = terms.len() == words.len();
            match Start::of_word(&said) {
                Some(from) if only_words => start = from,
                None if only_words && said == MIRRORED => mirrored = true,
                _ => {
                    let place = terms.first()?.span.to(terms.last()?.span);
                    if !terms.iter().any(Term::is_broken) {
                        self.word_not_expected(place, "pleats", MANNER);
                    }
                    return None;
                }
            }
        }
        Some((start, mirrored))
    }

    fn layers(&mut self, value: &Value<'t>) -> Option<u32> {
        let can_be = "`at most` and a count";
        let mut cursor = self.one_phrase(value, "layers", can_be)?;
        cursor.words(&["at", "most"]);
        let (count, _) = self.count(&mut cursor, "layers")?;
        self.nothing_more(&cursor, "layers", can_be)?;
        Some(count)
    }

    /// `none`, `1 mm`, `1/32 in each crease`.
    fn turn_of_cloth(&mut self, value: &Value<'t>) -> Option<Length> {
        let can_be = "a length for each crease, or `none`";
        let mut cursor = self.one_phrase(value, "turn of cloth", can_be)?;
        let turn = if cursor.words(&["none"]) {
            Length::ZERO
        } else {
            self.length_at(&mut cursor, "turn of cloth", Sign::NotNegative)?
        };
        cursor.words(&["each", "crease"]);
        self.nothing_more(&cursor, "turn of cloth", can_be)?;
        Some(turn)
    }

    fn pleat_steps(
        &mut self,
        steps: &[Step<'t>],
        scope: &Scope<'t>,
        spans: &mut Vec<Span>,
    ) -> Option<Vec<PleatStep>> {
        let mut read = Vec::new();
        let mut sound = true;
        for step in steps {
            let number = spans.len();
            spans.push(step.span());
            match self.pleat_step(step, scope, spans) {
                Some(kind) => read.push(PleatStep { number, kind }),
                None => sound = false,
            }
        }
        sound.then_some(read)
    }

    fn pleat_step(
        &mut self,
        step: &Step<'t>,
        scope: &Scope<'t>,
        spans: &mut Vec<Span>,
    ) -> Option<StepKind> {
        match step {
            Step::Repeat { head, steps, .. } => {
                let count = self.turns(head, scope);
                let steps = self.pleat_steps(steps, scope, spans);
                Some(StepKind::Repeat {
                    count: count?,
                    steps: steps?,
                })
            }
            Step::Plain { phrases, span } => self.plain_step(phrases, *span, scope),
        }
    }

    /// `repeat`, `repeat 5 times`, `repeat 4 to 9 times`.
    fn turns(&mut self, head: &'t Phrase, scope: &Scope<'t>) -> Option<Ranged<u32>> {
        const TURNS: &str = "`repeat`, `repeat 5 times` or `repeat 4 to 9 times`";
        let mut cursor = Cursor::new(head, scope);
        cursor.words(&["repeat"]);
        if cursor.peek().is_none() {
            return Some(Ranged {
                least: 1,
                ideal: 1,
                most: MOST_TURNS,
            });
        }
        let (least, least_span) = self.count(&mut cursor, "repeat")?;
        let mut turns = Ranged::fixed(least);
        if cursor.words(&["to"]) {
            let (most, most_span) = self.count(&mut cursor, "repeat")?;
            if most < least {
                self.report(codes::RangeBackwards {
                    first: PlacedText::new(least_span, least.to_string()),
                    second: PlacedText::new(most_span, most.to_string()),
                });
                return None;
            }
            turns = Ranged {
                least,
                ideal: least,
                most,
            };
        }
        cursor.words(&["times"]);
        self.nothing_more(&cursor, "repeat", TURNS)?;
        Some(turns)
    }

    fn plain_step(
        &mut self,
        phrases: &[&'t Phrase],
        span: Span,
        scope: &Scope<'t>,
    ) -> Option<StepKind> {
        let (first, others) = phrases.split_first()?;
        let mut cursor = Cursor::new(first, scope);
        if let Some(kind) = pleat_kind(&mut cursor) {
            return self.pleat(kind, cursor, others).map(StepKind::Pleat);
        }
        let Some((word, _)) = cursor.any_word() else {
            if !cursor.is_broken() {
                self.report(codes::not_understood(span));
            }
            return None;
        };
        let plain = match word {
            "margin" | "space" => self.ranged_length(&mut cursor, word).map(StepKind::Plain),
            "rest" => Some(StepKind::Rest),
            _ => {
                self.report(codes::not_understood(span));
                None
            }
        }?;
        self.nothing_more(&cursor, word, "one length or a range")?;
        if let Some(more) = others.first() {
            self.word_not_expected(more.span, word, "one length or a range");
            return None;
        }
        Some(plain)
    }

    fn pleat(
        &mut self,
        kind: PleatKind,
        first: Cursor<'t>,
        others: &[&'t Phrase],
    ) -> Option<PleatOrder> {
        match kind.make() {
            PleatMake::Folded(pattern) => self.folded(kind, &pattern, first, others),
            PleatMake::Stitched { fingered } => self.stitched(kind, fingered, first, others),
            PleatMake::Drawn => self.drawn_up(kind, first, others),
        }
    }

    /// `knife 2 in toward centre, fold at 5 in`; `box 1 1/2 in, face 3 in`.
    fn folded(
        &mut self,
        kind: PleatKind,
        pattern: &CreasePattern,
        mut first: Cursor<'t>,
        others: &[&'t Phrase],
    ) -> Option<PleatOrder> {
        let word = kind.word();
        let depth = self.ranged_length(&mut first, word)?;
        let mut order = PleatOrder::new(kind, depth);
        first.words(&["deep"]);
        if pattern.lies_to_one_side() {
            order.toward = self.toward(word, &mut first)?;
        }
        self.nothing_more(&first, word, PLEAT)?;
        for phrase in others {
            let mut cursor = Cursor::new(phrase, &first.scope);
            if pattern.face == PatternFace::AsSaid && cursor.words(&["face"]) {
                order.face = Some(self.ranged_length(&mut cursor, "face")?);
            } else if cursor.words(&["fold"]) {
                order.place = Some(self.fold_place(&mut cursor)?);
            }
            self.nothing_more(&cursor, word, PLEAT)?;
        }
        Some(order)
    }

    /// The way a pleat points that lies to one side.
    fn toward(&mut self, word: &str, cursor: &mut Cursor<'t>) -> Option<TowardOrder> {
        const TOWARD: &str = "`toward centre`, `toward edge`, `toward left` or `toward right`";
        let place = cursor.peek().map_or(cursor.end(), |term| term.span);
        if let Some(toward) = cursor.word_and_one_of("toward") {
            return Some(toward);
        }
        if !cursor.is_broken() {
            cursor.words(&["toward"]);
            let place = cursor.peek().map_or(place, |term| term.span);
            self.word_not_expected(place, word, TOWARD);
        }
        None
    }

    /// `at 5 in`, `4 in on`.
    pub(crate) fn fold_place(&mut self, cursor: &mut Cursor<'t>) -> Option<FoldPlace> {
        if cursor.words(&["at"]) {
            return self
                .length_at(cursor, "fold", Sign::NotNegative)
                .map(FoldPlace::At);
        }
        let length: Length = self.length_at(cursor, "fold", Sign::NotNegative)?;
        if cursor.words(&["on"]) {
            return Some(FoldPlace::On(length));
        }
        let place = cursor.peek().map_or(cursor.end(), |term| term.span);
        self.word_not_expected(place, "fold", "`fold at 5 in` or `fold 4 in on`");
        None
    }
}

/// The kind of pleat a step begins with.
fn pleat_kind(cursor: &mut Cursor<'_>) -> Option<PleatKind> {
    let begins = |kind: &PleatKind| {
        let words: Vec<&str> = kind.word().split(' ').collect();
        cursor.words(&words)
    };
    PleatKind::ALL.iter().copied().find(begins)
}
