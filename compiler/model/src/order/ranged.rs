//! A value the maker leaves open between two limits, with the one she likes best.

/// A value from `least` to `most`, ideally `ideal`. A fixed value has all three alike.
///
/// `least <= ideal <= most` holds for every value made by [`Ranged::fixed`] and
/// [`Ranged::between`]; the latter moves an ideal outside the limits to the nearer limit.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct Ranged<T> {
    /// The smallest value allowed.
    pub least: T,
    /// The value preferred.
    pub ideal: T,
    /// The largest value allowed.
    pub most: T,
}

impl<T: Copy + Ord> Ranged<T> {
    /// A value that is not open at all.
    pub fn fixed(value: T) -> Self {
        Self {
            least: value,
            ideal: value,
            most: value,
        }
    }

    /// A value between two limits, given in either order.
    pub fn between(one: T, other: T, ideal: T) -> Self {
        let (least, most) = (one.min(other), one.max(other));
        Self {
            least,
            ideal: ideal.clamp(least, most),
            most,
        }
    }

    /// Whether the maker left nothing open.
    pub fn is_fixed(&self) -> bool {
        self.least == self.most
    }
}
