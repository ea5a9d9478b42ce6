//! A sheet of paper that is printed at its true size: what stands on every one of them.

use super::paragraph::{paragraph, shortened};
use crate::drawing::{Align, Drawing, LineKind, PaperPoint, TextSize, at, fits, rectangle};
use crate::paper::Paper;

/// What a printer leaves white at the edges of a sheet, and a little more. Common practice, no source.
const MARGIN: f64 = 10.0;
/// Room above the window for what the page is.
const HEAD: f64 = 12.0;
/// Room below it for the bars and how to measure them.
const FOOT: f64 = 16.0;

const INCH: f64 = 25.4;
/// Between the bars and the words beside them.
const BESIDE_BARS: f64 = 16.0;

/// Room at the right of the head for the name of a page.
const FOR_NAME: f64 = 25.0;

/// What to do with the bars.
const MEASURE_BARS: &str = "Measure both bars before you use this page. If either is wrong, print \
    again at its actual size (100 %), not fitted to the paper.";

/// A sheet of paper, upright or on its side.
#[derive(Copy, Clone, PartialEq, Debug)]
pub(crate) struct PaperSheet {
    pub(crate) width: f64,
    pub(crate) height: f64,
}

/// An upright rectangle.
#[derive(Copy, Clone, PartialEq, Debug)]
pub(crate) struct Frame {
    pub(crate) left: f64,
    pub(crate) top: f64,
    pub(crate) width: f64,
    pub(crate) height: f64,
}

impl Frame {
    pub(crate) fn right(self) -> f64 {
        self.left + self.width
    }

    pub(crate) fn bottom(self) -> f64 {
        self.top + self.height
    }

    pub(crate) fn corners(self) -> [PaperPoint; 4] {
        rectangle(at(self.left, self.top), at(self.right(), self.bottom()))
    }
}

impl PaperSheet {
    pub(crate) fn upright(paper: Paper) -> Self {
        let (width, height) = paper.millimetres();
        Self { width, height }
    }

    pub(crate) fn on_its_side(paper: Paper) -> Self {
        let (height, width) = paper.millimetres();
        Self { width, height }
    }

    /// What is left of it for a drawing.
    pub(crate) fn window(self) -> Frame {
        Frame {
            left: MARGIN,
            top: MARGIN + HEAD,
            width: self.width - 2.0 * MARGIN,
            height: self.height - 2.0 * MARGIN - HEAD - FOOT,
        }
    }

    /// A page with its head and its bars: what it is a part of, and what it is.
    pub(crate) fn page(self, whole: &str, part: &str) -> Drawing {
        let mut page = Drawing {
            title: whole.to_owned(),
            description: part.to_owned(),
            width: self.width,
            height: self.height,
            elements: Vec::new(),
        };
        let window = self.window();
        let room = window.width - FOR_NAME;
        let size = if fits(whole, TextSize::Large, room) {
            TextSize::Large
        } else {
            TextSize::Plain
        };
        let whole = shortened(whole, size, room);
        page.words(at(window.left, MARGIN + 4.0), Align::Left, size, whole);
        page.words(
            at(window.left, MARGIN + 9.5),
            Align::Left,
            TextSize::Plain,
            part,
        );
        self.add_bars(&mut page);
        page
    }

    fn add_bars(self, page: &mut Drawing) {
        let window = self.window();
        let foot = window.bottom() + 6.5;
        bar(page, at(window.left, foot), (10.0, 10), "100 mm");
        bar(page, at(window.left, foot + 7.0), (INCH, 4), "4 in");
        let beside = window.left + 4.0 * INCH + BESIDE_BARS;
        paragraph(
            page,
            at(beside, foot - 0.5),
            window.right() - beside,
            TextSize::Small,
            MEASURE_BARS,
        );
    }

    /// Adds the name of a page and an arrow to the top of the piece, at the right of its head.
    pub(crate) fn name(self, page: &mut Drawing, name: &str) {
        let right = self.window().right();
        page.words(at(right, MARGIN + 4.0), Align::Right, TextSize::Large, name);
        let (x, top, foot) = (right - 1.5, MARGIN + 6.0, MARGIN + 10.5);
        page.line(LineKind::Top, [at(x, foot), at(x, top)]);
        page.line(
            LineKind::Top,
            [at(x - 1.2, top + 1.5), at(x, top), at(x + 1.2, top + 1.5)],
        );
        page.words(
            at(x - 3.0, MARGIN + 9.5),
            Align::Right,
            TextSize::Plain,
            "top of the piece",
        );
    }
}

/// A bar of so many parts of one length, with what it must measure.
fn bar(page: &mut Drawing, start: PaperPoint, (part, parts): (f64, u32), measures: &str) {
    let end = at(start.x + part * f64::from(parts), start.y);
    page.line(LineKind::Measure, [start, end]);
    for stop in 0..=parts {
        let is_end = stop == 0 || stop == parts;
        let x = start.x + part * f64::from(stop);
        let rise = if is_end { 2.4 } else { 1.2 };
        page.line(
            LineKind::Measure,
            [at(x, start.y - rise), at(x, start.y + rise)],
        );
    }
    page.words(
        at(end.x + 2.5, start.y + 1.0),
        Align::Left,
        TextSize::Plain,
        measures,
    );
}
