//! Ways of counting sizes such that sizes which lie side by side within a whole never count for more
//! than the whole: dual-feasible functions.

use std::collections::BTreeSet;

/// Sizes are counted in halves, thirds and so on up to this part of the whole.
const SMALLEST_PART: u64 = 16;

/// Where sizes are rounded first, fewer parts are tried.
const SMALLEST_PART_OF_ROUNDED: u64 = 6;

/// A way of counting sizes.
#[derive(Copy, Clone, Debug)]
pub(super) struct Share {
    /// Sizes smaller than this count for nothing, and those that leave less for whole ones (S. P.
    /// Fekete and J. Schepers, "New classes of fast lower bounds for bin packing problems",
    /// Mathematical Programming 91, 2001). At most half of the whole.
    least: u64,
    counting: Counting,
}

#[derive(Copy, Clone, Debug)]
enum Counting {
    /// As they are.
    Plainly,
    /// Rounded down to `floor((parts + 1) x size / whole) / parts`, or not at all where nothing is
    /// rounded (the same authors). A size just over a half counts as a whole one, for nothing as
    /// large goes beside it.
    Parts(u64),
    /// Sizes up to a half by the steps that go into them, larger ones by the steps that do not go
    /// beside them (J. Carlier, F. Clautiaux and A. Moukrim, "New reduction procedures and lower
    /// bounds for the two-dimensional bin packing problem with fixed orientation", Computers and
    /// Operations Research 34, 2007).
    Steps(u64),
}

/// Ways to count these sizes; `most` is how many sizes are tried as the least or as a step.
pub(super) fn shares(whole: u64, sizes: impl Iterator<Item = u64>, most: usize) -> Vec<Share> {
    let plainly = |least| Share {
        least,
        counting: Counting::Plainly,
    };
    let parts = |least, most| {
        (1..=most).map(move |parts| Share {
            least,
            counting: Counting::Parts(parts),
        })
    };
    let mut shares = vec![plainly(0)];
    shares.extend(parts(0, SMALLEST_PART));
    for size in telling_sizes(whole, sizes, most) {
        // A least size counts from the next larger one on.
        for least in [size, size.saturating_add(1)] {
            if least <= whole / 2 {
                shares.push(plainly(least));
                shares.extend(parts(least, SMALLEST_PART_OF_ROUNDED));
            }
        }
        shares.push(Share {
            least: 0,
            counting: Counting::Steps(size),
        });
    }
    shares
}

/// Sizes up to half the whole, and what larger ones leave of it; of too many, some that are evenly
/// spread.
fn telling_sizes(whole: u64, sizes: impl Iterator<Item = u64>, most: usize) -> Vec<u64> {
    let small = |size: u64| size.min(whole.saturating_sub(size));
    let sizes: BTreeSet<u64> = sizes.map(small).filter(|size| *size > 0).collect();
    let each = sizes.len().div_ceil(most.max(1)).max(1);
    sizes.into_iter().step_by(each).collect()
}

impl Share {
    /// What a size counts for.
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

    /// What the whole counts for.
    pub(super) fn of_whole(self, whole: u64) -> u64 {
        match self.counting {
            Counting::Plainly => whole,
            Counting::Parts(parts) => whole.saturating_mul(parts),
            Counting::Steps(step) => steps_in(whole, step).saturating_mul(2),
        }
    }
}

/// In units of 1 / (`whole` x `parts`).
fn in_parts(size: u64, whole: u64, parts: u64) -> u64 {
    let times = size.saturating_mul(parts.saturating_add(1));
    match times.checked_rem(whole) {
        Some(0) => size.saturating_mul(parts),
        Some(rest) => times.saturating_sub(rest),
        None => 0,
    }
}

/// In half steps.
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
    use super::shares;
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
            for way in shares(whole, telling, 100) {
                let counted: u64 = side_by_side.iter().map(|size| way.of(*size, whole)).sum();
                prop_assert!(counted <= way.of_whole(whole), "{way:?}");
            }
        }
    }

    /// Two sizes just over a third leave no room for a third one beside them.
    #[test]
    fn sizes_count_for_more_where_little_goes_beside_them() {
        let counts = |way: &super::Share| way.of(34, 100) * 2 > way.of_whole(100) - way.of(34, 100);
        assert!(shares(100, [34].into_iter(), 10).iter().any(counts));
    }
}
