//! A plain job to begin each test from: one window, one rod, one unlined panel that just covers it.

use std::collections::BTreeMap;

use pelmet_measure::{Length, Ratio};
use pelmet_model::{
    Allowance, ArcOrder, Cut, EdgeAllowances, Fabric, FinishedOrder, Heading, Job, Layer,
    LayerMaking, Making, MakingMatter, MakingNotions, Matter, Outline, OutlineStep, PanelMade,
    PanelOrder, PleatKind, PleatOrder, PleatRule, PleatStep, Proportion, Railroad, Ranged, Rod,
    ScallopNumber, Start, StepKind, SupportOrder, Way, WidthOrder, WindowMade, WindowOrder,
};
use pelmet_workroom::work;

pub fn inches(whole: i64) -> Length {
    Length::inches(whole)
}

pub fn eighths(count: i64) -> Length {
    Length::inch_fraction(count, 8)
}

pub fn centimetres(whole: i64) -> Length {
    Length::millimetres(whole * 10)
}

pub fn ratio(numerator: i128, denominator: i128) -> Ratio {
    Ratio::new(numerator, denominator)
}

/// Plain cloth 54 in wide, its selvages 1/2 in.
pub fn cloth() -> Fabric {
    Fabric {
        name: String::from("sailcloth"),
        width: inches(54),
        selvage: eighths(4),
        repeat: None,
        way: Way::Any,
        railroad: Railroad::Never,
        print_begins: None,
        flaws: vec![],
        shear_gap: Length::ZERO,
        bolt_length: None,
        shrinkage: ratio(0, 1),
        grams_per_square_metre: None,
        thickness: None,
        price: None,
    }
}

/// Seams of so much all round.
pub fn seams(width: Length) -> LayerMaking {
    let seam = Allowance::Seam(width);
    LayerMaking {
        edges: EdgeAllowances::all(seam),
        longer: Length::ZERO,
        wider: Length::ZERO,
    }
}

/// One layer, seams 1/2 in.
pub fn making() -> Making {
    Making {
        name: String::from("seamed"),
        face: seams(eighths(4)),
        interlining: None,
        lining: None,
        self_lined: false,
        band: None,
        mitred: false,
        seam: eighths(4),
        join: eighths(4),
        tape: None,
        turning_opening: None,
        stack: None,
        notions: MakingNotions::default(),
        work: vec![],
        steps: vec![],
    }
}

/// 40 in wide, 14 in long, straight, hung from its own edge.
pub fn panel() -> PanelOrder {
    PanelOrder {
        name: String::from("front"),
        width: exactly(inches(40)),
        drop: inches(14),
        outline: Outline::straight(inches(14)),
        pleats: None,
        heading: Heading::Plain,
        making: making(),
        face: 0,
        interlining: None,
        lining: None,
        band: None,
        covers: None,
        cut: Cut::Open,
    }
}

pub fn exactly(finished: Length) -> WidthOrder {
    WidthOrder {
        finished: Some(FinishedOrder::Exact(finished)),
        ..WidthOrder::default()
    }
}

pub fn filling(least: Option<Length>, most: Option<Length>) -> WidthOrder {
    WidthOrder {
        finished: Some(FinishedOrder::Fill { least, most }),
        ..WidthOrder::default()
    }
}

/// A rod 1 in thick.
pub fn rod(length: Length) -> Rod {
    Rod {
        name: String::from("pole"),
        length,
        diameter: inches(1),
        projection: None,
        wall: None,
        material: None,
        brackets: None,
        sag_limit: None,
    }
}

/// These panels on a rod, in the row as given.
pub fn window(rod_length: Length, panels: Vec<PanelOrder>, row: &[usize]) -> WindowOrder {
    WindowOrder {
        name: String::from("landing"),
        opening: None,
        support: SupportOrder::Rod(rod(rod_length)),
        top_at: None,
        returns: Length::ZERO,
        public_room: false,
        overlap: Length::ZERO,
        panels,
        row: row.to_vec(),
        over_joins: vec![],
        motif: None,
    }
}

/// The answer for one window.
pub fn made(order: &WindowOrder, fabrics: &[Fabric]) -> (WindowMade, Vec<Matter>) {
    let job = Job {
        fabrics: fabrics.to_vec(),
        windows: vec![order.clone()],
        ..Job::default()
    };
    let (mut work, findings) = work(&job);
    (
        work.windows.remove(0),
        findings.into_iter().map(|finding| finding.matter).collect(),
    )
}

/// The answer for one panel that hangs alone on a rod of just its finished width, or on one of
/// 40 in where that does not say.
pub fn alone(order: &PanelOrder, cloth: &Fabric) -> (Option<PanelMade>, Vec<Matter>) {
    let length = match order.width.finished {
        Some(FinishedOrder::Exact(width)) => width,
        _ => inches(40),
    };
    let (mut window, matters) = made(
        &window(length, vec![order.clone()], &[0]),
        std::slice::from_ref(cloth),
    );
    (window.panels.remove(0), matters)
}

