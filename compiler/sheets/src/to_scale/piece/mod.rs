//! A cut piece with its measures: the line the shears follow, the sewn line inside it, folds, corners
//! and lengths, to a scale at which it fits a page.

mod numbers;
#[cfg(test)]
mod tests;

use pelmet_packet::{LayerKind, MeasuredFrom, OutlinePoint, Panel, Piece};

use crate::drawing::{
    Align, Drawing, LineKind, PAGE_HEIGHT, PAGE_WIDTH, PaperPoint, Scale, TextSize, WordsApart, at,
    dimension, width_of,
};

/// What is left free around the piece.
const LEFT: f64 = 16.0;
const RIGHT: f64 = 24.0;
const ABOVE: f64 = 26.0;
/// Between the piece and the words below it.
const BELOW: f64 = 12.0;
/// Narrower pieces still leave room for the words below them.
const NARROWEST: f64 = 110.0;
/// A rectangle is told by its size; its drawing need not be large, in millimetres.
const RECTANGLE: f64 = 90.0;
/// A piece less high than this has no room for words inside it.
const ROOM: f64 = 14.0;
/// The largest scale of a shaped piece and of a rectangle.
const LARGEST: f64 = 2.0;
const LARGEST_RECTANGLE: f64 = 10.0;

/// The pieces of a panel, those together that are cut by the same line, so that one drawing and one
/// table of corners serve them.
pub(crate) fn cut_alike(panel: &Panel) -> impl Iterator<Item = &[Piece]> {
    panel.pieces.chunk_by(|one, other| {
        one.outline_from == other.outline_from && one.outline == other.outline
    })
}

/// The drawings of the pieces of a panel, in the order of its cut sheet.
pub(crate) fn pieces(panel: &Panel) -> Vec<Drawing> {
    cut_alike(panel)
        .filter_map(|alike| piece(panel, alike))
        .collect()
}

/// The drawing of pieces alike; of rectangles only where the face is one of them.
pub(crate) fn piece(panel: &Panel, alike: &[Piece]) -> Option<Drawing> {
    let first = alike.first()?;
    let is_rectangle = is_rectangle(&first.outline);
    (!is_rectangle || first.layer == LayerKind::Face).then(|| drawn(panel, alike, is_rectangle))?
}

/// Whether four corners lie on two lines across and two lines down.
pub(crate) fn is_rectangle(outline: &[OutlinePoint]) -> bool {
    let different = |of: fn(&OutlinePoint) -> &str| {
        let mut places: Vec<&str> = outline.iter().map(of).collect();
        places.sort_unstable();
        places.dedup();
        places.len()
    };
    outline.len() == 4
        && different(|point| &point.at.across.text) == 2
        && different(|point| &point.at.down.text) == 2
}

/// The drawing of pieces of a panel that are cut by one line; nothing for none.
pub(super) fn drawn(panel: &Panel, alike: &[Piece], is_rectangle: bool) -> Option<Drawing> {
    let piece = alike.first()?;
    let labels: Vec<&str> = alike.iter().map(|piece| piece.label.as_str()).collect();
    let labels = labels.join(" and ");
    let on = |scale| PieceDrawn {
        panel,
        alike,
        piece,
        labels: &labels,
        scale,
    };
    let scale = Scale::largest(|scale| {
        if is_rectangle {
            let small = scale.paper(&piece.cut_length) <= RECTANGLE;
            return scale.ratio >= LARGEST_RECTANGLE && small && on(scale).fits_a_page();
        }
        scale.ratio >= LARGEST && on(scale).fits_a_page()
    });
    Some(on(scale).drawing())
}

/// A piece, and the scale at which it is drawn.
#[derive(Copy, Clone)]
struct PieceDrawn<'a> {
    panel: &'a Panel,
    /// The pieces cut by its line, of which it is the first.
    alike: &'a [Piece],
    piece: &'a Piece,
    labels: &'a str,
    scale: Scale,
}

