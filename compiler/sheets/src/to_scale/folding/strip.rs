//! The flat strip: what of it is hidden, its creases, and the way each fold is brought.

use pelmet_packet::{Crease, CreaseKind, Mark, MarkKind, Panel, Run};

use super::lying::LyingStretch;
use super::row::StripRow;
use crate::drawing::{Align, Drawing, LineKind, PAGE_WIDTH, TextSize, at, rectangle, width_of};

/// How high the strip is on the paper.
pub(crate) const HEIGHT: f64 = 8.0;
/// From one line of arrows to the next, and from one line of numbers to the next.
const ARROWS: f64 = 4.6;
const NUMBERS: f64 = 3.4;
/// So many lines of numbers stand below a strip; what finds no room there is in the table.
const LINES_OF_NUMBERS: usize = 6;
/// A number stands so far beside the line down to it.
const BESIDE: f64 = 0.7;

/// A row of the strip on the paper.
pub(crate) struct FlatStrip<'a> {
    pub(crate) panel: &'a Panel,
    pub(crate) lying: &'a [LyingStretch<'a>],
    pub(crate) row: StripRow,
    /// Its left upper corner.
    pub(crate) left: f64,
    pub(crate) top: f64,
    /// Millimetres of cloth in one of the drawing.
    pub(crate) ratio: f64,
}

/// Something brought to a place along the strip.
struct Brought<'a> {
    mark: &'a Mark,
    from: f64,
    to: f64,
}

/// Where the place of a crease is written below the strip.
struct CreaseNumber<'a> {
    x: f64,
    /// The line it stands on, from 1 at the strip.
    line: u32,
    /// Whether it stands left of the line down to it, for want of room at the right.
    to_the_left: bool,
    told: &'a str,
}

