//! The order in which windows and panels are taken, so that the order in which they were written never
//! shows.

use std::collections::BTreeSet;

use pelmet_model::{Job, WindowOrder};

/// The windows in the order of the packet: by name, numbers in names by their value, so that the
/// order in which they were written never shows.
pub(crate) fn window_order(job: &Job) -> Vec<usize> {
    let mut order: Vec<usize> = (0..job.windows.len()).collect();
    order.sort_by_cached_key(|index| {
        let name = job.windows.get(*index).map_or("", |window| &window.name);
        (by_value(name), name)
    });
    order
}

/// The panels of a window in the order they are met: along the row, then over its joins, then
/// whatever does not hang.
pub(crate) fn hanging_order(window: &WindowOrder) -> Vec<usize> {
    let mut met = BTreeSet::new();
    let hung = window.row.iter().chain(&window.over_joins).copied();
    hung.chain(0..window.panels.len())
        .filter(|panel| met.insert(*panel))
        .collect()
}

/// A name with its numbers written out to one length, so that `bay-2` stands before `bay-10`.
fn by_value(name: &str) -> String {
    let parts = name.split_inclusive(|end: char| !end.is_ascii_digit());
    parts
        .map(|part| {
            let word = part.trim_start_matches(|digit: char| digit.is_ascii_digit());
            let number = part.strip_suffix(word).unwrap_or_default();
            if number.is_empty() {
                part.to_owned()
            } else {
                format!("{number:0>20}{word}")
            }
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::by_value;

    #[test]
    fn names_are_ordered_by_the_value_of_their_numbers() {
        let ordered = [
            "bay", "bay-2", "bay-10", "bay-10-a", "bay-10-b", "bench", "été-1", "été-11",
        ];
        for pair in ordered.windows(2) {
            assert!(by_value(pair[0]) < by_value(pair[1]), "{pair:?}");
        }
    }
}
