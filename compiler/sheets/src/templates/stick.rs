//! Story sticks: what is marked along the top of a pleated panel, at its true size on strips of paper.

use pelmet_packet::{Mark, MarkKind, Panel, Window};

use super::axis::{Axis, OVERLAP};
use super::grid::letters;
use super::paragraph::shortened;
use super::sheet::{Frame, Sheet};
use crate::drawing::{Align, Drawing, Line, Point, Size, at, width_of};
use crate::words::counted;

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
/// Between two strips of a page.
const BETWEEN: f64 = 6.0;
/// Room over the first strip for what lines mean.
const MEANINGS: f64 = 14.0;
const ARM: f64 = 3.0;

/// A panel whose marks go on a stick, with every window that has it alike.
pub(super) struct Stick<'a> {
    pub(super) panel: &'a Panel,
    pub(super) windows: Vec<&'a Window>,
}

/// The sticks of a job: one for every kind of panel with pleats to mark.
pub(super) fn sticks(windows: &[Window]) -> Vec<Stick<'_>> {
    let mut sticks: Vec<Stick<'_>> = Vec::new();
    for window in windows {
        for panel in window
            .panels
            .iter()
            .filter(|panel| has_pleats_to_mark(panel))
        {
            let alike = |stick: &&mut Stick<'_>| {
                stick.panel.name == panel.name
                    && stick.panel.flat_width == panel.flat_width
                    && stick.panel.marks == panel.marks
            };
            match sticks.iter_mut().find(alike) {
                Some(stick) => stick.windows.push(window),
                None => sticks.push(Stick {
                    panel,
                    windows: vec![window],
                }),
            }
        }
    }
    sticks
}

fn has_pleats_to_mark(panel: &Panel) -> bool {
    let pleat = |mark: &Mark| matches!(mark.kind, MarkKind::Fold | MarkKind::Pair);
    panel.marks.iter().any(pleat)
}

impl Stick<'_> {
    /// Its pages, each with the same title.
    pub(super) fn pages(&self, title: &str, sheet: Sheet) -> Vec<Drawing> {
        let marked = Marked::of(self.panel);
        let window = sheet.window();
        let Some(axis) = Axis::over(&marked.upright(), window.width)
            .into_iter()
            .next()
        else {
            return vec![];
        };
        let strips = Strips {
            marked: &marked,
            axis,
            window,
        };
        let height = strips.height();
        let mut pages: Vec<Drawing> = Vec::new();
        let mut top = f64::INFINITY;
        for strip in 0..axis.tiles {
            if top + height > window.bottom() {
                let mut page = sheet.page(title, HOW_TO_USE);
                meanings(&marked, window, &mut page);
                pages.push(page);
                top = window.top + MEANINGS;
            }
            if let Some(page) = pages.last_mut() {
                strips.draw(strip, top, title, page);
            }
            top += height + BETWEEN;
        }
        pages
    }
}

const HOW_TO_USE: &str = "Cut the strips out and tape them, crosses on crosses. Lay the solid edge along the \
    top of the made-up panel, face up. Numbers are those of the mark list.";

/// What the lines of a stick mean that it has.
fn meanings(marked: &Marked, window: Frame, page: &mut Drawing) {
    let has = |line: Line| marked.ticks.iter().any(|tick| tick.line == line);
    let brought = !marked.arrows.is_empty();
    let meanings = [
        (has(Line::Fold), (Line::Fold, "crease")),
        (
            brought,
            (Line::Move, "is brought to the line where it ends"),
        ),
        (
            true,
            (Line::Measure, "a point, or the line a crease is brought to"),
        ),
    ];
    let shown = meanings.into_iter().filter(|(shown, _)| *shown);
    let mut x = window.left;
    for (_, meaning) in shown {
        page.meanings([meaning], at(x, window.top + 5.0));
        x += 22.0 + width_of(meaning.1, Size::Small);
    }
}

/// What is marked along the top of a panel, in millimetres from its left edge.
struct Marked {
    ticks: Vec<Tick>,
    arrows: Vec<Arrow>,
}

/// A line across the stick, and what it is.
struct Tick {
    at: f64,
    line: Line,
    words: String,
}

/// Cloth brought from one place to another.
struct Arrow {
    from: f64,
    to: f64,
    /// Whether both ends are brought together.
    both: bool,
}

impl Marked {
    fn of(panel: &Panel) -> Self {
        let end = |at: f64, words: &str| Tick {
            at,
            line: Line::CutEdge,
            words: words.to_owned(),
        };
        let flat = panel.flat_width.mm;
        let mut ticks = vec![end(0.0, "left edge")];
        ticks.extend(panel.marks.iter().flat_map(ticks_of));
        ticks.push(Tick {
            at: flat / 2.0,
            line: Line::Centre,
            words: String::from("centre"),
        });
        ticks.push(end(flat, &format!("right edge, {}", panel.flat_width.text)));
        ticks.sort_by(|one, other| one.at.total_cmp(&other.at));
        Self {
            ticks,
            arrows: panel.marks.iter().filter_map(arrow_of).collect(),
        }
    }

