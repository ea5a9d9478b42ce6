//! What the texts of a job define, sound or not.

use std::collections::BTreeMap;

use pelmet_diagnostics::Span;
use pelmet_syntax::tree::{Argument, Comment, Entry, Phrase, SyntaxTree, Term, TermKind};

use super::table::{Definition, DefinitionId, DefinitionKind};
use crate::copying::MAXIMUM_COPIES;
use crate::gather::{Definitions, Inner, inner, parameter};
use crate::kind::Kind;
use crate::list::list_path;
use crate::load::{List, ListRow, Loaded};
use crate::term::name_of;

/// Everything that is defined, and the items among it with what looking up names in them needs.
pub(super) struct Declarations<'t> {
    pub definitions: Vec<Definition>,
    pub items: Vec<Item<'t>>,
    /// The items at the edge of a sheet, by kind and name.
    by_name: BTreeMap<(Kind, &'t str), usize>,
}

/// An item; also what the windows of a list have in common, which has no name.
pub(super) struct Item<'t> {
    pub kind: Kind,
    /// What defines it; nothing where its name is missing.
    pub id: Option<DefinitionId>,
    /// Whether it is a panel of a treatment.
    pub is_inner: bool,
    pub written: Written<'t>,
    pub like: Option<&'t Term>,
    pub treatment: Option<&'t Term>,
    pub parameters: Vec<(&'t str, DefinitionId)>,
    pub measures: Vec<(&'t str, DefinitionId)>,
    /// The panels of a treatment, by their number among the items; one whose name is missing has none.
    pub panels: Vec<(&'t str, usize)>,
    pub steps: Vec<(String, DefinitionId)>,
}

/// Where an item is written.
#[derive(Copy, Clone)]
pub(super) enum Written<'t> {
    /// An entry of a sheet.
    Entry(&'t Entry),
    /// An entry that makes windows of a list, and the list if it could be read.
    List(&'t Entry, Option<&'t List>),
    /// A row of a list.
    Row(&'t ListRow),
}

impl<'t> Declarations<'t> {
    /// Finds the definitions of every file.
    pub fn of(loaded: &'t Loaded, definitions: &Definitions<'_>) -> Self {
        let mut declarations = Self {
            definitions: Vec::new(),
            items: Vec::new(),
            by_name: BTreeMap::new(),
        };
        for file in loaded.trees() {
            let mut declaring = Declaring {
                file,
                text: loaded.sources.text(file.file),
                definitions,
                found: &mut declarations,
            };
            for entry in &file.entries {
                if entry.first_word() == Some("windows") {
                    let list = list_path(entry).and_then(|path| loaded.lists.get(&path));
                    declaring.list(entry, list);
                } else if let Some(kind) = entry.first_word().and_then(Kind::from_word) {
                    declaring.item_at_edge(kind, entry);
                }
            }
        }
        declarations
    }

    /// The item of this kind and name at the edge of a sheet.
    pub fn named(&self, kind: Kind, name: &str) -> Option<&Item<'t>> {
        self.items.get(*self.by_name.get(&(kind, name))?)
    }

    /// An item at the edge of a sheet and those it copies, the item first.
    pub fn chain<'d>(&'d self, item: &'d Item<'t>) -> impl Iterator<Item = &'d Item<'t>> {
        let copied = |item: &&'d Item<'t>| self.named(item.kind, name_of(item.like?)?);
        std::iter::successors(Some(item), copied).take(MAXIMUM_COPIES)
    }

    /// The treatment of a window.
    pub fn treatment_of<'d>(&'d self, window: &'d Item<'t>) -> Option<&'d Item<'t>> {
        let called = self.chain(window).find_map(|item| item.treatment)?;
        self.named(Kind::Treatment, name_of(called)?)
    }

    /// The treatments that windows have, each once, as they are written.
    pub fn treatments_hung(&self) -> Vec<&Item<'t>> {
        let windows = self.items.iter().filter(|item| item.kind == Kind::Window);
        let treatments = windows.filter_map(|window| self.treatment_of(window));
        let treatments = treatments.map(|treatment| (treatment.id, treatment));
        treatments
            .collect::<BTreeMap<_, _>>()
            .into_values()
            .collect()
    }

    /// A panel of a treatment, or of the treatment whose panels it takes over.
    pub fn panel_of(&self, treatment: &Item<'t>, name: &str) -> Option<DefinitionId> {
        let mut chain = self.chain(treatment);
        let maker = chain.find(|item| !item.panels.is_empty())?;
        let (_, panel) = maker.panels.iter().find(|(panel, _)| *panel == name)?;
        self.items.get(*panel)?.id
    }

    /// A step of a making method, or of the method whose steps it takes over.
    pub fn step_of(&self, method: &Item<'t>, name: &str) -> Option<DefinitionId> {
        let mut chain = self.chain(method);
        let maker = chain.find(|item| !item.steps.is_empty())?;
        let found = maker.steps.iter().find(|(step, _)| step == name);
        found.map(|(_, id)| *id)
    }
}

