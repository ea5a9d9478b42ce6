//! A sheet as a list of what stands on it: titles, paragraphs, lists, tables and drawings, whatever it
//! is written as.

use crate::drawing::Drawing;
use crate::labels::Label;
use crate::table::Table;

/// A sheet being put together.
#[derive(Default)]
pub(crate) struct Page {
    blocks: Vec<Block>,
}

/// What stands on a sheet.
pub(crate) enum Block {
    /// The title of the sheet.
    Title(String),
    /// The heading of a part: a cloth, a window.
    Heading(String),
    /// The name of a panel, whose part of the sheet this heads, and what it is in a few words.
    Panel(String, String),
    Paragraph(String),
    /// One entry of a list.
    Item(String),
    /// One step of a numbered list.
    Numbered(u32, String),
    /// A part of the step before it.
    Part(String),
    Table(Table),
    /// Labels to cut apart.
    Labels(Vec<Label>),
    /// A drawing, which a page of plain text leaves out.
    Drawing(Drawing),
    /// What comes next stands apart from what was before.
    Gap,
}

impl Page {
    pub(crate) fn title(&mut self, title: &str) {
        self.blocks.push(Block::Title(title.to_owned()));
    }

    pub(crate) fn heading(&mut self, heading: &str) {
        self.blocks.push(Block::Heading(heading.to_owned()));
    }

    pub(crate) fn panel(&mut self, name: &str, words: &str) {
        let name = format!("Panel {name}");
        self.blocks.push(Block::Panel(name, words.to_owned()));
    }

    pub(crate) fn paragraph(&mut self, text: &str) {
        self.blocks.push(Block::Paragraph(text.to_owned()));
    }

    pub(crate) fn item(&mut self, text: &str) {
        self.blocks.push(Block::Item(text.to_owned()));
    }

    pub(crate) fn numbered(&mut self, number: u32, text: &str) {
        self.blocks.push(Block::Numbered(number, text.to_owned()));
    }

    pub(crate) fn part(&mut self, text: &str) {
        self.blocks.push(Block::Part(text.to_owned()));
    }

    /// A table. Columns in which no row says anything are left out.
    pub(crate) fn table(&mut self, table: &Table) {
        self.blocks
            .push(Block::Table(table.without_empty_columns()));
    }

    pub(crate) fn labels(&mut self, labels: Vec<Label>) {
        self.blocks.push(Block::Labels(labels));
    }

    pub(crate) fn drawing(&mut self, drawing: Drawing) {
        self.blocks.push(Block::Drawing(drawing));
    }

    pub(crate) fn blank(&mut self) {
        self.blocks.push(Block::Gap);
    }

    pub(crate) fn into_blocks(self) -> Vec<Block> {
        self.blocks
    }
}
