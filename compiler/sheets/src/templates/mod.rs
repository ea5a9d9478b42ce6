//! Paper templates: the lines of every shaped piece at their true size, on pages to be laid together.

mod axis;
mod grid;
mod lines;
mod map;
mod overview;
mod paragraph;
mod sheet;
mod stick;
#[cfg(test)]
mod tests;
mod tile;

use pelmet_packet::{Packet, SheetKind};

use crate::cautions;
use crate::drawing::Drawing;
use crate::outlines::{Outline, is_rectangle, outlines};
use crate::paper::Paper;
use crate::pdf::{Bookmark, Document, pdf};
use grid::Grid;
use lines::Lines;
use overview::{Overview, Row, cut, size};
use sheet::Sheet;
use stick::{Stick, sticks};

/// Which pieces get a template.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(crate) enum Which {
    /// Those with a shape; a rectangle is quicker and better measured on the cloth.
    Shaped,
    /// All of them.
    All,
}

/// A file holds about so many pages: more than anyone prints, and no more than a viewer opens at once.
/// What comes after them is listed on the first page and not drawn.
const MAXIMUM_PAGES: usize = 2000;

/// The templates of a job as a PDF file.
pub(crate) fn templates(packet: &Packet, which: Which, paper: Paper) -> Vec<u8> {
    let book = book(packet, which, paper, MAXIMUM_PAGES);
    let document = Document {
        title: &format!("Templates: {}", packet.title),
        bookmarks: book.bookmarks,
    };
    pdf(&document, &book.pages)
}

/// Pages, and where parts begin.
struct Book {
    /// About how many there may be.
    most: usize,
    pages: Vec<Drawing>,
    bookmarks: Vec<Bookmark>,
    /// What the first page lists: the templates, the story sticks, and what is measured instead.
    templates: Vec<Row>,
    sticks: Vec<Row>,
    measured: Vec<Row>,
    left_out: Vec<Row>,
}

fn book(packet: &Packet, which: Which, paper: Paper, most: usize) -> Book {
    let mut book = Book::new(most);
    let names = Names::new(packet);
    for outline in outlines(packet) {
        if which == Which::Shaped && is_rectangle(&outline.piece.outline) {
            book.measured.push(told(&outline, &names));
        } else if book.is_full() {
            book.left_out.push(told(&outline, &names));
        } else {
            book.add_template(&outline, &names, paper);
        }
    }
    for stick in sticks(&packet.windows) {
        if !book.is_full() {
            book.add_stick(&stick, &names, Sheet::on_its_side(paper));
        }
    }
    book.begin_with_overview(packet, Sheet::upright(paper));
    book
}

/// An outline that has no pages.
fn told(outline: &Outline<'_>, names: &Names) -> Row {
    Row {
        name: names.outline(outline),
        about: cut(outline),
        pages: size(outline),
    }
}

impl Book {
    fn new(most: usize) -> Self {
        Self {
            most,
            pages: Vec::new(),
            bookmarks: Vec::new(),
            templates: Vec::new(),
            sticks: Vec::new(),
            measured: Vec::new(),
            left_out: Vec::new(),
        }
    }

    fn is_full(&self) -> bool {
        self.pages.len() >= self.most
    }

    fn begin(&mut self, title: &str) {
        self.bookmarks.push(Bookmark {
            title: title.to_owned(),
            page: self.pages.len(),
        });
    }

    fn add_template(&mut self, outline: &Outline<'_>, names: &Names, paper: Paper) {
        let lines = Lines::of(outline);
        let Some(grid) = Grid::over(&lines.all(), paper) else {
            return;
        };
        let number = self.templates.len().saturating_add(1);
        let title = format!("Template {number}: {}", names.outline(outline));
        let pages = map::counted_pages(&grid);
        self.begin(&title);
        self.templates.push(Row {
            name: title.clone(),
            about: format!("{}: {}", size(outline), cut(outline)),
            pages: format!("map and {pages}"),
        });
        let mut map = grid.sheet.page(&title, &format!("Map of its {pages}"));
        map::draw(outline, &grid, &lines, &mut map);
        self.pages.push(map);
        let registers = tile::registers(&grid, &lines);
        for tile in grid.tiles().filter(|tile| grid.printed.contains(tile)) {
            let mut page = grid.sheet.page(&title, &format!("Page {}", tile.name()));
            grid.sheet.name(&mut page, &tile.name());
            tile::draw(&grid, tile, &lines, &registers, &mut page);
            self.pages.push(page);
        }
    }

    fn add_stick(&mut self, stick: &Stick<'_>, names: &Names, sheet: Sheet) {
        let number = self.sticks.len().saturating_add(1);
        let windows = stick.windows.iter().map(|window| &*window.name);
        let title = format!(
            "Story stick {number}: {}",
            names.of(&stick.panel.name, windows)
        );
        let pages = stick.pages(&title, sheet);
        self.begin(&title);
        self.sticks.push(Row {
            name: title,
            about: format!("{} flat", stick.panel.flat_width.text),
            pages: stick::counted_pages(&pages),
        });
        self.pages.extend(pages);
    }

    fn begin_with_overview(&mut self, packet: &Packet, sheet: Sheet) {
        let mut overview = Overview::new(sheet, &format!("Templates: {}", packet.title));
        for caution in cautions::of_sheet(packet, SheetKind::CutSheet) {
            overview.paragraph(&caution.text);
        }
        if self.templates.is_empty() && !self.is_full() {
            overview.paragraph("Every piece of this job is a rectangle, so none has a template.");
        }
        overview.list("Templates", &self.templates);
        overview.list("Story sticks", &self.sticks);
        overview.list("Rectangles: measure these on the cloth", &self.measured);
        if self.is_full() {
            overview.paragraph(&format!(
                "This job has more than {} pages of templates and story sticks: what comes \
                after them is not in this file. Print fewer windows at once, or go by the cut sheet and \
                the mark list.",
                self.most,
            ));
        }
        overview.list("Templates that are not in this file", &self.left_out);
        let mut pages = overview.into_pages();
        for bookmark in &mut self.bookmarks {
            bookmark.page = bookmark.page.saturating_add(pages.len());
        }
        pages.append(&mut self.pages);
        self.pages = pages;
    }
}

/// How parts are named: with their windows where there are several of them.
struct Names {
    several_windows: bool,
}

/// So many windows or pieces are named; more are counted.
const NAMED: usize = 2;

impl Names {
    fn new(packet: &Packet) -> Self {
        Self {
            several_windows: packet.windows.len() > 1,
        }
    }

    fn outline(&self, outline: &Outline<'_>) -> String {
        let labels = outline.pieces.iter().map(|(_, piece)| &*piece.label);
        let windows = outline.pieces.iter().map(|(window, _)| &*window.name);
        self.of(&listed(labels, "pieces"), windows)
    }

    fn of<'a>(&self, what: &str, windows: impl Iterator<Item = &'a str>) -> String {
        if self.several_windows {
            format!("{what}, {}", listed(windows, "windows"))
        } else {
            what.to_owned()
        }
    }
}

/// Different names, or how many there are.
fn listed<'a>(names: impl Iterator<Item = &'a str>, several: &str) -> String {
    let mut different: Vec<&str> = Vec::new();
    for name in names {
        if !different.contains(&name) {
            different.push(name);
        }
    }
    match different.len() {
        few if few <= NAMED => different.join(" and "),
        many => format!("{many} {several}"),
    }
}
