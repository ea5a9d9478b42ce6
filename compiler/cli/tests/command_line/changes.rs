use std::path::Path;
use std::process::Command;

use insta::assert_snapshot;

use crate::SOUND;
use crate::scratch::{Done, Scratch};

/// [`SOUND`] with some of it said otherwise.
fn with(changes: &[(&str, &str)]) -> String {
    changes
        .iter()
        .fold(SOUND.to_owned(), |text, (said, otherwise)| {
            assert!(text.contains(said), "{said}");
            text.replace(said, otherwise)
        })
}

const LONGER: (&str, &str) = ("drop: 14 in", "drop: 15 1/2 in");

/// The two versions as `old/kitchen.pelmet` and `new/kitchen.pelmet`.
fn scratch(old: &str, new: &str) -> Scratch {
    Scratch::with(&[("old/kitchen.pelmet", old), ("new/kitchen.pelmet", new)])
}

fn told(old: &str, new: &str) -> Done {
    scratch(old, new).run("changes old/kitchen.pelmet new/kitchen.pelmet")
}

#[test]
fn what_changed_is_told_in_the_words_of_the_workroom() {
    let pleats = "pleats even { repeat: knife 1 1/4 in toward edge, space 3 in to 6 in }";
    let old = with(&[
        (
            "units inches",
            &format!("units inches\ncurrency \"USD\"\n{pleats}"),
        ),
        ("width: 54 in,", "width: 54 in, price: 18.40 per yd,"),
        ("drop: 14 in", "drop: 14 in\n        pleats: even"),
    ]);
    let changes = [
        ("drop: 14 in", "drop: 15 1/2 in"),
        ("seam: 1/2 in", "seam: 5/8 in"),
        ("1 1/4 in toward edge", "1 in toward edge"),
        ("18.40", "19.15"),
    ];
    let new = changes.iter().fold(old.clone(), |text, (said, otherwise)| {
        text.replace(said, otherwise)
    });
    assert_snapshot!(told(&old, &new));
}

#[test]
fn a_version_against_itself_says_nothing() {
    let scratch = scratch(SOUND, SOUND);
    for options in ["", "--check"] {
        let done = scratch.run(&format!(
            "changes old/kitchen.pelmet new/kitchen.pelmet {options}"
        ));
        assert_eq!((done.status, done.errors.as_str()), (0, ""));
        assert!(
            done.output
                .ends_with("\nNothing that is printed changed.\n"),
            "{done}"
        );
    }
}

#[test]
fn whether_anything_changed_can_be_asked() {
    let scratch = scratch(SOUND, &with(&[LONGER]));
    assert_eq!(
        scratch
            .run("changes old/kitchen.pelmet new/kitchen.pelmet")
            .status,
        0
    );
    assert_eq!(
        scratch
            .run("changes old/kitchen.pelmet new/kitchen.pelmet --check")
            .status,
        1
    );
}

/// What is only called otherwise is told as that, and nothing else is.
#[test]
fn another_name_is_told_as_that() {
    for (name, other) in [
        ("kitchen", "scullery"),
        ("front", "apron"),
        ("sailcloth", "drill"),
    ] {
        let done = told(SOUND, &SOUND.replace(name, other));
        let rows: Vec<&str> = done
            .output
            .lines()
            .filter(|line| line.contains(other))
            .collect();
        let [row] = rows.as_slice() else {
            panic!("{done}")
        };
        let cells: Vec<&str> = row.split_whitespace().collect();
        assert_eq!(&cells[cells.len() - 3..], ["name", name, other]);
        assert!(done.output.contains("1 change.\n"), "{done}");
    }
}

