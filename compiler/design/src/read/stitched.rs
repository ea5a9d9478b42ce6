//! Reading pleats that are stitched or gathered at the heading.

use num_traits::One;
use pelmet_diagnostics::Span;
use pelmet_measure::{Length, Ratio};
use pelmet_model::{DrawnOrder, PleatKind, PleatOrder, Ranged};
use pelmet_syntax::tree::Phrase;

use crate::cursor::Cursor;
use crate::reader::Reader;

const STITCHED: &str = "what it takes up, then perhaps `fingers 3`, `face` and `fold at`";
const FINGERS: &str = "a count from 2 to 5";
const GATHERS: &str = "perhaps `2 1/2 times`, and perhaps `to` and a finished width";

impl<'t> Reader<'t> {
    /// `pinch 6 in, fingers 3`; `goblet 5 in, face 1 in`; `cartridge 4 in, face 1 1/2 in`.
    pub(crate) fn stitched(
        &mut self,
        kind: PleatKind,
        fingered: bool,
        mut first: Cursor<'t>,
        others: &[&'t Phrase],
    ) -> Option<PleatOrder> {
        let word = kind.word();
        let take_up = self.ranged_length(&mut first, word)?;
        let mut order = PleatOrder::new(kind, take_up);
        self.nothing_more(&first, word, STITCHED)?;
        for phrase in others {
            let mut cursor = Cursor::new(phrase, &first.scope);
            if fingered && cursor.words(&["fingers"]) {
                order.fingers = self.fingers(&mut cursor)?;
            } else if cursor.words(&["face"]) {
                order.face = Some(self.ranged_length(&mut cursor, "face")?);
            } else if cursor.words(&["fold"]) {
                order.place = Some(self.fold_place(&mut cursor)?);
            }
            self.nothing_more(&cursor, word, STITCHED)?;
        }
        Some(order)
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
    pub(crate) fn drawn_up(
        &mut self,
        kind: PleatKind,
        mut cursor: Cursor<'t>,
        others: &[&'t Phrase],
    ) -> Option<PleatOrder> {
        let word = kind.word();
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
        let no_depth = Ranged::fixed(Length::ZERO);
        Some(PleatOrder {
            drawn: DrawnOrder { ratio, to },
            ..PleatOrder::new(kind, no_depth)
        })
    }

    /// Cloth can be drawn together, never apart.
    fn drawn_together(&mut self, times: Ratio, span: Span) -> Option<Ratio> {
        if times > Ratio::one() {
            return Some(times);
        }
        self.part_out_of_range(span, "fullness", times);
        None
    }
}
