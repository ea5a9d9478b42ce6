//! The marks of a panel, in working order.

use pelmet_diagnostics::counted;
use pelmet_model::{MarkMade, Marked, Relief};
use pelmet_packet::{FoldMark, GatherMark, Mark, StitchMark};

use super::count::{number, ordinal};
use super::printer::Printer;

/// The marks, numbered.
pub(crate) fn marks(made: &[MarkMade], printer: &Printer<'_>) -> Vec<Mark> {
    made.iter()
        .enumerate()
        .map(|(index, mark)| marked(ordinal(index), mark, printer))
        .collect()
}

fn marked(place: u32, mark: &MarkMade, printer: &Printer<'_>) -> Mark {
    let kind = mark.what.kind();
    let has_place = !kind.runs_across();
    Mark {
        number: place,
        kind,
        name: name(&mark.what),
        from_left: has_place.then(|| printer.mark(mark.across)),
        from_centre: has_place.then(|| printer.beside_centre(mark.from_centre)),
        down: mark.down.map(|down| printer.mark(down)),
        relief: relief(&mark.what),
        fold: fold(&mark.what, printer),
        stitch: stitch(&mark.what, printer),
        gather: gather(&mark.what, printer),
    }
}

/// What the allowance at a corner calls for.
fn relief(what: &Marked) -> Option<Relief> {
    let Marked::Corner { relief, .. } = what else {
        return None;
    };
    *relief
}

/// What is marked, in words.
fn name(what: &Marked) -> String {
    let kind = what.kind();
    match what {
        Marked::HeadingLine
        | Marked::TurningOpening
        | Marked::Quarter
        | Marked::MotifCentre
        | Marked::LowerFold
        | Marked::JoinSeam => kind.word().to_owned(),
        Marked::HeadingWork(work) => work.word().to_owned(),
        Marked::Corner {
            number,
            relief,
            name,
        } => {
            let name = name.as_ref().map(|name| format!(" {name}"));
            let relief = relief.map(|relief| format!(", {relief}"));
            let (name, relief) = (name.unwrap_or_default(), relief.unwrap_or_default());
            format!("{kind} {number}{name}{relief}")
        }
        Marked::Curve {
            from,
            to,
            clips,
            wedges,
        } => {
            let (clips, wedges) = (cuts(*clips, "clip"), cuts(*wedges, "wedge"));
            format!("{kind} from corner {from} to {to}{clips}{wedges}")
        }
        Marked::Fold { pleat, kind, .. } | Marked::Pair { pleat, kind, .. } => {
            format!("pleat {pleat}, {kind}")
        }
        Marked::Finger { pleat } => format!("pleat {pleat}, {kind}"),
        Marked::GatherEnd {
            pleat,
            kind: pleat_kind,
            ..
        } => format!("pleat {pleat}, {pleat_kind}, {kind}"),
        Marked::FastenerLine { name } => format!("{kind} of {name}"),
        Marked::BandSeam { edge } => format!("{kind} {edge}"),
        Marked::Return(end) => format!("{end} {kind}"),
    }
}

/// The cuts in the allowance of a curve: `, 9 clips`.
fn cuts(count: u32, noun: &str) -> String {
    match count {
        0 => String::new(),
        some => format!(", {}", counted(some, noun)),
    }
}

fn fold(what: &Marked, printer: &Printer<'_>) -> Option<FoldMark> {
    let Marked::Fold {
        pleat,
        kind,
        depth,
        brought_to,
        brought_to_from_centre,
        toward,
    } = what
    else {
        return None;
    };
    Some(FoldMark {
        pleat: number(*pleat),
        pleat_kind: *kind,
        depth: printer.mark(*depth),
        brought_to_from_left: printer.mark(*brought_to),
        brought_to_from_centre: printer.beside_centre(*brought_to_from_centre),
        toward: *toward,
    })
}

fn stitch(what: &Marked, printer: &Printer<'_>) -> Option<StitchMark> {
    let Marked::Pair {
        pleat,
        kind,
        depth,
        leaves,
        other,
        other_from_centre,
    } = what
    else {
        return None;
    };
    Some(StitchMark {
        pleat: number(*pleat),
        pleat_kind: *kind,
        depth: printer.mark(*depth),
        leaves: printer.mark(*leaves),
        other_from_left: printer.mark(*other),
        other_from_centre: printer.beside_centre(*other_from_centre),
    })
}

fn gather(what: &Marked, printer: &Printer<'_>) -> Option<GatherMark> {
    let Marked::GatherEnd {
        pleat,
        kind,
        drawn_to,
    } = what
    else {
        return None;
    };
    Some(GatherMark {
        pleat: number(*pleat),
        pleat_kind: *kind,
        drawn_to: printer.mark(*drawn_to),
    })
}
