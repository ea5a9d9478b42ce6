//! The files of a packet's folder: which there are, how they are called and what is in them.

use std::fmt::Display;

use pelmet_packet::Packet;

use crate::templates::{Which, templates};
use crate::{
    Choice, TextOptions, cut_pieces, data, elevations, foldings, html, layouts, outline_drawings,
    outline_plots, print, text,
};

/// A file of a packet's folder.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct PacketFile {
    /// Its name in the folder.
    pub name: String,
    /// What is in it.
    pub contents: Vec<u8>,
}

/// A form in which a packet is written: a row of [`FORMS`].
#[derive(Debug)]
pub struct Form {
    /// The word it is chosen by.
    pub word: &'static str,
    /// What it is, for those who choose.
    pub about: &'static str,
    /// Whether it is written unless something else is chosen.
    pub usual: bool,
    /// What its files are called.
    names: &'static [Name],
    /// Makes its files. They depend on nothing but the packet and the choice.
    make: fn(&Packet, &Choice) -> Vec<PacketFile>,
}

/// Every form there is, in the order they are written.
pub static FORMS: [Form; 11] = [
    Form {
        word: "html",
        about: "the sheets, with their drawings, as one page for a tablet or a printer",
        usual: true,
        names: &[PAGE],
        make: |packet, choice| one(PAGE, html(packet, &choice.sheets, choice.paper)),
    },
    Form {
        word: "pdf",
        about: "the sheets, with their drawings, as pages to print",
        usual: true,
        names: &[PRINT],
        make: |packet, choice| {
            one(
                PRINT,
                print(packet, &choice.sheets, choice.paper_for(packet)),
            )
        },
    },
    Form {
        word: "templates",
        about: "shaped pieces and story sticks at their true size, as pages to lay together",
        usual: true,
        names: &[TEMPLATES],
        make: |packet, choice| {
            let paper = choice.paper_for(packet);
            one(TEMPLATES, templates(packet, Which::Shaped, paper))
        },
    },
    Form {
        word: "all-templates",
        about: "the same with every piece, rectangles too",
        usual: false,
        names: &[ALL_TEMPLATES],
        make: |packet, choice| {
            let paper = choice.paper_for(packet);
            one(ALL_TEMPLATES, templates(packet, Which::All, paper))
        },
    },
    Form {
        word: "json",
        about: "the whole packet, for programs",
        usual: true,
        names: &[JSON],
        make: |packet, _| one(JSON, packet.to_json()),
    },
    Form {
        word: "text",
        about: "the sheets as plain text",
        usual: false,
        names: &[TEXT],
        // As wide as ever, whatever the terminal, so that the packet is the same anywhere.
        make: |packet, choice| one(TEXT, text(packet, &choice.sheets, TextOptions::default())),
    },
    Form {
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
    Form {
        word: "outlines",
        about: "every piece opened out at its true size, as SVG files",
        usual: false,
        names: &[OUTLINE],
        make: |packet, _| numbered(OUTLINE, outline_drawings(packet)),
    },
    Form {
        word: "dxf",
        about: "the same as DXF files in millimetres, for a plotter or a cutter",
        usual: false,
        names: &[PLOT],
        make: |packet, _| numbered(PLOT, outline_plots(packet)),
    },
    Form {
        word: "csv",
        about: "cuts, marks and what to buy as comma-separated values",
        usual: false,
        names: &[BUYING, CUTS, MARKS],
        make: |packet, _| {
            let sheets = data::sheets(packet);
            let files = sheets.iter().map(|sheet| PacketFile {
                name: format!("{}.csv", sheet.name),
                contents: data::csv(sheet),
            });
            files.collect()
        },
    },
    Form {
        word: "xlsx",
        about: "the same and the quote as one workbook, costs as formulas",
        usual: false,
        names: &[WORKBOOK],
        make: |packet, _| one(WORKBOOK, data::workbook(packet)),
    },
];

const PAGE: Name = Name("packet", ".html");
const PRINT: Name = Name("packet", ".pdf");
const TEMPLATES: Name = Name("templates", ".pdf");
const ALL_TEMPLATES: Name = Name("all-templates", ".pdf");
const JSON: Name = Name("packet", ".json");
const BUYING: Name = Name("buying", ".csv");
const CUTS: Name = Name("cuts", ".csv");
const MARKS: Name = Name("marks", ".csv");
const WORKBOOK: Name = Name("packet", ".xlsx");
const TEXT: Name = Name("sheets", ".txt");
const ELEVATION: Name = Name("elevation-", ".svg");
const LAYOUT: Name = Name("layout-", ".svg");
const OUTLINE: Name = Name("outline-", ".svg");
const PLOT: Name = Name("outline-", ".dxf");
const FOLDING: Name = Name("folding-", ".svg");
const CUT_PIECE: Name = Name("cut-", ".svg");

/// The files of a packet, in the forms chosen.
pub fn files(packet: &Packet, choice: &Choice) -> Vec<PacketFile> {
    let forms = choice.forms.iter();
    forms.flat_map(|form| form.files(packet, choice)).collect()
}

/// Whether a file has a name that a packet's files have, whatever was chosen, and so may be replaced
/// by one.
pub fn is_of_a_packet(name: &str) -> bool {
    let mut names = FORMS.iter().flat_map(|form| form.names);
    names.any(|known| known.fits(name))
}

impl Form {
    /// The form chosen by a word.
    pub fn named(word: &str) -> Option<&'static Form> {
        FORMS.iter().find(|form| form.word == word)
    }

    /// Its files of one packet.
    pub fn files(&self, packet: &Packet, choice: &Choice) -> Vec<PacketFile> {
        (self.make)(packet, choice)
    }
}

