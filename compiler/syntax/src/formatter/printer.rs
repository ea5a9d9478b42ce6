//! A walk over the tree that writes every sign, with the comments between them.

use pelmet_diagnostics::Span;

use super::page::Page;
use super::spelling;
use crate::tree::{
    Argument, Call, Comment, Entry, EntryBlock, Phrase, Phrases, Separator, SyntaxTree, Term,
    TermKind,
};

/// The widest line that a block on one line may make, in characters.
const ONE_LINE_WIDTH: usize = 88;

/// The text of a tree; `text` is what it was read from and `clean` what the grammar saw of it.
pub(super) fn print(file: &SyntaxTree, text: &str, clean: &str) -> String {
    let mut printer = Printer {
        text,
        clean,
        comments: &file.comments,
        page: Page::default(),
        position: 0,
        blocks: 0,
        rounds: 0,
    };
    printer.entries(&file.entries);
    printer.comments_before(text.len(), 0);
    printer.page.finish()
}

struct Printer<'a> {
    text: &'a str,
    clean: &'a str,
    /// The comments that are not yet written.
    comments: &'a [Comment],
    page: Page,
    /// How far the text is written.
    position: usize,
    /// How many blocks stand around the next sign.
    blocks: usize,
    /// How many round brackets stand around it.
    rounds: usize,
}

/// What goes before a sign.
#[derive(Copy, Clone, PartialEq, Eq)]
enum Before {
    Nothing,
    Blank,
    LineEnd,
}

