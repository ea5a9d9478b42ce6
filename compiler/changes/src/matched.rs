//! Which thing of one list is which of another.

use std::collections::BTreeMap;

/// The places in two lists of what is the same thing: both of one that stayed, and the one of one that
/// came or went.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub(super) enum Pair {
    /// It is in both.
    Stayed(usize, usize),
    /// It is only in the list after.
    Came(usize),
    /// It is only in the list before.
    Went(usize),
}

impl Pair {
    /// What is paired, of the list before and of the list after.
    pub(super) fn of<'l, T>(self, before: &'l [T], after: &'l [T]) -> [Option<&'l T>; 2] {
        match self {
            Pair::Stayed(one, other) => [before.get(one), after.get(other)],
            Pair::Came(at) => [None, after.get(at)],
            Pair::Went(at) => [before.get(at), None],
        }
    }
}

/// Pairs two lists: first what is the same in both, then what is known by the same key, the first
/// left with the first left. In the order of the list after, then what went.
pub(super) fn matched<K: Ord>(
    before: &[K],
    after: &[K],
    same: impl Fn(usize, usize) -> bool,
) -> Vec<Pair> {
    let mut left: BTreeMap<&K, Vec<usize>> = BTreeMap::new();
    for (at, key) in before.iter().enumerate() {
        left.entry(key).or_default().push(at);
    }
    let mut found: Vec<Option<usize>> = Vec::new();
    for (at, key) in after.iter().enumerate() {
        let candidates = left.get_mut(key);
        found.push(candidates.and_then(|them| take(them, |one| same(one, at))));
    }
    for (found, key) in found.iter_mut().zip(after) {
        *found = found.or_else(|| left.get_mut(key).and_then(|them| take(them, |_| true)));
    }
    let came = found
        .into_iter()
        .enumerate()
        .map(|(at, found)| match found {
            Some(before) => Pair::Stayed(before, at),
            None => Pair::Came(at),
        });
    let mut went: Vec<usize> = left.into_values().flatten().collect();
    went.sort_unstable();
    let pairs: Vec<Pair> = came.collect();
    pairs
        .into_iter()
        .chain(went.into_iter().map(Pair::Went))
        .collect()
}

/// Takes the first that fits out of a list.
fn take(them: &mut Vec<usize>, fits: impl Fn(usize) -> bool) -> Option<usize> {
    let at = them.iter().position(|one| fits(*one))?;
    Some(them.remove(at))
}

#[cfg(test)]
mod tests {
    use super::Pair::{Came, Stayed, Went};
    use super::matched;

    #[test]
    fn what_is_the_same_is_paired_before_what_is_only_called_the_same() {
        let before = [("hook", 1), ("hook", 2), ("tape", 3)];
        let after = [("ring", 4), ("hook", 2), ("hook", 5)];
        let [before_keys, after_keys] = [before, after].map(|list| list.map(|(key, _)| key));
        let pairs = matched(&before_keys, &after_keys, |one, other| {
            before[one] == after[other]
        });
        assert_eq!(pairs, [Came(0), Stayed(1, 1), Stayed(0, 2), Went(2)]);
    }

    #[test]
    fn nothing_is_paired_with_nothing() {
        let none: [&str; 0] = [];
        assert_eq!(matched(&none, &none, |_, _| true), []);
        assert_eq!(matched(&none, &["a"], |_, _| true), [Came(0)]);
        assert_eq!(matched(&["a"], &none, |_, _| true), [Went(0)]);
    }
}
