//! Drawings that are printed as the pages of one file.

use super::elements::Drawing;

/// Pages to print, and what a viewer says of them.
pub(crate) struct PrintedFile {
    /// What is in it, shown in the head of a viewer's window.
    pub(crate) title: String,
    /// Every page, of exactly the size of its drawing.
    pub(crate) pages: Vec<Drawing>,
    /// The parts of it, in the order of their pages.
    pub(crate) bookmarks: Vec<Bookmark>,
}

/// A part of a file that a viewer lists.
pub(crate) struct Bookmark {
    pub(crate) title: String,
    /// The page on which it begins, counted from nought.
    pub(crate) page: usize,
}
