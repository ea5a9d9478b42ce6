//! Which terms of a phrase stand for which parts of the form it is written in.

use pelmet_syntax::tree::{Term, TermKind};

use crate::form::{Form, FormPart, RANGE};
use crate::read::unit_of_length;

/// A part of a form, and the terms it is written with.
#[derive(Copy, Clone)]
pub(super) struct Filled<'t> {
    pub part: FormPart,
    pub terms: &'t [Term],
    /// The words of the language that the terms are, where they are any.
    pub words: Option<&'static str>,
}

/// How the terms of a phrase fill the form among these that it was probably meant for: the one that
/// takes in most of them. What it takes in no more is left out.
pub(super) fn fill<'t>(forms: impl Iterator<Item = Form>, terms: &'t [Term]) -> Vec<Filled<'t>> {
    let mut best = Best::default();
    for form in forms {
        let rest = Rest {
            parts: form,
            after: None,
        };
        best.go_on(Some(&rest), terms, &mut Vec::new());
    }
    best.filled
}

/// Parts still to be filled, and those after them.
struct Rest<'r> {
    parts: Form,
    after: Option<&'r Rest<'r>>,
}

/// The best way found so far.
#[derive(Default)]
struct Best<'t> {
    filled: Vec<Filled<'t>>,
    /// How many terms it takes in, whether the form is whole, and how many of the terms are words of
    /// the language: `none` is rather the word than the name of something.
    merit: (usize, bool, usize),
}

impl<'t> Best<'t> {
    /// Fills what is left of a form in every way, and keeps the best.
    fn go_on(&mut self, rest: Option<&Rest<'_>>, terms: &'t [Term], filled: &mut Vec<Filled<'t>>) {
        let Some(Rest { parts, after }) = rest else {
            self.offer(filled, true);
            return;
        };
        let Some((part, others)) = parts.split_first() else {
            self.go_on(*after, terms, filled);
            return;
        };
        let others = Rest {
            parts: others,
            after: *after,
        };
        match part {
            FormPart::Perhaps(inner) => {
                let inner = Rest {
                    parts: inner,
                    after: Some(&others),
                };
                self.go_on(Some(&inner), terms, filled);
                self.go_on(Some(&others), terms, filled);
            }
            FormPart::Range => {
                let range = Rest {
                    parts: RANGE,
                    after: Some(&others),
                };
                self.go_on(Some(&range), terms, filled);
            }
            part => self.with(*part, &others, terms, filled),
        }
    }

    /// Fills one part with as many terms as it may take, and goes on behind them.
    fn with(
        &mut self,
        part: FormPart,
        others: &Rest<'_>,
        terms: &'t [Term],
        filled: &mut Vec<Filled<'t>>,
    ) {
        self.offer(filled, false);
        let mut go_on = |count: usize, words| {
            let Some((taken, rest)) = terms.split_at_checked(count) else {
                return;
            };
            filled.push(Filled {
                part,
                terms: taken,
                words,
            });
            self.go_on(Some(others), rest, filled);
            filled.pop();
        };
        let mut say = |words: &'static str| {
            if let Some(count) = said(words, terms) {
                go_on(count, Some(words));
            }
        };
        match part {
            FormPart::Words(words) => say(words),
            FormPart::AnyOf(choices) => choices.iter().copied().for_each(say),
            FormPart::OneOf(set) => set.words().for_each(say),
            FormPart::Subject => {
                (1..=words_ahead(terms).min(2)).for_each(|count| go_on(count, None));
            }
            FormPart::StepName | FormPart::OwnWords | FormPart::Figure => {
                (1..=words_ahead(terms)).for_each(|count| go_on(count, None));
            }
            part => {
                if terms.first().is_some_and(|term| can_be(part, term)) {
                    go_on(1, None);
                }
            }
        }
    }

    fn offer(&mut self, filled: &[Filled<'t>], is_whole: bool) {
        let terms = filled.iter().map(|part| part.terms.len()).sum();
        let said = filled.iter().filter(|part| part.words.is_some());
        let words = said.map(|part| part.terms.len()).sum();
        let merit = (terms, is_whole, words);
        if merit > self.merit {
            self.merit = merit;
            self.filled = filled.to_vec();
        }
    }
}

/// How many terms these words take up, if the terms begin with them.
pub(super) fn said(words: &str, terms: &[Term]) -> Option<usize> {
    let mut count: usize = 0;
    for word in words.split(' ') {
        if terms.get(count)?.word() != Some(word) {
            return None;
        }
        count = count.saturating_add(1);
    }
    Some(count)
}

fn words_ahead(terms: &[Term]) -> usize {
    terms.iter().map_while(Term::word).count()
}

/// Whether a term can be written for a part that is one term; what could not be read may be anything.
fn can_be(part: FormPart, term: &Term) -> bool {
    if matches!(term.kind, TermKind::Broken(_)) {
        return true;
    }
    match part {
        FormPart::Length
        | FormPart::Count
        | FormPart::Number
        | FormPart::Percentage
        | FormPart::Weight
        | FormPart::WeightOfArea
        | FormPart::Sum => matches!(
            term.kind,
            TermKind::Number(_)
                | TermKind::Name(_)
                | TermKind::Group(_)
                | TermKind::Negative(_)
                | TermKind::Binary { .. }
        ),
        FormPart::Unit => unit_of_length(term).is_some(),
        FormPart::Times => matches!(term.kind, TermKind::Times),
        FormPart::Point => matches!(term.kind, TermKind::Point(_)),
        FormPart::Name(_) => matches!(term.kind, TermKind::Name(_) | TermKind::Call(_)),
        FormPart::Panel | FormPart::LibraryFile | FormPart::Warning => term.word().is_some(),
        FormPart::Text | FormPart::Sentence | FormPart::Path => {
            matches!(term.kind, TermKind::Text(_))
        }
        FormPart::Words(_)
        | FormPart::AnyOf(_)
        | FormPart::OneOf(_)
        | FormPart::Range
        | FormPart::Subject
        | FormPart::StepName
        | FormPart::Figure
        | FormPart::OwnWords
        | FormPart::Perhaps(_) => false,
    }
}
