//! What a treatment weighs once it is made up.

use num_traits::{CheckedSub, Zero};
use pelmet_measure::{Area, Mass, MassPerArea, Quantity, Ratio, Unit};
use pelmet_model::{Fabric, PanelMade, PieceMade};

/// What a cloth weighs for its area, where that is stated.
pub fn mass_per_area(cloth: &Fabric) -> Option<MassPerArea> {
    let grams = cloth.grams_per_square_metre?;
    Quantity::of(grams, Unit::GramPerSquareMetre)
        .ok()?
        .as_mass_per_area()
        .ok()
}

/// What the pieces of one panel weigh together: the area of each layer, everything turned in at its
/// edges and joins included, by what its cloth weighs. `None` where a cloth states no weight.
pub(crate) fn cloth_weight(pieces: &[PieceMade], fabrics: &[Fabric]) -> Option<Mass> {
    let weights = pieces.iter().map(|piece| {
        let cloth = fabrics.get(piece.fabric)?;
        Some(mass_per_area(cloth)?.over(area_cut(piece, cloth)?))
    });
    weights.sum()
}

/// What the panels of a window weigh together, each as often as it is made.
pub(crate) fn window_weight(panels: &[Option<PanelMade>]) -> Option<Mass> {
    let weights = panels.iter().map(|panel| {
        let panel = panel.as_ref()?;
        Some(panel.weight? * i64::from(panel.quantity))
    });
    weights.sum()
}

/// The area of a piece as it is cut. A cloth is weighed as it comes, so what it will lose by
/// shrinking, both ways, still belongs to it.
fn area_cut(piece: &PieceMade, cloth: &Fabric) -> Option<Area> {
    let kept = Ratio::new_raw(1, 1).checked_sub(&cloth.shrinkage)?;
    let grown = (!kept.is_zero()).then(|| kept.recip())?;
    Some(piece.area.scaled(grown).scaled(grown) + area_in_joins(piece))
}

/// What lies double in the seams between joined widths.
fn area_in_joins(piece: &PieceMade) -> Area {
    let Some(joined) = &piece.joined else {
        return Area::ZERO;
    };
    let of_one = Area::of(joined.allowance * 2, piece.cut_length);
    joined.seams.iter().map(|_| of_one).sum()
}
