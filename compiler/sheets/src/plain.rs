//! A sheet as plain text.

use crate::labels::Label;
use crate::options::{MINIMUM_WIDTH, TextOptions};
use crate::page::{Block, Page};
use crate::wrap::{columns, wrapped};

/// The whole sheet, no line wider than the options allow.
pub(crate) fn plain(page: Page, options: TextOptions) -> String {
    let mut printer = Printer {
        width: options.width.max(MINIMUM_WIDTH),
        text: String::new(),
    };
    for block in page.into_blocks() {
        printer.print(&block);
    }
    printer.text
}

/// Text being printed.
struct Printer {
    width: usize,
    text: String,
}

impl Printer {
    fn print(&mut self, block: &Block) {
        match block {
            Block::Title(title) => self.ruled(title, "="),
            Block::Heading(heading) => {
                self.blank();
                self.ruled(heading, "-");
            }
            Block::Panel(name, words) => {
                self.blank();
                self.lines_with("", &format!("{name}: {words}"));
            }
            Block::Paragraph(text) => {
                self.blank();
                self.lines_with("", text);
            }
            Block::Item(text) => self.lines_with("- ", text),
            Block::Numbered(number, text) => self.lines_with(&format!("{number:>2}. "), text),
            Block::Part(text) => self.lines_with("    - ", text),
            Block::Table(table) => {
                self.blank();
                for line in table.lines(self.width) {
                    self.push(&line);
                }
            }
            Block::Labels(labels) => labels.iter().for_each(|label| self.label(label)),
            Block::Drawing(_) => {}
            Block::Gap => self.blank(),
        }
    }

    /// A label between two dashed lines.
    fn label(&mut self, label: &Label) {
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