    /// Every tick as a line across.
    fn upright(&self) -> Vec<Vec<Point>> {
        let ticks = self.ticks.iter();
        ticks
            .map(|tick| vec![at(tick.at, 0.0), at(tick.at, 1.0)])
            .collect()
    }
}

fn ticks_of(mark: &Mark) -> Vec<Tick> {
    let line = match mark.kind {
        MarkKind::Fold => Line::Fold,
        MarkKind::Finger => Line::FoldAway,
        MarkKind::JoinSeam => Line::Sewn,
        MarkKind::Pair
        | MarkKind::GatherEnd
        | MarkKind::Quarter
        | MarkKind::MotifCentre
        | MarkKind::TurningOpening
        | MarkKind::Return => Line::Measure,
        _ => return vec![],
    };
    let Some(from_left) = &mark.from_left else {
        return vec![];
    };
    let what = match mark.kind {
        MarkKind::Fold | MarkKind::Pair | MarkKind::Finger | MarkKind::Quarter => String::new(),
        _ => format!(" {}", mark.name),
    };
    let tick = |at: f64, place: &str| Tick {
        at,
        line,
        words: format!("{}{what}: {place}", mark.number),
    };
    let mut ticks = vec![tick(from_left.mm, &from_left.text)];
    let other = mark.stitch.as_ref().map(|stitch| &stitch.other_from_left);
    ticks.extend(other.map(|other| tick(other.mm, &other.text)));
    let to = mark.fold.as_ref().map(|fold| &fold.brought_to_from_left);
    ticks.extend(to.map(|to| Tick {
        at: to.mm,
        line: Line::Measure,
        words: String::new(),
    }));
    ticks
}

fn arrow_of(mark: &Mark) -> Option<Arrow> {
    let from = mark.from_left.as_ref()?.mm;
    let fold = mark
        .fold
        .as_ref()
        .map(|fold| (&fold.brought_to_from_left, false));
    let stitch = mark
        .stitch
        .as_ref()
        .map(|stitch| (&stitch.other_from_left, true));
    let (to, both) = fold.or(stitch)?;
    Some(Arrow {
        from,
        to: to.mm,
        both,
    })
}

/// A stick cut into strips.
struct Strips<'a> {
    marked: &'a Marked,
    axis: Axis,
    window: Frame,
}

impl Strips<'_> {
    fn height(&self) -> f64 {
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
        tick.at + BESIDE + width_of(&tick.words, Size::Small) > end
    }

    /// From where to where the words of a tick stand.
    fn span(&self, tick: &Tick) -> (f64, f64) {
        let width = BESIDE + width_of(&tick.words, Size::Small) + APART;
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
    fn draw(&self, strip: u32, top: f64, title: &str, page: &mut Drawing) {
        let begins = self.axis.begins(strip);
        let x = |place: f64| self.window.left + place - begins;
        let shown = |place: f64| (begins..=begins + self.axis.shown).contains(&place);
        let frame = Frame {
            top,
            height: self.height(),
            ..self.window
        };
        page.shape(Line::Frame, frame.corners());
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
        let of = shortened(&of, Size::Small, frame.width - 4.0 * OVERLAP);
        let foot = at(frame.right() - 2.0 * OVERLAP, frame.bottom() - 1.2);
        page.words(foot, Align::Right, Size::Small, of);
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
        page.words(at(place, y), align, Size::Small, &*tick.words);
    }

    /// The edge that is laid along the cloth, from the panel's left edge to its right.
    fn draw_edge(&self, begins: f64, frame: Frame, page: &mut Drawing) {
        let ends = self.marked.ticks.first().zip(self.marked.ticks.last());
        let Some((first, last)) = ends else { return };
        let from = (frame.left + first.at - begins).max(frame.left);
        let to = (frame.left + last.at - begins).min(frame.right());
        page.line(Line::CutEdge, [at(from, frame.top), at(to, frame.top)]);
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
            page.line(Line::Move, [at(left, y), at(right, y)]);
            let heads = [Some((to, from)), arrow.both.then_some((from, to))];
            for (tip, tail) in heads.into_iter().flatten() {
                if (frame.left..=frame.right()).contains(&tip) {
                    page.line(Line::Move, head(at(tip, y), tail));
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
            page.line(Line::Join, [at(x, frame.top), at(x, frame.bottom())]);
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
fn head(tip: Point, tail: f64) -> [Point; 3] {
    let back = tip.x + HEAD.copysign(tail - tip.x);
    [
        at(back, tip.y - HEAD / 2.0),
        tip,
        at(back, tip.y + HEAD / 2.0),
    ]
}

/// A cross, its letter beside it.
fn cross(centre: Point, letter: &str, page: &mut Drawing) {
    page.line(
        Line::Measure,
        [at(centre.x - ARM, centre.y), at(centre.x + ARM, centre.y)],
    );
    page.line(
        Line::Measure,
        [at(centre.x, centre.y - ARM), at(centre.x, centre.y + ARM)],
    );
    let beside = at(centre.x + 2.2, centre.y - 1.2);
    page.words(beside, Align::Middle, Size::Small, letter.to_lowercase());
}

/// How many pages it takes.
pub(super) fn counted_pages(pages: &[Drawing]) -> String {
    counted(pages.len(), "page", "pages")
}
