//! Words with figures of a panel between curly brackets.

use pelmet_diagnostics::{PlacedText, Span, codes};
use pelmet_model::{Figure, Said, SentencePart};

use crate::reader::Reader;

/// A figure and where its name stands.
type PlacedFigure = (Figure, Span);

impl Reader<'_> {
    /// The parts of a text in quotes that stands at `span`, and its figures with their places. A
    /// figure that cannot be had is reported and left out.
    pub(super) fn words_with_figures(
        &mut self,
        text: &str,
        span: Span,
        said: Said,
    ) -> (Vec<SentencePart>, Vec<PlacedFigure>) {
        let (mut parts, mut figures) = (Vec::new(), Vec::new());
        let mut place = self.after_quote(span);
        let mut rest = text;
        while let Some(at) = rest.find(['{', '}']) {
            let (words, bracketed) = rest.split_at(at);
            place = advanced(place, words.len());
            parts.push(SentencePart::Words(words.to_owned()));
            let Some(name) = self.between_brackets(bracketed, place) else {
                return (parts, figures);
            };
            let inner = within(advanced(place, 1), name);
            if let Some(figure) = self.figure_said(name, inner, span, said) {
                parts.push(SentencePart::Figure(figure));
                figures.push((figure, inner));
            }
            let read = name.len().saturating_add(2);
            place = advanced(place, read);
            rest = bracketed.get(read..).unwrap_or_default();
        }
        parts.push(SentencePart::Words(rest.to_owned()));
        (parts, figures)
    }

    /// What stands between the bracket that a text begins with and the next; reported where that
    /// is not the other of the two.
    fn between_brackets<'s>(&mut self, text: &'s str, place: Span) -> Option<&'s str> {
        let one = Span {
            end: advanced(place, 1).start,
            ..place
        };
        let Some(inner) = text.strip_prefix('{') else {
            self.report(codes::brace_unmatched(one, false));
            return None;
        };
        match inner.find(['{', '}']) {
            Some(end) if inner.get(end..).is_some_and(|after| after.starts_with('}')) => {
                inner.get(..end)
            }
            _ => {
                self.report(codes::brace_unmatched(one, true));
                None
            }
        }
    }

    /// A figure named among the words at `words`, where it may be named there.
    fn figure_said(&mut self, name: &str, span: Span, words: Span, said: Said) -> Option<Figure> {
        let name = name.split_whitespace().collect::<Vec<_>>().join(" ");
        let figure = self.figure(&name, span)?;
        let Some(each) = figure.of_each() else {
            return Some(figure);
        };
        if said == Said::ForEach(each) {
            return Some(figure);
        }
        let bare = said == Said::Always;
        self.report(codes::FigureOutOfPlace {
            words,
            figure: PlacedText::new(span, name),
            each: each.word(),
            bare,
        });
        None
    }

    /// The place just after the quote that a text begins with, which may be a curly one.
    fn after_quote(&self, span: Span) -> Span {
        let quote = self.sources.snippet(span).chars().next();
        advanced(span.start_of(), quote.map_or(0, char::len_utf8))
    }
}

/// The empty place so many bytes on.
fn advanced(place: Span, bytes: usize) -> Span {
    let start = usize::try_from(place.start).unwrap_or(usize::MAX);
    let start = start.saturating_add(bytes);
    Span::new(place.file, start, start)
}

/// Where a name stands without the blanks around it.
fn within(place: Span, name: &str) -> Span {
    let trimmed = name.trim_start();
    let blanks = name.len().saturating_sub(trimmed.len());
    let start = advanced(place, blanks);
    let end = advanced(start, trimmed.trim_end().len());
    start.to(end)
}
