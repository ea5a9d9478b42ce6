//! The elevation of one window: its row as it hangs, pleats laid, to a scale at which it fits a page.
//!
//! The heading line runs through the top of the rod or board, so what lies behind it is not drawn.
//! Returns are drawn beside the front, as if the wall went on there.

mod hung;
#[cfg(test)]
mod tests;

use pelmet_packet::{Panel, Row, RowPanel, Window};

use crate::drawing::{
    Align, Drawing, LineKind, PAGE_HEIGHT, PAGE_WIDTH, Scale, TextSize, at, dimension, fits,
    rectangle,
};
use crate::text::words::sizes;
use hung::PanelInPlace;

/// What is left free around the row.
const LEFT: f64 = 24.0;
const RIGHT: f64 = 22.0;
const ABOVE: f64 = 36.0;
const BELOW: f64 = 4.0;
/// Narrower windows still leave room for the words below them.
const NARROWEST: f64 = 110.0;
/// Height of a line of the words below the drawing.
const ROW: f64 = 4.4;

/// The drawing of how a window looks from the room, as large as fits a page, upright or turned.
pub(crate) fn elevation(window: &Window) -> Drawing {
    let fits_a_page = |scale: Scale| {
        let drawing = WindowFront { window, scale }.drawing();
        let fits = |width, height| drawing.width <= width && drawing.height <= height;
        fits(PAGE_WIDTH, PAGE_HEIGHT) || fits(PAGE_HEIGHT, PAGE_WIDTH)
    };
    let scale = Scale::largest(|scale| scale.ratio > 2.0 && fits_a_page(scale));
    WindowFront { window, scale }.drawing()
}

/// A window on the paper: the heading line at [`ABOVE`], the left end of all that is drawn at [`LEFT`].
#[derive(Copy, Clone)]
struct WindowFront<'a> {
    window: &'a Window,
    scale: Scale,
}

impl<'a> WindowFront<'a> {
    fn drawing(self) -> Drawing {
        let window = self.window;
        let mut drawing = Drawing {
            title: format!("Elevation of {}", window.name),
            description: format!(
                "From left to right {}; the lists give every size as a number.",
                window.row.sum
            ),
            width: LEFT + self.width().max(NARROWEST) + RIGHT,
            height: 0.0,
            elements: Vec::new(),
        };
        drawing.words_on_paper(at(LEFT, 7.0), TextSize::Large, &window.name);
        self.draw_opening(&mut drawing);
        for hung in self.hung() {
            hung.draw(&mut drawing);
        }
        self.draw_support(&mut drawing);
        self.tell_widths(&mut drawing);
        self.tell_drop(&mut drawing);
        self.tell_opening(&mut drawing);
        let words = ABOVE + self.lowest() + 13.0;
        drawing.height = self.explain(&mut drawing, words) + BELOW;
        drawing
    }

    /// The wider of row and opening.
    fn width(self) -> f64 {
        let opening = self.window.opening.as_ref();
        let opening = opening.map_or(0.0, |size| self.scale.paper(&size.width));
        opening.max(self.scale.paper(&self.window.row.covered))
    }

    fn middle(self) -> f64 {
        LEFT + self.width() / 2.0
    }

    /// The ends of something that hangs in the middle.
    fn ends(self, width: f64) -> (f64, f64) {
        (self.middle() - width / 2.0, self.middle() + width / 2.0)
    }

    /// The left and the right end of the row on the paper, its returns beside its front.
    fn row(self) -> (f64, f64) {
        self.ends(self.scale.paper(&self.window.row.covered))
    }

