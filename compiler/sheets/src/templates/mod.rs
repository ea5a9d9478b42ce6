//! Paper templates: the lines of every shaped piece at their true size, on pages to be laid together.

mod axis;
mod grid;
mod lines;
mod map;
mod sheet;
mod tile;

use pelmet_packet::Packet;

use crate::drawing::Drawing;
use crate::outlines::{Outline, is_rectangle, outlines};
use crate::paper::Paper;
use crate::pdf::{Bookmark, Document, pdf};
use grid::Grid;
use lines::Lines;

/// Which pieces get a template.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(crate) enum Which {
    /// Those with a shape; a rectangle is quicker and better measured on the cloth.
    Shaped,
    /// All of them.
    All,
}

/// The templates of a job as a PDF file.
pub(crate) fn templates(packet: &Packet, which: Which, paper: Paper) -> Vec<u8> {
    let book = book(packet, which, paper);
    let document = Document {
        title: &format!("Templates: {}", packet.title),
        bookmarks: book.bookmarks,
    };
    pdf(&document, &book.pages)
}

/// Pages, and where parts begin.
#[derive(Default)]
struct Book {
    pages: Vec<Drawing>,
    bookmarks: Vec<Bookmark>,
}

impl Book {
    fn begin(&mut self, title: &str) {
        self.bookmarks.push(Bookmark {
            title: title.to_owned(),
            page: self.pages.len(),
        });
    }
}

fn book(packet: &Packet, which: Which, paper: Paper) -> Book {
    let mut book = Book::default();
    let outlines = outlines(packet).into_iter();
    let drawn =
        outlines.filter(|outline| which == Which::All || !is_rectangle(&outline.piece.outline));
    for (outline, number) in drawn.zip(1_u32..) {
        add_template(&outline, number, paper, &mut book);
    }
    book
}

fn add_template(outline: &Outline<'_>, number: u32, paper: Paper, book: &mut Book) {
    let lines = Lines::of(outline.piece, outline.panel);
    let Some(grid) = Grid::over(&lines.all(), paper) else {
        return;
    };
    let title = format!("Template {number}: {}", outline.piece.label);
    book.begin(&title);
    let mut map = grid
        .sheet
        .page(&title, &format!("Map of its {}", map::counted_pages(&grid)));
    map::draw(outline, &grid, &lines, &mut map);
    book.pages.push(map);
    let registers = tile::registers(&grid, &lines);
    for tile in grid.tiles().filter(|tile| grid.printed.contains(tile)) {
        let mut page = grid.sheet.page(&title, &format!("Page {}", tile.name()));
        tile::draw(&grid, tile, &lines, &registers, &mut page);
        book.pages.push(page);
    }
}
