//! Lines being written, and the comments at their ends.

/// How far one block sets its lines in.
const INDENT: usize = 4;

/// How many blanks part a line from the comment after it.
const BEFORE_COMMENT: usize = 2;

/// The lines written so far.
#[derive(Default)]
pub(super) struct Page {
    lines: Vec<Line>,
}

#[derive(Default)]
struct Line {
    code: String,
    comment: Option<String>,
}

impl Line {
    fn width(&self) -> usize {
        self.code.chars().count()
    }

    /// Whether a comment follows something.
    fn has_trailing_comment(&self) -> bool {
        self.comment.is_some() && !self.code.trim_start().is_empty()
    }
}

impl Page {
    /// Begins a line that is set in by so many levels.
    pub(super) fn begin_line(&mut self, levels: usize) {
        let code = " ".repeat(levels.saturating_mul(INDENT));
        self.lines.push(Line {
            code,
            comment: None,
        });
    }

    /// Leaves a line empty, but neither at the top nor after the line that opens a block.
    pub(super) fn leave_line(&mut self) {
        if self
            .lines
            .last()
            .is_some_and(|line| !line.code.ends_with('{'))
        {
            self.lines.push(Line::default());
        }
    }

    /// Writes on in the last line.
    pub(super) fn write(&mut self, text: &str) {
        if self.lines.is_empty() {
            self.lines.push(Line::default());
        }
        if let Some(line) = self.lines.last_mut() {
            line.code.push_str(text);
        }
    }

    /// Ends the last line with a comment; `false` if it cannot take one.
    pub(super) fn comment(&mut self, text: &str) -> bool {
        match self.lines.last_mut() {
            Some(line) if line.comment.is_none() => {
                line.comment = Some(text.to_owned());
                true
            }
            _ => false,
        }
    }

    /// How wide the last line is, in characters.
    pub(super) fn width(&self) -> usize {
        self.lines.last().map_or(0, Line::width)
    }

    /// How long the last line is, to come back to with [`Page::cut_back`].
    pub(super) fn length(&self) -> usize {
        self.lines.last().map_or(0, |line| line.code.len())
    }

    /// Takes back what was written in the last line since it had this length.
    pub(super) fn cut_back(&mut self, length: usize) {
        if let Some(line) = self.lines.last_mut() {
            line.code.truncate(length);
        }
    }

    /// All lines, with the comments of neighbours aligned.
    pub(super) fn finish(self) -> String {
        let mut text = String::new();
        let neighbours =
            |one: &Line, next: &Line| one.has_trailing_comment() == next.has_trailing_comment();
        for run in self.lines.chunk_by(neighbours) {
            let width = run.iter().map(Line::width).max().unwrap_or_default();
            run.iter()
                .for_each(|line| finish_line(line, width, &mut text));
        }
        text
    }
}

fn finish_line(line: &Line, width: usize, text: &mut String) {
    text.push_str(&line.code);
    if let Some(comment) = &line.comment {
        let missing = width
            .saturating_sub(line.width())
            .saturating_add(BEFORE_COMMENT);
        if line.has_trailing_comment() {
            text.push_str(&" ".repeat(missing));
        }
        text.push_str(comment);
    }
    text.push('\n');
}
