//! Jobs made by hand, and their packets.

#![expect(
    clippy::expect_used,
    reason = "a test stops at the first broken promise"
)]

use std::ops::ControlFlow;

use pelmet_driver::{LaidCloth, Parts, assemble, cloths_to_lay};
use pelmet_measure::{Length, Ratio, Style};
use pelmet_model::{
    Allowance, Board, Cut, EdgeAllowances, Fabric, FastenerOrder, Finding, FinishedOrder,
    FoldPlace, Heading, Job, LayerMaking, Making, MakingNotions, Match, Matter, Motif, Outline,
    OutlineStep, PanelOrder, PieceMatter, PleatKind, PleatOrder, PleatRule, PleatStep, PriceOrder,
    Proportion, Railroad, Ranged, Repeat, Rod, Start, StepKind, SupportOrder, TapeOrder,
    TowardOrder, Way, WidthOrder, WindowOrder, Work,
};
use pelmet_packet::Packet;
use pelmet_workroom::work;

/// A job with what is needed to print it.
pub struct Ordered {
    pub title: &'static str,
    pub style: Style,
    pub currency: Option<&'static str>,
    pub job: Job,
}

impl Ordered {
    /// The sums of the job and every cloth laid. Nothing is found against either but a seam that
    /// shows.
    pub fn worked(&self) -> (Work, Vec<LaidCloth>) {
        let (work, mut findings) = work(&self.job);
        let seam =
            |found: &Finding| matches!(found.matter, Matter::Piece(PieceMatter::SeamShows { .. }));
        findings.retain(|found| !seam(found));
        assert_eq!(findings, []);
        let laid = cloths_to_lay(&self.job, &work, &self.style)
            .into_iter()
            .map(|to_lay| {
                let layout = to_lay
                    .lay(1, &mut |_| ControlFlow::Continue(()))
                    .expect("the pieces of a test job can be laid");
                assert_eq!(to_lay.findings(&layout), []);
                LaidCloth {
                    to_lay,
                    layout,
                    ways: vec![],
                }
            })
            .collect();
        (work, laid)
    }

    /// The packet of the job.
    pub fn packet(&self) -> Packet {
        let (work, laid) = self.worked();
        assemble(Parts {
            title: self.title,
            style: self.style,
            currency: self.currency,
            job: &self.job,
            work: &work,
            laid: &laid,
            diagnostics: &[],
            expectations: Vec::new(),
        })
        .expect("a job without findings has a packet")
    }
}

/// Three layered valances of one room, in inches: wings, bibs, and bridges over the joins.
pub fn reading_room() -> Ordered {
    let fabrics = vec![kelp_stripe(), sand_twill()];
    let windows = vec![bench("bench-left", 72, 64), bench("bench-right", 66, 58)];
    Ordered {
        title: "Reading room",
        style: Style::INCHES,
        currency: Some("USD"),
        job: Job {
            fabrics,
            windows,
            ..Job::default()
        },
    }
}

/// A shelf valance in box pleats, wider than its cloth, and a gathered one in a rod pocket; metric,
/// with accents and a name that goes on.
pub fn winter_garden() -> Ordered {
    Ordered {
        title: "Jardin d’hiver, côté cour",
        style: Style::METRIC,
        currency: None,
        job: Job {
            fabrics: vec![toile(), voile()],
            windows: vec![shelf(), gathered()],
            ..Job::default()
        },
    }
}

fn inches(numerator: i64, denominator: i64) -> Length {
    Length::inch_fraction(numerator, denominator)
}

fn inch(whole: i64) -> Length {
    Length::inches(whole)
}

fn mm(whole: i64) -> Length {
    Length::millimetres(whole)
}

fn price(hundredths: i128, per: Length) -> Option<PriceOrder> {
    Some(PriceOrder {
        amount: Ratio::new(hundredths, 100),
        per,
    })
}

fn kelp_stripe() -> Fabric {
    Fabric {
        name: String::from("kelp-stripe"),
        width: inch(54),
        selvage: inches(1, 2),
        repeat: Some(Repeat {
            along: Some(inches(25, 2)),
            across: Some(inch(9)),
            matching: Match::Straight,
        }),
        way: Way::OneWay,
        railroad: Railroad::Never,
        print_begins: None,
        flaws: vec![],
        shear_gap: inches(1, 4),
        bolt_length: None,
        shrinkage: Ratio::new(0, 1),
        grams_per_square_metre: Some(Ratio::new(210, 1)),
        thickness: None,
        price: price(32_00, Length::YARD),
    }
}

fn sand_twill() -> Fabric {
    Fabric {
        name: String::from("sand-twill"),
        repeat: None,
        way: Way::Any,
        price: price(14_50, Length::YARD),
        ..kelp_stripe()
    }
}

