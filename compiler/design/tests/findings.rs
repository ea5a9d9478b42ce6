//! What the workroom finds is told at its places, with sums that come out and lines that mend it.

#![expect(
    clippy::too_many_lines,
    reason = "a table of cases is read from top to bottom"
)]

use std::collections::BTreeMap;

use pelmet_design::{Design, Project, ReadFinding, SourceMap, load, resolve};
use pelmet_diagnostics::{Diagnostic, Diagnostics, Example, Sources, apply_fixes, codes, render};
use pelmet_measure::{Length, Ratio, Style};
use pelmet_model::{
    BandEdge, FastenerOrder, Finding, Job, Layer, MakingMatter, Matter, OutlineLimit,
    OutlineMatter, PanelMeasure, PieceMatter, PleatMatter, RowMatter, Subject, SupportKind,
};
use pelmet_workroom::work;

/// A project of a main file and of what the cases share, where nothing unused is reported.
struct WithHouse<'a>(&'a str);

impl Project for WithHouse<'_> {
    fn read(&self, path: &str) -> Result<Vec<u8>, ReadFinding> {
        match path {
            "main.pelmet" => Ok(self.0.into()),
            "house.pelmet" => Ok(HOUSE.into()),
            _ => Err(ReadFinding::NotFound),
        }
    }
}

const HOUSE: &str = "\
units inches
fabric sailcloth { width: 118 in }
rod pole { length: 60 in, diameter: 1 in }
board shelf { length: 60 in, depth: 4 in }
make seamed { seam: 1/2 in, lining: none }
heading laid { hang: on board, fastener: hook-and-loop 5 in wide }
panel plain { drop: 14 in, head: over rod, tail 4 in, make: seamed, face: sailcloth }
";

/// Everything there is to say of a design.
fn told(text: &str) -> (Vec<Diagnostic>, Sources) {
    let loaded = load("main.pelmet", &WithHouse(text));
    let resolved = resolve(&loaded);
    let (_, findings) = work(&resolved.design.job);
    let mut diagnostics = Diagnostics::new();
    diagnostics.extend(loaded.diagnostics.iter().cloned());
    diagnostics.extend(resolved.diagnostics);
    diagnostics.extend(
        findings
            .iter()
            .map(|finding| resolved.design.report(finding)),
    );
    (diagnostics.settle(&loaded.sources), loaded.sources)
}

/// One window made from what the house has, and from these.
fn design(panels: &str, window: &str, items: &str) -> String {
    format!(
        "\
use \"house.pelmet\"
{items}
treatment valance {{
    {panels}
}}
window kitchen: valance {{ {window} }}
"
    )
}

struct Case {
    code: &'static str,
    panels: &'static str,
    window: &'static str,
    items: &'static str,
    says: &'static [&'static str],
}

const ROD: Case = Case {
    code: "",
    panels: "",
    window: "rod: pole",
    items: "",
    says: &[],
};

