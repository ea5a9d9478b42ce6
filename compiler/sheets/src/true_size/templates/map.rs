//! The first page of a template: what is cut by it, and how its pages lie together.

use pelmet_packet::MeasuredFrom;

use super::grid::{Tile, TileGrid};
use super::lines::TemplateLines;
use super::words::{cut, size};
use crate::drawing::{Align, Drawing, LineKind, PaperPoint, TextSize, at};
use crate::text::words::counted;
use crate::true_size::outlines::SharedOutline;
use crate::true_size::page::{Frame, paragraph};

/// Between two parts of the page.
const GAP: f64 = 4.0;

/// How to lay the pages together.
const LAYING: &str = "Cut every page along its frame where another joins it on the left or above. Lay that \
    edge on the dotted line of the page before, so that the crosses with the same letter lie on one \
    another, and tape them. Then cut along the solid line.";

/// Draws the map into the window of its page.
pub(super) fn draw(
    outline: &SharedOutline<'_>,
    grid: &TileGrid,
    lines: &TemplateLines,
    page: &mut Drawing,
) {
    let window = grid.sheet.window();
    let mut y = window.top + 4.0;
    for told in told(outline) {
        y = paragraph(
            page,
            at(window.left, y),
            window.width,
            TextSize::Plain,
            &told,
        );
    }
    y = paragraph(
        page,
        at(window.left, y + GAP / 2.0),
        window.width,
        TextSize::Plain,
        LAYING,
    );
    y = page.meanings(meanings(lines), at(window.left, y + GAP / 2.0)) + GAP / 2.0;
    let room = Frame {
        top: y,
        height: window.bottom() - y,
        ..window
    };
    Map::fitting(room, grid.whole()).draw(grid, lines, page);
}

/// What is cut by the template, and how large.
fn told(outline: &SharedOutline<'_>) -> Vec<String> {
    let half = if outline.piece.on_fold {
        "; the template is one half"
    } else {
        ""
    };
    let edge = match outline.piece.outline_from {
        MeasuredFrom::LeftEdge => "left cut edge",
        MeasuredFrom::Fold => "fold",
    };
    let motifs = outline.motifs().into_iter();
    let motifs = motifs.map(|motif| {
        format!(
            "Centre of the motif: {} from the {edge}, {} from the top cut edge.",
            motif.across.text, motif.down.text,
        )
    });
    let mut told = vec![
        format!("Cut {}.", cut(outline)),
        format!("Size with every allowance: {}{half}.", size(outline)),
    ];
    told.extend(motifs);
    told
}

/// What the lines mean that the template has.
fn meanings(lines: &TemplateLines) -> impl Iterator<Item = (LineKind, &'static str)> {
    let has = |line: LineKind| lines.drawn.iter().any(|(of, _)| *of == line);
    let meanings = [
        (LineKind::CutEdge, "cut here"),
        (
            LineKind::Sewn,
            "sewn, or turned for a hem: between the two is the allowance",
        ),
        (LineKind::Fold, "fold"),
    ];
    meanings.into_iter().filter(move |(line, _)| has(*line))
}

/// A small picture of the template under its tiles.
struct Map {
    scale: f64,
    /// Where the left upper corner of all tiles lies on the page, and on the template.
    corner: PaperPoint,
    start: PaperPoint,
}

impl Map {
    fn fitting(room: Frame, whole: Frame) -> Self {
        let scale = (room.width / whole.width).min(room.height / whole.height);
        Self {
            scale,
            corner: at(
                room.left + (room.width - whole.width * scale) / 2.0,
                room.top,
            ),
            start: at(whole.left, whole.top),
        }
    }

    fn place(&self, point: PaperPoint) -> PaperPoint {
        at(
            self.corner.x + (point.x - self.start.x) * self.scale,
            self.corner.y + (point.y - self.start.y) * self.scale,
        )
    }

    fn draw(&self, grid: &TileGrid, lines: &TemplateLines, page: &mut Drawing) {
        for tile in grid.tiles() {
            self.draw_tile(grid, tile, page);
        }
        for (line, points) in &lines.drawn {
            page.line(*line, points.iter().map(|point| self.place(*point)));
        }
        for tile in grid.tiles() {
            self.name_tile(grid, tile, page);
        }
    }

    fn corners(&self, frame: Frame) -> [PaperPoint; 4] {
        frame.corners().map(|corner| self.place(corner))
    }

    /// Its frame; crossed out where nothing of the template lies.
    fn draw_tile(&self, grid: &TileGrid, tile: Tile, page: &mut Drawing) {
        let corners = self.corners(grid.frame(tile));
        page.shape(LineKind::Frame, corners);
        if !grid.printed.contains(&tile) {
            let [one, two, three, four] = corners;
            page.line(LineKind::Frame, [one, three]);
            page.line(LineKind::Frame, [two, four]);
        }
    }

    fn name_tile(&self, grid: &TileGrid, tile: Tile, page: &mut Drawing) {
        let [one, _, three, _] = self.corners(grid.frame(tile));
        let middle = at((one.x + three.x) / 2.0, (one.y + three.y) / 2.0);
        if grid.printed.contains(&tile) {
            page.words(middle, Align::Middle, TextSize::Large, tile.name());
        } else {
            page.words(middle, Align::Middle, TextSize::Small, "blank");
        }
    }
}

/// How many pages a template takes, and how many are left out.
pub(super) fn counted_pages(grid: &TileGrid) -> String {
    let (printed, all) = (grid.printed.len(), grid.tiles().count());
    let left_out = match all.saturating_sub(printed) {
        0 => String::new(),
        blank => format!(", {} left out", counted(blank, "blank page", "blank pages")),
    };
    format!("{}{left_out}", counted(printed, "page", "pages"))
}
