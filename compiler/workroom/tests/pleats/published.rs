//! Rules against published figures. NIMI is *Dress Making, Trade Practical*, National
//! Instructional Media Institute, pp. 188-189; HAP is Hapgood, *School Needlework*, section
//! Plaiting; HMD is *How to Make Draperies*, chapter Measuring for Pleats; STE is Stephenson,
//! *Cutting and Draping*, 1905.

use pelmet_measure::Length;
use pelmet_model::{Pleating, Ranged, StepKind, TowardOrder};
use pelmet_workroom::{fold, lay_out, no_pleats};

use crate::rules::*;

fn spaces(pleating: &Pleating) -> Vec<Length> {
    pleating
        .pleats
        .windows(2)
        .map(|pair| pair[1].from - pair[0].to)
        .collect()
}

/// NIMI p. 188: section 92 cm, depth 4 cm, wanted width 5 cm: 18 pleats, width 5.11 cm, flat
/// 236 cm.
#[test]
fn as_many_knife_pleats_as_come_nearest_the_wanted_width() {
    let width = open(centimetres(30), centimetres(80), centimetres(50));
    let pleats = any_number(vec![width, knife(centimetres(40), TowardOrder::Left)]);
    let laid = lay_out(&from_left(vec![pleats]), Some(centimetres(920)), None).unwrap();
    assert_eq!(laid.pleats.len(), 18);
    assert_eq!(laid.flat, centimetres(2360));
    for space in spaces(&laid) {
        assert_eq!(
            space
                .round_to(Length::from_nanometres(100_000))
                .millimetres_text(),
            "51.1"
        );
    }
}

/// NIMI p. 188: n knife pleats of depth d over a section s need s + 2dn.
#[test]
fn knife_pleats_need_the_section_and_twice_the_depth_each() {
    for (pleats, depth, section) in [(1, 10, 300), (4, 25, 500), (18, 40, 920), (7, 13, 411)] {
        let steps = vec![
            plain(centimetres(1)),
            knife(centimetres(depth), TowardOrder::Right),
        ];
        let rule = from_left(vec![
            repeat(Ranged::fixed(pleats), steps),
            open(Length::ZERO, centimetres(1000), Length::ZERO),
        ]);
        let laid = lay_out(&rule, Some(centimetres(section)), None).unwrap();
        assert_eq!(
            laid.flat,
            centimetres(section + 2 * depth * i64::from(pleats))
        );
    }
}

/// NIMI p. 189 and HAP: pleats as deep as they are wide need three times the section.
#[test]
fn pleats_that_meet_need_three_times_the_cloth() {
    for (width, pleats) in [(25, 20), (10, 7), (33, 3)] {
        let steps = vec![
            plain(centimetres(width)),
            knife(centimetres(width), TowardOrder::Left),
        ];
        let rule = from_left(vec![any_number(steps)]);
        let section = centimetres(width * pleats);
        let laid = lay_out(&rule, Some(section), None).unwrap();
        assert_eq!(laid.flat, section * 3);
        assert_eq!(fold(laid.flat, &laid.creases).thickest, 3);
    }
}

/// NIMI p. 189: finished 50 cm, width and depth 2.5 cm: 20 pleats, 150 cm.
#[test]
fn twenty_pleats_over_fifty_centimetres() {
    let steps = vec![
        plain(centimetres(25)),
        knife(centimetres(25), TowardOrder::Left),
    ];
    let laid = lay_out(
        &from_left(vec![any_number(steps)]),
        Some(centimetres(500)),
        None,
    )
    .unwrap();
    assert_eq!((laid.pleats.len(), laid.flat), (20, centimetres(1500)));
}

/// NIMI p. 189: one box pleat of depth 12 cm in a section of 60 cm: flat 108 cm.
#[test]
fn a_box_pleat_needs_four_times_its_depth() {
    let margin = || open(Length::ZERO, centimetres(600), centimetres(200));
    let rule = from_left(vec![margin(), boxed(centimetres(120), None), margin()]);
    let laid = lay_out(&rule, Some(centimetres(600)), None).unwrap();
    assert_eq!(laid.flat, centimetres(1080));
}

