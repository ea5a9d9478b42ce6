//! What a design would take if one of its cloths were another.
//!
//! The other cloths are written in the language, on a sheet of their own that uses the design; so they
//! may be anything a cloth may be, and a slip in them is told as any other.

mod sheet;
mod table;

use pelmet_design::{Design, Project, load, resolve};
use pelmet_diagnostics::{Diagnostic, Diagnostics, Severity, Sources, codes};
use pelmet_packet::{ClothCompared, ClothComparison};

use crate::assemble::Printer;
use crate::pipeline::check;
use sheet::{Sheet, WithSheet};
use table::Table;

/// The name that diagnostics have for the sheet of what was asked for.
pub const ASKED_FOR: &str = "what was asked for";

/// What is asked about the cloths of a design.
#[derive(Clone, Default, Debug)]
pub struct ClothsAsked {
    /// Which cloths; all of them where none is named.
    pub cloths: Vec<String>,
    /// Properties they might have instead, as they are written in a sheet: `width: 60 in`.
    pub properties: Vec<String>,
    /// Other cloths of the design that might take their place.
    pub others: Vec<String>,
}

/// What came of a comparison.
#[derive(Debug)]
pub struct ClothsCompared {
    /// Every text that was read.
    pub sources: Sources,
    /// Whether the design could be read at all.
    pub is_read: bool,
    /// The errors found.
    pub diagnostics: Vec<Diagnostic>,
    /// The comparison; exactly where there is no error.
    pub comparison: Option<ClothComparison>,
}

/// Lays a job out with other cloths in the place of its own.
pub fn compare_cloths(main: &str, project: &dyn Project, asked: &ClothsAsked) -> ClothsCompared {
    let checked = check(main, project);
    let Some(answer) = &checked.answer else {
        return ClothsCompared {
            sources: checked.sources,
            is_read: checked.main.is_some(),
            diagnostics: errors(checked.diagnostics),
            comparison: None,
        };
    };
    let used: Vec<&str> = answer
        .laid
        .iter()
        .filter_map(|laid| answer.design.job.fabrics.get(laid.to_lay.fabric))
        .map(|fabric| fabric.name.as_str())
        .collect();
    let sheet = Sheet::of(main, &answer.design, &used, asked);
    let title = answer.design.title.clone();
    compared(&sheet, project, title)
}

fn compared(sheet: &Sheet, project: &dyn Project, title: String) -> ClothsCompared {
    let with_sheet = WithSheet { sheet, project };
    let loaded = load(ASKED_FOR, &with_sheet);
    let resolved = resolve(&loaded);
    // Properties that are asked for are written for each cloth, so what is wrong in them is met as often.
    let mut found = Diagnostics::told_wherever();
    found.extend(errors(loaded.diagnostics));
    found.extend(errors(resolved.diagnostics));
    let cloths = if found.is_empty() {
        compare(sheet, &resolved.design, &mut found)
    } else {
        Vec::new()
    };
    let is_sound = found.is_empty();
    ClothsCompared {
        diagnostics: found.settle(&loaded.sources),
        sources: loaded.sources,
        is_read: true,
        comparison: is_sound.then_some(ClothComparison { title, cloths }),
    }
}

/// Warnings of the design are no part of a comparison.
fn errors(diagnostics: Vec<Diagnostic>) -> Vec<Diagnostic> {
    let is_error = |one: &Diagnostic| one.severity == Severity::Error;
    diagnostics.into_iter().filter(is_error).collect()
}

impl ClothsAsked {
    fn is_without_wish(&self) -> bool {
        self.properties.is_empty() && self.others.is_empty()
    }
}

fn compare(sheet: &Sheet, design: &Design, found: &mut Diagnostics) -> Vec<ClothCompared> {
    let mut compared = Vec::new();
    for asked in &sheet.asked {
        let table = Table {
            design,
            cloth: design
                .job
                .fabrics
                .iter()
                .position(|fabric| fabric.name == asked.cloth)
                .unwrap_or(usize::MAX),
            printer: Printer {
                style: design.style,
                currency: design.currency.as_deref(),
            },
        };
        match table.of(asked) {
            Some(cloth) => compared.push(cloth),
            None => found.push(codes::cloth_not_cut(&asked.cloth)),
        }
    }
    compared
}