#[test]
fn what_comes_and_goes_is_told() {
    let two = format!("{SOUND}window porch like kitchen {{ opening: 30 in x 40 in }}\n");
    let row = |old, new| {
        let done = told(old, new);
        let row = done.output.lines().find(|line| line.starts_with("porch "));
        row.unwrap_or_else(|| panic!("{done}")).to_owned()
    };
    let window = "pole, length 40 in, front 40 in = 40 in";
    assert!(row(SOUND, &two).ends_with(&format!("not there  {window}")));
    assert!(row(&two, SOUND).ends_with(&format!("{window}  gone")));
}

#[test]
fn a_packet_is_a_version_too() {
    let scratch = scratch(SOUND, &with(&[LONGER]));
    scratch.run("build -q old/kitchen.pelmet");
    let designs = scratch.run("changes old/kitchen.pelmet new/kitchen.pelmet");
    for old in ["old/kitchen.packet", "old/kitchen.packet/packet.json"] {
        let done = scratch.run(&format!("changes {old} new/kitchen.pelmet"));
        assert_eq!(done.to_string(), designs.to_string());
    }
    assert_eq!(
        scratch
            .run("changes --check old/kitchen.packet old/kitchen.pelmet")
            .status,
        0
    );
}

#[test]
fn a_version_at_standard_input_stands_beside_the_other() {
    let uses = with(&[(
        "fabric sailcloth { width: 54 in, selvage: 1/2 in }",
        "use \"cloth.pelmet\"",
    )]);
    let cloth = "fabric sailcloth { width: 54 in, selvage: 1/2 in }\n";
    let scratch = Scratch::with(&[("job/new.pelmet", &uses), ("job/cloth.pelmet", cloth)]);
    let old = uses.replace(LONGER.0, LONGER.1);
    let done = scratch.run_with_input("changes - job/new.pelmet", &old);
    assert_eq!((done.status, done.errors.as_str()), (0, ""), "{done}");
    assert!(done.output.contains("1 1/2 in less"), "{done}");
    let broken = old.replace("units inches", "units inched");
    let done = scratch.run_with_input("changes - job/new.pelmet", &broken);
    assert_eq!((done.status, done.output.as_str()), (1, ""));
    assert!(done.errors.starts_with("-:1:"), "{done}");
    assert!(done.errors.contains("[version-not-sound]"), "{done}");
}

#[test]
fn folders_are_compared_design_by_design() {
    let style = "fabric sailcloth { width: 54 in, selvage: 1/2 in }\n";
    let job = with(&[(style.trim(), "use \"styles/house.pelmet\"")]);
    let longer = job.replace(LONGER.0, LONGER.1);
    let broken = job.replace("units inches", "units inched");
    let scratch = Scratch::with(&[
        ("old/same.pelmet", &job),
        ("old/longer.pelmet", &job),
        ("old/gone.pelmet", SOUND),
        ("old/broken.pelmet", &broken),
        ("old/styles/house.pelmet", style),
        ("new/same.pelmet", &job),
        ("new/longer.pelmet", &longer),
        ("new/new.pelmet", SOUND),
        ("new/broken.pelmet", &job),
        ("new/styles/house.pelmet", style),
    ]);
    assert_snapshot!(scratch.run("changes old new"));
}

#[test]
fn what_cannot_be_compared_is_refused() {
    let scratch = scratch(SOUND, SOUND);
    scratch.write("folder/kitchen.pelmet", SOUND);
    scratch.write("empty/note.txt", "dear");
    scratch.write("list.json", "[1, 2]");
    scratch.run("build -q old/kitchen.pelmet");
    let packet = scratch.read("old/kitchen.packet/packet.json");
    scratch.write(
        "other.json",
        packet.replace("pelmet-packet/1", "pelmet-packet/0"),
    );
    for (versions, status, said) in [
        (
            "old/kitchen.pelmet folder",
            2,
            "one version is a single job, and the other a folder",
        ),
        ("empty empty", 1, "[nothing-to-make]"),
        ("list.json new/kitchen.pelmet", 2, "[packet-not-read]"),
        (
            "other.json new/kitchen.pelmet",
            2,
            "the form `pelmet-packet/0`",
        ),
        ("none.pelmet new/kitchen.pelmet", 2, "[file-not-found]"),
        ("none.json new/kitchen.pelmet", 2, "[file-not-readable]"),
    ] {
        let done = scratch.run(&format!("changes {versions}"));
        assert_eq!(
            (done.status, done.output.as_str()),
            (status, ""),
            "{versions}: {done}"
        );
        assert!(done.errors.contains(said), "{versions}: {done}");
    }
}

