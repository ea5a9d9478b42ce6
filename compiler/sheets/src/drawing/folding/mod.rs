//! The folding chart of one panel: its flat strip, and below it the same cloth folded, seen on its edge.
//!
//! Both are to one scale along the panel. Layers are drawn apart, since cloth is too thin to be seen.
//! A wide panel stands in several rows, and on several drawings where it takes more than a page.

mod lying;
mod row;
mod section;
mod strip;

use pelmet_packet::packet::Panel;

use super::{Align, Drawing, Line, PAGE_HEIGHT, PAGE_WIDTH, Scale, Size, at, dimension, fits};
use crate::words::finished;
use lying::Lying;
use row::Row;
use strip::Strip;

/// What is left free at either side.
const SIDE: f64 = 4.0;
/// The words over the first row.
const ABOVE: f64 = 17.0;
/// The bar and the meanings below the last.
const BELOW: f64 = 38.0;
/// From one layer to the next, and how high a stack may stand.
const LAYER: f64 = 1.7;
const STACK: f64 = 40.0;
/// Room for the numbers of stretches over the folded cloth, and for a measure.
const NUMBERS: f64 = 5.5;
const MEASURE: f64 = 7.0;
/// Between two rows.
const BETWEEN: f64 = 5.0;

/// The drawings of how a panel is folded; none for one without pleats.
pub(crate) fn folding(panel: &Panel) -> Vec<Drawing> {
    if panel.pleats.is_empty() {
        return Vec::new();
    }
    let lying = lying::lying(panel);
    let chart = Chart::new(panel, &lying);
    let rows = chart.rows();
    let pages = chart.pages(&rows);
    let count = pages.len();
    let drawn = (1_usize..).zip(pages);
    drawn
        .map(|(number, rows)| chart.drawing(rows, (number, count)))
        .collect()
}

struct Chart<'a> {
    panel: &'a Panel,
    lying: &'a [Lying<'a>],
    scale: Scale,
    /// From one layer to the next, on the paper.
    layer: f64,
}

