use std::process::Stdio;

use insta::assert_snapshot;

use crate::scratch::Scratch;

const UNITLESS: &str = "fabric felt { width: 54 }\n";

#[test]
fn reports_have_three_forms() {
    let scratch = Scratch::with(&[("a.pelmet", UNITLESS)]);
    for form in ["human", "plain", "json"] {
        let done = scratch.run(&format!("check --format {form} a.pelmet"));
        assert_snapshot!(format!("check_{form}"), done);
    }
}

#[test]
fn a_pipe_gets_plain_reports_without_colour() {
    let scratch = Scratch::with(&[("a.pelmet", UNITLESS)]);
    assert_eq!(
        scratch.run("check a.pelmet").output,
        scratch.run("check a.pelmet --format plain").output
    );
    let human = scratch.run("check a.pelmet --format human").output;
    assert!(!human.contains('\u{1b}'), "{human}");
}

#[test]
fn colour_is_there_when_it_is_wanted() {
    let scratch = Scratch::with(&[("a.pelmet", UNITLESS)]);
    let line = "check a.pelmet --format human --color";
    assert!(
        scratch
            .run(&format!("{line} always"))
            .output
            .contains("\u{1b}[")
    );
    assert!(
        !scratch
            .run(&format!("{line} never"))
            .output
            .contains('\u{1b}')
    );
}

#[test]
fn reports_go_beside_what_a_command_is_for() {
    let scratch = Scratch::with(&[("a.pelmet", UNITLESS)]);
    let check = scratch.run("check --format json a.pelmet");
    assert!(
        check.output.starts_with('{') && check.errors.is_empty(),
        "{check}"
    );
    let build = scratch.run("build --format json a.pelmet");
    assert!(
        build.errors.starts_with('{') && build.output.is_empty(),
        "{build}"
    );
}

#[test]
fn json_is_whole_even_when_there_is_nothing_to_report() {
    let scratch = Scratch::with(&[("a.pelmet", "units inches\n")]);
    let done = scratch.run("check --format json a.pelmet");
    assert_eq!(done.status, 0);
    assert!(done.output.contains("\"diagnostics\": []"), "{done}");
}

/// The reader is gone before anything is printed.
#[test]
fn a_closed_pipe_is_met_in_silence() {
    let scratch = Scratch::with(&[]);
    let mut child = scratch
        .command("explain --list")
        .stdin(Stdio::null())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap();
    drop(child.stdout.take());
    let done = child.wait_with_output().unwrap();
    assert_eq!(
        (done.status.code(), done.stderr.as_slice()),
        (Some(0), [].as_slice())
    );
}
