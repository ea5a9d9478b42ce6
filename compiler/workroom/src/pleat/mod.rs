//! Laying a pleat rule out on a strip of cloth, and what is wrong with pleats so laid.

mod check;
mod choose;
mod counts;
mod follow;
mod halves;
mod laid;
mod piece;
mod place;
mod reach;
mod refuse;
pub(crate) mod rule;
mod solve;
mod strip;
pub(crate) mod turn_of_cloth;
mod walk;
pub(crate) mod width;

pub use check::check;
use halves::Halves;
use pelmet_measure::Length;
use pelmet_model::{PleatMatter, PleatRule, Pleating};
use piece::Measure;

/// The most pleats and pieces of plain cloth, counted together, that a rule may come to.
const MAXIMUM_PIECES: u32 = 10_000;

/// How many counts are tried, over all the repeats of a rule, before the search for the nearest
/// stops. They are tried in order of turns in all, so what is left out is the most finely pleated.
const COUNTS_TRIED: usize = 50_000;

/// One micrometre. Lengths a maker works out (a third of ten inches) arrive rounded to the
/// nanometre; a whole strip of them misses its width by less than this, and so do depths that
/// share out unevenly. No miss this small is a mistake, and plain cloth takes it up.
pub const ROUNDING: Length = Length::from_nanometres(1_000);

/// Lays a rule out for the widths known.
///
/// What the rule leaves open is settled so that the wanted width is met exactly: plain cloth moves
/// first from its ideals, each piece in proportion to the room its range leaves; where that is not
/// enough, depths and faces move too. Of several counts the one whose largest departure from an
/// ideal is smallest is taken, of equals the one with fewer pleats. With both widths given, depths
/// make the take-up and plain cloth the width; the finished width answered is then the flat width
/// less the take-ups, within [`ROUNDING`] of the one ordered.
///
/// What the rule's `turn_of_cloth` loses at each pressed crease belongs to the flat width:
/// flat = finished + take-ups + turns. A crease lies in the middle of its turn.
///
/// A mirrored rule is laid out on half the strip; an odd nanometre stays at the centre line. A
/// rule from the centre that is not mirrored pleats the right half and leaves the left half plain.
/// With neither width given, lengths take their ideals, provided no count is open and no cloth
/// takes what is left. Gathers without a ratio of their own need both widths.
///
/// # Errors
///
/// The [`PleatMatter`] that keeps the rule from being laid out: a width missing, no fit, widths
/// that contradict each other, too much taken, plain cloth that a placed pleat needs, or too many
/// pleats.
pub fn lay_out(
    rule: &PleatRule,
    finished: Option<Length>,
    flat: Option<Length>,
) -> Result<Pleating, PleatMatter> {
    let steps = strip::steps_to_lay(rule);
    let unsettled = match (finished, flat) {
        (Some(_), Some(_)) => false,
        (None, None) => {
            !strip::settles_itself(&steps.all) || strip::has_gathers_by_widths(&steps.all)
        }
        _ => strip::has_gathers_by_widths(&steps.all),
    };
    if unsettled {
        return Err(PleatMatter::WidthMissing);
    }
    let halves = Halves::of(rule);
    let wanted = halves.wanted(finished, flat, strip::has_placed_pleat(&rule.steps));
    let choices = counts::choices(&steps, &wanted);
    refuse::too_many_pleats(&steps, &choices, halves)?;
    let Some(pieces) = choose::nearest_to_ideals(&steps, &choices, halves, &wanted) else {
        return Err(refuse::nothing_meets(
            rule, &steps, &choices, finished, flat,
        ));
    };
    let take_up = halves.panel_take_up(piece::sum(&pieces, Measure::TakeUp));
    let flat = match (flat, finished) {
        (Some(flat), _) => flat,
        (None, Some(finished)) => finished + take_up,
        (None, None) => halves.whole(piece::sum(&pieces, Measure::Flat)),
    };
    place::pleating(pieces, halves, flat)
}

/// The strip of a panel that hangs flat.
pub fn no_pleats(flat: Length) -> Pleating {
    Pleating {
        flat,
        finished: flat,
        ..Pleating::default()
    }
}

/// By how much the finished width may be out when every crease is folded by hand, worst case and
/// likely: 2en and 2e*sqrt(n) for n pleats with an error of e, rounded down to the nanometre.
/// `None` where the rule states no error.
pub fn tolerance(rule: &PleatRule, pleats: usize) -> Option<(Length, Length)> {
    let one = rule.folding_error?.abs() * 2;
    let count = i64::try_from(pleats).unwrap_or(i64::MAX);
    let square = i128::from(one.nanometres())
        .saturating_mul(one.nanometres().into())
        .saturating_mul(count.into());
    let likely = i64::try_from(square.checked_isqrt()?).unwrap_or(i64::MAX);
    Some((one * count, Length::from_nanometres(likely)))
}
