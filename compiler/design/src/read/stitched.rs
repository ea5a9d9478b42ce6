//! Reading pleats that are stitched or gathered at the heading.

use num_traits::One;
use pelmet_diagnostics::{Span, codes};
use pelmet_measure::{Length, Ratio, number_text};
use pelmet_model::{PleatKind, PleatOrder, Ranged, StepKind, StitchedShape};
use pelmet_syntax::tree::Phrase;

use crate::cursor::Cursor;
use crate::reader::Reader;

const STITCHED: &str = "what it takes up, then perhaps `fingers 3`, `face` and `fold at`";
const FINGERS: &str = "a count from 2 to 5";
const GATHERS: &str = "perhaps `2 1/2 times`, and perhaps `to` and a finished width";

/// The fingers of a pinch pleat that says nothing of them. Common practice, no source.
const USUAL_FINGERS: u32 = 3;

impl<'t> Reader<'t> {
    /// `pinch 6 in, fingers 3`; `goblet 5 in, face 1 in`; `cartridge 4 in, face 1 1/2 in`.
    pub(crate) fn stitched(
        &mut self,
        word: &str,
        mut first: Cursor<'t>,
        others: &[&'t Phrase],
    ) -> Option<StepKind> {
        let take_up = self.ranged_length(&mut first, word)?;
        self.nothing_more(&first, word, STITCHED)?;
        let (mut fingers, mut face, mut place) = (USUAL_FINGERS, None, None);
        for phrase in others {
            let mut cursor = Cursor::new(phrase, &first.scope);
            if word == "pinch" && cursor.words(&["fingers"]) {
                fingers = self.fingers(&mut cursor)?;
            } else if cursor.words(&["face"]) {
                face = Some(self.ranged_length(&mut cursor, "face")?);
            } else if cursor.words(&["fold"]) {
                place = Some(self.fold_place(&mut cursor)?);
            }
            self.nothing_more(&cursor, word, STITCHED)?;
        }
        let shape = match word {
            "goblet" => StitchedShape::Goblet,
            "cartridge" => StitchedShape::Cartridge,
            _ => StitchedShape::Pinch { fingers },
        };
        Some(StepKind::Pleat(PleatOrder {
            kind: PleatKind::Stitched { shape, face },
            depth: take_up,
            place,
        }))
    }

    fn fingers(&mut self, cursor: &mut Cursor<'t>) -> Option<u32> {
        let (count, span) = self.count(cursor, "fingers")?;
        if (2..=5).contains(&count) {
            return Some(count);
        }
        self.word_not_expected(span, "fingers", FINGERS);
        None
    }

    /// `gathers`, `gathers 2 times`, `pencil 2 1/2 times to 20 in`.
    pub(crate) fn gathers(
        &mut self,
        word: &str,
        mut cursor: Cursor<'t>,
        others: &[&'t Phrase],
    ) -> Option<StepKind> {
        let (mut ratio, mut to) = (None, None);
        if cursor.peek().is_some_and(|term| term.word() != Some("to")) {
            let (times, span) = self.plain_number(&mut cursor, word)?;
            cursor.words(&["times"]);
            ratio = Some(self.drawn_together(times, span)?);
        }
        if cursor.words(&["to"]) {
            to = Some(self.ranged_length(&mut cursor, word)?);
        }
        self.nothing_more(&cursor, word, GATHERS)?;
        if let Some(more) = others.first() {
            self.word_not_expected(more.span, word, GATHERS);
            return None;
        }
        let pencil = word == "pencil";
        Some(StepKind::Pleat(PleatOrder {
            kind: PleatKind::Gathered { pencil, ratio, to },
            depth: Ranged::fixed(Length::ZERO),
            place: None,
        }))
    }

    /// Cloth can be drawn together, never apart.
    fn drawn_together(&mut self, times: Ratio, span: Span) -> Option<Ratio> {
        if times > Ratio::one() {
            return Some(times);
        }
        let typed = number_text(times);
        self.report(codes::part_out_of_range(span, "fullness", &typed));
        None
    }
}
