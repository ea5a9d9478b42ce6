//! Reading lengths, ranges, sizes, counts and plain words.

use num_traits::{Signed, Zero};
use pelmet_diagnostics::{Diagnostic, Fix, PlacedText, Span, codes, did_you_mean};
use pelmet_measure::{Dimension, Length, Quantity, Ratio, Unit, number_text};
use pelmet_model::Ranged;
use pelmet_syntax::tree::{Number, Term, TermKind};

use crate::closed_sets::ClosedSet;
use crate::cursor::Cursor;
use crate::evaluate::is_plain_number;
use crate::reader::{Followed, Reader};
use crate::scope::{Scope, Value};

/// The words a value can go on with after a length.
const AFTER_LENGTH: &[&str] = &[
    "across", "along", "at", "below", "clear", "deep", "down", "each", "from", "high", "ideally",
    "in", "longer", "narrower", "on", "shorter", "to", "toward", "up", "wide", "wider", "within",
];

/// What a length may be.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(crate) enum Sign {
    /// More than nothing.
    Positive,
    /// Nothing or more.
    NotNegative,
}

impl<'t> Reader<'t> {
    /// The next term; that it is missing is reported.
    pub fn next_term(
        &mut self,
        cursor: &mut Cursor<'t>,
        property: &str,
        can_be: &str,
    ) -> Option<&'t Term> {
        let term = cursor.next();
        if term.is_none() {
            self.value_unfinished(cursor.end(), property, can_be);
        }
        term
    }

    /// The one length that is the value of a property.
    pub fn length(&mut self, value: &Value<'t>, property: &str, sign: Sign) -> Option<Length> {
        let mut cursor = self.one_phrase(value, property, "a length")?;
        let length = self.length_at(&mut cursor, property, sign)?;
        self.nothing_more(&cursor, property, "one length")?;
        Some(length)
    }

    /// The length that comes next.
    pub fn length_at(
        &mut self,
        cursor: &mut Cursor<'t>,
        property: &str,
        sign: Sign,
    ) -> Option<Length> {
        let term = self.next_term(cursor, property, "a length")?;
        self.no_misspelt_unit(term, cursor)?;
        self.length_of(term, &cursor.scope.clone(), property, sign)
    }

    /// Reports the word after a plain number if it was meant as its unit: it is near to one, or no
    /// value goes on with it after a length. Zero needs no unit, so what follows it is seldom one.
    fn no_misspelt_unit(&mut self, term: &Term, cursor: &Cursor<'t>) -> Option<()> {
        let after = cursor
            .peek()
            .and_then(|after| Some((after.word()?, after.span)));
        let Some((word, span)) = after.filter(|_| is_plain_number(term)) else {
            return Some(());
        };
        // Words as short as `on` and `to` are near to many units and mean none.
        let near = did_you_mean(word, Unit::WORDS.iter().copied()).filter(|_| word.len() > 2);
        if near.is_none() && (is_zero(term) || AFTER_LENGTH.contains(&word)) {
            return Some(());
        }
        self.report(codes::unit_unknown(span, word, near));
        None
    }

    fn length_of(
        &mut self,
        term: &'t Term,
        scope: &Scope<'t>,
        property: &str,
        sign: Sign,
    ) -> Option<Length> {
        let amount = self.amount(term, scope)?;
        let length = self.length_from(amount, term, scope)?;
        self.signed(length, term.span, property, sign)
    }

    fn signed(&mut self, length: Length, span: Span, property: &str, sign: Sign) -> Option<Length> {
        let shown = self.shown(length);
        match sign {
            Sign::Positive if !length.is_positive() => {
                self.report(codes::LengthNotPositive {
                    span,
                    what: property,
                    length: &shown,
                });
                None
            }
            Sign::NotNegative if length.is_negative() => {
                self.report(codes::LengthNegative {
                    span,
                    what: property,
                    length: &shown,
                });
                None
            }
            _ => Some(length),
        }
    }

    /// Two lengths with a sign or word between them, the unit of the second serving both:
    /// `40 x 54 in`, `20 to 30 in`.
    fn length_pair(
        &mut self,
        first: &'t Term,
        second: &'t Term,
        scope: &Scope<'t>,
        property: &str,
    ) -> Option<(Length, Length)> {
        let borrowed = borrowed_unit(first, second);
        let one = match borrowed {
            Some(number) => {
                let quantity = Quantity::of(number.amount, number.unit?.0).ok();
                match quantity.and_then(|quantity| quantity.as_length().ok()) {
                    Some(length) => self.signed(length, first.span, property, Sign::Positive),
                    None => {
                        let limit = self.shown(Length::LARGEST);
                        self.report(codes::length_too_large(first.span, &limit));
                        None
                    }
                }
            }
            None => self.length_of(first, scope, property, Sign::Positive),
        };
        let other = self.length_of(second, scope, property, Sign::Positive);
        Some((one?, other?))
    }

    /// `3 in`, `3 in to 4 in`, `3 to 4 in ideally 3 1/2 in`.
    pub fn ranged_length(
        &mut self,
        cursor: &mut Cursor<'t>,
        property: &str,
    ) -> Option<Ranged<Length>> {
        let scope = cursor.scope.clone();
        let first = self.next_term(cursor, property, "a length")?;
        self.no_misspelt_unit(first, cursor)?;
        if !cursor.words(&["to"]) {
            return self
                .length_of(first, &scope, property, Sign::Positive)
                .map(Ranged::fixed);
        }
        let second = self.next_term(cursor, property, "a length")?;
        let pair = self.length_pair(first, second, &scope, property);
        let ideal = if cursor.words(&["ideally"]) {
            let span = cursor.peek().map(|term| term.span);
            let ideal = self.length_at(cursor, property, Sign::Positive)?;
            span.map(|span| (ideal, span))
        } else {
            None
        };
        let (least, most) = pair?;
        self.in_order((least, first.span), (most, second.span))?;
        self.ideal_within((least, most), first.span.to(second.span), ideal, property)
    }

    fn in_order(&mut self, first: (Length, Span), second: (Length, Span)) -> Option<()> {
        if first.0 <= second.0 {
            return Some(());
        }
        self.report(codes::RangeBackwards {
            first: PlacedText::new(first.1, self.shown(first.0)),
            second: PlacedText::new(second.1, self.shown(second.0)),
        });
        None
    }

    fn ideal_within(
        &mut self,
        (least, most): (Length, Length),
        range: Span,
        ideal: Option<(Length, Span)>,
        property: &str,
    ) -> Option<Ranged<Length>> {
        let middle = least + (most - least).divided(2);
        let Some((ideal, span)) = ideal else {
            return Some(Ranged::between(least, most, middle));
        };
        if ideal < least || ideal > most {
            self.report(codes::IdealOutsideRange {
                ideal: PlacedText::new(span, self.shown(ideal)),
                range,
                least: self.shown(least),
                most: self.shown(most),
                property,
            });
            return None;
        }
        Some(Ranged::between(least, most, ideal))
    }

    /// `40 in x 54 in`, `40 x 54 in`.
    pub fn size(&mut self, value: &Value<'t>, property: &str) -> Option<(Length, Length)> {
        let can_be = "a size, width x height";
        let mut cursor = self.one_phrase(value, property, can_be)?;
        let scope = cursor.scope.clone();
        let first = cursor.next()?;
        if !cursor.times() {
            let place = cursor.peek().map_or(first.span, |term| term.span);
            if !first.is_broken() {
                self.word_not_expected(place, property, can_be);
            }
            return None;
        }
        let second = self.next_term(&mut cursor, property, can_be)?;
        let pair = self.length_pair(first, second, &scope, property)?;
        self.nothing_more(&cursor, property, can_be)?;
        Some(pair)
    }

    /// A plain number with a sign of its own, not a length.
    pub fn plain_number(
        &mut self,
        cursor: &mut Cursor<'t>,
        property: &str,
    ) -> Option<(Ratio, Span)> {
        let scope = cursor.scope.clone();
        let term = self.next_term(cursor, property, "a number")?;
        let amount = self.amount(term, &scope)?;
        match amount.fixed.as_ratio() {
            Ok(number) if amount.is_fixed() => Some((number, term.span)),
            _ => {
                let found = amount.fixed.dimension.in_words();
                self.report(codes::KindWanted {
                    span: term.span,
                    wanted: "a plain number",
                    found,
                });
                None
            }
        }
    }

    /// A whole number of things, at least one.
    pub fn count(&mut self, cursor: &mut Cursor<'t>, property: &str) -> Option<(u32, Span)> {
        let scope = cursor.scope.clone();
        let term = self.next_term(cursor, property, "a count")?;
        let amount = self.amount(term, &scope)?;
        if amount.fixed.dimension != Dimension::NUMBER || !amount.is_fixed() {
            let found = amount.fixed.dimension.in_words();
            self.report(codes::KindWanted {
                span: term.span,
                wanted: "a count",
                found,
            });
            return None;
        }
        match amount.fixed.as_count() {
            Some(count) if count > 0 => Some((count, term.span)),
            _ => {
                let typed = number_text(amount.fixed.amount);
                self.report(codes::CountNotWhole {
                    span: term.span,
                    what: property,
                    number: &typed,
                    least: 1,
                });
                None
            }
        }
    }

    /// The member of a closed set that a value names.
    pub fn choice<T: ClosedSet>(&mut self, value: &Value<'t>, property: &str) -> Option<T> {
        let found = self.member(value);
        if found.is_none() {
            self.no_member::<T>(value, property);
        }
        found
    }

    /// The member of a closed set whose words a value is, and nothing more.
    fn member<T: ClosedSet>(&mut self, value: &Value<'t>) -> Option<T> {
        let Followed::Value(value) = self.follow(value) else {
            return None;
        };
        let [only] = value.phrases else {
            return None;
        };
        let mut cursor = Cursor::new(only, &value.scope);
        cursor.one_of().filter(|_| cursor.peek().is_none())
    }

    /// Reports a value that names no member of a closed set.
    fn no_member<T: ClosedSet>(&mut self, value: &Value<'t>, property: &str) {
        let can_be = T::in_words();
        let Some(mut cursor) = self.one_phrase(value, property, &can_be) else {
            return;
        };
        if cursor.one_of::<T>().is_some() {
            self.nothing_more(&cursor, property, &can_be);
        } else if !cursor.is_broken() {
            let known: Vec<&str> = T::ALL.iter().map(|one| one.word()).collect();
            self.none_of(cursor.span(), property, &can_be, &known);
        }
    }

    /// Reports a value that is none of its choices, with the one that was probably meant.
    fn none_of(&mut self, span: Span, property: &str, can_be: &str, choices: &[&str]) {
        let typed = self.sources.snippet(span);
        let near = did_you_mean(typed, choices.iter().copied());
        let diagnostic = Diagnostic::from(codes::WordNotExpected {
            span,
            found: typed,
            property,
            can_be,
        });
        self.report(match near {
            Some(near) => diagnostic
                .help(format!("did you mean `{near}`?"))
                .fix(Fix::replace(format!("write `{near}`"), span, near)),
            None => diagnostic,
        });
    }

    /// A percentage as a part of one: `3 %` is 0.03.
    pub fn part(&mut self, value: &Value<'t>, property: &str) -> Option<Ratio> {
        let mut cursor = self.one_phrase(value, property, "a percentage")?;
        let (part, span) = self.plain_number(&mut cursor, property)?;
        self.nothing_more(&cursor, property, "one percentage")?;
        if part.is_negative() || part >= Ratio::new_raw(1, 1) {
            self.part_out_of_range(span, property, part);
            return None;
        }
        Some(part)
    }

    /// Reports a part or a multiple that cannot be.
    pub fn part_out_of_range(&mut self, span: Span, property: &str, part: Ratio) {
        self.report(codes::PartOutOfRange {
            span,
            property,
            number: &number_text(part),
        });
    }
}

fn is_zero(term: &Term) -> bool {
    matches!(&term.kind, TermKind::Number(number) if number.amount.is_zero())
}

/// The first number with the unit of the second, where the first has none.
fn borrowed_unit(first: &Term, second: &Term) -> Option<Number> {
    match (&first.kind, &second.kind) {
        (
            TermKind::Number(Number { amount, unit: None }),
            TermKind::Number(Number {
                unit: Some(unit), ..
            }),
        ) => Some(Number {
            amount: *amount,
            unit: Some(*unit),
        }),
        _ => None,
    }
}
