//! Counts and indices as the packet carries them.

/// A count or an index as the packet carries it; a packet never comes near the limit.
pub(super) fn number(count: usize) -> u32 {
    u32::try_from(count).unwrap_or(u32::MAX)
}

/// The number, counted from 1, of what has this index.
pub(super) fn ordinal(index: usize) -> u32 {
    number(index).saturating_add(1)
}