impl PartialEq for Form {
    /// Each form has a word of its own.
    fn eq(&self, other: &Form) -> bool {
        self.word == other.word
    }
}

impl Eq for Form {}

/// What a file is called: a beginning and an ending. Where the beginning ends in a hyphen there are
/// several, each with its number and its own name between the two.
#[derive(Copy, Clone, Debug)]
struct Name(&'static str, &'static str);

impl Name {
    /// Whether a file has such a name.
    fn fits(self, name: &str) -> bool {
        let Name(begins, ends) = self;
        let between = name
            .strip_prefix(begins)
            .and_then(|rest| rest.strip_suffix(ends));
        between.is_some_and(|between| between.is_empty() != begins.ends_with('-'))
    }
}

/// The only file of its kind.
fn one(Name(begins, ends): Name, contents: impl Into<Vec<u8>>) -> Vec<PacketFile> {
    vec![PacketFile {
        name: format!("{begins}{ends}"),
        contents: contents.into(),
    }]
}

/// Files of one kind: `layout-1-kelp-stripe.svg`. The number keeps two names apart that a file
/// system takes for one.
fn numbered(
    Name(begins, ends): Name,
    named: Vec<(impl Display, impl Into<Vec<u8>>)>,
) -> Vec<PacketFile> {
    let numbered = (1_u32..).zip(named);
    numbered
        .map(|(number, (name, contents))| PacketFile {
            name: format!("{begins}{number}-{name}{ends}"),
            contents: contents.into(),
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::is_of_a_packet;

    #[test]
    fn a_name_is_a_packets_or_not() {
        for (name, is) in [
            ("packet.html", true),
            ("packet.json", true),
            ("packet.pdf", true),
            ("sheets.txt", true),
            ("elevation-1-bay.svg", true),
            ("layout-12-kelp-stripe.svg", true),
            ("packet-old.html", false),
            ("packet.html.txt", false),
            ("my packet.html", false),
            ("elevation-.svg", false),
            ("elevation.svg", false),
            ("sheets", false),
            ("", false),
        ] {
            assert_eq!(is_of_a_packet(name), is, "{name}");
        }
    }
}
