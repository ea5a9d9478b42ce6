//! What is settled before any cloth is cut for a public room.

use num_traits::CheckedAdd;
use pelmet_diagnostics::listed;
use pelmet_measure::{Ratio, number_text};
use pelmet_model::CautionKind;

use super::bench::Bench;
use super::draft::{Added, Draft, together};

/// Hangings up to this mass for their area, in grams a square metre, are tested by method 1 of
/// NFPA 701, heavier ones by its method 2 (NFPA, as published).
const MOST_FOR_METHOD_ONE: i128 = 700;

/// The step; `None` where the room is not said to be public.
pub(super) fn cloth_check(bench: Bench<'_>) -> Option<Draft> {
    if !bench.window.public_room {
        return None;
    }
    let words = [
        String::from(
            "The room is public: before any cloth is cut, ask whether this cloth may hang there.",
        ),
        weighed(bench),
        String::from(
            "Whether a test is asked for, which one, and whether the cloth passes is for the local \
             code, those who see to it and a laboratory to say.",
        ),
    ];
    Some(Draft::added(
        Added::ClothCheck,
        vec![together(words)],
        &[CautionKind::PublicRoom],
    ))
}

/// The layers by their mass, and the test method that suits it.
fn weighed(bench: Bench<'_>) -> String {
    let pieces = bench.hung.made.pieces.iter();
    let cloths = pieces.filter_map(|piece| bench.fabrics.get(piece.fabric));
    let cloths: Vec<(&str, Option<Ratio>)> = cloths
        .map(|cloth| (&*cloth.name, cloth.grams_per_square_metre))
        .collect();
    if let Some((silent, _)) = cloths.iter().find(|(_, weight)| weight.is_none()) {
        return format!(
            "`{silent}` states no weight for its area, by which NFPA 701 chooses the test method."
        );
    }
    let weights = cloths.iter().filter_map(|(_, weight)| *weight);
    let sum = weights
        .map(Some)
        .reduce(|sum, weight| sum?.checked_add(&weight?));
    let Some(sum) = sum.flatten() else {
        return String::new();
    };
    let method = if sum > Ratio::from_integer(MOST_FOR_METHOD_ONE) {
        "which is more than 700 g/m2, and for that NFPA 701 has its method 2"
    } else {
        "which is no more than 700 g/m2, and for that NFPA 701 has its method 1"
    };
    format!("Weighed by the area: {}, {method}.", in_words(&cloths, sum))
}

fn in_words(cloths: &[(&str, Option<Ratio>)], sum: Ratio) -> String {
    let grams = |weight: Ratio| format!("{} g/m2", number_text(weight));
    let named = cloths
        .iter()
        .filter_map(|(name, weight)| Some(format!("`{name}` {}", grams((*weight)?))));
    let named: Vec<String> = named.collect();
    match named.len() {
        1 => listed(&named, "and"),
        _ => format!("{}, together {}", listed(&named, "and"), grams(sum)),
    }
}
