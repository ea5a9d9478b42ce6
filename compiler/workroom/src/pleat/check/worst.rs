//! Of many cases of one mistake, the worst.

use std::collections::BTreeMap;

use pelmet_measure::Length;
use pelmet_model::{PleatMade, Pleating};

/// The worst case of each, in order of key; of equals the first.
pub(super) fn worst_of_each<Key: Ord, Amount: Ord, Case>(
    cases: impl IntoIterator<Item = (Key, Amount, Case)>,
) -> impl Iterator<Item = (Key, Amount, Case)> {
    let mut worst: BTreeMap<Key, (Amount, Case)> = BTreeMap::new();
    for (key, amount, case) in cases {
        if worst.get(&key).is_none_or(|(most, _)| amount > *most) {
            worst.insert(key, (amount, case));
        }
    }
    worst
        .into_iter()
        .map(|(key, (amount, case))| (key, amount, case))
}

/// The pleat to which the crease at a flat position belongs.
pub(super) fn pleat_of_crease(pleating: &Pleating, at: Length) -> Option<&PleatMade> {
    let before = pleating.creases.partition_point(|crease| crease.at < at);
    let crease = pleating
        .creases
        .get(before)
        .filter(|crease| crease.at == at)?;
    pleating.pleats.get(crease.pleat)
}