impl FlatStrip<'_> {
    pub(crate) fn draw(&self, drawing: &mut Drawing) {
        let (from, to) = (self.x(self.row.from), self.x(self.row.to));
        let frame = rectangle(at(from, self.top), at(to, self.top + HEIGHT));
        drawing.shape(LineKind::Face, frame);
        for it in self.lying {
            self.draw_hidden(it, drawing);
        }
        self.draw_creases(drawing);
        self.tell_creases(drawing);
        for it in self.lying {
            self.tell_number(it, drawing);
        }
        self.draw_brought(drawing);
    }

    /// Where a flat position is on the paper.
    fn x(&self, flat: f64) -> f64 {
        self.left + (flat - self.row.from) / self.ratio
    }

    /// What of a stretch is not seen once it is folded; all of one that is turned over.
    fn draw_hidden(&self, it: &LyingStretch<'_>, drawing: &mut Drawing) {
        for part in it.parts.iter().filter(|part| !part.seen) {
            let (one, other) = (it.flat(part.from), it.flat(part.to));
            let Some((from, to)) = self.row.clip((one.min(other), one.max(other))) else {
                continue;
            };
            let line = if it.stretch.face_up {
                LineKind::Hidden
            } else {
                LineKind::Turned
            };
            let (from, to) = (self.x(from), self.x(to));
            drawing.shape(
                line,
                rectangle(at(from, self.top), at(to, self.top + HEIGHT)),
            );
        }
    }

    /// Each crease across the strip.
    fn draw_creases(&self, drawing: &mut Drawing) {
        for crease in self.creases() {
            let line = match crease.kind {
                CreaseKind::Mountain => LineKind::Fold,
                CreaseKind::Valley => LineKind::FoldAway,
            };
            let x = self.x(crease.at.mm);
            drawing.line(line, [at(x, self.top), at(x, self.top + HEIGHT)]);
        }
    }

    fn creases(&self) -> impl DoubleEndedIterator<Item = &Crease> {
        let creases = self.panel.creases.iter();
        creases.filter(|crease| self.row.holds(crease.at.mm))
    }

    /// Below each crease how far it is from the left edge.
    fn tell_creases(&self, drawing: &mut Drawing) {
        let bottom = self.top + HEIGHT;
        for number in self.numbers() {
            let (x, y) = (number.x, bottom + f64::from(number.line) * NUMBERS);
            drawing.line(LineKind::Measure, [at(x, bottom), at(x, y)]);
            let (place, align) = if number.to_the_left {
                (x - BESIDE, Align::Right)
            } else {
                (x + BESIDE, Align::Left)
            };
            drawing.words(at(place, y), align, TextSize::Small, number.told);
        }
    }

    /// From the right each goes on the first line, from 1, where it has room, so that no line down to a
    /// number passes through another number.
    fn numbers(&self) -> Vec<CreaseNumber<'_>> {
        let mut free: Vec<f64> = vec![PAGE_WIDTH; LINES_OF_NUMBERS];
        let placed = self.creases().rev().filter_map(|crease| {
            let (x, told) = (self.x(crease.at.mm), crease.at.text.as_str());
            let wide = width_of(told, TextSize::Small) + 2.0 * BESIDE;
            let to_the_left = x + wide > PAGE_WIDTH;
            let (from, end) = if to_the_left {
                (x - wide, x)
            } else {
                (x, x + wide)
            };
            let line = free.iter().position(|free| end <= *free)?;
            // The line down to this number passes the lines above it, so that no number further left may
            // reach over it there.
            for passed in free.iter_mut().take(line) {
                *passed = x;
            }
            if let Some(taken) = free.get_mut(line) {
                *taken = from;
            }
            let line = u32::try_from(line).ok()?.saturating_add(1);
            Some(CreaseNumber {
                x,
                line,
                to_the_left,
                told,
            })
        });
        placed.collect()
    }

    fn tell_number(&self, it: &LyingStretch<'_>, drawing: &mut Drawing) {
        let Run { from, to } = &it.stretch.flat;
        let Some((from, to)) = self.row.clip((from.mm, to.mm)) else {
            return;
        };
        let (from, to) = (self.x(from), self.x(to));
        let number = it.number.to_string();
        if width_of(&number, TextSize::Small) < to - from {
            let middle = at((from + to) / 2.0, self.top + HEIGHT / 2.0 + 1.0);
            drawing.words(middle, Align::Middle, TextSize::Small, number);
        }
    }

    /// Arrows over the strip from each fold to the line it is brought to, and between points that are
    /// stitched together; each with the number of its pleat.
    fn draw_brought(&self, drawing: &mut Drawing) {
        let arrows: Vec<(Brought<'_>, f64)> = self
            .brought()
            .into_iter()
            .map(|(brought, line)| (brought, self.top - ARROWS * f64::from(line) + 2.0))
            .collect();
        for (brought, y) in &arrows {
            self.draw_arrow(brought, *y, drawing);
        }
        for (brought, y) in &arrows {
            let pleat = brought.pleat();
            if width_of(&pleat, TextSize::Small) < brought.right() - brought.left() + 2.0 {
                let middle = at((brought.from + brought.to) / 2.0, y - 0.7);
                drawing.words(middle, Align::Middle, TextSize::Small, pleat);
            }
        }
    }

    /// How much room the arrows over it take, and the numbers below.
    pub(crate) fn room(&self) -> (f64, f64) {
        let lines = self.brought().iter().map(|(_, line)| *line).max();
        let numbers = self.numbers().iter().map(|number| number.line).max();
        let high = |lines: Option<u32>, each: f64| f64::from(lines.unwrap_or(0)) * each + 1.0;
        (high(lines, ARROWS), high(numbers, NUMBERS))
    }

    fn draw_arrow(&self, brought: &Brought<'_>, y: f64, drawing: &mut Drawing) {
        let (from, to, foot) = (brought.from, brought.to, self.top - 0.4);
        drawing.line(
            LineKind::Move,
            [at(from, foot), at(from, y), at(to, y), at(to, foot)],
        );
        let head = |x: f64| {
            [
                at(x - 0.8, foot - 1.4),
                at(x, foot),
                at(x + 0.8, foot - 1.4),
            ]
        };
        drawing.line(LineKind::Move, head(to));
        if brought.mark.fold.is_none() {
            drawing.line(LineKind::Move, head(from));
        }
    }

    /// From left to right, each on the first line from 1 where it lies over no other.
    fn brought(&self) -> Vec<(Brought<'_>, u32)> {
        let marks = self.panel.marks.iter();
        let mut brought: Vec<Brought<'_>> =
            marks.filter_map(|mark| self.brought_by(mark)).collect();
        brought.sort_by(|one, other| one.left().total_cmp(&other.left()));
        let mut free: Vec<f64> = Vec::new();
        let on_lines = brought.into_iter().map(|it| {
            let line = free.iter().position(|free| *free <= it.left());
            let line = line.unwrap_or(free.len());
            free.resize(free.len().max(line.saturating_add(1)), 0.0);
            if let Some(free) = free.get_mut(line) {
                *free = it.right() + 1.5;
            }
            (it, u32::try_from(line).unwrap_or(0).saturating_add(1))
        });
        on_lines.collect()
    }

    fn brought_by<'a>(&self, mark: &'a Mark) -> Option<Brought<'a>> {
        let from = mark.from_left.as_ref()?.mm;
        let other = match (mark.kind, &mark.fold, &mark.stitch, &mark.gather) {
            (MarkKind::Fold, Some(fold), ..) => fold.brought_to_from_left.mm,
            (_, _, Some(stitch), _) => stitch.other_from_left.mm,
            (_, _, _, Some(gather)) => {
                let mut pleats = self.panel.pleats.iter();
                let pleat = pleats.find(|pleat| pleat.number == gather.pleat)?;
                // Both ends of the run are marked; its left one stands for it.
                if from > (pleat.flat.from.mm + pleat.flat.to.mm) / 2.0 {
                    return None;
                }
                pleat.flat.to.mm
            }
            _ => return None,
        };
        self.row.holds(from).then(|| Brought {
            mark,
            from: self.x(from),
            to: self.x(other.clamp(self.row.from, self.row.to)),
        })
    }
}

impl Brought<'_> {
    fn left(&self) -> f64 {
        self.from.min(self.to)
    }

    fn right(&self) -> f64 {
        self.from.max(self.to)
    }

    /// The number of its pleat, and what gathers are drawn up to.
    fn pleat(&self) -> String {
        match (&self.mark.fold, &self.mark.stitch, &self.mark.gather) {
            (Some(fold), ..) => fold.pleat.to_string(),
            (_, Some(stitch), _) => stitch.pleat.to_string(),
            (.., Some(gather)) => format!("{} to {}", gather.pleat, gather.drawn_to.text),
            _ => String::new(),
        }
    }
}
