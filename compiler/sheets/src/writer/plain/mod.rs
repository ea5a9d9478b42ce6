//! Sheets as plain text.

mod options;
mod table;
mod wrap;

pub use options::{MINIMUM_WIDTH, TextOptions};

use pelmet_packet::{Packet, SheetKind};

use crate::content::{PieceLabel, SheetBlock, SheetBlocks};
use crate::sheet::sheet;
use wrap::{columns, wrapped};

/// Sheets one after the other.
pub fn text(packet: &Packet, sheets: &[SheetKind], options: TextOptions) -> String {
    let sheets = sheets
        .iter()
        .map(|kind| plain(sheet(packet, *kind), options));
    sheets.collect::<Vec<String>>().join("\n\n")
}

/// A whole sheet, no line wider than the options allow.
pub(crate) fn plain(sheet: SheetBlocks, options: TextOptions) -> String {
    let mut printer = PlainPage {
        width: options.width.max(MINIMUM_WIDTH),
        text: String::new(),
    };
    for block in sheet.into_blocks() {
        printer.print(&block);
    }
    printer.text
}

/// Text being printed.
struct PlainPage {
    width: usize,
    text: String,
}

impl PlainPage {
    fn print(&mut self, block: &SheetBlock) {
        match block {
            SheetBlock::Title(title) => self.ruled(title, "="),
            SheetBlock::Heading(heading) => {
                self.blank();
                self.ruled(heading, "-");
            }
            SheetBlock::Panel(name, words) => {
                self.blank();
                self.lines_with("", &format!("{name}: {words}"));
            }
            SheetBlock::Paragraph(text) => {
                self.blank();
                self.lines_with("", text);
            }
            SheetBlock::Item(text) => self.lines_with("- ", text),
            SheetBlock::Numbered(number, text) => self.lines_with(&format!("{number:>2}. "), text),
            SheetBlock::Part(text) => self.lines_with("    - ", text),
            SheetBlock::Table(table) => {
                self.blank();
                for line in table::lines(table, self.width) {
                    self.push(&line);
                }
            }
            SheetBlock::Labels(labels) => labels.iter().for_each(|label| self.label(label)),
            SheetBlock::Drawing(_) => {}
            SheetBlock::Gap => self.blank(),
        }
    }

    /// A label between two dashed lines.
    fn label(&mut self, label: &PieceLabel) {
        self.push(&"- ".repeat(self.width / 2));
        self.lines_with("^ ", &format!("{} {}", label.number, label.cloth));
        self.lines_with("| ", &label.job);
        self.lines_with("| ", &format!("{} {}", label.panel, label.layer));
        self.lines_with("| ", &label.size);
        self.lines_with("| ", &label.remarks);
    }

    fn blank(&mut self) {
        self.text.push('\n');
    }

    fn ruled(&mut self, text: &str, rule: &str) {
        let lines = wrapped(text, self.width);
        let widest = lines.iter().map(|line| columns(line)).max().unwrap_or(0);
        for line in &lines {
            self.push(line);
        }
        self.push(&rule.repeat(widest));
    }

    /// A text after what it begins with; its further lines are set in.
    fn lines_with(&mut self, first: &str, text: &str) {
        let set_in = columns(first);
        let lines = wrapped(text, self.width.saturating_sub(set_in));
        for (index, line) in lines.iter().enumerate() {
            let begins = if index == 0 {
                first.to_owned()
            } else {
                " ".repeat(set_in)
            };
            self.push(&format!("{begins}{line}"));
        }
    }

    fn push(&mut self, line: &str) {
        self.text.push_str(line.trim_end());
        self.text.push('\n');
    }
}
