//! The sheets set on pages of paper, as a PDF file: what is on which page first, then sheet by sheet.

mod first_page;
mod foot;
mod labels;
mod pages;
mod row;
mod set;
mod table;
mod wrap;

pub(crate) use wrap::lines;

use pelmet_packet::Packet;

use crate::drawing::Drawing;
use crate::paper::Paper;
use crate::pdf::{Bookmark, Document, pdf};
use crate::{SheetKind, blocks, title};
use pages::Pages;

/// The whole file.
pub(crate) fn printed(packet: &Packet, sheets: &[SheetKind], paper: Paper) -> Vec<u8> {
    let (pages, bookmarks) = pages(packet, sheets, paper);
    let title = &packet.title;
    pdf(&Document { title, bookmarks }, &pages)
}

/// Every page, and where each sheet begins.
fn pages(packet: &Packet, sheets: &[SheetKind], paper: Paper) -> (Vec<Drawing>, Vec<Bookmark>) {
    let mut pages = Pages::new(paper);
    let begins: Vec<(&str, usize)> = sheets
        .iter()
        .map(|kind| {
            let first = pages.begin(title(*kind));
            let rows = set::rows(blocks(packet, *kind).into_blocks(), pages.width());
            pages.place(&rows);
            (title(*kind), first)
        })
        .collect();
    let mut drawn = first_page::pages(&packet.title, &begins, paper);
    let before = drawn.len();
    let bookmarks = begins.into_iter().map(|(title, page)| Bookmark {
        title: title.to_owned(),
        page: page.saturating_add(before),
    });
    drawn.extend(pages.done);
    foot::print(&packet.title, &mut drawn);
    (drawn, bookmarks.collect())
}

#[cfg(test)]
mod tests;
