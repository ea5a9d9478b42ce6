use insta::assert_snapshot;

use crate::scratch::Scratch;

#[test]
fn the_help_names_every_command() {
    let scratch = Scratch::with(&[]);
    assert_snapshot!("help", scratch.run("help"));
    for command in [
        "new",
        "check",
        "build",
        "cloths",
        "format",
        "fix",
        "explain",
        "completions",
    ] {
        assert_snapshot!(
            format!("help_{command}"),
            scratch.run(&format!("help {command}"))
        );
    }
}

#[test]
fn arguments_that_make_no_sense_are_refused() {
    let scratch = Scratch::with(&[]);
    for line in [
        "",
        "biuld a.pelmet",
        "check",
        "build",
        "format",
        "explain",
        "explain --list name-unknown",
        "new",
        "check --format xml a.pelmet",
        "check --width 7 a.pelmet",
        "completions abacus",
    ] {
        let done = scratch.run(line);
        assert_eq!(
            (done.status, done.output.as_str()),
            (2, ""),
            "{line}: {done}"
        );
        assert!(!done.errors.is_empty(), "{line}");
    }
}

#[test]
fn a_new_project_builds_with_nothing_to_report() {
    let scratch = Scratch::with(&[]);
    let done = scratch.run("new work/porch");
    assert_eq!(done.status, 0, "{done}");
    assert_snapshot!(done);
    assert_eq!(scratch.list("work"), ["porch"]);
    assert_eq!(scratch.list("work/porch"), ["job.pelmet", "styles"]);
    assert_eq!(
        scratch.run("check work/porch/job.pelmet").output,
        "nothing to report\n"
    );
    assert_eq!(scratch.run("build work/porch/job.pelmet").status, 0);
    let files = "work/porch/job.pelmet work/porch/styles/house.pelmet";
    assert_eq!(
        scratch.run(&format!("format --check {files}")).output,
        "",
        "in their usual form"
    );
}

#[test]
fn a_new_project_is_written_over_nothing() {
    let scratch = Scratch::with(&[("full/note.txt", "mine"), ("file", "mine")]);
    for folder in ["full", "file"] {
        let done = scratch.run(&format!("new {folder}"));
        assert_eq!(done.status, 2, "{done}");
        assert!(done.errors.contains("[file-already-there]"), "{done}");
    }
    assert_eq!(scratch.list("full"), ["note.txt"]);
    assert_eq!(scratch.read("file"), "mine");
    std::fs::create_dir(scratch.path("empty")).unwrap();
    assert_eq!(
        scratch.run("new empty").status,
        0,
        "an empty folder is as good as none"
    );
}

#[test]
fn a_code_is_explained() {
    assert_snapshot!(Scratch::with(&[]).run("explain unit-missing"));
}

#[test]
fn an_unknown_code_is_answered_with_the_nearest() {
    assert_snapshot!(Scratch::with(&[]).run("explain unit-misssing"));
}

#[test]
fn all_codes_are_listed_and_each_is_explained() {
    let scratch = Scratch::with(&[]);
    let list = scratch.run("explain --list");
    assert_eq!(list.status, 0);
    let slugs: Vec<&str> = list
        .output
        .lines()
        .filter_map(|line| line.split(' ').next_back())
        .collect();
    assert!(slugs.len() > 50 && slugs.is_sorted(), "{slugs:?}");
    for line in list.output.lines() {
        assert!(
            line.starts_with("error    ")
                || line.starts_with("warning  ")
                || line.starts_with("note     "),
            "{line}"
        );
    }
    for slug in slugs.iter().step_by(10) {
        assert!(
            scratch
                .run(&format!("explain {slug}"))
                .output
                .starts_with(slug)
        );
    }
}

#[test]
fn every_shell_gets_its_completions() {
    let scratch = Scratch::with(&[]);
    for shell in ["bash", "elvish", "fish", "powershell", "zsh"] {
        let done = scratch.run(&format!("completions {shell}"));
        assert_eq!((done.status, done.errors.as_str()), (0, ""));
        for word in ["explain", "build", "quiet"] {
            assert!(done.output.contains(word), "{shell}: {word}");
        }
    }
}