    /// Every panel of the row from the left, then those over its joins, which lie in front.
    fn hung(self) -> Vec<PanelInPlace<'a>> {
        let row = &self.window.row;
        let in_row = self
            .places()
            .filter_map(|(hangs, left)| self.hang(&hangs.name, left));
        let over = row.joins.iter().flat_map(|join| {
            let names = row.over_joins.iter();
            names.filter_map(move |name| {
                let width = self.scale.paper(&self.panel(name)?.finished_width);
                let join = self.row().0 + self.scale.paper(join);
                self.hang(name, join - width / 2.0)
            })
        });
        in_row.chain(over).collect()
    }

    fn hang(self, name: &str, left: f64) -> Option<PanelInPlace<'a>> {
        Some(PanelInPlace {
            panel: self.panel(name)?,
            left,
            heading: ABOVE,
            scale: self.scale,
        })
    }

    fn panel(self, name: &str) -> Option<&'a Panel> {
        self.window.panels.iter().find(|panel| panel.name == name)
    }

    /// The panels of the row, each with the left end of its finished width.
    fn places(self) -> impl Iterator<Item = (&'a RowPanel, f64)> {
        let row: &Row = &self.window.row;
        row.panels.iter().scan(self.row().0, move |left, hangs| {
            let here = *left;
            *left += self.scale.paper(&hangs.finished_width) - self.scale.paper(&row.overlap);
            Some((hangs, here))
        })
    }

    /// How far the longest panel reaches down from the heading line.
    fn longest(self) -> f64 {
        let panels = self.window.panels.iter();
        let drops = panels.map(|panel| self.scale.paper(&panel.drop));
        drops.fold(0.0, f64::max)
    }

    /// How far panels and opening reach down from the heading line.
    fn lowest(self) -> f64 {
        let opening = self.window.opening.as_ref();
        opening
            .map_or(0.0, |size| self.scale.paper(&size.length))
            .max(self.longest())
    }

    /// The opening behind the treatment, its top at the heading line.
    fn draw_opening(self, drawing: &mut Drawing) {
        let Some(size) = &self.window.opening else {
            return;
        };
        let (from, to) = self.ends(self.scale.paper(&size.width));
        let foot = ABOVE + self.scale.paper(&size.length);
        drawing.shape(LineKind::Opening, rectangle(at(from, ABOVE), at(to, foot)));
    }

    /// A heavy line along the heading, and dashed ones where the row turns back to the wall.
    fn draw_support(self, drawing: &mut Drawing) {
        let (left, right) = self.row();
        drawing.line(LineKind::Support, [at(left, ABOVE), at(right, ABOVE)]);
        let returns = self.scale.paper(&self.window.row.returns);
        if returns > 0.0 {
            for x in [left + returns, right - returns] {
                let foot = at(x, ABOVE + self.longest() + 3.0);
                drawing.line(LineKind::Fold, [at(x, ABOVE - 3.0), foot]);
            }
        }
    }

    /// The finished width of each panel of the row, above them the whole of it, and above that the
    /// length of the rod or board.
    fn tell_widths(self, drawing: &mut Drawing) {
        let window = self.window;
        for (hangs, left) in self.places() {
            let width = self.scale.paper(&hangs.finished_width);
            let (text, y) = (&hangs.finished_width.text, ABOVE - 5.0);
            dimension::above((left, left + width), y, text, drawing);
            let name = at(left + width / 2.0, ABOVE - 10.5);
            if fits(&hangs.name, TextSize::Small, width) {
                drawing.words(name, Align::Middle, TextSize::Small, &*hangs.name);
            }
        }
        let row = format!("row {}", window.row.covered.text);
        dimension::above(self.row(), ABOVE - 15.0, &row, drawing);
        let support = &window.support;
        let kind = support.kind;
        let told = format!("{kind} {} {}", support.name, support.length.text);
        let ends = self.ends(self.scale.paper(&support.length));
        dimension::above(ends, ABOVE - 21.0, &told, drawing);
    }

    /// The drop of the panel at the left end.
    fn tell_drop(self, drawing: &mut Drawing) {
        let Some(PanelInPlace { panel, left, .. }) = self.hung().into_iter().next() else {
            return;
        };
        let drop = (ABOVE, ABOVE + self.scale.paper(&panel.drop));
        dimension::left_of(drop, left - 4.0, &panel.drop.text, drawing);
    }

    /// How wide and high the opening is.
    fn tell_opening(self, drawing: &mut Drawing) {
        let Some(size) = &self.window.opening else {
            return;
        };
        let ends = self.ends(self.scale.paper(&size.width));
        let foot = ABOVE + self.scale.paper(&size.length);
        let told = format!("opening {}", size.width.text);
        dimension::below(ends, ABOVE + self.lowest() + 4.0, &told, drawing);
        let right = ends.1.max(self.row().1) + 4.0;
        dimension::right_of((ABOVE, foot), right, &size.length.text, drawing);
    }

    /// Every panel in words, the bar and what the lines mean; gives where the words end.
    fn explain(self, drawing: &mut Drawing, top: f64) -> f64 {
        let mut y = top;
        for panel in &self.window.panels {
            let words = told(panel);
            drawing.words_on_paper(at(LEFT, y), TextSize::Plain, &words);
            y += ROW;
        }
        let below = self.scale.draw_bar(drawing, (LEFT, y + 3.0));
        let lining = "turned over: lining, or the wrong side";
        let lining = self.shows_lining().then_some((LineKind::Lining, lining));
        let meanings = [
            (
                LineKind::Support,
                "rod or board, the heading line at its top",
            ),
            (LineKind::Face, "face"),
            (LineKind::Sewn, "seam of a band"),
            (LineKind::DrawnUp, "stitched or drawn up there"),
            (
                LineKind::Opening,
                "opening, its top drawn at the heading line",
            ),
            (
                LineKind::Fold,
                "the row turns back to the wall, drawn as if it went on",
            ),
        ];
        let meanings: Vec<(LineKind, &str)> = meanings.into_iter().chain(lining).collect();
        drawing.meanings_of(&meanings, at(LEFT, below + 5.0))
    }

    fn shows_lining(self) -> bool {
        let panels = self.window.panels.iter();
        let folded = panels.filter_map(|panel| panel.folded.as_ref());
        let mut seen = folded.filter_map(|folded| folded.seen.as_ref());
        seen.any(|seen| !seen.lining.is_empty())
    }
}

/// A panel in words.
fn told(panel: &Panel) -> String {
    let drawn = if panel.folded.is_none() {
        ", drawn without its folds"
    } else {
        ""
    };
    format!("{}{drawn}", sizes(panel))
}
