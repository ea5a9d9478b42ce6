//! Marking, folding and measuring a panel that is made up.

use std::collections::BTreeSet;

use pelmet_diagnostics::{counted, listed};
use pelmet_measure::Length;
use pelmet_model::{CautionKind, Heading, HeadingWork, Held, Marked, PleatMade};

use super::bench::Bench;
use super::draft::{Added, Draft, together};

/// What is still to be marked on the made-up panel, all of it before the first fold; `None` where
/// nothing is.
pub(super) fn mark(bench: Bench<'_>) -> Option<Draft> {
    let marks = bench.hung.made.marks.iter();
    let wanted: BTreeSet<ToMark> = marks.filter_map(|mark| ToMark::of(&mark.what)).collect();
    let wanted: Vec<&str> = wanted.into_iter().map(ToMark::words).collect();
    let words = format!(
        "Lay the panel flat, face up, the heading away from you. From its mark list mark {}, each \
         measured from the same edge, with pins or with chalk that comes out again.",
        listed(&wanted, "and"),
    );
    let cautions = [CautionKind::ScrapTest];
    (!wanted.is_empty()).then(|| Draft::added(Added::Mark, vec![words], &cautions))
}

/// What is marked on a made-up panel, in the order it is told.
#[derive(Copy, Clone, PartialEq, Eq, PartialOrd, Ord)]
enum ToMark {
    HeadingLines,
    Pleats,
    Quarters,
    FastenerLines,
    Returns,
}

impl ToMark {
    /// What a mark is a part of; `None` for one that is made on the cut piece.
    fn of(what: &Marked) -> Option<Self> {
        match what {
            Marked::HeadingWork(HeadingWork::FastenerMate) | Marked::FastenerLine { .. } => {
                Some(Self::FastenerLines)
            }
            Marked::HeadingLine | Marked::HeadingWork(_) => Some(Self::HeadingLines),
            Marked::Fold { .. }
            | Marked::Pair { .. }
            | Marked::Finger { .. }
            | Marked::GatherEnd { .. } => Some(Self::Pleats),
            Marked::Quarter => Some(Self::Quarters),
            Marked::Return(_) => Some(Self::Returns),
            Marked::Corner { .. }
            | Marked::Curve { .. }
            | Marked::TurningOpening
            | Marked::MotifCentre
            | Marked::LowerFold
            | Marked::BandSeam { .. }
            | Marked::JoinSeam => None,
        }
    }

    fn words(self) -> &'static str {
        match self {
            Self::HeadingLines => "the lines of the heading",
            Self::Pleats => "the pleats",
            Self::Quarters => "the quarters",
            Self::FastenerLines => "the lines of the fastener",
            Self::Returns => "where the panel turns back to the wall",
        }
    }
}

/// Laying the pleats, or drawing the panel up; `None` for a panel that hangs flat, and for one that
/// is drawn up on its rod.
pub(super) fn fold(bench: Bench<'_>) -> Option<Draft> {
    if bench.is_gathered() {
        return gather(bench);
    }
    let pleats = &bench.hung.made.pleating.pleats;
    if pleats.is_empty() {
        return None;
    }
    let mut words = vec![format!(
        "Make the {}, one after the other from the left. Places are on the flat panel, from its \
         left edge.",
        counted(pleats.len(), "pleat"),
    )];
    words.extend(pleats.iter().zip(1..).map(|(pleat, number)| {
        let fold = fold_of(bench, pleat);
        format!("Pleat {number}, {}: {fold}.", kind_and_depth(bench, pleat))
    }));
    words.extend(afterwards(bench));
    let pressed = pleats.iter().any(|pleat| pleat.held == Held::Pressed);
    let cautions: &[CautionKind] = if pressed {
        &[
            CautionKind::HotIron,
            CautionKind::PressCloth,
            CautionKind::LetItCool,
        ]
    } else {
        &[CautionKind::Needle]
    };
    Some(Draft::added(Added::Pleat, words, cautions))
}

