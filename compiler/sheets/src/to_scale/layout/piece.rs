//! One piece on the paper: its cutting line, and what is written in it.

use pelmet_packet::PlacedPiece;

use super::stretch::NOTHING;
use crate::drawing::clip::{above, below, crossing};
use crate::drawing::{Align, Drawing, LineKind, PaperPoint, TextSize, at, fits};

/// How far the marks of the print reach.
const PRINT_MARK: f64 = 2.0;

/// A piece where it lies on the paper.
pub(super) struct DrawnPiece<'a> {
    pub(super) piece: &'a PlacedPiece,
    /// Its left upper and right lower corner.
    pub(super) near: PaperPoint,
    pub(super) far: PaperPoint,
    pub(super) outline: Vec<PaperPoint>,
    /// Where across the paper the fold of doubled cloth lies.
    pub(super) fold: Option<f64>,
    /// The middle of a piece cut on the fold by its pattern that lies where the cloth is open.
    pub(super) middle: Option<[PaperPoint; 2]>,
    /// Where the print is held, across and along.
    pub(super) print: (Option<f64>, Option<f64>),
}

/// Draws what of a piece lies between two heights of the paper.
pub(super) fn draw_piece(drawn: &DrawnPiece<'_>, (top, end): (f64, f64), drawing: &mut Drawing) {
    let (from, to) = (drawn.near.y.max(top), drawn.far.y.min(end));
    if is_whole(drawn, (top, end)) {
        drawing.shape(LineKind::Cut, drawn.outline.iter().copied());
    } else {
        // What is parted by the end of the drawing is not cut there: its area is clipped, but only those parts
        // of its sides are drawn as cut that are its own, and none along the clip.
        let shown = above(&below(&drawn.outline, from), to);
        drawing.shape(LineKind::Piece, shown);
        for side in sides_between(&drawn.outline, (from, to)) {
            drawing.line(LineKind::Cut, side);
        }
    }
    if let Some(x) = drawn.fold {
        drawing.line(LineKind::Fold, [at(x, from), at(x, to)]);
    }
}

/// Draws the middle that an opened pattern is turned over at.
pub(super) fn draw_middle(drawn: &DrawnPiece<'_>, (top, end): (f64, f64), drawing: &mut Drawing) {
    let is_shown = |line: &[PaperPoint; 2]| line.iter().all(|point| (top..=end).contains(&point.y));
    if let Some(line) = drawn.middle.filter(is_shown) {
        drawing.line(LineKind::Centre, line);
    }
}

/// What is written in a piece lies over the lines of the print.
pub(super) fn tell_piece(drawn: &DrawnPiece<'_>, (top, end): (f64, f64), drawing: &mut Drawing) {
    let (from, to) = (drawn.near.y.max(top), drawn.far.y.min(end));
    let (width, length) = (drawn.far.x - drawn.near.x, to - from);
    let middle = drawn.near.x + width / 2.0;
    mark_print(drawn, (top, end), drawing);
    let (upper, lower) = within(&drawn.outline, middle).unwrap_or((from, to));
    let (from, to) = clear_of_print(drawn, (upper.max(from), lower.min(to)));
    let place = at(middle, (from + to) / 2.0);
    name(drawn.piece, place, (width, to - from), drawing);
    if length > 14.0 && width > 6.0 {
        let head = drawn.near.y.max(top);
        arrow(drawn.piece, middle, (head + 2.0, head + 7.0), drawing);
    }
}

/// The longest part of an upright line that lies within an outline, by its ends.
fn within(outline: &[PaperPoint], x: f64) -> Option<(f64, f64)> {
    let sides = outline.iter().zip(outline.iter().cycle().skip(1));
    let crosses = |(one, other): &(&PaperPoint, &PaperPoint)| (one.x <= x) != (other.x <= x);
    let height = |(one, other): (&PaperPoint, &PaperPoint)| {
        one.y + (other.y - one.y) * (x - one.x) / (other.x - one.x)
    };
    let mut heights: Vec<f64> = sides.filter(crosses).map(height).collect();
    heights.sort_by(f64::total_cmp);
    // Down an upright line, every other crossing goes into the piece and the next one out of it.
    let parts = heights.chunks_exact(2).filter_map(|part| match part {
        [upper, lower] => Some((*upper, *lower)),
        _ => None,
    });
    parts.max_by(|one, other| (one.1 - one.0).total_cmp(&(other.1 - other.0)))
}

/// The longer part of a piece above or below the line on which the print is held, where words do not
/// cover its mark; all of the piece where the mark is not near its middle.
fn clear_of_print(drawn: &DrawnPiece<'_>, (from, to): (f64, f64)) -> (f64, f64) {
    const WORDS: f64 = 9.0;
    const MARK: f64 = PRINT_MARK + 0.6;
    let middle = (from + to) / 2.0;
    let near_middle = |y: &f64| (middle - WORDS..=middle + WORDS).contains(y);
    match drawn.print.1.filter(near_middle) {
        Some(y) if y < middle => (y + MARK, to),
        Some(y) => (from + MARK, y - MARK),
        None => (from, to),
    }
}

fn is_whole(drawn: &DrawnPiece<'_>, (top, end): (f64, f64)) -> bool {
    drawn.near.y >= top - NOTHING && drawn.far.y <= end + NOTHING
}

