use std::fs;
use std::thread;

use insta::assert_snapshot;

use crate::SOUND;
use crate::scratch::Scratch;

/// What the packet of [`SOUND`] holds.
const PACKET: [&str; 4] = ["packet.html", "packet.json", "packet.pdf", "templates.pdf"];

#[test]
fn a_packet_stands_beside_the_design_and_is_printed() {
    let scratch = Scratch::with(&[("job/kitchen.pelmet", SOUND)]);
    let done = scratch.run("build job/kitchen.pelmet");
    assert_eq!(done.status, 0, "{done}");
    assert_eq!(done.errors, "");
    assert_eq!(scratch.list("job"), ["kitchen.packet", "kitchen.pelmet"]);
    assert_eq!(scratch.list("job/kitchen.packet"), PACKET);
    for sheet in pelmet_sheets::SHEETS {
        let heading = format!("{}: kitchen\n", pelmet_sheets::sheet_title(*sheet));
        assert!(done.output.contains(&heading), "{heading}");
    }
}

#[test]
fn the_sheets_of_the_packet_are_as_wide_as_ever() {
    let scratch = Scratch::with(&[("kitchen.pelmet", SOUND)]);
    let narrow = scratch.run("build kitchen.pelmet --write text --width 60");
    let of_narrow = scratch.read("kitchen.packet/sheets.txt");
    scratch.run("build kitchen.pelmet --write text --width 200");
    assert_eq!(scratch.read("kitchen.packet/sheets.txt"), of_narrow);
    assert_ne!(narrow.output, of_narrow);
}

#[test]
fn two_builds_give_the_same_bytes() {
    let scratch = Scratch::with(&[("kitchen.pelmet", SOUND)]);
    let packet = || {
        assert_eq!(scratch.run("build kitchen.pelmet --quiet").status, 0);
        PACKET.map(|file| fs::read(scratch.path(&format!("kitchen.packet/{file}"))).unwrap())
    };
    assert!(packet() == packet());
}

#[test]
fn a_quiet_build_prints_no_sheets() {
    let scratch = Scratch::with(&[("kitchen.pelmet", SOUND)]);
    let done = scratch.run("build kitchen.pelmet --quiet --out packets/kitchen");
    assert_eq!(
        (done.status, done.output.as_str(), done.errors.as_str()),
        (0, "", "")
    );
    assert_eq!(scratch.list("packets"), ["kitchen"]);
    assert_eq!(scratch.list("packets/kitchen"), PACKET);
}

#[test]
fn several_designs_give_several_packets() {
    let scratch = Scratch::with(&[("a.pelmet", SOUND), ("b.pelmet", SOUND)]);
    assert_eq!(scratch.run("build --quiet a.pelmet b.pelmet").status, 0);
    assert_eq!(
        scratch.list(""),
        ["a.packet", "a.pelmet", "b.packet", "b.pelmet"]
    );
    assert_snapshot!(scratch.run("build a.pelmet b.pelmet --out packet"));
}

/// Designs that give no packet, each by another kind of mistake: the code it is told by, what of
/// [`SOUND`] is changed, and to what.
const BROKEN: [(&str, &str, &str); 14] = [
    ("unit-missing", "tail 4 in", "tail 4"),
    ("bracket-not-closed", "rod: pole }", "rod: pole"),
    ("bracket-not-opened", "units inches", "}"),
    ("character-not-known", "54 in", "54 in \u{1}"),
    ("name-unknown", "face: sailcloth", "face: sailcloht"),
    ("property-unknown", "drop: 14 in", "dorp: 14 in"),
    ("property-missing", "drop: 14 in", ""),
    ("name-wrong-kind", "face: sailcloth", "face: pole"),
    ("length-not-positive", "drop: 14 in", "drop: 0 in"),
    ("length-too-large", "drop: 14 in", "drop: 1000000000000 in"),
    ("row-uncovered", "width: 40 in", "width: 38 in"),
    ("row-crowded", "width: 40 in", "width: 42 in"),
    ("file-not-found", "units inches", "use \"house.pelmet\""),
    (
        "expectation-not-met",
        "units inches",
        "expect front pleats = 3",
    ),
];

#[test]
fn a_failed_build_leaves_the_last_good_packet() {
    let scratch = Scratch::with(&[("kitchen.pelmet", SOUND)]);
    scratch.run("build kitchen.pelmet");
    let packet = || {
        ["packet.json", "packet.html"].map(|file| scratch.read(&format!("kitchen.packet/{file}")))
    };
    let good = packet();
    let fails_with = |design: &[u8], status: i32, code: &str| {
        scratch.write("kitchen.pelmet", design);
        let done = scratch.run("build kitchen.pelmet");
        assert_eq!((done.status, done.output.as_str()), (status, ""), "{done}");
        assert!(done.errors.contains(&format!("[{code}]")), "{code}: {done}");
        assert_eq!(packet(), good, "{code}");
        assert_eq!(
            scratch.list(""),
            ["kitchen.packet", "kitchen.pelmet"],
            "nothing is left lying about"
        );
    };
    for (code, sound, broken) in BROKEN {
        assert!(SOUND.contains(sound), "{sound}");
        fails_with(SOUND.replacen(sound, broken, 1).as_bytes(), 1, code);
    }
    fails_with(b"fabric caf\xe9 { width: 54 in }\n", 2, "file-not-text");
    fails_with(&b"# a note\n".repeat(600_000), 2, "file-too-large");
}

