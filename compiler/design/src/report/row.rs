//! Findings in the row.

use pelmet_diagnostics::codes::row_uncovered::RowLengths;
use pelmet_diagnostics::{Diagnostic, PlacedText, codes};
use pelmet_measure::Length;
use pelmet_model::{RowMatter, THIN_COVER};

use super::place::{PanelPlace, WindowPlace};
use super::row_sums::{label_widths, other_width, sums};
use crate::{PanelKey, WindowKey};

pub(super) fn report(window: WindowPlace<'_>, matter: &RowMatter) -> Diagnostic {
    let at = |panel: usize| window.panel(Some(panel));
    match *matter {
        RowMatter::Uncovered {
            amount,
            to_cover,
            covered,
        } => row_differs(window, to_cover, covered, amount, codes::RowUncovered),
        RowMatter::Crowded {
            amount,
            to_cover,
            covered,
        } => row_differs(window, to_cover, covered, -amount, codes::RowCrowded),
        RowMatter::FillOutOfRange {
            panel,
            share,
            limit,
            taken,
            to_cover,
        } => fill_out_of_range(at(panel), share, limit, taken, to_cover),
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
        } => rod_sags(window, sag, limit, span, spacing, brackets),
        RowMatter::LongerThanHeight {
            panel,
            drop,
            height,
        } => longer_than_height(at(panel), drop, height),
    }
}

/// What is covered is `missing` to what there is to cover; too much, where negative.
fn row_differs<Told: Into<Diagnostic>>(
    window: WindowPlace<'_>,
    to_cover: Length,
    covered: Length,
    missing: Length,
    told: fn(RowLengths) -> Told,
) -> Diagnostic {
    let lengths = RowLengths {
        window: window.name(),
        row: window.span(WindowKey::Row),
        support: window.support(),
        to_cover: window.text(to_cover),
        covered: window.text(covered),
        amount: window.text(missing.abs()),
        sums: sums(window, to_cover, covered),
        to_write: other_width(window, missing),
    };
    label_widths(window, told(lengths).into())
}

fn fill_out_of_range(
    panel: PanelPlace<'_>,
    share: Length,
    limit: Length,
    taken: Length,
    to_cover: Length,
) -> Diagnostic {
    let window = panel.window;
    let too_wide = share > limit;
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
    codes::FillOutOfRange {
        panel: panel.name(),
        width: panel.finished_width().span,
        row: window.span(WindowKey::Row),
        support: window.support(),
        to_cover: panel.text(to_cover),
        taken: panel.text(taken),
        left: panel.text(to_cover - taken),
        share: share_text,
        bound,
        to_write: too_wide.then(|| panel.exact(share)),
    }
    .into()
}

fn join_not_covered(
    panel: PanelPlace<'_>,
    covers: Length,
    wanted: Length,
    finished: Length,
) -> Diagnostic {
    codes::JoinNotCovered {
        panel: panel.name(),
        wanted: panel.placed(PanelKey::Covers, wanted),
        finished: finished_width(panel, finished),
        covered: panel.exact(covers),
        overlap: panel.text(panel.window.overlap()),
        enough: width_to_cover(panel, wanted, finished),
    }
    .into()
}

/// How wide `panel` is finished, where that was stated.
fn finished_width(panel: PanelPlace<'_>, finished: Length) -> PlacedText {
    PlacedText::new(panel.finished_width().span, panel.text(finished))
}

/// The finished width with which `panel` covers its join by so much on each side, where its
/// finished width was written.
fn width_to_cover(panel: PanelPlace<'_>, covers: Length, finished: Length) -> Option<String> {
    let enough = covers * 2 + panel.window.overlap();
    panel
        .stated(PanelKey::FinishedWidth)
        .changed(panel, enough - finished)
}

fn fill_outside_row(panel: PanelPlace<'_>) -> Diagnostic {
    codes::FillOutsideRow {
        panel: panel.name(),
        name: panel.own_name(),
        width: panel.finished_width().span,
        row: panel.window.span(WindowKey::Row),
        example: panel.example(),
    }
    .into()
}

fn empty(window: WindowPlace<'_>) -> Diagnostic {
    let panel = window.order.and_then(|order| order.panels.first());
    let panel = panel.map(|panel| &*panel.name);
    codes::row_empty(&window.name(), window.span(WindowKey::Row), panel)
}

fn not_hung(panel: PanelPlace<'_>) -> Diagnostic {
    codes::PanelNotHung {
        panel: panel.name(),
        name: panel.own_name(),
        place: panel.place(),
        row: panel.window.span(WindowKey::Row),
    }
    .into()
}

fn no_join(panel: PanelPlace<'_>) -> Diagnostic {
    codes::NoJoinToCover {
        panel: panel.name(),
        over: panel.window.span(WindowKey::OverJoins),
        row: panel.window.span(WindowKey::Row),
    }
    .into()
}

fn join_thinly_covered(panel: PanelPlace<'_>, covers: Length, finished: Length) -> Diagnostic {
    codes::JoinThinlyCovered {
        panel: panel.name(),
        finished: finished_width(panel, finished),
        over: panel.window.span(WindowKey::OverJoins),
        covered: panel.exact(covers),
        overlap: panel.text(panel.window.overlap()),
        usual: panel.text(THIN_COVER),
        enough: width_to_cover(panel, THIN_COVER, finished),
    }
    .into()
}

fn overlap_too_wide(panel: PanelPlace<'_>, finished: Length, overlap: Length) -> Diagnostic {
    codes::OverlapTooWide {
        panel: panel.name(),
        overlap: panel.window.placed(WindowKey::Overlap, overlap),
        finished: finished_width(panel, finished),
    }
    .into()
}

fn return_and_projection(
    window: WindowPlace<'_>,
    returns: Length,
    projection: Length,
) -> Diagnostic {
    codes::ReturnAndProjectionDiffer {
        window: window.name(),
        returns: window.placed(WindowKey::Returns, returns),
        projection: PlacedText::new(window.support(), window.text(projection)),
        amount: window.text((projection - returns).abs()),
        too_short: returns < projection,
        to_write: window
            .states(WindowKey::Returns)
            .then(|| window.exact(projection)),
    }
    .into()
}

fn longer_than_height(panel: PanelPlace<'_>, drop: Length, height: Length) -> Diagnostic {
    codes::LongerThanHeight {
        panel: panel.name(),
        drop: panel.placed(PanelKey::Drop, drop),
        height: PlacedText::new(panel.window.support(), panel.text(height)),
        amount: panel.text(drop - height),
        to_write: panel.exact(height),
    }
    .into()
}

fn rod_sags(
    window: WindowPlace<'_>,
    sag: Length,
    limit: Length,
    span: Length,
    spacing: Length,
    brackets: Option<u32>,
) -> Diagnostic {
    codes::RodSags {
        window: window.name(),
        support: window.support(),
        sag: window.at_most(sag),
        limit: window.text(limit),
        apart: window.mark(span),
        spacing: window.mark(spacing),
        brackets,
    }
    .into()
}
