use insta::assert_snapshot;

use crate::SOUND;
use crate::scratch::Scratch;

/// A striped valance, and a library of cloths it might be made of.
const STRIPED: &str = "\
units inches
currency \"EUR\"
fabric stripe {
    width: 54 in
    repeat: 10 in along, 9 in across
    way: one-way
    price: 24 per yd
}
fabric plain { width: 60 in, price: 15 per yd }
fabric narrow { width: 9 in }
rod pole { length: 81 in, diameter: 1 in }
make seamed { seam: 1/2 in, lining: none }
treatment valance {
    panel front {
        finished width: fill
        drop: 14 in
        head: over rod, tail 4 in
        make: seamed
        face: stripe
    }
    row: front, front, front
}
window kitchen: valance { rod: pole }
";

fn scratch() -> Scratch {
    Scratch::with(&[("porch.pelmet", STRIPED)])
}

#[test]
fn a_cloth_is_compared_with_what_a_maker_would_try() {
    let done = scratch().run("cloths porch.pelmet");
    assert_eq!(done.status, 0, "{done}");
    assert_snapshot!(done);
}

#[test]
fn a_cloth_is_compared_with_what_is_asked_for() {
    let line = "cloths porch.pelmet --cloth stripe --with width:30in --with repeat:none,way:any \
        --other plain";
    let done = scratch().run(line);
    assert_eq!(done.status, 0, "{done}");
    assert_snapshot!(done);
}

/// Without a print there is nowhere for it to begin, so that is not asked for.
#[test]
fn a_cloth_whose_print_begins_somewhere_is_compared_with_a_plain_one() {
    let begins = STRIPED.replace(
        "way: one-way",
        "way: one-way, print begins: 2 in from left edge",
    );
    let scratch = Scratch::with(&[("porch.pelmet", &begins)]);
    let done = scratch.run("cloths porch.pelmet --cloth stripe --with repeat:none");
    assert_eq!(done.status, 0, "{done}");
    assert!(done.output.contains("repeat:none"), "{done}");
}

#[test]
fn a_mistake_in_what_is_asked_for_is_told_once_for_all_cloths() {
    let two = STRIPED
        .replace("row: front, front, front", "row: front, back, front")
        .replace(
            "    row:",
            "    panel back like front { face: plain }\n    row:",
        );
    let scratch = Scratch::with(&[("porch.pelmet", &two)]);
    let done = scratch.run("cloths porch.pelmet --with widht:30in");
    assert_eq!(done.errors.matches("property-unknown").count(), 1, "{done}");
}

#[test]
fn a_comparison_for_programs_holds_the_same() {
    let done = scratch().run("cloths porch.pelmet --other plain --write json");
    let told: serde_json::Value = serde_json::from_str(&done.output).unwrap();
    let trials = &told["cloths"][0]["trials"];
    assert_eq!(trials[0]["what"], "as it is");
    assert_eq!(trials[1]["what"], "plain");
    let number = |trial: usize, path: &str| trials[trial].pointer(path).unwrap().as_f64().unwrap();
    let more = number(1, "/taken/bought/mm") - number(0, "/taken/bought/mm");
    assert!((more - number(1, "/taken/more_bought/mm")).abs() < 1e-6);
    let more = number(1, "/taken/cost/amount") - number(0, "/taken/cost/amount");
    assert!((more - number(1, "/taken/more_cost/amount")).abs() < 1e-6);
}

#[test]
fn what_cannot_be_compared_is_told_where_it_is_asked_for() {
    let told = [
        "--cloth strpe",
        "--with widht:60in",
        "--with width:60",
        "--other plane",
        "--cloth plain",
    ]
    .map(|asked| {
        let done = scratch().run(&format!("cloths porch.pelmet {asked}"));
        assert_eq!((done.status, done.output.as_str()), (1, ""), "{done}");
        format!("cloths porch.pelmet {asked}\n{}", done.errors)
    });
    assert_snapshot!(told.join("\n"));
}

#[test]
fn mistakes_of_the_design_come_first() {
    let broken = SOUND.replace("face: sailcloth", "face: canvas");
    let done = Scratch::with(&[("a.pelmet", &broken)]).run("cloths a.pelmet --with widht:60in");
    assert_eq!((done.status, done.output.as_str()), (1, ""), "{done}");
    assert!(done.errors.contains("canvas"), "{done}");
    assert!(!done.errors.contains("widht"), "{done}");
    assert_eq!(scratch().run("cloths nothing.pelmet").status, 2);
}