const CASES: &[Case] = &[
    Case {
        code: "row-uncovered",
        panels: "panel wing like plain { finished width: 29 in, head: on board }
    row: wing, wing
    returns: 4 in",
        window: "board: shelf",
        says: &[
            "the board `shelf` 60 in + 2 returns of 4 in = 68 in to cover",
            "2 x `wing` 29 in = 58 in of panels",
            "68 in to cover - 58 in covered = 10 in bare",
            "write `finished width: 34 in` for `wing`",
            "`wing`, hangs 2 times",
            "added at both ends",
        ],
        ..ROD
    },
    Case {
        code: "row-crowded",
        panels: "panel wing like plain { finished width: 25 in }
    panel bib like plain { finished width: 18 in }
    row: wing, bib, wing
    overlap: 1 in",
        says: &[
            "2 x `wing` 25 in + `bib` 18 in - 2 x 1 in of overlap = 66 in of panels",
            "66 in of panels - 60 in to cover = 6 in too much",
            "write `finished width: 22 in` for `wing`",
            "taken off at every join",
        ],
        ..ROD
    },
    Case {
        code: "row-uncovered",
        panels: "panel wing like plain { flat width: 60 in, pleats: pair }
    row: wing",
        items: "pleats pair from centre, mirrored { knife 2 in toward centre, fold at 6 in }",
        says: &["the panels of the row, pleated: 52 in", "= 8 in bare"],
        ..ROD
    },
    Case {
        code: "fill-out-of-range",
        panels: "panel wing like plain { finished width: 28 in }
    panel bib like plain { finished width: fill at least 6 in }
    row: wing, bib, wing",
        says: &[
            "the row leaves 4 in for the panel `bib` of `kitchen`, which is to be at least 6 in",
            "60 in to cover - 56 in for the others = 4 in left",
        ],
        ..ROD
    },
    Case {
        code: "fill-out-of-range",
        panels: "panel wing like plain { finished width: 30 in }
    panel bib like plain { finished width: fill }
    row: wing, bib, wing",
        says: &["leaves nothing for the panel `bib` of `kitchen`, which is to be of some width"],
        ..ROD
    },
    Case {
        code: "pleats-do-not-fit",
        panels: "panel wing like plain { cut width: 80 in, pleats: even }
    row: wing",
        items: "pleats even {
    margin 2 in
    repeat: knife 2 in toward left, space 3 in
    margin 2 in
}",
        says: &[
            "11 pleats: a flat width of 78 in",
            "12 pleats: a flat width of 85 in",
            "write `cut width: 79 in` or `cut width: 86 in`",
        ],
        ..ROD
    },
    Case {
        code: "pleats-do-not-fit",
        panels: "panel wing like plain { finished width: fill, pleats: even }
    row: wing",
        items: "pleats even {
    margin 2 in
    repeat: knife 2 in toward left, space 3 in
    margin 2 in
}",
        says: &[
            "a finished width of 60 in",
            "help: give a space of the pleats a range",
        ],
        ..ROD
    },
    Case {
        code: "pleats-run-together",
        panels: "panel wing like plain { flat width: 68 in, pleats: pair }
    row: wing",
        items: "pleats pair {
    knife 2 in toward left, fold at 10 in
    knife 2 in toward left, fold at 12 1/2 in
}",
        says: &[
            "need the same 1 1/2 in of flat cloth twice",
            "write `fold at 14 in` or more",
        ],
        ..ROD
    },
    Case {
        code: "join-not-covered",
        panels: "panel wing like plain { finished width: 30 in }
    panel bridge like plain { finished width: 6 in, covers: 10 in / 3 each side }
    row: wing, wing
    over joins: bridge",
        says: &[
            "by 3 in on each side, not by about 3 21/64 in",
            "`finished width: 169.333334 mm`",
        ],
        ..ROD
    },
    Case {
        code: "lining-and-method-differ",
        panels: "panel wing like plain { finished width: 60 in, make: lined }
    row: wing",
        items: "make lined { seam: 1/2 in, lining: as face }",
        says: &[
            "its making method `lined` needs one",
            "such as `lining: sailcloth`",
        ],
        ..ROD
    },
    Case {
        code: "drop-too-short",
        panels: "panel wing like plain { finished width: 60 in, drop: 3 in, head: frilled }
    row: wing",
        items: "heading frilled { hang: rod pocket, pocket: 2 in, above: 1 1/2 in }",
        says: &[
            "the frill and the pocket takes 3 1/2 in",
            "write `drop: 3 1/2 in` or more",
        ],
        ..ROD
    },
    Case {
        code: "fastener-wider-than-tail",
        panels: "panel wing like plain { finished width: 60 in, head: laid }
    row: wing",
        window: "board: shelf",
        says: &[
            "5 in wide, and its lap 4 in long",
            "write a lap of more than 5 in",
        ],
        ..ROD
    },
    Case {
        code: "outline-not-started",
        panels: "panel wing like plain { finished width: 60 in, outline: shape }
    row: wing",
        items: "outline shape whole {
    from (0, drop)
    from (width, drop)
    up to heading
}",
        says: &["begins twice", "write `to` for this `from`"],
        ..ROD
    },
    Case {
        code: "heading-not-whole",
        panels: "panel wing like plain { finished width: 60 in, outline: shape }
    row: wing",
        items: "outline shape whole {
    from (2 in, drop)
    to (width, drop)
    up to heading
}",
        says: &[
            "2 in short of the edge",
            "begin at the left edge, such as `from (0, drop)`",
        ],
        ..ROD
    },
    Case {
        code: "outline-outside-size",
        panels: "panel wing like plain { finished width: 60 in, outline: shape }
    row: wing",
        items: "outline shape half {
    from (0, drop)
    to (width + 1 in, drop)
    to (width, 3 in)
    up to heading
}",
        says: &["goes 1 in past the edge", "the outline has 30 in there"],
        ..ROD
    },
    Case {
        code: "outline-outside-size",
        panels: "panel wing like plain { finished width: 60 in, outline: shape }
    row: wing",
        items: "outline shape half {
    from (-1 in, drop)
    to (width, drop)
    up to heading
}",
        says: &["goes 1 in across the fold"],
        ..ROD
    },
    Case {
        code: "widths-disagree",
        panels:
            "panel wing like plain { finished width: 60 in, fullness: 2 times, flat width: 110 in }
    row: wing",
        says: &["flat width 110 in, flat width that the fullness makes 120 in: 10 in apart"],
        ..ROD
    },
    Case {
        code: "fold-crosses-centre",
        panels: "panel wing like plain { flat width: 68 in, pleats: pair }
    row: wing",
        items: "pleats pair from left, mirrored { knife 2 in toward centre, fold at 31 in }",
        says: &[
            "crosses the centre by 1 in",
            "add 1 in of plain cloth between this pleat",
        ],
        ..ROD
    },
];

