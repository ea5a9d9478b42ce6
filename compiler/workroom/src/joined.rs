//! Joining a piece from several widths of cloth.

use pelmet_measure::Length;

use crate::{Layer, PieceMatter};

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
pub(crate) fn strip_widths(
    layer: Layer,
    cut_width: Length,
    usable: Length,
    join: Length,
) -> Result<Vec<Length>, PieceMatter> {
    let whole = usable - join * 2;
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

/// Where the sewn lines between strips lie, from the left edge of the cut piece.
pub(crate) fn seam_positions(strips: &[Length], join: Length) -> Vec<Length> {
    let mut reached = join;
    let ends = strips.iter().map(|&strip| {
        reached += strip - join * 2;
        reached
    });
    ends.take(strips.len().saturating_sub(1)).collect()
}
