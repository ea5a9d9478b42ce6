//! The files of a packet's folder: which there are, how they are called and what is in them.

use std::collections::BTreeSet;

use pelmet_packet::Packet;

use crate::{TextOptions, elevations, html, layouts, text};

/// A file of a packet's folder.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct PacketFile {
    /// Its name in the folder.
    pub name: String,
    /// What is in it.
    pub contents: Vec<u8>,
}

/// A form in which a packet is written.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum Form {
    /// The whole of it, for programs.
    Json,
    /// Every sheet and drawing on one page, for a tablet or a printer.
    Page,
    /// Every sheet as plain text.
    Text,
    /// Drawings as SVG files.
    Drawings,
}

/// What is written of a packet.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Choice {
    /// In which forms.
    pub forms: BTreeSet<Form>,
}

impl Default for Choice {
    fn default() -> Self {
        Self {
            forms: BTreeSet::from([Form::Json, Form::Page, Form::Text, Form::Drawings]),
        }
    }
}

const JSON: &str = "packet.json";
const PAGE: &str = "packet.html";
const TEXT: &str = "sheets.txt";

/// What drawings are called, before their numbers: of windows, and of how cloths are laid out.
const ELEVATION: &str = "elevation-";
const LAYOUT: &str = "layout-";
const DRAWING: &str = ".svg";

/// The files of a packet, in the forms chosen. They depend on nothing but the packet and the choice.
pub fn files(packet: &Packet, choice: &Choice) -> Vec<PacketFile> {
    let forms = choice.forms.iter();
    forms.flat_map(|form| in_form(packet, *form)).collect()
}

/// Whether a file has a name that a packet's files have, and so may be replaced by one.
pub fn is_of_a_packet(name: &str) -> bool {
    let drawing = [ELEVATION, LAYOUT]
        .iter()
        .find_map(|of| name.strip_prefix(of));
    [JSON, PAGE, TEXT].contains(&name) || drawing.is_some_and(|rest| rest.ends_with(DRAWING))
}

fn in_form(packet: &Packet, form: Form) -> Vec<PacketFile> {
    match form {
        Form::Json => vec![file(JSON, packet.to_json())],
        Form::Page => vec![file(PAGE, html(packet))],
        // As wide as ever, whatever the terminal, so that the packet is the same anywhere.
        Form::Text => vec![file(TEXT, text(packet, TextOptions::default()))],
        Form::Drawings => {
            let mut drawings = numbered(ELEVATION, elevations(packet));
            drawings.extend(numbered(LAYOUT, layouts(packet)));
            drawings
        }
    }
}

fn file(name: &str, contents: impl Into<Vec<u8>>) -> PacketFile {
    PacketFile {
        name: name.to_owned(),
        contents: contents.into(),
    }
}

/// Drawings of one kind: `layout-1-kelp-stripe.svg`. The number keeps two names apart that a file
/// system takes for one.
fn numbered(of: &str, drawings: Vec<(&str, String)>) -> Vec<PacketFile> {
    let numbered = (1_u32..).zip(drawings);
    numbered
        .map(|(number, (name, drawing))| file(&format!("{of}{number}-{name}{DRAWING}"), drawing))
        .collect()
}