/// NIMI p. 189: a box or inverted pleat that closes behind has a face of twice its depth.
#[test]
fn a_face_not_given_is_twice_the_depth() {
    for pleat in [
        boxed(centimetres(30), None),
        inverted(centimetres(30), None),
    ] {
        let laid = lay_out(&from_left(vec![pleat]), None, None).unwrap();
        assert_eq!(laid.pleats[0].face, Some(centimetres(60)));
    }
}

/// HMD: half opening 49 in, return 3, overlap 1 give 53 in finished; 144 in flat leave 91 in for
/// pleats, 13 of 7 in. By its rule: first pleat at the return, last 2 in from the edge, 12 spaces
/// of 4 in. A pleat that takes 7 in is, in the sum of widths, a knife of 3 1/2 in.
#[test]
fn thirteen_pleats_of_seven_inches() {
    let pleats = vec![
        knife(Length::inch_fraction(7, 2), TowardOrder::Left),
        open(Length::INCH, Length::inches(8), Length::inches(5)),
    ];
    let rule = from_left(vec![
        plain(Length::inches(3)),
        any_number(pleats),
        plain(Length::inches(2)),
    ]);
    let finished = Length::inches(49 + 3 + 1);
    let laid = lay_out(&rule, Some(finished), Some(Length::inches(144))).unwrap();
    assert_eq!(laid.flat - laid.finished, Length::inches(91));
    assert_eq!(laid.pleats.len(), 13);
    assert_eq!(spaces(&laid), vec![Length::inches(4); 12]);
    assert_eq!(laid.finished, finished);
}

/// HMD, the same written out: 3 + 13 x 7 + 12 x 4 + 2 = 144.
#[test]
fn thirteen_pleats_written_out_settle_their_own_width() {
    let pleats = vec![
        knife(Length::inch_fraction(7, 2), TowardOrder::Left),
        plain(Length::inches(4)),
    ];
    let rule = from_left(vec![
        plain(Length::inches(3)),
        repeat(Ranged::fixed(13), pleats),
        plain(Length::inches(2)),
    ]);
    let laid = lay_out(&rule, None, None).unwrap();
    assert_eq!(
        (laid.flat, laid.finished),
        (Length::inches(144), Length::inches(53))
    );
}

/// STE: a box-pleated valance with spaces as wide as the pleats takes 3 ft of goods a foot.
#[test]
fn box_pleats_with_equal_spaces_take_three_times_the_cloth() {
    let inch = Length::INCH;
    let rule = from_left(vec![any_number(vec![plain(inch), boxed(inch, Some(inch))])]);
    let laid = lay_out(&rule, Some(Length::FOOT), None).unwrap();
    assert_eq!(laid.flat, Length::FOOT * 3);
}

/// Common practice, no source: a knife pleat takes up twice its depth.
#[test]
fn a_knife_pleat_takes_up_twice_its_depth() {
    let rule = from_left(vec![StepKind::Rest, knife(inches(11), TowardOrder::Right)]);
    let laid = lay_out(&rule, None, Some(Length::inches(20))).unwrap();
    assert_eq!(laid.finished, Length::inches(20) - inches(22));
}

/// Common practice, no source: 30 in flat, with knives 2 1/2, 1 1/2 and 1 1/2 in deep each side of
/// the centre, hangs 8 in wide.
#[test]
fn thirty_inches_in_six_knives_hang_eight_inches_wide() {
    let knives = [20, 12, 12].map(|depth| knife(inches(depth), TowardOrder::Centre));
    let mut steps = vec![StepKind::Rest];
    steps.extend(knives);
    let laid = lay_out(&from_centre(steps), None, Some(Length::inches(30))).unwrap();
    assert_eq!(laid.finished, Length::inches(8));
}

#[test]
fn a_panel_without_pleats_hangs_as_wide_as_it_is() {
    let laid = no_pleats(Length::YARD);
    assert_eq!((laid.flat, laid.finished), (Length::YARD, Length::YARD));
    assert!(laid.pleats.is_empty() && laid.creases.is_empty());
}
