//! Which bracket closes which.
//!
//! The signs alone decide, as long as they agree. If a `{` is left open or a `}` closes nothing, the
//! way the lines are set in is asked as well: it often shows where the forgotten bracket belongs, and
//! the blocks around what is wrong keep their entries.

use pelmet_diagnostics::{Diagnostic, Span, codes};

use super::letters::{Letters, Mark};
use crate::MAXIMUM_NESTING;
use crate::file_diagnostics::FileDiagnostics;
use crate::source::Source;

/// What came of pairing the brackets.
#[derive(Default)]
pub(super) struct Pairing {
    /// Brackets that close nothing, or that nothing closes.
    pub(super) diagnostics: FileDiagnostics,
    /// What to change so that the grammar sees every bracket paired.
    pub(super) edits: Vec<SignEdit>,
    /// The first bracket that stands too deep.
    pub(super) too_deep: Option<usize>,
    /// Whether a `{` was left open or a `}` closed nothing.
    blocks_disagree: bool,
}

/// A sign to be put in the place of another.
pub(super) struct SignEdit {
    /// At which byte of the text.
    pub(super) at: usize,
    /// What the grammar is to see there.
    pub(super) sign: char,
}

/// Pairs the brackets of a text.
pub(super) fn pair(source: Source<'_>, letters: &Letters) -> Pairing {
    let by_signs = Pairer::new(source, letters, false).run();
    if !by_signs.blocks_disagree || by_signs.too_deep.is_some() {
        return by_signs;
    }
    let by_layout = Pairer::new(source, letters, true).run();
    let explains =
        !by_layout.blocks_disagree && by_layout.diagnostics.len() <= by_signs.diagnostics.len();
    if explains { by_layout } else { by_signs }
}

struct Pairer<'a> {
    source: Source<'a>,
    letters: &'a Letters,
    /// Whether the way lines are set in is asked too.
    by_layout: bool,
    /// The curly brackets that are open, then the round ones: no block stands in round brackets.
    blocks: Vec<Opener>,
    rounds: Vec<usize>,
    /// The line ends since the outermost round bracket was opened.
    line_ends: Vec<usize>,
    line: Line,
    pairing: Pairing,
}

/// A `{` that nothing has closed yet.
#[derive(Copy, Clone)]
struct Opener {
    at: usize,
    /// The line that opens the block, by which its lines are set in.
    line: Line,
}

/// Where a line of the text begins, and how far it is set in.
#[derive(Copy, Clone, PartialEq, Eq)]
struct Line {
    /// Its first byte.
    start: usize,
    /// How many blanks it begins with.
    indent: usize,
}

impl Line {
    fn text_start(self) -> usize {
        self.start.saturating_add(self.indent)
    }
}

impl<'a> Pairer<'a> {
    fn new(source: Source<'a>, letters: &'a Letters, by_layout: bool) -> Self {
        Pairer {
            source,
            letters,
            by_layout,
            blocks: Vec::new(),
            rounds: Vec::new(),
            line_ends: Vec::new(),
            line: line_at(&letters.clean, 0),
            pairing: Pairing::default(),
        }
    }

    fn run(mut self) -> Pairing {
        for mark in &self.letters.marks {
            if self.opens_too_deep(*mark) {
                self.pairing.too_deep = Some(mark.at);
                return self.pairing;
            }
            match mark.sign {
                '{' => self.open_block(mark.at),
                '(' => self.rounds.push(mark.at),
                '}' => self.close_curly(mark.at),
                ')' => self.close_round(mark.at),
                _ => self.end_line(mark.at),
            }
        }
        self.end();
        self.pairing
    }

    fn opens_too_deep(&self, mark: Mark) -> bool {
        let depth = self.blocks.len().saturating_add(self.rounds.len());
        matches!(mark.sign, '{' | '(') && depth >= MAXIMUM_NESTING
    }

    fn open_block(&mut self, at: usize) {
        self.abandon_rounds(at);
        let line = self.line;
        self.blocks.push(Opener { at, line });
    }

    fn close_curly(&mut self, at: usize) {
        if let Some(open) = self.rounds.last().copied() {
            self.tell_difference(open, '(', at, '}');
            if self.stands_for_round(at) {
                self.edit(at, ')');
                return self.pop_round();
            }
            self.forget_rounds();
        }
        if self.is_set_in_too_far(at) {
            self.tell_not_opened(at, '}');
            self.edit(at, ' ');
        } else if self.blocks.pop().is_none() {
            self.pairing.blocks_disagree = true;
            self.tell_not_opened(at, '}');
            self.edit(at, ' ');
        }
    }

    fn close_round(&mut self, at: usize) {
        if !self.rounds.is_empty() {
            return self.pop_round();
        }
        match self.blocks.last().copied() {
            Some(open) if open.line == self.line && self.ends_line(at) => {
                self.tell_difference(open.at, '{', at, ')');
                self.edit(at, '}');
                self.blocks.pop();
            }
            _ => self.tell_not_opened(at, ')'),
        }
    }

    /// The grammar need not see line ends within round brackets.
    fn pop_round(&mut self) {
        self.rounds.pop();
        if self.rounds.is_empty() {
            let blanks = self
                .line_ends
                .drain(..)
                .map(|at| SignEdit { at, sign: ' ' });
            self.pairing.edits.extend(blanks);
        }
    }

