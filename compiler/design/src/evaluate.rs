//! Evaluating expressions, with every quantity's kind checked at the sign that joins them.

use num_traits::Zero;
use pelmet_diagnostics::{Diagnostic, PlacedText, Span, codes, did_you_mean};
use pelmet_measure::{Dimension, Length, Quantity, QuantityFinding, Ratio, System, Unit};
use pelmet_syntax::tree::{Number, Operator, Phrase, Term, TermKind};

use crate::amount::{Amount, AmountFinding};
use crate::kind::Kind;
use crate::reader::Reader;
use crate::scope::{Binding, Scope, Value, Written};

impl<'t> Reader<'t> {
    /// What an expression comes to.
    pub fn amount(&mut self, term: &'t Term, scope: &Scope<'t>) -> Option<Amount> {
        match &term.kind {
            TermKind::Number(number) => self.number(number, term.span),
            TermKind::Name(name) => self.named_amount(name, term.span, scope),
            TermKind::Group(inner) => self.amount(inner, scope),
            TermKind::Negative(inner) => {
                let inner = self.amount(inner, scope)?;
                self.reckoned(inner.negated(), term.span)
            }
            TermKind::Binary {
                operator,
                operator_span,
                left,
                right,
            } => self.binary((*operator, *operator_span), left, right, scope),
            TermKind::Broken(_) => None,
            TermKind::Text(_) | TermKind::Call(_) | TermKind::Point(_) | TermKind::Times => {
                self.word_not_expected(term.span, "a sum", "a length, a number or a name");
                None
            }
        }
    }

    fn number(&mut self, number: &Number, span: Span) -> Option<Amount> {
        let quantity = match number.unit {
            Some((unit, _)) => Quantity::of(number.amount, unit),
            None => Ok(Quantity::number(number.amount)),
        };
        self.reckoned(
            quantity.map(Amount::fixed).map_err(AmountFinding::from),
            span,
        )
    }

    fn named_amount(&mut self, name: &str, span: Span, scope: &Scope<'t>) -> Option<Amount> {
        match scope.find(name) {
            Some((Binding::Known(amount), _)) => Some(amount),
            Some((Binding::Unknown, _)) => None,
            Some((Binding::Given(value), _)) => self.amount_of(&value),
            Some((Binding::Here(written), binder)) => self.amount_of(&written.within(&binder)),
            Some((Binding::Absent(property), _)) => {
                self.report(codes::NameNeedsProperty {
                    span,
                    name,
                    property,
                });
                None
            }
            None => self.measure(name, span, scope),
        }
    }

    fn measure(&mut self, name: &str, span: Span, scope: &Scope<'t>) -> Option<Amount> {
        let definitions = self.definitions;
        if let Some(item) = definitions.item(Kind::Measure, name) {
            self.used.insert((Kind::Measure, item.name));
            let written: Written<'t> = *item.measures.get(item.name)?;
            return self.amount_of(&written.within(&Scope::default()));
        }
        if let Some(kind) = definitions.kinds_named(name).next() {
            let described = definitions.item(kind, name).map(|item| item.name_span);
            self.report(codes::NameWrongKind {
                used: span,
                name,
                found: kind.noun(),
                wanted: "measure",
                described,
            });
            return None;
        }
        let known = scope
            .names()
            .into_iter()
            .chain(definitions.names(Kind::Measure));
        let suggestion = did_you_mean(name, known);
        if self.may_be_unread(name, suggestion.as_deref(), None) {
            return None;
        }
        self.report(codes::NameUnknown {
            span,
            noun: "measure",
            word: "measure",
            name,
            suggestion,
        });
        None
    }

    /// What a value of one expression comes to.
    pub fn amount_of(&mut self, value: &Value<'t>) -> Option<Amount> {
        self.one_deeper(value.span, |reader| {
            let mut cursor = reader.one_phrase(value, "a sum", "a length or a number")?;
            let term = cursor.next()?;
            let amount = reader.amount(term, &cursor.scope.clone())?;
            reader.nothing_more(&cursor, "a sum", "one length or one number")?;
            Some(amount)
        })
    }

    fn binary(
        &mut self,
        (operator, operator_span): (Operator, Span),
        left: &'t Term,
        right: &'t Term,
        scope: &Scope<'t>,
    ) -> Option<Amount> {
        let (first, second) = (self.amount(left, scope), self.amount(right, scope));
        let (first, second) = (first?, second?);
        let adds = matches!(operator, Operator::Add | Operator::Subtract);
        let (first, second) = if adds {
            (self.zero_as(first, second), self.zero_as(second, first))
        } else {
            (first, second)
        };
        match first.reckon(operator, second) {
            Err(AmountFinding::Quantity(QuantityFinding::Mismatch {
                left: one,
                right: other,
            })) => {
                self.mismatch(
                    (operator, operator_span),
                    (left, one),
                    (right, other),
                    scope,
                );
                None
            }
            reckoned => self.reckoned(reckoned, left.span.to(right.span)),
        }
    }

