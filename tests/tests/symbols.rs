//! Every word of a sheet is known for what it is, sound or broken, in whatever order.
#![expect(
    clippy::arithmetic_side_effects,
    clippy::unwrap_used,
    clippy::string_slice,
    reason = "a test stops at the first broken promise"
)]

use std::collections::{BTreeMap, BTreeSet};

use pelmet_design::{Definition, DefinitionId, Loaded, Meaning, Resolved, Symbols, load, resolve};
use pelmet_diagnostics::{Severity, Sources, Span};
use pelmet_syntax::tree::{Argument, Entry, Phrase, Phrases, Term, TermKind};
use pelmet_tests::{
    Memory, blocks, designs_below, files_below, generated_job, project_at, read, shuffled,
};

fn resolved(project: &Memory) -> (Loaded, Resolved) {
    let loaded = load(&project.main, project);
    let resolved = resolve(&loaded);
    (loaded, resolved)
}

/// Where every word of some entries stands: names, and what else is written as they are.
fn words(entries: &[Entry], found: &mut Vec<Span>) {
    for entry in entries {
        phrases(&entry.head, found);
        entry.value.iter().for_each(|value| phrases(value, found));
        let within = entry.block.iter();
        within.for_each(|block| words(&block.entries, found));
    }
}

fn phrases(phrases: &Phrases, found: &mut Vec<Span>) {
    phrases.phrases.iter().for_each(|it| phrase(it, found));
}

fn phrase(phrase: &Phrase, found: &mut Vec<Span>) {
    phrase.terms.iter().for_each(|it| term(it, found));
}

fn term(of: &Term, found: &mut Vec<Span>) {
    match &of.kind {
        TermKind::Name(_) => found.push(of.span),
        TermKind::Call(call) => {
            found.push(call.name.span);
            call.arguments.iter().for_each(|it| argument(it, found));
        }
        TermKind::Point(places) => places.iter().for_each(|it| term(it, found)),
        TermKind::Group(inner) | TermKind::Negative(inner) => term(inner, found),
        TermKind::Binary { left, right, .. } => {
            term(left, found);
            term(right, found);
        }
        TermKind::Broken(names) => found.extend(names.iter().map(|name| name.span)),
        // The figures in a text are looked for later.
        TermKind::Text(_) => found.push(of.span),
        TermKind::Number(_) | TermKind::Times => {}
    }
}

fn argument(argument: &Argument, found: &mut Vec<Span>) {
    found.extend(argument.name.iter().map(|name| name.span));
    argument.value.iter().for_each(|it| phrase(it, found));
}

/// Where the figures between brackets in a text stand.
fn figures(written: &str, text: Span) -> impl Iterator<Item = Span> {
    let opened = written.match_indices('{');
    opened.filter_map(move |(at, _)| {
        let (name, _) = written[at + 1..].split_once('}')?;
        let start = text.start as usize + at + 1;
        Some(Span::new(text.file, start, start + name.len()))
    })
}

/// What a word is, in one word; nothing if nobody knows.
fn known(symbols: &Symbols, word: Span) -> Option<&'static str> {
    let start = word.start as usize;
    if symbols.definition_at(word.file, start).is_some() {
        return Some("definition");
    }
    let found = symbols.references_at(word.file, start);
    let around = found.filter(|it| it.span.start <= word.start && word.end <= it.span.end);
    let meaning = around.map(|it| it.meaning).next()?;
    Some(match meaning {
        Meaning::Definition(_) => "name",
        Meaning::Property(..) => "key",
        Meaning::Known(_) => "known name",
        Meaning::Figure(_) => "figure",
        Meaning::Warning(_) => "code",
        Meaning::File(_) => "file",
        Meaning::Kind(_) => "kind",
        Meaning::Word(_) => "word",
        Meaning::Undescribed(_) => "name that is not described",
        Meaning::OwnWords => "words of one's own",
    })
}

/// Counts the words of a project's own sheets by what they are. What nobody knows is told, with its line.
fn counted(project: &Memory, counts: &mut BTreeMap<&str, usize>) -> Vec<String> {
    let (loaded, resolved) = resolved(project);
    let is_own = |file| project.files.contains_key(loaded.sources.name(file));
    let mut found = Vec::new();
    for tree in loaded.trees().filter(|tree| is_own(tree.file)) {
        words(&tree.entries, &mut found);
    }
    let mut unknown = Vec::new();
    for word in found
        .into_iter()
        .flat_map(|span| in_text(&loaded.sources, span))
    {
        match known(&resolved.symbols, word) {
            Some(sort) => *counts.entry(sort).or_default() += 1,
            None => unknown.push(told(&loaded.sources, word)),
        }
    }
    unknown
}

