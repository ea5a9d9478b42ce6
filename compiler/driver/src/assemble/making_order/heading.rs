//! Making the heading of a panel.

use pelmet_measure::Length;
use pelmet_model::{CautionKind, FastenerOrder, Heading, HeadingWork, Marked};

use super::bench::Bench;
use super::draft::{Added, Draft, together};

/// The step; `None` for a heading that needs nothing done to it.
pub(super) fn heading(bench: Bench<'_>) -> Option<Draft> {
    let (words, cautions): (_, &[CautionKind]) = match &bench.hung.order.heading {
        Heading::OverRod { fastener, .. } => (over_rod(bench, fastener.as_ref()?), &[]),
        Heading::OnBoard { fastener, .. } => (on_board(bench, fastener.as_ref()?), &[]),
        Heading::RodPocket { above, .. } => (
            pocket(bench, *above)?,
            &[
                CautionKind::HotIron,
                CautionKind::LetItCool,
                CautionKind::Needle,
            ],
        ),
        Heading::Plain => return None,
    };
    Some(Draft::added(
        Added::Heading,
        vec![together(words)],
        cautions,
    ))
}

/// How far below the made-up top edge a line of the heading lies.
fn line(bench: Bench<'_>, is_it: impl Fn(&Marked) -> bool) -> Option<Length> {
    let marks = &bench.hung.made.marks;
    marks.iter().find(|mark| is_it(&mark.what))?.down
}

fn over_rod(bench: Bench<'_>, fastener: &FastenerOrder) -> Vec<String> {
    let mate = HeadingWork::FastenerMate;
    let mate = line(bench, |kind| *kind == Marked::HeadingWork(mate));
    let mate = mate.map(|down| {
        format!(
            "Fix its mate to the back too, the upper edge {} below the top edge.",
            bench.mark(down)
        )
    });
    let mut words = vec![String::from("Turn the panel over."), strip(bench, fastener)];
    words.extend(mate);
    words.push(AS_ITS_MAKER_SAYS.to_owned());
    words
}

fn on_board(bench: Bench<'_>, fastener: &FastenerOrder) -> Vec<String> {
    let mate = format!(
        "Fix its mate to the top of the board, the edge nearest the wall {} back from the front \
         edge.",
        bench.mark(bench.hung.made.heading_depth)
    );
    vec![
        String::from("Turn the panel over."),
        strip(bench, fastener),
        mate,
        AS_ITS_MAKER_SAYS.to_owned(),
    ]
}

const AS_ITS_MAKER_SAYS: &str =
    "Sew, stick or fuse them as their maker says, and let them set before they are pulled.";

/// The strip along the top edge.
fn strip(bench: Bench<'_>, fastener: &FastenerOrder) -> String {
    let length = bench.hung.made.fasteners.first().map(|run| run.length);
    let clear = if fastener.inset.is_positive() {
        format!(
            ", {} clear of each side",
            bench.printer.plain(fastener.inset).text
        )
    } else {
        String::new()
    };
    format!(
        "Fix a strip of {} {}, cut {} long, to the back, the upper edge along the top edge{clear}.",
        bench.printer.plain(fastener.width).text,
        fastener.name,
        bench.printer.cut(length.unwrap_or_default()).text,
    )
}

/// Measures of the stitching are from the fold, where the maker lays the tape measure.
fn pocket(bench: Bench<'_>, above: Length) -> Option<Vec<String>> {
    let at = |work| line(bench, |kind| *kind == Marked::HeadingWork(work));
    let fold = line(bench, |kind| *kind == Marked::HeadingLine)?;
    let lower = at(HeadingWork::LowerStitching)? - fold;
    let turn = at(HeadingWork::TurnUnder).filter(|turn| turn.is_positive());
    let words = [
        Some(String::from("Turn the panel over.")),
        turn.map(|turn| format!("Press {} of the top edge under.", bench.mark(turn))),
        Some(format!(
            "Fold the top back along the heading line, {} from the edge as it was, press the fold \
             and pin it.",
            bench.mark(fold)
        )),
        above
            .is_positive()
            .then(|| format!("Stitch all across {} below the fold.", bench.mark(above))),
        Some(format!(
            "Stitch all across {} below the fold, close to the {} edge. Leave both ends of the \
             pocket open.",
            bench.mark(lower),
            if turn.is_some() { "folded" } else { "cut" },
        )),
    ];
    Some(words.into_iter().flatten().collect())
}
