//! Names of a list in one text.

/// Names with commas between them; of three and more numbers that follow one another, the first and
/// the last: `1, 3 to 6, 9`.
pub(super) fn in_runs(names: &[String]) -> String {
    let follows = |one: &String, next: &String| {
        let number = one.parse::<u32>().ok();
        number.and_then(|number| number.checked_add(1)) == next.parse().ok() && number.is_some()
    };
    let told = names.chunk_by(follows).map(|run| match run {
        [first, _, .., last] => format!("{first} to {last}"),
        run => run.join(", "),
    });
    told.collect::<Vec<String>>().join(", ")
}

#[cfg(test)]
mod tests {
    use super::in_runs;

    #[test]
    fn three_and_more_numbers_in_a_row_are_a_run() {
        for (names, told) in [
            ("", ""),
            ("4", "4"),
            ("4 5", "4, 5"),
            ("4 5 6", "4 to 6"),
            ("1 3 4 5 6 9", "1, 3 to 6, 9"),
            ("cut tape hang", "cut, tape, hang"),
            ("4294967294 4294967295 0", "4294967294, 4294967295, 0"),
        ] {
            let names: Vec<String> = names.split_whitespace().map(str::to_owned).collect();
            assert_eq!(in_runs(&names), told);
        }
    }
}