/// The last look at a panel before it hangs.
pub(super) fn measure(bench: Bench<'_>) -> Draft {
    let made = bench.hung.made;
    let (width, until_hung) = if bench.is_gathered() && hangs_in_pocket(bench) {
        (made.flat, ", not yet gathered")
    } else {
        (made.finished, "")
    };
    let mut words = vec![format!(
        "Measure the panel: {} wide{until_hung}{}, and {} from the top edge to the lowest point.",
        bench.mark(width),
        out_by(bench),
        bench.mark(made.made_length),
    )];
    let pleats = made.pleating.pleats.len();
    words.extend((pleats > 0).then(|| format!("Count {}.", counted(pleats, "pleat"))));
    words.push(String::from(
        "Put right now what is out; it is harder once it hangs.",
    ));
    Draft::added(Added::Measure, vec![together(words)], &[])
}

/// What to bring where to make a pleat.
pub(super) fn fold_of(bench: Bench<'_>, pleat: &PleatMade) -> String {
    let place = |at: Length| bench.mark(at);
    let folds = pleat.folds.iter().map(|fold| {
        let (crease, line) = (place(fold.crease), place(fold.brought_to));
        format!("fold at {crease} and bring the fold to {line}")
    });
    let folds = folds.collect::<Vec<_>>().join("; ");
    match pleat.held {
        Held::Pressed => folds,
        Held::Stitched if pleat.folds.is_empty() => stitched(bench, pleat),
        Held::Stitched => format!("{}; then {folds}", stitched(bench, pleat)),
        Held::Drawn => format!(
            "draw up the cloth from {} to {} until it is {} wide",
            place(pleat.from),
            place(pleat.to),
            place(pleat.face.unwrap_or_default()),
        ),
    }
}

fn stitched(bench: Bench<'_>, pleat: &PleatMade) -> String {
    let (from, to) = (bench.mark(pleat.from), bench.mark(pleat.to));
    let leaves = pleat.face.filter(|leaves| leaves.is_positive());
    let brought = match leaves {
        Some(leaves) => format!(
            "bring {from} and {to} to within {} of each other and stitch them so",
            bench.mark(leaves)
        ),
        None => format!("bring {from} to {to} and stitch them together"),
    };
    if pleat.fingers.is_empty() {
        return brought;
    }
    let fingers: Vec<String> = pleat.fingers.iter().map(|at| bench.mark(*at)).collect();
    format!(
        "{brought}, the fingers folded at {}",
        listed(&fingers, "and")
    )
}

fn gather(bench: Bench<'_>) -> Option<Draft> {
    if hangs_in_pocket(bench) {
        return None;
    }
    let made = bench.hung.made;
    let words = format!(
        "Run two rows of gathering thread along the top edge from side to side. Draw the panel up \
         from {} to {} wide, as much between each two quarter marks, and fasten the threads.",
        bench.mark(made.flat),
        bench.mark(made.finished),
    );
    Some(Draft::added(
        Added::Gather,
        vec![words],
        &[CautionKind::Needle],
    ))
}

/// What holds the pleats once they are laid.
fn afterwards(bench: Bench<'_>) -> Option<String> {
    let made = bench.hung.made;
    let held = |held| made.pleating.pleats.iter().any(|pleat| pleat.held == held);
    if let Some(strips) = made.pleat_strips {
        let length = bench.printer.cut(strips.length).text;
        return Some(format!(
            "Press the folds. Hold them from behind with {} of tape, each {length} long, where \
             they cannot be seen.",
            counted(strips.count, "strip"),
        ));
    }
    if held(Held::Pressed) {
        return Some(String::from(
            "Press the folds, and hold them near the top edge with pins or a few stitches until \
             the heading is made.",
        ));
    }
    None
}

fn out_by(bench: Bench<'_>) -> String {
    let tolerance = bench.hung.made.tolerance;
    tolerance.map_or_else(String::new, |(worst, likely)| {
        format!(
            " (folding may put it out by {}, at worst by {})",
            bench.mark(likely),
            bench.mark(worst)
        )
    })
}

fn kind_and_depth(bench: Bench<'_>, pleat: &PleatMade) -> String {
    match pleat.held {
        Held::Drawn => pleat.kind.word().to_owned(),
        Held::Pressed | Held::Stitched => {
            format!("{} {} deep", pleat.kind, bench.mark(pleat.depth))
        }
    }
}

fn hangs_in_pocket(bench: Bench<'_>) -> bool {
    matches!(bench.hung.order.heading, Heading::RodPocket { .. })
}
