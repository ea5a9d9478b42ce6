//! Rods under load: the published beam case, its growth, and what is made of it.

use pelmet_measure::{Length, Mass};
use pelmet_model::{MATERIALS, Material, Rod, RodUnknown, RowMatter, SupportOrder};
use pelmet_workroom::{BeamSection, BeamSpan, GRAVITY, SAG_LIMIT, check_rod};
use proptest::prelude::*;

use crate::sample::{cloth, eighths, exactly, inches, made, panel, ratio, rod, window};

/// Newtons in a pound-force (NIST SP 811, appendix B.8).
const POUND_FORCE: f64 = 4.448_221_615_260_5;
const INCH: f64 = 0.0254;

fn near(one: f64, other: f64) -> bool {
    (one - other).abs() <= other.abs() * 1e-9
}

/// B1, AISC, Manual of Steel Construction: simple span, uniform load. In inches and pounds, with
/// E = 29 x 10^6 psi (B5) and I = 1 in^4: 10 lb/in over 100 in.
#[test]
fn the_published_beam_case_in_inches_and_pounds() {
    let psi = POUND_FORCE / INCH.powi(2);
    let beam = BeamSpan {
        metres: 100.0 * INCH,
        newtons_per_metre: 10.0 * POUND_FORCE / INCH,
        stiffness: 29e6 * psi * INCH.powi(4),
    };
    let moment = 10.0 * 100_f64.powi(2) / 8.0;
    let sag = 5.0 * 10.0 * 100_f64.powi(4) / (384.0 * 29e6);
    assert!(near(beam.moment(), moment * POUND_FORCE * INCH));
    assert!(near(beam.sag(), sag * INCH));
    assert!(near(beam.with_sag(beam.sag()), beam.metres));
}

/// The same sag by adding up the curvature `M / EI` along the beam.
#[test]
fn the_sag_agrees_with_the_curvature_added_up() {
    let beam = BeamSpan {
        metres: 1.8,
        newtons_per_metre: 25.0,
        stiffness: 900.0,
    };
    let (steps, half) = (20_000, beam.metres / 2.0);
    let step = half / f64::from(steps);
    // Deflection in the middle of a symmetric beam: the moment of the curvature about the support.
    let sag: f64 = (0..steps)
        .map(|index| {
            let at = (f64::from(index) + 0.5) * step;
            let moment = beam.newtons_per_metre * at * (beam.metres - at) / 2.0;
            moment / beam.stiffness * at * step
        })
        .sum();
    assert!((sag - beam.sag()).abs() < beam.sag() * 1e-6);
}

proptest! {
    /// B4, Record, The Mechanical Properties of Wood: under one and the same load the sag grows as
    /// the cube of the span.
    #[test]
    fn under_the_same_load_the_sag_grows_as_the_cube_of_the_span(
        metres in 0.2_f64..4.0, newtons in 1.0_f64..200.0, times in 1.1_f64..5.0,
    ) {
        let beam = |metres: f64| BeamSpan { metres, newtons_per_metre: newtons / metres, stiffness: 500.0 };
        let grown = beam(metres * times).sag() / beam(metres).sag();
        prop_assert!(near(grown, times.powi(3)));
    }

    #[test]
    fn brackets_that_are_enough_keep_the_rod_within_its_limit(
        length in 20_i64..200, diameter in 4_i64..16, grams in 50_i64..20_000, which in 0_usize..4,
    ) {
        let rod = Rod {
            diameter: eighths(diameter),
            material: Some(MATERIALS[which].name.to_owned()),
            ..rod(inches(length))
        };
        let weight = Some(Mass::from_micrograms(grams * 1_000_000));
        let first = check_rod(&rod, weight).unwrap();
        if let Some(brackets) = first.brackets_enough {
            let enough = check_rod(&Rod { brackets: Some(brackets), ..rod.clone() }, weight).unwrap();
            prop_assert!(enough.sag <= SAG_LIMIT + Length::from_nanometres(1));
            if brackets > 2 {
                let fewer = Rod { brackets: Some(brackets - 1), ..rod };
                prop_assert!(check_rod(&fewer, weight).unwrap().sag > SAG_LIMIT);
            }
        }
    }
}

