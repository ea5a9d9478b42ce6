//! Joining a piece from several widths of cloth.

use pelmet_measure::Length;
use pelmet_model::{Layer, PieceMatter, Strip};

/// The narrowest strip that is joined on, sewn. Common practice, no source: less is hard to press.
pub const LEAST_PART: Length = Length::inches(4);

/// The most widths one piece is joined from.
pub const MAXIMUM_WIDTHS: u32 = 200;

/// How many widths of cloth a flat width takes where every strip loses `join` on both sides.
/// `None` where that leaves nothing of a width.
pub fn strips_needed(flat: Length, usable: Length, join: Length) -> Option<u32> {
    let sewn = u64::try_from((usable - join * 2).nanometres()).ok()?;
    let flat = u64::try_from(flat.nanometres()).unwrap_or(0);
    let strips = flat.checked_next_multiple_of(sewn)?.checked_div(sewn)?;
    Some(u32::try_from(strips).unwrap_or(u32::MAX))
}

/// The cut widths of the strips for a piece wider than the cloth: an odd number of whole widths in
/// the middle, equal part widths outside (UFGS 12 22 00; Merrick and Day, p. 119).
///
/// Where the part widths would come out under [`LEAST_PART`], the middle ones give them the rest.
/// `whole` is the most a strip may have between its seams.
pub(crate) fn strip_widths(
    layer: Layer,
    cut_width: Length,
    whole: Length,
    join: Length,
) -> Result<Vec<Length>, PieceMatter> {
    let usable = whole + join * 2;
    if whole < LEAST_PART * 3 {
        let needed = LEAST_PART * 3 + join * 2;
        return Err(PieceMatter::ClothTooNarrow {
            layer,
            usable,
            needed,
        });
    }
    // The outermost edges have allowances of their own within the cut width; taking a join's
    // worth off at each end makes every strip alike.
    let sewn = cut_width - join * 2;
    let count = strips_needed(sewn, usable, join).unwrap_or(u32::MAX).max(3) | 1;
    if count > MAXIMUM_WIDTHS {
        return Err(PieceMatter::TooManyWidths {
            layer,
            limit: MAXIMUM_WIDTHS,
        });
    }
    let middles = count.saturating_sub(2);
    let middle = whole.min((sewn - LEAST_PART * 2).divided(middles));
    let parts = sewn - middle * i64::from(middles);
    let left = parts.divided(2);
    let mut strips = vec![left];
    strips.extend((0..middles).map(|_| middle));
    strips.push(parts - left);
    Ok(strips.into_iter().map(|strip| strip + join * 2).collect())
}

/// The most a strip may have between its seams for the print to meet across them: a whole number
/// of repeats, and room to move the strip to where `held` (from the left edge of the cut piece)
/// sits on a line of the print. The whole width where no such strip fits.
pub(crate) fn whole_width(usable: Length, join: Length, print: Option<HeldAcross>) -> Length {
    let widest = usable - join * 2;
    let Some(print) = print else { return widest };
    let mut sewn = widest.round_down_to(print.repeat);
    while sewn.is_positive() {
        let room = widest - sewn;
        // The held point is the middle of the piece, and so of its middle strip; without a motif it
        // is where that strip begins.
        let held = match print.motif {
            true => join + sewn.divided(2),
            false => Length::ZERO,
        };
        if over(print.line - held, print.repeat).0 <= room {
            return sewn;
        }
        sewn -= print.repeat;
    }
    widest
}

/// What of a print is held across a joined piece.
#[derive(Copy, Clone)]
pub(crate) struct HeldAcross {
    /// The repeat across.
    pub(crate) repeat: Length,
    /// A line of the print, from the left end of the usable width.
    pub(crate) line: Length,
    /// Whether a motif is held in the middle.
    pub(crate) motif: bool,
}

/// Each strip with the point of it that must sit on the print. `held` is the motif's place from
/// the left edge of the cut piece; without one the middle strip begins on a line of the print.
pub(crate) fn strips_on_print(
    widths: &[Length],
    join: Length,
    repeat: Option<Length>,
    held: Option<Length>,
) -> Vec<Strip> {
    let mut left = Length::ZERO;
    let lefts: Vec<Length> = widths
        .iter()
        .map(|&width| {
            let at = left;
            left += width - join * 2;
            at
        })
        .collect();
    let middle = lefts.get(lefts.len() / 2).copied().unwrap_or_default();
    let held = held.unwrap_or(middle);
    let strips = widths.iter().zip(&lefts).enumerate();
    strips
        .map(|(index, (&cut_width, &left))| {
            let print = repeat.map(|repeat| over(held - left, repeat));
            // Without a repeat across, the next width is a column of its own.
            let from_middle = index.abs_diff(lefts.len() / 2) % 2 != 0;
            Strip {
                cut_width,
                print_across: print.map(|(point, _)| point),
                half_dropped: print.map_or(from_middle, |(_, repeats)| repeats % 2 != 0),
            }
        })
        .collect()
}

/// Whether a strip can be cut from cloth of this usable width with its held point on a line of the
/// print.
pub(crate) fn fits(strip: &Strip, usable: Length, print: Option<HeldAcross>) -> bool {
    let to_line = strip.print_across.zip(print);
    let to_line = to_line.map(|(point, print)| over(print.line - point, print.repeat).0);
    to_line.unwrap_or_default() + strip.cut_width <= usable
}

/// What a length has over whole repeats, and how many those are (negative to the left).
fn over(length: Length, repeat: Length) -> (Length, i64) {
    let whole = length.round_down_to(repeat);
    let repeats = whole.nanometres().checked_div(repeat.nanometres());
    (length - whole, repeats.unwrap_or(0))
}

