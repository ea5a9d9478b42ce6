//! The packet as one page for a tablet or a printer: every sheet, with its drawings. It asks for
//! nothing outside itself.

mod words;

use std::iter::Peekable;
use std::vec::IntoIter;

use maud::{DOCTYPE, Markup, PreEscaped, html};
use pelmet_packet::{Packet, SheetKind};

use crate::content::{PieceLabel, SheetBlock, TextTable};
use crate::paper::Paper;
use crate::sheet::{sheet, sheet_title, sheet_word};
use crate::writer::svg;
use words::words;

/// How the page looks.
const STYLE: &str = include_str!("style.css");

/// A part of a page, to which a link at its top leads.
pub(crate) struct HtmlSection {
    /// The end of its address.
    pub(crate) word: String,
    pub(crate) title: String,
    pub(crate) blocks: Vec<SheetBlock>,
}

/// Sheets, with their drawings, as one page that asks for nothing outside itself. It is printed on the
/// paper named; where none is, on whatever lies in the printer.
pub(crate) fn page(packet: &Packet, sheets: &[SheetKind], paper: Option<Paper>) -> String {
    let sections = sheets.iter().map(|kind| HtmlSection {
        word: sheet_word(*kind).to_owned(),
        title: sheet_title(*kind).to_owned(),
        blocks: sheet(packet, *kind).into_blocks(),
    });
    document(&packet.title, "Sheets", sections.collect(), paper)
}

/// A whole page; `parts` is what its sections are.
pub(crate) fn document(
    title: &str,
    parts: &str,
    sections: Vec<HtmlSection>,
    paper: Option<Paper>,
) -> String {
    let markup = html! {
        (DOCTYPE)
        html lang="en" {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                title { (title) }
                style {
                    (PreEscaped(STYLE)) (PreEscaped(svg::style())) (paper.map_or("", printed_on))
                }
            }
            body {
                header {
                    h1 { (title) }
                    @if sections.len() > 1 {
                        nav aria-label=(parts) {
                            ul {
                                @for one in &sections { li { a href={ "#" (one.word) } { (one.title) } } }
                            }
                        }
                    }
                }
                main { @for one in sections { (section(one)) } }
            }
        }
    };
    format!("{}\n", markup.into_string())
}

/// What asks a browser to print on that paper.
fn printed_on(paper: Paper) -> &'static str {
    match paper {
        Paper::Letter => "@page { size: letter }",
        Paper::A4 => "@page { size: A4 }",
    }
}

fn section(
    HtmlSection {
        word,
        title,
        blocks,
    }: HtmlSection,
) -> Markup {
    let mut blocks = blocks.into_iter().peekable();
    html! {
        section id=(word) aria-label=(title) {
            @while let Some(block) = blocks.next() {
                (block_markup(&title, block, &mut blocks)) "\n"
            }
        }
    }
}

/// A block, and those after it that belong to the same list.
fn block_markup(
    sheet: &str,
    block: SheetBlock,
    rest: &mut Peekable<IntoIter<SheetBlock>>,
) -> Markup {
    match block {
        SheetBlock::Title(_) => html! { h2 { (sheet) } },
        SheetBlock::Heading(heading) => html! { h3 { (words(&heading)) } },
        SheetBlock::Panel(name, about) => html! { h4 { (words(&name)) } p { (words(&about)) } },
        SheetBlock::Paragraph(text) => html! { p { (words(&text)) } },
        SheetBlock::Item(first) => html! { ul { li { (words(&first)) } (items(rest)) } },
        SheetBlock::Numbered(number, text) => step(number, &text, rest),
        SheetBlock::Part(text) => html! { p { (words(&text)) } },
        SheetBlock::Table(table) => table_markup(&table),
        SheetBlock::Labels(labels) => labels_markup(&labels),
        SheetBlock::Drawing(drawing) => html! { figure { (svg::inline(&drawing)) } },
        SheetBlock::Gap => html! {},
    }
}

fn items(rest: &mut Peekable<IntoIter<SheetBlock>>) -> Markup {
    html! {
        @while let Some(SheetBlock::Item(text)) = rest.next_if(|next| matches!(next, SheetBlock::Item(_))) {
            li { (words(&text)) }
        }
    }
}

/// A step with a box to tick, and its parts.
fn step(number: u32, text: &str, rest: &mut Peekable<IntoIter<SheetBlock>>) -> Markup {
    let parts: Vec<String> = std::iter::from_fn(|| {
        let next = rest.next_if(|next| matches!(next, SheetBlock::Part(_)))?;
        match next {
            SheetBlock::Part(text) => Some(text),
            _ => None,
        }
    })
    .collect();
    html! {
        div.step {
            label { input type="checkbox"; span.number { (number) "." } span { (words(text)) } }
            @if !parts.is_empty() { ul { @for part in parts { li { (words(&part)) } } } }
        }
    }
}

/// Labels in a grid, each with an arrow to the top of its piece.
fn labels_markup(labels: &[PieceLabel]) -> Markup {
    html! {
        ul.labels {
            @for label in labels {
                li {
                    span.arrow aria-hidden="true" { "\u{2191}" }
                    div {
                        p { (label.job) }
                        p { strong.number { (label.number) } " " (label.cloth) }
                        p { strong { (label.panel) } }
                        p { strong { (label.layer) } }
                        p { (words(&label.size)) }
                        p { (label.remarks) }
                    }
                }
            }
        }
    }
}

/// A table that is scrolled sideways where it finds no room.
fn table_markup(table: &TextTable) -> Markup {
    let headings: Vec<(&str, bool)> = table.headings().collect();
    let label: Vec<&str> = headings.iter().map(|(heading, _)| *heading).collect();
    html! {
        div.table role="group" tabindex="0" aria-label={ "Table: " (label.join(", ")) } {
            table {
                thead { tr {
                    @for (heading, numbers) in &headings { th scope="col" .count[*numbers] { (heading) } }
                } }
                tbody {
                    @for row in table.rows() {
                        tr {
                            @for (cell, (_, numbers)) in row.iter().zip(&headings) {
                                td .count[*numbers] { (words(cell)) }
                            }
                        }
                    }
                }
            }
        }
    }
}
