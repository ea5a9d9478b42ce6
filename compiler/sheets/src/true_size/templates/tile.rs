//! One page of a template: a part of its lines at their true size, and the marks by which it is laid
//! to the pages beside it.

use super::grid::{Tile, TileGrid};
use super::lines::TemplateLines;
use crate::drawing::{Align, Drawing, LineKind, PaperPoint, TextSize, at, inside};
use crate::true_size::page::{Frame, OVERLAP, letters};

/// How far the arms of a register mark reach along its join, and over it.
const ARM: f64 = 4.0;
const LONG_ARM: f64 = OVERLAP / 2.0 + 3.0;
const RING: f64 = 2.2;
/// How far its letter stands from it.
const LETTER: f64 = 4.5;

/// Where along a join a register mark may lie: in its first and in its second half.
const PLACES: [[f64; 5]; 2] = [[0.2, 0.25, 0.15, 0.3, 0.35], [0.8, 0.75, 0.85, 0.7, 0.65]];

/// So far from every line a register mark is clear of them.
const FREE: f64 = 9.0;

/// Words keep so far away from the frame.
const WORDS_INSIDE: f64 = 8.0;

/// A mark on two pages that lie over one another, at one place of the template.
pub(super) struct Register {
    pub(super) tiles: [Tile; 2],
    pub(super) at: PaperPoint,
    /// Whether the pages lie side by side, and not one above the other.
    pub(super) beside: bool,
    pub(super) letter: String,
}

/// The register marks of a grid: two on every join of two printed pages.
pub(super) fn registers(grid: &TileGrid, lines: &TemplateLines) -> Vec<Register> {
    let tiles = grid.tiles().filter(|tile| grid.printed.contains(tile));
    let joins = tiles.flat_map(|tile| [(tile, tile.right(), true), (tile, tile.below(), false)]);
    let printed = joins.filter(|(_, next, _)| grid.printed.contains(next));
    let marks = printed.flat_map(|(tile, next, beside)| {
        let frame = grid.frame(next);
        PLACES.map(|places| {
            (
                [tile, next],
                clear_place(frame, beside, places, lines),
                beside,
            )
        })
    });
    let numbered = marks.zip(0_u32..);
    numbered
        .map(|((tiles, at, beside), number)| Register {
            tiles,
            at,
            beside,
            letter: letters(number).to_lowercase(),
        })
        .collect()
}

/// The first of the places that is clear of all lines, or else the clearest.
fn clear_place(frame: Frame, beside: bool, places: [f64; 5], lines: &TemplateLines) -> PaperPoint {
    let place = |part: f64| {
        if beside {
            at(frame.left + OVERLAP / 2.0, frame.top + frame.height * part)
        } else {
            at(frame.left + frame.width * part, frame.top + OVERLAP / 2.0)
        }
    };
    // A mark under a line is hard to lay on its fellow. The places stand in the order they are liked, well
    // apart from the mark in the other half, so the first that is clear will do.
    let mut best = (place(0.5), 0.0);
    for place in places.map(place) {
        let clear = clearance(place, lines);
        if clear >= FREE {
            return place;
        }
        if clear > best.1 {
            best = (place, clear);
        }
    }
    best.0
}

/// How far a place lies from the nearest line.
fn clearance(place: PaperPoint, lines: &TemplateLines) -> f64 {
    let lines = lines.drawn.iter().map(|(_, line)| line);
    let sides = lines.flat_map(|line| line.iter().zip(line.iter().skip(1)));
    let distances = sides.map(|(from, to)| distance(place, *from, *to));
    distances.fold(f64::INFINITY, f64::min)
}

fn distance(place: PaperPoint, from: PaperPoint, to: PaperPoint) -> f64 {
    let (dx, dy) = (to.x - from.x, to.y - from.y);
    let along = (place.x - from.x) * dx + (place.y - from.y) * dy;
    let part = (along / (dx * dx + dy * dy).max(f64::MIN_POSITIVE)).clamp(0.0, 1.0);
    (place.x - from.x - dx * part).hypot(place.y - from.y - dy * part)
}

