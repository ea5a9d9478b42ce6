//! Reading the main file and everything it uses.

use std::collections::{BTreeMap, BTreeSet};

use pelmet_diagnostics::{Diagnostic, FileId, PlacedText, Sources, Span, codes, did_you_mean};
use pelmet_syntax::tree::{Entry, Name, Phrase, Phrases, SyntaxTree, Term, TermKind};
use pelmet_syntax::{MAXIMUM_FILE_BYTES, parse};

use crate::list::{list_path, read_list};
use crate::printable::Printable;
use crate::project::{Project, ReadFinding, resolve_path};

/// How many files may use one another in a chain.
pub const MAXIMUM_FILES_DEEP: usize = 100;

/// The texts of a job and their trees.
#[derive(Debug)]
pub struct Loaded {
    /// Every text, so that diagnostics can show it.
    pub sources: Sources,
    /// The main file, if it could be read at all.
    pub main: Option<FileId>,
    /// What is wrong with files, and with how they are written.
    pub diagnostics: Vec<Diagnostic>,
    /// The trees: every file once, each after the files it uses.
    pub(crate) trees: Vec<Tree>,
    /// Lists of windows, by the place of the text that names each.
    pub(crate) lists: BTreeMap<Span, List>,
    /// What could not be read, so that nobody blames the names it would have brought.
    pub(crate) unread: Unread,
}

/// What a job uses and could not be read.
#[derive(Copy, Clone, Default, Debug)]
pub(crate) struct Unread {
    /// A file of the project, or a list.
    pub files: bool,
    /// Some file of the standard library.
    pub library: bool,
}

impl Loaded {
    /// The tree of every file that was read, each after those of the files it uses.
    pub fn trees(&self) -> impl Iterator<Item = &SyntaxTree> {
        self.trees.iter().map(|tree| &tree.file)
    }

    /// The tree of a file; nothing if there is none, as of a list of windows.
    #[must_use]
    pub fn tree(&self, file: FileId) -> Option<&SyntaxTree> {
        self.trees().find(|tree| tree.file == file)
    }

    /// The files that come from the standard library.
    pub(crate) fn library_files(&self) -> impl Iterator<Item = FileId> + '_ {
        let library = self
            .trees
            .iter()
            .filter(|tree| tree.origin == Origin::Library);
        library.map(|tree| tree.file.file)
    }
}

/// One file's tree.
#[derive(Debug)]
pub(crate) struct Tree {
    /// The tree.
    pub file: SyntaxTree,
    /// Where it comes from.
    pub origin: Origin,
}

/// Where a text comes from.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(crate) enum Origin {
    /// It is the main file.
    Main,
    /// The project uses it.
    Project,
    /// It is part of the standard library.
    Library,
}

/// A list of windows.
#[derive(Debug)]
pub(crate) struct List {
    /// The file it was read from.
    pub file: FileId,
    /// The names of its columns, as they stand in the first line.
    pub columns: Vec<Name>,
    /// One window a row.
    pub rows: Vec<ListRow>,
}

/// One window of a list.
#[derive(Debug)]
pub(crate) struct ListRow {
    /// Its name.
    pub name: Name,
    /// Its properties; empty cells are left out.
    pub cells: Vec<(String, Phrases)>,
    /// Whether a cell was reported.
    pub damaged: bool,
}

/// Reads a main file and everything it uses, from a project.
///
/// Nothing stops at the first diagnostic: whatever can be read is read.
pub fn load(main: &str, project: &dyn Project) -> Loaded {
    let mut loading = Loading {
        project,
        loaded: Loaded {
            sources: Sources::new(),
            main: None,
            diagnostics: Vec::new(),
            trees: Vec::new(),
            lists: BTreeMap::new(),
            unread: Unread::default(),
        },
        done: BTreeSet::new(),
        under_way: Vec::new(),
        printable: Printable::default(),
    };
    loading.project_file(main, None, Origin::Main);
    loading.loaded
}

/// The word for the standard library in a `use` line.
const STANDARD: &str = "standard";

