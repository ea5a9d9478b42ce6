//! Reading outlines.

use std::collections::BTreeMap;

use num_traits::{CheckedSub, Zero};
use pelmet_diagnostics::{Span, codes};
use pelmet_measure::{Length, Quantity, Ratio};
use pelmet_model::{Outline, OutlineStep, Proportion};
use pelmet_syntax::tree::{Term, TermKind};

use crate::amount::Amount;
use crate::closed_sets::{ClosedSet, Drawn, KnownName};
use crate::cursor::Cursor;
use crate::item::{Item, Step};
use crate::kind::Kind;
use crate::reader::Reader;
use crate::reference::Referred;
use crate::scope::{Binding, Scope};

/// An outline with the place of each of its steps.
pub(crate) type PlacedOutline = (Outline, Vec<Span>);

const POINT: &str = "a point, such as `(3 in, drop)`";

impl<'t> Reader<'t> {
    /// An outline for a panel of this drop; `None` as the drop where it is not known.
    pub fn outline(
        &mut self,
        referred: &Referred<'t>,
        drop: Option<Length>,
    ) -> Option<PlacedOutline> {
        let chain = self.copies(referred.item, &referred.scope, &[])?;
        let half = self.half(referred.item);
        // A copy without steps of its own is drawn as what it copies.
        let (drawn, scope) = chain
            .iter()
            .find(|(item, _)| !item.steps.is_empty())
            .or(chain.first())?;
        let half = if drawn.name == referred.item.name {
            half
        } else {
            self.half(drawn)
        }?;
        if drawn.steps.is_empty() {
            if !drawn.damaged {
                self.report(codes::outline_empty(drawn.place(), drawn.name));
            }
            return None;
        }
        let scope = within_outline(scope, drop);
        let mut outline = Outline {
            name: referred.item.name.to_owned(),
            half,
            steps: vec![],
            names: BTreeMap::new(),
        };
        let mut spans = Vec::new();
        let mut sound = !drawn.damaged;
        for (number, step) in drawn.steps.iter().enumerate() {
            match self.outline_step(step, &scope) {
                Some((read, name)) => {
                    outline.steps.push(read);
                    let named = name.map(|name| (number, name.to_owned()));
                    outline.names.extend(named);
                }
                None => sound = false,
            }
            spans.push(step.span());
        }
        sound.then_some((outline, spans))
    }

    fn half(&mut self, item: &'t Item<'t>) -> Option<bool> {
        let drawn = match item.manner.as_slice() {
            [] => Some(Drawn::Whole),
            [[only]] => only.word().and_then(Drawn::of_word),
            _ => None,
        };
        if drawn.is_none() {
            let terms = item.manner.first()?;
            let place = terms.first()?.span;
            if !terms.iter().any(Term::is_broken) {
                self.word_not_expected(place, "outline", &Drawn::in_words());
            }
        }
        drawn.map(|drawn| drawn == Drawn::Half)
    }

    /// A step, and the name it gives to the point where it ends.
    fn outline_step(
        &mut self,
        step: &Step<'t>,
        scope: &Scope<'t>,
    ) -> Option<(OutlineStep, Option<&'t str>)> {
        let Step::Plain { phrases, span } = step else {
            return None;
        };
        let phrases = phrases.iter().map(|phrase| Cursor::new(phrase, scope));
        let mut phrases: Vec<Cursor<'t>> = phrases.collect();
        let name = phrases.last_mut().and_then(Cursor::name_given);
        phrases.retain(|phrase| phrase.peek().is_some());
        let mut phrases = phrases.into_iter();
        let mut first = phrases.next()?;
        let others = phrases.collect();
        let Some((word, _)) = first
            .any_word()
            .filter(|(word, _)| Kind::Outline.has_step(word))
        else {
            self.report(codes::not_understood(*span));
            return None;
        };
        let read = match word {
            "notch" => self.notch(first, others),
            "arc" => self.arc(first, others),
            "curve" => self.curve(first, others),
            "scallops" => self.scallops(first, others),
            _ => self.one_line(word, first, others),
        };
        Some((read?, name))
    }

    fn one_line(
        &mut self,
        word: &str,
        mut cursor: Cursor<'t>,
        others: Vec<Cursor<'t>>,
    ) -> Option<OutlineStep> {
        let read = self.line(word, &mut cursor)?;
        self.nothing_more(&cursor, word, goes(word))?;
        self.no_more_phrases(others, word, goes(word))?;
        Some(read)
    }

    pub(super) fn no_more_phrases(
        &mut self,
        others: Vec<Cursor<'t>>,
        word: &str,
        can_be: &str,
    ) -> Option<()> {
        match others.into_iter().next() {
            None => Some(()),
            Some(more) => {
                self.word_not_expected(more.span(), word, can_be);
                None
            }
        }
    }

