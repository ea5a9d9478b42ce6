//! The tiles that a template is cut into: how many, where they lie, and which are printed.

use std::collections::BTreeSet;

use crate::drawing::{PaperPoint, at};
use crate::paper::Paper;
use crate::true_size::page::{Frame, PaperSheet, TileAxis, letters};

/// A line passes a tile if one of its points does; points are looked at in such steps. Between two of
/// them a line goes less far out than a tile shows beyond what it is printed for.
const STEP: f64 = 4.0;

/// Tiles over a template, in its own millimetres.
#[derive(Clone, Debug)]
pub(super) struct TileGrid {
    pub(super) sheet: PaperSheet,
    across: TileAxis,
    down: TileAxis,
    /// The tiles that something is drawn on.
    pub(super) printed: BTreeSet<Tile>,
}

/// A tile by its row and its column, from nought.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub(super) struct Tile {
    pub(super) row: u32,
    pub(super) column: u32,
}

impl Tile {
    /// What it is called: a letter for its column and a number for its row.
    pub(super) fn name(self) -> String {
        format!("{}{}", letters(self.column), self.row.saturating_add(1))
    }

    pub(super) fn right(self) -> Self {
        Self {
            column: self.column.saturating_add(1),
            ..self
        }
    }

    pub(super) fn below(self) -> Self {
        Self {
            row: self.row.saturating_add(1),
            ..self
        }
    }
}

impl TileGrid {
    /// The tiles for these lines: the fewest that are printed, upright or on their sides, and none with
    /// an edge along a line where that can be helped. `None` where there is no line.
    pub(super) fn over(lines: &[Vec<PaperPoint>], paper: Paper) -> Option<Self> {
        let sheets = [PaperSheet::upright(paper), PaperSheet::on_its_side(paper)];
        let grids = sheets
            .into_iter()
            .filter_map(|sheet| Self::on(sheet, lines));
        grids.min_by_key(|grid| grid.printed.len())
    }

    fn on(sheet: PaperSheet, lines: &[Vec<PaperPoint>]) -> Option<Self> {
        let window = sheet.window();
        let sideways: Vec<Vec<PaperPoint>> = lines.iter().map(|line| swapped(line)).collect();
        let stops = stops(lines);
        let homes =
            |axes: Vec<TileAxis>, place: fn(&PaperPoint) -> f64| -> Vec<(TileAxis, Vec<u32>)> {
                let of = |axis: TileAxis| stops.iter().map(|stop| axis.home(place(stop))).collect();
                axes.into_iter().map(|axis| (axis, of(axis))).collect()
            };
        let columns = homes(TileAxis::over(lines, window.width), |stop| stop.x);
        let rows = homes(TileAxis::over(&sideways, window.height), |stop| stop.y);
        // Places across and down are chosen each for itself, and are equally good there; together they decide
        // which tiles stay blank, so every pair of them is tried. That costs little, since the tile that a
        // point is printed for was found once in either direction.
        let grids = rows.iter().flat_map(|(down, rows)| {
            columns.iter().map(move |(across, columns)| Self {
                sheet,
                across: *across,
                down: *down,
                printed: passed(rows, columns),
            })
        });
        grids.min_by_key(|grid| grid.printed.len())
    }

    /// What a tile shows of the template.
    pub(super) fn frame(&self, tile: Tile) -> Frame {
        Frame {
            left: self.across.begins(tile.column),
            top: self.down.begins(tile.row),
            width: self.across.shown,
            height: self.down.shown,
        }
    }

    /// The tile that a point is printed for. Those beside it may show it too.
    pub(super) fn home(&self, point: PaperPoint) -> Tile {
        Tile {
            row: self.down.home(point.y),
            column: self.across.home(point.x),
        }
    }

    /// Every tile, row by row.
    pub(super) fn tiles(&self) -> impl Iterator<Item = Tile> {
        let columns = self.across.tiles;
        let row = move |row| (0..columns).map(move |column| Tile { row, column });
        (0..self.down.tiles).flat_map(row)
    }

    /// All that the tiles lie over.
    pub(super) fn whole(&self) -> Frame {
        Frame {
            left: self.across.start,
            top: self.down.start,
            width: self.across.length(),
            height: self.down.length(),
        }
    }
}

/// The tiles that lines pass, by the rows and the columns that their points are printed for.
fn passed(rows: &[u32], columns: &[u32]) -> BTreeSet<Tile> {
    let mut last = None;
    let tiles = rows.iter().zip(columns).filter_map(|(row, column)| {
        let tile = Some(Tile {
            row: *row,
            column: *column,
        });
        // Neighbouring points mostly lie on one tile.
        let is_new = tile != last;
        last = tile;
        tile.filter(|_| is_new)
    });
    tiles.collect()
}

fn swapped(line: &[PaperPoint]) -> Vec<PaperPoint> {
    line.iter().map(|point| at(point.y, point.x)).collect()
}

/// Points along lines, near to one another.
fn stops(lines: &[Vec<PaperPoint>]) -> Vec<PaperPoint> {
    let sides = lines
        .iter()
        .flat_map(|line| line.iter().zip(line.iter().skip(1)));
    let stops = sides.flat_map(|(from, to)| {
        let (dx, dy) = (to.x - from.x, to.y - from.y);
        let steps = (dx.hypot(dy) / STEP).ceil().max(1.0);
        let parts = std::iter::successors(Some(0.0), |step| Some(step + 1.0));
        parts
            .take_while(move |step| *step <= steps)
            .map(move |step| at(from.x + dx * step / steps, from.y + dy * step / steps))
    });
    stops.collect()
}
