//! Every code, one file each; the file is named like the code, with underscores for its hyphens.
//!
//! To add a code, write its file, then name it twice here: as a module and in [`ALL`].

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

/// Every code, sorted by slug.
pub const ALL: &[&Code] = &[
    &argument_missing::CODE,
    &argument_twice::CODE,
    &argument_unknown::CODE,
    &block_missing::CODE,
    &bracket_not_closed::CODE,
    &bracket_not_opened::CODE,
    &brackets_differ::CODE,
    &character_not_known::CODE,
    &count_not_whole::CODE,
    &curly_quotes::CODE,
    &decimal_comma::CODE,
    &equals_for_colon::CODE,
    &file_is_folder::CODE,
    &file_not_found::CODE,
    &file_not_readable::CODE,
    &file_not_text::CODE,
    &file_outside_project::CODE,
    &file_too_large::CODE,
    &fraction_over_zero::CODE,
    &fullness_percent_unclear::CODE,
    &item_unknown::CODE,
    &kind_mismatch::CODE,
    &kind_wanted::CODE,
    &length_negative::CODE,
    &length_not_positive::CODE,
    &length_too_large::CODE,
    &like_in_a_circle::CODE,
    &minus_unclear::CODE,
    &name_twice::CODE,
    &name_unknown::CODE,
    &name_unused::CODE,
    &name_wrong_kind::CODE,
    &nested_too_deep::CODE,
    &not_understood::CODE,
    &number_too_large::CODE,
    &property_empty::CODE,
    &property_missing::CODE,
    &property_twice::CODE,
    &property_unknown::CODE,
    &range_backwards::CODE,
    &sum_too_long::CODE,
    &template_in_a_circle::CODE,
    &text_not_closed::CODE,
    &too_many_mistakes::CODE,
    &unit_missing::CODE,
    &unit_unknown::CODE,
    &use_in_a_circle::CODE,
    &word_not_expected::CODE,
];

/// The code with this slug.
pub fn by_slug(slug: &str) -> Option<&'static Code> {
    let at = ALL.binary_search_by_key(&slug, |code| code.slug).ok()?;
    ALL.get(at).copied()
}
