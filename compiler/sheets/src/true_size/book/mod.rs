//! The file of templates: what is in it first, then the template of every shaped piece and the story stick
//! of every pleated panel, each part with its bookmark.

mod names;
mod overview;
#[cfg(test)]
mod tests;

use pelmet_packet::{Packet, SheetKind};

use crate::drawing::{Bookmark, Drawing, PrintedFile};
use crate::paper::Paper;
use crate::sheet::cautions;
use crate::text::words::counted;
use crate::to_scale::is_rectangle;
use crate::true_size::outlines::{SharedOutline, outlines};
use crate::true_size::page::PaperSheet;
use crate::true_size::story_stick::{StoryStick, sticks};
use crate::true_size::templates::{Template, cut, size};
use names::PartNames;
use overview::{Overview, OverviewRow};

/// Which pieces get a template.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(crate) enum TemplatesOf {
    /// Those with a shape; a rectangle is quicker and better measured on the cloth.
    Shaped,
    /// Rectangles too.
    All,
}

/// A file holds about so many pages: more than anyone prints, and no more than a viewer opens at once.
/// What comes after them is listed on the first page and not drawn.
const MAXIMUM_PAGES: usize = 2000;

/// The templates and story sticks of a job.
pub(crate) fn templates(packet: &Packet, which: TemplatesOf, paper: Paper) -> PrintedFile {
    let book = book(packet, which, paper, MAXIMUM_PAGES);
    PrintedFile {
        title: format!("Templates: {}", packet.title),
        pages: book.pages,
        bookmarks: book.bookmarks,
    }
}

/// Pages, and where parts begin.
struct Book {
    /// About how many there may be.
    most: usize,
    pages: Vec<Drawing>,
    bookmarks: Vec<Bookmark>,
    /// What the first page lists: the templates, the story sticks, and what is measured instead.
    templates: Vec<OverviewRow>,
    sticks: Vec<OverviewRow>,
    measured: Vec<OverviewRow>,
    left_out: Vec<OverviewRow>,
}

fn book(packet: &Packet, which: TemplatesOf, paper: Paper, most: usize) -> Book {
    let mut book = Book::new(most);
    let names = PartNames::new(packet);
    for outline in outlines(packet) {
        if which == TemplatesOf::Shaped && is_rectangle(&outline.piece.outline) {
            book.measured.push(told(&outline, &names));
        } else if book.is_full() {
            book.left_out.push(told(&outline, &names));
        } else {
            book.add_template(&outline, &names, paper);
        }
    }
    for stick in sticks(&packet.windows) {
        if !book.is_full() {
            book.add_stick(&stick, &names, PaperSheet::on_its_side(paper));
        }
    }
    book.begin_with_overview(packet, PaperSheet::upright(paper));
    book
}

/// An outline that has no pages.
fn told(outline: &SharedOutline<'_>, names: &PartNames) -> OverviewRow {
    OverviewRow {
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

    fn add_template(&mut self, outline: &SharedOutline<'_>, names: &PartNames, paper: Paper) {
        let Some(template) = Template::of(outline, paper) else {
            return;
        };
        let number = self.templates.len().saturating_add(1);
        let title = format!("Template {number}: {}", names.outline(outline));
        self.begin(&title);
        self.templates.push(OverviewRow {
            name: title.clone(),
            about: format!("{}: {}", size(outline), cut(outline)),
            pages: format!("map and {}", template.counted_pages()),
        });
        self.pages.extend(template.pages(&title));
    }

    fn add_stick(&mut self, stick: &StoryStick<'_>, names: &PartNames, sheet: PaperSheet) {
        let number = self.sticks.len().saturating_add(1);
        let windows = stick.windows.iter().map(|window| &*window.name);
        let title = format!(
            "Story stick {number}: {}",
            names.of(&stick.panel.name, windows)
        );
        let pages = stick.pages(&title, sheet);
        self.begin(&title);
        self.sticks.push(OverviewRow {
            name: title,
            about: format!("{} flat", stick.panel.flat_width.text),
            pages: counted(pages.len(), "page", "pages"),
        });
        self.pages.extend(pages);
    }

    fn begin_with_overview(&mut self, packet: &Packet, sheet: PaperSheet) {
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
