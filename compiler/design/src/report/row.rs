//! Findings in the row.

use pelmet_diagnostics::{Diagnostic, codes};
use pelmet_measure::Length;
use pelmet_model::RowMatter;
use pelmet_model::THIN_COVER;

use super::place::{PanelPlace, WindowPlace};
use super::row_sums::{label_widths, other_width, sums};

pub(super) fn report(window: WindowPlace<'_>, matter: &RowMatter) -> Diagnostic {
    let at = |panel: usize| window.panel(Some(panel));
    match *matter {
        RowMatter::Uncovered {
            amount,
            to_cover,
            covered,
        } => uncovered(window, amount, to_cover, covered),
        RowMatter::Crowded {
            amount,
            to_cover,
            covered,
        } => crowded(window, amount, to_cover, covered),
        RowMatter::FillOutOfRange {
            panel,
            share,
            limit,
            taken,
            to_cover,
        } => fill_out_of_range(at(panel), (share, limit), (taken, to_cover)),
        RowMatter::FillOutsideRow { panel } => fill_outside_row(at(panel)),
        RowMatter::Empty => empty(window),
        RowMatter::NotHung { panel } => not_hung(at(panel)),
        RowMatter::NoJoin { panel } => no_join(at(panel)),
        RowMatter::JoinNotCovered {
            panel,
            covers,
            wanted,
            finished,
        } => join_not_covered(at(panel), covers, wanted, finished),
        RowMatter::JoinThinlyCovered {
            panel,
            covers,
            finished,
        } => join_thinly_covered(at(panel), covers, finished),
        RowMatter::OverlapTooWide {
            panel,
            finished,
            overlap,
        } => overlap_too_wide(at(panel), finished, overlap),
        RowMatter::ReturnAndProjectionDiffer {
            returns,
            projection,
        } => return_and_projection(window, returns, projection),
        RowMatter::RodSags {
            sag,
            limit,
            span,
            spacing,
            brackets,
        } => rod_sags(window, (sag, limit), (span, spacing), brackets),
        RowMatter::LongerThanHeight {
            panel,
            drop,
            height,
        } => longer_than_height(at(panel), drop, height),
    }
}

fn uncovered(
    window: WindowPlace<'_>,
    amount: Length,
    to_cover: Length,
    covered: Length,
) -> Diagnostic {
    let report = codes::row_uncovered(
        &window.name(),
        (window.span("row"), window.support()),
        (
            &window.text(to_cover),
            &window.text(covered),
            &window.text(amount),
        ),
        sums(window, to_cover, covered),
        other_width(window, amount),
    );
    label_widths(window, report)
}

fn crowded(
    window: WindowPlace<'_>,
    amount: Length,
    to_cover: Length,
    covered: Length,
) -> Diagnostic {
    let report = codes::row_crowded(
        &window.name(),
        (window.span("row"), window.support()),
        (
            &window.text(to_cover),
            &window.text(covered),
            &window.text(amount),
        ),
        sums(window, to_cover, covered),
        other_width(window, -amount),
    );
    label_widths(window, report)
}

fn fill_out_of_range(
    panel: PanelPlace<'_>,
    (share, limit): (Length, Length),
    (taken, to_cover): (Length, Length),
) -> Diagnostic {
    let window = panel.window;
    let too_wide = share > limit;
    let to_write = too_wide.then(|| panel.exact(share));
    let share_text = if share.is_positive() {
        panel.text(share)
    } else {
        String::from("nothing")
    };
    let bound = match (too_wide, limit.is_positive()) {
        (true, _) => format!("at most {}", panel.text(limit)),
        (false, true) => format!("at least {}", panel.text(limit)),
        (false, false) => String::from("of some width"),
    };
    codes::fill_out_of_range(
        &panel.name(),
        (
            panel.width("finished width").span,
            window.span("row"),
            window.support(),
        ),
        (
            &panel.text(to_cover),
            &panel.text(taken),
            &panel.text(to_cover - taken),
        ),
        (&share_text, &bound),
        to_write.as_deref(),
    )
}

