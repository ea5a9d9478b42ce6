//! The forms in which a packet is written, a row each.

use pelmet_packet::Packet;

use super::choice::PacketChoice;
use super::drawings::{cut_pieces, elevations, foldings, layouts, outline_drawings, outline_plots};
use super::name::{FileName, PacketFile, numbered, one};
use crate::true_size::{TemplatesOf, templates};
use crate::writer::html;
use crate::writer::pdf::pdf;
use crate::writer::plain::{TextOptions, text};
use crate::writer::printed::printed;
use crate::writer::spreadsheet::{self, TableName};

/// A form in which a packet is written: a row of [`FORMS`].
#[derive(Debug)]
pub struct PacketForm {
    /// The word for it on the command line.
    pub word: &'static str,
    /// What it is, for those who choose.
    pub about: &'static str,
    /// Whether it is written unless something else is chosen.
    pub usual: bool,
    /// What its files are called.
    pub(super) names: &'static [FileName],
    /// Makes its files. They depend on nothing but the packet and the choice.
    make: fn(&Packet, &PacketChoice) -> Vec<PacketFile>,
}

const PAGE: FileName = FileName("packet", ".html");
const PRINT: FileName = FileName("packet", ".pdf");
const TEMPLATES: FileName = FileName("templates", ".pdf");
const ALL_TEMPLATES: FileName = FileName("all-templates", ".pdf");
const JSON: FileName = FileName("packet", ".json");
const WORKBOOK: FileName = FileName("packet", ".xlsx");
const TEXT: FileName = FileName("sheets", ".txt");
const ELEVATION: FileName = FileName("elevation-", ".svg");
const LAYOUT: FileName = FileName("layout-", ".svg");
const OUTLINE: FileName = FileName("outline-", ".svg");
const PLOT: FileName = FileName("outline-", ".dxf");
const FOLDING: FileName = FileName("folding-", ".svg");
const CUT_PIECE: FileName = FileName("cut-", ".svg");

/// What the file of one table for a spreadsheet is called.
const fn csv_name(table: TableName) -> FileName {
    FileName(table.word(), ".csv")
}

/// Every form there is, in the order they are written.
pub static FORMS: &[PacketForm] = &[
    PacketForm {
        word: "html",
        about: "the sheets, with their drawings, as one page for a tablet or a printer",
        usual: true,
        names: &[PAGE],
        make: |packet, choice| one(PAGE, html::page(packet, &choice.sheets, choice.paper)),
    },
    PacketForm {
        word: "pdf",
        about: "the sheets, with their drawings, as pages to print",
        usual: true,
        names: &[PRINT],
        make: |packet, choice| {
            let paper = choice.paper_for(packet);
            one(PRINT, pdf(&printed(packet, &choice.sheets, paper)))
        },
    },
    PacketForm {
        word: "templates",
        about: "shaped pieces and story sticks at their true size, as pages to lay together",
        usual: true,
        names: &[TEMPLATES],
        make: |packet, choice| {
            let paper = choice.paper_for(packet);
            one(
                TEMPLATES,
                pdf(&templates(packet, TemplatesOf::Shaped, paper)),
            )
        },
    },
    PacketForm {
        word: "all-templates",
        about: "the same with every piece, rectangles too",
        usual: false,
        names: &[ALL_TEMPLATES],
        make: |packet, choice| {
            let paper = choice.paper_for(packet);
            one(
                ALL_TEMPLATES,
                pdf(&templates(packet, TemplatesOf::All, paper)),
            )
        },
    },
    PacketForm {
        word: "json",
        about: "the whole packet, for programs",
        usual: true,
        names: &[JSON],
        make: |packet, _| one(JSON, packet.to_json()),
    },
    PacketForm {
        word: "text",
        about: "the sheets as plain text",
        usual: false,
        names: &[TEXT],
        // As wide as ever, whatever the terminal, so that the packet is the same anywhere.
        make: |packet, choice| one(TEXT, text(packet, &choice.sheets, TextOptions::default())),
    },
    PacketForm {
        word: "drawings",
        about: "windows, layouts of cloths, foldings and cut pieces to scale, as SVG files",
        usual: false,
        names: &[ELEVATION, LAYOUT, FOLDING, CUT_PIECE],
        make: |packet, _| {
            let mut drawings = numbered(ELEVATION, elevations(packet));
            drawings.extend(numbered(LAYOUT, layouts(packet)));
            drawings.extend(numbered(FOLDING, foldings(packet)));
            drawings.extend(numbered(CUT_PIECE, cut_pieces(packet)));
            drawings
        },
    },
    PacketForm {
        word: "outlines",
        about: "every piece opened out at its true size, as SVG files",
        usual: false,
        names: &[OUTLINE],
        make: |packet, _| numbered(OUTLINE, outline_drawings(packet)),
    },
    PacketForm {
        word: "dxf",
        about: "the same as DXF files in millimetres, for a plotter or a cutter",
        usual: false,
        names: &[PLOT],
        make: |packet, _| numbered(PLOT, outline_plots(packet)),
    },
    PacketForm {
        word: "csv",
        about: "cuts, marks and what to buy as comma-separated values",
        usual: false,
        names: &[
            csv_name(TableName::Buying),
            csv_name(TableName::Cuts),
            csv_name(TableName::Marks),
        ],
        make: |packet, _| {
            let tables = spreadsheet::tables(packet);
            let files = tables.iter().flat_map(|table| {
                let name = csv_name(table.name);
                one(name, spreadsheet::csv(table))
            });
            files.collect()
        },
    },
    PacketForm {
        word: "xlsx",
        about: "the same and the quote as one workbook, costs as formulas",
        usual: false,
        names: &[WORKBOOK],
        make: |packet, _| one(WORKBOOK, spreadsheet::workbook(packet)),
    },
];

impl PacketForm {
    /// The form chosen by a word.
    pub fn named(word: &str) -> Option<&'static PacketForm> {
        FORMS.iter().find(|form| form.word == word)
    }

    /// Makes the files of a packet in this form.
    pub fn files(&self, packet: &Packet, choice: &PacketChoice) -> Vec<PacketFile> {
        (self.make)(packet, choice)
    }
}

impl PartialEq for PacketForm {
    /// Each form has a word of its own.
    fn eq(&self, other: &PacketForm) -> bool {
        self.word == other.word
    }
}

impl Eq for PacketForm {}