impl Printer<'_> {
    fn entries(&mut self, entries: &[Entry]) {
        for entry in entries {
            self.begin_entry(entry.span.range().start);
            self.entry(entry);
        }
    }

    fn begin_entry(&mut self, start: usize) {
        self.comments_before(start, self.blocks);
        if self.has_empty_line_before(start) {
            self.page.leave_line();
        }
        self.page.begin_line(self.blocks);
        self.position = start;
    }

    fn entry(&mut self, entry: &Entry) {
        self.phrases(&entry.head, Before::Nothing);
        match entry.separator {
            Some(Separator::Colon) => self.page.write(":"),
            Some(Separator::Equals) => self.page.write(" ="),
            None => {}
        }
        if let Some(value) = &entry.value {
            self.phrases(value, Before::Blank);
        }
        if let Some(block) = &entry.block {
            self.block(block, before_block(entry));
        }
    }

    fn block(&mut self, block: &EntryBlock, before: Before) {
        let range = block.span.range();
        self.sign(
            "{",
            range.start,
            range.start.saturating_add(1),
            self.blocks,
            before,
        );
        if !self.block_on_one_line(block) {
            self.blocks = self.blocks.saturating_add(1);
            self.entries(&block.entries);
            let last = range.end.saturating_sub(1);
            let commented = self.comments_before(last, self.blocks);
            self.blocks = self.blocks.saturating_sub(1);
            if commented || !block.entries.is_empty() {
                self.page.begin_line(self.blocks);
            }
            self.page.write("}");
        }
        self.position = range.end;
    }

    /// Writes a block on the line it begins in; `false`, and nothing written, if it must not stay there.
    fn block_on_one_line(&mut self, block: &EntryBlock) -> bool {
        if !self.may_stay_on_one_line(block) {
            return false;
        }
        let (length, position) = (self.page.length(), self.position);
        for (index, entry) in block.entries.iter().enumerate() {
            self.page.write(if index == 0 { " " } else { ", " });
            self.entry(entry);
        }
        self.page.write(" }");
        let fits = self.page.width() <= ONE_LINE_WIDTH;
        if !fits {
            self.page.cut_back(length);
            self.position = position;
        }
        fits
    }

    fn may_stay_on_one_line(&self, block: &EntryBlock) -> bool {
        let stood_on_one_line = !breaks(self.text.get(block.span.range()).unwrap_or_default());
        let has_key = |entry: &Entry| entry.separator.is_some() && entry.key().is_some();
        stood_on_one_line
            && !block.entries.is_empty()
            && block.entries.iter().all(|entry| entry.block.is_none())
            && block.entries.iter().skip(1).all(has_key)
    }

    fn phrases(&mut self, phrases: &Phrases, before: Before) {
        for (index, phrase) in phrases.phrases.iter().enumerate() {
            if index > 0 {
                self.page.write(",");
            }
            self.phrase(phrase, if index > 0 { Before::Blank } else { before });
        }
    }

    fn phrase(&mut self, phrase: &Phrase, before: Before) {
        let mut word_before = None;
        for (index, term) in phrase.terms.iter().enumerate() {
            let before = if index > 0 { Before::Blank } else { before };
            // Behind a word `x`, a sign `x` would be read as a word and the word as the sign.
            let is_mistakable = matches!(word_before, Some("x" | "X"));
            if is_mistakable && matches!(term.kind, TermKind::Times) {
                self.word("×", term.span, before);
            } else {
                self.term(term, before);
            }
            word_before = term.word();
        }
    }

    fn term(&mut self, term: &Term, before: Before) {
        match &term.kind {
            TermKind::Name(word) => self.word(word, term.span, before),
            TermKind::Text(text) => self.word(&format!("\"{text}\""), term.span, before),
            TermKind::Times => self.word("x", term.span, before),
            TermKind::Number(_) => {
                let typed = self.clean.get(term.span.range()).unwrap_or_default();
                let number = spelling::number(typed);
                self.word(number.as_deref().unwrap_or(typed), term.span, before);
            }
            TermKind::Call(call) => self.call(call, term.span, before),
            TermKind::Point(places) => self.brackets(places, term.span, before),
            TermKind::Group(inner) => self.brackets(std::slice::from_ref(inner), term.span, before),
            TermKind::Negative(inner) => {
                self.word("-", term.span.start_of(), before);
                self.term(inner, Before::Nothing);
            }
            TermKind::Binary {
                operator,
                operator_span,
                left,
                right,
            } => {
                self.term(left, before);
                self.word(operator.sign(), *operator_span, Before::Blank);
                self.term(right, Before::Blank);
            }
            TermKind::Broken(_) => {
                let typed = self.text.get(term.span.range()).unwrap_or_default();
                self.word(typed, term.span, before);
            }
        }
    }

    fn call(&mut self, call: &Call, span: Span, before: Before) {
        self.word(&call.name.text, call.name.span, before);
        self.page.write("(");
        self.position = self.position.saturating_add(1);
        self.rounds = self.rounds.saturating_add(1);
        for (index, argument) in call.arguments.iter().enumerate() {
            let before = self.before_part(index);
            self.argument(argument, before);
        }
        self.close_round(span);
    }

    fn argument(&mut self, argument: &Argument, before: Before) {
        if let Some(name) = &argument.name {
            self.word(&name.text, name.span, before);
            self.page.write(" =");
        }
        if let Some(value) = &argument.value {
            let before = if argument.name.is_some() {
                Before::Blank
            } else {
                before
            };
            self.phrase(value, before);
        }
    }

    fn brackets(&mut self, terms: &[Term], span: Span, before: Before) {
        let start = span.range().start;
        self.sign(
            "(",
            start,
            start.saturating_add(1),
            self.continued(),
            before,
        );
        self.rounds = self.rounds.saturating_add(1);
        for (index, term) in terms.iter().enumerate() {
            let before = self.before_part(index);
            self.term(term, before);
        }
        self.close_round(span);
    }

    /// Parts the things within round brackets by commas.
    fn before_part(&mut self, index: usize) -> Before {
        if index == 0 {
            return Before::Nothing;
        }
        self.page.write(",");
        Before::Blank
    }

    fn close_round(&mut self, span: Span) {
        self.rounds = self.rounds.saturating_sub(1);
        let levels = self.blocks.saturating_add(self.rounds);
        let end = span.range().end;
        self.sign(")", end.saturating_sub(1), end, levels, Before::Nothing);
    }

    fn word(&mut self, word: &str, span: Span, before: Before) {
        let range = span.range();
        self.sign(word, range.start, range.end, self.continued(), before);
    }

    /// How far a line is set in that goes on with the one before.
    fn continued(&self) -> usize {
        self.blocks.saturating_add(self.rounds.max(1))
    }

    /// Writes what stands from `start` to `end`: on a line of its own, `levels` deep, if a comment
    /// goes before or its writer began a line there; otherwise after what is written.
    fn sign(&mut self, text: &str, start: usize, end: usize, levels: usize, before: Before) {
        let commented = self.comments_before(start, levels);
        let broken = text != "{" && breaks(self.gap_before(start));
        if commented || broken || before == Before::LineEnd {
            self.page.begin_line(levels);
        } else if before == Before::Blank {
            self.page.write(" ");
        }
        self.page.write(text);
        self.position = end;
    }

    /// Writes the comments before a place; `true` if there are any.
    fn comments_before(&mut self, place: usize, levels: usize) -> bool {
        let mut any = false;
        while let Some((comment, rest)) = self.comments.split_first() {
            let range = comment.span.range();
            if range.start >= place {
                break;
            }
            self.comment(comment, levels);
            self.comments = rest;
            self.position = self.position.max(range.end);
            any = true;
        }
        any
    }

    fn comment(&mut self, comment: &Comment, levels: usize) {
        let start = comment.span.range().start;
        let goes_on = self.position > 0 && !breaks(self.gap_before(start));
        if goes_on && self.page.comment(&comment.text) {
            return;
        }
        if self.has_empty_line_before(start) {
            self.page.leave_line();
        }
        self.page.begin_line(levels);
        self.page.comment(&comment.text);
    }

    /// What stands between the last thing written and a place.
    fn gap_before(&self, place: usize) -> &str {
        self.text.get(self.position..place).unwrap_or_default()
    }

    fn has_empty_line_before(&self, place: usize) -> bool {
        let gap = self.gap_before(place).replace("\r\n", "\n");
        gap.matches(['\n', '\r']).nth(1).is_some()
    }
}

/// After a comma, words with a `{` on their line would begin an entry of their own.
fn before_block(entry: &Entry) -> Before {
    match entry.value.as_ref().map(|value| value.phrases.as_slice()) {
        Some([_, .., last]) if last.words().is_some() => Before::LineEnd,
        _ => Before::Blank,
    }
}

fn breaks(text: &str) -> bool {
    text.contains(['\n', '\r'])
}