impl PieceDrawn<'_> {
    fn fits_a_page(self) -> bool {
        let drawing = self.drawing();
        drawing.width <= PAGE_WIDTH && drawing.height <= PAGE_HEIGHT
    }

    fn drawing(self) -> Drawing {
        let width = self.scale.paper(&self.piece.draw_width);
        let mut drawing = Drawing {
            title: format!("Outline of {}", self.labels),
            description: format!(
                "{} wide and {} long; the table gives every corner as numbers.",
                self.piece.cut_width.text, self.piece.cut_length.text
            ),
            width: LEFT + width.max(NARROWEST) + RIGHT,
            height: 0.0,
            elements: Vec::new(),
        };
        self.tell_title(&mut drawing);
        self.draw_cut(&mut drawing);
        self.draw_lines(&mut drawing);
        let mut labels = WordsApart::default();
        self.tell_name(&mut labels, &mut drawing);
        numbers::tell(self, &mut labels, &mut drawing);
        self.tell_size(&mut drawing);
        drawing.height = self.explain(&mut drawing) + 2.0;
        drawing
    }

    fn is_half(self) -> bool {
        self.piece.outline_from == MeasuredFrom::Fold
    }

    fn point(self, it: &OutlinePoint) -> PaperPoint {
        let PaperPoint { x, y } = at(
            self.scale.paper(&it.at.across),
            self.scale.paper(&it.at.down),
        );
        at(LEFT + x, ABOVE + y)
    }

    fn points(self, line: &[OutlinePoint]) -> Vec<PaperPoint> {
        line.iter().map(|it| self.point(it)).collect()
    }

    fn foot(self) -> f64 {
        ABOVE + self.scale.paper(&self.piece.cut_length)
    }

    fn right(self) -> f64 {
        LEFT + self.scale.paper(&self.piece.draw_width)
    }

    /// The left and the right end of the sewn line.
    fn sewn_ends(self) -> (f64, f64) {
        let across = self.piece.sewn.iter().map(|it| self.point(it).x);
        across.fold((f64::MAX, f64::MIN), |(left, right), x| {
            (left.min(x), right.max(x))
        })
    }

    /// The middle, of a piece that has one; that of a half is its fold.
    fn centre(self) -> Option<f64> {
        let (left, right) = self.sewn_ends();
        let has = !self.is_half() && self.piece.layer != LayerKind::Band && left < right;
        has.then_some((left + right) / 2.0)
    }

    fn tell_title(self, drawing: &mut Drawing) {
        drawing.words_on_paper(at(LEFT, 6.5), TextSize::Large, self.labels);
        let half = if self.is_half() {
            ", the half to draw; the fold is at the left"
        } else {
            ""
        };
        let told = format!(
            "cut {} x {}{half}",
            self.piece.cut_width.text, self.piece.cut_length.text
        );
        drawing.words_on_paper(at(LEFT, 11.5), TextSize::Small, &told);
    }

    /// The line the shears follow; of a half, without its fold.
    fn draw_cut(self, drawing: &mut Drawing) {
        let cut = self.points(&self.piece.outline);
        if self.is_half() {
            drawing.line(LineKind::Cut, cut);
            drawing.line(LineKind::Fold, [at(LEFT, ABOVE), at(LEFT, self.foot())]);
        } else {
            drawing.shape(LineKind::Cut, cut);
        }
    }

    /// The sewn line, seams between widths, folds and the middle.
    fn draw_lines(self, drawing: &mut Drawing) {
        let piece = self.piece;
        let sewn = self.points(&piece.sewn);
        let (left, _) = self.sewn_ends();
        let down = |x: f64| [at(x, ABOVE), at(x, self.foot())];
        for seam in piece.joined.iter().flat_map(|joined| &joined.seams) {
            drawing.line(LineKind::Sewn, down(left + self.scale.paper(&seam.at)));
        }
        if let Some(fold) = &piece.folded_at {
            let y = ABOVE + self.scale.paper(fold);
            drawing.line(LineKind::Fold, [at(LEFT, y), at(self.right(), y)]);
        }
        if let Some(centre) = self.centre() {
            drawing.line(LineKind::Centre, down(centre));
        }
        if self.is_half() {
            drawing.line(LineKind::Sewn, sewn);
        } else {
            drawing.shape(LineKind::Sewn, sewn);
        }
    }

    /// Inside what it is, how many are cut and of what, where there is room.
    fn tell_name(self, labels: &mut WordsApart, drawing: &mut Drawing) {
        let told =
            |piece: &Piece| format!("{}: cut {} of {}", piece.label, piece.quantity, piece.cloth);
        let lines: Vec<String> = self.alike.iter().map(told).collect();
        let (width, height) = (self.right() - LEFT, self.foot() - ABOVE);
        let widest = lines.iter().map(|line| width_of(line, TextSize::Plain));
        let widest = widest.fold(0.0, f64::max) + 8.0;
        // Beside the middle if there is room, off the line there.
        let part = if widest <= width / 2.0 { 0.25 } else { 0.5 };
        let (x, mut y) = (LEFT + width * part, ABOVE + height * 0.4);
        let has_room = widest <= width && height >= ROOM && self.piece.layer != LayerKind::Band;
        for line in lines.iter().filter(|_| has_room) {
            labels.write(at(x, y), Align::Middle, TextSize::Plain, line, drawing);
            y += TextSize::Plain.millimetres() * 1.4;
        }
    }

    fn tell_size(self, drawing: &mut Drawing) {
        let width = &self.piece.draw_width.text;
        dimension::above((LEFT, self.right()), ABOVE - 7.0, width, drawing);
        let length = &self.piece.cut_length.text;
        dimension::right_of((ABOVE, self.foot()), self.right() + 8.0, length, drawing);
    }

    /// The bar and what the lines mean; gives where the words end.
    fn explain(self, drawing: &mut Drawing) -> f64 {
        let below = self.scale.draw_bar(drawing, (LEFT, self.foot() + BELOW));
        let meanings = [
            (LineKind::Cut, "cut"),
            (
                LineKind::Sewn,
                "sewn; of a hem, the finished edge. Beside it, how long it is",
            ),
            (LineKind::Fold, "fold"),
            (LineKind::Centre, "middle"),
        ];
        drawing.meanings_of(&meanings, at(LEFT, below + 5.0))
    }
}
