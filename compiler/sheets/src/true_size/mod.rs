//! What is at its true size: the lines of whole pieces, templates on pages to be laid together, and story
//! sticks. Who cuts lays them on the cloth, so every one of them has something to measure it by.

mod book;
pub(crate) mod outlines;
mod page;
mod story_stick;
mod templates;

pub(crate) use book::{TemplatesOf, templates};
