//! Phrases, terms and sums.

use std::sync::LazyLock;

use pelmet_diagnostics::{Span, codes};
use pest::iterators::Pair;
use pest::pratt_parser::{Assoc, Op, PrattParser};

use super::{Lowering, broken, names_at};
use crate::MAXIMUM_OPERATORS;
use crate::grammar::Rule;
use crate::tree::{Argument, Call, Name, Operator, Phrase, Phrases, Term, TermKind};

/// Multiplying and dividing go before adding and subtracting, and all from left to right.
static PRECEDENCE: LazyLock<PrattParser<Rule>> = LazyLock::new(|| {
    PrattParser::new()
        .op(Op::infix(Rule::add, Assoc::Left) | Op::infix(Rule::subtract, Assoc::Left))
        .op(Op::infix(Rule::multiply, Assoc::Left) | Op::infix(Rule::divide, Assoc::Left))
});

impl Lowering<'_, '_> {
    pub(super) fn phrases(&mut self, pair: Pair<'_, Rule>) -> Phrases {
        let span = self.place(&pair);
        let phrases = listed(pair.into_inner().map(|phrase| self.phrase(phrase)));
        Phrases { phrases, span }
    }

    fn phrase(&mut self, pair: Pair<'_, Rule>) -> Phrase {
        let span = self.place(&pair);
        let terms = listed(pair.into_inner().map(|term| self.term_or_times(term)));
        Phrase { terms, span }
    }

    fn term_or_times(&mut self, pair: Pair<'_, Rule>) -> Term {
        match pair.as_rule() {
            Rule::times | Rule::times_tight => Term {
                kind: TermKind::Times,
                span: self.place(&pair),
            },
            _ => self.term(pair),
        }
    }

    fn term(&mut self, pair: Pair<'_, Rule>) -> Term {
        let span = self.place(&pair);
        let parts = pair.into_inner();
        let signs = || {
            parts
                .clone()
                .filter(|part| operator(part.as_rule()).is_some())
        };
        if signs().count() > MAXIMUM_OPERATORS {
            self.diagnostics
                .push(codes::sum_too_long(span, MAXIMUM_OPERATORS));
            return broken(span, parts.as_str());
        }
        if let Some(minus) = signs().find(|sign| sign.as_rule() == Rule::minus_tight) {
            let minus = self.place(&minus);
            self.diagnostics.push(codes::minus_unclear(minus));
            return broken(span, parts.as_str());
        }
        let source = self.source;
        PRECEDENCE
            .map_primary(|operand| self.operand(operand))
            .map_infix(|left, sign, right| sum(left, &sign, source.place(sign.as_span()), right))
            .parse(parts)
    }

    fn operand(&mut self, pair: Pair<'_, Rule>) -> Term {
        let span = self.place(&pair);
        let kind = match pair.as_rule() {
            Rule::number => self.number(pair),
            Rule::named => self.named(pair),
            Rule::text => TermKind::Text(unquoted(self.source.words(pair.as_span())).to_owned()),
            Rule::brackets => self.brackets(pair),
            Rule::negative => self.negative(pair),
            _ => {
                self.tell_not_understood(span);
                return broken(span, pair.as_str());
            }
        };
        Term { kind, span }
    }

    fn negative(&mut self, pair: Pair<'_, Rule>) -> TermKind {
        match pair.into_inner().next() {
            Some(inner) => TermKind::Negative(Box::new(self.operand(inner))),
            None => TermKind::Broken(Vec::new()),
        }
    }

    fn brackets(&mut self, pair: Pair<'_, Rule>) -> TermKind {
        let mut terms: Vec<Term> = pair.into_inner().map(|term| self.term(term)).collect();
        match (terms.len(), terms.pop()) {
            (1, Some(only)) => TermKind::Group(Box::new(only)),
            (_, Some(last)) => {
                terms.push(last);
                TermKind::Point(terms)
            }
            (_, None) => TermKind::Broken(Vec::new()),
        }
    }

    /// A name, alone or with arguments.
    fn named(&mut self, pair: Pair<'_, Rule>) -> TermKind {
        let mut parts = pair.into_inner();
        let Some(name) = parts.next().map(|name| self.name(&name)) else {
            return TermKind::Broken(Vec::new());
        };
        let Some(rest) = parts.next() else {
            return TermKind::Name(name.text);
        };
        if rest.as_rule() == Rule::arguments {
            let arguments = rest
                .into_inner()
                .map(|argument| self.argument(argument))
                .collect();
            return TermKind::Call(Call { name, arguments });
        }
        let place = self.place(&rest);
        self.tell_not_understood(place);
        let names = std::iter::once(name).chain(names_at(place, rest.as_str()));
        TermKind::Broken(names.collect())
    }

    fn argument(&mut self, pair: Pair<'_, Rule>) -> Argument {
        let span = self.place(&pair);
        let mut argument = Argument {
            name: None,
            value: None,
            span,
        };
        for part in pair.into_inner() {
            match part.as_rule() {
                Rule::label => {
                    argument.name = part.into_inner().next().map(|name| self.name(&name));
                }
                _ => argument.value = Some(self.phrase(part)),
            }
        }
        argument
    }

    fn name(&self, pair: &Pair<'_, Rule>) -> Name {
        Name {
            text: pair.as_str().to_owned(),
            span: self.place(pair),
        }
    }
}

/// What a sign of the grammar does; a minus that touches the next value has no agreed meaning and is
/// reported before it would get one.
fn operator(rule: Rule) -> Option<Operator> {
    match rule {
        Rule::add => Some(Operator::Add),
        Rule::subtract | Rule::minus_tight => Some(Operator::Subtract),
        Rule::multiply => Some(Operator::Multiply),
        Rule::divide => Some(Operator::Divide),
        _ => None,
    }
}

fn sum(left: Term, sign: &Pair<'_, Rule>, operator_span: Span, right: Term) -> Term {
    let span = left.span.to(right.span);
    let (left, right) = (Box::new(left), Box::new(right));
    let kind = match operator(sign.as_rule()) {
        Some(operator) => TermKind::Binary {
            operator,
            operator_span,
            left,
            right,
        },
        None => TermKind::Broken(Vec::new()),
    };
    Term { kind, span }
}

/// A list with no room to grow: most have one member, and a file has very many of them.
fn listed<T>(members: impl ExactSizeIterator<Item = T>) -> Vec<T> {
    let mut list = Vec::with_capacity(members.len());
    list.extend(members);
    list
}

/// A text without the letter it begins with and the one it ends with.
fn unquoted(text: &str) -> &str {
    let mut letters = text.chars();
    letters.next();
    letters.next_back();
    letters.as_str()
}
