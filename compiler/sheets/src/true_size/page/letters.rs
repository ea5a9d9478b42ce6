//! Letters that count.

/// `A` to `Z`, then `AA` and so on.
pub(crate) fn letters(number: u32) -> String {
    let last = char::from_u32(u32::from('A').saturating_add(number % 26)).unwrap_or('A');
    let before = number.div_euclid(26).checked_sub(1);
    format!("{}{last}", before.map(letters).unwrap_or_default())
}
