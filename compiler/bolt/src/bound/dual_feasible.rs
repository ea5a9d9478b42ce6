//! Dual-feasible functions: ways of counting sizes such that sizes which lie side by side within a whole
//! never count for more than the whole.
//!
//! Counted as they are, sizes tell no more than area does, and that knows nothing of cloth that must
//! stay unused: beside pieces of two thirds of the width, one behind another, a third of it. A
//! dual-feasible function lets a size count for more, at the cost of others, where nothing can make use
//! of what it leaves beside it. Each is sound whatever the sizes are; which of them tells most depends
//! on the sizes, so several families are tried with those at hand. (For the name and the theory: G. S. Lueker,
//! "Bin packing with items uniformly distributed over intervals [a,b]", 24th Symposium on Foundations of
//! Computer Science, 1983.)

use std::collections::BTreeSet;

/// Sizes are counted in halves, thirds and so on up to this part of the whole.
const SMALLEST_PART: u64 = 16;

/// Where sizes are rounded first, fewer parts are tried.
const SMALLEST_PART_OF_ROUNDED: u64 = 6;

/// One dual-feasible function: sizes that leave little are counted as nothing or as whole, and what is
/// left is counted in one of three ways. One after another two such functions make one again.
#[derive(Copy, Clone, Debug)]
pub(super) struct DualFeasible {
    /// Sizes smaller than this count for nothing, and those that leave less for whole ones (S. P.
    /// Fekete and J. Schepers, "New classes of fast lower bounds for bin packing problems",
    /// Mathematical Programming 91, 2001). At most half of the whole: no two sizes then count as whole
    /// ones that could lie side by side.
    least: u64,
    counting: Counting,
}

/// What a size counts for once the small and the large ones are dealt with.
#[derive(Copy, Clone, Debug)]
enum Counting {
    /// Its own size.
    Plainly,
    /// Rounded down to `floor((parts + 1) x size / whole) / parts`, or not at all where nothing is
    /// rounded (`u` of so many parts, by the same authors). With one part a size just over a half counts
    /// as a whole one, for nothing as large goes beside it; with two a size just over a third as a half.
    Parts(u64),
    /// Sizes up to a half by the steps that go into them, larger ones by the steps that do not go
    /// beside them (J. Carlier, F. Clautiaux and A. Moukrim, "New reduction procedures and lower
    /// bounds for the two-dimensional bin packing problem with fixed orientation", Computers and
    /// Operations Research 34, 2007).
    Steps(u64),
}

/// The functions to try with these sizes; `most` is how many sizes are tried as the least or as a step.
///
/// What a least size makes of the others changes only where it passes one of them or what one leaves of
/// the whole: so these are all that need trying, and of many some will do. As steps they do well too, for
/// a step goes once more into a size than anything a little longer.
pub(super) fn dual_feasible_functions(
    whole: u64,
    sizes: impl Iterator<Item = u64>,
    most: usize,
) -> Vec<DualFeasible> {
    let plainly = |least| DualFeasible {
        least,
        counting: Counting::Plainly,
    };
    let parts = |least, most| {
        (1..=most).map(move |parts| DualFeasible {
            least,
            counting: Counting::Parts(parts),
        })
    };
    let mut functions = vec![plainly(0)];
    functions.extend(parts(0, SMALLEST_PART));
    for size in telling_sizes(whole, sizes, most) {
        // A least size counts from the next larger one on.
        for least in [size, size.saturating_add(1)] {
            if least <= whole / 2 {
                functions.push(plainly(least));
                functions.extend(parts(least, SMALLEST_PART_OF_ROUNDED));
            }
        }
        functions.push(DualFeasible {
            least: 0,
            counting: Counting::Steps(size),
        });
    }
    functions
}

/// Sizes up to half the whole, and what larger ones leave of it; of too many, some that are evenly
/// spread.
fn telling_sizes(whole: u64, sizes: impl Iterator<Item = u64>, most: usize) -> Vec<u64> {
    let small = |size: u64| size.min(whole.saturating_sub(size));
    let sizes: BTreeSet<u64> = sizes.map(small).filter(|size| *size > 0).collect();
    let each = sizes.len().div_ceil(most.max(1)).max(1);
    sizes.into_iter().step_by(each).collect()
}

impl DualFeasible {
    /// What a size counts for, in the units of [`DualFeasible::of_whole`]: a whole number of them, so that
    /// nothing is rounded that a bound depends on.
    pub(super) fn of(self, size: u64, whole: u64) -> u64 {
        let size = if size < self.least {
            0
        } else if size > whole.saturating_sub(self.least) {
            whole
        } else {
            size
        };
        match self.counting {
            Counting::Plainly => size,
            Counting::Parts(parts) => in_parts(size, whole, parts),
            Counting::Steps(step) => in_steps(size, whole, step),
        }
    }

    /// What the whole counts for, which is how many units there are to it.
    pub(super) fn of_whole(self, whole: u64) -> u64 {
        match self.counting {
            Counting::Plainly => whole,
            Counting::Parts(parts) => whole.saturating_mul(parts),
            Counting::Steps(step) => steps_in(whole, step).saturating_mul(2),
        }
    }
}

/// In units of 1 / (`whole` x `parts`): in these both a size rounded to parts and one that is not
/// rounded are whole numbers.
fn in_parts(size: u64, whole: u64, parts: u64) -> u64 {
    let times = size.saturating_mul(parts.saturating_add(1));
    match times.checked_rem(whole) {
        Some(0) => size.saturating_mul(parts),
        Some(rest) => times.saturating_sub(rest),
        None => 0,
    }
}

/// In half steps, for a size of just half the whole counts as half of all the steps there are.
fn in_steps(size: u64, whole: u64, step: u64) -> u64 {
    let beside = whole.saturating_sub(size);
    match size.cmp(&beside) {
        std::cmp::Ordering::Less => steps_in(size, step).saturating_mul(2),
        std::cmp::Ordering::Equal => steps_in(whole, step),
        std::cmp::Ordering::Greater => steps_in(whole, step)
            .saturating_sub(steps_in(beside, step))
            .saturating_mul(2),
    }
}

fn steps_in(size: u64, step: u64) -> u64 {
    size.checked_div(step).unwrap_or(0)
}

#[cfg(test)]
mod tests {
    use super::dual_feasible_functions;
    use proptest::prelude::*;

    proptest! {
        #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

        #[test]
        fn sizes_side_by_side_never_count_for_more_than_the_whole(
            whole in 1..200_u64,
            sizes in prop::collection::vec(1..120_u64, 1..8),
            others in prop::collection::vec(1..200_u64, 0..4),
        ) {
            let mut left = whole;
            let side_by_side: Vec<u64> = sizes
                .into_iter()
                .take_while(|size| {
                    let has_room = *size <= left;
                    left = left.saturating_sub(*size);
                    has_room
                })
                .collect();
            let telling = side_by_side.iter().chain(&others).copied().filter(|size| *size <= whole);
            for way in dual_feasible_functions(whole, telling, 100) {
                let counted: u64 = side_by_side.iter().map(|size| way.of(*size, whole)).sum();
                prop_assert!(counted <= way.of_whole(whole), "{way:?}");
            }
        }
    }

    /// Two sizes just over a third leave no room for a third one beside them.
    #[test]
    fn sizes_count_for_more_where_little_goes_beside_them() {
        let counts =
            |way: &super::DualFeasible| way.of(34, 100) * 2 > way.of_whole(100) - way.of(34, 100);
        assert!(
            dual_feasible_functions(100, [34].into_iter(), 10)
                .iter()
                .any(counts)
        );
    }
}
