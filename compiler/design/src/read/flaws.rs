//! Reading the flaws of a cloth.

use pelmet_diagnostics::{PlacedText, Span, codes};
use pelmet_measure::Length;
use pelmet_model::{Fabric, FlawOrder, MAXIMUM_FLAWS};

use crate::cursor::Cursor;
use crate::lengths::Sign;
use crate::reader::Reader;
use crate::scope::Value;

const FLAWS: &str = "stretches of the bolt, such as `3 yd to 3 yd 8 in`, or `none`";

/// A flaw and where it is written.
type PlacedFlaw = (FlawOrder, Span);

impl<'t> Reader<'t> {
    /// `3 yd to 3 yd 8 in, 5 yd to 5 yd 4 in across 10 in to 14 in, 1 yd to 40 in on bolt 2`, or `none`.
    /// A flaw that cannot be is reported and left out.
    pub(super) fn flaws(&mut self, value: &Value<'t>, fabric: &Fabric) -> Vec<FlawOrder> {
        let phrases = self.phrases(value).unwrap_or_default();
        if let Some(one_more) = phrases.get(MAXIMUM_FLAWS) {
            self.report(codes::too_many_flaws(one_more.span(), MAXIMUM_FLAWS));
            return Vec::new();
        }
        let mut flaws: Vec<PlacedFlaw> = Vec::new();
        for mut cursor in phrases {
            if cursor.words(&["none"]) {
                self.nothing_more(&cursor, "flaws", FLAWS);
                continue;
            }
            let span = cursor.span();
            if let Some(flaw) = self.flaw(&mut cursor)
                && self.is_on_cloth(&flaw, span, fabric)
                && self.is_apart((&flaw, span), &flaws)
            {
                flaws.push((flaw, span));
            }
        }
        flaws.into_iter().map(|(flaw, _)| flaw).collect()
    }

    fn flaw(&mut self, cursor: &mut Cursor<'t>) -> Option<FlawOrder> {
        let (from, to) = self.stretch(cursor)?;
        let mut flaw = FlawOrder {
            bolt: 1,
            from,
            to,
            across: None,
        };
        while !cursor.is_broken() && cursor.peek().is_some() {
            if flaw.across.is_none() && cursor.words(&["across"]) {
                flaw.across = Some(self.stretch(cursor)?);
            } else if cursor.words(&["on", "bolt"]) {
                flaw.bolt = self.count(cursor, "flaws")?.0;
            } else {
                break;
            }
        }
        self.nothing_more(cursor, "flaws", FLAWS)?;
        Some(flaw)
    }

    /// From one length to another that is more.
    fn stretch(&mut self, cursor: &mut Cursor<'t>) -> Option<(Length, Length)> {
        let start = cursor.peek()?.span;
        let from = self.length_at(cursor, "flaws", Sign::NotNegative)?;
        if !cursor.words(&["to"]) {
            let place = cursor.peek().map_or(cursor.end(), |term| term.span);
            self.word_not_expected(place, "flaws", FLAWS);
            return None;
        }
        let end = cursor.peek().map_or(cursor.end(), |term| term.span);
        let to = self.length_at(cursor, "flaws", Sign::NotNegative)?;
        if from < to {
            return Some((from, to));
        }
        if from == to {
            self.report(codes::flaw_empty(start.to(end), &self.shown(from)));
        } else {
            self.report(codes::RangeBackwards {
                first: PlacedText::new(start, self.shown(from)),
                second: PlacedText::new(end, self.shown(to)),
            });
        }
        None
    }

    /// Whether the flaw lies on a bolt of the cloth, and on no bolt that there is not.
    fn is_on_cloth(&mut self, flaw: &FlawOrder, span: Span, fabric: &Fabric) -> bool {
        if flaw.bolt > 1 && fabric.bolt_length.is_none() {
            self.report(codes::bolt_without_end(span, &fabric.name, flaw.bolt));
            return false;
        }
        let beyond_end = fabric.bolt_length.filter(|bolt| flaw.to > *bolt);
        let right = flaw.across.map(|(_, right)| right);
        let beyond_edge = right.filter(|right| *right > fabric.width);
        let (place, room, cloth, how) = match (beyond_end, beyond_edge) {
            (Some(bolt), _) => (flaw.to, bolt, "a bolt is", "long"),
            (None, Some(right)) => (right, fabric.width, "the cloth is", "wide"),
            (None, None) => return true,
        };
        self.report(codes::PlaceBeyondCloth {
            span,
            what: "the flaw reaches to",
            place: self.shown(place),
            cloth,
            room: self.shown(room),
            how,
            over: self.shown(place - room),
        });
        false
    }

    /// Whether the flaw has no cloth in common with another.
    fn is_apart(&mut self, (flaw, span): (&FlawOrder, Span), others: &[PlacedFlaw]) -> bool {
        let Some((_, other)) = others.iter().find(|(other, _)| flaw.overlaps(other)) else {
            return true;
        };
        self.report(codes::FlawsOverlap {
            flaw: span,
            other: *other,
        });
        false
    }

    /// `2 in from left edge`: where the print begins across the bolt. Of a cloth that is said to have no
    /// repeat, or whose repeat cannot be read, nothing begins.
    pub(super) fn print_begins(
        &mut self,
        value: &Value<'t>,
        fabric: &Fabric,
        repeat_is_said: bool,
    ) -> Option<Length> {
        const BEGINS: &str = "a length `from left edge`, or `none`";
        let mut cursor = self.one_phrase(value, "print begins", BEGINS)?;
        if cursor.words(&["none"]) {
            self.nothing_more(&cursor, "print begins", BEGINS)?;
            return None;
        }
        let begins = self.length_at(&mut cursor, "print begins", Sign::NotNegative)?;
        if !cursor.words(&["from", "left", "edge"]) {
            let place = cursor.peek().map_or(cursor.end(), |term| term.span);
            self.word_not_expected(place, "print begins", BEGINS);
            return None;
        }
        self.nothing_more(&cursor, "print begins", BEGINS)?;
        if !fabric.repeats_across() {
            if fabric.repeat.is_some() || !repeat_is_said {
                self.report(codes::print_without_repeat(value.span, &fabric.name));
            }
            return None;
        }
        if begins > fabric.width {
            self.report(codes::PlaceBeyondCloth {
                span: value.span,
                what: "the print begins at",
                place: self.shown(begins),
                cloth: "the cloth is",
                room: self.shown(fabric.width),
                how: "wide",
                over: self.shown(begins - fabric.width),
            });
            return None;
        }
        Some(begins)
    }
}
