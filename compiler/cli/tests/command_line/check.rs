use insta::assert_snapshot;

use crate::SOUND;
use crate::scratch::Scratch;

#[test]
fn a_sound_design_has_nothing_to_report() {
    let done = Scratch::with(&[("kitchen.pelmet", SOUND)]).run("check kitchen.pelmet");
    assert_eq!((done.status, done.errors.as_str()), (0, ""));
    assert_eq!(done.output, "nothing to report\n");
}

#[test]
fn every_mistake_of_every_file_is_reported_in_one_run() {
    let scratch = Scratch::with(&[
        (
            "a.pelmet",
            "use \"styles/house.pelmet\"\nfabric felt { width: 0 in }\n",
        ),
        ("b/b.pelmet", "fabric felt { widht: 54 in }\n"),
        (
            "styles/house.pelmet",
            "rod pole { length: 40 in, diameter: 1 }\n",
        ),
    ]);
    assert_snapshot!(scratch.run("check a.pelmet b/b.pelmet"));
}

#[test]
fn a_mistake_in_a_file_that_two_designs_use_is_told_once() {
    let scratch = Scratch::with(&[
        ("a.pelmet", "use \"house.pelmet\"\n"),
        ("b.pelmet", "use \"house.pelmet\"\n"),
        ("house.pelmet", "fabric felt { width: 54 }\n"),
    ]);
    let done = scratch.run("check a.pelmet b.pelmet");
    assert_eq!(done.output.matches("[unit-missing]").count(), 1, "{done}");
    assert!(done.output.ends_with("\n1 error\n"), "{done}");
}

#[test]
fn warnings_leave_a_design_sound() {
    let unused = format!("{SOUND}fabric felt {{ width: 54 in }}\n");
    let done = Scratch::with(&[("kitchen.pelmet", &unused)]).run("check kitchen.pelmet");
    assert_eq!(done.status, 0);
    assert!(done.output.ends_with("\n1 warning\n"), "{done}");
}

#[test]
fn what_cannot_be_read_leaves_the_others_to_be_checked() {
    let scratch = Scratch::with(&[("b.pelmet", "fabric felt { width: 54 }\n")]);
    let done = scratch.run("check a.pelmet b.pelmet");
    assert_eq!(done.status, 2, "{done}");
    for code in ["[file-not-found]", "[unit-missing]", "2 errors"] {
        assert!(done.output.contains(code), "{code}: {done}");
    }
}

#[test]
fn a_design_is_found_from_any_folder() {
    let scratch = Scratch::with(&[
        ("job/window.pelmet", "use \"styles/house.pelmet\"\n"),
        ("job/styles/house.pelmet", "fabric felt { width: 54 }\n"),
        ("elsewhere/note.txt", ""),
    ]);
    let mut command = scratch.command("check ../job/window.pelmet");
    let done = command
        .current_dir(scratch.path("elsewhere"))
        .output()
        .unwrap();
    let output = String::from_utf8(done.stdout).unwrap();
    assert!(
        output.starts_with("../job/styles/house.pelmet:1:22: error: "),
        "{output}"
    );
}
