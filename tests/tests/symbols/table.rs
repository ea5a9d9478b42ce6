//! The table as a whole: complete, of one order, of no more than the texts, and sound for any text.

use pelmet_design::{Definition, DefinitionId, Loaded, Meaning, Resolved, Symbols};
use pelmet_diagnostics::Span;
use pelmet_tests::{Memory, designs_below, generated_job, project_at, read, shuffled};

use crate::designs::{resolved, sound_designs};

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
