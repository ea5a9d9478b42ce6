//! Reading the curved steps of outlines.

use pelmet_model::{ArcOrder, OutlineStep, ScallopNumber};

use crate::cursor::Cursor;
use crate::reader::Reader;

const ARC: &str = "`to` a point, then `through` a point, `bulge` a length, `radius` a length, \
    `starting level` or `ending level`";
const CURVE: &str = "`to` a point `by` two other points";
const SCALLOPS: &str = "`to` a point, `5 of them` or `about 4 in wide`, a length `deep`, perhaps \
    `inward`";

impl<'t> Reader<'t> {
    /// `arc to (width, drop) bulge 2 in inward`.
    pub(super) fn arc(
        &mut self,
        mut cursor: Cursor<'t>,
        others: Vec<Cursor<'t>>,
    ) -> Option<OutlineStep> {
        self.word_to(&mut cursor, "arc", ARC)?;
        let (across, down) = self.point(&mut cursor, "arc")?;
        let arc = self.arc_order(&mut cursor)?;
        self.nothing_more(&cursor, "arc", ARC)?;
        self.no_more_phrases(others, "arc", ARC)?;
        Some(OutlineStep::ArcTo { across, down, arc })
    }

    fn arc_order(&mut self, cursor: &mut Cursor<'t>) -> Option<ArcOrder> {
        if cursor.words(&["through"]) {
            let (across, down) = self.point(cursor, "arc")?;
            return Some(ArcOrder::Through { across, down });
        }
        if cursor.words(&["starting", "level"]) {
            return Some(ArcOrder::StartingLevel);
        }
        if cursor.words(&["ending", "level"]) {
            return Some(ArcOrder::EndingLevel);
        }
        if cursor.words(&["bulge"]) {
            let bulge = self.proportion_at(cursor, "arc")?;
            let outward = is_outward(cursor);
            return Some(ArcOrder::Bulge { bulge, outward });
        }
        if cursor.words(&["radius"]) {
            let radius = self.proportion_at(cursor, "arc")?;
            let outward = is_outward(cursor);
            return Some(ArcOrder::Radius { radius, outward });
        }
        self.not_as_wanted(cursor, "arc", ARC);
        None
    }

    /// `curve to (width, drop - 3 in) by (width / 2, drop), (width / 2, drop - 3 in)`.
    pub(super) fn curve(
        &mut self,
        mut cursor: Cursor<'t>,
        others: Vec<Cursor<'t>>,
    ) -> Option<OutlineStep> {
        self.word_to(&mut cursor, "curve", CURVE)?;
        let (across, down) = self.point(&mut cursor, "curve")?;
        if !cursor.words(&["by"]) {
            self.not_as_wanted(&cursor, "curve", CURVE);
            return None;
        }
        let first = self.point(&mut cursor, "curve")?;
        self.nothing_more(&cursor, "curve", CURVE)?;
        let mut others = others.into_iter();
        let Some(mut other) = others.next() else {
            self.value_unfinished(cursor.end(), "curve", CURVE);
            return None;
        };
        let second = self.point(&mut other, "curve")?;
        self.nothing_more(&other, "curve", CURVE)?;
        self.no_more_phrases(others.collect(), "curve", CURVE)?;
        Some(OutlineStep::CurveTo {
            across,
            down,
            first,
            second,
        })
    }

    /// `scallops to (width, drop - 2 in), about 6 in wide, 2 in deep`.
    pub(super) fn scallops(
        &mut self,
        mut cursor: Cursor<'t>,
        others: Vec<Cursor<'t>>,
    ) -> Option<OutlineStep> {
        self.word_to(&mut cursor, "scallops", SCALLOPS)?;
        let (across, down) = self.point(&mut cursor, "scallops")?;
        self.nothing_more(&cursor, "scallops", SCALLOPS)?;
        let (mut number, mut depth, mut outward) = (None, None, true);
        for mut phrase in others {
            if phrase.words(&["inward"]) {
                outward = false;
            } else if phrase.words(&["about"]) {
                let wide = self.proportion_at(&mut phrase, "scallops")?;
                number = Some(ScallopNumber::About(wide));
                phrase.words(&["wide"]);
            } else if phrase.ends_with(&["of", "them"]) {
                let (count, _) = self.count(&mut phrase, "scallops")?;
                number = Some(ScallopNumber::Count(count));
                phrase.words(&["of", "them"]);
            } else {
                depth = Some(self.proportion_at(&mut phrase, "scallops")?);
                phrase.words(&["deep"]);
            }
            self.nothing_more(&phrase, "scallops", SCALLOPS)?;
        }
        let (Some(number), Some(depth)) = (number, depth) else {
            self.value_unfinished(cursor.end(), "scallops", SCALLOPS);
            return None;
        };
        Some(OutlineStep::Scallops {
            across,
            down,
            number,
            depth,
            outward,
        })
    }

    fn word_to(&mut self, cursor: &mut Cursor<'t>, step: &str, can_be: &str) -> Option<()> {
        if cursor.words(&["to"]) {
            return Some(());
        }
        self.not_as_wanted(cursor, step, can_be);
        None
    }

    /// Reports the next term, or that there is none.
    fn not_as_wanted(&mut self, cursor: &Cursor<'t>, step: &str, can_be: &str) {
        if !cursor.is_broken() {
            let place = cursor.peek().map_or(cursor.end(), |term| term.span);
            self.word_not_expected(place, step, can_be);
        }
    }
}

/// Whether a curve swells away from the panel, as it does without a word.
fn is_outward(cursor: &mut Cursor<'_>) -> bool {
    let inward = cursor.words(&["inward"]);
    if !inward {
        cursor.words(&["outward"]);
    }
    !inward
}
