//! "Did you mean": the nearest of the names that are known.

use strsim::damerau_levenshtein;

/// A name longer than this, in bytes, gets no suggestion: the work grows with the square of it.
const LONGEST_NAME: usize = 64;

/// No more names than these are compared, so that a file with much wrong in it is not slow to tell of.
const MOST_NAMES: usize = 2_000;

/// The known name nearest to what was typed, if any is near enough to be meant; never the very name
/// that was typed, which may be known and still not be what is wanted.
///
/// Near is: the same but for small and capital letters; the same words in another order; or at most
/// one slip of a finger in three letters. Of names equally near, the first by the alphabet is given,
/// so that the answer does not depend on the order of `names`.
pub fn did_you_mean<'a>(typed: &str, names: impl IntoIterator<Item = &'a str>) -> Option<String> {
    if typed.len() > LONGEST_NAME {
        return None;
    }
    let small = typed.to_lowercase();
    let others = names.into_iter().filter(|name| *name != typed);
    let near = others.take(MOST_NAMES).filter_map(|name| {
        let slips = slips_between(&small, &name.to_lowercase())?;
        Some((slips, name))
    });
    near.min().map(|(_, name)| name.to_owned())
}

/// How many slips part two names in small letters; nothing when they are not near.
fn slips_between(typed: &str, name: &str) -> Option<usize> {
    let most = (typed.chars().count() / 3).max(1);
    if typed.len().abs_diff(name.len()) > most.saturating_mul(4) {
        return None;
    }
    if sorted_words(typed) == sorted_words(name) {
        return Some(0);
    }
    let slips = damerau_levenshtein(typed, name);
    (slips <= most).then_some(slips)
}

/// `finished-width` and `width finished` are the same words.
fn sorted_words(name: &str) -> Vec<&str> {
    let mut words: Vec<&str> = name.split(['-', '_', ' ']).collect();
    words.sort_unstable();
    words
}

#[cfg(test)]
mod tests {
    use super::*;

    const NAMES: &[&str] = &[
        "width",
        "finished width",
        "flat width",
        "drop",
        "fabric",
        "rod",
        "kelp-stripe",
        "sand-twill",
        "face",
    ];

    #[test]
    fn the_nearest_name_is_found() {
        for (typed, meant) in [
            ("fabirc", Some("fabric")),
            ("wdith", Some("width")),
            ("Drop", Some("drop")),
            ("kelp-strip", Some("kelp-stripe")),
            ("kelp_stripe", Some("kelp-stripe")),
            ("stripe-kelp", Some("kelp-stripe")),
            ("width-finished", Some("finished width")),
            ("finised width", Some("finished width")),
            ("rood", Some("rod")),
            ("fae", Some("face")),
            ("lining", None),
            ("x", None),
            ("", None),
            ("wall", None),
        ] {
            assert_eq!(
                did_you_mean(typed, NAMES.iter().copied()).as_deref(),
                meant,
                "{typed}"
            );
        }
    }

    #[test]
    fn names_equally_near_are_taken_by_the_alphabet() {
        for names in [["bib-a", "bib-b"], ["bib-b", "bib-a"]] {
            assert_eq!(did_you_mean("bib-c", names).as_deref(), Some("bib-a"));
        }
    }

    #[test]
    fn the_very_name_that_was_typed_is_not_offered() {
        assert_eq!(did_you_mean("drop", ["drop"]), None);
        assert_eq!(
            did_you_mean("drop", ["drop", "Drop"]).as_deref(),
            Some("Drop")
        );
    }

    #[test]
    fn a_name_too_long_to_compare_gets_none() {
        let long = "a".repeat(LONGEST_NAME + 1);
        assert_eq!(did_you_mean(&long, [long.as_str()]), None);
    }
}