    fn end_line(&mut self, at: usize) {
        self.line = line_at(&self.letters.clean, at.saturating_add(1));
        if !self.rounds.is_empty() {
            if self.next_line_is_an_entry(at) {
                self.abandon_rounds(at);
            } else {
                self.line_ends.push(at);
            }
        }
        if self.by_layout && self.rounds.is_empty() && self.next_line_leaves_the_block() {
            self.close_forgotten_block(at);
        }
    }

    fn end(&mut self) {
        let end = self.letters.clean.trim_end().len();
        self.abandon_rounds(end);
        self.pairing.blocks_disagree |= !self.blocks.is_empty();
        for open in std::mem::take(&mut self.blocks) {
            self.tell_not_closed(open.at, '{', end);
        }
    }

    /// Tells of the innermost open round bracket and goes on as if none were open.
    fn abandon_rounds(&mut self, missed: usize) {
        if let Some(open) = self.rounds.last().copied() {
            self.tell_not_closed(open, '(', missed);
        }
        self.forget_rounds();
    }

    fn forget_rounds(&mut self) {
        self.rounds.clear();
        self.line_ends.clear();
    }

    /// Whether a `}` among round brackets is a slip for `)`: it stands within a line, and no block was
    /// opened in that line.
    fn stands_for_round(&self, at: usize) -> bool {
        let block_in_line = self
            .blocks
            .last()
            .is_some_and(|open| open.line == self.line);
        !block_in_line && at != self.line.text_start()
    }

    /// Whether nothing but blanks follows in the line.
    fn ends_line(&self, at: usize) -> bool {
        let rest = self.rest(at.saturating_add(1)).trim_start_matches(' ');
        rest.is_empty() || rest.starts_with('\n')
    }

    /// Whether the line after a line end within round brackets begins an entry: words before a `:`
    /// or `{`, where the line before does not ask for more.
    fn next_line_is_an_entry(&self, at: usize) -> bool {
        let next = self.rest(self.line.text_start());
        let before = self.letters.clean.get(..at).unwrap_or_default();
        begins_entry(next)
            && !before
                .trim_end()
                .ends_with(['(', ',', ':', '=', '+', '-', '*', '/'])
    }

    /// Whether the new line is set in too little to belong to the innermost block.
    fn next_line_leaves_the_block(&self) -> bool {
        let (Some(open), Some(first)) = (self.blocks.last(), self.first_of_line()) else {
            return false;
        };
        if first == '}' {
            self.line.indent < open.line.indent
        } else {
            self.line.indent <= open.line.indent
        }
    }

    fn first_of_line(&self) -> Option<char> {
        let first = self.rest(self.line.text_start()).chars().next()?;
        (first != '\n').then_some(first)
    }

    fn close_forgotten_block(&mut self, at: usize) {
        if let Some(open) = self.blocks.pop() {
            self.tell_not_closed(open.at, '{', at);
            self.edit(at, '}');
        }
    }

    /// Whether the layout shows that a `}` closes nothing, although a block is open.
    fn is_set_in_too_far(&self, at: usize) -> bool {
        self.by_layout
            && at == self.line.text_start()
            && self
                .blocks
                .last()
                .is_some_and(|open| self.line.indent > open.line.indent)
    }

    fn rest(&self, from: usize) -> &'a str {
        self.letters.clean.get(from..).unwrap_or_default()
    }

    fn edit(&mut self, at: usize, sign: char) {
        self.pairing.edits.push(SignEdit { at, sign });
    }

    fn tell(&mut self, diagnostic: impl Into<Diagnostic>) {
        self.pairing.diagnostics.push(diagnostic);
    }

    fn tell_not_closed(&mut self, open: usize, bracket: char, missed: usize) {
        let text = self.letters.clean.get(..missed).unwrap_or_default();
        let missed = text.trim_end().len();
        let (open, missed) = (self.sign_at(open), self.source.span(missed, missed));
        self.tell(codes::BracketNotClosed {
            open,
            bracket,
            missed,
        });
    }

    fn tell_not_opened(&mut self, close: usize, bracket: char) {
        self.tell(codes::bracket_not_opened(self.sign_at(close), bracket));
    }

    fn tell_difference(&mut self, open: usize, opened: char, close: usize, closed: char) {
        let (open, close) = (self.sign_at(open), self.sign_at(close));
        self.tell(codes::BracketsDiffer {
            open,
            opened,
            close,
            closed,
        });
    }

    fn sign_at(&self, at: usize) -> Span {
        self.source.span(at, at.saturating_add(1))
    }
}

fn line_at(clean: &str, start: usize) -> Line {
    let line = clean.get(start..).unwrap_or_default();
    let text = line.trim_start_matches(' ');
    let indent = line.len().saturating_sub(text.len());
    Line { start, indent }
}

/// Whether a line begins with words before a `:` or a `{`.
fn begins_entry(line: &str) -> bool {
    let is_word = |letter: char| letter.is_alphanumeric() || matches!(letter, '-' | '_' | ' ');
    line.starts_with(char::is_alphabetic)
        && line.trim_start_matches(is_word).starts_with([':', '{'])
}
