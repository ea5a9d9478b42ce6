//! The list of limits that developers read names every one there is.

use std::collections::BTreeSet;

use pelmet_tests::{files_below, read};

/// How the names of limits begin.
const BEGINNING: &str = "MAXIMUM_";

/// The names of limits in a text, without their beginning.
fn limits_in(text: &str) -> BTreeSet<String> {
    let after = text.split(BEGINNING).skip(1);
    let name = |rest: &str| -> String {
        rest.chars()
            .take_while(|letter| letter.is_ascii_uppercase() || *letter == '_')
            .collect()
    };
    after.map(name).collect()
}

#[test]
fn every_limit_of_the_code_is_in_the_list() {
    let developers = read("DEVELOPERS.md");
    let (_, section) = developers.split_once("## Limits").unwrap();
    let section = section.split("\n## ").next().unwrap();
    let declared: String = files_below("compiler", ".rs")
        .iter()
        .flat_map(|path| read(path).lines().map(str::to_owned).collect::<Vec<_>>())
        .filter(|line| line.contains("const MAXIMUM_"))
        .collect();
    assert_eq!(limits_in(&declared), limits_in(section));
}
