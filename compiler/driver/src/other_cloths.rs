//! What a design would take if one of its cloths were another.
//!
//! The other cloths are written in the language, on a sheet of their own that uses the design; so they
//! may be anything a cloth may be, and a slip in them is told as any other.

use std::collections::BTreeSet;
use std::fmt::Write as _;

use pelmet_design::{Design, Project, ReadTrouble, load, resolve};
use pelmet_diagnostics::{Diagnostic, Diagnostics, Severity, Sources, codes};
use pelmet_measure::{Length, Money};
use pelmet_model::{Fabric, Railroad};
use pelmet_packet::{Amount, ClothCompared, ClothComparison, ClothTaken, ClothTrial, Measure};

use crate::assemble::{Printer, cost, pieces_along, print_repeat};
use crate::layout::{Tried, Unfit, settled, tried};
use crate::pipeline::{Purpose, check_for};
use crate::watch::unwatched;

/// The name that reports have for the sheet of what was asked for.
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
    /// The mistakes found.
    pub diagnostics: Vec<Diagnostic>,
    /// The comparison; exactly where there is no mistake.
    pub comparison: Option<ClothComparison>,
}

/// Lays a job out with other cloths in the place of its own.
pub fn compare_cloths(main: &str, project: &dyn Project, asked: &ClothsAsked) -> ClothsCompared {
    let checked = check_for(Purpose::Reports, main, project, &mut unwatched);
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
    let mut found = loaded.diagnostics;
    found.extend(resolved.diagnostics);
    let mut found = once(errors(found));
    let cloths = if found.is_empty() {
        sheet.compare(&resolved.design, &mut found)
    } else {
        Vec::new()
    };
    let mut diagnostics = Diagnostics::new();
    let is_sound = found.is_empty();
    diagnostics.extend(found);
    ClothsCompared {
        diagnostics: diagnostics.settle(&loaded.sources),
        sources: loaded.sources,
        is_read: true,
        comparison: is_sound.then_some(ClothComparison { title, cloths }),
    }
}

/// Properties that are asked for are written for each cloth, so a mistake in them is met as often: it
/// is told of the first.
fn once(diagnostics: Vec<Diagnostic>) -> Vec<Diagnostic> {
    let mut told = BTreeSet::new();
    let is_new = |report: &Diagnostic| told.insert((report.code.slug, report.title.clone()));
    diagnostics.into_iter().filter(is_new).collect()
}

/// Warnings of the design are no part of a comparison.
fn errors(diagnostics: Vec<Diagnostic>) -> Vec<Diagnostic> {
    let is_error = |report: &Diagnostic| report.severity == Severity::Error;
    diagnostics.into_iter().filter(is_error).collect()
}

/// A cloth asked about, and what might take its place, each with the name it has on the sheet.
struct Asked {
    cloth: String,
    others: Vec<(String, String)>,
}

/// The sheet of what was asked for.
struct Sheet {
    text: String,
    asked: Vec<Asked>,
}

impl Sheet {
    /// Writes the sheet: without a wish of their own, cloths are compared with their like without a
    /// print, lying along, and with every other cloth of the design.
    fn of(main: &str, design: &Design, used: &[&str], wishes: &ClothsAsked) -> Sheet {
        let named = wishes.cloths.iter().map(String::as_str);
        let cloths: Vec<&str> = if wishes.cloths.is_empty() {
            used.to_vec()
        } else {
            named.collect()
        };
        let mut sheet = Sheet {
            text: format!("use \"{main}\"\n"),
            asked: Vec::new(),
        };
        for cloth in cloths {
            let fabric = design
                .job
                .fabrics
                .iter()
                .find(|fabric| fabric.name == cloth);
            let (properties, others) = if wishes.is_without_wish() {
                usual(design, fabric)
            } else {
                (wishes.properties.clone(), wishes.others.clone())
            };
            sheet.ask(cloth, &properties, &others);
        }
        sheet
    }

    fn ask(&mut self, cloth: &str, properties: &[String], others: &[String]) {
        let number = self.asked.len().saturating_add(1);
        let mut asked = Asked {
            cloth: cloth.to_owned(),
            others: Vec::new(),
        };
        // Naming the cloth alone as well lets a name that is not known be told.
        self.add(&format!("compared-{number} like {cloth} {{}}"));
        let with = properties
            .iter()
            .map(|text| (cloth, text.trim(), text.trim()));
        let instead = others
            .iter()
            .map(|other| (other.as_str(), "", other.trim()));
        for ((like, written, what), place) in with.chain(instead).zip(1_usize..) {
            let name = format!("compared-{number}-{place}");
            self.add(&format!("{name} like {like} {{ {written} }}"));
            asked.others.push((what.to_owned(), name));
        }
        self.asked.push(asked);
    }

    fn add(&mut self, fabric: &str) {
        // Writing to a text cannot fail.
        let _ = writeln!(self.text, "fabric {fabric}");
    }

