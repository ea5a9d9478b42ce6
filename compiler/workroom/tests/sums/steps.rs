//! The steps of a making method: what every figure comes to on a panel, and when a sentence is said.

use FigureValue::{
    Corners, Count, Cut, Edge, Mark, Name, Number, Piece, PleatFold, RunEnds, Stated,
};
use pelmet_measure::Length;
use pelmet_model::OutlineStep::UpToHeading;
use pelmet_model::{
    Allowance, BandOrder, CautionKind, CountedOrder, CountedThing, Each, EdgeKind, Fabric, Figure,
    FigureValue, Heading, HowMany, Layer, LayerMaking, MakingStep, Marked, Matter, PanelMade,
    PanelOrder, PartMade, PieceMatter, PleatRule, Said, ScallopNumber, Sentence, SentencePart,
    StripOrder, TapeOrder, ThreadOrder,
};

use crate::sample::{
    cloth, eighths, exactly, from, inches, knives, made, outline, panel, ratio, scallops, seams,
    to, window,
};

fn named(name: &str) -> FigureValue {
    Name(String::from(name))
}

fn fabrics() -> [Fabric; 3] {
    [("sailcloth", 54), ("muslin", 54), ("flannel", 200)].map(|(name, width)| Fabric {
        name: String::from(name),
        width: inches(width),
        ..cloth()
    })
}

fn sentence(said: Said, figures: &[Figure]) -> Sentence {
    Sentence {
        said,
        parts: figures.iter().copied().map(SentencePart::Figure).collect(),
    }
}

fn step(name: &str, sentences: Vec<Sentence>) -> MakingStep {
    MakingStep {
        name: String::from(name),
        sentences,
        cautions: vec![],
    }
}

fn worked(order: &PanelOrder, steps: Vec<MakingStep>) -> (PanelMade, Vec<Matter>) {
    let mut order = order.clone();
    order.making.steps = steps;
    let window = window(inches(40), vec![order], &[0]);
    let (mut window, matters) = made(&window, &fabrics());
    (window.panels.remove(0).unwrap(), matters)
}

/// Every figure the panel has, by name, with its values: one, or one for each join, run or pleat.
type Told = Vec<(String, Vec<FigureValue>)>;

fn told(order: &PanelOrder) -> (PanelMade, Told) {
    let steps = Figure::ALL.iter().map(|&(figure, name)| {
        let said = figure.of_each().map_or(Said::Always, Said::ForEach);
        step(name, vec![sentence(said, &[figure])])
    });
    let (made, _) = worked(order, steps.collect());
    let values = made.steps.iter().map(|step| {
        let parts = step.sentences.iter().flat_map(|sentence| &sentence.parts);
        let values = parts.filter_map(|part| match part {
            PartMade::Value(value) => Some(value.clone()),
            PartMade::Words(_) => None,
        });
        (step.name.clone(), values.collect::<Vec<_>>())
    });
    let told = values.filter(|(_, values)| !values.is_empty()).collect();
    (made, told)
}

/// What is told of the panel under these names.
fn told_of(order: &PanelOrder, names: &[&str]) -> Told {
    let (_, mut told) = told(order);
    told.retain(|(name, _)| names.contains(&name.as_str()));
    told
}

fn table<const N: usize>(rows: [(&str, Vec<FigureValue>); N]) -> Told {
    rows.map(|(name, values)| (String::from(name), values))
        .into()
}

fn layer(top: Length, hem: (Length, Length), lower: Length) -> LayerMaking {
    let mut making = seams(top);
    let (depth, turn) = hem;
    making.edges.sides = Allowance::SingleHem { depth, turn };
    making.edges.lower = Allowance::DoubleHem(lower);
    making
}

/// 80 in finished, with everything a method can order but bands.
fn furnished() -> PanelOrder {
    let careful = PleatRule {
        folding_error: Some(eighths(1)),
        ..knives(2, inches(2))
    };
    let mut order = PanelOrder {
        width: exactly(inches(80)),
        pleats: Some(careful),
        interlining: Some(2),
        lining: Some(1),
        heading: Heading::OverRod {
            tail: inches(5),
            fastener: None,
        },
        ..panel()
    };
    let making = &mut order.making;
    making.face = layer(eighths(4), (inches(1), eighths(2)), inches(3));
    making.interlining = Some(seams(Length::ZERO));
    making.lining = Some(LayerMaking {
        longer: inches(-1),
        wider: eighths(-4),
        ..layer(eighths(3), (eighths(6), eighths(1)), inches(2))
    });
    making.join = eighths(5);
    making.turning_opening = Some(inches(6));
    making.tape = Some(TapeOrder {
        width: eighths(3),
        top: true,
        sides: true,
        lower: true,
        roll: None,
    });
    making.notions.pleat_strips = Some(StripOrder {
        behind_each: 2,
        length: Some(eighths(12)),
    });
    making.notions.thread = Some(ThreadOrder {
        name: String::from("cotton-thread"),
        times: ratio(5, 2),
    });
    let counted = |how_many| {
        Some(CountedOrder {
            name: String::from("brass-ring"),
            how_many,
        })
    };
    making.notions.rings = counted(HowMany::Apart(inches(10)));
    making.notions.weights = counted(HowMany::Each(4));
    order
}

