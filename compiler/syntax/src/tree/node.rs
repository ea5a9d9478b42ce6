//! The part of a tree that a byte of its text lies in: what a hover or a completion begins with.

use super::{Argument, Comment, Entry, EntryBlock, Phrase, Phrases, SyntaxTree, Term, TermKind};

/// A part of a tree.
#[derive(Copy, Clone, Debug)]
pub enum Node<'t> {
    /// A comment, which no entry holds.
    Comment(&'t Comment),
    /// A property, item or step.
    Entry(&'t Entry),
    /// What stands before the separator of the entry.
    Head(&'t Phrases),
    /// What stands after the separator of the entry, or may come to stand there.
    Value(Option<&'t Phrases>),
    /// The entries within the braces of the entry.
    Block(&'t EntryBlock),
    /// A phrase of a head, of a value or of an argument.
    Phrase(&'t Phrase),
    /// A term, or a term within one.
    Term(&'t Term),
    /// An argument or a parameter of a call.
    Argument(&'t Argument),
}

impl SyntaxTree {
    /// The parts of the tree that hold a byte, each within the one before it; `text` is what the tree
    /// was read from.
    ///
    /// A part holds the byte after its last letter too, where one goes on writing it. So does an entry
    /// with the blanks behind it, and with the lines behind a comma at its end; a phrase goes on up to
    /// the next comma. A path that ends with a [`Node::Value`] says that a phrase may begin there, one
    /// that ends with a [`Node::Block`] that an entry may, and an empty path the same of the file. Behind
    /// a comma the next entry of a block may begin as well.
    #[must_use]
    pub fn nodes_at<'t>(&'t self, text: &'t str, byte: usize) -> Vec<Node<'t>> {
        let mut descent = Descent {
            text,
            comments: &self.comments,
            byte,
            nodes: Vec::new(),
        };
        descent.entries(&self.entries);
        descent.comment();
        descent.nodes
    }
}

/// The way down to a byte, as far as it is found.
struct Descent<'t> {
    text: &'t str,
    comments: &'t [Comment],
    byte: usize,
    nodes: Vec<Node<'t>>,
}

impl<'t> Descent<'t> {
    fn entries(&mut self, entries: &'t [Entry]) {
        let begun = entries.partition_point(|entry| entry.span.range().start <= self.byte);
        let last = begun.checked_sub(1).and_then(|last| entries.get(last));
        if let Some(entry) = last.filter(|entry| self.is_within(entry)) {
            self.entry(entry);
        }
    }

    /// Whether an entry that begins before the byte holds it.
    fn is_within(&self, entry: &Entry) -> bool {
        let end = entry.span.range().end;
        self.byte <= end || entry.block.is_none() && self.goes_on_from(end)
    }

    fn entry(&mut self, entry: &'t Entry) {
        self.nodes.push(Node::Entry(entry));
        match &entry.block {
            Some(block) if block.span.range().start < self.byte => {
                if self.is_between_braces(block) {
                    self.nodes.push(Node::Block(block));
                    self.entries(&block.entries);
                }
            }
            _ if self.is_after_separator(entry) => {
                self.nodes.push(Node::Value(entry.value.as_ref()));
                entry.value.iter().for_each(|value| self.phrases(value));
            }
            _ => {
                self.nodes.push(Node::Head(&entry.head));
                self.phrases(&entry.head);
            }
        }
    }

    /// A block that is never closed goes on to the end of the text.
    fn is_between_braces(&self, block: &EntryBlock) -> bool {
        let is_closed = self.written(block.span.range()).ends_with('}');
        !is_closed || self.byte < block.span.range().end
    }

    fn is_after_separator(&self, entry: &Entry) -> bool {
        let head_end = entry.head.span.range().end;
        let written = self.written(head_end..entry.span.range().end);
        let sign = written
            .find([':', '='])
            .filter(|_| entry.separator.is_some());
        sign.is_some_and(|sign| head_end.saturating_add(sign) < self.byte)
    }

    fn phrases(&mut self, phrases: &'t Phrases) {
        let begun = |phrase: &&Phrase| phrase.span.range().start <= self.byte;
        let last = phrases.phrases.iter().take_while(begun).last();
        if let Some(phrase) = last.filter(|phrase| !self.is_comma_after(phrase)) {
            self.phrase(phrase);
        }
    }

    fn is_comma_after(&self, phrase: &Phrase) -> bool {
        let end = phrase.span.range().end;
        self.between(end).is_some_and(|gap| gap.contains(','))
    }

    fn phrase(&mut self, phrase: &'t Phrase) {
        self.nodes.push(Node::Phrase(phrase));
        self.terms(&phrase.terms);
    }

    fn terms(&mut self, terms: impl IntoIterator<Item = &'t Term>) {
        let holds = |term: &&Term| {
            let range = term.span.range();
            range.start <= self.byte && self.byte <= range.end
        };
        // Of two terms that touch the byte it is the second that begins there.
        if let Some(term) = terms.into_iter().filter(holds).last() {
            self.term(term);
        }
    }

    fn term(&mut self, term: &'t Term) {
        self.nodes.push(Node::Term(term));
        match &term.kind {
            TermKind::Call(call) => self.arguments(&call.arguments),
            TermKind::Point(places) => self.terms(places),
            TermKind::Group(inner) | TermKind::Negative(inner) => self.terms([&**inner]),
            TermKind::Binary { left, right, .. } => self.terms([&**left, &**right]),
            TermKind::Number(_)
            | TermKind::Name(_)
            | TermKind::Text(_)
            | TermKind::Times
            | TermKind::Broken(_) => {}
        }
    }

    fn arguments(&mut self, arguments: &'t [Argument]) {
        let holds = |argument: &&Argument| {
            let range = argument.span.range();
            range.start <= self.byte && self.byte <= range.end
        };
        let Some(argument) = arguments.iter().find(holds) else {
            return;
        };
        self.nodes.push(Node::Argument(argument));
        let value = argument.value.as_ref();
        if let Some(value) = value.filter(|value| value.span.range().start <= self.byte) {
            self.phrase(value);
        }
    }

    fn comment(&mut self) {
        let holds = |comment: &&Comment| {
            let range = comment.span.range();
            range.start < self.byte && self.byte <= range.end
        };
        let comment = self.comments.iter().find(holds);
        self.nodes.extend(comment.map(Node::Comment));
    }

    /// Whether what ends at `end` goes on up to the byte: in the same line, or behind a comma.
    fn goes_on_from(&self, end: usize) -> bool {
        self.between(end)
            .is_some_and(|gap| gap.contains(',') || !gap.contains(['\n', '\r']))
    }

    /// What stands from `end` up to the byte if it is only blanks, line ends and commas; comments are
    /// left out.
    fn between(&self, end: usize) -> Option<String> {
        let mut gap = String::new();
        let mut from = end;
        let first = self
            .comments
            .partition_point(|comment| comment.span.range().end <= end);
        for comment in self.comments.iter().skip(first) {
            let range = comment.span.range();
            if range.start >= self.byte {
                break;
            }
            gap.push_str(self.written(from..range.start));
            from = range.end;
        }
        gap.push_str(self.written(from..self.byte));
        gap.chars()
            .all(|letter| letter.is_whitespace() || letter == ',')
            .then_some(gap)
    }

    fn written(&self, range: std::ops::Range<usize>) -> &'t str {
        self.text.get(range).unwrap_or_default()
    }
}
