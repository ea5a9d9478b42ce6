//! The sheet on which other cloths are written in the language, so that they may be anything a cloth
//! may be.

use std::fmt::Write as _;

use pelmet_design::{Design, Project, ReadFinding};
use pelmet_model::{Fabric, Railroad};

use super::{ASKED_FOR, ClothsAsked};
use crate::layout::tried;

/// A cloth asked about, and what might take its place, each with the name it has on the sheet.
pub(super) struct Asked {
    pub(super) cloth: String,
    /// What is different of each, and the name that stands for it.
    pub(super) others: Vec<(String, String)>,
}

/// The sheet of what was asked for.
pub(super) struct Sheet {
    pub(super) text: String,
    pub(super) asked: Vec<Asked>,
}

impl Sheet {
    /// Writes the sheet: without a wish of their own, cloths are compared with their like without a
    /// print, lying along, and with every other cloth of the design.
    pub(super) fn of(main: &str, design: &Design, used: &[&str], wishes: &ClothsAsked) -> Sheet {
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
            let (properties, others) = if wishes.is_without_wish() {
                usual(design, cloth)
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
}

/// What a cloth is compared with unless something is asked for: properties it might have instead, and
/// other cloths. One that is not known is compared with nothing.
fn usual(design: &Design, cloth: &str) -> (Vec<String>, Vec<String>) {
    let fabrics = &design.job.fabrics;
    let Some(index) = fabrics.iter().position(|fabric| fabric.name == cloth) else {
        return (Vec::new(), Vec::new());
    };
    let others = fabrics.iter().filter(|other| other.name != cloth);
    let others = others.map(|other| other.name.clone()).collect();
    let fabric = fabrics.get(index);
    let printed = fabric.is_some_and(|fabric| fabric.repeat.is_some());
    let lies_along = fabric.is_some_and(|fabric| all_lie_along(design, index, fabric));
    let properties = [(printed, "repeat: none"), (!lies_along, "railroad: always")];
    let properties = properties.into_iter().filter(|(differs, _)| *differs);
    let properties = properties.map(|(_, text)| text.to_owned()).collect();
    (properties, others)
}

/// Whether all pieces of a cloth lie along it as it is.
fn all_lie_along(design: &Design, cloth: usize, fabric: &Fabric) -> bool {
    match fabric.railroad {
        Railroad::Always => true,
        Railroad::Never | Railroad::WhereTooWide => false,
        Railroad::WhereItSaves => tried(design, cloth, fabric)
            .is_ok_and(|tried| tried.fabric.railroad == Railroad::Always),
    }
}

/// A project with one sheet more.
pub(super) struct WithSheet<'a> {
    pub(super) sheet: &'a Sheet,
    pub(super) project: &'a dyn Project,
}

impl Project for WithSheet<'_> {
    fn read(&self, path: &str) -> Result<Vec<u8>, ReadFinding> {
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