/// A word, or the figures in a text in quotes.
fn in_text(sources: &Sources, span: Span) -> Vec<Span> {
    let written = sources.snippet(span);
    if written.starts_with('"') {
        figures(written, span).collect()
    } else {
        vec![span]
    }
}

fn told(sources: &Sources, span: Span) -> String {
    let line = sources.place(span).line;
    let file = sources.name(span.file);
    format!("{file}:{line}: {}", sources.snippet(span))
}

#[test]
fn every_word_of_the_examples_is_known() {
    let mut counts = BTreeMap::new();
    let mut unknown = Vec::new();
    for main in designs_below("examples") {
        unknown.extend(counted(&project_at(&main), &mut counts));
    }
    assert!(unknown.is_empty(), "{unknown:#?}");
    insta::assert_debug_snapshot!(counts);
}

#[test]
fn every_word_of_the_library_is_known() {
    let mut counts = BTreeMap::new();
    let unknown = counted(&library_as_project(), &mut counts);
    assert!(unknown.is_empty(), "{unknown:#?}");
    insta::assert_debug_snapshot!(counts);
}

#[test]
fn every_word_of_a_sound_design_is_known() {
    for (what, project) in sound_designs() {
        let unknown = counted(&project, &mut BTreeMap::new());
        assert!(unknown.is_empty(), "{what}: {unknown:#?}");
    }
}

/// A text without its marks, and what is marked: by which byte, and by which mark.
fn without_marks(marked: &str) -> (String, Vec<(usize, &str)>) {
    let mut text = String::new();
    let mut marks = Vec::new();
    let mut rest = marked;
    while let Some((before, after)) = rest.split_once('«') {
        let (mark, after) = after.split_once('»').unwrap();
        text.push_str(before);
        marks.push((text.len(), mark));
        rest = after;
    }
    text.push_str(rest);
    (text, marks)
}

/// Where names are given and where they are used, each with its number.
#[derive(Default)]
struct Marked {
    given: BTreeSet<(String, Span)>,
    used: BTreeSet<(String, Span)>,
}

/// The symbols of a project with marks in it, and the places that are marked.
fn marked(text: &str) -> (Symbols, Marked) {
    let mut project = Memory::of_parts(text);
    let mut places = Vec::new();
    for (path, bytes) in &mut project.files {
        let written = String::from_utf8(bytes.clone()).unwrap();
        let (text, marks) = without_marks(&written);
        places.extend(
            marks
                .iter()
                .map(|(at, mark)| (path.clone(), *at, (*mark).to_owned())),
        );
        *bytes = text.into();
    }
    let (loaded, resolved) = resolved(&project);
    let mut marked = Marked::default();
    for (path, at, mark) in places {
        let mut files = loaded.sources.files();
        let file = files
            .find(|file| loaded.sources.name(*file) == path)
            .unwrap();
        let place = Span::new(file, at, at);
        match mark.strip_prefix('=') {
            Some(number) => marked.given.insert((number.to_owned(), place)),
            None => marked.used.insert((mark, place)),
        };
    }
    (resolved.symbols, marked)
}

/// What is defined and what is referred to at a place.
fn definitions_at(symbols: &Symbols, place: Span) -> BTreeSet<DefinitionId> {
    let (file, byte) = (place.file, place.start as usize);
    let defined = symbols.definition_at(file, byte).map(|(id, _)| id);
    let referred = symbols
        .references_at(file, byte)
        .filter_map(|it| match it.meaning {
            Meaning::Definition(id) => Some(id),
            _ => None,
        });
    defined.into_iter().chain(referred).collect()
}

