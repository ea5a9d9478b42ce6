//! A stretch of a bolt on the paper: its pieces, its flaws, its print, and where it is cut across.

use pelmet_packet::{Cloth, Flaw, Match, Measure, PlacedPiece};

use super::piece::{DrawnPiece, draw_middle, draw_piece, tell_piece};
use super::stretch::{AfterStretch, BoltStretch};
use crate::drawing::{Align, Drawing, LineKind, PaperPoint, Scale, TextSize, at, hatch, rectangle};

/// What is left free left of the cloth, for the places of its cuts.
pub(super) const LEFT: f64 = 25.0;
/// How far apart the lines over a flaw are.
const HATCH: f64 = 2.0;

/// A stretch, and where on the paper it is drawn.
pub(super) struct StretchDrawn<'a> {
    pub(super) cloth: &'a Cloth,
    pub(super) stretch: &'a BoltStretch,
    pub(super) scale: Scale,
    /// Where it begins on the paper.
    pub(super) top: f64,
}

impl StretchDrawn<'_> {
    pub(super) fn draw(&self, drawing: &mut Drawing) {
        let (left, right) = (LEFT, LEFT + self.scale.paper(&self.cloth.width));
        let (top, end) = (self.top, self.end());
        drawing.shape(LineKind::Selvage, rectangle(at(left, top), at(right, end)));
        let usable = rectangle(at(self.across(0.0), top), at(self.right(), end));
        drawing.shape(LineKind::Waste, usable);
        self.tell_ends(drawing);
        self.draw_flaws(drawing);
        let pieces: Vec<DrawnPiece<'_>> = self.pieces().collect();
        for piece in &pieces {
            draw_piece(piece, (top, end), drawing);
        }
        self.draw_repeats(drawing);
        for piece in &pieces {
            draw_middle(piece, (top, end), drawing);
            tell_piece(piece, (top, end), drawing);
        }
        self.draw_cuts(drawing);
        self.draw_frame(drawing);
    }

    /// A place along the bolt on the paper.
    fn along(&self, millimetres: f64) -> f64 {
        self.top + (millimetres - self.stretch.from) / self.scale.ratio
    }

    /// A place across the usable width on the paper.
    fn across(&self, millimetres: f64) -> f64 {
        let selvages = self.cloth.width.mm - self.cloth.usable_width.mm;
        LEFT + (selvages / 2.0 + millimetres) / self.scale.ratio
    }

    fn place(&self, across: &Measure, along: &Measure) -> PaperPoint {
        at(self.across(across.mm), self.along(along.mm))
    }

    fn end(&self) -> f64 {
        self.along(self.stretch.to)
    }

    fn right(&self) -> f64 {
        self.across(self.cloth.usable_width.mm)
    }

    /// Where the stretch begins, and whether the bolt goes on.
    fn tell_ends(&self, drawing: &mut Drawing) {
        let of_bolt = if self.cloth.bolts.len() > 1 {
            format!(" of bolt {}", self.stretch.bolt)
        } else {
            String::new()
        };
        let first = match &self.stretch.from_text {
            Some(place) => format!("goes on at {place}{of_bolt}"),
            None if self.stretch.from > 0.0 => format!("goes on{of_bolt}"),
            None => format!("cut end{of_bolt}"),
        };
        let above = at(LEFT, self.top - 1.5);
        drawing.words(above, Align::Left, TextSize::Small, first);
        if self.stretch.then == AfterStretch::More {
            let below = at(LEFT, self.end() + TextSize::Small.millimetres() + 0.6);
            let next = format!("the next drawing goes on here{of_bolt}");
            drawing.words(below, Align::Left, TextSize::Small, next);
        }
    }

    fn draw_flaws(&self, drawing: &mut Drawing) {
        let in_stretch = |flaw: &&Flaw| self.stretch.holds(flaw.bolt, flaw.from.mm, flaw.to.mm);
        for flaw in self.cloth.flaws.iter().filter(in_stretch) {
            let near = self.place(&flaw.left, &flaw.from);
            let far = self.place(&flaw.right, &flaw.to);
            let (near, far) = (
                at(near.x, near.y.max(self.top)),
                at(far.x, far.y.min(self.end())),
            );
            drawing.shape(LineKind::Flaw, rectangle(near, far));
            for line in hatch(near, far, HATCH) {
                drawing.line(LineKind::Flaw, line);
            }
        }
    }

    /// The pieces that lie in the stretch, wholly or in part.
    fn pieces(&self) -> impl Iterator<Item = DrawnPiece<'_>> {
        let in_stretch = |piece: &&PlacedPiece| {
            let from = piece.along.mm;
            self.stretch.holds(piece.bolt, from, from + piece.length.mm)
        };
        let pieces = self.cloth.placed.iter().filter(in_stretch);
        pieces.map(|piece| self.drawn(piece))
    }

    fn drawn<'p>(&self, piece: &'p PlacedPiece) -> DrawnPiece<'p> {
        let near = self.place(&piece.across, &piece.along);
        let (width, length) = (
            self.scale.paper(&piece.width),
            self.scale.paper(&piece.length),
        );
        let far = at(near.x + width, near.y + length);
        let corner =
            |corner: &pelmet_packet::PlacedCorner| self.place(&corner.across, &corner.along);
        let outline = if piece.outline.is_empty() {
            rectangle(near, far).to_vec()
        } else {
            piece.outline.iter().map(corner).collect()
        };
        DrawnPiece {
            piece,
            near,
            far,
            outline,
            middle: piece.middle_at.as_ref().map(|middle| {
                if piece.railroaded {
                    let y = self.along(middle.mm);
                    [at(near.x, y), at(far.x, y)]
                } else {
                    let x = self.across(middle.mm);
                    [at(x, near.y), at(x, far.y)]
                }
            }),
            fold: piece.fold_at.as_ref().map(|fold| self.across(fold.mm)),
            print: (
                piece
                    .print_across
                    .as_ref()
                    .map(|place| self.across(place.mm)),
                piece.print_along.as_ref().map(|place| self.along(place.mm)),
            ),
        }
    }

    /// Lines on which the held part of the print lies, and from which it comes round across. In a
    /// half-drop print they lie half a repeat further along in every other column.
    fn draw_repeats(&self, drawing: &mut Drawing) {
        let Some(repeat) = &self.cloth.repeat else {
            return;
        };
        let millimetres = |length: &Option<Measure>| length.as_ref().map(|length| length.mm);
        let first = millimetres(&self.cloth.print_line).unwrap_or(0.0);
        let (along, across) = (millimetres(&repeat.along), millimetres(&repeat.across));
        let half = match repeat.matching {
            Match::Straight => 0.0,
            Match::HalfDrop => along.unwrap_or(0.0) / 2.0,
        };
        let usable = self.cloth.usable_width.mm;
        for column in columns(across, millimetres(&self.cloth.print_line_across), usable) {
            let first = first + if column.is_odd { half } else { 0.0 };
            let (left, right) = (self.across(column.from), self.across(column.to));
            for along in steps(first, along, self.stretch.to) {
                if along > self.stretch.from {
                    let y = self.along(along);
                    drawing.line(LineKind::Repeat, [at(left, y), at(right, y)]);
                }
            }
            if column.from > 0.0 {
                drawing.line(LineKind::Repeat, [at(left, self.top), at(left, self.end())]);
            }
        }
    }

    /// The cuts straight across, each with its place along the bolt. Words that would lie on those
    /// above them are left out; the yardage sheet has every number.
    fn draw_cuts(&self, drawing: &mut Drawing) {
        let BoltStretch { bolt, from, to, .. } = *self.stretch;
        let mut free = self.top;
        let bands = self.cloth.bands.iter();
        for band in bands.filter(|band| band.bolt == bolt && from < band.to.mm && band.to.mm <= to)
        {
            let y = self.along(band.to.mm);
            drawing.line(LineKind::Measure, [at(LEFT - 3.0, y), at(LEFT, y)]);
            if y >= free {
                let place = at(LEFT - 4.0, y + 1.0);
                drawing.words(place, Align::Right, TextSize::Plain, band.to.text.clone());
                free = y + TextSize::Plain.millimetres() * 1.3;
            }
        }
    }

    /// The edges of the cloth: its sides, and the ends it has here.
    fn draw_frame(&self, drawing: &mut Drawing) {
        let (left, right) = (LEFT, LEFT + self.scale.paper(&self.cloth.width));
        let (top, end) = (self.top, self.end());
        for x in [left, right] {
            drawing.line(LineKind::Measure, [at(x, top), at(x, end)]);
        }
        let is_begun = self.stretch.from <= 0.0;
        let is_ended = self.stretch.then == AfterStretch::End;
        let ends = [(is_begun, top), (is_ended, end)];
        for (_, y) in ends.into_iter().filter(|(is_shown, _)| *is_shown) {
            drawing.line(LineKind::Measure, [at(left, y), at(right, y)]);
        }
    }
}

