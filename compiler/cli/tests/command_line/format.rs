use insta::assert_snapshot;

use crate::SOUND;
use crate::scratch::Scratch;

const UNTIDY: &str = "units   inches\nfabric felt { width:54\"  }   # a roll is left\n\n\n\n";
const TIDY: &str = "units inches\nfabric felt { width: 54 in } # a roll is left\n";

#[test]
fn a_file_is_brought_into_its_usual_form() {
    let scratch = Scratch::with(&[("a.pelmet", UNTIDY), ("b.pelmet", TIDY)]);
    let done = scratch.run("format a.pelmet b.pelmet");
    assert_eq!(
        (done.status, done.output.as_str(), done.errors.as_str()),
        (0, "", "")
    );
    let tidy = scratch.read("a.pelmet");
    assert_snapshot!(tidy);
    assert_eq!(scratch.run("fmt a.pelmet").status, 0);
    assert_eq!(scratch.read("a.pelmet"), tidy, "twice is once");
}

#[test]
fn a_check_changes_nothing_and_names_what_would_change() {
    let scratch = Scratch::with(&[("a.pelmet", UNTIDY), ("b.pelmet", SOUND)]);
    let done = scratch.run("format --check a.pelmet b.pelmet");
    assert_eq!((done.status, done.output.as_str()), (1, "a.pelmet\n"));
    assert_eq!(scratch.read("a.pelmet"), UNTIDY);
    assert_eq!(scratch.run("format --check b.pelmet").status, 0);
}

#[test]
fn a_file_with_mistakes_is_left_as_it_is() {
    let broken = "units   inches\nfabric felt { width: 54 in\n";
    let scratch = Scratch::with(&[("a.pelmet", broken)]);
    let done = scratch.run("format a.pelmet");
    assert_eq!(
        (done.status, scratch.read("a.pelmet").as_str()),
        (1, broken)
    );
    assert_snapshot!(done);
}

#[test]
fn only_what_is_named_is_formatted_and_what_it_uses_need_not_be_there() {
    let scratch = Scratch::with(&[("a.pelmet", "use   \"gone.pelmet\"\n")]);
    assert_eq!(scratch.run("format a.pelmet").status, 0);
    assert_eq!(scratch.read("a.pelmet"), "use \"gone.pelmet\"\n");
}

#[test]
fn standard_input_is_formatted_to_standard_output() {
    let scratch = Scratch::with(&[]);
    let done = scratch.run_with_input("format -", "units   inches");
    assert_eq!((done.status, done.output.as_str()), (0, "units inches\n"));
    let done = scratch.run_with_input("format --check -", "units   inches");
    assert_eq!((done.status, done.output.as_str()), (1, "-\n"));
    let done = scratch.run_with_input("format -", "fabric {");
    assert_eq!((done.status, done.output.as_str()), (1, ""), "{done}");
    assert!(done.errors.starts_with("-:1:"), "{done}");
}

#[cfg(unix)]
#[test]
fn permissions_and_links_stay_as_they_are() {
    use std::fs::{Permissions, read_link, set_permissions};
    use std::os::unix::fs::{PermissionsExt, symlink};

    let scratch = Scratch::with(&[("job/a.pelmet", UNTIDY)]);
    let (file, link) = (
        scratch.path("job/a.pelmet"),
        scratch.path("job/link.pelmet"),
    );
    set_permissions(&file, Permissions::from_mode(0o640)).unwrap();
    symlink("a.pelmet", &link).unwrap();
    assert_eq!(scratch.run("format job/link.pelmet").status, 0);
    assert_eq!(file.metadata().unwrap().permissions().mode() & 0o777, 0o640);
    assert_eq!(read_link(&link).unwrap().to_str(), Some("a.pelmet"));
    assert_ne!(scratch.read("job/a.pelmet"), UNTIDY);

    scratch.write("job/a.pelmet", UNTIDY);
    set_permissions(&file, Permissions::from_mode(0o440)).unwrap();
    let done = scratch.run("format job/a.pelmet");
    assert_eq!(done.status, 2, "{done}");
    assert!(done.errors.contains("[file-not-writable]"), "{done}");
}
