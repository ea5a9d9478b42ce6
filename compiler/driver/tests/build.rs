//! From the text of a design to its packet, or to what keeps it from having one.

#![expect(clippy::panic, reason = "a test stops at the first broken promise")]

use std::collections::BTreeMap;

use pelmet_design::{Project, ReadFinding};
use pelmet_diagnostics::{Code, Example, codes, render};
use pelmet_driver::{Built, build};

struct Files(BTreeMap<&'static str, Vec<u8>>);

impl Project for Files {
    fn read(&self, path: &str) -> Result<Vec<u8>, ReadFinding> {
        self.0.get(path).cloned().ok_or(ReadFinding::NotFound)
    }
}

fn built(text: impl Into<Vec<u8>>) -> Built {
    build(
        "job.pelmet",
        &Files(BTreeMap::from([("job.pelmet", text.into())])),
    )
}

fn slugs(built: &Built) -> Vec<&'static str> {
    built
        .diagnostics
        .iter()
        .map(|found| found.code.slug)
        .collect()
}

fn plain(built: &Built) -> String {
    render::plain(&built.diagnostics, &built.sources)
}

/// A job of two windows, with room for further lines and for another panel width.
fn job(width: &str, lines: &str) -> String {
    format!(
        "\
units inches
job \"Two bays\"
currency \"$\"
fabric sailcloth {{ width: 54 in, price: 9.50 per yd }}
rod pole(length) {{ length: length, diameter: 1 in }}
make seamed {{ seam: 1/2 in, lining: none }}
treatment valance {{
    panel front {{
        {width}
        drop: 14 in
        head: over rod, tail 4 in
        make: seamed
        face: sailcloth
    }}
    row: front
}}
window bay-10: valance {{ rod: pole(40 in) }}
window bay-9: valance {{ rod: pole(36 in) }}
{lines}
"
    )
}

#[test]
fn a_sound_design_has_a_packet() {
    let built = built(job(
        "finished width: fill",
        "expect bay-9 front finished width = 36 in",
    ));
    assert_eq!(slugs(&built), Vec::<&str>::new(), "{}", plain(&built));
    let packet = built.packet.expect("nothing was found");
    assert_eq!(packet.title, "Two bays");
    let windows: Vec<&str> = packet
        .windows
        .iter()
        .map(|window| window.name.as_str())
        .collect();
    assert_eq!(windows, ["bay-9", "bay-10"]);
    let came_out: Vec<&str> = packet
        .expectations
        .iter()
        .map(|expected| expected.came_out.as_str())
        .collect();
    assert_eq!(came_out, ["36 in"]);
    assert_eq!(
        packet
            .cloths
            .iter()
            .map(|cloth| cloth.piece_count)
            .sum::<u32>(),
        2
    );
    let cost = packet.cloth_cost.as_ref().map(|cost| cost.text.as_str());
    assert!(cost.is_some_and(|cost| cost.starts_with('$')), "{cost:?}");
    assert!(packet.to_json().ends_with("}\n"));
}

#[test]
fn a_design_without_windows_has_an_empty_packet() {
    for text in ["", "fabric sailcloth { width: 54 in }\n"] {
        let built = built(text);
        assert_eq!(slugs(&built), Vec::<&str>::new(), "{}", plain(&built));
        let packet = built.packet.expect("nothing was found");
        assert!(packet.windows.is_empty() && packet.cloths.is_empty());
    }
}

#[test]
fn expectations_that_are_not_met_say_by_how_much_and_what_made_it_so() {
    let lines = "\
expect front finished width = 40 in within 1/4 in
expect bay-10 covered at most 39 in
expect front pleats at least 2
expect bay-10 front made length = 20 in
expect sailcloth bought at most 1/4 yd
expect bay-10 front finished width = 40 in
";
    let built = built(job("finished width: fill", lines));
    assert!(built.packet.is_none());
    insta::assert_snapshot!(plain(&built));
}

#[test]
fn what_follows_from_a_mistake_is_not_judged() {
    let lines = "\
expect bay-10 front finished width = 2 in
expect bay-10 covered = 2 in
expect bay-9 front drop = 14 in
expect sailcloth bought at most 1/8 yd
";
    let built = built(job("finished width: 38 in", lines));
    assert_eq!(
        slugs(&built),
        ["row-crowded", "row-uncovered"],
        "{}",
        plain(&built)
    );
}

#[test]
fn an_accepted_warning_is_in_the_packet_with_its_reason() {
    let text = "\
units inches
fabric sailcloth { width: 54 in }
rod pole { length: 40 in, diameter: 1 in }
make seamed { seam: 1/2 in, lining: none }
treatment valance {
    panel side {
        finished width: 20 in
        drop: 14 in
        head: over rod, tail 4 in
        make: seamed
        face: sailcloth
    }
    panel bridge like side { finished width: 1 in }
    row: side, side
    over joins: bridge
}
window bay: valance { rod: pole }
accept join-thinly-covered: \"the join is stitched\"
";
    let built = built(text);
    assert_eq!(slugs(&built), ["join-thinly-covered"], "{}", plain(&built));
    let packet = built.packet.expect("a warning stops nothing");
    let accepted: Vec<_> = packet
        .warnings
        .iter()
        .map(|one| one.accepted.as_deref())
        .collect();
    assert_eq!(accepted, [Some("the join is stitched")]);
}

#[test]
fn what_goes_wrong_on_the_way_to_the_packet_is_told_by_its_code() {
    for code in [
        &codes::expectation_not_met::CODE,
        &codes::print_leaves_no_room::CODE,
        &codes::too_many_pieces::CODE,
        &codes::longer_than_bolt::CODE,
    ] {
        let failing = built(example(code, code.failing));
        assert_eq!(slugs(&failing), [code.slug], "{}", plain(&failing));
        assert!(failing.packet.is_none(), "{}", code.slug);
        let mend = built(example(code, code.mend));
        assert_eq!(
            slugs(&mend),
            Vec::<&str>::new(),
            "{}: {}",
            code.slug,
            plain(&mend)
        );
        assert!(mend.packet.is_some(), "{}", code.slug);
    }
}

fn example(code: &Code, example: Example) -> Vec<u8> {
    match example {
        Example::Text(text) => text.into(),
        Example::Made { make, .. } => make(),
        _ => panic!("the example of {} is no text", code.slug),
    }
}