impl<'t> Item<'t> {
    fn new(kind: Kind, written: Written<'t>) -> Self {
        Self {
            kind,
            id: None,
            is_inner: false,
            written,
            like: None,
            treatment: None,
            parameters: Vec::new(),
            measures: Vec::new(),
            panels: Vec::new(),
            steps: Vec::new(),
        }
    }

    /// Its parameter of this name.
    pub fn parameter(&self, name: &str) -> Option<DefinitionId> {
        let found = self.parameters.iter().find(|(known, _)| *known == name);
        found.map(|(_, id)| *id)
    }
}

/// Finding the definitions of one file.
struct Declaring<'t, 'd> {
    file: &'t SyntaxTree,
    text: &'t str,
    definitions: &'d Definitions<'d>,
    found: &'d mut Declarations<'t>,
}

/// A name that is given: the name, where it stands, and all of what it names.
type Given<'a> = (&'a str, Span, Span);

impl<'t> Declaring<'t, '_> {
    /// The windows of a list, and what they have in common.
    fn list(&mut self, entry: &'t Entry, list: Option<&'t List>) {
        let treatment = treatment_named(entry);
        self.found.items.push(Item {
            treatment,
            ..Item::new(Kind::Window, Written::List(entry, list))
        });
        for row in list.iter().flat_map(|list| &list.rows) {
            let (name, span) = (row.name.text.as_str(), row.name.span);
            let kind = DefinitionKind::Item(Kind::Window);
            let id = self.define(kind, (name, span, span), None);
            let number = self.push(Item {
                id: Some(id),
                treatment,
                ..Item::new(Kind::Window, Written::Row(row))
            });
            self.name(Kind::Window, (name, span), number);
        }
    }

    fn item_at_edge(&mut self, kind: Kind, entry: &'t Entry) {
        let number = self.item(kind, entry, None);
        let named = name_given(entry);
        let id = self.found.items.get(number).and_then(|item| item.id);
        let (Some((name, span, _)), Some(id)) = (named, id) else {
            return;
        };
        self.name(kind, (name, span), number);
        for within in entry.block.iter().flat_map(|block| &block.entries) {
            self.inner(kind, within, (number, id));
        }
    }

    /// Lets an item be found by its name. Of several of one name it is the one that the job takes.
    fn name(&mut self, kind: Kind, (name, span): (&'t str, Span), number: usize) {
        let is_taken = |definitions: &Definitions<'_>| {
            let taken = definitions.item(kind, name);
            taken.is_some_and(|taken| taken.name_span == span)
        };
        if !self.found.by_name.contains_key(&(kind, name)) || is_taken(self.definitions) {
            self.found.by_name.insert((kind, name), number);
        }
    }

    /// An item with its parameters, by its number.
    fn item(&mut self, kind: Kind, entry: &'t Entry, owner: Option<DefinitionId>) -> usize {
        let is_window = kind == Kind::Window;
        let mut item = Item {
            is_inner: owner.is_some(),
            like: like(entry),
            treatment: is_window.then(|| treatment_named(entry)).flatten(),
            ..Item::new(kind, Written::Entry(entry))
        };
        if let Some((name, span, arguments)) = name_given(entry) {
            let kind = DefinitionKind::Item(kind);
            let id = self.define(kind, (name, span, entry.span), owner);
            item.id = Some(id);
            for parameter in arguments.iter().filter_map(parameter) {
                let (name, span) = (parameter.name, parameter.span);
                let kind = DefinitionKind::Parameter;
                let defined = self.define(kind, (name, span, span), Some(id));
                // Of two of one name it is the first that is meant.
                if item.parameter(name).is_none() {
                    item.parameters.push((name, defined));
                }
            }
        }
        self.push(item)
    }

    fn push(&mut self, item: Item<'t>) -> usize {
        self.found.items.push(item);
        self.found.items.len().saturating_sub(1)
    }

    /// What an entry in the block of an item defines.
    fn inner(&mut self, kind: Kind, entry: &'t Entry, (number, owner): (usize, DefinitionId)) {
        match inner(kind, entry) {
            Inner::Panel => {
                let panel = self.item(Kind::Panel, entry, Some(owner));
                let name = name_given(entry).map_or("", |(name, _, _)| name);
                self.add(number, |item| item.panels.push((name, panel)));
            }
            Inner::Measure => {
                if let Some((name, span, _)) = name_given(entry) {
                    let kind = DefinitionKind::Item(Kind::Measure);
                    let id = self.define(kind, (name, span, entry.span), Some(owner));
                    self.add(number, |item| item.measures.push((name, id)));
                }
            }
            Inner::WorkSteps => {
                for step in entry.block.iter().flat_map(|block| &block.entries) {
                    let Some(name) = step.key() else { continue };
                    let given = (name.as_str(), step.head.span, step.span);
                    let id = self.define(DefinitionKind::Step, given, Some(owner));
                    self.add(number, |item| item.steps.push((name, id)));
                }
            }
            Inner::Step => {
                for phrase in &entry.head.phrases {
                    if let Some((name, span)) = corner(phrase).filter(|_| kind == Kind::Outline) {
                        let given = (name, span, phrase.span);
                        self.define(DefinitionKind::Corner, given, Some(owner));
                    }
                }
            }
            Inner::Suppression | Inner::Property => {}
        }
    }

    fn add(&mut self, number: usize, to: impl FnOnce(&mut Item<'t>)) {
        self.found.items.get_mut(number).map(to);
    }

    fn define(
        &mut self,
        kind: DefinitionKind,
        (name, span, extent): Given<'_>,
        owner: Option<DefinitionId>,
    ) -> DefinitionId {
        let is_here = span.file == self.file.file;
        let id = DefinitionId(self.found.definitions.len());
        self.found.definitions.push(Definition {
            kind,
            name: name.to_owned(),
            span,
            extent,
            owner,
            documentation: is_here
                .then(|| comment_above(self.text, &self.file.comments, extent))
                .flatten(),
        });
        id
    }
}

