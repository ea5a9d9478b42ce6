//! Every letter once: comments and texts are blanked, brackets and line ends noted, odd letters told.

use pelmet_diagnostics::codes;

use super::ends_number;
use crate::file_diagnostics::FileDiagnostics;
use crate::source::Source;
use crate::tree::Comment;

/// What a look at every letter gives.
pub(super) struct Letters {
    /// The text of the same length, with comments and the insides of texts blanked, every blank a
    /// space and every line end a single `\n`.
    pub(super) clean: String,
    /// The brackets and line ends outside comments and texts.
    pub(super) marks: Vec<Mark>,
    /// Every comment, as they follow each other.
    pub(super) comments: Vec<Comment>,
}

/// A bracket or a line end.
#[derive(Copy, Clone)]
pub(super) struct Mark {
    /// At which byte of the text it stands.
    pub(super) at: usize,
    /// One of `{}()`, or `\n` for every way to end a line.
    pub(super) sign: char,
}

/// Reads all letters of a text.
pub(super) fn read(source: Source<'_>, diagnostics: &mut FileDiagnostics) -> Letters {
    let mut reader = Reader {
        source,
        diagnostics,
        letters: Letters {
            clean: String::with_capacity(source.text.len()),
            marks: Vec::new(),
            comments: Vec::new(),
        },
        before: '\n',
        odd: None,
        told: None,
    };
    while let Some(letter) = reader.rest().chars().next() {
        reader.letter(letter);
        reader.before = letter;
    }
    reader.tell_odd();
    reader.letters
}

struct Reader<'a, 'r> {
    source: Source<'a>,
    diagnostics: &'r mut FileDiagnostics,
    letters: Letters,
    /// The letter before the next one.
    before: char,
    /// The first of the odd letters just read, and where it stands.
    odd: Option<(char, usize)>,
    /// The odd letter last told in this line.
    told: Option<char>,
}

impl<'a> Reader<'a, '_> {
    /// As many bytes are read as are written.
    fn position(&self) -> usize {
        self.letters.clean.len()
    }

    fn rest(&self) -> &'a str {
        self.source.text.get(self.position()..).unwrap_or_default()
    }

    fn letter(&mut self, letter: char) {
        if self.is_odd(letter) {
            self.odd.get_or_insert((letter, self.letters.clean.len()));
            return self.keep(letter);
        }
        self.tell_odd();
        match letter {
            '#' => self.comment(),
            '"' | '”' if ends_number(self.before) => self.keep(letter),
            '"' | '“' | '”' | '„' => self.text(letter),
            '\r' if self.rest().starts_with("\r\n") => self.blank(1),
            '\r' | '\n' => self.end_line(),
            '{' | '}' | '(' | ')' => self.mark(letter),
            BYTE_ORDER_MARK => self.blank(letter.len_utf8()),
            _ if letter.is_whitespace() => self.blank(letter.len_utf8()),
            _ => self.keep(letter),
        }
    }

    fn keep(&mut self, letter: char) {
        self.letters.clean.push(letter);
    }

    fn blank(&mut self, bytes: usize) {
        self.letters.clean.extend(std::iter::repeat_n(' ', bytes));
    }

    fn mark(&mut self, sign: char) {
        let at = self.position();
        self.letters.marks.push(Mark { at, sign });
        self.keep(sign);
    }

    fn end_line(&mut self) {
        self.told = None;
        self.mark('\n');
    }

    fn comment(&mut self) {
        let line = line_of(self.rest());
        let text = line.trim_end();
        let start = self.position();
        self.letters.comments.push(Comment {
            text: text.to_owned(),
            span: self.source.span(start, start.saturating_add(text.len())),
        });
        self.blank(line.len());
    }

    /// Every way to write quotes is read; all but the straight ones are told.
    fn text(&mut self, open: char) {
        let inside = self.rest().get(open.len_utf8()..).unwrap_or_default();
        let ends = |letter| closes(open, letter) || is_line_end(letter);
        match inside.find(ends).map(|end| inside.split_at(end)) {
            Some((text, after)) if !after.starts_with(is_line_end) => {
                self.closed_text(open, text.len());
            }
            _ => self.open_text(open),
        }
    }

    fn closed_text(&mut self, open: char, length: usize) {
        let start = self.position();
        self.keep(open);
        let end_of_open = self.position();
        self.blank(length);
        let start_of_close = self.position();
        let close = self.rest().chars().next().unwrap_or(STRAIGHT);
        self.keep(close);
        if open != STRAIGHT {
            let open = self.source.span(start, end_of_open);
            let close = self.source.span(start_of_close, self.position());
            self.diagnostics.push(codes::CurlyQuotes { open, close });
        }
    }

    /// A bracket that closes nothing in the text is left to close what was opened before it, so that
    /// one forgotten quote is one diagnostic.
    fn open_text(&mut self, open: char) {
        let line = line_of(self.rest());
        let text = before_closing_bracket(line).trim_end();
        let start = self.position();
        let place = self.source.span(start, start.saturating_add(text.len()));
        self.diagnostics.push(codes::text_not_closed(place));
        self.keep(open);
        self.blank(text.len().saturating_sub(open.len_utf8()));
    }

    /// One diagnostic tells of all odd letters in a row, and of all alike in a line.
    fn tell_odd(&mut self) {
        let Some((letter, start)) = self.odd.take() else {
            return;
        };
        if self.told.replace(letter) != Some(letter) {
            let place = self.source.span(start, self.position());
            self.diagnostics
                .push(codes::character_not_known(place, letter));
        }
    }

    fn is_odd(&self, letter: char) -> bool {
        match letter {
            '\'' | '’' => !ends_number(self.before),
            BYTE_ORDER_MARK => !self.is_at_beginning(),
            _ => !is_known(letter),
        }
    }

    fn is_at_beginning(&self) -> bool {
        self.source.base == 0 && self.position() == 0
    }
}

const BYTE_ORDER_MARK: char = '\u{feff}';
const STRAIGHT: char = '"';

/// Whether a text opened by one quote is closed by another.
fn closes(open: char, letter: char) -> bool {
    letter == STRAIGHT || (open != STRAIGHT && matches!(letter, '”' | '“'))
}

/// Whether the language has a use for a letter outside comments and texts.
fn is_known(letter: char) -> bool {
    const SIGNS: &str = "_-−–:=,+*/⁄.%°×²″′\"“”„#{}()";
    letter.is_alphabetic()
        || letter.is_whitespace()
        || ends_number(letter)
        || is_accent(letter)
        || SIGNS.contains(letter)
}

/// Whether a letter is an accent that belongs to the one before it.
fn is_accent(letter: char) -> bool {
    matches!(letter, '\u{300}'..='\u{36f}')
}

/// The rest of the line, without its end.
fn line_of(rest: &str) -> &str {
    rest.split(is_line_end).next().unwrap_or_default()
}

/// A line up to the first bracket that closes none of its own.
fn before_closing_bracket(line: &str) -> &str {
    let mut open = 0_usize;
    let end = line.find(|letter| match letter {
        '(' | '{' => {
            open = open.saturating_add(1);
            false
        }
        ')' | '}' if open == 0 => true,
        ')' | '}' => {
            open = open.saturating_sub(1);
            false
        }
        _ => false,
    });
    end.and_then(|end| line.get(..end)).unwrap_or(line)
}

fn is_line_end(letter: char) -> bool {
    matches!(letter, '\n' | '\r')
}
