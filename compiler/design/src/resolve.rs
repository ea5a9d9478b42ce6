//! From loaded texts to a resolved design.

use std::collections::{BTreeMap, BTreeSet};

use pelmet_diagnostics::{Diagnostic, Severity, codes};
use pelmet_measure::Style;
use pelmet_model::Job;

use crate::design::Design;
use crate::gather::{Definitions, gather};
use crate::item::Item;
use crate::kind::Kind;
use crate::load::Loaded;
use crate::read::{Settings, read_expectations, read_settings};
use crate::reader::Reader;
use crate::reference::Referred;
use crate::scope::Scope;
use crate::source_map::SourceMap;
use crate::suppress::read_suppressions;
use crate::symbols::{Symbols, symbols};

/// A design, and the diagnostics of its names, kinds and templates.
#[derive(Clone, Debug)]
pub struct Resolved {
    /// What could be resolved; an item with anything wrong in it is left out.
    pub design: Design,
    /// The mistakes, those of loading not included; one in a template as often as it is met.
    pub diagnostics: Vec<Diagnostic>,
    /// What is defined in every text, and what every name refers to; of what has a mistake in it too.
    pub symbols: Symbols,
}

/// Resolves every name, template and sum of a job.
///
/// A broken item is left out and whatever depends on it stays silent; the rest goes on.
#[must_use]
pub fn resolve(loaded: &Loaded) -> Resolved {
    let mut diagnostics = Vec::new();
    let definitions = gather(loaded, &mut diagnostics);
    let mut reader = Reader {
        definitions: &definitions,
        sources: &loaded.sources,
        style: Style::INCHES,
        diagnostics,
        used: BTreeSet::new(),
        fabrics: BTreeMap::new(),
        following: Vec::new(),
    };
    let settings = read_settings(&mut reader, &definitions);
    let mut design = read_job(&mut reader, &definitions, settings, loaded);
    let suppressions = read_suppressions(&mut reader, &definitions.suppressions);
    design.suppressions = suppressions;
    let clean = loaded
        .diagnostics
        .iter()
        .chain(&reader.diagnostics)
        .all(|diagnostic| diagnostic.severity != Severity::Error);
    if clean && !design.job.windows.is_empty() {
        report_unused(&mut reader, &definitions, loaded);
    }
    Resolved {
        design,
        diagnostics: reader.diagnostics,
        symbols: symbols(loaded, &definitions),
    }
}

fn read_job<'t>(
    reader: &mut Reader<'t>,
    definitions: &'t Definitions<'t>,
    settings: Settings,
    loaded: &Loaded,
) -> Design {
    let mut job = Job {
        labour_per_hour: settings.labour_per_hour,
        markup: settings.markup,
        ..Job::default()
    };
    let mut source_map = SourceMap {
        library: loaded.library_files().collect(),
        ..SourceMap::default()
    };
    for item in in_order(definitions, Kind::Fabric) {
        if let Some(fabric) = reader.fabric(item) {
            reader.fabrics.insert(item.name, job.fabrics.len());
            job.fabrics.push(fabric);
            source_map.fabrics.push(item.name_span);
        }
    }
    look_over_templates(reader, definitions);
    for item in in_order(definitions, Kind::Notion) {
        job.notions.extend(reader.notion(item, &Scope::default()));
    }
    for item in &definitions.windows {
        if let Some((window, way)) = reader.window(item) {
            job.windows.push(window);
            source_map.windows.push(way);
        }
    }
    let whole = job.windows.len() == definitions.windows.len();
    let expectations = read_expectations(reader, definitions, &job, whole);
    Design {
        title: settings.title.unwrap_or_else(|| title_of(loaded)),
        style: settings.style,
        currency: settings.currency,
        job,
        expectations,
        source_map,
        suppressions: Vec::new(),
    }
}

/// Reads every item of the project once with its parameters unknown, so that anything wrong in a
/// template is found whether or not a window uses it.
fn look_over_templates<'t>(reader: &mut Reader<'t>, definitions: &'t Definitions<'t>) {
    for kind in Kind::ALL {
        for item in in_order(definitions, *kind)
            .into_iter()
            .filter(|item| !item.from_library)
        {
            look_over(reader, item);
        }
    }
}

fn look_over<'t>(reader: &mut Reader<'t>, item: &'t Item<'t>) {
    let scope = reader.scope_of_template(item, item.kind.known_names());
    match item.kind {
        Kind::Rod | Kind::Board => {
            reader.support_item(item, &scope);
        }
        Kind::Heading => {
            reader.heading(item, &scope, item.name_span);
        }
        Kind::Make => {
            reader.making(item, &scope);
        }
        Kind::Outline => {
            reader.outline(&Referred { item, scope }, None);
        }
        Kind::Pleats => {
            reader.pleat_rule(&Referred { item, scope });
        }
        Kind::Panel => look_over_panel(reader, item),
        Kind::Treatment => {
            reader.treatment(item, &scope);
        }
        Kind::Measure => {
            for written in item.measures.values() {
                reader.amount_of(&written.within(&scope));
            }
        }
        Kind::Fabric | Kind::Notion | Kind::Window => {}
    }
}

/// A panel at file level may leave out what those that copy it will add.
fn look_over_panel<'t>(reader: &mut Reader<'t>, item: &'t Item<'t>) {
    let scope = reader.scope_of_template(item, &[]);
    let before = reader.diagnostics.len();
    reader.panel(item, &scope, &[]);
    let found = reader
        .diagnostics
        .split_off(before.min(reader.diagnostics.len()));
    let missing = codes::property_missing::CODE.slug;
    reader.diagnostics.extend(
        found
            .into_iter()
            .filter(|diagnostic| diagnostic.code.slug != missing),
    );
}

/// The items of a kind in the order they were written.
fn in_order<'t>(definitions: &'t Definitions<'t>, kind: Kind) -> Vec<&'t Item<'t>> {
    let mut items: Vec<&Item<'t>> = definitions
        .items
        .get(&kind)
        .into_iter()
        .flat_map(BTreeMap::values)
        .collect();
    items.sort_by_key(|item| item.name_span);
    items
}

/// What the main file makes and nothing uses was probably forgotten; a house style is another
/// matter.
fn report_unused<'t>(reader: &mut Reader<'t>, definitions: &'t Definitions<'t>, loaded: &Loaded) {
    for kind in Kind::ALL.iter().filter(|kind| **kind != Kind::Window) {
        for item in in_order(definitions, *kind) {
            let in_main = Some(item.name_span.file) == loaded.main;
            if in_main && !reader.used.contains(&(*kind, item.name)) {
                reader.report(codes::NameUnused {
                    span: item.name_span,
                    kind: kind.noun(),
                    name: item.name,
                });
            }
        }
    }
}

/// Without a title a job is called what its main file is called.
fn title_of(loaded: &Loaded) -> String {
    let path = loaded.main.map_or("", |main| loaded.sources.name(main));
    let file = path.rsplit('/').next().unwrap_or(path);
    file.strip_suffix(".pelmet").unwrap_or(file).to_owned()
}
