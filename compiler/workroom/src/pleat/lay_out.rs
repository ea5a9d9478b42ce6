//! Laying a pleat rule out on a strip of cloth.

use pelmet_measure::Length;
use pelmet_model::{PleatMatter, PleatRule, Pleating};

use super::halves::Halves;
use super::piece::Measure;
use super::{choose, counts, piece, place, refuse, strip};

/// Lays a rule out for the widths known.
///
/// What the rule leaves open is settled so that the wanted width is met exactly: plain cloth moves
/// first from its ideals, each piece in proportion to the room its range leaves; where that is not
/// enough, depths and faces move too. Of several counts the one whose largest departure from an
/// ideal is smallest is taken, of equals the one with fewer pleats. With both widths given, depths
/// make the take-up and plain cloth the width; the finished width answered is then the flat width
/// less the take-ups, within [`ROUNDING`](crate::ROUNDING) of the one ordered.
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