/// Every figure, and no other: 88 in flat, two knives of 2 x 2 in; seams in face and lining, whose
/// cloth is 54 in wide, and none in the interlining.
#[test]
fn a_panel_tells_every_figure_it_has_and_no_other() {
    let (made, told) = told(&furnished());
    let line = made
        .marks
        .iter()
        .find(|mark| mark.what == Marked::HeadingLine);
    let (line, length) = (line.unwrap().down.unwrap(), made.heading_depth + inches(14));
    let seams: Vec<Length> = made
        .pieces
        .iter()
        .flat_map(|piece| piece.joined.iter().flat_map(|joined| &joined.seams))
        .map(|seam| seam.at)
        .collect();
    let (face, lining) = (Layer::Face, Layer::Lining);
    let expected = table([
        ("face", vec![named("sailcloth")]),
        ("face size", vec![Piece(0)]),
        ("lining", vec![named("muslin")]),
        ("lining size", vec![Piece(2)]),
        ("interlining", vec![named("flannel")]),
        ("interlining size", vec![Piece(1)]),
        ("lining shorter", vec![Stated(inches(1))]),
        ("lining narrower", vec![Stated(eighths(4))]),
        ("flat width", vec![Mark(inches(88))]),
        ("finished width", vec![Mark(inches(80))]),
        ("tolerance", vec![Mark(eighths(4))]),
        ("made length", vec![Mark(length)]),
        ("drop", vec![Mark(inches(14))]),
        ("heading line", vec![Mark(line)]),
        ("top seam", vec![Stated(eighths(4))]),
        ("side hem", vec![Stated(inches(1))]),
        ("lower hem", vec![Stated(inches(3))]),
        ("side turn", vec![Stated(eighths(2))]),
        ("lower turn", vec![Stated(inches(3))]),
        ("lining top seam", vec![Stated(eighths(3))]),
        ("lining side hem", vec![Stated(eighths(6))]),
        ("lining lower hem", vec![Stated(inches(2))]),
        ("lining side turn", vec![Stated(eighths(1))]),
        ("lining lower turn", vec![Stated(inches(2))]),
        ("joins", vec![Count(4, CountedThing::Join)]),
        ("join seam", vec![Stated(eighths(5))]),
        (
            "join layer",
            [face, face, lining, lining].map(FigureValue::Layer).into(),
        ),
        ("join place", seams.into_iter().map(Mark).collect()),
        ("tape", vec![Stated(eighths(3))]),
        ("tape length", vec![Cut(length * 2 + inches(88 + 88 - 6))]),
        (
            "run edge",
            made.tape.iter().map(|run| Edge(run.kind)).collect(),
        ),
        ("run ends", (0..made.tape.len()).map(RunEnds).collect()),
        (
            "run length",
            made.tape.iter().map(|run| Cut(run.length)).collect(),
        ),
        ("turning opening", vec![Stated(inches(6))]),
        ("opening start", vec![Mark(inches(41))]),
        ("opening end", vec![Mark(inches(47))]),
        ("trims", vec![Corners(vec![1, 2, 3, 4])]),
        ("pleats", vec![Count(2, CountedThing::Pleat)]),
        ("pleat", vec![Number(1), Number(2)]),
        ("pleat kind", vec![named("knife"), named("knife")]),
        ("pleat depth", vec![Mark(inches(2)), Mark(inches(2))]),
        ("pleat fold", vec![PleatFold(0), PleatFold(1)]),
        ("pleat strips", vec![Count(4, CountedThing::Strip)]),
        ("strip length", vec![Cut(eighths(12))]),
        ("rings", vec![Count(9, CountedThing::Ring)]),
        ("ring spacing", vec![Mark(inches(10))]),
        ("weights", vec![Count(4, CountedThing::Weight)]),
        ("thread", vec![named("cotton-thread")]),
    ]);
    assert_eq!(told, expected);
}

