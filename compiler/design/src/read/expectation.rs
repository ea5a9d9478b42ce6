//! Reading what a design expects of its own answer.

use pelmet_diagnostics::{Span, codes, did_you_mean};
use pelmet_measure::{Dimension, Money, Quantity};
use pelmet_model::{Job, WindowOrder};
use pelmet_syntax::tree::{Entry, Term};

use crate::closed_sets::ClosedSet;
use crate::cursor::Cursor;
use crate::design::{
    Expectation, Expected, ExpectedBound, ExpectedSubject, FabricSize, JobSize, PanelSize,
    WindowSize,
};
use crate::gather::Definitions;
use crate::kind::Kind;
use crate::reader::Reader;
use crate::scope::Scope;
use crate::size::{JOB, Size};

const EXPECT: &str =
    "a name, a size, and `= 10 in within 1/4 in`, `at most`, `at least` or a range";

/// Reads every `expect` line. `job` is what could be read; where it is not `whole`, a name that
/// is not found may belong to what could not.
pub(crate) fn read_expectations<'t>(
    reader: &mut Reader<'t>,
    definitions: &'t Definitions<'t>,
    job: &Job,
    whole: bool,
) -> Vec<Expectation> {
    let lines = definitions
        .lines
        .iter()
        .filter(|line| line.word == "expect");
    lines
        .filter_map(|line| reader.expectation(line.entry, job, whole))
        .collect()
}

impl<'t> Reader<'t> {
    fn expectation(&mut self, entry: &'t Entry, job: &Job, whole: bool) -> Option<Expectation> {
        if entry.is_broken() {
            return None;
        }
        let ([head], None) = (entry.head.phrases.as_slice(), &entry.block) else {
            self.word_not_expected(entry.span, "expect", EXPECT);
            return None;
        };
        let mut cursor = Cursor::new(head, &Scope::default());
        cursor.words(&["expect"]);
        let (names, size) = self.named_size(&mut cursor)?;
        let subject = self.subject(&names, size, head.span, job, whole);
        let bound = match &entry.value {
            Some(value) => {
                self.nothing_more(&cursor, "expect", EXPECT)?;
                let [value] = value.phrases.as_slice() else {
                    self.word_not_expected(value.span, "expect", EXPECT);
                    return None;
                };
                self.equals(Cursor::new(value, &Scope::default()), size)?
            }
            None => self.limits(cursor, size)?,
        };
        let wording = self.sources.snippet(entry.span).to_owned();
        Some(Expectation {
            span: entry.span,
            wording,
            subject: subject?,
            bound,
        })
    }

