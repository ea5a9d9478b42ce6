//! The elevation of one window: its row as it hangs, pleats laid, one tenth of its size.
//!
//! The heading line runs through the top of the rod or board, so what lies behind it is not drawn.
//! Returns are drawn beside the front, as if the wall went on there.

use pelmet_packet::packet::{FoldedPanel, Panel, Place, Row, RowPanel, SewnCorner, Window};

use super::{
    Align, Drawing, Line, Point, SCALE, Size, at, clip, dimension, fits, paper, rectangle,
};

/// What is left free around the row.
const LEFT: f64 = 26.0;
const RIGHT: f64 = 12.0;
const ABOVE: f64 = 30.0;
const BELOW: f64 = 12.0;
/// Narrower windows still leave room for the words below them.
const NARROWEST: f64 = 120.0;
/// Height of a line of the words below the drawing.
const ROW: f64 = 4.4;

/// The drawing of how a window looks from the room.
pub(crate) fn elevation(window: &Window) -> Drawing {
    let front = Front {
        window,
        left: LEFT,
        heading: ABOVE,
    };
    let covered = paper(&window.row.covered);
    let mut drawing = Drawing {
        title: format!("Elevation of {}", window.name),
        description: format!(
            "From left to right {}; the lists give every size as a number.",
            window.row.sum
        ),
        width: LEFT + covered.max(NARROWEST) + RIGHT,
        height: 0.0,
        elements: Vec::new(),
    };
    drawing.words(at(LEFT, 7.0), Align::Left, Size::Large, &*window.name);
    front.draw_opening(&mut drawing);
    for hung in front.hung() {
        front.draw_panel(&hung, &mut drawing);
    }
    front.draw_support(&mut drawing);
    front.tell_widths(&mut drawing);
    front.tell_drop(&mut drawing);
    let words = front.heading + front.lowest() + 8.0;
    drawing.height = front.explain(&mut drawing, words) + BELOW;
    drawing
}

/// Where the window stands on the paper.
struct Front<'a> {
    window: &'a Window,
    /// The left end of the row.
    left: f64,
    /// The heading line.
    heading: f64,
}

/// A panel in its place.
struct Hung<'a> {
    panel: &'a Panel,
    /// The left end of its finished width, on the paper.
    left: f64,
}