#[test]
fn reports_give_the_numbers_and_the_lines_to_write() {
    for case in CASES {
        let text = design(case.panels, case.window, case.items);
        let (diagnostics, sources) = told(&text);
        let printed = render::plain(&diagnostics, &sources);
        let slugs: Vec<&str> = diagnostics
            .iter()
            .map(|diagnostic| diagnostic.code.slug)
            .collect();
        assert_eq!(slugs, [case.code], "{text}\n{printed}");
        for words in case.says {
            assert!(printed.contains(words), "{words}\n{printed}");
        }
    }
}

/// The text of an example, if it is one file that is a text.
fn text_of(example: Example) -> Option<String> {
    match example {
        Example::Text(text) => Some(text.to_owned()),
        Example::Made { make, .. } => String::from_utf8(make()).ok(),
        Example::Files(_) | Example::Told(_) => None,
    }
}

#[test]
fn a_change_offered_for_a_finding_mends_it() {
    let mut mended = 0;
    for (_, code) in every_matter() {
        let code = codes::by_slug(code).unwrap();
        let Some(text) = text_of(code.failing) else {
            continue;
        };
        let (diagnostics, sources) = told(&text);
        for fix in diagnostics
            .iter()
            .filter_map(|diagnostic| diagnostic.fix.as_ref())
        {
            let file = fix.edits.first().unwrap().span.file;
            let changed = apply_fixes(sources.text(file), &fix.edits).unwrap();
            let (left, _) = told(&changed);
            let slugs: Vec<&str> = left.iter().map(|diagnostic| diagnostic.code.slug).collect();
            assert!(!slugs.contains(&code.slug), "{changed}\n{slugs:?}");
            mended += 1;
        }
    }
    assert!(mended >= 7, "only {mended} findings offer a change");
}

#[test]
fn findings_of_what_is_not_there_are_told_all_the_same() {
    let design = Design {
        title: String::new(),
        style: Style::METRIC,
        currency: None,
        job: Job::default(),
        expectations: Vec::new(),
        source_map: SourceMap::default(),
        suppressions: Vec::new(),
    };
    let subjects = [
        Subject::Window(7),
        Subject::Panel {
            window: 7,
            panel: 3,
        },
    ];
    for (matter, slug) in every_matter() {
        for subject in subjects {
            let diagnostic = design.report(&Finding {
                subject,
                matter: matter.clone(),
            });
            assert_eq!(diagnostic.code.slug, slug);
            assert!(
                diagnostic.primary().is_some() && !diagnostic.help.is_empty(),
                "{slug}"
            );
        }
    }
}