#[test]
fn names_lead_where_they_are_marked_to_lead() {
    for path in files_below("tests/symbols", ".md") {
        let text = read(&path);
        for block in blocks(&text).iter().filter(|block| block.is("pelmet")) {
            let what = |number: &str| format!("{path}:{}, mark {number}", block.line);
            let (symbols, Marked { given, used }) = marked(&block.text);
            for (number, place) in &used {
                let numbers = used
                    .iter()
                    .filter(|(_, other)| other == place)
                    .map(|(it, _)| it);
                let numbers: BTreeSet<&String> = numbers.collect();
                let wanted = given.iter().filter(|(number, _)| numbers.contains(number));
                let wanted = wanted
                    .flat_map(|(_, place)| definitions_at(&symbols, *place))
                    .collect();
                assert_eq!(definitions_at(&symbols, *place), wanted, "{}", what(number));
            }
            for (number, place) in &given {
                let [id] = Vec::from_iter(definitions_at(&symbols, *place))[..] else {
                    panic!("{} defines nothing", what(number));
                };
                let found = symbols.references_to(id).map(|it| it.span.start_of());
                let marked = used.iter().filter(|(other, _)| other == number);
                let marked: BTreeSet<Span> = marked.map(|(_, place)| *place).collect();
                assert_eq!(found.collect::<BTreeSet<_>>(), marked, "{}", what(number));
            }
        }
    }
}

/// Every design that is sound: where it stands, and its project.
fn sound_designs() -> Vec<(String, Memory)> {
    let examples = designs_below("examples").into_iter();
    let mut designs: Vec<(String, Memory)> = examples
        .map(|main| (main.clone(), project_at(&main)))
        .collect();
    for path in ["grammar/README.md", "README.md"] {
        for block in blocks(&read(path))
            .iter()
            .filter(|block| block.is("pelmet"))
        {
            let what = format!("{path}:{}", block.line);
            designs.push((what, Memory::of_parts(&block.text)));
        }
    }
    designs.push(("the library".to_owned(), library_as_project()));
    designs.retain(|(_, project)| {
        let (loaded, resolved) = resolved(project);
        let mut found = loaded.diagnostics.iter().chain(&resolved.diagnostics);
        found.all(|report| report.severity != Severity::Error)
    });
    designs
}

/// The library as files of a project, in which names can be changed.
fn library_as_project() -> Memory {
    let own = |text: &str| {
        let lines = text
            .lines()
            .filter(|line| !line.starts_with("use standard"));
        lines.map(|line| format!("{line}\n")).collect::<String>()
    };
    let names = pelmet_stdlib::FILES
        .iter()
        .map(|file| format!("{}.pelmet", file.name));
    let uses: String = names
        .clone()
        .map(|name| format!("use \"{name}\"\n"))
        .collect();
    let files = pelmet_stdlib::FILES.iter().map(|file| own(file.text));
    let main = std::iter::once(("main.pelmet".to_owned(), uses));
    Memory::of_files(main.chain(names.zip(files)))
}

/// The definitions of the project's own files to which something refers, and to nothing else there.
fn that_can_be_renamed(project: &Memory, loaded: &Loaded, symbols: &Symbols) -> Vec<DefinitionId> {
    let is_own = |span: Span| project.files.contains_key(loaded.sources.name(span.file));
    let is_alone = |span: Span| {
        let mut here = symbols.references_at(span.file, span.start as usize);
        here.by_ref().filter(|it| it.span == span).count() == 1
    };
    let can_be = |(id, definition): (DefinitionId, &Definition)| {
        let mut spans = symbols.references_to(id).map(|it| it.span).peekable();
        let is_used = spans.peek().is_some();
        let safe = is_own(definition.span) && spans.all(|span| is_own(span) && is_alone(span));
        (is_used && safe).then_some(id)
    };
    symbols.definitions().filter_map(can_be).collect()
}

/// Between a name and its number, for a while.
const RENAMED: &str = "-renamed";

/// The project with a number behind every name that can have one, and how many definitions have.
fn renamed(project: &Memory) -> (Memory, usize) {
    let (loaded, Resolved { symbols, .. }) = resolved(project);
    let ids = that_can_be_renamed(project, &loaded, &symbols);
    let mut ends: Vec<(Span, usize)> = Vec::new();
    for (number, id) in ids.iter().enumerate() {
        let definition = symbols.definition(*id).unwrap();
        let used = symbols.references_to(*id).map(|it| it.span);
        ends.extend(
            used.chain([definition.span])
                .map(|span| (span.end_of(), number)),
        );
    }
    ends.sort_unstable();
    ends.reverse();
    let mut project = project.clone();
    for (end, number) in ends {
        let bytes = project
            .files
            .get_mut(loaded.sources.name(end.file))
            .unwrap();
        let number = format!("{RENAMED}{number}x");
        bytes.splice(end.range(), number.into_bytes());
    }
    (project, ids.len())
}

