//! Laying pieces one after the other along the part of the strip that a rule describes.

use pelmet_measure::Length;
use pelmet_model::{FoldPlace, PleatMake, PleatMatter};

use super::halves::Halves;
use super::laid::{Laid, Size};
use super::piece::{Piece, PieceKind, PleatPiece};
use crate::rounding::ROUNDING;

/// How far the work has come.
pub(super) struct Walk {
    pub(super) laid: Vec<Laid>,
    /// Where the next piece starts.
    pub(super) at: Length,
    /// The flat cloth that must be there: to the last crease of a placed pleat, to the end of
    /// anything else.
    pub(super) needed: Length,
    last_fold: Length,
    /// The plain cloth that ends where the next piece starts.
    plain: Option<usize>,
    halves: Halves,
    flat: Length,
}

impl Walk {
    /// Lays the pieces for a panel of this flat width.
    ///
    /// # Errors
    ///
    /// Plain cloth and a placed pleat that need the same cloth.
    pub(super) fn along(
        pieces: &[Piece],
        halves: Halves,
        flat: Length,
    ) -> Result<Self, PleatMatter> {
        let (at, needed, last_fold) = Default::default();
        let mut walk = Self {
            laid: Vec::new(),
            at,
            needed,
            last_fold,
            plain: None,
            halves,
            flat,
        };
        for piece in pieces {
            walk.lay(piece)?;
        }
        Ok(walk)
    }

    fn lay(&mut self, piece: &Piece) -> Result<(), PleatMatter> {
        self.plain = match &piece.kind {
            PieceKind::Plain(plain) => {
                self.at += plain.now;
                self.needed = self.needed.max(self.at);
                plain.now.is_positive().then_some(piece.step)
            }
            PieceKind::Rest(length) => {
                self.at += *length;
                None
            }
            PieceKind::Pleat(pleat) => {
                let laid = self.pleat(piece.step, pleat);
                self.refuse_on_plain(&laid)?;
                self.pass(laid, pleat.place.is_some());
                None
            }
        };
        Ok(())
    }

    fn pleat(&self, step: usize, pleat: &PleatPiece) -> Laid {
        let fold_at = pleat.place.map(|place| match place {
            FoldPlace::At(at) => at,
            FoldPlace::On(on) => self.last_fold + on,
        });
        let (depth, face) = (pleat.depth.now, pleat.face());
        let mut laid = match pleat.kind.make() {
            PleatMake::Folded(pattern) => {
                let middle = fold_at.unwrap_or(self.at + depth);
                let toward = self.halves.toward(pleat.toward, middle, self.flat);
                Laid::folded(pleat.kind, &pattern, Size { depth, face }, toward)
            }
            PleatMake::Stitched { fingered } => {
                let fingers = if fingered { pleat.fingers.max(1) } else { 0 };
                Laid::stitched(pleat.kind, fingers, depth, face)
            }
            PleatMake::Drawn => {
                let (take_up, finished) = pleat.gathered();
                Laid::gathered(pleat.kind, take_up, finished)
            }
        };
        laid = laid.with_turns(pleat.turn);
        laid.pleat.step = step;
        let first_fold = laid
            .pleat
            .folds
            .first()
            .map_or(Length::ZERO, |fold| fold.crease);
        let from = fold_at.map_or(self.at, |fold_at| fold_at - first_fold);
        laid.moved(from, from)
    }

    fn refuse_on_plain(&self, laid: &Laid) -> Result<(), PleatMatter> {
        let (ends, begins) = (self.at, laid.pleat.from);
        match self.plain {
            Some(first) if ends - begins > ROUNDING => {
                let second = laid.pleat.step;
                Err(PleatMatter::PleatsRunTogether {
                    first,
                    second,
                    ends,
                    begins,
                })
            }
            _ => Ok(()),
        }
    }

    fn pass(&mut self, laid: Laid, placed: bool) {
        let last_crease = laid.creases.last().map_or(laid.pleat.to, |crease| {
            crease.at + laid.pleat.turn.divided(2)
        });
        self.needed = self
            .needed
            .max(if placed { last_crease } else { laid.pleat.to });
        self.at = self.at.max(laid.pleat.to);
        self.last_fold = laid
            .pleat
            .folds
            .last()
            .map_or(laid.pleat.from, |fold| fold.crease);
        self.laid.push(laid);
    }
}
