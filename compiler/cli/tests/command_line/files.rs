//! Files that are not what they should be, on a real disk.

use crate::scratch::{Done, Scratch};

/// Checks `a.pelmet`, which uses `b.pelmet`, and expects one report of this code at the `use` line.
#[track_caller]
fn assert_use_is_refused(scratch: &Scratch, code: &str) -> Done {
    scratch.write("job/a.pelmet", "# a job\n  use \"b.pelmet\"\n");
    let done = scratch.run("check job/a.pelmet");
    assert_eq!(done.status, 1, "{done}");
    assert!(
        done.output.starts_with("job/a.pelmet:2:7: error: "),
        "{done}"
    );
    assert!(done.output.contains(&format!("[{code}]")), "{done}");
    assert!(done.output.ends_with("\n1 error\n"), "{done}");
    done
}

/// Checks `a.pelmet` and expects one report of this code, which points at no text.
#[track_caller]
fn assert_main_is_refused(scratch: &Scratch, code: &str) -> Done {
    let done = scratch.run("check a.pelmet");
    assert_eq!(done.status, 2, "{done}");
    assert!(done.output.starts_with("error: "), "{done}");
    assert!(done.output.contains(&format!("[{code}]")), "{done}");
    assert!(done.output.ends_with("\n1 error\n"), "{done}");
    done
}

#[test]
fn a_missing_file_is_answered_with_the_nearest_name() {
    let scratch = Scratch::with(&[
        ("job/window.pelmet", "use \"styles/hosue.pelmet\"\n"),
        ("job/styles/house.pelmet", ""),
    ]);
    for (line, nearest) in [
        ("check job/window.pelmet", "styles/house.pelmet"),
        ("check job/windwo.pelmet", "window.pelmet"),
    ] {
        let done = scratch.run(line);
        let help = format!("did you mean `{nearest}`?");
        assert!(done.output.contains("[file-not-found]"), "{done}");
        assert!(done.output.contains(&help), "{done}");
    }
    assert_use_is_refused(&scratch, "file-not-found");
    assert_main_is_refused(&scratch, "file-not-found");
    for path in ["nowhere/a.pelmet", "job/window.pelmet/a.pelmet", ""] {
        assert_eq!(
            scratch
                .command("check")
                .arg(path)
                .output()
                .unwrap()
                .status
                .code(),
            Some(2)
        );
    }
}

#[test]
fn a_folder_is_no_file() {
    let scratch = Scratch::with(&[
        ("job/b.pelmet/c.pelmet", ""),
        ("a.pelmet/window.pelmet", ""),
    ]);
    assert_use_is_refused(&scratch, "file-is-folder");
    let done = assert_main_is_refused(&scratch, "file-is-folder");
    assert!(
        done.output.contains("such as `a.pelmet/window.pelmet`"),
        "{done}"
    );
    assert_eq!(scratch.run("check .").status, 2);
    assert_eq!(scratch.run("check ..").status, 2);
}

#[test]
fn a_file_of_more_than_four_mebibytes_is_not_read() {
    let large = "# nothing but notes\n".repeat(262_145);
    let scratch = Scratch::with(&[("job/b.pelmet", &large), ("a.pelmet", &large)]);
    assert_use_is_refused(&scratch, "file-too-large");
    let done = assert_main_is_refused(&scratch, "file-too-large");
    assert!(done.output.contains("5242900 bytes"), "{done}");
}

#[test]
fn other_encodings_are_not_read() {
    let scratch = Scratch::with(&[]);
    scratch.write("job/b.pelmet", b"fabric caf\xe9 { width: 54 in }\n");
    scratch.write("a.pelmet", b"\xff\xfeu\0n\0i\0t\0s\0");
    assert_use_is_refused(&scratch, "file-not-text");
    assert_main_is_refused(&scratch, "file-not-text");
}

#[test]
fn a_path_that_leaves_the_project_is_refused_whether_or_not_it_leads_anywhere() {
    let scratch = Scratch::with(&[("secret.pelmet", "units metric\n"), ("job/link.pelmet", "")]);
    for path in [
        "../secret.pelmet",
        "../nothing.pelmet",
        "/etc/hostname",
        "styles/../../secret.pelmet",
    ] {
        scratch.write("job/a.pelmet", format!("use \"{path}\"\n"));
        let done = scratch.run("check job/a.pelmet");
        assert!(
            done.output.starts_with("job/a.pelmet:1:5: error: "),
            "{done}"
        );
        assert!(done.output.contains("[file-outside-project]"), "{done}");
    }
}