#[test]
fn tape_runs_from_the_first_side_round_to_the_top() {
    let (made, _) = told(&furnished());
    let edges: Vec<EdgeKind> = made.tape.iter().map(|run| run.kind).collect();
    let (side, lower, top) = (EdgeKind::Side, EdgeKind::Lower, EdgeKind::Top);
    assert_eq!(edges, [side, lower, side, top]);
}

#[test]
fn bands_tell_their_own_sizes_depths_and_seam() {
    let names = [
        "band",
        "top band size",
        "side band size",
        "lower band size",
        "top band",
        "side band",
        "lower band",
        "band seam",
    ];
    let banded = |top, sides, lower| {
        let mut order = PanelOrder {
            band: Some(1),
            ..panel()
        };
        order.making.face.edges.band = Allowance::Seam(eighths(3));
        order.making.band = Some(BandOrder {
            top,
            sides,
            lower,
            laid_on: false,
        });
        told_of(&order, &names)
    };
    let (one, two, three) = (inches(1), inches(2), inches(3));
    assert_eq!(
        banded(None, Some(two), Some(three)),
        table([
            ("band", vec![named("muslin")]),
            ("side band size", vec![Piece(1)]),
            ("lower band size", vec![Piece(2)]),
            ("side band", vec![Stated(two)]),
            ("lower band", vec![Stated(three)]),
            ("band seam", vec![Stated(eighths(3))]),
        ])
    );
    assert_eq!(
        banded(Some(one), None, None),
        table([
            ("band", vec![named("muslin")]),
            ("top band size", vec![Piece(1)]),
            ("top band", vec![Stated(one)]),
            ("band seam", vec![Stated(eighths(3))]),
        ])
    );
    assert_eq!(told_of(&panel(), &names), []);
}

#[test]
fn a_face_that_lines_itself_tells_its_fold_and_has_no_lower_seam() {
    let names = ["fold", "top seam", "side seam", "lower seam"];
    let half = || vec![Stated(eighths(4))];
    let mut order = panel();
    let sewn = [
        ("top seam", half()),
        ("side seam", half()),
        ("lower seam", half()),
    ];
    assert_eq!(told_of(&order, &names), table(sewn));
    order.making.self_lined = true;
    let fold = Cut(inches(14) + eighths(4));
    let folded = [
        ("fold", vec![fold]),
        ("top seam", half()),
        ("side seam", half()),
    ];
    assert_eq!(told_of(&order, &names), table(folded));
}

#[test]
fn a_lining_is_longer_or_shorter_wider_or_narrower_or_neither() {
    let names = [
        "lining longer",
        "lining shorter",
        "lining wider",
        "lining narrower",
    ];
    for (longer, wider, expected) in [
        (0, 0, vec![]),
        (2, 0, vec![("lining longer", 2)]),
        (-2, 0, vec![("lining shorter", 2)]),
        (0, 3, vec![("lining wider", 3)]),
        (0, -3, vec![("lining narrower", 3)]),
    ] {
        let mut order = PanelOrder {
            lining: Some(1),
            ..panel()
        };
        order.making.lining = Some(LayerMaking {
            longer: eighths(longer),
            wider: eighths(wider),
            ..seams(eighths(4))
        });
        let expected: Told = expected
            .into_iter()
            .map(|(name, by)| (String::from(name), vec![Stated(eighths(by))]))
            .collect();
        assert_eq!(told_of(&order, &names), expected);
    }
}

