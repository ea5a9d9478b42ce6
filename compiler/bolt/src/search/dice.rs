//! Throws that come out the same every time.

/// Numbers without a pattern, always the same ones: a linear congruence of 64 bits, stirred on the
/// way out (G. Steele, D. Lea, C. Flood, "Fast splittable pseudorandom number generators", 2014).
pub(super) struct Dice {
    state: u64,
}

impl Dice {
    /// Fresh dice.
    pub(super) fn new() -> Dice {
        Dice { state: 1 }
    }

    /// A number below `sides`; zero where there are none.
    pub(super) fn throw(&mut self, sides: usize) -> usize {
        let sides = u64::try_from(sides).unwrap_or(u64::MAX);
        let thrown = self.next().checked_rem(sides).unwrap_or(0);
        usize::try_from(thrown).unwrap_or(0)
    }

    /// Puts things in an order without a pattern.
    pub(super) fn shuffle<T>(&mut self, things: &mut [T]) {
        for end in (1..things.len()).rev() {
            let other = self.throw(end.saturating_add(1));
            things.swap(end, other);
        }
    }

    fn next(&mut self) -> u64 {
        self.state = self.state.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut stirred = self.state;
        stirred = (stirred ^ (stirred >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        stirred = (stirred ^ (stirred >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        stirred ^ (stirred >> 31)
    }
}
