//! What is marked on a story stick.

use pelmet_packet::{Mark, MarkKind, Panel};

use crate::drawing::{LineKind, PaperPoint, at};

/// What is marked along the top of a panel, in millimetres from its left edge.
pub(super) struct StickMarks {
    pub(super) ticks: Vec<Tick>,
    pub(super) arrows: Vec<Arrow>,
}

/// A line across the stick, and what it is.
pub(super) struct Tick {
    pub(super) at: f64,
    pub(super) line: LineKind,
    pub(super) words: String,
}

/// Cloth brought from one place to another.
pub(super) struct Arrow {
    pub(super) from: f64,
    pub(super) to: f64,
    /// Whether both ends are brought together.
    pub(super) both: bool,
}

impl StickMarks {
    pub(super) fn of(panel: &Panel) -> Self {
        let end = |at: f64, words: &str| Tick {
            at,
            line: LineKind::CutEdge,
            words: words.to_owned(),
        };
        let flat = panel.flat_width.mm;
        let mut ticks = vec![end(0.0, "left edge")];
        ticks.extend(panel.marks.iter().flat_map(ticks_of));
        ticks.push(Tick {
            at: flat / 2.0,
            line: LineKind::Centre,
            words: String::from("centre"),
        });
        ticks.push(end(flat, &format!("right edge, {}", panel.flat_width.text)));
        ticks.sort_by(|one, other| one.at.total_cmp(&other.at));
        Self {
            ticks,
            arrows: panel.marks.iter().filter_map(arrow_of).collect(),
        }
    }

    /// Every tick as a line across.
    pub(super) fn upright(&self) -> Vec<Vec<PaperPoint>> {
        let ticks = self.ticks.iter();
        ticks
            .map(|tick| vec![at(tick.at, 0.0), at(tick.at, 1.0)])
            .collect()
    }
}

fn ticks_of(mark: &Mark) -> Vec<Tick> {
    // The marks of pleats are many, and their numbers alone have to do; the others are few, and named.
    let (line, is_named) = match mark.kind {
        MarkKind::Fold => (LineKind::Fold, false),
        MarkKind::Finger => (LineKind::FoldAway, false),
        MarkKind::JoinSeam => (LineKind::Sewn, true),
        MarkKind::Pair | MarkKind::Quarter => (LineKind::Measure, false),
        MarkKind::GatherEnd
        | MarkKind::MotifCentre
        | MarkKind::TurningOpening
        | MarkKind::Return => (LineKind::Measure, true),
        // Not along the top edge, or all across it.
        MarkKind::HeadingLine
        | MarkKind::HeadingWork
        | MarkKind::Corner
        | MarkKind::Curve
        | MarkKind::FastenerLine
        | MarkKind::LowerFold
        | MarkKind::BandSeam => return vec![],
    };
    let Some(from_left) = &mark.from_left else {
        return vec![];
    };
    let what = if is_named {
        format!(" {}", mark.name)
    } else {
        String::new()
    };
    let tick = |at: f64, place: &str| Tick {
        at,
        line,
        words: format!("{}{what}: {place}", mark.number),
    };
    let mut ticks = vec![tick(from_left.mm, &from_left.text)];
    let other = mark.stitch.as_ref().map(|stitch| &stitch.other_from_left);
    ticks.extend(other.map(|other| tick(other.mm, &other.text)));
    let to = mark.fold.as_ref().map(|fold| &fold.brought_to_from_left);
    ticks.extend(to.map(|to| Tick {
        at: to.mm,
        line: LineKind::Measure,
        words: String::new(),
    }));
    ticks
}

fn arrow_of(mark: &Mark) -> Option<Arrow> {
    let from = mark.from_left.as_ref()?.mm;
    let fold = mark
        .fold
        .as_ref()
        .map(|fold| (&fold.brought_to_from_left, false));
    let stitch = mark
        .stitch
        .as_ref()
        .map(|stitch| (&stitch.other_from_left, true));
    let (to, both) = fold.or(stitch)?;
    Some(Arrow {
        from,
        to: to.mm,
        both,
    })
}
