//! Every code, one file each, holding its constant and the function that reports it.
//!
//! The file and the function are named like the code, with underscores for its hyphens:
//! `codes::name_unknown(…)` reports `codes::name_unknown::CODE`. To add a code, write its file, then
//! name it twice here: as a module and in the list below.

use crate::Code;

pub mod argument_missing;
pub mod argument_twice;
pub mod argument_unknown;
pub mod block_missing;
pub mod bracket_not_closed;
pub mod bracket_not_opened;
pub mod brackets_differ;
pub mod character_not_known;
pub mod count_not_whole;
pub mod curly_quotes;
pub mod decimal_comma;
pub mod equals_for_colon;
pub mod file_is_folder;
pub mod file_not_found;
pub mod file_not_readable;
pub mod file_not_text;
pub mod file_outside_project;
pub mod file_too_large;
pub mod fraction_over_zero;
pub mod fullness_percent_unclear;
pub mod item_unknown;
pub mod kind_mismatch;
pub mod kind_wanted;
pub mod length_negative;
pub mod length_not_positive;
pub mod length_too_large;
pub mod like_in_a_circle;
pub mod minus_unclear;
pub mod name_twice;
pub mod name_unknown;
pub mod name_unused;
pub mod name_wrong_kind;
pub mod nested_too_deep;
pub mod not_understood;
pub mod number_too_large;
pub mod property_empty;
pub mod property_missing;
pub mod property_twice;
pub mod property_unknown;
pub mod range_backwards;
pub mod sum_too_long;
pub mod template_in_a_circle;
pub mod text_not_closed;
pub mod too_many_mistakes;
pub mod unit_missing;
pub mod unit_unknown;
pub mod use_in_a_circle;
pub mod word_not_expected;

/// Makes the list of all codes, and lets each be reported without naming its module.
macro_rules! codes {
    ($($name:ident)*) => {
        $(pub use $name::$name;)*

        /// Every code, sorted by slug.
        pub const ALL: &[&Code] = &[$(&$name::CODE),*];
    };
}

codes! {
    argument_missing
    argument_twice
    argument_unknown
    block_missing
    bracket_not_closed
    bracket_not_opened
    brackets_differ
    character_not_known
    count_not_whole
    curly_quotes
    decimal_comma
    equals_for_colon
    file_is_folder
    file_not_found
    file_not_readable
    file_not_text
    file_outside_project
    file_too_large
    fraction_over_zero
    fullness_percent_unclear
    item_unknown
    kind_mismatch
    kind_wanted
    length_negative
    length_not_positive
    length_too_large
    like_in_a_circle
    minus_unclear
    name_twice
    name_unknown
    name_unused
    name_wrong_kind
    nested_too_deep
    not_understood
    number_too_large
    property_empty
    property_missing
    property_twice
    property_unknown
    range_backwards
    sum_too_long
    template_in_a_circle
    text_not_closed
    too_many_mistakes
    unit_missing
    unit_unknown
    use_in_a_circle
    word_not_expected
}

/// The code with this slug.
pub fn by_slug(slug: &str) -> Option<&'static Code> {
    let at = ALL.binary_search_by_key(&slug, |code| code.slug).ok()?;
    ALL.get(at).copied()
}