/// A column of the print, in millimetres from the left end of the usable width.
struct PrintColumn {
    from: f64,
    to: f64,
    /// Whether the print lies half a repeat lower in it, if it is a half-drop.
    is_odd: bool,
}

/// The columns of a print that comes round so often across; one where it does not.
fn columns(across: Option<f64>, line: Option<f64>, usable: f64) -> Vec<PrintColumn> {
    let Some(step) = across else {
        return vec![PrintColumn {
            from: 0.0,
            to: usable,
            is_odd: false,
        }];
    };
    let line = line.unwrap_or(0.0);
    let starts = steps(line, Some(step), usable);
    let column = |(start, is_odd): (f64, bool)| PrintColumn {
        from: start.max(0.0),
        to: usable.min(start + step),
        is_odd,
    };
    // Left of the first line lies the end of another column.
    let before = (line > 0.0).then_some((line - step, true));
    let within = starts.zip([false, true].into_iter().cycle());
    before.into_iter().chain(within).map(column).collect()
}

/// Every whole step from the first on, up to the end; none for one that is next to nothing.
fn steps(first: f64, step: Option<f64>, end: f64) -> impl Iterator<Item = f64> {
    const NEXT_TO_NOTHING: f64 = 5.0;
    let steps = step.filter(|step| *step > NEXT_TO_NOTHING);
    let steps = steps
        .into_iter()
        .flat_map(move |step| (0_u32..).map(move |count| first + step * f64::from(count)));
    steps.take_while(move |place| *place < end)
}
