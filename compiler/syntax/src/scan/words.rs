//! Words and signs, counted before the grammar sees them: each costs memory.

/// Where the word, sign or line end begins that has so many before it, if the text has so many.
pub(super) fn start_of(clean: &str, before: usize) -> Option<usize> {
    let mut in_word = false;
    let mut starts = clean.char_indices().filter_map(|(at, letter)| {
        let is_part = letter.is_alphanumeric();
        let begins = letter != ' ' && !(is_part && in_word);
        in_word = is_part;
        begins.then_some(at)
    });
    starts.nth(before)
}

#[cfg(test)]
mod tests {
    use super::start_of;

    #[test]
    fn words_signs_and_line_ends_count() {
        let text = "rod pole {\n  a: 1/2\n";
        let starts: Vec<usize> = (0..20).map_while(|before| start_of(text, before)).collect();
        assert_eq!(starts, [0, 4, 9, 10, 13, 14, 16, 17, 18, 19]);
        assert_eq!(start_of("  ", 0), None);
    }
}
