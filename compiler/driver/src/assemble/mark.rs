//! The marks of a panel, in working order.

use pelmet_model::{
    CornerRelief, End, HeadingWork, Mark as MarkMade, MarkKind as MarkMadeKind, Toward,
};

use super::printer::Printer;
use super::{band, number, ordinal, pleat};
use pelmet_packet::{Direction, FoldMark, GatherMark, Mark, MarkKind, Relief, StitchMark};

/// The marks, numbered.
pub(crate) fn marks(made: &[MarkMade], printer: &Printer<'_>) -> Vec<Mark> {
    made.iter()
        .enumerate()
        .map(|(index, mark)| marked(ordinal(index), mark, printer))
        .collect()
}

pub(crate) fn relief(relief: CornerRelief) -> Option<Relief> {
    match relief {
        CornerRelief::Snip => Some(Relief::Snip),
        CornerRelief::Trim => Some(Relief::Trim),
        CornerRelief::Mitre => Some(Relief::Mitre),
        CornerRelief::Nothing => None,
    }
}

fn marked(place: u32, mark: &MarkMade, printer: &Printer<'_>) -> Mark {
    let (kind, name) = named(&mark.kind);
    let all_across = matches!(
        kind,
        MarkKind::HeadingLine
            | MarkKind::HeadingWork
            | MarkKind::FastenerLine
            | MarkKind::LowerFold
    );
    Mark {
        number: place,
        kind,
        name,
        from_left: (!all_across).then(|| printer.mark(mark.across)),
        from_centre: (!all_across).then(|| printer.beside_centre(mark.from_centre)),
        down: mark.down.map(|down| printer.mark(down)),
        relief: match mark.kind {
            MarkMadeKind::Corner {
                relief: called_for, ..
            } => relief(called_for),
            _ => None,
        },
        fold: fold(&mark.kind, printer),
        stitch: stitch(&mark.kind, printer),
        gather: gather(&mark.kind, printer),
    }
}

fn named(kind: &MarkMadeKind) -> (MarkKind, String) {
    match kind {
        MarkMadeKind::HeadingLine => (MarkKind::HeadingLine, String::from("heading line")),
        MarkMadeKind::HeadingWork(work) => (MarkKind::HeadingWork, work_name(*work)),
        MarkMadeKind::Corner {
            number,
            relief,
            name,
        } => (
            MarkKind::Corner,
            corner_name(*number, *relief, name.as_deref()),
        ),
        MarkMadeKind::Curve {
            from,
            to,
            clips,
            wedges,
        } => (
            MarkKind::Curve,
            format!(
                "curve from corner {from} to {to}{}{}",
                cuts(*clips, "clip"),
                cuts(*wedges, "wedge")
            ),
        ),
        MarkMadeKind::TurningOpening => (MarkKind::TurningOpening, String::from("turning opening")),
        MarkMadeKind::Fold { pleat, kind, .. } => {
            (MarkKind::Fold, format!("pleat {pleat}, {kind}"))
        }
        MarkMadeKind::Pair { pleat, kind, .. } => {
            (MarkKind::Pair, format!("pleat {pleat}, {kind}"))
        }
        MarkMadeKind::Finger { pleat } => (MarkKind::Finger, format!("pleat {pleat}, finger")),
        MarkMadeKind::GatherEnd { pleat, kind, .. } => (
            MarkKind::GatherEnd,
            format!("pleat {pleat}, {kind}, an end"),
        ),
        MarkMadeKind::Quarter => (MarkKind::Quarter, String::from("quarter")),
        MarkMadeKind::MotifCentre => (MarkKind::MotifCentre, String::from("motif centre")),
        MarkMadeKind::FastenerLine { name } => (MarkKind::FastenerLine, format!("top of {name}")),
        MarkMadeKind::LowerFold => (
            MarkKind::LowerFold,
            String::from("fold, the lining comes up behind"),
        ),
        MarkMadeKind::BandSeam { edge } => (
            MarkKind::BandSeam,
            format!("seam of the band {}", band::edge_word(*edge)),
        ),
        MarkMadeKind::JoinSeam => (MarkKind::JoinSeam, String::from("join seam")),
        MarkMadeKind::Return(end) => (MarkKind::Return, return_name(*end)),
    }
}

fn work_name(work: HeadingWork) -> String {
    String::from(match work {
        HeadingWork::TurnUnder => "fold the raw edge under",
        HeadingWork::UpperStitching => "stitch above the pocket",
        HeadingWork::LowerStitching => "stitch below the pocket",
        HeadingWork::FastenerMate => "top of its mate, on the back",
    })
}

fn return_name(end: End) -> String {
    String::from(match end {
        End::Left => "left return",
        End::Right => "right return",
    })
}

fn corner_name(number: usize, relief: CornerRelief, name: Option<&str>) -> String {
    let relief = match relief {
        CornerRelief::Snip => ", snip",
        CornerRelief::Trim => ", trim",
        CornerRelief::Mitre => ", mitre",
        CornerRelief::Nothing => "",
    };
    let name = name.map(|name| format!(" {name}")).unwrap_or_default();
    format!("corner {number}{name}{relief}")
}

/// The cuts in the allowance of a curve: `, 9 clips`.
fn cuts(count: u32, noun: &str) -> String {
    match count {
        0 => String::new(),
        1 => format!(", 1 {noun}"),
        several => format!(", {several} {noun}s"),
    }
}

fn fold(kind: &MarkMadeKind, printer: &Printer<'_>) -> Option<FoldMark> {
    let MarkMadeKind::Fold {
        pleat,
        kind,
        depth,
        brought_to,
        brought_to_from_centre,
        toward,
    } = kind
    else {
        return None;
    };
    Some(FoldMark {
        pleat: number(*pleat),
        pleat_kind: pleat::kind(kind),
        depth: printer.mark(*depth),
        brought_to_from_left: printer.mark(*brought_to),
        brought_to_from_centre: printer.beside_centre(*brought_to_from_centre),
        toward: match toward {
            Toward::Left => Direction::Left,
            Toward::Right => Direction::Right,
        },
    })
}

fn stitch(kind: &MarkMadeKind, printer: &Printer<'_>) -> Option<StitchMark> {
    let MarkMadeKind::Pair {
        pleat,
        kind,
        depth,
        leaves,
        other,
        other_from_centre,
    } = kind
    else {
        return None;
    };
    Some(StitchMark {
        pleat: number(*pleat),
        pleat_kind: pleat::kind(kind),
        depth: printer.mark(*depth),
        leaves: printer.mark(*leaves),
        other_from_left: printer.mark(*other),
        other_from_centre: printer.beside_centre(*other_from_centre),
    })
}

fn gather(kind: &MarkMadeKind, printer: &Printer<'_>) -> Option<GatherMark> {
    let MarkMadeKind::GatherEnd {
        pleat,
        kind,
        drawn_to,
    } = kind
    else {
        return None;
    };
    Some(GatherMark {
        pleat: number(*pleat),
        pleat_kind: pleat::kind(kind),
        drawn_to: printer.mark(*drawn_to),
    })
}
