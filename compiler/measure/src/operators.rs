//! The operators that every whole-number measure has, written once.

/// Gives a measure its sums. Each saturates at the ends of the number it is kept in, because a
/// wrong sign would be worse than a length no design can reach.
macro_rules! saturating_operators {
    ($measure:ident) => {
        impl std::ops::Add for $measure {
            type Output = Self;
            fn add(self, other: Self) -> Self {
                Self(self.0.saturating_add(other.0))
            }
        }

        impl std::ops::Sub for $measure {
            type Output = Self;
            fn sub(self, other: Self) -> Self {
                Self(self.0.saturating_sub(other.0))
            }
        }

        impl std::ops::Neg for $measure {
            type Output = Self;
            fn neg(self) -> Self {
                Self(self.0.saturating_neg())
            }
        }

        impl std::ops::Mul<i64> for $measure {
            type Output = Self;
            fn mul(self, times: i64) -> Self {
                Self(self.0.saturating_mul(times.into()))
            }
        }

        impl std::ops::AddAssign for $measure {
            fn add_assign(&mut self, other: Self) {
                self.0 = self.0.saturating_add(other.0);
            }
        }

        impl std::ops::SubAssign for $measure {
            fn sub_assign(&mut self, other: Self) {
                self.0 = self.0.saturating_sub(other.0);
            }
        }

        impl std::iter::Sum for $measure {
            fn sum<I: Iterator<Item = Self>>(parts: I) -> Self {
                parts.fold(Self::ZERO, std::ops::Add::add)
            }
        }
    };
}

pub(crate) use saturating_operators;