/// The same for a panel nothing is wrong with.
pub fn sound(order: &PanelOrder) -> PanelMade {
    let (panel, matters) = alone(order, &cloth());
    assert_eq!(matters, []);
    panel.unwrap()
}

pub fn at(across: Length, down: Length) -> (Proportion, Proportion) {
    (Proportion::fixed(across), Proportion::fixed(down))
}

pub fn from(across: i64, down: i64) -> OutlineStep {
    let (across, down) = at(inches(across), inches(down));
    OutlineStep::From { across, down }
}

pub fn to(across: i64, down: i64) -> OutlineStep {
    let (across, down) = at(inches(across), inches(down));
    OutlineStep::To { across, down }
}

pub fn by(across: i64, down: i64) -> OutlineStep {
    let (across, down) = at(inches(across), inches(down));
    OutlineStep::By { across, down }
}

/// An arc to a point.
pub fn arc(across: i64, down: i64, arc: ArcOrder) -> OutlineStep {
    let (across, down) = at(inches(across), inches(down));
    OutlineStep::ArcTo { across, down, arc }
}

/// An arc through a point.
pub fn through(across: i64, down: i64) -> ArcOrder {
    let (across, down) = at(inches(across), inches(down));
    ArcOrder::Through { across, down }
}

/// An arc that swells so far from the straight line.
pub fn bulge(inches: i64, outward: bool) -> ArcOrder {
    ArcOrder::Bulge {
        bulge: Proportion::fixed(Length::inches(inches)),
        outward,
    }
}

/// An arc of this radius.
pub fn radius(inches: i64, outward: bool) -> ArcOrder {
    ArcOrder::Radius {
        radius: Proportion::fixed(Length::inches(inches)),
        outward,
    }
}

/// A cubic curve to the last of three points, drawn toward the first two.
pub fn curve(first: (i64, i64), second: (i64, i64), to: (i64, i64)) -> OutlineStep {
    let point = |(across, down)| at(inches(across), inches(down));
    let (across, down) = point(to);
    OutlineStep::CurveTo {
        across,
        down,
        first: point(first),
        second: point(second),
    }
}

/// Scallops to a point.
pub fn scallops(to: (i64, i64), number: ScallopNumber, depth: i64) -> OutlineStep {
    let (across, down) = at(inches(to.0), inches(to.1));
    OutlineStep::Scallops {
        across,
        down,
        number,
        depth: Proportion::fixed(inches(depth)),
        outward: true,
    }
}

/// A notch: middle and level, mouth and depth.
pub fn notch(middle: (i64, i64), size: (i64, i64), square: bool) -> OutlineStep {
    let ((across, down), (width, depth)) = (
        at(inches(middle.0), inches(middle.1)),
        at(inches(size.0), inches(size.1)),
    );
    OutlineStep::Notch {
        across,
        down,
        width,
        depth,
        square,
    }
}

pub fn outline(half: bool, steps: &[OutlineStep]) -> Outline {
    Outline {
        name: String::from("wave"),
        half,
        steps: steps.to_vec(),
        names: BTreeMap::new(),
    }
}

/// A knife pleat every so often all the way: `pleats` of them, so deep, all pointing left.
pub fn knives(pleats: u32, depth: Length) -> PleatRule {
    let order = PleatOrder::new(PleatKind::Knife, Ranged::fixed(depth));
    let steps = [
        StepKind::Plain(Ranged::fixed(inches(2))),
        StepKind::Repeat {
            count: Ranged::fixed(pleats),
            steps: vec![
                PleatStep {
                    number: 2,
                    kind: StepKind::Pleat(order),
                },
                PleatStep {
                    number: 3,
                    kind: StepKind::Plain(Ranged::fixed(inches(3))),
                },
            ],
        },
        StepKind::Rest,
    ];
    let steps = steps.into_iter().zip([0, 1, 4]);
    PleatRule {
        name: String::from("shingle"),
        start: Start::Left,
        mirrored: false,
        steps: steps
            .map(|(kind, number)| PleatStep { number, kind })
            .collect(),
        layers: None,
        print: None,
        folding_error: None,
        turn_of_cloth: None,
    }
}

/// An arch 12 in wide and 6 in high, in a lower edge that is level.
pub fn arch() -> [OutlineStep; 5] {
    [
        from(0, 14),
        to(14, 14),
        arc(26, 14, bulge(6, false)),
        to(40, 14),
        OutlineStep::UpToHeading,
    ]
}

/// Where the second cloth shrinks so much and the first does not, it is told of this layer, and of
/// nothing else.
#[track_caller]
pub fn assert_told_to_shrink_more(order: PanelOrder, layer: Layer, shrinkage: Ratio) {
    let shrinking = Fabric {
        shrinkage,
        ..cloth()
    };
    let window = window(inches(40), vec![order], &[0]);
    let (_, matters) = made(&window, &[cloth(), shrinking]);
    let told = MakingMatter::LayerShrinksMore {
        layer,
        face: ratio(0, 1),
        behind: shrinkage,
    };
    assert_eq!(matters, [Matter::Making(told)]);
}