/// One window of the reading room; every one has the same panels.
fn bench(name: &str, rod: i64, opening: i64) -> WindowOrder {
    let wing = PanelOrder {
        name: String::from("wing"),
        width: exactly(inch(18)),
        drop: inch(17),
        outline: stepped(inch(17)),
        pleats: None,
        heading: over_rod(),
        making: pillowcase(),
        face: 0,
        interlining: None,
        lining: Some(1),
        band: None,
        covers: None,
        cut: Cut::OnFold,
    };
    let bib = PanelOrder {
        name: String::from("bib"),
        width: WidthOrder {
            finished: Some(FinishedOrder::Fill {
                least: Some(inch(10)),
                most: Some(inch(30)),
            }),
            ..no_width()
        },
        cut: Cut::Open,
        ..wing.clone()
    };
    let bridge = PanelOrder {
        name: String::from("bridge"),
        width: WidthOrder {
            flat: Some(inch(28)),
            ..no_width()
        },
        drop: inch(13),
        outline: Outline::straight(inch(13)),
        pleats: Some(fan()),
        face: 1,
        band: None,
        covers: Some(inches(3, 2)),
        ..wing.clone()
    };
    WindowOrder {
        name: name.to_owned(),
        opening: Some((inch(opening), inch(52))),
        support: brass_pole(inch(rod)),
        top_at: Some(inch(86)),
        returns: Length::ZERO,
        public_room: false,
        overlap: Length::ZERO,
        panels: vec![wing, bib, bridge],
        row: vec![0, 1, 1, 0],
        over_joins: vec![2],
        motif: Some(Motif {
            panel: 1,
            below_heading: inch(8),
        }),
    }
}

fn no_width() -> WidthOrder {
    WidthOrder::default()
}

fn exactly(finished: Length) -> WidthOrder {
    WidthOrder {
        finished: Some(FinishedOrder::Exact(finished)),
        ..no_width()
    }
}

fn brass_pole(length: Length) -> SupportOrder {
    SupportOrder::Rod(Rod {
        name: String::from("brass-pole"),
        length,
        diameter: inches(9, 8),
        projection: Some(inch(3)),
        wall: Some(Length::from_nanometres(1_200_000)),
        material: Some(String::from("brass")),
        brackets: Some(3),
        sag_limit: None,
    })
}

fn over_rod() -> Heading {
    Heading::OverRod {
        tail: inch(5),
        fastener: Some(FastenerOrder {
            name: String::from("hook-and-loop"),
            width: inches(3, 4),
            inset: inches(1, 2),
        }),
    }
}

/// Half an outline with a step at its side.
fn stepped(drop: Length) -> Outline {
    let at = |part, plus| Proportion { part, plus };
    let (none, all) = (Ratio::new(0, 1), Ratio::new(1, 1));
    Outline {
        name: String::from("stepped"),
        half: true,
        steps: vec![
            OutlineStep::From {
                across: Proportion::fixed(Length::ZERO),
                down: at(none, drop),
            },
            OutlineStep::To {
                across: at(all, -inch(3)),
                down: at(none, drop),
            },
            OutlineStep::To {
                across: at(all, -inch(3)),
                down: at(none, drop - inch(4)),
            },
            OutlineStep::To {
                across: at(all, Length::ZERO),
                down: at(none, drop - inch(4)),
            },
            OutlineStep::UpToHeading,
        ],
        names: std::collections::BTreeMap::new(),
    }
}

/// Seams all round, fused, turned through the top; the lining half an inch longer.
fn pillowcase() -> Making {
    let seam = Allowance::Seam(inches(3, 8));
    let edges = EdgeAllowances::all(seam);
    Making {
        name: String::from("pillowcase"),
        face: LayerMaking {
            edges,
            longer: Length::ZERO,
            wider: Length::ZERO,
        },
        interlining: None,
        lining: Some(LayerMaking {
            edges,
            longer: inches(1, 2),
            wider: inches(1, 4),
        }),
        self_lined: false,
        band: None,
        mitred: false,
        seam: inches(3, 8),
        join: inches(1, 2),
        tape: Some(TapeOrder {
            width: inches(3, 8),
            top: true,
            sides: true,
            lower: true,
            roll: Some(Length::YARD * 25),
        }),
        turning_opening: Some(inch(5)),
        stack: None,
        notions: MakingNotions::default(),
        work: vec![],
        steps: vec![],
    }
}

/// Three knives on each side of the centre, laid toward it, deeper and farther apart outward: each
/// begins where the one before it ends behind.
fn fan() -> PleatRule {
    let knife = |number, depth, place| PleatStep {
        number,
        kind: StepKind::Pleat(PleatOrder {
            toward: TowardOrder::Centre,
            place: Some(place),
            ..PleatOrder::new(PleatKind::Knife, Ranged::fixed(depth))
        }),
    };
    PleatRule {
        name: String::from("fan"),
        start: Start::Centre,
        mirrored: true,
        steps: vec![
            knife(0, inches(3, 4), FoldPlace::At(inch(2))),
            knife(1, inches(5, 4), FoldPlace::On(inches(13, 4))),
            knife(2, inch(2), FoldPlace::On(inches(21, 4))),
        ],
        layers: Some(5),
        print: None,
        folding_error: Some(inches(1, 32)),
        turn_of_cloth: None,
    }
}

