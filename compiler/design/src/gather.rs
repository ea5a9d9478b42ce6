//! From syntax trees to items: every entry put in its place, nothing read yet.

use std::collections::BTreeMap;

use pelmet_diagnostics::{Diagnostic, Span, codes};
use pelmet_syntax::tree::{Argument, Block, Call, Entry, Phrase, Separator, Term, TermKind};

use crate::item::{Item, Line, Parameter, Step};
use crate::kind::Kind;
use crate::load::{List, ListRow, Loaded, Origin};
use crate::scope::Written;

/// Words that begin an entry at file level without being items.
pub(crate) const LINE_WORDS: &[&str] = &[
    "units", "cut", "mark", "job", "currency", "use", "expect", "accept",
];

/// Words that begin a step of a pleat rule.
pub(crate) const PLEAT_STEPS: &[&str] = &[
    "margin", "space", "rest", "knife", "box", "inverted", "repeat",
];

/// Words that begin a step of an outline.
pub(crate) const OUTLINE_STEPS: &[&str] = &["from", "to", "across", "back", "down", "up", "notch"];

/// Everything a job says, sorted.
#[derive(Debug, Default)]
pub(crate) struct World<'t> {
    /// The items by kind and name; a project's own hide the library's.
    pub items: BTreeMap<Kind, BTreeMap<&'t str, Item<'t>>>,
    /// The windows in the order written, main file last among those it uses.
    pub windows: Vec<Item<'t>>,
    /// Settings, expectations and acceptances.
    pub lines: Vec<Line<'t>>,
    /// Acceptances with the text they hold for.
    pub acceptances: Vec<Acceptance<'t>>,
}

/// A line that accepts a warning.
#[derive(Copy, Clone, Debug)]
pub(crate) struct Acceptance<'t> {
    /// The line.
    pub entry: &'t Entry,
    /// The file or block it holds for.
    pub within: Span,
}

impl<'t> World<'t> {
    /// The item of this kind with this name.
    pub fn item(&self, kind: Kind, name: &str) -> Option<&Item<'t>> {
        self.items.get(&kind)?.get(name)
    }

    /// Every name of a kind, for suggestions.
    pub fn names(&self, kind: Kind) -> impl Iterator<Item = &'t str> + '_ {
        self.items
            .get(&kind)
            .into_iter()
            .flat_map(|items| items.keys().copied())
    }

    /// The kinds that have something of this name.
    pub fn kinds_named(&self, name: &str) -> impl Iterator<Item = Kind> + '_ {
        let name = name.to_owned();
        self.items
            .iter()
            .filter(move |(_, items)| items.contains_key(name.as_str()))
            .map(|(kind, _)| *kind)
    }
}

/// Sorts every entry of every file.
pub(crate) fn gather<'t>(loaded: &'t Loaded, diagnostics: &mut Vec<Diagnostic>) -> World<'t> {
    let mut gathering = Gathering {
        world: World::default(),
        diagnostics,
        lists: &loaded.lists,
    };
    for tree in &loaded.trees {
        gathering.file(tree);
    }
    gathering.world
}

struct Gathering<'t, 'd> {
    world: World<'t>,
    diagnostics: &'d mut Vec<Diagnostic>,
    lists: &'t BTreeMap<Span, List>,
}

/// The parts of a block while they are sorted.
#[derive(Default)]
struct Parts<'t> {
    properties: BTreeMap<&'t str, Written<'t>>,
    key_spans: BTreeMap<&'t str, Span>,
    panels: Vec<Item<'t>>,
    measures: BTreeMap<&'t str, Written<'t>>,
    steps: Vec<Step<'t>>,
    damaged: bool,
}

