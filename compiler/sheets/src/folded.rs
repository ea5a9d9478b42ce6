//! A pleated panel once its pleats are laid: how it lies, what of it is seen, and its lower edge.

use pelmet_packet::packet::{
    FoldedEdge, FoldedPanel, LayerKind, Layers, LiningSeen, Panel, Place, Run, Seen,
};

use crate::page::Page;
use crate::table::{Column, Table};
use crate::words::counted_of;

/// What a pleated panel comes to; nothing for one that hangs flat, or that folding alone does not
/// bring to its width.
pub(crate) fn items(panel: &Panel) -> Vec<String> {
    let Some(folded) = pleated(panel) else {
        return Vec::new();
    };
    let seen = folded.seen.as_ref();
    let mut items = vec![layers(panel)];
    items.extend(beyond_edges(panel, &folded.extent));
    items.extend(seen.and_then(lower_edge));
    items.extend(seen.map(|seen| turned_cloth(panel, &seen.lining)));
    items
}

/// The stretches of a pleated panel, from left to right.
pub(crate) fn print_stretches(panel: &Panel, page: &mut Page) {
    if pleated(panel).is_none() {
        return;
    }
    page.paragraph(&format!(
        "Stretches of {} between creases, from the left edge of the flat panel, and where they hang \
        from the left end of the finished width:",
        panel.name,
    ));
    let mut table = Table::new([
        Column::count("No"),
        Column::text("Flat"),
        Column::text("Hangs"),
        Column::text("Shows"),
        Column::text("At the heading"),
    ]);
    for (number, stretch) in (1_u32..).zip(&panel.stretches) {
        table.row([
            number.to_string(),
            run(&stretch.flat),
            run(&stretch.finished),
            String::from(if stretch.face_up { "face" } else { back(panel) }),
            String::from(seen(stretch.seen)),
        ]);
    }
    page.table(&table);
}

fn pleated(panel: &Panel) -> Option<&FoldedPanel> {
    let folded = panel.folded.as_ref()?;
    (!panel.creases.is_empty()).then_some(folded)
}

fn layers(panel: &Panel) -> String {
    let wide = panel.layers.iter().filter(|layers| {
        let Run { from, to } = &layers.finished;
        from.text != to.text
    });
    let mut runs: Vec<&Layers> = wide.collect();
    runs.reverse();
    runs.dedup_by_key(|layers| layers.layers);
    let runs: Vec<String> = runs
        .iter()
        .rev()
        .map(|layers| format!("{} up to {}", layers.layers, layers.finished.to.text))
        .collect();
    let thick = panel
        .thickest_stack
        .as_ref()
        .map(|stack| format!(", {} thick when pressed", stack.text));
    format!(
        "At most {} of panel over one another{}. Layers from the left end: {}.",
        counted_of(panel.thickest, "layer", "layers"),
        thick.unwrap_or_default(),
        runs.join(", "),
    )
}

/// What hangs out past the finished width, where anything does.
fn beyond_edges(panel: &Panel, Run { from, to }: &Run) -> Option<String> {
    let finished = &panel.finished_width.text;
    let within = from.text.starts_with("0 ") && to.text == *finished;
    (!within).then(|| {
        format!(
            "A fold hangs out past an edge: pleats laid, the panel reaches from {} to {}, its finished \
            width from 0 to {finished}.",
            from.text, to.text,
        )
    })
}

fn lower_edge(seen: &FoldedEdge) -> Option<String> {
    let (lowest, highest) = (seen.lowest.as_ref()?, seen.highest.as_ref()?);
    if lowest.down.text == highest.down.text {
        return Some(format!(
            "Pleats laid, the lower edge is level, {} down from the made-up top edge.",
            lowest.down.text,
        ));
    }
    let point = |place: &Place| {
        format!(
            "{} down at {} from the left end",
            place.down.text, place.across.text
        )
    };
    Some(format!(
        "Pleats laid, the lower edge is lowest {} and highest {}; down is from the made-up top edge.",
        point(lowest),
        point(highest),
    ))
}

fn turned_cloth(panel: &Panel, shown: &[LiningSeen]) -> String {
    let back = back(panel);
    let places: Vec<String> = shown
        .iter()
        .map(|shown| {
            format!(
                "stretch {} at {} across, {} down",
                shown.stretch,
                run(&shown.across),
                run(&shown.down),
            )
        })
        .collect();
    if places.is_empty() {
        format!("Pleats laid, no {back} shows.")
    } else {
        format!("Pleats laid, the {back} shows: {}.", places.join("; "))
    }
}

/// What a stretch shows that is turned over.
fn back(panel: &Panel) -> &'static str {
    let mut pieces = panel.pieces.iter();
    if pieces.any(|piece| piece.layer == LayerKind::Lining) {
        "lining"
    } else {
        "wrong side"
    }
}

fn run(Run { from, to }: &Run) -> String {
    format!("{} to {}", from.text, to.text)
}

fn seen(seen: Seen) -> &'static str {
    match seen {
        Seen::Visible => "seen",
        Seen::PartlyVisible => "partly seen",
        Seen::Hidden => "hidden",
    }
}
