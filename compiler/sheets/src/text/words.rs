//! The packet's fixed values in words.

use pelmet_packet::{BandEdge, EdgeKind, Panel, PrintRepeat, QuoteKind};

/// All edges of a kind, as an allowance is added to all of them.
pub(crate) fn edges(kind: EdgeKind) -> &'static str {
    match kind {
        EdgeKind::Top => "top",
        EdgeKind::Side => "sides",
        EdgeKind::Lower => "lower edge",
        EdgeKind::Band => "band seams",
    }
}

/// Where a band lies, after how deep it is.
pub(crate) fn band(edge: BandEdge) -> &'static str {
    match edge {
        BandEdge::Top => "at the top",
        BandEdge::Left => "at the left side",
        BandEdge::Lower => "at the lower edge",
        BandEdge::Right => "at the right side",
    }
}

/// What a line of the quote is asked for.
pub(crate) fn quote_kind(kind: QuoteKind) -> &'static str {
    match kind {
        QuoteKind::Cloth => "cloth",
        QuoteKind::Notion => "notion",
        QuoteKind::Labour => "labour",
    }
}

/// The finished width, and by how much folding by hand may put it out.
pub(crate) fn finished(panel: &Panel) -> String {
    let tolerance = panel.tolerance.as_ref().map(|of| {
        format!(
            " (± {} at worst, likely ± {}, as folded by hand)",
            of.worst.text, of.likely.text
        )
    });
    format!(
        "{} finished{}",
        panel.finished_width.text,
        tolerance.unwrap_or_default()
    )
}

/// How wide and long a panel hangs, and its bands.
pub(crate) fn sizes(panel: &Panel) -> String {
    let bands = panel.bands.iter();
    let bands: Vec<String> = bands
        .map(|it| format!(", band {} deep {}", it.depth.text, band(it.edge)))
        .collect();
    format!(
        "{}: {} wide, drop {}{}",
        panel.name,
        panel.finished_width.text,
        panel.drop.text,
        bands.concat()
    )
}

/// A count with its noun: `1 panel`, `3 panels`.
pub(crate) fn counted(count: usize, one: &str, several: &str) -> String {
    if count == 1 {
        format!("1 {one}")
    } else {
        format!("{count} {several}")
    }
}

/// The same for a count the packet holds.
pub(crate) fn counted_of(count: u32, one: &str, several: &str) -> String {
    if count == 1 {
        format!("1 {one}")
    } else {
        format!("{count} {several}")
    }
}

/// The text of a measure that may be missing.
pub(crate) fn optional(measure: Option<&pelmet_packet::Measure>) -> String {
    measure
        .map(|measure| measure.text.clone())
        .unwrap_or_default()
}

/// `12 in along and 9 in across, straight match`
pub(crate) fn repeat_in_words(repeat: &PrintRepeat) -> String {
    let along = repeat
        .along
        .as_ref()
        .map(|along| format!("{} along", along.text));
    let across = repeat
        .across
        .as_ref()
        .map(|across| format!("{} across", across.text));
    let lengths: Vec<String> = along.into_iter().chain(across).collect();
    format!("{}, {} match", lengths.join(" and "), repeat.matching)
}