#[test]
fn every_finding_has_a_code_of_its_own() {
    let mut counts: BTreeMap<&str, usize> = BTreeMap::new();
    for (_, slug) in every_matter() {
        *counts.entry(slug).or_default() += 1;
    }
    assert!(counts.values().all(|count| *count == 1), "{counts:?}");
}

/// One finding of every kind, and its code.
fn every_matter() -> Vec<(Matter, &'static str)> {
    [
        of_any_kind(pleat_matters()),
        of_any_kind(outline_matters()),
        of_any_kind(row_matters()),
        of_any_kind(piece_matters()),
        of_any_kind(making_matters()),
    ]
    .concat()
}

fn of_any_kind<M: Into<Matter>>(
    matters: impl IntoIterator<Item = (M, &'static str)>,
) -> Vec<(Matter, &'static str)> {
    let matters = matters.into_iter();
    matters
        .map(|(matter, slug)| (matter.into(), slug))
        .collect()
}

/// The largest lengths there are, so that a sum gone wrong shows.
const MUCH: Length = Length::from_nanometres(i64::MAX);
const LITTLE: Length = Length::from_nanometres(i64::MIN);

fn pleat_matters() -> Vec<(PleatMatter, &'static str)> {
    let (step, amount) = (usize::MAX, LITTLE);
    vec![
        (
            PleatMatter::TurnNotCounted {
                layer: Layer::Lining,
            },
            "turn-of-cloth-not-counted",
        ),
        (
            PleatMatter::StripShows {
                step: usize::MAX,
                length: MUCH,
                depth: LITTLE,
            },
            "strip-shows",
        ),
        (PleatMatter::WidthMissing, "width-missing"),
        (
            PleatMatter::NoFit {
                wanted: MUCH,
                finished: true,
                below: Some((LITTLE, u32::MAX)),
                above: None,
            },
            "pleats-do-not-fit",
        ),
        (
            PleatMatter::WidthsContradict {
                flat: MUCH,
                finished: LITTLE,
                take_up: MUCH,
                turn: Length::ZERO,
            },
            "widths-contradict",
        ),
        (
            PleatMatter::TakesTooMuch {
                flat: LITTLE,
                taken: MUCH,
            },
            "pleats-take-too-much",
        ),
        (
            PleatMatter::FoldCrossesCentre {
                step,
                amount,
                fold_at: MUCH,
                taken_up: LITTLE,
            },
            "fold-crosses-centre",
        ),
        (
            PleatMatter::FoldOverrunsEdge { step, amount },
            "fold-overruns-edge",
        ),
        (
            PleatMatter::EdgeInsideFold {
                step,
                fold_at: MUCH,
                taken_up: LITTLE,
            },
            "edge-inside-fold",
        ),
        (
            PleatMatter::PleatsRunTogether {
                first: step,
                second: step,
                ends: MUCH,
                begins: LITTLE,
            },
            "pleats-run-together",
        ),
        (
            PleatMatter::FoldOnFold {
                step,
                layers: u32::MAX,
                intended: 0,
                from: LITTLE,
                to: MUCH,
            },
            "fold-on-fold",
        ),
        (
            PleatMatter::TooManyPleats { step, limit: 0 },
            "too-many-pleats",
        ),
        (PleatMatter::NoPrintAcross, "no-print-across"),
        (
            PleatMatter::PrintOutOfReach {
                step,
                times: i64::MAX,
                besides: LITTLE,
                repeat: MUCH,
                below: None,
                above: MUCH,
            },
            "print-out-of-reach",
        ),
        (
            PleatMatter::NothingFollowsPrint { step },
            "nothing-follows-print",
        ),
    ]
}

fn outline_matters() -> Vec<(OutlineMatter, &'static str)> {
    let (step, amount) = (usize::MAX, MUCH);
    vec![
        (OutlineMatter::NoStart { step: None }, "outline-not-started"),
        (
            OutlineMatter::NotClosed {
                step,
                across: MUCH,
                down: LITTLE,
            },
            "outline-not-closed",
        ),
        (
            OutlineMatter::HeadingShort {
                step,
                amount,
                width: LITTLE,
            },
            "heading-not-whole",
        ),
        (
            OutlineMatter::OutsideSize {
                step,
                amount,
                beyond: OutlineLimit::Edge,
                limit: MUCH,
            },
            "outline-outside-size",
        ),
        (
            OutlineMatter::ShortOfDrop { amount },
            "outline-short-of-drop",
        ),
        (
            OutlineMatter::CrossesItself {
                first: step,
                second: 0,
            },
            "outline-crosses-itself",
        ),
        (
            OutlineMatter::TooManyCorners { limit: 0 },
            "too-many-corners",
        ),
        (OutlineMatter::NoLength { step }, "edge-without-length"),
        (
            OutlineMatter::TooNarrow {
                step,
                width: LITTLE,
                needed: MUCH,
            },
            "too-narrow-for-allowance",
        ),
    ]
}

fn row_matters() -> Vec<(RowMatter, &'static str)> {
    let (panel, amount) = (usize::MAX, LITTLE);
    let (to_cover, covered, covers) = (MUCH, LITTLE, LITTLE);
    vec![
        (
            RowMatter::RodSags {
                sag: MUCH,
                limit: LITTLE,
                span: MUCH,
                spacing: LITTLE,
                brackets: Some(5),
            },
            "rod-sags",
        ),
        (
            RowMatter::Uncovered {
                amount,
                to_cover,
                covered,
            },
            "row-uncovered",
        ),
        (
            RowMatter::Crowded {
                amount,
                to_cover,
                covered,
            },
            "row-crowded",
        ),
        (
            RowMatter::FillOutOfRange {
                panel,
                share: LITTLE,
                limit: MUCH,
                taken: LITTLE,
                to_cover,
            },
            "fill-out-of-range",
        ),
        (RowMatter::FillOutsideRow { panel }, "fill-outside-row"),
        (RowMatter::Empty, "row-empty"),
        (RowMatter::NotHung { panel }, "panel-not-hung"),
        (RowMatter::NoJoin { panel }, "no-join-to-cover"),
        (
            RowMatter::JoinNotCovered {
                panel,
                covers,
                wanted: MUCH,
                finished: LITTLE,
            },
            "join-not-covered",
        ),
        (
            RowMatter::JoinThinlyCovered {
                panel,
                covers,
                finished: MUCH,
            },
            "join-thinly-covered",
        ),
        (
            RowMatter::OverlapTooWide {
                panel,
                finished: LITTLE,
                overlap: MUCH,
            },
            "overlap-too-wide",
        ),
        (
            RowMatter::ReturnAndProjectionDiffer {
                returns: MUCH,
                projection: LITTLE,
            },
            "return-and-projection-differ",
        ),
        (
            RowMatter::LongerThanHeight {
                panel,
                drop: MUCH,
                height: LITTLE,
            },
            "longer-than-height",
        ),
    ]
}

fn piece_matters() -> Vec<(PieceMatter, &'static str)> {
    let (layer, fullness) = (Layer::Lining, Ratio::new(i128::MAX, 2));
    let fastener = FastenerOrder {
        name: String::from("strip"),
        width: MUCH,
        inset: LITTLE,
    };
    vec![
        (PieceMatter::NoWidth, "panel-without-width"),
        (
            PieceMatter::WidthsDisagree {
                first: PanelMeasure::FlatWidth,
                first_length: MUCH,
                second: PanelMeasure::FinishedWidth,
                second_length: LITTLE,
            },
            "widths-disagree",
        ),
        (
            PieceMatter::NothingLeft {
                size: PanelMeasure::Drop,
                length: LITTLE,
            },
            "nothing-left",
        ),
        (
            PieceMatter::TooLarge {
                size: PanelMeasure::CutLength,
            },
            "size-too-large",
        ),
        (
            PieceMatter::FullnessUnderOne { fullness },
            "fullness-under-one",
        ),
        (
            PieceMatter::HeadingNeedsOther {
                needs: SupportKind::Rod,
            },
            "heading-needs-other",
        ),
        (
            PieceMatter::DropTooShort {
                drop: LITTLE,
                least: MUCH,
            },
            "drop-too-short",
        ),
        (
            PieceMatter::PocketTooSmall {
                pocket: LITTLE,
                least: MUCH,
            },
            "pocket-too-small",
        ),
        (
            PieceMatter::FastenerWiderThanTail {
                fastener,
                tail: LITTLE,
            },
            "fastener-wider-than-tail",
        ),
        (
            PieceMatter::TailShows {
                tail: MUCH,
                drop: LITTLE,
            },
            "tail-shows",
        ),
        (
            PieceMatter::OpeningTooWide {
                opening: MUCH,
                edge: LITTLE,
            },
            "opening-too-wide",
        ),
        (
            PieceMatter::LongerThanBolt {
                layer,
                cut_length: MUCH,
                bolt: LITTLE,
            },
            "longer-than-bolt",
        ),
        (
            PieceMatter::ClothTooNarrow {
                layer,
                usable: LITTLE,
                needed: MUCH,
            },
            "cloth-too-narrow",
        ),
        (
            PieceMatter::SeamShows {
                layer,
                at: LITTLE,
                hidden_at: None,
            },
            "seam-shows",
        ),
        (PieceMatter::HalvesDiffer, "halves-differ"),
        (
            PieceMatter::MotifBelowDrop {
                below_heading: MUCH,
                drop: LITTLE,
            },
            "motif-below-drop",
        ),
        (
            PieceMatter::MotifHidden {
                at: MUCH,
                hidden: (LITTLE, MUCH),
            },
            "motif-hidden",
        ),
        (
            PieceMatter::StackTooThick {
                layers: 3,
                layer: MUCH,
                limit: MUCH,
            },
            "stack-too-thick",
        ),
        (
            PieceMatter::ThicknessMissing {
                layer: Layer::Face,
                limit: MUCH,
            },
            "thickness-missing",
        ),
        (
            PieceMatter::TooManyWidths { layer, limit: 0 },
            "too-many-widths",
        ),
    ]
}

fn making_matters() -> Vec<(MakingMatter, &'static str)> {
    let part = Ratio::new(i128::MAX, 2);
    vec![
        (
            MakingMatter::LayerMismatch {
                layer: Layer::Lining,
                panel_has: false,
            },
            "lining-and-method-differ",
        ),
        (
            MakingMatter::LayerMismatch {
                layer: Layer::Interlining,
                panel_has: true,
            },
            "interlining-and-method-differ",
        ),
        (
            MakingMatter::LayerMismatch {
                layer: Layer::Band(BandEdge::Lower),
                panel_has: false,
            },
            "band-and-method-differ",
        ),
        (
            MakingMatter::FoldNotLevel {
                step: Some(7),
                highest: LITTLE,
                lowest: MUCH,
            },
            "fold-not-level",
        ),
        (MakingMatter::BackUpsideDown, "back-upside-down"),
        (
            MakingMatter::BandTooDeep {
                step: 7,
                room: LITTLE,
                needed: MUCH,
            },
            "band-too-deep",
        ),
        (
            MakingMatter::BandCannotFollow { step: None },
            "band-cannot-follow",
        ),
        (
            MakingMatter::MitreNotSquare {
                step: None,
                across: MUCH,
                down: LITTLE,
                is_curved: false,
                has_side: true,
            },
            "mitre-not-square",
        ),
        (
            MakingMatter::LayerShrinksMore {
                layer: Layer::Lining,
                face: part,
                behind: part,
            },
            "lining-shrinks-more",
        ),
    ]
}