fn join_not_covered(
    panel: PanelPlace<'_>,
    covers: Length,
    wanted: Length,
    finished: Length,
) -> Diagnostic {
    let overlap = panel.window.overlap();
    codes::join_not_covered(
        &panel.name(),
        (panel.span("covers"), &panel.text(wanted)),
        (panel.width("finished width").span, &panel.text(finished)),
        (&panel.exact(covers), &panel.text(overlap)),
        width_to_cover(panel, wanted, finished).as_deref(),
    )
}

/// The finished width with which `panel` covers its join by so much on each side, where its
/// finished width was written.
fn width_to_cover(panel: PanelPlace<'_>, covers: Length, finished: Length) -> Option<String> {
    let enough = covers * 2 + panel.window.overlap();
    panel
        .stated("finished width")
        .changed(panel, enough - finished)
}

fn fill_outside_row(panel: PanelPlace<'_>) -> Diagnostic {
    let places = (panel.width("finished width").span, panel.window.span("row"));
    codes::fill_outside_row(&panel.name(), panel.own_name(), places, panel.example())
}

fn empty(window: WindowPlace<'_>) -> Diagnostic {
    let panel = window.order.and_then(|order| order.panels.first());
    let panel = panel.map(|panel| &*panel.name);
    codes::row_empty(&window.name(), window.span("row"), panel)
}

fn not_hung(panel: PanelPlace<'_>) -> Diagnostic {
    let places = (panel.place(), panel.window.span("row"));
    codes::panel_not_hung(&panel.name(), panel.own_name(), places)
}

fn no_join(panel: PanelPlace<'_>) -> Diagnostic {
    let window = panel.window;
    codes::no_join_to_cover(
        &panel.name(),
        (window.span("over joins"), window.span("row")),
    )
}

fn join_thinly_covered(panel: PanelPlace<'_>, covers: Length, finished: Length) -> Diagnostic {
    let overlap = panel.window.overlap();
    codes::join_thinly_covered(
        &panel.name(),
        (panel.width("finished width").span, &panel.text(finished)),
        panel.window.span("over joins"),
        (
            &panel.exact(covers),
            &panel.text(overlap),
            &panel.text(THIN_COVER),
        ),
        width_to_cover(panel, THIN_COVER, finished).as_deref(),
    )
}

fn overlap_too_wide(panel: PanelPlace<'_>, finished: Length, overlap: Length) -> Diagnostic {
    codes::overlap_too_wide(
        &panel.name(),
        (panel.window.span("overlap"), &panel.text(overlap)),
        (panel.width("finished width").span, &panel.text(finished)),
    )
}

fn return_and_projection(
    window: WindowPlace<'_>,
    returns: Length,
    projection: Length,
) -> Diagnostic {
    let to_write = window.states("returns").then(|| window.exact(projection));
    codes::return_and_projection_differ(
        &window.name(),
        (window.span("returns"), &window.text(returns)),
        (window.support(), &window.text(projection)),
        (
            &window.text((projection - returns).abs()),
            returns < projection,
        ),
        to_write.as_deref(),
    )
}

fn longer_than_height(panel: PanelPlace<'_>, drop: Length, height: Length) -> Diagnostic {
    codes::longer_than_height(
        &panel.name(),
        (panel.span("drop"), &panel.text(drop)),
        (panel.window.support(), &panel.text(height)),
        (&panel.text(drop - height), &panel.exact(height)),
    )
}

fn rod_sags(
    window: WindowPlace<'_>,
    (sag, limit): (Length, Length),
    (span, spacing): (Length, Length),
    brackets: Option<u32>,
) -> Diagnostic {
    codes::rod_sags(
        &window.name(),
        window.support(),
        (&window.at_most(sag), &window.text(limit)),
        (&window.mark(span), &window.mark(spacing)),
        brackets,
    )
}