/// The sides of an outline, each as far as it lies between two heights.
fn sides_between(outline: &[PaperPoint], (from, to): (f64, f64)) -> Vec<[PaperPoint; 2]> {
    let ends = outline.iter().cycle().skip(1);
    let sides = outline.iter().zip(ends);
    let between = |(one, other): (&PaperPoint, &PaperPoint)| {
        let (upper, lower) = if one.y <= other.y {
            (*one, *other)
        } else {
            (*other, *one)
        };
        let is_out = lower.y < from || to < upper.y;
        let upper_end = if upper.y < from {
            crossing(upper, lower, from)
        } else {
            upper
        };
        let lower_end = if lower.y > to {
            crossing(upper, lower, to)
        } else {
            lower
        };
        (!is_out).then_some([upper_end, lower_end])
    };
    sides.filter_map(between).collect()
}

/// A cross where the print is held both ways; ticks at both edges where it is held one way.
fn mark_print(drawn: &DrawnPiece<'_>, (top, end): (f64, f64), drawing: &mut Drawing) {
    let is_shown = |y: f64| (top..=end).contains(&y);
    let across = |x: f64, y: f64| [at(x - PRINT_MARK, y), at(x + PRINT_MARK, y)];
    let along = |x: f64, y: f64| [at(x, y - PRINT_MARK), at(x, y + PRINT_MARK)];
    let (near, far) = (drawn.near, drawn.far);
    let marks = match drawn.print {
        (Some(x), Some(y)) => vec![(y, across(x, y)), (y, along(x, y))],
        (None, Some(y)) => [near.x + PRINT_MARK, far.x - PRINT_MARK]
            .map(|x| (y, across(x, y)))
            .to_vec(),
        (Some(x), None) => [near.y + PRINT_MARK, far.y - PRINT_MARK]
            .map(|y| (y, along(x, y)))
            .to_vec(),
        (None, None) => vec![],
    };
    let inside = |y: f64| is_shown(y - PRINT_MARK) && is_shown(y + PRINT_MARK);
    for (_, mark) in marks.into_iter().filter(|(y, _)| inside(*y)) {
        drawing.line(LineKind::Print, mark);
    }
}

/// The number of a piece, large, and below it what it is, as far as there is room.
fn name(
    piece: &PlacedPiece,
    middle: PaperPoint,
    (width, length): (f64, f64),
    drawing: &mut Drawing,
) {
    let number = piece.number.to_string();
    let size = [TextSize::Large, TextSize::Plain, TextSize::Small]
        .into_iter()
        .find(|size| fits(&number, *size, width - 1.0) && size.millimetres() < length);
    let Some(size) = size else { return };
    let row = TextSize::Small.millimetres() * 1.2;
    let baseline = middle.y + size.millimetres() * 0.36;
    let below = wrapped(piece, width - 2.0);
    let rows = f64::from(u32::try_from(below.len()).unwrap_or(u32::MAX));
    drawing.words(at(middle.x, baseline), Align::Middle, size, number);
    if baseline + rows * row + 2.0 > middle.y + length / 2.0 {
        return;
    }
    for (line, count) in below.into_iter().zip(1_u32..) {
        let y = baseline + f64::from(count) * row + 0.6;
        drawing.words(at(middle.x, y), Align::Middle, TextSize::Small, line);
    }
}

/// What a piece is and its size, in lines no longer than a width; none where a word is longer.
fn wrapped(piece: &PlacedPiece, width: f64) -> Vec<String> {
    let size = format!("{} x {}", piece.width.text, piece.length.text);
    let mut lines: Vec<String> = Vec::new();
    for text in [piece.name.as_str(), size.as_str()] {
        let mut line = String::new();
        for word in text.split(' ') {
            let longer = format!("{line} {word}");
            if line.is_empty() {
                line = word.to_owned();
            } else if fits(&longer, TextSize::Small, width) {
                line = longer;
            } else {
                lines.push(std::mem::replace(&mut line, word.to_owned()));
            }
        }
        lines.push(line);
    }
    if lines.iter().all(|line| fits(line, TextSize::Small, width)) {
        lines
    } else {
        Vec::new()
    }
}

/// Points to the top of the piece; of one that lies along the cloth, to the side its top lies on.
fn arrow(piece: &PlacedPiece, x: f64, (top, foot): (f64, f64), drawing: &mut Drawing) {
    let (from, to) = match (piece.railroaded, piece.turned) {
        (false, false) => (at(x, foot), at(x, top)),
        (false, true) => (at(x, top), at(x, foot)),
        (true, turned) => {
            let (y, reach) = ((top + foot) / 2.0, if turned { -2.5 } else { 2.5 });
            (at(x + reach, y), at(x - reach, y))
        }
    };
    drawing.line(LineKind::Top, [from, to]);
    let (across, down) = ((to.x - from.x) / 5.0, (to.y - from.y) / 5.0);
    let barb = |side: f64| {
        at(
            to.x - across * 1.6 + down * side,
            to.y - down * 1.6 + across * side,
        )
    };
    drawing.line(LineKind::Top, [barb(1.0), to, barb(-1.0)]);
}

#[cfg(test)]
mod tests {
    use super::within;
    use crate::drawing::at;

    /// A piece with a foot at each side and a low bridge between them.
    #[test]
    fn words_stand_where_the_piece_is_longest_in_its_middle() {
        let bridge = [
            at(0.0, 0.0),
            at(10.0, 0.0),
            at(10.0, 30.0),
            at(8.0, 30.0),
            at(8.0, 4.0),
            at(2.0, 4.0),
            at(2.0, 30.0),
            at(0.0, 30.0),
        ];
        assert_eq!(within(&bridge, 5.0), Some((0.0, 4.0)));
        assert_eq!(within(&bridge, 9.0), Some((0.0, 30.0)));
        assert_eq!(within(&bridge, 11.0), None);
    }
}