#[test]
fn a_tube_without_an_inside_is_a_solid_rod_and_a_thin_one_keeps_most_of_its_stiffness() {
    let solid = BeamSection {
        outside: 0.03,
        inside: 0.0,
    };
    assert!(near(
        solid.second_moment(),
        std::f64::consts::PI * 0.03_f64.powi(4) / 64.0
    ));
    let tube = BeamSection {
        outside: 0.03,
        inside: 0.024,
    };
    assert!(tube.second_moment() / solid.second_moment() > tube.area() / solid.area());
    // What is taken out of the middle is a rod of its own.
    let core = BeamSection {
        outside: tube.inside,
        inside: 0.0,
    };
    assert!(near(solid.area(), std::f64::consts::PI * 0.015_f64.powi(2)));
    assert!(near(tube.area() + core.area(), solid.area()));
    let together = tube.second_moment() + core.second_moment();
    assert!(near(together, solid.second_moment()));
    let as_tube = Rod {
        wall: Some(eighths(4)),
        material: Some("steel".into()),
        ..rod(inches(60))
    };
    let as_solid = Rod {
        wall: None,
        ..as_tube.clone()
    };
    let weight = Some(Mass::ZERO);
    assert_eq!(check_rod(&as_tube, weight), check_rod(&as_solid, weight));
}

/// B5: structural steel 29 x 10^6 psi; 6061-T6 aluminium 10.0 to 10.4 x 10^6 psi (engineering
/// textbooks' appendices). NIST SP 811: 1 psi is 6894.757 Pa.
#[test]
fn what_rods_are_made_of_is_known_by_its_name() {
    for (words, name) in [
        ("steel", Some("steel")),
        ("stainless steel", Some("steel")),
        ("aluminum", Some("aluminium")),
        ("wooden", Some("wood")),
        ("bamboo", None),
        ("brass steel", None),
        ("", None),
    ] {
        let found = Material::named_in(words).map(|material| material.name);
        assert_eq!(found, name, "{words}");
    }
    let steel = Material::named_in("steel").unwrap();
    assert!((steel.softest() / 29e6 - 6_894.757).abs() < 0.001);
    assert_eq!(
        Material::named_in("aluminium").unwrap().million_psi,
        (10.0, 10.4)
    );
    for material in MATERIALS {
        let ((soft, stiff), (light, heavy)) =
            (material.million_psi, material.kilograms_per_cubic_metre);
        assert!(soft <= stiff && light <= heavy);
    }
}

#[test]
fn nothing_is_said_of_a_rod_that_cannot_be_reckoned() {
    let steel = Rod {
        material: Some("steel".into()),
        ..rod(inches(60))
    };
    let weight = Some(Mass::ZERO);
    for (rod, weight, unknown) in [
        (steel.clone(), None, RodUnknown::Weight),
        (
            Rod {
                material: None,
                ..steel.clone()
            },
            weight,
            RodUnknown::Material,
        ),
        (
            Rod {
                material: Some("bamboo".into()),
                ..steel.clone()
            },
            weight,
            RodUnknown::Material,
        ),
        (
            Rod {
                brackets: Some(1),
                ..steel.clone()
            },
            weight,
            RodUnknown::OneBracket,
        ),
    ] {
        assert_eq!(check_rod(&rod, weight), Err(unknown));
    }
    let hair = Rod {
        diameter: Length::from_nanometres(1),
        ..steel
    };
    let check = check_rod(&hair, Some(Mass::LARGEST)).unwrap();
    assert_eq!((check.sag, check.brackets_enough), (Length::LARGEST, None));
}

