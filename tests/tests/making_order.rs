//! The making order of every method of the library, on panels of every sort.
#![expect(
    clippy::unwrap_used,
    reason = "a test stops at the first broken promise"
)]

use pelmet_diagnostics::render;
use pelmet_packet::{OrderStep, Packet};
use pelmet_sheets::{SheetKind, TextOptions, text};
use pelmet_tests::{Memory, project_at};

/// The names of the library's making methods.
fn methods() -> Vec<&'static str> {
    let text = |file: &pelmet_stdlib::LibraryFile| file.name == "methods";
    let file = pelmet_stdlib::FILES.iter().find(|file| text(file)).unwrap();
    let heads = file
        .text
        .lines()
        .filter_map(|line| line.strip_prefix("make "));
    heads
        .map(|head| head.split(['(', ' ']).next().unwrap())
        .collect()
}

/// What is overridden of a method, and the layers its panels then have.
const LAYERS: [(&str, &str); 3] = [
    ("lining: none, interlining: none", ""),
    ("lining: as face, interlining: none", "lining: felt"),
    (
        "lining: as face, interlining: as face, tape: 3/8 in wide",
        "lining: felt, interlining: felt",
    ),
];

/// How a panel hangs, is pleated and is shaped.
const SORTS: [(&str, &str, &str); 6] = [
    ("folded-over-rod", "box-pleats", "straight"),
    ("over rod, tail 4 in", "none", "scalloped"),
    ("pocket-on-rod", "gathered", "straight"),
    ("plain", "pinch-pleats", "stepped"),
    ("folded-over-rod", "knives-to-centre", "arched"),
    ("plain", "tucks", "notched"),
];

fn design(method: &str, (own, layers): (&str, &str), sort: (&str, &str, &str)) -> String {
    let (heading, pleats, outline) = sort;
    format!(
        "use standard
fabric felt {{ width: 36 in }}
rod pole {{ length: 40 in, diameter: 1 in }}
make own like {method} {{ {own} }}
treatment single {{
    panel front {{
        finished width: fill
        drop: 20 in
        outline: {outline}
        pleats: {pleats}
        head: {heading}
        make: own
        face: felt
        {layers}
    }}
    row: front
}}
window porch: single {{ rod: pole, public room: yes }}
"
    )
}

/// Every step has words, every figure in them is filled in, and what follows the last one is the
/// hang check.
#[track_caller]
fn assert_whole(what: &str, steps: &[OrderStep]) {
    for step in steps {
        assert!(!step.words.is_empty(), "{what}: {}", step.name);
        for words in &step.words {
            let whole =
                !words.contains(['{', '}']) && !words.contains("  ") && words.ends_with('.');
            assert!(whole, "{what}: {}: {words}", step.name);
        }
    }
    let names: Vec<&str> = steps.iter().map(|step| &*step.name).collect();
    assert_eq!(names.first(), Some(&"cloth check"), "{what}");
    assert!(
        names.ends_with(&["hang", "hang check"]),
        "{what}: {names:?}"
    );
}

fn every_step(packet: &Packet) -> Vec<&[OrderStep]> {
    let panels = packet.windows.iter().flat_map(|window| &window.panels);
    panels.map(|panel| &*panel.making_order).collect()
}

#[test]
fn every_method_of_the_library_says_every_figure_of_every_sort_of_panel() {
    let mut made = 0_u32;
    for method in methods() {
        for layers in LAYERS {
            for sort in SORTS {
                let text = design(method, layers, sort);
                let built = Memory::of(&*text).build();
                let absent = built
                    .diagnostics
                    .iter()
                    .any(|report| report.code.slug.starts_with("figure-"));
                let shown = render::plain(&built.diagnostics, &built.sources);
                assert!(!absent, "{text}\n{shown}");
                for steps in built.packet.iter().flat_map(every_step) {
                    made += 1;
                    assert_whole(&text, steps);
                }
            }
        }
    }
    assert!(made >= 90, "only {made} were made");
}

/// A caution that a step names is one the packet explains, and the sheet shows it.
#[test]
fn every_caution_of_a_step_is_told_on_the_sheet() {
    for main in pelmet_tests::designs_below("examples") {
        let packet = project_at(&main).build().packet.unwrap();
        let wide = TextOptions { width: 10_000 };
        let sheet = text(&packet, &[SheetKind::MakingOrder], wide);
        for name in every_step(&packet)
            .iter()
            .copied()
            .flatten()
            .flat_map(|step| &step.cautions)
        {
            let caution = packet.cautions.iter().find(|caution| caution.name == *name);
            assert!(sheet.contains(&caution.unwrap().text), "{main}: {name}");
        }
        assert!(!sheet.contains(['{', '}']), "{main}");
    }
}