/// The name that an entry gives behind its first word, and what stands in its brackets.
fn name_given(entry: &Entry) -> Option<(&str, Span, &[Argument])> {
    let term = entry.head.phrases.first()?.terms.get(1)?;
    match &term.kind {
        TermKind::Name(name) => Some((name, term.span, &[])),
        TermKind::Call(call) => Some((&call.name.text, call.name.span, &call.arguments)),
        _ => None,
    }
}

/// The treatment that a window names.
fn treatment_named(entry: &Entry) -> Option<&Term> {
    entry.value.as_ref()?.phrases.first()?.terms.first()
}

/// What an item copies: `fabric rust like oat`.
fn like(entry: &Entry) -> Option<&Term> {
    match entry.head.phrases.first()?.terms.as_slice() {
        [_, _, word, like, ..] if word.word() == Some("like") => Some(like),
        _ => None,
    }
}

/// The name that a step of an outline gives to the corner where it ends: `to (width, drop) as tip`.
pub(super) fn corner(phrase: &Phrase) -> Option<(&str, Span)> {
    match phrase.terms.as_slice() {
        [.., word, name] if word.word() == Some("as") => Some((name.word()?, name.span)),
        _ => None,
    }
}

/// The comment that stands directly above what begins its line.
fn comment_above(text: &str, comments: &[Comment], extent: Span) -> Option<Span> {
    let mut at = extent.range().start;
    let before = comments.partition_point(|comment| comment.span.range().end <= at);
    let mut above: Option<Span> = None;
    for comment in comments.iter().take(before).rev() {
        let range = comment.span.range();
        let gap = text.get(range.end..at)?;
        let line = text.get(..range.start)?;
        let begins_line = line
            .trim_end_matches(is_blank)
            .chars()
            .next_back()
            .is_none_or(is_line_end);
        if !is_one_line_end(gap) || !begins_line {
            break;
        }
        above = Some(above.map_or(comment.span, |span| comment.span.to(span)));
        at = range.start;
    }
    above
}

fn is_one_line_end(gap: &str) -> bool {
    matches!(gap.trim_matches(is_blank), "\n" | "\r" | "\r\n")
}

fn is_blank(letter: char) -> bool {
    letter.is_whitespace() && !is_line_end(letter)
}

fn is_line_end(letter: char) -> bool {
    matches!(letter, '\n' | '\r')
}