    fn line(&mut self, word: &str, cursor: &mut Cursor<'t>) -> Option<OutlineStep> {
        let nothing = Proportion::fixed(Length::ZERO);
        match word {
            "from" => self
                .point(cursor, word)
                .map(|(across, down)| OutlineStep::From { across, down }),
            "to" => self
                .point(cursor, word)
                .map(|(across, down)| OutlineStep::To { across, down }),
            "up" if cursor.words(&["to", "heading"]) => Some(OutlineStep::UpToHeading),
            "across" | "back" => {
                let across = self.proportion_at(cursor, word)?;
                let across = if word == "back" {
                    turned(across)
                } else {
                    across
                };
                Some(OutlineStep::By {
                    across,
                    down: nothing,
                })
            }
            _ => {
                let down = self.proportion_at(cursor, word)?;
                let down = if word == "up" { turned(down) } else { down };
                Some(OutlineStep::By {
                    across: nothing,
                    down,
                })
            }
        }
    }

    /// `notch at (12 in, drop), 2 in wide, 1 in deep, square`.
    fn notch(&mut self, mut first: Cursor<'t>, others: Vec<Cursor<'t>>) -> Option<OutlineStep> {
        const NOTCH: &str = "`at` a point, a length `wide`, a length `deep`, perhaps `square`";
        let place = first.end();
        if !first.words(&["at"]) {
            self.word_not_expected(first.peek().map_or(place, |term| term.span), "notch", NOTCH);
            return None;
        }
        let (across, down) = self.point(&mut first, "notch")?;
        self.nothing_more(&first, "notch", NOTCH)?;
        let (mut width, mut depth, mut square) = (None, None, false);
        for mut cursor in others {
            if cursor.words(&["square"]) {
                square = true;
            } else {
                let length = self.proportion_at(&mut cursor, "notch")?;
                if cursor.words(&["wide"]) {
                    width = Some(length);
                } else if cursor.words(&["deep"]) {
                    depth = Some(length);
                }
            }
            self.nothing_more(&cursor, "notch", NOTCH)?;
        }
        let (Some(width), Some(depth)) = (width, depth) else {
            self.value_unfinished(place, "notch", NOTCH);
            return None;
        };
        Some(OutlineStep::Notch {
            across,
            down,
            width,
            depth,
            square,
        })
    }

    pub(super) fn point(
        &mut self,
        cursor: &mut Cursor<'t>,
        property: &str,
    ) -> Option<(Proportion, Proportion)> {
        let term = self.next_term(cursor, property, POINT)?;
        let TermKind::Point(places) = &term.kind else {
            if !term.is_broken() {
                self.word_not_expected(term.span, property, POINT);
            }
            return None;
        };
        let [across, down] = places.as_slice() else {
            self.word_not_expected(term.span, property, POINT);
            return None;
        };
        let across = self.proportion(across, &cursor.scope.clone());
        let down = self.proportion(down, &cursor.scope.clone());
        Some((across?, down?))
    }

    pub(super) fn proportion_at(
        &mut self,
        cursor: &mut Cursor<'t>,
        property: &str,
    ) -> Option<Proportion> {
        let term = self.next_term(cursor, property, "a length")?;
        self.proportion(term, &cursor.scope.clone())
    }

    fn proportion(&mut self, term: &'t Term, scope: &Scope<'t>) -> Option<Proportion> {
        let amount = self.amount(term, scope)?;
        let plus = self.fixed_length(amount, term, scope)?;
        Some(Proportion {
            part: amount.of_width,
            plus,
        })
    }
}

/// Where the line of a step can go, in words.
fn goes(word: &str) -> &'static str {
    match word {
        "from" | "to" => POINT,
        "up" => "a length, or `to heading`",
        _ => "a length",
    }
}

fn turned(proportion: Proportion) -> Proportion {
    let part = Ratio::zero().checked_sub(&proportion.part);
    Proportion {
        part: part.unwrap_or(proportion.part),
        plus: -proportion.plus,
    }
}

/// Inside an outline `width` and `drop` are always known.
fn within_outline<'t>(scope: &Scope<'t>, drop: Option<Length>) -> Scope<'t> {
    let drop = match drop {
        Some(drop) => Binding::Known(Amount::fixed(Quantity::length(drop))),
        None => Binding::Unknown,
    };
    let width = Binding::Known(Amount::width());
    scope.with(BTreeMap::from([
        (KnownName::Width.word(), width),
        (KnownName::Drop.word(), drop),
    ]))
}
