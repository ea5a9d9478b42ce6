//! Story sticks: what is marked along the top of a pleated panel, at its true size on strips of paper.

mod marks;
mod strips;
#[cfg(test)]
mod tests;

use pelmet_packet::{Mark, MarkKind, Panel, Window};

use crate::drawing::{Drawing, LineKind, TextSize, at, width_of};
use crate::true_size::page::{Frame, PaperSheet, TileAxis};
use marks::StickMarks;
use strips::StickStrips;

/// Between two strips of a page.
const BETWEEN: f64 = 6.0;
/// Room over the first strip for what lines mean.
const MEANINGS: f64 = 14.0;

/// A panel whose marks go on a stick, with every window that has it alike.
pub(crate) struct StoryStick<'a> {
    pub(crate) panel: &'a Panel,
    pub(crate) windows: Vec<&'a Window>,
}

/// The sticks of a job: one for every kind of panel with pleats to mark.
pub(crate) fn sticks(windows: &[Window]) -> Vec<StoryStick<'_>> {
    let mut sticks: Vec<StoryStick<'_>> = Vec::new();
    for window in windows {
        for panel in window
            .panels
            .iter()
            .filter(|panel| has_pleats_to_mark(panel))
        {
            let alike = |stick: &&mut StoryStick<'_>| {
                stick.panel.name == panel.name
                    && stick.panel.flat_width == panel.flat_width
                    && stick.panel.marks == panel.marks
            };
            match sticks.iter_mut().find(alike) {
                Some(stick) => stick.windows.push(window),
                None => sticks.push(StoryStick {
                    panel,
                    windows: vec![window],
                }),
            }
        }
    }
    sticks
}

fn has_pleats_to_mark(panel: &Panel) -> bool {
    let pleat = |mark: &Mark| matches!(mark.kind, MarkKind::Fold | MarkKind::Pair);
    panel.marks.iter().any(pleat)
}

impl StoryStick<'_> {
    /// Its pages, each with the same title.
    pub(crate) fn pages(&self, title: &str, sheet: PaperSheet) -> Vec<Drawing> {
        let marked = StickMarks::of(self.panel);
        let window = sheet.window();
        let Some(axis) = TileAxis::over(&marked.upright(), window.width)
            .into_iter()
            .next()
        else {
            return vec![];
        };
        let strips = StickStrips {
            marked: &marked,
            axis,
            window,
        };
        let height = strips.height();
        let mut pages: Vec<Drawing> = Vec::new();
        let mut top = f64::INFINITY;
        for strip in 0..axis.tiles {
            if top + height > window.bottom() {
                let mut page = sheet.page(title, HOW_TO_USE);
                meanings(&marked, window, &mut page);
                pages.push(page);
                top = window.top + MEANINGS;
            }
            if let Some(page) = pages.last_mut() {
                strips.draw(strip, top, title, page);
            }
            top += height + BETWEEN;
        }
        pages
    }
}

const HOW_TO_USE: &str = "Cut the strips out and tape them, crosses on crosses. Lay the solid edge along the \
    top of the made-up panel, face up. Numbers are those of the mark list.";

/// What the lines of a stick mean that it has.
fn meanings(marked: &StickMarks, window: Frame, page: &mut Drawing) {
    let has = |line: LineKind| marked.ticks.iter().any(|tick| tick.line == line);
    let brought = !marked.arrows.is_empty();
    let meanings = [
        (has(LineKind::Fold), (LineKind::Fold, "crease")),
        (
            brought,
            (LineKind::Move, "is brought to the line where it ends"),
        ),
        (
            true,
            (
                LineKind::Measure,
                "a point, or the line a crease is brought to",
            ),
        ),
    ];
    let shown = meanings.into_iter().filter(|(shown, _)| *shown);
    let mut x = window.left;
    for (_, meaning) in shown {
        page.meanings([meaning], at(x, window.top + 5.0));
        x += 22.0 + width_of(meaning.1, TextSize::Small);
    }
}
