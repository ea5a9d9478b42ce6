//! From syntax trees to items: every entry put in its place, nothing read yet.

mod block;
mod head;
mod work_steps;

use std::collections::{BTreeMap, BTreeSet};

use pelmet_diagnostics::{Diagnostic, Span, codes};
use pelmet_syntax::tree::{Entry, Term};

use block::Parts;
pub(crate) use block::{Inner, inner, key_without_colon};
pub(crate) use head::parameter;

use crate::item::{Item, Line};
use crate::keyword::LINES;
use crate::kind::Kind;
use crate::list::list_path;
use crate::load::{List, ListRow, Loaded, Origin, Unread};
use crate::scope::Written;
use crate::term::name_of;

/// Everything a job says, sorted.
#[derive(Debug, Default)]
pub(crate) struct Definitions<'t> {
    /// The items by kind and name; a project's own hide the library's.
    pub items: BTreeMap<Kind, BTreeMap<&'t str, Item<'t>>>,
    /// The windows in the order written, main file last among those it uses.
    pub windows: Vec<Item<'t>>,
    /// Settings, expectations and suppressions.
    pub lines: Vec<Line<'t>>,
    /// Acceptances with the text they hold for.
    pub suppressions: Vec<WrittenSuppression<'t>>,
    /// The names of items whose kind is not known, which was reported.
    pub of_no_kind: BTreeSet<&'t str>,
    /// What could not be read.
    pub unread: Unread,
}

/// A line that accepts a warning.
#[derive(Copy, Clone, Debug)]
pub(crate) struct WrittenSuppression<'t> {
    /// The line.
    pub entry: &'t Entry,
    /// The file or block it holds for.
    pub within: Span,
}

impl<'t> Definitions<'t> {
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

    /// How an item of this kind can be named in a value, for help: the first that the project makes,
    /// or else the first of the library; none where its arguments cannot be told.
    pub fn example_of(&self, kind: Kind) -> Option<String> {
        let mut items: Vec<&Item<'t>> = self.items.get(&kind)?.values().collect();
        items.sort_by_key(|item| (item.from_library, item.name_span));
        items.into_iter().find_map(example)
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

/// An item's name with what it asks for: a parameter named like a property is given as that would be.
fn example(item: &Item<'_>) -> Option<String> {
    let asked = item
        .parameters
        .iter()
        .filter(|parameter| parameter.default.is_none());
    let given = asked.map(|parameter| {
        let property = item.kind.property(parameter.name)?;
        property.example.split_once(": ").map(|(_, value)| value)
    });
    let given: Vec<&str> = given.collect::<Option<_>>()?;
    Some(if given.is_empty() {
        item.name.to_owned()
    } else {
        format!("{}({})", item.name, given.join(", "))
    })
}

/// Sorts every entry of every file.
pub(crate) fn gather<'t>(loaded: &'t Loaded, diagnostics: &mut Vec<Diagnostic>) -> Definitions<'t> {
    let mut gathering = Gathering {
        definitions: Definitions {
            unread: loaded.unread,
            ..Definitions::default()
        },
        diagnostics,
        lists: &loaded.lists,
    };
    for tree in &loaded.trees {
        gathering.file(tree);
    }
    gathering.definitions
}

struct Gathering<'t, 'd> {
    definitions: Definitions<'t>,
    diagnostics: &'d mut Vec<Diagnostic>,
    lists: &'t BTreeMap<Span, List>,
}

impl<'t> Gathering<'t, '_> {
    fn report(&mut self, diagnostic: impl Into<Diagnostic>) {
        self.diagnostics.push(diagnostic.into());
    }

    fn file(&mut self, tree: &'t crate::load::Tree) {
        let whole = Span::new(tree.file.file, 0, usize::MAX);
        for entry in &tree.file.entries {
            let Some(word) = entry.first_word() else {
                self.not_understood(entry);
                continue;
            };
            if LINES.iter().any(|line| line.word == word) {
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
            self.definitions
                .suppressions
                .push(WrittenSuppression { entry, within });
        } else if word != "use" {
            let in_main = origin == Origin::Main;
            self.definitions.lines.push(Line {
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
                .definitions
                .windows
                .iter()
                .find(|other| other.name == item.name);
            if let Some(earlier) = earlier {
                self.report(codes::NameTwice {
                    second: item.name_span,
                    first: earlier.name_span,
                    name: item.name,
                });
                return;
            }
            self.definitions.windows.push(item.clone());
        }
        let named = self.definitions.items.entry(item.kind).or_default();
        match named.get(item.name) {
            Some(earlier) if earlier.from_library == item.from_library => {
                let first = earlier.name_span;
                self.report(codes::NameTwice {
                    second: item.name_span,
                    first,
                    name: item.name,
                });
            }
            Some(earlier) if item.from_library && !earlier.from_library => {}
            _ => {
                named.insert(item.name, item);
            }
        }
    }

    fn unknown_entry(&mut self, word: &str, entry: &'t Entry) {
        let named = entry
            .head
            .phrases
            .first()
            .and_then(|phrase| phrase.terms.get(1));
        self.definitions.of_no_kind.extend(named.and_then(name_of));
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
        known.extend(LINES.iter().map(|line| line.word));
        self.report(codes::item_unknown(span, word, &known));
    }

    fn not_understood(&mut self, entry: &Entry) {
        if !entry.is_broken() {
            self.report(codes::not_understood(entry.span));
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
        work_steps: Vec::new(),
        from_library: false,
        damaged: shared.damaged || row.damaged,
    }
}
