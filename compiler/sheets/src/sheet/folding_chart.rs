//! Folding chart: every pleated panel once its pleats are laid, stretch by stretch and layer by layer.

use pelmet_packet::{
    FoldedEdge, FoldedPanel, LayerKind, Layers, LiningSeen, Packet, Panel, Place, Run, Seen, Window,
};

use crate::content::{SheetBlocks, TextColumn, TextTable};
use crate::parts::every_panel;
use crate::text::words::{counted, counted_of, finished};
use crate::to_scale;

pub(crate) fn print(packet: &Packet, sheet: &mut SheetBlocks) {
    if !every_panel(packet).any(|(_, panel)| is_pleated(panel)) {
        sheet.paragraph("No panel of this job is pleated.");
        return;
    }
    sheet.paragraph(
        "A stretch is the cloth from one crease to the next. Flat is measured from the left edge of \
        the flat panel, hangs from the left end of the finished width.",
    );
    for window in &packet.windows {
        print_window(window, sheet);
    }
}

/// How many layers lie over one another at most; nothing for a panel that hangs flat, or that
/// folding alone does not bring to its width.
pub(crate) fn thickest(panel: &Panel) -> Option<String> {
    folded(panel)?;
    let thick = panel
        .thickest_stack
        .as_ref()
        .map(|stack| format!(", {} thick when pressed", stack.text));
    Some(format!(
        "At most {} of panel over one another{}.",
        counted_of(panel.thickest, "layer", "layers"),
        thick.unwrap_or_default(),
    ))
}

/// What its creases lose, where that is counted.
pub(crate) fn turn_of_cloth(panel: &Panel) -> Option<String> {
    let turn = panel.turn_of_cloth.as_ref()?;
    Some(format!(
        "Turn of cloth: {} x {} = {}, in the flat width.",
        counted_of(turn.creases, "crease", "creases"),
        turn.each.text,
        turn.together.text,
    ))
}

fn print_window(window: &Window, sheet: &mut SheetBlocks) {
    let pleated = window.panels.iter().filter(|panel| is_pleated(panel));
    for (number, panel) in pleated.enumerate() {
        if number == 0 {
            sheet.heading(&format!("Window {}", window.name));
        }
        print_panel(panel, sheet);
    }
}

fn print_panel(panel: &Panel, sheet: &mut SheetBlocks) {
    let words = format!(
        "{} flat, {}, {}.",
        panel.flat_width.text,
        finished(panel),
        counted(panel.stretches.len(), "stretch", "stretches"),
    );
    sheet.panel(&panel.name, &words);
    for drawing in to_scale::folding(panel) {
        sheet.drawing(drawing);
    }
    sheet.table(&stretches(panel));
    sheet.blank();
    match folded(panel) {
        Some(folded) => print_folded(panel, folded, sheet),
        None => sheet.item("Cloth that is drawn up stands out from the panel; its stretch keeps less than its width."),
    }
}

/// What is known of a panel that folding alone brings to its width.
fn print_folded(panel: &Panel, folded: &FoldedPanel, sheet: &mut SheetBlocks) {
    let seen = folded.seen.as_ref();
    let items = turn_of_cloth(panel)
        .into_iter()
        .chain(thickest(panel))
        .chain(beyond_edges(panel, &folded.extent))
        .chain(seen.and_then(lower_edge))
        .chain(seen.and_then(|seen| no_turned_cloth(panel, &seen.lining)));
    for item in items {
        sheet.item(&item);
    }
    print_layers(panel, sheet);
    print_turned_cloth(panel, folded, sheet);
}

/// The stretches of a pleated panel, from left to right.
fn stretches(panel: &Panel) -> TextTable {
    let mut table = TextTable::new([
        TextColumn::count("No"),
        TextColumn::text("Flat"),
        TextColumn::text("Hangs"),
        TextColumn::text("Shows"),
        TextColumn::text("At the heading"),
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
    table
}

fn is_pleated(panel: &Panel) -> bool {
    !panel.pleats.is_empty()
}

fn folded(panel: &Panel) -> Option<&FoldedPanel> {
    let folded = panel.folded.as_ref()?;
    (!panel.creases.is_empty()).then_some(folded)
}

/// How many layers lie where, runs of as many told as one.
fn print_layers(panel: &Panel, sheet: &mut SheetBlocks) {
    let wide = panel.layers.iter().filter(|layers| {
        let Run { from, to } = &layers.finished;
        from.text != to.text
    });
    let wide: Vec<&Layers> = wide.collect();
    let mut table = TextTable::new([TextColumn::text("Hangs"), TextColumn::count("Layers")]);
    for alike in wide.chunk_by(|one, other| one.layers == other.layers) {
        if let (Some(first), Some(last)) = (alike.first(), alike.last()) {
            table.row([
                format!("{} to {}", first.finished.from.text, last.finished.to.text),
                first.layers.to_string(),
            ]);
        }
    }
    sheet.paragraph(&format!("Layers of {} over one another:", panel.name));
    sheet.table(&table);
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

fn no_turned_cloth(panel: &Panel, shown: &[LiningSeen]) -> Option<String> {
    shown
        .is_empty()
        .then(|| format!("Pleats laid, no {} shows.", back(panel)))
}

/// Where a stretch that is turned over peeps out.
fn print_turned_cloth(panel: &Panel, folded: &FoldedPanel, sheet: &mut SheetBlocks) {
    let shown = folded.seen.iter().flat_map(|seen| &seen.lining);
    let mut table = TextTable::new([
        TextColumn::count("Stretch"),
        TextColumn::text("Hangs"),
        TextColumn::text("Down"),
    ]);
    for shown in shown {
        table.row([
            shown.stretch.to_string(),
            run(&shown.across),
            run(&shown.down),
        ]);
    }
    if !table.is_empty() {
        sheet.paragraph(&format!(
            "Where the {} of {} shows, pleats laid; down is from the made-up top edge:",
            back(panel),
            panel.name,
        ));
        sheet.table(&table);
    }
}

/// What a stretch shows that is turned over.
fn back(panel: &Panel) -> &'static str {
    let mut pieces = panel.pieces.iter();
    if pieces.any(|piece| piece.layer == LayerKind::Lining || piece.folded_at.is_some()) {
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
