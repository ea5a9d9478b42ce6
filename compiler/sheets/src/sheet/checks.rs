//! What to check: the row, the hang, the folds, and what the design expects and warns of.

use pelmet_model::PleatMake;
use pelmet_packet::{Note, Packet, Panel, Pleat, Row, Warning, Window};

use crate::content::SheetBlocks;
use crate::sheet::by_window::each_window;
use crate::sheet::folding_chart;
use crate::text::words::{counted, counted_of, finished};

pub(crate) fn print(packet: &Packet, sheet: &mut SheetBlocks) {
    each_window(packet, sheet, print_window);
    print_list("Expected", packet.expectations.iter(), sheet, |expected| {
        let wording = expected.wording.trim_start_matches("expect ");
        format!("{wording}: {}", expected.came_out)
    });
    print_list("Warnings", packet.warnings.iter(), sheet, warning);
    print_list("Assumed", packet.notes.iter(), sheet, note);
}

fn print_list<'a, T: 'a>(
    heading: &str,
    entries: impl ExactSizeIterator<Item = &'a T>,
    sheet: &mut SheetBlocks,
    in_words: impl Fn(&T) -> String,
) {
    if entries.len() > 0 {
        sheet.heading(heading);
    }
    for entry in entries {
        sheet.item(&in_words(entry));
    }
}

fn print_window(window: &Window, sheet: &mut SheetBlocks) {
    sheet.paragraph(&hangs_from(window));
    sheet.blank();
    for line in row(&window.row) {
        sheet.item(&line);
    }
    for panel in &window.panels {
        print_panel(panel, sheet);
    }
}

/// What the panels of a window hang from, and its opening.
pub(crate) fn hangs_from(window: &Window) -> String {
    let support = &window.support;
    let kind = support.kind;
    let diameter = support
        .diameter
        .as_ref()
        .map(|of| format!(", {} across", of.text));
    let projection = support
        .projection
        .as_ref()
        .map(|of| format!(", {} off the wall", of.text));
    format!(
        "Hangs from {kind} {}, {} long{}{}.{}",
        support.name,
        support.length.text,
        diameter.unwrap_or_default(),
        projection.unwrap_or_default(),
        opening(window),
    )
}

fn opening(window: &Window) -> String {
    let size = window
        .opening
        .as_ref()
        .map(|size| format!(" Opening {} x {}.", size.width.text, size.length.text));
    let top = window
        .top_at
        .as_ref()
        .map(|top| format!(" Top at {} above the floor.", top.text));
    format!("{}{}", size.unwrap_or_default(), top.unwrap_or_default())
}

fn row(row: &Row) -> Vec<String> {
    let mut lines = vec![
        format!("Row: {}.", row.sum),
        format!("To cover: {}. Spare: {}.", row.to_cover_sum, row.spare.text),
    ];
    if !row.joins.is_empty() {
        let joins: Vec<&str> = row.joins.iter().map(|join| join.text.as_str()).collect();
        let over = if row.over_joins.is_empty() {
            String::new()
        } else {
            format!("; over each of them: {}", row.over_joins.join(", "))
        };
        lines.push(format!(
            "Joins at {} from the left end{over}.",
            joins.join(", ")
        ));
    }
    lines
}

fn print_panel(panel: &Panel, sheet: &mut SheetBlocks) {
    let quantity = counted_of(panel.quantity, "panel", "panels alike");
    let words = format!("{quantity}, hung {}.", panel.heading);
    sheet.panel(&panel.name, &words);
    sheet.item(&width(panel));
    if !panel.pleats.is_empty() {
        sheet.item(&pleats(panel));
    }
    if let Some(to_print) = print_followed(panel) {
        sheet.item(&to_print);
    }
    if let Some(turn) = folding_chart::turn_of_cloth(panel) {
        sheet.item(&turn);
    }
    if let Some(thickest) = folding_chart::thickest(panel) {
        sheet.item(&thickest);
    }
    sheet.item(&format!(
        "Length: {} made up, {} of it for the heading; drop {}.",
        panel.made_length.text, panel.heading_depth.text, panel.drop.text,
    ));
    if let Some(range) = &panel.hang_range {
        sheet.item(&format!(
            "Hang it and measure: the fastener lets you set a drop from {} to {}.",
            range.shortest.text, range.longest.text,
        ));
    }
    if let Some(covers) = &panel.covers_each_side {
        sheet.item(&format!("Covers its join by {} on each side.", covers.text));
    }
}

fn width(panel: &Panel) -> String {
    let taken_up = panel
        .fullness
        .as_ref()
        .filter(|_| panel.flat_width != panel.finished_width);
    let fullness = taken_up.map(|of| format!(", fullness {}", of.text));
    format!(
        "Width: {} from {} flat{}.",
        finished(panel),
        panel.flat_width.text,
        fullness.unwrap_or_default(),
    )
}

fn pleats(panel: &Panel) -> String {
    let kinds: Vec<String> = panel
        .pleats
        .chunk_by(|one, other| {
            let size = |pleat: &Pleat| (pleat.depth.clone(), pleat.face.clone());
            one.kind == other.kind && size(one) == size(other)
        })
        .filter_map(|alike| {
            let first = alike.first()?;
            Some(format!("{} {}", alike.len(), kind_and_size(first)))
        })
        .collect();
    format!(
        "{}, left to right: {}.",
        counted(panel.pleats.len(), "pleat", "pleats"),
        kinds.join(", "),
    )
}

fn print_followed(panel: &Panel) -> Option<String> {
    let followed = panel.print_followed.as_ref()?;
    let apart: Vec<&str> = followed
        .apart
        .iter()
        .map(|apart| apart.text.as_str())
        .collect();
    let each = if followed.in_each_half {
        " of each half"
    } else {
        ""
    };
    (!apart.is_empty()).then(|| {
        format!(
            "To the print: {} of flat cloth from the middle of a pleat to the middle of the next, so that \
            the same part of the print shows on every pleat{each}.",
            apart.join(" or "),
        )
    })
}

/// A pleat's kind with the one size that tells it from others: what cloth is drawn up to, or how
/// deep it is folded.
fn kind_and_size(made: &Pleat) -> String {
    let deep = || format!("{} {} deep", made.kind, made.depth.text);
    match made.kind.make() {
        PleatMake::Drawn => made.face.as_ref().map_or_else(deep, |drawn_to| {
            format!("{} drawn up to {}", made.kind, drawn_to.text)
        }),
        PleatMake::Folded(_) | PleatMake::Stitched { .. } => deep(),
    }
}

fn warning(warning: &Warning) -> String {
    let accepted = warning
        .accepted
        .as_ref()
        .map(|reason| format!(". Accepted: {reason}"));
    let remark = remark(&warning.title, &warning.code, &warning.sum);
    remark + &accepted.unwrap_or_default()
}

fn note(note: &Note) -> String {
    remark(&note.title, &note.code, &note.sum)
}

fn remark(title: &str, code: &str, sum: &[String]) -> String {
    let sum: String = sum.iter().map(|line| format!("; {line}")).collect();
    format!("{title} ({code}){sum}")
}
