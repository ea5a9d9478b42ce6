//! The sheets set on pages of paper: what is on which page first, then sheet by sheet.

mod beside;
mod faces;
mod first_page;
mod foot;
mod labels;
mod pages;
mod row;
mod set;
mod table;

use pelmet_packet::Packet;

use pelmet_packet::SheetKind;

use crate::content::SheetBlock;
use crate::drawing::{Bookmark, PrintedFile};
use crate::paper::Paper;
use crate::sheet::{sheet, sheet_title};
use pages::PrintedPages;

/// Every page, and where each sheet begins.
pub(crate) fn printed(packet: &Packet, sheets: &[SheetKind], paper: Paper) -> PrintedFile {
    let mut pages = PrintedPages::new(paper);
    let listed: Vec<Listed> = sheets
        .iter()
        .map(|kind| place(packet, *kind, &mut pages))
        .collect();
    let mut drawn = first_page::pages(&packet.title, &listed, paper);
    let before = drawn.len();
    let bookmarks = listed.into_iter().filter_map(|listed| match listed {
        Listed::Begins { title, page } => Some(Bookmark {
            title: title.to_owned(),
            page: page.saturating_add(before),
        }),
        Listed::Only { .. } => None,
    });
    let bookmarks = bookmarks.collect();
    drawn.extend(pages.done);
    foot::print(&packet.title, &mut drawn);
    PrintedFile {
        title: packet.title.clone(),
        pages: drawn,
        bookmarks,
    }
}

/// A sheet in the list of contents.
enum Listed {
    /// On which page it begins, counted from nought among those after the contents.
    Begins { title: &'static str, page: usize },
    /// All it says, where that is one sentence not worth a page.
    Only {
        title: &'static str,
        sentence: String,
    },
}

/// Brings a sheet onto pages, unless it says a sentence and nothing more.
fn place(packet: &Packet, kind: SheetKind, pages: &mut PrintedPages) -> Listed {
    let title = sheet_title(kind);
    let blocks = sheet(packet, kind).into_blocks();
    if let [SheetBlock::Title(_), SheetBlock::Paragraph(sentence)] = blocks.as_slice() {
        let sentence = sentence.clone();
        return Listed::Only { title, sentence };
    }
    let page = pages.begin(title);
    pages.place(&set::rows(blocks, pages.width()));
    Listed::Begins { title, page }
}

#[cfg(test)]
mod tests;
