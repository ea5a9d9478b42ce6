//! A page of plain text: titles, paragraphs, lists and tables.

use crate::options::{MINIMUM_WIDTH, TextOptions};
use crate::table::Table;
use crate::wrap::{columns, wrapped};

/// Text being printed.
pub(crate) struct Page {
    width: usize,
    text: String,
}

impl Page {
    pub(crate) fn new(options: TextOptions) -> Self {
        Self {
            width: options.width.max(MINIMUM_WIDTH),
            text: String::new(),
        }
    }

    /// The title of a sheet.
    pub(crate) fn title(&mut self, title: &str) {
        self.ruled(title, "=");
    }

    /// The heading of a part: a cloth, a window.
    pub(crate) fn heading(&mut self, heading: &str) {
        self.blank();
        self.ruled(heading, "-");
    }

    /// A paragraph.
    pub(crate) fn paragraph(&mut self, text: &str) {
        self.blank();
        self.lines_with("", text);
    }

    /// One entry of a list, its further lines set in.
    pub(crate) fn item(&mut self, text: &str) {
        self.lines_with("- ", text);
    }

    /// One entry of a numbered list, its further lines set in.
    pub(crate) fn numbered(&mut self, number: u32, text: &str) {
        self.lines_with(&format!("{number:>2}. "), text);
    }

    /// A part of an entry of a numbered list.
    pub(crate) fn part(&mut self, text: &str) {
        self.lines_with("    - ", text);
    }

    /// A table.
    pub(crate) fn table(&mut self, table: &Table) {
        self.blank();
        for line in table.lines(self.width) {
            self.push(&line);
        }
    }

    pub(crate) fn blank(&mut self) {
        self.text.push('\n');
    }

    pub(crate) fn into_text(self) -> String {
        self.text
    }

    fn ruled(&mut self, text: &str, rule: &str) {
        let lines = wrapped(text, self.width);
        let widest = lines.iter().map(|line| columns(line)).max().unwrap_or(0);
        for line in &lines {
            self.push(line);
        }
        self.push(&rule.repeat(widest));
    }

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