/// A text with the names as they were.
fn named_as_before(text: &str) -> String {
    let mut parts = text.split(RENAMED);
    let first = parts.next().unwrap_or_default().to_owned();
    parts.fold(first, |text, part| text + part.split_once('x').unwrap().1)
}

/// If a name were missed, or taken for that of something else, the job would not be the same.
#[test]
fn renaming_everything_changes_nothing_but_names() {
    let mut all = 0;
    for (what, project) in sound_designs() {
        let job = |project: &Memory| {
            let (loaded, resolved) = resolved(project);
            let mut slugs: Vec<&str> = loaded.diagnostics.iter().map(|it| it.code.slug).collect();
            slugs.extend(resolved.diagnostics.iter().map(|it| it.code.slug));
            (
                slugs,
                named_as_before(&format!("{:#?}", resolved.design.job)),
            )
        };
        let (renamed, count) = renamed(&project);
        assert_eq!(job(&renamed), job(&project), "{what}");
        all += count;
    }
    assert!(all > 200, "{all} definitions are renamed");
}

/// The table without places, in an order of its own.
fn without_places(project: &Memory) -> Vec<String> {
    let (loaded, Resolved { symbols, .. }) = resolved(project);
    let path = |mut id: DefinitionId| {
        let mut path = String::new();
        while let Some(definition) = symbols.definition(id) {
            path.push_str(&format!("{:?} {} ", definition.kind, definition.name));
            let Some(owner) = definition.owner else { break };
            id = owner;
        }
        path
    };
    let defined = symbols.definitions().map(|(id, _)| path(id));
    let used = symbols.references().iter().map(|it| {
        let meaning = match it.meaning {
            Meaning::Definition(id) => path(id),
            Meaning::File(file) => loaded.sources.name(file).to_owned(),
            meaning => format!("{meaning:?}"),
        };
        format!("{} is {meaning}", loaded.sources.snippet(it.span))
    });
    let mut table: Vec<String> = defined.chain(used).collect();
    table.sort();
    table
}

#[test]
fn the_table_is_the_same_in_any_order() {
    for main in designs_below("examples") {
        let project = project_at(&main);
        let written = without_places(&project);
        for seed in 0..4 {
            let mut other = project.clone();
            for (_, bytes) in other
                .files
                .iter_mut()
                .filter(|(path, _)| path.ends_with(".pelmet"))
            {
                *bytes = shuffled(std::str::from_utf8(bytes).unwrap(), seed).into();
            }
            assert!(
                without_places(&other) == written,
                "{main}, in the order of {seed}"
            );
        }
    }
}

/// A template is looked over once, however many windows it is made for.
#[test]
fn the_table_does_not_grow_with_what_is_made() {
    let count = |windows: usize| {
        let (_, resolved) = resolved(&Memory::of(generated_job(windows)));
        resolved.symbols.references().len()
    };
    let (one, two, many) = (count(1), count(2), count(40));
    assert_eq!(many - one, 39 * (two - one));
}

#[test]
fn a_text_that_is_cut_anywhere_keeps_its_places_within() {
    let whole = read("examples/kitchen-window/kitchen-window.pelmet");
    // Most of the library would have to be read again for every byte.
    let whole = whole.replace(", methods", "");
    for end in (0..whole.len()).filter(|end| whole.is_char_boundary(*end)) {
        let (loaded, Resolved { symbols, .. }) = resolved(&Memory::of(&whole[..end]));
        let main = loaded.main.unwrap();
        let is_within = |span: Span| {
            let text = loaded.sources.text(span.file);
            span.start <= span.end && text.get(span.range()).is_some()
        };
        for (_, definition) in symbols.definitions() {
            let documentation = definition.documentation.iter().copied();
            let places = documentation.chain([definition.span, definition.extent]);
            assert!(
                places.into_iter().all(is_within),
                "cut at {end}: {definition:?}"
            );
        }
        for reference in symbols.references() {
            assert!(is_within(reference.span), "cut at {end}: {reference:?}");
        }
        let tree = loaded.tree(main).unwrap();
        assert!(
            symbols.references_at(main, end).count() <= 2,
            "cut at {end}"
        );
        assert!(tree.nodes_at(&whole[..end], end).len() < 10, "cut at {end}");
    }
}