#[test]
fn a_rod_that_sags_is_found_and_one_with_more_brackets_is_not() {
    let heavy = pelmet_model::Fabric {
        width: inches(200),
        grams_per_square_metre: Some(ratio(600, 1)),
        ..cloth()
    };
    let mut front = panel();
    front.width = exactly(inches(90));
    let mut order = window(inches(90), vec![front], &[0]);
    for (brackets, sags) in [(2, true), (5, false)] {
        order.support = SupportOrder::Rod(Rod {
            diameter: eighths(4),
            material: Some("wood".into()),
            brackets: Some(brackets),
            ..rod(inches(90))
        });
        let (window, matters) = made(&order, std::slice::from_ref(&heavy));
        let found = matches!(
            matters.as_slice(),
            [pelmet_model::Matter::Row(RowMatter::RodSags { .. })]
        );
        assert_eq!(found, sags, "{matters:?}");
        assert!(window.rod_check.unwrap().is_ok());
    }
}

/// By hand: a steel pole 1 in thick and 100 in long on three brackets, with 2 kg hung from it.
#[test]
fn a_rod_carries_itself_and_what_hangs_from_it() {
    let pole = Rod {
        material: Some("steel".into()),
        brackets: Some(3),
        ..rod(inches(100))
    };
    let kilogram = Mass::from_micrograms(1_000_000_000);
    let check = check_rod(&pole, Some(kilogram * 2)).unwrap();
    let circle = std::f64::consts::PI * (INCH / 2.0).powi(2);
    let (metres, steel) = (100.0 * INCH, MATERIALS[0].kilograms_per_cubic_metre.1);
    let own = circle * metres * steel;
    assert!((check.rod_weight.as_kilograms_f64() - own).abs() < 1e-6);
    let beam = BeamSpan {
        metres: metres / 2.0,
        newtons_per_metre: (own + 2.0) * GRAVITY / metres,
        stiffness: MATERIALS[0].softest() * circle * INCH.powi(2) / 16.0,
    };
    assert_eq!((check.brackets, check.span), (3, inches(50)));
    assert!(near(check.newtons_per_metre, beam.newtons_per_metre));
    assert!(near(check.newton_metres, beam.moment()));
    let millimetres = |metres: f64| Length::from_millimetres_f64(metres * 1_000.0).unwrap();
    let close =
        |one: Length, other: f64| (one - millimetres(other)).abs() <= Length::from_nanometres(1);
    assert!(close(check.sag, beam.sag()));
    let limit = SAG_LIMIT.as_millimetres_f64() / 1_000.0;
    assert!(close(check.spacing, beam.with_sag(limit)));
    assert_eq!(check.brackets_enough, Some(3));
}

#[test]
fn a_rod_may_sag_just_as_far_as_its_limit() {
    let mut linen = cloth();
    linen.grams_per_square_metre = Some(ratio(200, 1));
    let mut order = window(inches(40), vec![panel()], &[0]);
    let found = |limit: Option<Length>, order: &mut pelmet_model::WindowOrder| {
        order.support = SupportOrder::Rod(Rod {
            diameter: eighths(2),
            material: Some("wood".into()),
            sag_limit: limit,
            ..rod(inches(40))
        });
        let (window, matters) = made(order, std::slice::from_ref(&linen));
        (window.rod_check.unwrap().unwrap().sag, matters.len())
    };
    let (sag, _) = found(None, &mut order);
    assert_eq!(found(Some(sag), &mut order), (sag, 0));
    let less = sag - Length::from_nanometres(1);
    assert_eq!(found(Some(less), &mut order), (sag, 1));
}

#[test]
fn a_rod_or_board_goes_by_the_name_its_maker_gave_it() {
    let board = pelmet_model::Board {
        name: String::from("shelf"),
        length: inches(40),
        depth: inches(4),
        thickness: None,
    };
    assert_eq!(SupportOrder::Rod(rod(inches(40))).name(), "pole");
    assert_eq!(SupportOrder::Board(board).name(), "shelf");
}