impl<'t> Gathering<'t, '_> {
    fn file(&mut self, tree: &'t crate::load::Tree) {
        let whole = Span::new(tree.file.file, 0, usize::MAX);
        for entry in &tree.file.entries {
            let Some(word) = first_word(entry) else {
                self.not_understood(entry);
                continue;
            };
            if LINE_WORDS.contains(&word) {
                self.line(word, entry, tree.origin, whole);
            } else if word == "windows" {
                self.window_list(entry);
            } else if let Some(kind) = Kind::from_word(word) {
                self.item_entry(kind, entry, tree.origin);
            } else {
                self.unknown_entry(word, entry);
            }
        }
    }

    fn line(&mut self, word: &'t str, entry: &'t Entry, origin: Origin, within: Span) {
        if word == "accept" {
            self.world.acceptances.push(Acceptance { entry, within });
        } else if word != "use" {
            let in_main = origin == Origin::Main;
            self.world.lines.push(Line {
                word,
                entry,
                in_main,
            });
        }
    }

    fn item_entry(&mut self, kind: Kind, entry: &'t Entry, origin: Origin) {
        let from_library = origin == Origin::Library;
        let Some(item) = self.item(kind, entry, from_library) else {
            return;
        };
        self.keep(item);
    }

    fn keep(&mut self, item: Item<'t>) {
        if item.kind == Kind::Window {
            let earlier = self
                .world
                .windows
                .iter()
                .find(|other| other.name == item.name);
            if let Some(earlier) = earlier {
                self.diagnostics.push(codes::name_twice(
                    item.name_span,
                    earlier.name_span,
                    item.name,
                ));
                return;
            }
            self.world.windows.push(item.clone());
        }
        let named = self.world.items.entry(item.kind).or_default();
        match named.get(item.name) {
            Some(earlier) if earlier.from_library == item.from_library => {
                self.diagnostics.push(codes::name_twice(
                    item.name_span,
                    earlier.name_span,
                    item.name,
                ));
            }
            Some(earlier) if item.from_library && !earlier.from_library => {}
            _ => {
                named.insert(item.name, item);
            }
        }
    }

    fn unknown_entry(&mut self, word: &str, entry: &Entry) {
        if entry.is_broken() {
            return;
        }
        let span = entry
            .head
            .phrases
            .first()
            .and_then(|phrase| phrase.terms.first());
        let span = span.map_or(entry.span, |term| term.span);
        let mut known: Vec<&str> = Kind::ALL.iter().map(|kind| kind.word()).collect();
        known.push("windows");
        known.extend(LINE_WORDS);
        self.diagnostics
            .push(codes::item_unknown(span, word, &known));
    }

    fn not_understood(&mut self, entry: &Entry) {
        if !entry.is_broken() {
            self.diagnostics.push(codes::not_understood(entry.span));
        }
    }

    /// `fabric sand like kelp { … }`, `outline tide(step = 3 in) half { … }`, `window a: b { … }`.
    fn item(&mut self, kind: Kind, entry: &'t Entry, from_library: bool) -> Option<Item<'t>> {
        if kind == Kind::Measure {
            return self.measure_item(entry, from_library);
        }
        let mut head = entry.head.phrases.iter();
        let first = head.next()?;
        let (name, parameters, mut rest) = self.name_and_parameters(kind, entry, first)?;
        let mut like = None;
        if let [word, other, after @ ..] = rest
            && word.word() == Some("like")
        {
            like = Some(other);
            rest = after;
        }
        let mut manner: Vec<&[Term]> = Vec::new();
        if !rest.is_empty() {
            manner.push(rest);
        }
        manner.extend(head.map(|phrase| phrase.terms.as_slice()));
        let treatment = self.treatment_of(kind, entry, like.is_some());
        let parts = self.parts(kind, entry, from_library);
        Some(Item {
            kind,
            name: name.0,
            name_span: name.1,
            parameters,
            like,
            treatment,
            manner,
            properties: parts.properties,
            key_spans: parts.key_spans,
            panels: parts.panels,
            measures: parts.measures,
            steps: parts.steps,
            from_library,
            damaged: parts.damaged || entry.is_broken(),
        })
    }

    fn name_and_parameters(
        &mut self,
        kind: Kind,
        entry: &Entry,
        first: &'t Phrase,
    ) -> Option<((&'t str, Span), Vec<Parameter<'t>>, &'t [Term])> {
        let [_, named, rest @ ..] = first.terms.as_slice() else {
            let line = format!("{} my-{} {{", kind.word(), kind.word());
            self.diagnostics
                .push(codes::name_missing(entry.head.span, kind.noun(), &line));
            return None;
        };
        match &named.kind {
            TermKind::Name(name) => Some(((name, named.span), Vec::new(), rest)),
            TermKind::Call(Call { name, arguments }) => {
                let parameters = self.parameters(kind, arguments);
                Some(((&name.text, name.span), parameters, rest))
            }
            TermKind::Broken => None,
            _ => {
                let line = format!("{} my-{} {{", kind.word(), kind.word());
                self.diagnostics
                    .push(codes::name_missing(named.span, kind.noun(), &line));
                None
            }
        }
    }

    fn parameters(&mut self, kind: Kind, arguments: &'t [Argument]) -> Vec<Parameter<'t>> {
        let mut parameters: Vec<Parameter<'t>> = Vec::new();
        for argument in arguments {
            let Some(parameter) = parameter(argument) else {
                if !argument.value.as_ref().is_some_and(Phrase::is_broken) {
                    self.diagnostics.push(codes::not_understood(argument.span));
                }
                continue;
            };
            if let Some(earlier) = parameters.iter().find(|other| other.name == parameter.name) {
                self.diagnostics.push(codes::name_twice(
                    parameter.span,
                    earlier.span,
                    parameter.name,
                ));
                continue;
            }
            if known_inside(kind).contains(&parameter.name) {
                self.diagnostics.push(codes::name_reserved(
                    parameter.span,
                    parameter.name,
                    kind.noun(),
                ));
                continue;
            }
            parameters.push(parameter);
        }
        parameters
    }

    fn treatment_of(&mut self, kind: Kind, entry: &'t Entry, has_like: bool) -> Option<&'t Term> {
        let value = entry.value.as_ref();
        if kind != Kind::Window {
            if let Some(value) = value
                && !entry.is_broken()
            {
                self.diagnostics.push(codes::not_understood(value.span));
            }
            return None;
        }
        match value.map(|value| value.phrases.as_slice()) {
            Some([Phrase { terms, .. }]) if terms.len() == 1 => terms.first(),
            None if has_like => None,
            _ => {
                if !entry.is_broken() {
                    let line = "window bay: layered-valance {";
                    self.diagnostics.push(codes::property_missing(
                        entry.head.span,
                        "this window",
                        "treatment",
                        line,
                    ));
                }
                None
            }
        }
    }

    /// `measure hem: 2 in`, kept as an item so that it can be named and suggested like any other.
    fn measure_item(&mut self, entry: &'t Entry, from_library: bool) -> Option<Item<'t>> {
        let (name, name_span, value) = self.measure(entry)?;
        Some(Item {
            kind: Kind::Measure,
            name,
            name_span,
            parameters: Vec::new(),
            like: None,
            treatment: None,
            manner: Vec::new(),
            properties: BTreeMap::new(),
            key_spans: BTreeMap::new(),
            panels: Vec::new(),
            measures: BTreeMap::from([(name, value)]),
            steps: Vec::new(),
            from_library,
            damaged: false,
        })
    }

    fn measure(&mut self, entry: &'t Entry) -> Option<(&'t str, Span, Written<'t>)> {
        let named = entry
            .head
            .phrases
            .first()
            .and_then(|phrase| phrase.terms.get(1));
        let name = named.and_then(Term::word);
        match (name, named, &entry.value, &entry.block) {
            (Some(name), Some(named), Some(value), None) if entry.head.phrases.len() == 1 => {
                Some((name, named.span, Written::phrases(value)))
            }
            _ => {
                self.not_understood(entry);
                None
            }
        }
    }

    fn parts(&mut self, kind: Kind, entry: &'t Entry, from_library: bool) -> Parts<'t> {
        let mut parts = Parts::default();
        match &entry.block {
            Some(block) => self.block(kind, block, from_library, &mut parts),
            None if entry.is_broken() => parts.damaged = true,
            None => {
                let line = format!("{} {{ }}", kind.word());
                self.diagnostics
                    .push(codes::block_missing(entry.span, kind.noun(), &line));
                parts.damaged = true;
            }
        }
        parts
    }

    fn block(&mut self, kind: Kind, block: &'t Block, from_library: bool, parts: &mut Parts<'t>) {
        for entry in &block.entries {
            let word = first_word(entry).unwrap_or("");
            if word == "accept" {
                self.world.acceptances.push(Acceptance {
                    entry,
                    within: block.span,
                });
            } else if word == "measure" && kind == Kind::Treatment {
                self.inner_measure(entry, parts);
            } else if word == "panel" && kind == Kind::Treatment && entry.block.is_some() {
                self.inner_panel(entry, from_library, parts);
            } else if is_step(kind, word, entry) {
                parts.steps.extend(self.steps(entry));
            } else {
                self.property(kind, entry, parts);
            }
        }
    }

    fn inner_measure(&mut self, entry: &'t Entry, parts: &mut Parts<'t>) {
        match self.measure(entry) {
            Some((name, _, value)) => {
                parts.measures.insert(name, value);
            }
            None => parts.damaged = true,
        }
    }

    fn inner_panel(&mut self, entry: &'t Entry, from_library: bool, parts: &mut Parts<'t>) {
        let Some(panel) = self.item(Kind::Panel, entry, from_library) else {
            parts.damaged = true;
            return;
        };
        match parts.panels.iter().find(|other| other.name == panel.name) {
            Some(earlier) => {
                self.diagnostics.push(codes::name_twice(
                    panel.name_span,
                    earlier.name_span,
                    panel.name,
                ));
            }
            None => parts.panels.push(panel),
        }
    }

    fn property(&mut self, kind: Kind, entry: &'t Entry, parts: &mut Parts<'t>) {
        if entry.head.is_broken() {
            parts.damaged = true;
            return;
        }
        let Some(key) = key(entry) else {
            self.unknown_step(kind, entry);
            parts.damaged = true;
            return;
        };
        let key_span = entry.head.span;
        // A window takes the parameters of its treatment too, which are single words; whether it has
        // this one is asked when both are known.
        let may_be_parameter = kind == Kind::Window && !key.contains(' ');
        if kind.property(&key).is_none() && !may_be_parameter {
            self.unknown_property(kind, &key, key_span);
            parts.damaged = true;
            return;
        }
        let key = interned(kind, &key, entry);
        if let Some(earlier) = parts.key_spans.get(key) {
            self.diagnostics
                .push(codes::property_twice(key_span, *earlier, key));
            return;
        }
        parts.key_spans.insert(key, key_span);
        match &entry.value {
            Some(value) => {
                parts.properties.insert(key, Written::phrases(value));
            }
            None => {
                let example = kind
                    .property(key)
                    .map_or_else(|| format!("{key}: "), |known| known.example.to_owned());
                self.diagnostics
                    .push(codes::property_empty(key_span, key, &example));
                parts.damaged = true;
            }
        }
    }

    fn unknown_step(&mut self, kind: Kind, entry: &'t Entry) {
        let word = entry
            .head
            .phrases
            .first()
            .and_then(|phrase| phrase.terms.first());
        match word.and_then(|term| Some((term.word()?, term.span))) {
            Some((word, span)) if matches!(kind, Kind::Outline | Kind::Pleats) => {
                self.unknown_property(kind, word, span);
            }
            _ => self.diagnostics.push(codes::not_understood(entry.span)),
        }
    }

    fn unknown_property(&mut self, kind: Kind, key: &str, span: Span) {
        let mut known: Vec<&str> = kind
            .properties()
            .iter()
            .map(|property| property.key)
            .collect();
        match kind {
            Kind::Pleats => known.extend(PLEAT_STEPS),
            Kind::Outline => known.extend(OUTLINE_STEPS),
            _ => {}
        }
        self.diagnostics
            .push(codes::property_unknown(span, kind.noun(), key, &known));
    }

    /// The steps of one entry: `margin 2 in`, or `repeat: box 2 in, space 3 in`.
    fn steps(&mut self, entry: &'t Entry) -> Vec<Step<'t>> {
        let head = entry.head.phrases.first();
        let repeats = first_word(entry) == Some("repeat");
        match (&entry.value, &entry.block, head) {
            (Some(value), None, Some(head)) if repeats => {
                vec![Step::Repeat {
                    head,
                    steps: split_steps(&value.phrases),
                    span: entry.span,
                }]
            }
            (None, Some(block), Some(head)) if repeats => {
                let steps = block
                    .entries
                    .iter()
                    .flat_map(|inner| self.steps(inner))
                    .collect();
                vec![Step::Repeat {
                    head,
                    steps,
                    span: entry.span,
                }]
            }
            (None, None, _) if !repeats => split_steps(&entry.head.phrases),
            _ => {
                self.not_understood(entry);
                Vec::new()
            }
        }
    }

    /// `windows from "list.csv": treatment { … }`: a window for each line of the list.
    fn window_list(&mut self, entry: &'t Entry) {
        let Some(path) = list_path(entry) else {
            self.not_understood(entry);
            return;
        };
        let treatment = self.treatment_of(Kind::Window, entry, false);
        let parts = match &entry.block {
            Some(_) => self.parts(Kind::Window, entry, false),
            None => Parts::default(),
        };
        // A list that could not be read has been reported where it was looked for.
        let Some(list) = self.lists.get(&path) else {
            return;
        };
        for row in &list.rows {
            self.keep(window_of_row(row, treatment, &parts));
        }
    }
}

fn window_of_row<'t>(
    row: &'t ListRow,
    treatment: Option<&'t Term>,
    shared: &Parts<'t>,
) -> Item<'t> {
    let mut properties = shared.properties.clone();
    for (key, value) in &row.cells {
        properties.insert(key.as_str(), Written::phrases(value));
    }
    Item {
        kind: Kind::Window,
        name: &row.name.text,
        name_span: row.name.span,
        parameters: Vec::new(),
        like: None,
        treatment,
        manner: Vec::new(),
        properties,
        key_spans: BTreeMap::new(),
        panels: Vec::new(),
        measures: BTreeMap::new(),
        steps: Vec::new(),
        from_library: false,
        damaged: shared.damaged || row.damaged,
    }
}

/// The place of the text in `windows from "list.csv"`.
pub(crate) fn list_path(entry: &Entry) -> Option<Span> {
    let [Phrase { terms, .. }] = entry.head.phrases.as_slice() else {
        return None;
    };
    match terms.as_slice() {
        [
            windows,
            from,
            Term {
                kind: TermKind::Text(_),
                span,
            },
        ] if windows.word() == Some("windows") && from.word() == Some("from") => Some(*span),
        _ => None,
    }
}

/// The names always known inside an item of this kind.
pub(crate) fn known_inside(kind: Kind) -> &'static [&'static str] {
    match kind {
        Kind::Outline => &["width", "drop"],
        Kind::Treatment => &[
            "opening-width",
            "opening-height",
            "rod-length",
            "rod-diameter",
            "projection",
        ],
        _ => &[],
    }
}

/// The word an entry begins with.
pub(crate) fn first_word(entry: &Entry) -> Option<&str> {
    entry.head.phrases.first()?.terms.first()?.word()
}

fn parameter<'t>(argument: &'t Argument) -> Option<Parameter<'t>> {
    match (&argument.name, &argument.value) {
        (Some(name), Some(value)) => {
            let default = Some(Written::phrase(value));
            Some(Parameter {
                name: &name.text,
                span: name.span,
                default,
            })
        }
        (None, Some(Phrase { terms, span })) => match terms.as_slice() {
            [
                Term {
                    kind: TermKind::Name(name),
                    ..
                },
            ] => Some(Parameter {
                name,
                span: *span,
                default: None,
            }),
            _ => None,
        },
        _ => None,
    }
}

fn is_step(kind: Kind, word: &str, entry: &Entry) -> bool {
    let repeats = word == "repeat";
    match kind {
        Kind::Pleats => PLEAT_STEPS.contains(&word) && (repeats || entry.separator.is_none()),
        Kind::Outline => OUTLINE_STEPS.contains(&word) && entry.separator.is_none(),
        _ => false,
    }
}

/// Phrases that begin with the word of a step open one; the others belong to the step before.
fn split_steps(phrases: &[Phrase]) -> Vec<Step<'_>> {
    let mut steps: Vec<Step<'_>> = Vec::new();
    for phrase in phrases {
        let word = phrase.terms.first().and_then(Term::word).unwrap_or("");
        let opens = PLEAT_STEPS.contains(&word) || OUTLINE_STEPS.contains(&word);
        match steps.last_mut() {
            Some(Step::Plain { phrases, span }) if !opens => {
                phrases.push(phrase);
                *span = span.to(phrase.span);
            }
            _ => steps.push(Step::Plain {
                phrases: vec![phrase],
                span: phrase.span,
            }),
        }
    }
    steps
}

/// The key of a property: the words of its head, when a separator follows.
fn key(entry: &Entry) -> Option<String> {
    matches!(entry.separator, Some(Separator::Colon | Separator::Equals))
        .then(|| entry.key())
        .flatten()
}

/// Keys live as long as the tables or the tree, so that no property owns a copy of its key.
fn interned<'t>(kind: Kind, key: &str, entry: &'t Entry) -> &'t str {
    match kind.property(key) {
        Some(property) => property.key,
        None => first_word(entry).unwrap_or(""),
    }
}
