//! What a sheet is made of: a list of what stands on it, titles, paragraphs, lists, tables, labels and
//! drawings, whatever it is written as.

mod piece_label;
mod text_table;

pub(crate) use piece_label::PieceLabel;
pub(crate) use text_table::{TextColumn, TextTable};

use crate::drawing::Drawing;

/// A sheet being put together.
#[derive(Default)]
pub(crate) struct SheetBlocks {
    blocks: Vec<SheetBlock>,
}

/// One thing that stands on a sheet; a writer sets it by its kind and by those beside it.
pub(crate) enum SheetBlock {
    /// What the sheet and the job are called. It stands once, at the top.
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
    Table(TextTable),
    /// Labels to cut apart.
    Labels(Vec<PieceLabel>),
    /// A drawing, which a page of plain text leaves out.
    Drawing(Drawing),
    /// What comes next stands apart from what was before.
    Gap,
}

impl SheetBlocks {
    pub(crate) fn title(&mut self, title: &str) {
        self.blocks.push(SheetBlock::Title(title.to_owned()));
    }

    pub(crate) fn heading(&mut self, heading: &str) {
        self.blocks.push(SheetBlock::Heading(heading.to_owned()));
    }

    pub(crate) fn panel(&mut self, name: &str, words: &str) {
        let name = format!("Panel {name}");
        self.blocks.push(SheetBlock::Panel(name, words.to_owned()));
    }

    pub(crate) fn paragraph(&mut self, text: &str) {
        self.blocks.push(SheetBlock::Paragraph(text.to_owned()));
    }

    pub(crate) fn item(&mut self, text: &str) {
        self.blocks.push(SheetBlock::Item(text.to_owned()));
    }

    pub(crate) fn numbered(&mut self, number: u32, text: &str) {
        self.blocks
            .push(SheetBlock::Numbered(number, text.to_owned()));
    }

    pub(crate) fn part(&mut self, text: &str) {
        self.blocks.push(SheetBlock::Part(text.to_owned()));
    }

    /// A table. Columns in which no row says anything are left out.
    pub(crate) fn table(&mut self, table: &TextTable) {
        self.blocks
            .push(SheetBlock::Table(table.without_empty_columns()));
    }

    pub(crate) fn labels(&mut self, labels: Vec<PieceLabel>) {
        self.blocks.push(SheetBlock::Labels(labels));
    }

    pub(crate) fn drawing(&mut self, drawing: Drawing) {
        self.blocks.push(SheetBlock::Drawing(drawing));
    }

    pub(crate) fn blank(&mut self) {
        self.blocks.push(SheetBlock::Gap);
    }

    pub(crate) fn into_blocks(self) -> Vec<SheetBlock> {
        self.blocks
    }
}