/// Draws what a tile shows into the window of its page.
pub(super) fn draw(
    grid: &TileGrid,
    tile: Tile,
    lines: &TemplateLines,
    registers: &[Register],
    page: &mut Drawing,
) {
    let view = TileView {
        frame: grid.frame(tile),
        window: grid.sheet.window(),
    };
    page.shape(LineKind::Frame, view.window.corners());
    view.draw_joins(grid, tile, page);
    for (line, points) in &lines.drawn {
        view.draw_line(*line, points, page);
    }
    for cross in &lines.crosses {
        view.draw_line(LineKind::Measure, cross, page);
    }
    for register in registers {
        if register.tiles.contains(&tile) {
            let comes_next = register.tiles.first() == Some(&tile);
            view.draw_register(register, comes_next, page);
        }
    }
    for label in &lines.labels {
        if grid.home(label.of) == tile {
            let at = view.kept_inside(label.at);
            page.words(at, label.align, TextSize::Plain, &*label.words);
        }
    }
    if let Some((top, foot)) = lines.fold {
        view.tell_fold(top, foot, page);
    }
}

/// The part of a template that a page shows, and where on the page.
struct TileView {
    frame: Frame,
    window: Frame,
}

impl TileView {
    /// A place of the template on the page.
    fn on_page(&self, place: PaperPoint) -> PaperPoint {
        at(
            place.x - self.frame.left + self.window.left,
            place.y - self.frame.top + self.window.top,
        )
    }

    /// The same for words, which must not run out of the window.
    fn kept_inside(&self, place: PaperPoint) -> PaperPoint {
        let at = self.on_page(place);
        let window = self.window;
        PaperPoint {
            x: at
                .x
                .clamp(window.left + WORDS_INSIDE, window.right() - WORDS_INSIDE),
            y: at
                .y
                .clamp(window.top + WORDS_INSIDE, window.bottom() - WORDS_INSIDE),
        }
    }

    /// The lines on which the edges of the next pages are laid.
    fn draw_joins(&self, grid: &TileGrid, tile: Tile, page: &mut Drawing) {
        let window = self.window;
        let (right, bottom) = (window.right() - OVERLAP, window.bottom() - OVERLAP);
        if grid.printed.contains(&tile.right()) {
            page.line(
                LineKind::Join,
                [at(right, window.top), at(right, window.bottom())],
            );
        }
        if grid.printed.contains(&tile.below()) {
            page.line(
                LineKind::Join,
                [at(window.left, bottom), at(window.right(), bottom)],
            );
        }
    }

    fn draw_line(&self, line: LineKind, points: &[PaperPoint], page: &mut Drawing) {
        let frame = self.frame;
        let corners = (at(frame.left, frame.top), at(frame.right(), frame.bottom()));
        for part in inside(points, corners) {
            page.line(line, part.into_iter().map(|point| self.on_page(point)));
        }
    }

    /// A cross in a ring, its letter beside it toward the middle of the page. The long arm reaches over
    /// both edges of the join, so that it can be seen to run on.
    fn draw_register(&self, register: &Register, comes_next: bool, page: &mut Drawing) {
        let centre = self.on_page(register.at);
        let (x, y) = if register.beside {
            (LONG_ARM, ARM)
        } else {
            (ARM, LONG_ARM)
        };
        let inward = if comes_next { -LETTER } else { LETTER };
        let letter = if register.beside {
            at(centre.x + inward, centre.y - 1.5)
        } else {
            at(centre.x + LETTER, centre.y + inward + 1.0)
        };
        for (dx, dy) in [(x, 0.0), (0.0, y)] {
            let ends = [
                at(centre.x - dx, centre.y - dy),
                at(centre.x + dx, centre.y + dy),
            ];
            page.line(LineKind::Measure, ends);
        }
        page.shape(LineKind::Measure, ring(centre));
        page.words(letter, Align::Middle, TextSize::Plain, &*register.letter);
    }

    /// Says at the fold what it is, once on every page that shows enough of it.
    fn tell_fold(&self, top: PaperPoint, foot: PaperPoint, page: &mut Drawing) {
        let (from, to) = (self.on_page(top), self.on_page(foot));
        let (from_y, to_y) = (from.y.max(self.window.top), to.y.min(self.window.bottom()));
        let seen = (self.window.left..=self.window.right()).contains(&from.x);
        if seen && to_y - from_y >= 4.0 * WORDS_INSIDE {
            let middle = at(from.x + 3.0, (from_y + to_y) / 2.0);
            page.words(
                middle,
                Align::Left,
                TextSize::Plain,
                "lay this edge on the fold of the cloth",
            );
        }
    }
}

/// A ring, as straight lines too short to be told from it.
fn ring(centre: PaperPoint) -> impl Iterator<Item = PaperPoint> {
    const SIDES: u32 = 32;
    (0..SIDES).map(move |side| {
        let angle = std::f64::consts::TAU * f64::from(side) / f64::from(SIDES);
        at(centre.x + RING * angle.cos(), centre.y + RING * angle.sin())
    })
}