impl Front<'_> {
    /// Every panel of the row from the left, then those over its joins, which lie in front.
    fn hung(&self) -> Vec<Hung<'_>> {
        let row = &self.window.row;
        let in_row = places(row).filter_map(|(hangs, left)| self.hang(&hangs.name, left));
        let over = row.joins.iter().flat_map(|join| {
            let names = row.over_joins.iter();
            names.filter_map(move |name| {
                let width = paper(&self.panel(name)?.finished_width);
                self.hang(name, paper(join) - width / 2.0)
            })
        });
        in_row.chain(over).collect()
    }

    fn hang(&self, name: &str, left: f64) -> Option<Hung<'_>> {
        let panel = self.panel(name)?;
        let left = self.left + left;
        Some(Hung { panel, left })
    }

    fn panel(&self, name: &str) -> Option<&Panel> {
        self.window.panels.iter().find(|panel| panel.name == name)
    }

    /// How far the longest panel reaches down from the heading line.
    fn longest(&self) -> f64 {
        let drops = self.window.panels.iter().map(|panel| paper(&panel.drop));
        drops.fold(0.0, f64::max)
    }

    /// How far panels and opening reach down from the heading line.
    fn lowest(&self) -> f64 {
        let opening = self.window.opening.as_ref();
        opening
            .map_or(0.0, |size| paper(&size.length))
            .max(self.longest())
    }

    /// The opening behind the treatment, its top at the heading line.
    fn draw_opening(&self, drawing: &mut Drawing) {
        let Some(size) = &self.window.opening else {
            return;
        };
        let middle = self.left + paper(&self.window.row.covered) / 2.0;
        let (width, height) = (paper(&size.width), paper(&size.length));
        let (from, to) = (middle - width / 2.0, middle + width / 2.0);
        let corners = rectangle(at(from, self.heading), at(to, self.heading + height));
        drawing.shape(Line::Opening, corners);
    }

    fn draw_panel(&self, hung: &Hung<'_>, drawing: &mut Drawing) {
        match &hung.panel.folded {
            Some(folded) => self.draw_folded(hung, folded, drawing),
            None => self.draw_drawn_up(hung, drawing),
        }
    }

    /// Layer upon layer from the back to the front.
    fn draw_folded(&self, hung: &Hung<'_>, folded: &FoldedPanel, drawing: &mut Drawing) {
        for layer in &folded.layers {
            let line = if layer.face_up {
                Line::Face
            } else {
                Line::Lining
            };
            for outline in &layer.outlines {
                let points = outline.iter().map(|place| self.on_paper(hung, place, 1.0));
                self.draw_seen(line, &points.collect::<Vec<Point>>(), drawing);
            }
        }
    }

    /// A panel whose pleats are stitched or gathered, as wide as it hangs and without its folds.
    fn draw_drawn_up(&self, hung: &Hung<'_>, drawing: &mut Drawing) {
        let panel = hung.panel;
        let part = panel.finished_width.mm / panel.flat_width.mm.max(1.0);
        let points = panel.outline.iter().flat_map(corner_and_curve);
        let points = points.map(|place| self.on_paper(hung, place, part));
        self.draw_seen(Line::Face, &points.collect::<Vec<Point>>(), drawing);
    }

    /// A shape as far as it hangs below the heading line.
    fn draw_seen(&self, line: Line, points: &[Point], drawing: &mut Drawing) {
        let seen = clip::below(points, self.heading);
        if !seen.is_empty() {
            drawing.shape(line, seen);
        }
    }

    fn on_paper(&self, hung: &Hung<'_>, place: &Place, part: f64) -> Point {
        let down = place.down.mm - hung.panel.heading_depth.mm;
        at(
            hung.left + place.across.mm * part / SCALE,
            self.heading + down / SCALE,
        )
    }

    /// A heavy line along the heading, and dashed ones where the row turns back to the wall.
    fn draw_support(&self, drawing: &mut Drawing) {
        let (left, right) = (self.left, self.left + paper(&self.window.row.covered));
        drawing.line(
            Line::Support,
            [at(left, self.heading), at(right, self.heading)],
        );
        let returns = paper(&self.window.row.returns);
        if returns > 0.0 {
            for x in [left + returns, right - returns] {
                let foot = at(x, self.heading + self.longest() + 3.0);
                drawing.line(Line::Fold, [at(x, self.heading - 3.0), foot]);
            }
        }
    }

    /// The finished width of each panel of the row, and of the whole of it above them.
    fn tell_widths(&self, drawing: &mut Drawing) {
        let row = &self.window.row;
        for (hangs, left) in places(row) {
            let width = paper(&hangs.finished_width);
            let span = (self.left + left, self.left + left + width);
            dimension::above(
                span,
                self.heading - 5.0,
                &hangs.finished_width.text,
                drawing,
            );
            let name = at(span.0 + width / 2.0, self.heading - 10.5);
            if fits(&hangs.name, Size::Small, width) {
                drawing.words(name, Align::Middle, Size::Small, &*hangs.name);
            }
        }
        let whole = (self.left, self.left + paper(&row.covered));
        dimension::above(whole, self.heading - 15.0, &row.covered.text, drawing);
    }

    /// The drop of the panel at the left end.
    fn tell_drop(&self, drawing: &mut Drawing) {
        let Some(Hung { panel, left }) = self.hung().into_iter().next() else {
            return;
        };
        let top = self.heading;
        let drop = (top, top + paper(&panel.drop));
        dimension::left_of(drop, left - 4.0, &panel.drop.text, drawing);
    }

    /// Every panel in words and what the lines mean; gives where the words end.
    fn explain(&self, drawing: &mut Drawing, top: f64) -> f64 {
        let mut y = top;
        for panel in &self.window.panels {
            let drawn = match panel.folded {
                Some(_) => "",
                None => ", drawn without its folds",
            };
            let words = format!(
                "{}: {} wide, drop {}{drawn}",
                panel.name, panel.finished_width.text, panel.drop.text
            );
            drawing.words(at(self.left, y), Align::Left, Size::Plain, words);
            y += ROW;
        }
        let meanings = [
            Some((Line::Face, "face")),
            self.shows_lining()
                .then_some((Line::Lining, "turned over: lining, or the wrong side")),
            self.window
                .opening
                .as_ref()
                .map(|_| (Line::Opening, "opening, its top drawn at the heading line")),
            (self.window.row.returns.mm > 0.0).then_some((
                Line::Fold,
                "the row turns back to the wall, drawn as if it went on",
            )),
        ];
        drawing.meanings(meanings.into_iter().flatten(), at(self.left, y + 1.0))
    }

    fn shows_lining(&self) -> bool {
        let folded = self
            .window
            .panels
            .iter()
            .filter_map(|panel| panel.folded.as_ref());
        let mut seen = folded.filter_map(|folded| folded.seen.as_ref());
        seen.any(|seen| !seen.lining.is_empty())
    }
}

/// The panels of the row, each with the left end of its finished width from that of the row.
fn places(row: &Row) -> impl Iterator<Item = (&RowPanel, f64)> {
    row.panels.iter().scan(0.0, |left, hangs| {
        let here = *left;
        *left += paper(&hangs.finished_width) - paper(&row.overlap);
        Some((hangs, here))
    })
}

fn corner_and_curve(corner: &SewnCorner) -> impl Iterator<Item = &Place> {
    let curve = corner.curve.iter().flat_map(|curve| &curve.between);
    std::iter::once(&corner.at).chain(curve)
}