    /// Nothing is nothing in any unit: a plain 0 beside a length is a length.
    fn zero_as(&self, amount: Amount, other: Amount) -> Amount {
        let plain_zero =
            amount.fixed.dimension == Dimension::NUMBER && amount.fixed.amount.is_zero();
        if plain_zero && amount.is_fixed() {
            return Amount::fixed(Quantity {
                amount: Ratio::zero(),
                dimension: other.fixed.dimension,
            });
        }
        amount
    }

    fn mismatch(
        &mut self,
        (operator, operator_span): (Operator, Span),
        (left, left_kind): (&'t Term, Dimension),
        (right, right_kind): (&'t Term, Dimension),
        scope: &Scope<'t>,
    ) {
        for (term, kind, other) in [
            (left, left_kind, right_kind),
            (right, right_kind, left_kind),
        ] {
            if kind == Dimension::NUMBER
                && other == Dimension::LENGTH
                && let Some(literal) = self.literal(term, scope)
            {
                self.unit_missing(literal);
                return;
            }
        }
        let sign = operator.sign().chars().next().unwrap_or(' ');
        self.report(codes::KindMismatch {
            operator: operator_span,
            sign,
            left: PlacedText::new(left.span, left_kind.in_words()),
            right: PlacedText::new(right.span, right_kind.in_words()),
        });
    }

    fn reckoned(&mut self, amount: Result<Amount, AmountFinding>, span: Span) -> Option<Amount> {
        amount
            .map_err(|finding| self.report_finding(&finding, span))
            .ok()
    }

    fn report_finding(&mut self, finding: &AmountFinding, span: Span) {
        let diagnostic: Diagnostic = match finding {
            AmountFinding::NotInProportion => codes::width_not_in_proportion(span),
            AmountFinding::Quantity(QuantityFinding::TooLarge) => codes::number_too_large(span),
            AmountFinding::Quantity(QuantityFinding::DividedByZero) => {
                codes::fraction_over_zero(span)
            }
            AmountFinding::Quantity(QuantityFinding::Mismatch { left, right }) => {
                codes::KindWanted {
                    span,
                    wanted: right.in_words(),
                    found: left.in_words(),
                }
                .into()
            }
        };
        self.report(diagnostic);
    }

    /// Reports a plain number where a length is wanted, with the unit this house would write.
    pub fn unit_missing(&mut self, span: Span) {
        let unit = match self.style.system {
            System::Inches => Unit::Inch.symbol(),
            System::Metric => Unit::Millimetre.symbol(),
        };
        let typed = self.sources.snippet(span);
        self.report(codes::UnitMissing {
            number: span,
            typed,
            unit,
        });
    }

    /// The place of the plain number that a term is or stands for, where it is nothing more.
    pub fn literal(&mut self, term: &'t Term, scope: &Scope<'t>) -> Option<Span> {
        if is_plain_number(term) {
            return Some(term.span);
        }
        let name = term.word()?;
        let value = match scope.find(name) {
            Some((Binding::Given(value), _)) => value,
            Some((Binding::Here(written), binder)) => written.within(&binder),
            Some(_) => return None,
            None => {
                let item = self.definitions.item(Kind::Measure, name)?;
                item.measures.get(item.name)?.within(&Scope::default())
            }
        };
        match value.phrases {
            [Phrase { terms, .. }] => match terms.as_slice() {
                [only] => self.one_deeper(value.span, |reader| reader.literal(only, &value.scope)),
                _ => None,
            },
            _ => None,
        }
    }

    /// The length that the `amount` of a term is, which must not follow a width.
    pub fn length_from(
        &mut self,
        amount: Amount,
        term: &'t Term,
        scope: &Scope<'t>,
    ) -> Option<Length> {
        if !amount.is_fixed() {
            self.report(codes::width_not_in_proportion(term.span));
            return None;
        }
        self.fixed_length(amount, term, scope)
    }

    /// The fixed part of the `amount` of a term as a length.
    pub fn fixed_length(
        &mut self,
        amount: Amount,
        term: &'t Term,
        scope: &Scope<'t>,
    ) -> Option<Length> {
        let quantity = amount.fixed;
        if quantity.dimension == Dimension::NUMBER && quantity.amount.is_zero() {
            return Some(Length::ZERO);
        }
        match quantity.as_length() {
            Ok(length) => return Some(length),
            Err(QuantityFinding::TooLarge) => {
                let limit = self.shown(Length::LARGEST);
                self.report(codes::length_too_large(term.span, &limit));
            }
            Err(_) => self.length_wanted(quantity.dimension, term, scope),
        }
        None
    }

    fn length_wanted(&mut self, found: Dimension, term: &'t Term, scope: &Scope<'t>) {
        let literal = (found == Dimension::NUMBER)
            .then(|| self.literal(term, scope))
            .flatten();
        match literal {
            Some(literal) => self.unit_missing(literal),
            None => self.report(codes::KindWanted {
                span: term.span,
                wanted: "a length",
                found: found.in_words(),
            }),
        }
    }
}

/// Whether a term is a number without a unit.
pub(crate) fn is_plain_number(term: &Term) -> bool {
    match &term.kind {
        TermKind::Number(number) => number.unit.is_none(),
        TermKind::Negative(inner) => is_plain_number(inner),
        _ => false,
    }
}