impl<'a> Chart<'a> {
    fn new(panel: &'a Panel, lying: &'a [Lying<'a>]) -> Self {
        let layers = f64::from(panel.thickest.max(1));
        Self {
            panel,
            lying,
            scale: row::scale(panel, PAGE_WIDTH - 2.0 * SIDE),
            layer: LAYER.min(STACK / layers),
        }
    }

    fn rows(&self) -> Vec<Row> {
        let width = (PAGE_WIDTH - 2.0 * SIDE) * self.scale.ratio;
        row::rows(self.panel, self.lying, width)
    }

    /// As many rows on each page as have room there.
    fn pages<'r>(&self, rows: &'r [Row]) -> Vec<&'r [Row]> {
        let mut pages = Vec::new();
        let mut rest = rows;
        while !rest.is_empty() {
            let mut free = PAGE_HEIGHT - ABOVE - BELOW;
            let fitting = rest.iter().take_while(|row| {
                free -= self.height(**row);
                free >= 0.0
            });
            let (page, next) = rest
                .split_at_checked(fitting.count().max(1))
                .unwrap_or((rest, &[]));
            pages.push(page);
            rest = next;
        }
        pages
    }

    fn strip(&self, row: Row, top: f64) -> Strip<'_> {
        Strip {
            panel: self.panel,
            lying: self.lying,
            row,
            left: SIDE,
            top,
            ratio: self.scale.ratio,
        }
    }

    /// How high a row is, with its share of what lies between two.
    fn height(&self, row: Row) -> f64 {
        let (arrows, numbers) = self.strip(row, 0.0).room();
        let stack = section::height(self.panel, self.layer);
        arrows + MEASURE + strip::HEIGHT + numbers + NUMBERS + stack + MEASURE + BETWEEN
    }

    fn drawing(&self, rows: &[Row], (number, count): (usize, usize)) -> Drawing {
        let mut drawing = Drawing {
            title: format!("Folding of {}", self.panel.name),
            description: format!(
                "{} flat and {} finished; the table gives every stretch as numbers.",
                self.panel.flat_width.text, self.panel.finished_width.text
            ),
            width: PAGE_WIDTH,
            height: 0.0,
            elements: Vec::new(),
        };
        self.tell_title((number, count), &mut drawing);
        let mut top = ABOVE;
        for row in rows {
            self.draw_row(*row, top, &mut drawing);
            top += self.height(*row);
        }
        let end = self.explain(top + 2.0, &mut drawing);
        drawing.height = end + 1.0;
        drawing
    }

    fn tell_title(&self, (number, count): (usize, usize), drawing: &mut Drawing) {
        let part = if count > 1 {
            format!(", {number} of {count}")
        } else {
            String::new()
        };
        let title = format!("{}: folding{part}", self.panel.name);
        drawing.words(at(SIDE, 6.0), Align::Left, Size::Large, title);
        let sizes = format!(
            "{} flat, {}",
            self.panel.flat_width.text,
            finished(self.panel)
        );
        drawing.words(at(SIDE, 11.5), Align::Left, Size::Small, sizes);
    }

    fn draw_row(&self, row: Row, top: f64, drawing: &mut Drawing) {
        let (arrows, numbers) = self.strip(row, 0.0).room();
        let whole = row.from <= 0.0 && row.to >= self.panel.flat_width.mm;
        let (left, right) = (SIDE, SIDE + (row.to - row.from) / self.scale.ratio);
        if whole {
            let told = format!("{} flat", self.panel.flat_width.text);
            dimension::above((left, right), top + 3.5, &told, drawing);
        } else {
            let told = self.stretches_of(row);
            drawing.words(at(left, top + 3.0), Align::Left, Size::Small, told);
        }
        let strip = self.strip(row, top + MEASURE + arrows);
        strip.draw(drawing);
        let base =
            strip.top + strip::HEIGHT + numbers + NUMBERS + section::height(self.panel, self.layer);
        let paper = self.paper(row, base);
        self.tell_stretches(row, &paper, drawing);
        drawing.line(
            Line::Edge,
            section::line(self.panel, self.lying, row, &paper),
        );
        if whole {
            let told = format!("{} finished", self.panel.finished_width.text);
            let (from, to) = (paper.x(0.0), paper.x(self.panel.finished_width.mm));
            dimension::below((from, to), base + 3.0, &told, drawing);
        }
    }

    /// Which stretches stand in a row.
    fn stretches_of(&self, row: Row) -> String {
        let of_row = self.lying.iter().filter(|it| {
            let flat = &it.stretch.flat;
            row.clip((flat.from.mm, flat.to.mm)).is_some()
        });
        let numbers: Vec<u32> = of_row.map(|it| it.number).collect();
        match (numbers.first(), numbers.last()) {
            (Some(first), Some(last)) if first < last => format!("stretches {first} to {last}"),
            (Some(first), _) => format!("stretch {first}"),
            _ => String::new(),
        }
    }

    /// The folded cloth in the middle of the flat strip.
    fn paper(&self, row: Row, base: f64) -> section::Paper {
        let ends = self.lying.iter().flat_map(|it| {
            let flat = &it.stretch.flat;
            let clipped = row.clip((flat.from.mm, flat.to.mm));
            clipped
                .into_iter()
                .flat_map(|(from, to)| [it.finished(from), it.finished(to)])
        });
        let (least, most) = ends.fold((f64::MAX, f64::MIN), |(least, most), end| {
            (least.min(end), most.max(end))
        });
        let (flat, folded) = (row.to - row.from, most - least);
        section::Paper {
            finished: least,
            left: SIDE + (flat - folded) / 2.0 / self.scale.ratio,
            base,
            ratio: self.scale.ratio,
            layer: self.layer,
        }
    }

    /// Over the folded cloth the number of each stretch that is seen.
    fn tell_stretches(&self, row: Row, paper: &section::Paper, drawing: &mut Drawing) {
        let y = paper.base - section::height(self.panel, self.layer) - 2.0;
        for it in self.lying {
            let seen = it.parts.iter().filter(|part| part.seen);
            let in_row = seen.filter_map(|part| {
                let (one, other) = (it.flat(part.from), it.flat(part.to));
                let (from, to) = row.clip((one.min(other), one.max(other)))?;
                Some((paper.x(it.finished(from)), paper.x(it.finished(to))))
            });
            let wide = |(from, to): &(f64, f64)| (to - from).abs();
            let widest = in_row.max_by(|one, other| wide(one).total_cmp(&wide(other)));
            let Some((from, to)) = widest else { continue };
            let number = it.number.to_string();
            if fits(&number, Size::Small, (to - from).abs()) {
                drawing.words(at((from + to) / 2.0, y), Align::Middle, Size::Small, number);
            }
        }
    }

    /// The bar and what the lines mean; gives where the words end.
    fn explain(&self, top: f64, drawing: &mut Drawing) -> f64 {
        let below = self.scale.draw_bar(drawing, (SIDE, top));
        drawing.meanings_of(
            &[
                (Line::Move, "a fold is brought along the arrow; over it the number of the pleat"),
                (Line::Fold, "crease, its ridge toward you"),
                (Line::FoldAway, "crease, its ridge away from you"),
                (Line::Face, "seen once it is folded"),
                (Line::Turned, "turned over once it is folded"),
                (Line::Hidden, "hidden once it is folded"),
                (Line::Edge, "the folded cloth seen on its edge, face up; layers are drawn apart, not to scale"),
            ],
            at(SIDE, below + 5.0),
        )
    }
}