    fn compare(&self, design: &Design, found: &mut Vec<Diagnostic>) -> Vec<ClothCompared> {
        let mut compared = Vec::new();
        for asked in &self.asked {
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
}

impl ClothsAsked {
    fn is_without_wish(&self) -> bool {
        self.properties.is_empty() && self.others.is_empty()
    }
}

/// What a cloth is compared with unless something is asked for.
fn usual(design: &Design, fabric: Option<&Fabric>) -> (Vec<String>, Vec<String>) {
    let mut properties = Vec::new();
    if let Some(fabric) = fabric {
        if fabric.repeat.is_some() {
            properties.push(String::from("repeat: none"));
        }
        if fabric.railroad != Railroad::Always {
            properties.push(String::from("railroad: always"));
        }
    }
    let is_other = |other: &&Fabric| fabric.is_some_and(|fabric| fabric.name != other.name);
    let others = design.job.fabrics.iter().filter(is_other);
    (properties, others.map(|other| other.name.clone()).collect())
}

/// A project with one sheet more.
struct WithSheet<'a> {
    sheet: &'a Sheet,
    project: &'a dyn Project,
}

impl Project for WithSheet<'_> {
    fn read(&self, path: &str) -> Result<Vec<u8>, ReadTrouble> {
        if path == ASKED_FOR {
            Ok(self.sheet.text.clone().into_bytes())
        } else {
            self.project.read(path)
        }
    }

    fn paths(&self) -> Vec<String> {
        self.project.paths()
    }
}

/// The trials of one cloth.
struct Table<'a> {
    design: &'a Design,
    cloth: usize,
    printer: Printer<'a>,
}

impl Table<'_> {
    /// `None` where nothing is cut from the cloth.
    fn of(&self, asked: &Asked) -> Option<ClothCompared> {
        let now = self.design.job.fabrics.get(self.cloth)?;
        let as_it_is = self.tried(now)?;
        let mut trials = vec![self.trial("as it is", now, Some(&as_it_is), None)];
        for (what, name) in &asked.others {
            let fabrics = &self.design.job.fabrics;
            let other = fabrics.iter().find(|fabric| fabric.name == *name)?;
            let tried = self.tried(other)?;
            trials.push(self.trial(what, other, Some(&tried), Some(&as_it_is)));
        }
        Some(ClothCompared {
            name: asked.cloth.clone(),
            trials,
        })
    }

    /// The job with this cloth, or why not; `None` where nothing would be cut from it.
    fn tried(&self, fabric: &Fabric) -> Option<Result<Tried, String>> {
        let settled = settled(self.design, self.cloth, fabric.clone());
        match tried(self.design, self.cloth, settled) {
            Ok(tried) => Some(Ok(tried)),
            Err(Unfit::NotUsed) => None,
            Err(Unfit::Found(why)) => Some(Err(why)),
            Err(Unfit::Trouble(trouble)) => Some(Err(trouble.to_string())),
        }
    }

    fn trial(
        &self,
        what: &str,
        fabric: &Fabric,
        tried: Option<&Result<Tried, String>>,
        before: Option<&Result<Tried, String>>,
    ) -> ClothTrial {
        let taken = tried.and_then(|tried| tried.as_ref().ok());
        let before = before.and_then(|before| before.as_ref().ok());
        let railroad = taken.map_or(fabric.railroad, |taken| taken.fabric.railroad);
        ClothTrial {
            what: what.to_owned(),
            width: self.printer.plain(fabric.width),
            repeat: fabric
                .repeat
                .map(|repeat| print_repeat(repeat, &self.printer)),
            way_up: fabric.way,
            along: pieces_along(railroad),
            taken: taken.map(|taken| self.taken(taken, before)),
            impossible: tried.and_then(|tried| tried.as_ref().err()).cloned(),
        }
    }

    fn taken(&self, tried: &Tried, before: Option<&Tried>) -> ClothTaken {
        let (layout, printer) = (&tried.layout, &self.printer);
        let money = self.money(tried);
        let was = before.and_then(|before| self.money(before));
        let more = money.zip(was).map(|(now, was)| now - was);
        ClothTaken {
            piece_count: u32::try_from(layout.placed.len()).unwrap_or(u32::MAX),
            exact: printer.cut(layout.exact),
            bought: printer.bolt(layout.bought),
            rule_of_thumb: printer.bought(layout.rule_of_thumb),
            at_least: printer.at_least(layout.at_least),
            cost: money.map(|money| printer.amount(money)),
            more_bought: before.map(|before| self.more(layout.bought - before.layout.bought)),
            more_cost: more.map(|more| self.more_money(more)),
        }
    }

    fn money(&self, tried: &Tried) -> Option<Money> {
        cost(tried.fabric.price.as_ref()?, tried.layout.bought)
    }

    /// A difference of lengths, in words of its own.
    fn more(&self, length: Length) -> Measure {
        let size = self.printer.bolt(length.abs());
        Measure {
            mm: length.as_millimetres_f64(),
            text: differing(&size.text, length.is_zero(), length.is_negative()),
        }
    }

    fn more_money(&self, money: Money) -> Amount {
        let none = Money::from_hundredths(0);
        let size = if money < none { none - money } else { money };
        let size = self.printer.amount(size);
        Amount {
            amount: if money < none {
                -size.amount
            } else {
                size.amount
            },
            text: differing(&size.text, money == none, money < none),
        }
    }
}

fn differing(size: &str, is_none: bool, is_less: bool) -> String {
    match (is_none, is_less) {
        (true, _) => String::from("the same"),
        (false, true) => format!("{size} less"),
        (false, false) => format!("{size} more"),
    }
}
