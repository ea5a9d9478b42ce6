//! A length no layout can beat, so that the maker knows how much a better layout could still save.
//!
//! Every bound drops some of the rules a layout must keep (a relaxation), so each holds for every
//! layout, and so does the greatest of them. None of them may be too long by a nanometre: the packet
//! says on their word that a layout cannot be beaten.

mod blocks;
mod both_ways;
mod dual_feasible;
mod flaws;
mod held;
mod lines;
mod rows;
mod shapes;

use pelmet_measure::Length;

use self::blocks::{Block, stacked};
use self::held::{greatest_common_measure, in_repeats, is_held};
use crate::given::{LayoutCloth, LayoutPiece};
use crate::places::Cut;

/// The greatest lower bound found for these cuts on this cloth, over all bolts together, of which some
/// layout is known that takes no more than `most`.
///
/// Pushed toward the start of the bolt as far as they go, rectangles end on multiples of a common
/// measure, and so does the whole layout; a bound between two of them may be raised to the next. Shapes
/// come to rest against slanting sides, at places that have no common measure.
pub(crate) fn lower_bound(
    cloth: &LayoutCloth,
    pieces: &[LayoutPiece],
    cuts: &[Cut],
    most: Length,
) -> Length {
    let bound = greatest(cloth, pieces, cuts, most);
    if pieces.iter().any(|piece| piece.outline.is_some()) {
        return bound;
    }
    bound.round_up_to(measure_of_places(cloth, cuts))
}

/// All rectangles pushed toward the start of the bolt, each lies on a line of the print, or against
/// another piece, a flaw or the start: where one begins or ends is a multiple of this. (Such places are
/// the normal patterns of N. Christofides and C. Whitlock, "An algorithm for two-dimensional cutting
/// problems", Operations Research 25, 1977; here only their greatest common measure is asked for.)
fn measure_of_places(cloth: &LayoutCloth, cuts: &[Cut]) -> Length {
    let of_cut = |cut: &Cut| {
        let lines = cut.grids.iter().map(|grid| grid.along);
        let lines = lines.flat_map(|lines| [lines.first, lines.period]);
        lines
            .chain([cut.length])
            .fold(Length::ZERO, greatest_common_measure)
    };
    let flaws = cloth.flaws.iter().map(|flaw| flaw.to);
    cuts.iter()
        .map(of_cut)
        .chain(flaws)
        .fold(cloth.gap, greatest_common_measure)
}

/// The greatest of all bounds, the quick ones first: those that search begin where these leave off.
fn greatest(cloth: &LayoutCloth, pieces: &[LayoutPiece], cuts: &[Cut], most: Length) -> Length {
    let latest_end = latest_end(cloth, cuts);
    let area = shapes::over_area(cloth, pieces);
    let parts: &[Cut] = &shapes::whole_parts(pieces, cuts);
    let unprinted = area.max(plain(cloth, parts, most));
    let bound = unprinted.max(latest_end);
    // Every bolt with an end may end with a row that wastes nothing, and how many there are is not
    // known here; nor which of them are used, flaws and all.
    if cloth.bolt_length.is_some() {
        return bound;
    }
    let held: Vec<&Cut> = parts.iter().filter(|cut| is_held(cut)).collect();
    let with_print = bound
        .max(in_repeats(cloth, &held))
        .max(lines::lower_bound(cloth, parts));
    let with_print = rows::lower_bound(cloth, &held, with_print);
    // What lies beyond a flaw that bars the whole cloth may be moved up over it, and then it is a layout
    // of the cloth without the flaw: by any length where the bound minds no print, and else by whole
    // repeats. So the two bounds gain unlike much, and either may come out as the greater.
    let bars = flaws::Bars::of(cloth, cuts);
    [
        bars.latest_end(cuts),
        bars.past_each(unprinted, Length::ZERO),
        bars.past_each(with_print, cloth.repeat_along.unwrap_or_default()),
    ]
    .into_iter()
    .fold(with_print, Length::max)
}

/// Some piece lies on some bolt, no nearer to its start than the print allows.
fn latest_end(cloth: &LayoutCloth, cuts: &[Cut]) -> Length {
    cuts.iter()
        .map(|cut| cut.first_place(Length::ZERO, cloth.usable_width).along + cut.length)
        .max()
        .unwrap_or_default()
}

/// All pieces as on plain cloth. Cut from several bolts they also stack on one, end to end without
/// a gap; on one bolt each keeps its gap, of which the last is not used.
fn plain(cloth: &LayoutCloth, cuts: &[Cut], most: Length) -> Length {
    let gap = if cloth.bolt_length.is_some() {
        Length::ZERO
    } else {
        cloth.gap
    };
    let blocks = cuts
        .iter()
        .map(|cut| Block::of(cloth, cut, cut.length + gap));
    let blocks: Vec<Block> = blocks.collect();
    let width = cloth.usable_width + cloth.gap;
    let bound = stacked(cloth, &blocks);
    both_ways::lower_bound(width, &blocks, bound, most + gap) - gap
}
