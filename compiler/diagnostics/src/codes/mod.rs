//! Every code, one file each, holding its constant and what makes a [`Diagnostic`](crate::Diagnostic)
//! of it.
//!
//! The file is named like the code, with underscores for its hyphens, and `codes::name_twice::CODE` is
//! its constant. What makes a diagnostic of it has the same name and is one of two things:
//!
//! - **a struct**, as a rule, with a named field for each thing that its text speaks of. It turns into
//!   its diagnostic by [`From`], and whatever tells diagnostics takes it as it is:
//!   `reader.report(codes::NameTwice { second, first, name })`. A text that stands for a place in a
//!   design is one field with it, a [`PlacedText`](crate::PlacedText).
//! - **a function**, where there are few things to speak of and no two of one type, so that none can
//!   be taken for another: `codes::not_understood(span)`.
//!
//! To add a code, write its file, then name it twice here: as a module and, with its struct or
//! function, in the list below.

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

/// Makes the list of all codes, and lets what makes a diagnostic of each be named without its module.
macro_rules! codes {
    ($($module:ident::$diagnostic:ident)*) => {
        $(pub use $module::$diagnostic;)*

        /// Every code, sorted by slug.
        pub const ALL: &[&Code] = &[$(&$module::CODE),*];
    };
}

codes! {
    accept_unclear::accept_unclear
    arc_impossible::ArcImpossible
    argument_missing::ArgumentMissing
    argument_twice::ArgumentTwice
    argument_unknown::ArgumentUnknown
    back_upside_down::BackUpsideDown
    band_and_method_differ::BandAndMethodDiffer
    band_cannot_follow::BandCannotFollow
    band_too_deep::BandTooDeep
    block_missing::BlockMissing
    bolt_without_end::bolt_without_end
    brace_unmatched::brace_unmatched
    bracket_apart::bracket_apart
    bracket_not_closed::BracketNotClosed
    bracket_not_opened::bracket_not_opened
    brackets_differ::BracketsDiffer
    cannot_be_accepted::cannot_be_accepted
    caution_unknown::caution_unknown
    character_not_known::character_not_known
    cloth_not_cut::cloth_not_cut
    cloth_too_narrow::ClothTooNarrow
    code_unknown::code_unknown
    colon_missing::colon_missing
    comma_missing::CommaMissing
    count_not_whole::CountNotWhole
    curly_quotes::CurlyQuotes
    curve_too_tight::CurveTooTight
    decimal_comma::decimal_comma
    drop_too_short::DropTooShort
    edge_inside_fold::EdgeInsideFold
    edge_without_length::EdgeWithoutLength
    equals_for_colon::equals_for_colon
    expectation_not_known::ExpectationNotKnown
    expectation_not_met::ExpectationNotMet
    fastener_wider_than_tail::FastenerWiderThanTail
    figure_absent::FigureAbsent
    figure_out_of_place::FigureOutOfPlace
    figure_unknown::figure_unknown
    file_already_there::FileAlreadyThere
    file_is_folder::file_is_folder
    file_not_found::file_not_found
    file_not_readable::FileNotReadable
    file_not_text::file_not_text
    file_not_writable::FileNotWritable
    file_outside_project::file_outside_project
    file_too_large::FileTooLarge
    fill_out_of_range::FillOutOfRange
    fill_outside_row::FillOutsideRow
    flaw_empty::flaw_empty
    flaws_overlap::FlawsOverlap
    fold_crosses_centre::FoldCrossesCentre
    fold_not_level::FoldNotLevel
    fold_on_fold::FoldOnFold
    fold_overruns_edge::FoldOverrunsEdge
    format_would_change::format_would_change
    fraction_over_zero::fraction_over_zero
    fullness_percent_unclear::FullnessPercentUnclear
    fullness_under_one::FullnessUnderOne
    half_drop_without_repeat::half_drop_without_repeat
    halves_differ::HalvesDiffer
    heading_needs_other::HeadingNeedsOther
    heading_not_whole::HeadingNotWhole
    ideal_outside_range::IdealOutsideRange
    interlining_and_method_differ::InterliningAndMethodDiffer
    item_unknown::item_unknown
    join_not_covered::JoinNotCovered
    join_thinly_covered::JoinThinlyCovered
    kind_mismatch::KindMismatch
    kind_wanted::KindWanted
    layout_not_sound::layout_not_sound
    length_negative::LengthNegative
    length_not_positive::LengthNotPositive
    length_too_large::length_too_large
    library_file_unknown::library_file_unknown
    library_name_taken::library_name_taken
    like_in_a_circle::like_in_a_circle
    lining_and_method_differ::LiningAndMethodDiffer
    lining_shrinks_more::LiningShrinksMore
    list_quote_open::list_quote_open
    list_row_uneven::ListRowUneven
    list_too_long::list_too_long
    list_without_names::list_without_names
    longer_than_bolt::LongerThanBolt
    longer_than_height::LongerThanHeight
    making_contradicts_itself::MakingContradictsItself
    minus_unclear::minus_unclear
    mitre_not_square::MitreNotSquare
    mitre_without_hem::MitreWithoutHem
    motif_below_drop::MotifBelowDrop
    motif_hidden::MotifHidden
    name_in_a_circle::name_in_a_circle
    name_missing::NameMissing
    name_needs_property::NameNeedsProperty
    name_reserved::NameReserved
    name_twice::NameTwice
    name_unknown::NameUnknown
    name_unused::NameUnused
    name_wrong_kind::NameWrongKind
    names_too_deep::names_too_deep
    nested_too_deep::nested_too_deep
    no_join_to_cover::NoJoinToCover
    no_print_across::NoPrintAcross
    not_understood::not_understood
    nothing_follows_print::NothingFollowsPrint
    nothing_left::NothingLeft
    nothing_to_accept::nothing_to_accept
    nothing_to_make::nothing_to_make
    number_too_large::number_too_large
    opening_too_wide::OpeningTooWide
    outline_crosses_itself::OutlineCrossesItself
    outline_empty::outline_empty
    outline_not_closed::OutlineNotClosed
    outline_not_started::OutlineNotStarted
    outline_outside_size::OutlineOutsideSize
    outline_short_of_drop::OutlineShortOfDrop
    overlap_too_wide::OverlapTooWide
    packet_not_read::PacketNotRead
    panel_not_hung::PanelNotHung
    panel_without_width::PanelWithoutWidth
    part_out_of_range::PartOutOfRange
    place_beyond_cloth::PlaceBeyondCloth
    pleats_do_not_fit::PleatsDoNotFit
    pleats_empty::pleats_empty
    pleats_run_together::PleatsRunTogether
    pleats_take_too_much::PleatsTakeTooMuch
    pocket_too_small::PocketTooSmall
    print_leaves_no_room::PrintLeavesNoRoom
    print_out_of_reach::PrintOutOfReach
    print_without_repeat::print_without_repeat
    property_empty::PropertyEmpty
    property_missing::PropertyMissing
    property_twice::PropertyTwice
    property_unknown::PropertyUnknown
    range_backwards::RangeBackwards
    repeat_longer_than_bolt::RepeatLongerThanBolt
    return_and_projection_differ::ReturnAndProjectionDiffer
    rod_and_board::RodAndBoard
    rod_sags::RodSags
    row_crowded::RowCrowded
    row_empty::row_empty
    row_uncovered::RowUncovered
    seam_shows::SeamShows
    selvages_too_wide::SelvagesTooWide
    sign_not_printed::sign_not_printed
    size_too_large::SizeTooLarge
    stack_too_thick::StackTooThick
    strip_shows::StripShows
    sum_too_long::sum_too_long
    tail_shows::TailShows
    text_not_closed::text_not_closed
    thickness_missing::ThicknessMissing
    too_many_arguments::too_many_arguments
    too_many_corners::too_many_corners
    too_many_flaws::too_many_flaws
    too_many_mistakes::too_many_mistakes
    too_many_pieces::TooManyPieces
    too_many_pleats::TooManyPleats
    too_many_sentences::too_many_sentences
    too_many_widths::TooManyWidths
    too_many_words::too_many_words
    too_narrow_for_allowance::TooNarrowForAllowance
    turn_deeper_than_hem::TurnDeeperThanHem
    turn_of_cloth_not_counted::TurnOfClothNotCounted
    unit_missing::UnitMissing
    unit_unknown::unit_unknown
    use_in_a_circle::use_in_a_circle
    use_too_deep::use_too_deep
    use_unclear::use_unclear
    value_unfinished::ValueUnfinished
    version_not_sound::VersionNotSound
    wall_too_thick::WallTooThick
    warning_unknown::warning_unknown
    width_missing::WidthMissing
    width_not_in_proportion::width_not_in_proportion
    widths_contradict::WidthsContradict
    widths_disagree::WidthsDisagree
    word_not_expected::WordNotExpected
}

/// The code that is written so: "name-unknown" is that of [`NameUnknown`].
pub fn by_slug(slug: &str) -> Option<&'static Code> {
    let at = ALL.binary_search_by_key(&slug, |code| code.slug).ok()?;
    ALL.get(at).copied()
}