#[cfg(unix)]
mod unix {
    use std::os::unix::fs::symlink;
    use std::process::Command;

    use super::*;

    #[test]
    fn a_link_out_of_the_project_is_not_followed() {
        let scratch = Scratch::with(&[("secret/b.pelmet", "units metric\n"), ("job/note.txt", "")]);
        symlink("../secret/b.pelmet", scratch.path("job/b.pelmet")).unwrap();
        assert_use_is_refused(&scratch, "file-outside-project");

        symlink("../secret", scratch.path("job/styles")).unwrap();
        scratch.write("job/a.pelmet", "use \"styles/b.pelmet\"\n");
        let done = scratch.run("check job/a.pelmet");
        assert!(done.output.contains("[file-outside-project]"), "{done}");
    }

    #[test]
    fn a_link_within_the_project_is_followed() {
        let scratch = Scratch::with(&[("job/styles/b.pelmet", "units metric\n")]);
        symlink("styles/b.pelmet", scratch.path("job/b.pelmet")).unwrap();
        scratch.write("job/a.pelmet", "use \"b.pelmet\"\n");
        assert_eq!(scratch.run("check job/a.pelmet").status, 0);
    }

    /// Nobody writes into the pipe, so that reading it would wait for ever.
    #[test]
    fn a_pipe_is_not_waited_for() {
        let scratch = Scratch::with(&[("job/note.txt", "")]);
        for pipe in ["job/b.pelmet", "a.pelmet"] {
            let made = Command::new("mkfifo")
                .arg(scratch.path(pipe))
                .status()
                .unwrap();
            assert!(made.success());
        }
        assert_use_is_refused(&scratch, "file-not-readable");
        let done = assert_main_is_refused(&scratch, "file-not-readable");
        assert!(done.output.contains("it is not a plain file"), "{done}");
    }

    /// What refuses whoever may read everything too: a link around in a circle, or into nothing.
    #[test]
    fn a_link_that_leads_to_no_file_is_told() {
        for (target, code) in [
            ("b.pelmet", "file-not-readable"),
            ("c.pelmet", "file-not-found"),
        ] {
            let scratch = Scratch::with(&[("job/note.txt", "")]);
            symlink(target, scratch.path("job/b.pelmet")).unwrap();
            symlink(target.replace('b', "a"), scratch.path("a.pelmet")).unwrap();
            for (done, written) in [
                (assert_use_is_refused(&scratch, code), "b.pelmet"),
                (assert_main_is_refused(&scratch, code), "a.pelmet"),
            ] {
                let itself = format!("did you mean `{written}`");
                assert!(!done.output.contains(&itself), "{done}");
            }
        }
    }

    /// The owner of the machine may read everything, so that for them there is nothing to refuse,
    /// and the test says so.
    #[test]
    fn a_file_of_somebody_else_is_not_readable() {
        use std::fs::{Permissions, read, set_permissions};
        use std::os::unix::fs::PermissionsExt;

        let scratch = Scratch::with(&[("job/b.pelmet", "units metric\n")]);
        set_permissions(scratch.path("job/b.pelmet"), Permissions::from_mode(0o000)).unwrap();
        if read(scratch.path("job/b.pelmet")).is_ok() {
            eprintln!("left out: whoever runs this may read every file");
            return;
        }
        let done = assert_use_is_refused(&scratch, "file-not-readable");
        assert!(done.output.contains("permission denied"), "{done}");
    }

    #[test]
    fn names_that_are_no_text_are_refused() {
        use std::ffi::OsStr;
        use std::os::unix::ffi::OsStrExt;

        let scratch = Scratch::with(&[]);
        let name = OsStr::from_bytes(b"caf\xe9.pelmet");
        std::fs::write(scratch.path("").join(name), "units metric\n").unwrap();
        let done = scratch.command("check").arg(name).output().unwrap();
        assert_eq!(done.status.code(), Some(2));
        assert!(
            String::from_utf8(done.stdout)
                .unwrap()
                .contains("[file-not-readable]")
        );
    }
}
