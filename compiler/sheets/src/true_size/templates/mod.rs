//! Paper templates: the lines of a piece at their true size, on pages to be laid together.

mod grid;
mod lines;
mod map;
#[cfg(test)]
mod tests;
mod tile;
mod words;

pub(crate) use words::{cut, size};

use crate::drawing::Drawing;
use crate::paper::Paper;
use crate::true_size::outlines::SharedOutline;
use grid::TileGrid;
use lines::TemplateLines;

/// The template of pieces that are cut by the same lines, on tiles of paper.
pub(crate) struct Template<'a> {
    outline: &'a SharedOutline<'a>,
    lines: TemplateLines,
    grid: TileGrid,
}

impl<'a> Template<'a> {
    /// The template on this paper; nothing where there is no line to draw.
    pub(crate) fn of(outline: &'a SharedOutline<'a>, paper: Paper) -> Option<Self> {
        let lines = TemplateLines::of(outline);
        let grid = TileGrid::over(&lines.all(), paper)?;
        Some(Self {
            outline,
            lines,
            grid,
        })
    }

    /// How many pages it takes beside its map, and how many are left out.
    pub(crate) fn counted_pages(&self) -> String {
        map::counted_pages(&self.grid)
    }

    /// Its map, and every tile that something is drawn on; all of them have this title.
    pub(crate) fn pages(&self, title: &str) -> Vec<Drawing> {
        let (grid, lines) = (&self.grid, &self.lines);
        let about = format!("Map of its {}", self.counted_pages());
        let mut map = grid.sheet.page(title, &about);
        map::draw(self.outline, grid, lines, &mut map);
        let registers = tile::registers(grid, lines);
        let printed = grid.tiles().filter(|tile| grid.printed.contains(tile));
        let tiles = printed.map(|tile| {
            let name = tile.name();
            let mut page = grid.sheet.page(title, &format!("Page {name}"));
            grid.sheet.name(&mut page, &name);
            tile::draw(grid, tile, lines, &registers, &mut page);
            page
        });
        std::iter::once(map).chain(tiles).collect()
    }
}