/// Where the sewn lines between strips lie, from the left edge of the cut piece.
pub(crate) fn seam_positions(strips: &[Length], join: Length) -> Vec<Length> {
    let mut reached = join;
    let ends = strips.iter().map(|&strip| {
        reached += strip - join * 2;
        reached
    });
    ends.take(strips.len().saturating_sub(1)).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn print_meets_at_every_seam(strips: &[Strip], join: Length, repeat: Length) -> bool {
        strips.windows(2).all(|pair| {
            let right = pair[0].cut_width - join - pair[0].print_across.unwrap();
            let left = join - pair[1].print_across.unwrap();
            over(right - left, repeat).0.is_zero()
        })
    }

    #[test]
    fn the_print_meets_at_every_seam_and_strips_fit_their_cloth() {
        for (cut_width, usable, repeat, motif) in [
            (101, 53, 12, false),
            (96, 53, 12, true),
            (81, 48, 12, true),
            (300, 54, 9, true),
            (300, 54, 27, false),
            (140, 54, 50, false),
        ] {
            let [cut_width, usable, repeat] = [cut_width, usable, repeat].map(Length::inches);
            let join = Length::inch_fraction(1, 2);
            let line = Length::inches(3);
            let print = HeldAcross {
                repeat,
                line,
                motif,
            };
            let whole = whole_width(usable, join, Some(print));
            let widths = strip_widths(Layer::Face, cut_width, whole, join).unwrap();
            let held = motif.then(|| cut_width.divided(2));
            let strips = strips_on_print(&widths, join, Some(repeat), held);
            assert!(print_meets_at_every_seam(&strips, join, repeat));
            // Moved to the first line of the print that it can sit on, every strip still fits.
            for strip in &strips {
                let to_line = over(line - strip.print_across.unwrap(), repeat).0;
                assert!(to_line + strip.cut_width <= usable, "{strip:?}");
            }
        }
    }

    /// A motif in the middle of a strip 48 in between its seams lies half an inch past a line of
    /// the print; to bring it to the next the strip would move 11 1/2 in, and there are only 4.
    #[test]
    fn a_strip_with_a_motif_leaves_room_to_move_it_to_the_print() {
        let (usable, join) = (Length::inches(53), Length::inch_fraction(1, 2));
        let repeat = Length::inches(12);
        let whole = |motif, line| {
            let line = Length::inches(line);
            let print = HeldAcross {
                repeat,
                line,
                motif,
            };
            whole_width(usable, join, Some(print))
        };
        assert_eq!(whole(false, 0), Length::inches(48));
        assert_eq!(whole(true, 0), Length::inches(36));
        // A print that begins an inch in is an inch away from the motif, and from the strip.
        assert_eq!(whole(true, 1), Length::inches(48));
        assert_eq!(whole(false, 5), Length::inches(36));
        assert_eq!(whole_width(usable, join, None), Length::inches(52));
    }

    #[test]
    fn a_strip_fits_where_its_held_point_can_reach_a_line_of_the_print() {
        let strip = |cut_width, held| Strip {
            cut_width: Length::inches(cut_width),
            print_across: Some(Length::inches(held)),
            half_dropped: false,
        };
        let usable = Length::inches(54);
        let print = |line| {
            Some(HeldAcross {
                repeat: Length::inches(12),
                line: Length::inches(line),
                motif: false,
            })
        };
        // Held 3 in from its edge, a strip lies 9 in in from the edge of the cloth.
        for (cut_width, held, whether) in
            [(45, 3, true), (46, 3, false), (54, 0, true), (55, 0, false)]
        {
            assert_eq!(
                fits(&strip(cut_width, held), usable, print(0)),
                whether,
                "{cut_width}"
            );
        }
        // The print begins just where it is held.
        assert!(fits(&strip(54, 3), usable, print(3)));
        assert!(fits(&strip(54, 3), usable, None));
    }

    #[test]
    fn cloth_is_joined_down_to_three_of_the_least_parts() {
        let join = Length::inch_fraction(1, 2);
        let strips = |whole| strip_widths(Layer::Face, Length::inches(30), whole, join);
        assert!(strips(LEAST_PART * 3).is_ok());
        let narrower = LEAST_PART * 3 - Length::from_nanometres(1);
        let too_narrow = PieceMatter::ClothTooNarrow {
            layer: Layer::Face,
            usable: narrower + join * 2,
            needed: LEAST_PART * 3 + join * 2,
        };
        assert_eq!(strips(narrower), Err(too_narrow));
    }

    #[test]
    fn strips_beside_the_middle_one_lie_half_a_repeat_lower_in_a_half_drop() {
        let widths = [20, 53, 53, 53, 20].map(Length::inches);
        let dropped = |repeat: Option<Length>| -> Vec<bool> {
            let strips = strips_on_print(&widths, Length::inch_fraction(1, 2), repeat, None);
            strips.iter().map(|strip| strip.half_dropped).collect()
        };
        assert_eq!(dropped(None), [false, true, false, true, false]);
        let three = strips_on_print(&widths[1..4], Length::ZERO, None, None);
        let dropped_of_three = three.iter().map(|strip| strip.half_dropped);
        assert!(dropped_of_three.eq([true, false, true]));
        // 52 in between seams is one repeat of 52 in, and two of 26 in.
        assert_eq!(dropped(Some(Length::inches(52)))[1..4], [true, false, true]);
        assert_eq!(dropped(Some(Length::inches(26)))[1..4], [false; 3]);
    }
}
