//! No modules use each other in a circle of more than three, and no crate uses one above it.
//!
//! Where this fails it prints each circle, and under each of its modules what that uses of the
//! others. To see the circles that are still allowed:
//!
//!     cargo test -p pelmet-tests --test import_circles -- --nocapture
#![expect(
    clippy::panic,
    clippy::print_stdout,
    clippy::indexing_slicing,
    reason = "a test stops at the first broken promise, and says what it found"
)]

mod arrows;
mod circles;
mod house;
mod lookup;
mod made_up;
mod module;

use std::collections::BTreeSet;

use arrows::{upward, used_crates};
use circles::{circles, told};
use house::{modules, uses};
use pelmet_tests::{files_below, read};

/// How many modules may use each other in a circle.
const MAXIMUM_CIRCLE: usize = 3;

/// The crates with a larger circle, and how many modules are in it: to become fewer, never more.
const LARGER_CIRCLES: [(&str, usize); 0] = [];

/// The crates from the ground up: each uses only those before it.
const ORDER: [&str; 15] = [
    "measure",
    "model",
    "diagnostics",
    "lettering",
    "stdlib",
    "syntax",
    "design",
    "workroom",
    "bolt",
    "packet",
    "changes",
    "driver",
    "sheets",
    "cli",
    "tests",
];

/// The folders of all crates.
fn crates() -> Vec<String> {
    let folders = ["compiler", "stdlib", "tests"];
    let manifests = folders
        .iter()
        .flat_map(|folder| files_below(folder, "/Cargo.toml"));
    // The fuzz targets are a workspace of their own.
    let manifests = manifests.filter(|manifest| !manifest.starts_with("tests/fuzz/"));
    manifests
        .filter_map(|manifest| manifest.strip_suffix("/Cargo.toml").map(str::to_owned))
        .collect()
}

/// The last name of a path of folders.
fn last(folder: &str) -> &str {
    folder.rsplit('/').next().unwrap_or(folder)
}

/// The size of the largest circle of a crate; those that are too large are printed.
fn largest_circle(folder: &str) -> usize {
    let source = format!("{folder}/src/");
    let files = files_below(source.trim_end_matches('/'), ".rs");
    let texts: Vec<String> = files.iter().map(|file| read(file)).collect();
    let within = files.iter().filter_map(|file| file.strip_prefix(&source));
    let uses = uses(&modules(within.zip(texts.iter().map(String::as_str))));
    let circles = circles(&uses);
    for circle in circles
        .iter()
        .filter(|circle| circle.len() > MAXIMUM_CIRCLE)
    {
        println!("{folder}: a circle of {} modules", circle.len());
        println!("{}", told(circle, &uses));
    }
    circles.first().map_or(1, BTreeSet::len)
}

#[test]
fn no_circle_of_modules_is_large() {
    let found: Vec<(String, usize)> = crates()
        .into_iter()
        .map(|folder| (last(&folder).to_owned(), largest_circle(&folder)))
        .filter(|(_, size)| *size > MAXIMUM_CIRCLE)
        .collect();
    let allowed = LARGER_CIRCLES.map(|(name, size)| (name.to_owned(), size));
    assert_eq!(
        found, allowed,
        "left are the largest circles found, right LARGER_CIRCLES: break what grew, lower what shrank"
    );
}

#[test]
fn no_crate_uses_one_above_it() {
    let mut found = Vec::new();
    for folder in crates() {
        let manifest = read(&format!("{folder}/Cargo.toml"));
        let name = last(&folder);
        assert!(ORDER.contains(&name), "{name} has no place in ORDER");
        let above = upward(name, &used_crates(&manifest), &ORDER);
        found.extend(
            above
                .iter()
                .map(|other| (name.to_owned(), (*other).to_owned())),
        );
    }
    assert!(found.is_empty(), "these use a crate above them: {found:?}");
}
