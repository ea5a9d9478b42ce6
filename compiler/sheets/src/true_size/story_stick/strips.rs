//! A story stick cut into strips of paper.

use super::marks::{StickMarks, Tick};
use crate::drawing::{Align, Drawing, LineKind, PaperPoint, TextSize, at, width_of};
use crate::true_size::page::{Frame, OVERLAP, TileAxis, letters, shortened};

/// From the edge of a strip down to its lines of arrows, from one of them to the next, and to the first
/// line of words.
const ARROWS: f64 = 6.0;
const NEXT_ARROW: f64 = 4.5;
const WORDS: f64 = 5.0;
const NEXT_WORDS: f64 = 4.2;
/// Words stand so far beside the line they tell of, and keep so far from the next.
const BESIDE: f64 = 1.0;
const APART: f64 = 1.5;
/// How long the head of an arrow is, and half as wide.
const HEAD: f64 = 2.0;
const ARM: f64 = 3.0;

/// A stick cut into strips.
pub(super) struct StickStrips<'a> {
    pub(super) marked: &'a StickMarks,
    pub(super) axis: TileAxis,
    pub(super) window: Frame,
}

impl StickStrips<'_> {
    pub(super) fn height(&self) -> f64 {
        let words = f64::from(self.lines_of_words().into_iter().max().unwrap_or(0));
        self.words_below() + (words + 2.0) * NEXT_WORDS
    }

    /// How far below the edge the first line of words stands.
    fn words_below(&self) -> f64 {
        let arrows = f64::from(self.lines_of_arrows().into_iter().max().unwrap_or(0));
        ARROWS + arrows * NEXT_ARROW + WORDS
    }

    /// The line each arrow lies on, from the edge: those on one line keep clear of each other.
    fn lines_of_arrows(&self) -> Vec<u32> {
        let mut taken: Vec<Vec<(f64, f64)>> = Vec::new();
        let arrows = self.marked.arrows.iter();
        arrows
            .map(|arrow| {
                let (from, to) = (arrow.from.min(arrow.to), arrow.from.max(arrow.to));
                let free = |line: &Vec<(f64, f64)>| {
                    line.iter()
                        .all(|(start, end)| to + APART < *start || *end + APART < from)
                };
                let line = taken.iter().position(free).unwrap_or(taken.len());
                if taken.get(line).is_none() {
                    taken.push(Vec::new());
                }
                if let Some(taken) = taken.get_mut(line) {
                    taken.push((from, to));
                }
                u32::try_from(line).unwrap_or(u32::MAX)
            })
            .collect()
    }

    /// Whether the words of a tick stand left of it, since there is no room at its right on the strip it
    /// is told on.
    fn to_the_left(&self, tick: &Tick) -> bool {
        let strip = self.axis.home(tick.at);
        let end = self.axis.begins(strip) + self.axis.shown - OVERLAP / 2.0;
        tick.at + BESIDE + width_of(&tick.words, TextSize::Small) > end
    }

    /// From where to where the words of a tick stand.
    fn span(&self, tick: &Tick) -> (f64, f64) {
        let width = BESIDE + width_of(&tick.words, TextSize::Small) + APART;
        if self.to_the_left(tick) {
            (tick.at - width, tick.at)
        } else {
            (tick.at, tick.at + width)
        }
    }

    /// The line the words of each tick stand on: clear of all others, and below those of the ticks that
    /// stand in their way, so that no line down to a word crosses another word where that can be helped.
    fn lines_of_words(&self) -> Vec<u32> {
        let ticks = &self.marked.ticks;
        // A word reaches to the right over the ticks there, whose lines run down to words of their own; it is
        // clear of these lines only below their ends. So ticks are placed from the right, and all that a
        // word must stay below is placed before it.
        let mut placed: Vec<(&Tick, (f64, f64), u32)> = Vec::new();
        for tick in ticks.iter().rev().filter(|tick| !tick.words.is_empty()) {
            let (from, to) = self.span(tick);
            let near = placed
                .iter()
                .filter(|(_, (start, end), _)| *start < to && from < *end);
            let near: Vec<_> = near.collect();
            let in_the_way = near
                .iter()
                .filter(|(other, ..)| (from..to).contains(&other.at));
            let lowest = in_the_way.map(|(.., line)| line.saturating_add(1)).max();
            let lines = std::iter::successors(lowest.or(Some(0)), |line| line.checked_add(1));
            let mut free = lines.filter(|line| near.iter().all(|(.., taken)| taken != line));
            placed.push((tick, (from, to), free.next().unwrap_or(0)));
        }
        let line_of = |tick: &Tick| {
            let found = placed.iter().find(|(other, ..)| std::ptr::eq(*other, tick));
            found.map_or(0, |(.., line)| *line)
        };
        ticks.iter().map(line_of).collect()
    }

    /// Draws one strip with its edge at a height of the page.
    pub(super) fn draw(&self, strip: u32, top: f64, title: &str, page: &mut Drawing) {
        let begins = self.axis.begins(strip);
        let x = |place: f64| self.window.left + place - begins;
        let shown = |place: f64| (begins..=begins + self.axis.shown).contains(&place);
        let frame = Frame {
            top,
            height: self.height(),
            ..self.window
        };
        page.shape(LineKind::Frame, frame.corners());
        self.draw_edge(begins, frame, page);
        self.draw_arrows(begins, frame, page);
        for (tick, line) in self.marked.ticks.iter().zip(self.lines_of_words()) {
            if shown(tick.at) {
                let told = self.axis.home(tick.at) == strip && !tick.words.is_empty();
                self.draw_tick(tick, x(tick.at), (top, line), told, page);
            }
        }
        let number = strip.saturating_add(1);
        let of = format!("{title}, strip {number} of {}", self.axis.tiles);
        let of = shortened(&of, TextSize::Small, frame.width - 4.0 * OVERLAP);
        let foot = at(frame.right() - 2.0 * OVERLAP, frame.bottom() - 1.2);
        page.words(foot, Align::Right, TextSize::Small, of);
        self.draw_joins(strip, frame, page);
    }

    /// A tick, down to its words where they are told on this strip.
    fn draw_tick(
        &self,
        tick: &Tick,
        x: f64,
        (top, line): (f64, u32),
        told: bool,
        page: &mut Drawing,
    ) {
        let below_arrows = top + self.words_below() - WORDS;
        if !told {
            page.line(tick.line, [at(x, top), at(x, below_arrows)]);
            return;
        }
        let y = below_arrows + WORDS + f64::from(line) * NEXT_WORDS;
        page.line(tick.line, [at(x, top), at(x, y)]);
        let (place, align) = if self.to_the_left(tick) {
            (x - BESIDE, Align::Right)
        } else {
            (x + BESIDE, Align::Left)
        };
        page.words(at(place, y), align, TextSize::Small, &*tick.words);
    }

    /// The edge that is laid along the cloth, from the panel's left edge to its right.
    fn draw_edge(&self, begins: f64, frame: Frame, page: &mut Drawing) {
        let ends = self.marked.ticks.first().zip(self.marked.ticks.last());
        let Some((first, last)) = ends else { return };
        let from = (frame.left + first.at - begins).max(frame.left);
        let to = (frame.left + last.at - begins).min(frame.right());
        page.line(LineKind::CutEdge, [at(from, frame.top), at(to, frame.top)]);
    }

    fn draw_arrows(&self, begins: f64, frame: Frame, page: &mut Drawing) {
        let x = |place: f64| frame.left + place - begins;
        for (arrow, line) in self.marked.arrows.iter().zip(self.lines_of_arrows()) {
            let y = frame.top + ARROWS + f64::from(line) * NEXT_ARROW;
            let (from, to) = (x(arrow.from), x(arrow.to));
            let (left, right) = (from.min(to), from.max(to));
            let (left, right) = (left.max(frame.left), right.min(frame.right()));
            if left >= right {
                continue;
            }
            page.line(LineKind::Move, [at(left, y), at(right, y)]);
            let heads = [Some((to, from)), arrow.both.then_some((from, to))];
            for (tip, tail) in heads.into_iter().flatten() {
                if (frame.left..=frame.right()).contains(&tip) {
                    page.line(LineKind::Move, head(at(tip, y), tail));
                }
            }
        }
    }

    /// Where the next strip is laid, and the crosses that then lie on one another.
    fn draw_joins(&self, strip: u32, frame: Frame, page: &mut Drawing) {
        let middle = frame.bottom() - NEXT_WORDS;
        let next = strip.saturating_add(1);
        if next < self.axis.tiles {
            let x = frame.right() - OVERLAP;
            page.line(LineKind::Join, [at(x, frame.top), at(x, frame.bottom())]);
            cross(
                at(frame.right() - OVERLAP / 2.0, middle),
                &letters(strip),
                page,
            );
        }
        if let Some(before) = strip.checked_sub(1) {
            cross(
                at(frame.left + OVERLAP / 2.0, middle),
                &letters(before),
                page,
            );
        }
    }
}

/// The head of an arrow that comes from `tail`.
fn head(tip: PaperPoint, tail: f64) -> [PaperPoint; 3] {
    let back = tip.x + HEAD.copysign(tail - tip.x);
    [
        at(back, tip.y - HEAD / 2.0),
        tip,
        at(back, tip.y + HEAD / 2.0),
    ]
}

/// A cross, its letter beside it.
fn cross(centre: PaperPoint, letter: &str, page: &mut Drawing) {
    page.line(
        LineKind::Measure,
        [at(centre.x - ARM, centre.y), at(centre.x + ARM, centre.y)],
    );
    page.line(
        LineKind::Measure,
        [at(centre.x, centre.y - ARM), at(centre.x, centre.y + ARM)],
    );
    let beside = at(centre.x + 2.2, centre.y - 1.2);
    page.words(
        beside,
        Align::Middle,
        TextSize::Small,
        letter.to_lowercase(),
    );
}