#[cfg(test)]
mod tests {
    use pelmet_packet::packet::Panel;

    use super::folding;
    use crate::drawing::tests::packets;
    use crate::drawing::{Align, Drawing, Element, Line, PAGE_HEIGHT, PAGE_WIDTH, Size, width_of};

    /// Every pleated panel of the examples, with its drawings.
    fn panels() -> Vec<(Panel, Vec<Drawing>)> {
        let windows = packets().into_iter().flat_map(|packet| packet.windows);
        let panels = windows.flat_map(|window| window.panels);
        let drawn = panels.map(|panel| (panel.clone(), folding(&panel)));
        let drawn: Vec<_> = drawn.filter(|(_, drawings)| !drawings.is_empty()).collect();
        assert!(drawn.len() > 3);
        drawn
    }

    fn count(drawings: &[Drawing], of: impl Fn(&Element) -> bool) -> usize {
        let elements = drawings.iter().flat_map(|drawing| &drawing.elements);
        elements.filter(|element| of(element)).count()
    }

    #[test]
    fn every_drawing_fits_a_page() {
        for (_, drawings) in panels() {
            for drawing in drawings {
                assert!(drawing.width <= PAGE_WIDTH, "{}", drawing.title);
                assert!(drawing.height <= PAGE_HEIGHT, "{}", drawing.title);
            }
        }
    }

    /// One more of each kind on every page explains the line.
    #[test]
    fn every_crease_is_drawn_once() {
        for (panel, drawings) in panels() {
            let creases = count(&drawings, |it| {
                it.is_of(Line::Fold) || it.is_of(Line::FoldAway)
            });
            assert_eq!(
                creases,
                panel.creases.len() + 2 * drawings.len(),
                "{}",
                panel.name
            );
        }
    }

    #[test]
    fn every_fold_has_an_arrow_with_the_number_of_its_pleat() {
        for (panel, drawings) in panels() {
            let folds = panel.marks.iter().filter_map(|mark| mark.fold.as_ref());
            let arrows = count(
                &drawings,
                |it| matches!(it, Element::Path { line: Line::Move, points, .. } if points.len() == 4),
            );
            assert_eq!(arrows, folds.clone().count(), "{}", panel.name);
            for fold in folds {
                let number = fold.pleat.to_string();
                let told =
                    |it: &Element| matches!(it, Element::Words { text, .. } if *text == number);
                assert!(count(&drawings, told) > 0, "{number} of {}", panel.name);
            }
        }
    }

    /// The folded cloth of a panel in one row is as wide as the packet says it lies.
    #[test]
    fn the_folded_cloth_is_as_wide_as_it_lies() {
        for (panel, drawings) in panels() {
            let [drawing] = drawings.as_slice() else {
                continue;
            };
            let Some(folded) = &panel.folded else {
                continue;
            };
            let edges = drawing.elements.iter().filter_map(|it| match it {
                Element::Path {
                    line: Line::Edge,
                    points,
                    ..
                } => Some(points),
                _ => None,
            });
            // One in the row, one to explain the line.
            let edges: Vec<_> = edges.collect();
            let [chart, _] = edges.as_slice() else {
                continue;
            };
            let across = chart.iter().map(|point| point.x);
            let (least, most) = across.fold((f64::MAX, f64::MIN), |(least, most), x| {
                (least.min(x), most.max(x))
            });
            let ratio = super::row::scale(&panel, PAGE_WIDTH - 2.0 * super::SIDE).ratio;
            let wide = (folded.extent.to.mm - folded.extent.from.mm) / ratio;
            assert!(
                (most - least - wide).abs() < 1e-6,
                "{}: {}",
                panel.name,
                most - least
            );
        }
    }

    /// What is written on one line from the left, as the places of creases are.
    #[test]
    fn the_places_of_creases_do_not_lie_on_one_another() {
        for (_, drawings) in panels() {
            for drawing in drawings {
                let words = drawing.elements.iter().filter_map(|it| match it {
                    Element::Words {
                        at,
                        align,
                        size: Size::Small,
                        text,
                    } => match align {
                        Align::Left => Some((at.x, at.x + width_of(text, Size::Small), at.y)),
                        Align::Right => Some((at.x - width_of(text, Size::Small), at.x, at.y)),
                        Align::Middle => None,
                    },
                    _ => None,
                });
                let words: Vec<(f64, f64, f64)> = words.collect();
                for (index, one) in words.iter().enumerate() {
                    for other in words.iter().skip(index + 1) {
                        let apart = one.1 <= other.0 || other.1 <= one.0;
                        assert!(apart || (one.2 - other.2).abs() > 2.0, "{}", drawing.title);
                    }
                }
            }
        }
    }
}