/// A packet that somebody has open, or that a stopped program leaves behind, is never a gap.
#[cfg(any(target_os = "linux", target_vendor = "apple"))]
#[test]
fn there_is_a_packet_at_every_moment_of_a_build() {
    let scratch = Scratch::with(&[("kitchen.pelmet", SOUND)]);
    let build = || assert_eq!(scratch.run("build kitchen.pelmet --quiet").status, 0);
    build();
    let packet = scratch.path("kitchen.packet");
    thread::scope(|scope| {
        let building = scope.spawn(|| (0..20).for_each(|_| build()));
        while !building.is_finished() {
            assert!(packet.is_dir());
        }
    });
}

#[test]
fn a_house_style_alone_makes_nothing() {
    let scratch = Scratch::with(&[("house.pelmet", "fabric felt { width: 72 in }\n")]);
    assert_eq!(scratch.run("check house.pelmet").status, 0);
    let done = scratch.run("build house.pelmet");
    assert_eq!((done.status, done.output.as_str()), (1, ""));
    assert!(done.errors.contains("[nothing-to-make]"), "{done}");
    assert_eq!(scratch.list(""), ["house.pelmet"]);
}

#[test]
fn a_folder_that_holds_anything_else_is_not_replaced() {
    let scratch = Scratch::with(&[("kitchen.pelmet", SOUND), ("client/photograph.txt", "dear")]);
    let done = scratch.run("build kitchen.pelmet --out client");
    assert_eq!(done.status, 2, "{done}");
    assert_eq!(scratch.list("client"), ["photograph.txt"]);
    assert_snapshot!(done);
    for (out, found) in [
        ("kitchen.pelmet", "a file of this name"),
        (".", "`client` in it"),
    ] {
        let done = scratch.run(&format!("build kitchen.pelmet --out {out}"));
        assert_eq!(done.status, 2, "{done}");
        assert!(done.errors.contains(found), "{done}");
    }
    assert_eq!(scratch.read("kitchen.pelmet"), SOUND);
}

/// The folder that cannot be written is a path through a file: whoever runs the tests, even the
/// machine's owner, cannot write there.
#[test]
fn a_folder_that_cannot_be_written_is_reported() {
    let scratch = Scratch::with(&[("kitchen.pelmet", SOUND)]);
    let done = scratch.run("build kitchen.pelmet --out kitchen.pelmet/packet");
    assert_eq!((done.status, done.output.as_str()), (2, ""));
    assert!(done.errors.contains("[file-not-writable]"), "{done}");
    assert_eq!(scratch.list(""), ["kitchen.pelmet"]);
}

#[test]
fn only_what_is_chosen_is_written() {
    let scratch = Scratch::with(&[("kitchen.pelmet", SOUND)]);
    let written = |options: &str| {
        let done = scratch.run(&format!("build -q kitchen.pelmet {options}"));
        assert_eq!((done.status, done.errors.as_str()), (0, ""), "{done}");
        scratch.list("kitchen.packet")
    };
    assert_eq!(written("--write json"), ["packet.json"]);
    assert_eq!(
        written("--write text,html"),
        ["packet.html", "sheets.txt"],
        "whatever was there before"
    );
    assert_eq!(written("--write usual"), PACKET);
    assert_eq!(written("--write usual,json"), PACKET);
    let all = written("--write all");
    assert!(
        PACKET
            .iter()
            .all(|usual| all.iter().any(|one| one == usual))
    );
}

#[test]
fn only_the_sheets_chosen_are_written_and_printed() {
    let scratch = Scratch::with(&[("kitchen.pelmet", SOUND)]);
    let done = scratch.run("build kitchen.pelmet --sheets cut-sheet,yardage --write text,html");
    assert_eq!(done.status, 0, "{done}");
    let titles: Vec<&str> = done
        .output
        .lines()
        .filter(|line| line.ends_with(": kitchen"))
        .collect();
    assert_eq!(titles, ["Yardage: kitchen", "Cut sheet: kitchen"]);
    assert_eq!(scratch.read("kitchen.packet/sheets.txt"), done.output);
    let page = || scratch.read("kitchen.packet/packet.html");
    assert_eq!(page().matches("<section").count(), 2);
    scratch.run("build -q kitchen.pelmet --paper A4");
    assert!(page().contains("@page { size: A4 }"));
}

#[test]
fn a_choice_that_is_none_is_answered_with_the_nearest() {
    let scratch = Scratch::with(&[("kitchen.pelmet", SOUND)]);
    for (options, nearest) in [
        ("--write jsn", "json"),
        ("--write html,drawing", "drawings"),
        ("--sheets cutsheet", "cut-sheet"),
        ("--paper leter", "letter"),
    ] {
        let done = scratch.run(&format!("build kitchen.pelmet {options}"));
        assert_eq!((done.status, done.output.as_str()), (2, ""), "{done}");
        assert!(done.errors.contains(&format!("'{nearest}'")), "{done}");
        assert_eq!(scratch.list(""), ["kitchen.pelmet"]);
    }
}