    /// The names before a size, and the size.
    fn named_size(&mut self, cursor: &mut Cursor<'t>) -> Option<(Vec<(&'t str, Span)>, Size)> {
        let mut names = Vec::new();
        loop {
            if !names.is_empty()
                && let Some(size) = cursor.one_of()
            {
                return Some((names, size));
            }
            match cursor.any_word() {
                Some(name) if names.len() < 2 => names.push(name),
                _ => {
                    self.size_unclear(&names, cursor);
                    return None;
                }
            }
        }
    }

    /// The words from the second name on were meant as a size.
    fn size_unclear(&mut self, names: &[(&'t str, Span)], cursor: &Cursor<'t>) {
        let rest = cursor.rest().unwrap_or(cursor.end());
        let place = names.get(1).map_or(rest, |(_, span)| span.to(rest));
        let sizes = || Size::ALL.iter().map(|size| size.word());
        let typed = self.sources.snippet(place);
        match did_you_mean(typed, sizes()) {
            Some(near) => self.report(codes::NameUnknown {
                span: place,
                noun: "size",
                word: "size",
                name: typed,
                suggestion: Some(near),
            }),
            None => {
                let sizes: Vec<String> = sizes().map(|size| format!("`{size}`")).collect();
                self.word_not_expected(place, "expect", &format!("a size: {}", sizes.join(", ")));
            }
        }
    }

    fn subject(
        &mut self,
        names: &[(&'t str, Span)],
        size: Size,
        place: Span,
        job: &Job,
        whole: bool,
    ) -> Option<ExpectedSubject> {
        match (of_named(size, names, job), names) {
            (Size::Weight, [_]) => Some(ExpectedSubject::Job(JobSize::Weight)),
            (Size::Cost, [_]) => Some(ExpectedSubject::Job(JobSize::Cost)),
            (Size::Quote, [(JOB, _)]) => Some(ExpectedSubject::Job(JobSize::Quote)),
            (Size::Panel(size), [(panel, span)]) => {
                let windows: Vec<&WindowOrder> = job.windows.iter().collect();
                self.panel_in(&windows, panel, *span, whole)?;
                Some(ExpectedSubject::Panel {
                    window: None,
                    panel: (*panel).to_owned(),
                    size,
                })
            }
            (Size::Panel(size), [(window, window_span), (panel, span)]) => {
                let window = self.window_named(window, *window_span, job, whole)?;
                let windows: Vec<&WindowOrder> = job.windows.get(window).into_iter().collect();
                self.panel_in(&windows, panel, *span, whole)?;
                let panel = (*panel).to_owned();
                Some(ExpectedSubject::Panel {
                    window: Some(window),
                    panel,
                    size,
                })
            }
            (Size::Fabric(size), [(fabric, span)]) => {
                let definitions = self.definitions;
                let Some(item) = definitions.item(Kind::Fabric, fabric) else {
                    self.no_such_item(fabric, *span, Kind::Fabric);
                    return None;
                };
                let fabric = self.fabrics.get(item.name).copied()?;
                Some(ExpectedSubject::Fabric { fabric, size })
            }
            (Size::Window(size), [(window, span)]) => {
                let window = self.window_named(window, *span, job, whole)?;
                Some(ExpectedSubject::Window { window, size })
            }
            _ => {
                self.word_not_expected(place, "expect", EXPECT);
                None
            }
        }
    }

    fn window_named(&mut self, name: &str, span: Span, job: &Job, whole: bool) -> Option<usize> {
        let found = job.windows.iter().position(|window| window.name == name);
        if found.is_none() && (whole || self.definitions.item(Kind::Window, name).is_none()) {
            self.no_such_item(name, span, Kind::Window);
        }
        found
    }

    fn panel_in(
        &mut self,
        windows: &[&WindowOrder],
        name: &str,
        span: Span,
        whole: bool,
    ) -> Option<()> {
        let mut names = windows
            .iter()
            .flat_map(|window| &window.panels)
            .map(|panel| panel.name.as_str());
        if names.clone().any(|other| other == name) {
            return Some(());
        }
        if whole {
            let suggestion = did_you_mean(name, &mut names);
            self.report(codes::NameUnknown {
                span,
                noun: "panel",
                word: "panel",
                name,
                suggestion,
            });
        }
        None
    }

    /// `10 in within 1/4 in`.
    fn equals(&mut self, mut cursor: Cursor<'t>, size: Size) -> Option<ExpectedBound> {
        let value = self.expected(&mut cursor, size)?;
        let within = if cursor.words(&["within"]) {
            self.expected(&mut cursor, size)?
        } else {
            value.nothing()
        };
        self.nothing_more(&cursor, "expect", EXPECT)?;
        Some(ExpectedBound::Equals { value, within })
    }

    /// `at most 6 yd`, `at least 2 in`, `3 to 5`.
    fn limits(&mut self, mut cursor: Cursor<'t>, size: Size) -> Option<ExpectedBound> {
        let bound = if cursor.words(&["at", "most"]) {
            ExpectedBound::AtMost(self.expected(&mut cursor, size)?)
        } else if cursor.words(&["at", "least"]) {
            ExpectedBound::AtLeast(self.expected(&mut cursor, size)?)
        } else {
            let first = self.expected(&mut cursor, size)?;
            if !cursor.words(&["to"]) {
                let place = cursor.peek().map_or(cursor.end(), |term| term.span);
                self.word_not_expected(
                    place,
                    "expect",
                    "`=`, `at most`, `at least` or a range with `to`",
                );
                return None;
            }
            ExpectedBound::Between(first, self.expected(&mut cursor, size)?)
        };
        self.nothing_more(&cursor, "expect", EXPECT)?;
        Some(bound)
    }

    fn expected(&mut self, cursor: &mut Cursor<'t>, size: Size) -> Option<Expected> {
        let term: &'t Term = self.next_term(cursor, "expect", "a value")?;
        let amount = self.amount(term, &Scope::default())?;
        if size.counts() {
            return self.expected_count(amount.fixed, term);
        }
        let (wanted, value) = match size {
            Size::Weight => (
                "a weight",
                amount.fixed.as_mass().map(Expected::Weight).ok(),
            ),
            Size::Cost | Size::Quote => {
                let money = Money::from_hundredths(100).scaled(amount.fixed.amount);
                let is_number = amount.fixed.dimension == Dimension::NUMBER;
                let money = is_number.then_some(Expected::Money(money));
                ("an amount of money as a plain number", money)
            }
            _ => {
                let length = self.length_from(amount, term, &Scope::default());
                return length.map(Expected::Length);
            }
        };
        if value.is_none() {
            let found = amount.fixed.dimension.in_words();
            self.report(codes::KindWanted {
                span: term.span,
                wanted,
                found,
            });
        }
        value
    }

    fn count_wanted(&mut self, found: Dimension, term: &'t Term) {
        let span = term.span;
        if found == Dimension::NUMBER {
            self.report(codes::CountNotWhole {
                span,
                what: "expect",
                number: self.sources.snippet(span),
                least: 0,
            });
        } else {
            self.report(codes::KindWanted {
                span,
                wanted: "a count",
                found: found.in_words(),
            });
        }
    }

    fn expected_count(&mut self, amount: Quantity, term: &'t Term) -> Option<Expected> {
        let count = amount.as_count().map(Expected::Count);
        if count.is_none() {
            self.count_wanted(amount.dimension, term);
        }
        count
    }
}

/// What a weight or a cost is of: the job, a window, a panel or a cloth, as the names say.
fn of_named(size: Size, names: &[(&str, Span)], job: &Job) -> Size {
    let is_window = |name: &str| job.windows.iter().any(|window| window.name == name);
    match (size, names) {
        (_, [(JOB, _)]) => size,
        (Size::Weight, [(name, _)]) if is_window(name) => Size::Window(WindowSize::Weight),
        (Size::Weight, _) => Size::Panel(PanelSize::Weight),
        (Size::Cost, _) => Size::Fabric(FabricSize::Cost),
        _ => size,
    }
}
