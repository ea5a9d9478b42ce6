//! The packet as one page for a tablet or a printer: every sheet, with its drawings. It asks for
//! nothing outside itself.

mod words;

use std::iter::Peekable;
use std::vec::IntoIter;

use maud::{DOCTYPE, Markup, PreEscaped, html};
use pelmet_packet::Packet;

use crate::drawing::{self, inline};
use crate::labels::Label;
use crate::page::Block;
use crate::table::Table;
use crate::{Paper, SheetKind, blocks, title, word};
use words::words;

/// How the page looks.
const STYLE: &str = include_str!("style.css");

/// A part of a page, to which a link at its top leads.
pub(crate) struct Section {
    /// The end of its address.
    pub(crate) word: String,
    pub(crate) title: String,
    pub(crate) blocks: Vec<Block>,
}

/// Sheets as one page.
pub(crate) fn page(packet: &Packet, sheets: &[SheetKind], paper: Option<Paper>) -> String {
    let sections = sheets.iter().map(|kind| Section {
        word: word(*kind).to_owned(),
        title: title(*kind).to_owned(),
        blocks: blocks(packet, *kind).into_blocks(),
    });
    document(&packet.title, "Sheets", sections.collect(), paper)
}

/// A whole page; `parts` is what its sections are.
pub(crate) fn document(
    title: &str,
    parts: &str,
    sections: Vec<Section>,
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
                    (PreEscaped(STYLE)) (PreEscaped(drawing::style())) (paper.map_or("", printed_on))
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
    Section {
        word,
        title,
        blocks,
    }: Section,
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
fn block_markup(sheet: &str, block: Block, rest: &mut Peekable<IntoIter<Block>>) -> Markup {
    match block {
        Block::Title(_) => html! { h2 { (sheet) } },
        Block::Heading(heading) => html! { h3 { (words(&heading)) } },
        Block::Panel(name, about) => html! { h4 { (words(&name)) } p { (words(&about)) } },
        Block::Paragraph(text) => html! { p { (words(&text)) } },
        Block::Item(first) => html! { ul { li { (words(&first)) } (items(rest)) } },
        Block::Numbered(number, text) => step(number, &text, rest),
        Block::Part(text) => html! { p { (words(&text)) } },
        Block::Table(table) => table_markup(&table),
        Block::Labels(labels) => labels_markup(&labels),
        Block::Drawing(drawing) => html! { figure { (inline(&drawing)) } },
        Block::Gap => html! {},
    }
}

fn items(rest: &mut Peekable<IntoIter<Block>>) -> Markup {
    html! {
        @while let Some(Block::Item(text)) = rest.next_if(|next| matches!(next, Block::Item(_))) {
            li { (words(&text)) }
        }
    }
}

/// A step with a box to tick, and its parts.
fn step(number: u32, text: &str, rest: &mut Peekable<IntoIter<Block>>) -> Markup {
    let parts: Vec<String> = std::iter::from_fn(|| {
        let next = rest.next_if(|next| matches!(next, Block::Part(_)))?;
        match next {
            Block::Part(text) => Some(text),
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
fn labels_markup(labels: &[Label]) -> Markup {
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
fn table_markup(table: &Table) -> Markup {
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