#[test]
fn a_version_with_errors_is_named() {
    let broken = with(&[("face: sailcloth", "face: sailcloht")]);
    for (old, new, which) in [
        (&*broken, SOUND, "before, `old/kitchen.pelmet`"),
        (SOUND, &*broken, "after, `new/kitchen.pelmet`"),
    ] {
        let done = told(old, new);
        assert_eq!((done.status, done.output.as_str()), (1, ""));
        assert!(done.errors.contains("[name-unknown]"), "{done}");
        assert!(
            done.errors.contains(&format!("the version {which}")),
            "{done}"
        );
    }
}

#[test]
fn changes_are_written_for_programs_and_browsers_too() {
    let scratch = scratch(SOUND, &with(&[LONGER]));
    let json = scratch.run("changes old/kitchen.pelmet new/kitchen.pelmet --write json");
    assert!(
        json.output
            .starts_with("{\n  \"format\": \"pelmet-changes/1\",\n"),
        "{json}"
    );
    assert!(json.output.contains("\"what\": \"cut length\""), "{json}");
    let html = scratch
        .run("changes old/kitchen.pelmet new/kitchen.pelmet --write html")
        .output;
    assert!(html.starts_with("<!DOCTYPE html>"), "{html}");
    assert!(html.contains(">cut length</td>"), "{html}");
    for _ in 0..2 {
        let done = scratch.run(
            "changes old/kitchen.pelmet new/kitchen.pelmet --write html --out told/changes.html",
        );
        assert_eq!(
            (done.status, done.output.as_str(), done.errors.as_str()),
            (0, "", "")
        );
        assert_eq!(scratch.read("told/changes.html"), html);
    }
}

/// What the README tells users of git to do, in a folder `jobs` of a repository.
#[test]
fn git_shows_what_changed_as_the_readme_says() {
    let scratch = Scratch::with(&[("repository/jobs/kitchen.pelmet", SOUND)]);
    let program = Path::new(env!("CARGO_BIN_EXE_pelmet"));
    let path = std::env::var("PATH").unwrap();
    let path = format!("{}:{path}", program.parent().unwrap().display());
    let shell = |script: &str| {
        let done = Command::new("sh")
            .current_dir(scratch.path("repository"))
            .args(["-ec", script])
            .env("PATH", &path)
            .env("GIT_CONFIG_GLOBAL", "/dev/null")
            .output()
            .unwrap();
        assert!(done.status.success(), "{done:?}");
        String::from_utf8(done.stdout).unwrap()
    };
    let is_told = |shown: &str| {
        assert!(shown.contains("What changed: kitchen"), "{shown}");
        assert!(shown.contains("1 1/2 in more"), "{shown}");
    };
    shell("git init -q && git config user.name maker && git config user.email maker@example.org");
    shell(&recipe("diff"));
    shell("git add . && git commit -q -m 'The kitchen'");
    scratch.write("repository/jobs/kitchen.pelmet", with(&[LONGER]));
    is_told(&shell("git diff"));
    shell("git commit -q -a -m 'A longer drop'");
    is_told(&shell(&recipe("worktree")));
}

/// The lines of the README's block of commands that tells of this.
fn recipe(of: &str) -> String {
    let readme = include_str!("../../../../README.md");
    let blocks = readme.split("```sh\n").skip(1);
    let mut blocks = blocks.filter_map(|block| block.split("```").next());
    let is_it = |block: &&str| block.contains("git ") && block.contains(of);
    blocks.find(is_it).unwrap().to_owned()
}