fn toile() -> Fabric {
    Fabric {
        name: String::from("toile-à-rayures"),
        width: mm(1400),
        selvage: mm(10),
        repeat: Some(Repeat {
            along: Some(mm(640)),
            across: None,
            matching: Match::Straight,
        }),
        way: Way::OneWay,
        railroad: Railroad::Never,
        print_begins: None,
        flaws: vec![],
        shear_gap: Length::ZERO,
        bolt_length: Some(mm(5000)),
        shrinkage: Ratio::new(3, 100),
        grams_per_square_metre: None,
        thickness: None,
        price: price(24_90, Length::METRE),
    }
}

fn voile() -> Fabric {
    Fabric {
        name: String::from("voile"),
        width: mm(3000),
        repeat: None,
        bolt_length: None,
        shrinkage: Ratio::new(0, 1),
        price: None,
        ..toile()
    }
}

/// Along the edge of a board: one panel, hemmed, its cloth joined where the pleats hide the seams.
fn shelf() -> WindowOrder {
    let panel = PanelOrder {
        name: String::from("lambrequin-de-la-grande-fenêtre-du-fond"),
        width: exactly(mm(2400)),
        drop: mm(450),
        outline: Outline::straight(mm(450)),
        pleats: Some(even_box()),
        heading: Heading::OnBoard {
            lap: Some(mm(90)),
            fastener: Some(FastenerOrder {
                name: String::from("hook-and-loop"),
                width: mm(20),
                inset: mm(10),
            }),
        },
        making: hemmed(),
        face: 0,
        interlining: None,
        lining: None,
        band: None,
        covers: None,
        cut: Cut::Open,
    };
    WindowOrder {
        name: String::from("fenêtre-sud"),
        opening: Some((mm(2300), mm(1800))),
        support: SupportOrder::Board(Board {
            name: String::from("planche"),
            length: mm(2200),
            depth: mm(100),
            thickness: Some(mm(18)),
        }),
        top_at: Some(mm(2450)),
        returns: mm(100),
        public_room: false,
        overlap: Length::ZERO,
        panels: vec![panel],
        row: vec![0],
        over_joins: Vec::new(),
        motif: None,
    }
}

/// In a pocket on a thin rod, two panels with an overlap.
fn gathered() -> WindowOrder {
    let panel = PanelOrder {
        name: String::from("brise-bise"),
        width: WidthOrder {
            finished: Some(FinishedOrder::Exact(mm(620))),
            fullness: Some(Ratio::new(2, 1)),
            ..no_width()
        },
        drop: mm(600),
        outline: Outline::straight(mm(600)),
        pleats: None,
        heading: Heading::RodPocket {
            pocket: None,
            ease: mm(10),
            above: mm(30),
            turn: mm(10),
        },
        making: hemmed(),
        face: 1,
        interlining: None,
        lining: None,
        band: None,
        covers: None,
        cut: Cut::Open,
    };
    WindowOrder {
        name: String::from("fenêtre-est"),
        opening: None,
        support: SupportOrder::Rod(Rod {
            name: String::from("tringle"),
            length: mm(1200),
            diameter: mm(12),
            projection: None,
            wall: None,
            material: None,
            brackets: None,
            sag_limit: None,
        }),
        top_at: None,
        returns: Length::ZERO,
        public_room: false,
        overlap: mm(40),
        panels: vec![panel],
        row: vec![0, 0],
        over_joins: Vec::new(),
        motif: None,
    }
}

fn hemmed() -> Making {
    let edges = EdgeAllowances {
        top: Allowance::Seam(mm(15)),
        sides: Allowance::SingleHem {
            depth: mm(20),
            turn: mm(10),
        },
        lower: Allowance::DoubleHem(mm(40)),
        band: Allowance::Seam(mm(15)),
    };
    Making {
        name: String::from("ourlé"),
        face: LayerMaking {
            edges,
            longer: Length::ZERO,
            wider: Length::ZERO,
        },
        interlining: None,
        lining: None,
        self_lined: false,
        band: None,
        mitred: false,
        seam: mm(15),
        join: mm(15),
        tape: None,
        turning_opening: None,
        stack: None,
        notions: MakingNotions::default(),
        work: vec![],
        steps: vec![],
    }
}

/// Box pleats with a margin at each end, as many as fit.
fn even_box() -> PleatRule {
    let plain = |number, least, ideal, most| PleatStep {
        number,
        kind: StepKind::Plain(Ranged::between(mm(least), mm(most), mm(ideal))),
    };
    let pleat = PleatOrder::new(PleatKind::Box, Ranged::fixed(mm(40)));
    let steps = vec![
        PleatStep {
            number: 2,
            kind: StepKind::Pleat(pleat),
        },
        plain(3, 60, 90, 120),
    ];
    PleatRule {
        name: String::from("plis-creux"),
        start: Start::Left,
        mirrored: false,
        steps: vec![
            plain(0, 50, 50, 50),
            PleatStep {
                number: 1,
                kind: StepKind::Repeat {
                    count: Ranged::between(1, 40, 14),
                    steps,
                },
            },
            plain(4, 50, 50, 50),
        ],
        layers: None,
        print: None,
        folding_error: None,
        turn_of_cloth: None,
    }
}
