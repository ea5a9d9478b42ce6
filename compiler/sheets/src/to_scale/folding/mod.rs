//! The folding chart of one panel: its flat strip, and below it the same cloth folded, seen on its edge.
//!
//! Both are to one scale along the panel. Layers are drawn apart, since cloth is too thin to be seen.
//! A wide panel stands in several rows, and on several drawings where it takes more than a page.

mod lying;
mod row;
mod section;
mod strip;
#[cfg(test)]
mod tests;

use pelmet_packet::Panel;

use crate::drawing::{
    Align, Drawing, LineKind, PAGE_HEIGHT, PAGE_WIDTH, Scale, TextSize, at, dimension, fits,
};
use crate::text::words::finished;
use lying::LyingStretch;
use row::StripRow;
use strip::FlatStrip;

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
    lying: &'a [LyingStretch<'a>],
    scale: Scale,
    /// From one layer to the next, on the paper.
    layer: f64,
}

impl<'a> Chart<'a> {
    fn new(panel: &'a Panel, lying: &'a [LyingStretch<'a>]) -> Self {
        let layers = f64::from(panel.thickest.max(1));
        Self {
            panel,
            lying,
            scale: row::scale(panel, PAGE_WIDTH - 2.0 * SIDE),
            layer: LAYER.min(STACK / layers),
        }
    }

    fn rows(&self) -> Vec<StripRow> {
        let width = (PAGE_WIDTH - 2.0 * SIDE) * self.scale.ratio;
        row::rows(self.panel, self.lying, width)
    }

    /// As many rows on each page as have room there.
    fn pages<'r>(&self, rows: &'r [StripRow]) -> Vec<&'r [StripRow]> {
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

    fn strip(&self, row: StripRow, top: f64) -> FlatStrip<'_> {
        FlatStrip {
            panel: self.panel,
            lying: self.lying,
            row,
            left: SIDE,
            top,
            ratio: self.scale.ratio,
        }
    }

    /// How high a row is, with its share of what lies between two.
    fn height(&self, row: StripRow) -> f64 {
        let (arrows, numbers) = self.strip(row, 0.0).room();
        let stack = section::height(self.panel, self.layer);
        arrows + MEASURE + strip::HEIGHT + numbers + NUMBERS + stack + MEASURE + BETWEEN
    }

    fn drawing(&self, rows: &[StripRow], (number, count): (usize, usize)) -> Drawing {
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
        drawing.words_on_paper(at(SIDE, 6.0), TextSize::Large, &title);
        let sizes = format!(
            "{} flat, {}",
            self.panel.flat_width.text,
            finished(self.panel)
        );
        drawing.words_on_paper(at(SIDE, 11.5), TextSize::Small, &sizes);
    }

    fn draw_row(&self, row: StripRow, top: f64, drawing: &mut Drawing) {
        let (arrows, numbers) = self.strip(row, 0.0).room();
        let whole = row.from <= 0.0 && row.to >= self.panel.flat_width.mm;
        let (left, right) = (SIDE, SIDE + (row.to - row.from) / self.scale.ratio);
        if whole {
            let told = format!("{} flat", self.panel.flat_width.text);
            dimension::above((left, right), top + 3.5, &told, drawing);
        } else {
            let told = self.stretches_of(row);
            drawing.words(at(left, top + 3.0), Align::Left, TextSize::Small, told);
        }
        let strip = self.strip(row, top + MEASURE + arrows);
        strip.draw(drawing);
        let base =
            strip.top + strip::HEIGHT + numbers + NUMBERS + section::height(self.panel, self.layer);
        let paper = self.paper(row, base);
        self.tell_stretches(row, &paper, drawing);
        drawing.line(
            LineKind::Edge,
            section::line(self.panel, self.lying, row, &paper),
        );
        if whole {
            let told = format!("{} finished", self.panel.finished_width.text);
            let (from, to) = (paper.x(0.0), paper.x(self.panel.finished_width.mm));
            dimension::below((from, to), base + 3.0, &told, drawing);
        }
    }

    /// Which stretches stand in a row.
    fn stretches_of(&self, row: StripRow) -> String {
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
    fn paper(&self, row: StripRow, base: f64) -> section::SectionPlace {
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
        section::SectionPlace {
            finished: least,
            left: SIDE + (flat - folded) / 2.0 / self.scale.ratio,
            base,
            ratio: self.scale.ratio,
            layer: self.layer,
        }
    }

    /// Over the folded cloth the number of each stretch that is seen.
    fn tell_stretches(&self, row: StripRow, paper: &section::SectionPlace, drawing: &mut Drawing) {
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
            if fits(&number, TextSize::Small, (to - from).abs()) {
                drawing.words(
                    at((from + to) / 2.0, y),
                    Align::Middle,
                    TextSize::Small,
                    number,
                );
            }
        }
    }

    /// The bar and what the lines mean; gives where the words end.
    fn explain(&self, top: f64, drawing: &mut Drawing) -> f64 {
        let below = self.scale.draw_bar(drawing, (SIDE, top));
        drawing.meanings_of(
            &[
                (LineKind::Move, "a fold is brought along the arrow; over it the number of the pleat"),
                (LineKind::Fold, "crease, its ridge toward you"),
                (LineKind::FoldAway, "crease, its ridge away from you"),
                (LineKind::Face, "seen once it is folded"),
                (LineKind::Turned, "turned over once it is folded"),
                (LineKind::Hidden, "hidden once it is folded"),
                (LineKind::Edge, "the folded cloth seen on its edge, face up; layers are drawn apart, not to scale"),
            ],
            at(SIDE, below + 5.0),
        )
    }
}
