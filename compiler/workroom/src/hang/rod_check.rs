//! What a rod makes of what hangs from it: load, bending and sag between brackets.
//!
//! All of it is an estimate. The treatment is taken as spread evenly over the rod's length; the
//! brackets as standing one at each end of that length and the others between them at equal
//! distances; and every span as if the rod were cut over each bracket, which sags most. What the
//! rod, its brackets and their anchors may carry is for their makers to say.

use pelmet_measure::{Length, Mass};
use pelmet_model::{Material, Rod, RodChecked, RodUnknown, RowMatter};

use crate::hang::beam::{BeamSection, BeamSpan};

/// How far a rod may sag where it states no limit of its own: more is seen from the room. Common
/// practice, no source.
pub const SAG_LIMIT: Length = Length::inch_fraction(1, 8);

/// The brackets of a rod that states none: one at each end.
pub const USUAL_BRACKETS: u32 = 2;

/// The most brackets that are ever proposed; a rod that wants more is the wrong one.
pub const MOST_BRACKETS: u32 = 20;

/// Standard gravity in metres a second squared (NIST SP 811).
pub const GRAVITY: f64 = 9.806_65;

/// Checks a rod under a treatment of that weight.
///
/// # Errors
///
/// Why nothing can be said of it.
pub fn check_rod(rod: &Rod, treatment: Option<Mass>) -> Result<RodChecked, RodUnknown> {
    let treatment = treatment.ok_or(RodUnknown::Weight)?;
    let words = rod.material.as_deref().ok_or(RodUnknown::Material)?;
    let material = Material::named_in(words).ok_or(RodUnknown::Material)?;
    let brackets = rod.brackets.unwrap_or(USUAL_BRACKETS);
    let spans = brackets.checked_sub(1).filter(|spans| *spans > 0);
    let span = rod.length.divided(spans.ok_or(RodUnknown::OneBracket)?);
    let section = section(rod);
    let own = section.area() * material.heaviest();
    let hung = treatment.as_kilograms_f64() / metres(rod.length);
    let beam = BeamSpan {
        metres: metres(span),
        newtons_per_metre: (own + hung) * GRAVITY,
        stiffness: material.softest() * section.second_moment(),
    };
    let limit = rod.sag_limit.unwrap_or(SAG_LIMIT);
    let spacing = length(beam.with_sag(metres(limit)));
    Ok(RodChecked {
        material,
        brackets,
        span,
        rod_weight: Mass::from_kilograms_f64(own * metres(rod.length)).unwrap_or(Mass::LARGEST),
        newtons_per_metre: beam.newtons_per_metre,
        newton_metres: beam.moment(),
        sag: length(beam.sag()),
        limit,
        spacing,
        brackets_enough: brackets_for(rod.length, spacing),
    })
}

/// What is found where a rod sags more than it may.
pub(crate) fn sags(check: &RodChecked) -> Option<RowMatter> {
    (check.sag > check.limit).then_some(RowMatter::RodSags {
        sag: check.sag,
        limit: check.limit,
        span: check.span,
        spacing: check.spacing,
        brackets: check.brackets_enough,
    })
}

/// A tube whose wall meets in the middle is a solid rod.
fn section(rod: &Rod) -> BeamSection {
    let hollow = rod
        .wall
        .map_or(Length::ZERO, |wall| rod.diameter - wall * 2);
    BeamSection {
        outside: metres(rod.diameter),
        inside: metres(hollow.max(Length::ZERO)),
    }
}

/// How many brackets stand no further apart than that.
fn brackets_for(length: Length, spacing: Length) -> Option<u32> {
    let spans = length.round_up_to(spacing).ratio_to(spacing)?;
    let brackets = u32::try_from(spans.to_integer()).ok()?.checked_add(1)?;
    (brackets <= MOST_BRACKETS).then_some(brackets.max(USUAL_BRACKETS))
}

fn metres(length: Length) -> f64 {
    length.as_millimetres_f64() / 1_000.0
}

/// The nearest length there is: what is out of all reach is the largest.
fn length(metres: f64) -> Length {
    Length::from_millimetres_f64(metres * 1_000.0).unwrap_or(Length::LARGEST)
}
