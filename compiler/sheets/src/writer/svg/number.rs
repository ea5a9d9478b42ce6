//! Numbers in a drawing.

/// A number to a thousandth of a millimetre, without ending zeros and never `-0`.
pub(crate) fn number(value: f64) -> String {
    let told = format!("{value:.3}");
    let told = told.trim_end_matches('0').trim_end_matches('.');
    match told {
        "-0" | "" => String::from("0"),
        told => told.to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::number;

    #[test]
    fn numbers_are_short_and_never_minus_nothing() {
        for (value, told) in [
            (0.0, "0"),
            (-0.0, "0"),
            (-0.0004, "0"),
            (12.0, "12"),
            (120.0, "120"),
            (25.4, "25.4"),
            (-1.0 / 3.0, "-0.333"),
            (0.0006, "0.001"),
        ] {
            assert_eq!(number(value), told);
        }
    }
}