#[test]
fn corners_and_curves_tell_what_is_cut_there() {
    let names = ["trims", "snips", "mitres", "clips", "wedges"];
    let mut mitred = panel();
    mitred.making.mitred = true;
    (
        mitred.making.face.edges.sides,
        mitred.making.face.edges.lower,
    ) = (
        Allowance::DoubleHem(inches(1)),
        Allowance::DoubleHem(inches(2)),
    );
    assert_eq!(
        told_of(&mitred, &names),
        table([
            ("trims", vec![Corners(vec![1, 4])]),
            ("mitres", vec![Corners(vec![2, 3])]),
        ])
    );
    let step = [from(0, 10), to(20, 10), to(20, 14), to(40, 14), UpToHeading];
    let stepped = PanelOrder {
        outline: outline(false, &step),
        ..panel()
    };
    assert_eq!(
        told_of(&stepped, &names),
        table([
            ("trims", vec![Corners(vec![1, 2, 4, 5, 6])]),
            ("snips", vec![Corners(vec![3])]),
        ])
    );
    let wave = [
        from(0, 12),
        scallops((40, 12), ScallopNumber::Count(2), 2),
        UpToHeading,
    ];
    let scalloped = PanelOrder {
        outline: outline(false, &wave),
        ..panel()
    };
    let (made, told) = told(&scalloped);
    let curves = made
        .shape
        .edges
        .iter()
        .filter_map(|edge| edge.curve.as_ref());
    let wedges: Vec<u32> = curves.map(|curve| curve.wedges).collect();
    assert_eq!(wedges.len(), 2);
    let all = usize::try_from(wedges.iter().sum::<u32>()).unwrap();
    assert!(told.contains(&(
        String::from("wedges"),
        vec![Count(all, CountedThing::Wedge)]
    )));
    assert!(!told.iter().any(|(name, _)| name == "clips"));
}

/// Rings stand at both ends, so one alone has no space beside it.
#[test]
fn rings_stand_at_equal_distances() {
    for (count, spacing) in [(0, None), (1, None), (2, Some(40)), (5, Some(10))] {
        let mut order = panel();
        order.making.notions.rings = Some(CountedOrder {
            name: String::from("brass-ring"),
            how_many: HowMany::Each(count),
        });
        let of = |name| told_of(&order, &[name]).pop().map(|(_, values)| values);
        let rings = usize::try_from(count).unwrap();
        let rings = (rings > 0).then(|| vec![Count(rings, CountedThing::Ring)]);
        assert_eq!(of("rings"), rings);
        let spacing = spacing.map(|spacing| vec![Mark(inches(spacing))]);
        assert_eq!(of("ring spacing"), spacing);
    }
}

#[test]
fn a_sentence_is_said_always_of_some_panels_or_once_for_each() {
    let mut order = panel();
    order.pleats = Some(knives(3, inches(1)));
    for (said, times, one_of_each) in [
        (Said::Always, 1, false),
        (Said::When(Figure::Pleats), 1, false),
        (Said::When(Figure::Lining), 0, false),
        (Said::WhenNo(Figure::Pleats), 0, false),
        (Said::WhenNo(Figure::Lining), 1, false),
        (Said::ForEach(Each::Pleat), 3, true),
        (Said::ForEach(Each::Join), 0, true),
        (Said::ForEach(Each::TapeRun), 0, true),
    ] {
        let words = SentencePart::Words(String::from("Press."));
        let parts = vec![words];
        let steps = vec![MakingStep {
            name: String::from("pressing"),
            sentences: vec![Sentence { said, parts }],
            cautions: vec![CautionKind::HotIron],
        }];
        let (made, matters) = worked(&order, steps);
        assert_eq!(matters, []);
        let sentences: Vec<_> = made.steps.iter().flat_map(|step| &step.sentences).collect();
        assert_eq!(sentences.len(), times, "{said:?}");
        for sentence in sentences {
            assert_eq!(sentence.one_of_each, one_of_each, "{said:?}");
            assert_eq!(sentence.parts, [PartMade::Words(String::from("Press."))]);
        }
        // A step that says nothing of the panel is left out.
        assert_eq!(made.steps.len(), times.min(1), "{said:?}");
        for step in &made.steps {
            assert_eq!(step.cautions, [CautionKind::HotIron]);
        }
    }
}

#[test]
fn a_figure_the_panel_has_not_is_told_where_its_sentence_is_said() {
    let (lining, face) = (Figure::Lining, Figure::Face);
    let steps = vec![
        step("first", vec![sentence(Said::Always, &[face])]),
        step(
            "second",
            vec![
                sentence(Said::When(lining), &[lining]),
                sentence(Said::Always, &[face, lining]),
            ],
        ),
    ];
    let (_, matters) = worked(&panel(), steps);
    let absent = PieceMatter::FigureAbsent {
        step: 1,
        sentence: 1,
        figure: lining,
    };
    assert_eq!(matters, [Matter::Piece(absent)]);
}

#[test]
fn every_name_leads_back_to_what_it_names() {
    for kind in CautionKind::ALL {
        assert_eq!(CautionKind::of_word(kind.word()), Some(*kind));
    }
    for each in Each::ALL {
        assert_eq!(Each::of_word(each.word()), Some(*each));
    }
    assert_eq!(CautionKind::of_word(""), None);
    assert_eq!(Figure::from_name(""), None);
}
