use insta::assert_snapshot;

use crate::scratch::Scratch;

#[test]
fn what_a_machine_can_mend_is_mended_in_every_file() {
    let scratch = Scratch::with(&[
        (
            "job/a.pelmet",
            "use \"house.pelmet\"\nfabric felt { width = 54 in, selvage: 0,5 in }\nfabric lace like flet { widht: 60 in }\n",
        ),
        (
            "job/house.pelmet",
            "units inches\nrod pole { length: 40, diameter: 1 in }\n",
        ),
    ]);
    let done = scratch.run("fix job/a.pelmet");
    let files = format!(
        "{}---\n{}",
        scratch.read("job/a.pelmet"),
        scratch.read("job/house.pelmet")
    );
    assert_eq!(done.status, 0, "{done}");
    assert_snapshot!(format!("{done}--- files\n{files}"));
}

#[test]
fn what_is_left_is_reported() {
    let scratch = Scratch::with(&[(
        "a.pelmet",
        "units inches\nfabric felt { width: 54 }\nfabric lace { selvage: 1 in }\n",
    )]);
    let done = scratch.run("fix a.pelmet");
    assert_eq!(done.status, 1);
    assert!(done.output.contains("[property-missing]"), "{done}");
    assert!(!done.output.contains("[unit-missing]"), "{done}");
    assert!(scratch.read("a.pelmet").contains("width: 54 in"));
}

#[test]
fn where_there_is_nothing_to_mend_nothing_is_written() {
    let text = "fabric felt { selvage: 1 in }\r\n";
    let scratch = Scratch::with(&[("a.pelmet", text)]);
    let done = scratch.run("fix a.pelmet");
    assert_eq!((done.status, done.errors.as_str()), (1, ""));
    assert_eq!(scratch.read("a.pelmet"), text);
}