/// The path by which diagnostics show a file of the standard library.
pub(crate) fn library_path(name: &str) -> String {
    format!("{STANDARD}/{name}.pelmet")
}

/// Whether a file of the project would be taken for one of the library.
fn is_shown_for_library(path: &str) -> bool {
    let mut files = pelmet_stdlib::FILES.iter();
    files.any(|file| library_path(file.name) == path)
}

struct Loading<'p> {
    project: &'p dyn Project,
    loaded: Loaded,
    done: BTreeSet<String>,
    /// The files being read, each with the place that uses the next.
    under_way: Vec<(String, Span)>,
    printable: Printable,
}

impl Loading<'_> {
    fn project_file(&mut self, path: &str, place: Option<Span>, origin: Origin) {
        if let Some(from) = self.under_way.iter().position(|(other, _)| other == path) {
            self.report_circle(from);
            return;
        }
        if !self.done.insert(path.to_owned()) {
            return;
        }
        let Some(text) = self.text(path, place) else {
            return;
        };
        let file = self.loaded.sources.add(path, text);
        if origin == Origin::Main {
            self.loaded.main = Some(file);
        }
        self.tree(file, path, origin);
    }

    fn report(&mut self, diagnostic: impl Into<Diagnostic>) {
        self.loaded.diagnostics.push(diagnostic.into());
    }

    fn library_file(&mut self, name: &str, text: &str) {
        let path = library_path(name);
        if self.done.insert(path.clone()) {
            let file = self.loaded.sources.add(path.clone(), text);
            self.tree(file, &path, Origin::Library);
        }
    }

    fn tree(&mut self, file: FileId, path: &str, origin: Origin) {
        let text = self.loaded.sources.text(file);
        let parsed = parse(file, text);
        let found = &mut self.loaded.diagnostics;
        found.extend(parsed.diagnostics);
        self.printable.entries(&parsed.file.entries, text, found);
        for entry in &parsed.file.entries {
            if entry.first_word() == Some("use") {
                self.use_entry(entry, path);
            }
            if let Some(place) = list_path(entry) {
                self.list(entry, place, path);
            }
        }
        self.loaded.trees.push(Tree {
            file: parsed.file,
            origin,
        });
    }

    /// `use "styles/house.pelmet"`, `use standard`, `use standard pleats, headings`.
    fn use_entry(&mut self, entry: &Entry, within: &str) {
        if entry.is_broken() {
            self.loaded.unread.files = true;
            return;
        }
        let terms: Vec<&Term> = entry
            .head
            .phrases
            .iter()
            .flat_map(|phrase| &phrase.terms)
            .collect();
        let plain = entry.value.is_none() && entry.block.is_none();
        match terms.as_slice() {
            [
                _,
                Term {
                    kind: TermKind::Text(written),
                    span,
                },
            ] if plain => {
                self.use_path(written, *span, within);
            }
            [_, standard, names @ ..] if plain && standard.word() == Some(STANDARD) => {
                self.use_library(names, entry);
            }
            _ => self.use_unclear(entry, &terms),
        }
    }

    fn use_unclear(&mut self, entry: &Entry, terms: &[&Term]) {
        let word = terms
            .get(1)
            .and_then(|term| Some((term.word()?, term.span)));
        let standard =
            word.filter(|(word, _)| *word == STANDARD || did_you_mean(word, [STANDARD]).is_some());
        self.loaded.unread.library |= standard.is_some();
        self.loaded.unread.files |= standard.is_none();
        let misspelt = standard.filter(|(word, _)| *word != STANDARD);
        self.report(codes::use_unclear(
            entry.span,
            misspelt.map(|(_, span)| span),
        ));
    }

    fn use_path(&mut self, written: &str, span: Span, within: &str) {
        let Some(path) = resolve_path(within, written) else {
            self.report(codes::file_outside_project(Some(span), written));
            self.loaded.unread.files = true;
            return;
        };
        if is_shown_for_library(&path) {
            self.report(codes::library_name_taken(span, &path));
            self.loaded.unread.files = true;
            return;
        }
        if self.under_way.len() >= MAXIMUM_FILES_DEEP {
            self.report(codes::use_too_deep(span, MAXIMUM_FILES_DEEP));
            return;
        }
        self.under_way.push((within.to_owned(), span));
        self.project_file(&path, Some(span), Origin::Project);
        self.under_way.pop();
    }

    fn use_library(&mut self, names: &[&Term], entry: &Entry) {
        if names.is_empty() {
            for file in pelmet_stdlib::FILES {
                self.library_file(file.name, file.text);
            }
        }
        for term in names {
            let Some(name) = term.word() else {
                self.loaded.unread.library = true;
                self.report(codes::use_unclear(entry.span, None));
                return;
            };
            match pelmet_stdlib::file(name) {
                Some(file) => self.library_file(file.name, file.text),
                None => {
                    let known: Vec<&str> =
                        pelmet_stdlib::FILES.iter().map(|file| file.name).collect();
                    self.report(codes::library_file_unknown(term.span, name, &known));
                    self.loaded.unread.library = true;
                }
            }
        }
    }

    fn list(&mut self, entry: &Entry, place: Span, within: &str) {
        let written = entry.head.phrases.first().and_then(list_text).unwrap_or("");
        let Some(path) = resolve_path(within, written) else {
            self.report(codes::file_outside_project(Some(place), written));
            self.loaded.unread.files = true;
            return;
        };
        let Some(text) = self.text(&path, Some(place)) else {
            return;
        };
        let file = self.loaded.sources.add(path, text);
        let told = self.loaded.diagnostics.len();
        let list = read_list(
            file,
            self.loaded.sources.text(file),
            &mut self.loaded.diagnostics,
        );
        self.loaded.unread.files |= self.loaded.diagnostics.len() > told;
        for row in &list.rows {
            self.list_row(row, file);
        }
        self.loaded.lists.insert(place, list);
    }

    /// Whether the names and texts of a row can be printed.
    fn list_row(&mut self, row: &ListRow, file: FileId) {
        let text = self.loaded.sources.text(file);
        let found = &mut self.loaded.diagnostics;
        self.printable.part(row.name.span, text, found);
        for (_, value) in &row.cells {
            self.printable.value(value, text, found);
        }
    }

    fn text(&mut self, path: &str, place: Option<Span>) -> Option<String> {
        let limit = u64::try_from(MAXIMUM_FILE_BYTES).unwrap_or(u64::MAX);
        let too_large = |size| codes::FileTooLarge {
            place,
            path,
            size,
            limit,
        };
        let diagnostic: Diagnostic = match self.project.read(path) {
            Ok(bytes) if bytes.len() > MAXIMUM_FILE_BYTES => {
                too_large(u64::try_from(bytes.len()).unwrap_or(u64::MAX)).into()
            }
            Ok(bytes) => match String::from_utf8(bytes) {
                Ok(text) => return Some(text),
                Err(_) => codes::file_not_text(place, path),
            },
            Err(ReadFinding::NotFound) => {
                let paths = self.project.paths();
                let suggestion = did_you_mean(path, paths.iter().map(String::as_str));
                codes::file_not_found(place, path, suggestion)
            }
            Err(ReadFinding::IsFolder) => codes::file_is_folder(place, path),
            Err(ReadFinding::OutsideProject) => codes::file_outside_project(place, path),
            Err(ReadFinding::TooLarge { bytes }) => too_large(bytes).into(),
            Err(ReadFinding::NotReadable(reason)) => codes::FileNotReadable {
                place,
                path,
                reason: &reason,
            }
            .into(),
        };
        self.report(diagnostic);
        self.loaded.unread.files = true;
        None
    }

    fn report_circle(&mut self, from: usize) {
        let steps: Vec<PlacedText> = self
            .under_way
            .iter()
            .skip(from)
            .map(|(path, span)| PlacedText::new(*span, path))
            .collect();
        self.report(codes::use_in_a_circle(&steps));
    }
}

fn list_text(phrase: &Phrase) -> Option<&str> {
    phrase.terms.iter().find_map(|term| match &term.kind {
        TermKind::Text(text) => Some(text.as_str()),
        _ => None,
    })
}
