//! Drawings as the pages of a PDF file, each of exactly its size.
//!
//! The file asks to be printed without scaling, carries the part of the typeface it uses, and holds no
//! date, so that the same drawings give the same bytes.

mod content;
mod file;
mod fonts;

use pdf_writer::writers::{Catalog, Page};
use pdf_writer::{Finish, Name, Rect, Ref, TextStr};

use crate::drawing::{Bookmark, Drawing, PrintedFile};
use content::content;
use file::{POINTS_IN_MILLIMETRE, PdfFile};
use fonts::Fonts;

/// The language of every sheet.
const LANGUAGE: &str = "en";

/// The whole file, one page for each drawing.
pub(crate) fn pdf(printed: &PrintedFile) -> Vec<u8> {
    let PrintedFile {
        title,
        pages,
        bookmarks,
    } = printed;
    let mut file = PdfFile::new();
    let fonts = Fonts::of(pages);
    let tree = file.next();
    let resources = file.next();
    let numbered: Vec<Ref> = pages.iter().map(|_| file.next()).collect();
    let embedded = fonts.write(&mut file);
    let mut dictionary = file.pdf.indirect(resources).dict();
    let mut named = dictionary.insert(Name(b"Font")).dict();
    for (name, font) in embedded {
        named.pair(Name(name), font);
    }
    named.finish();
    dictionary.finish();
    for (number, drawing) in numbered.iter().zip(pages) {
        let stream = file.stream(&content(drawing, &fonts));
        let mut page: Page<'_> = file.pdf.page(*number);
        page.media_box(paper(drawing)).parent(tree).contents(stream);
        page.pair(Name(b"Resources"), resources);
    }
    let count = i32::try_from(numbered.len()).unwrap_or(i32::MAX);
    file.pdf
        .pages(tree)
        .count(count)
        .kids(numbered.iter().copied());
    let outline = write_bookmarks(bookmarks, &numbered, &mut file);
    write_facts(title, (tree, outline), &mut file);
    file.pdf.finish()
}

/// The paper of a page, in points.
fn paper(drawing: &Drawing) -> Rect {
    let points = |length: f64| file::number(length * POINTS_IN_MILLIMETRE);
    Rect::new(0.0, 0.0, points(drawing.width), points(drawing.height))
}

/// The list of bookmarks, if there are any.
fn write_bookmarks(bookmarks: &[Bookmark], pages: &[Ref], file: &mut PdfFile) -> Option<Ref> {
    let whole = file.next();
    let items: Vec<Ref> = bookmarks.iter().map(|_| file.next()).collect();
    let (first, last) = (items.first()?, items.last()?);
    let count = i32::try_from(items.len()).unwrap_or(i32::MAX);
    let mut outline = file.pdf.outline(whole);
    outline.first(*first).last(*last).count(count);
    outline.finish();
    let befores = std::iter::once(None).chain(items.iter().copied().map(Some));
    let afters = items
        .iter()
        .copied()
        .skip(1)
        .map(Some)
        .chain(std::iter::once(None));
    for (bookmark, ((item, before), after)) in
        bookmarks.iter().zip(items.iter().zip(befores).zip(afters))
    {
        let mut entry = file.pdf.outline_item(*item);
        entry.title(TextStr(&bookmark.title)).parent(whole);
        if let Some(before) = before {
            entry.prev(before);
        }
        if let Some(after) = after {
            entry.next(after);
        }
        if let Some(page) = pages.get(bookmark.page) {
            entry.dest().page(*page).fit();
        }
    }
    Some(whole)
}

/// What the file is, and how it asks to be shown and printed.
fn write_facts(title: &str, (tree, outline): (Ref, Option<Ref>), file: &mut PdfFile) {
    let (catalog, facts) = (file.next(), file.next());
    let mut catalog: Catalog<'_> = file.pdf.catalog(catalog);
    catalog.pages(tree).lang(TextStr(LANGUAGE));
    if let Some(outline) = outline {
        catalog.outlines(outline);
    }
    let mut preferences = catalog.viewer_preferences();
    preferences.display_doc_title(true);
    // No more than a request: every page of templates has bars to check it by.
    preferences.pair(Name(b"PrintScaling"), Name(b"None"));
    preferences.finish();
    catalog.finish();
    let mut facts = file.pdf.document_info(facts);
    facts.title(TextStr(title)).producer(TextStr("Pelmet"));
}

#[cfg(test)]
mod tests;
