//! Every code, one file each, holding its constant and the function that reports it.
//!
//! The file and the function are named like the code, with underscores for its hyphens:
//! `codes::name_unknown(…)` reports `codes::name_unknown::CODE`. To add a code, write its file, then
//! name it twice here: as a module and in the list below.

use crate::Code;

pub mod accept_unclear;
pub mod arc_impossible;
pub mod argument_missing;
pub mod argument_twice;
pub mod argument_unknown;
pub mod back_upside_down;
pub mod band_and_method_differ;
pub mod band_cannot_follow;
pub mod band_too_deep;
pub mod block_missing;
pub mod bolt_without_end;
pub mod brace_unmatched;
pub mod bracket_apart;
pub mod bracket_not_closed;
pub mod bracket_not_opened;
pub mod brackets_differ;
pub mod cannot_be_accepted;
pub mod caution_unknown;
pub mod character_not_known;
pub mod cloth_not_cut;
pub mod cloth_too_narrow;
pub mod code_unknown;
pub mod colon_missing;
pub mod comma_missing;
pub mod count_not_whole;
pub mod curly_quotes;
pub mod curve_too_tight;
pub mod decimal_comma;
pub mod drop_too_short;
pub mod edge_inside_fold;
pub mod edge_without_length;
pub mod equals_for_colon;
pub mod expectation_not_known;
pub mod expectation_not_met;
pub mod fastener_wider_than_tail;
pub mod figure_absent;
pub mod figure_out_of_place;
pub mod figure_unknown;
pub mod file_already_there;
pub mod file_is_folder;
pub mod file_not_found;
pub mod file_not_readable;
pub mod file_not_text;
pub mod file_not_writable;
pub mod file_outside_project;
pub mod file_too_large;
pub mod fill_out_of_range;
pub mod fill_outside_row;
pub mod flaw_empty;
pub mod flaws_overlap;
pub mod fold_crosses_centre;
pub mod fold_not_level;
pub mod fold_on_fold;
pub mod fold_overruns_edge;
pub mod format_would_change;
pub mod fraction_over_zero;
pub mod fullness_percent_unclear;
pub mod fullness_under_one;
pub mod half_drop_without_repeat;
pub mod halves_differ;
pub mod heading_needs_other;
pub mod heading_not_whole;
pub mod ideal_outside_range;
pub mod interlining_and_method_differ;
pub mod item_unknown;
pub mod join_not_covered;
pub mod join_thinly_covered;
pub mod kind_mismatch;
pub mod kind_wanted;
pub mod layout_not_sound;
pub mod length_negative;
pub mod length_not_positive;
pub mod length_too_large;
pub mod library_file_unknown;
pub mod library_name_taken;
pub mod like_in_a_circle;
pub mod lining_and_method_differ;
pub mod lining_shrinks_more;
pub mod list_quote_open;
pub mod list_row_uneven;
pub mod list_too_long;
pub mod list_without_names;
pub mod longer_than_bolt;
pub mod longer_than_height;
pub mod making_contradicts_itself;
pub mod minus_unclear;
pub mod mitre_not_square;
pub mod mitre_without_hem;
pub mod motif_below_drop;
pub mod motif_hidden;
pub mod name_in_a_circle;
pub mod name_missing;
pub mod name_needs_property;
pub mod name_reserved;
pub mod name_twice;
pub mod name_unknown;
pub mod name_unused;
pub mod name_wrong_kind;
pub mod names_too_deep;
pub mod nested_too_deep;
pub mod no_join_to_cover;
pub mod no_print_across;
pub mod not_understood;
pub mod nothing_follows_print;
pub mod nothing_left;
pub mod nothing_to_accept;
pub mod nothing_to_make;
pub mod number_too_large;
pub mod opening_too_wide;
pub mod outline_crosses_itself;
pub mod outline_empty;
pub mod outline_not_closed;
pub mod outline_not_started;
pub mod outline_outside_size;
pub mod outline_short_of_drop;
pub mod overlap_too_wide;
pub mod packet_not_read;
pub mod panel_not_hung;
pub mod panel_without_width;
pub mod part_out_of_range;
pub mod place_beyond_cloth;
pub mod pleats_do_not_fit;
pub mod pleats_empty;
pub mod pleats_run_together;
pub mod pleats_take_too_much;
pub mod pocket_too_small;
pub mod print_leaves_no_room;
pub mod print_out_of_reach;
pub mod print_without_repeat;
pub mod property_empty;
pub mod property_missing;
pub mod property_twice;
pub mod property_unknown;
pub mod range_backwards;
pub mod repeat_longer_than_bolt;
pub mod return_and_projection_differ;
pub mod rod_and_board;
pub mod rod_sags;
pub mod row_crowded;
pub mod row_empty;
pub mod row_uncovered;
pub mod seam_shows;
pub mod selvages_too_wide;
pub mod sign_not_printed;
pub mod size_too_large;
pub mod stack_too_thick;
pub mod strip_shows;
pub mod sum_too_long;
pub mod tail_shows;
pub mod text_not_closed;
pub mod thickness_missing;
pub mod too_many_arguments;
pub mod too_many_corners;
pub mod too_many_flaws;
pub mod too_many_mistakes;
pub mod too_many_pieces;
pub mod too_many_pleats;
pub mod too_many_sentences;
pub mod too_many_widths;
pub mod too_many_words;
pub mod too_narrow_for_allowance;
pub mod turn_deeper_than_hem;
pub mod turn_of_cloth_not_counted;
pub mod unit_missing;
pub mod unit_unknown;
pub mod use_in_a_circle;
pub mod use_too_deep;
pub mod use_unclear;
pub mod value_unfinished;
pub mod version_not_sound;
pub mod wall_too_thick;
pub mod warning_unknown;
pub mod width_missing;
pub mod width_not_in_proportion;
pub mod widths_contradict;
pub mod widths_disagree;
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
    accept_unclear
    arc_impossible
    argument_missing
    argument_twice
    argument_unknown
    back_upside_down
    band_and_method_differ
    band_cannot_follow
    band_too_deep
    block_missing
    bolt_without_end
    brace_unmatched
    bracket_apart
    bracket_not_closed
    bracket_not_opened
    brackets_differ
    cannot_be_accepted
    caution_unknown
    character_not_known
    cloth_not_cut
    cloth_too_narrow
    code_unknown
    colon_missing
    comma_missing
    count_not_whole
    curly_quotes
    curve_too_tight
    decimal_comma
    drop_too_short
    edge_inside_fold
    edge_without_length
    equals_for_colon
    expectation_not_known
    expectation_not_met
    fastener_wider_than_tail
    figure_absent
    figure_out_of_place
    figure_unknown
    file_already_there
    file_is_folder
    file_not_found
    file_not_readable
    file_not_text
    file_not_writable
    file_outside_project
    file_too_large
    fill_out_of_range
    fill_outside_row
    flaw_empty
    flaws_overlap
    fold_crosses_centre
    fold_not_level
    fold_on_fold
    fold_overruns_edge
    format_would_change
    fraction_over_zero
    fullness_percent_unclear
    fullness_under_one
    half_drop_without_repeat
    halves_differ
    heading_needs_other
    heading_not_whole
    ideal_outside_range
    interlining_and_method_differ
    item_unknown
    join_not_covered
    join_thinly_covered
    kind_mismatch
    kind_wanted
    layout_not_sound
    length_negative
    length_not_positive
    length_too_large
    library_file_unknown
    library_name_taken
    like_in_a_circle
    lining_and_method_differ
    lining_shrinks_more
    list_quote_open
    list_row_uneven
    list_too_long
    list_without_names
    longer_than_bolt
    longer_than_height
    making_contradicts_itself
    minus_unclear
    mitre_not_square
    mitre_without_hem
    motif_below_drop
    motif_hidden
    name_in_a_circle
    name_missing
    name_needs_property
    name_reserved
    name_twice
    name_unknown
    name_unused
    name_wrong_kind
    names_too_deep
    nested_too_deep
    no_join_to_cover
    no_print_across
    not_understood
    nothing_follows_print
    nothing_left
    nothing_to_accept
    nothing_to_make
    number_too_large
    opening_too_wide
    outline_crosses_itself
    outline_empty
    outline_not_closed
    outline_not_started
    outline_outside_size
    outline_short_of_drop
    overlap_too_wide
    packet_not_read
    panel_not_hung
    panel_without_width
    part_out_of_range
    place_beyond_cloth
    pleats_do_not_fit
    pleats_empty
    pleats_run_together
    pleats_take_too_much
    pocket_too_small
    print_leaves_no_room
    print_out_of_reach
    print_without_repeat
    property_empty
    property_missing
    property_twice
    property_unknown
    range_backwards
    repeat_longer_than_bolt
    return_and_projection_differ
    rod_and_board
    rod_sags
    row_crowded
    row_empty
    row_uncovered
    seam_shows
    selvages_too_wide
    sign_not_printed
    size_too_large
    stack_too_thick
    strip_shows
    sum_too_long
    tail_shows
    text_not_closed
    thickness_missing
    too_many_arguments
    too_many_corners
    too_many_flaws
    too_many_mistakes
    too_many_pieces
    too_many_pleats
    too_many_sentences
    too_many_widths
    too_many_words
    too_narrow_for_allowance
    turn_deeper_than_hem
    turn_of_cloth_not_counted
    unit_missing
    unit_unknown
    use_in_a_circle
    use_too_deep
    use_unclear
    value_unfinished
    version_not_sound
    wall_too_thick
    warning_unknown
    width_missing
    width_not_in_proportion
    widths_contradict
    widths_disagree
    word_not_expected
}

/// The code with this slug.
pub fn by_slug(slug: &str) -> Option<&'static Code> {
    let at = ALL.binary_search_by_key(&slug, |code| code.slug).ok()?;
    ALL.get(at).copied()
}
