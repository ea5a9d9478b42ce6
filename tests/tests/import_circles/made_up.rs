//! A made-up tree, which shows that a circle is found where one is, and none where none is.

use crate::arrows::{upward, used_crates};
use crate::circles::{circles, told};
use crate::house::{modules, uses};

/// The root declares, and hands on names of its children.
const ROOT: (&str, &str) = (
    "lib.rs",
    "mod cut; mod fold; mod hang; mod pin;
     pub use cut::Cut; pub use fold::*; pub(crate) use hang::Hang;",
);

/// Four modules, one of them in a folder, whose circle is closed by `pin`.
fn workshop(pin: &'static str) -> [(&'static str, &'static str); 6] {
    [
        ROOT,
        ("cut.rs", "use crate::Fold; pub struct Cut(Fold);"),
        ("fold/mod.rs", "mod pleat; pub use pleat::Fold;"),
        (
            "fold/pleat.rs",
            "pub struct Fold; fn hung() { let _ = assert!(crate::Hang::new().is_some()); }",
        ),
        (
            "hang.rs",
            "use super::pin::{self, Pin as Nail}; pub struct Hang(pin::Pin, Nail);",
        ),
        ("pin.rs", pin),
    ]
}

/// The circles of some files, each as its modules.
fn found(files: &[(&str, &str)]) -> Vec<Vec<String>> {
    let uses = uses(&modules(files.iter().copied()));
    let owned = |circle: std::collections::BTreeSet<&str>| -> Vec<String> {
        circle.into_iter().map(str::to_owned).collect()
    };
    circles(&uses).into_iter().map(owned).collect()
}

#[test]
fn a_circle_is_found_through_names_that_are_handed_on() {
    let circle = [
        "crate::cut",
        "crate::fold::pleat",
        "crate::hang",
        "crate::pin",
    ];
    for closing in [
        "pub struct Pin(crate::Cut);",
        "use crate::Cut; pub struct Pin(Cut);",
        "use super::*; pub struct Pin(Cut);",
        "pub struct Pin; fn closing() { let _ = vec![1, super::Cut::COUNT]; }",
        "pub struct Pin; fn closing() { use crate::cut; let _: cut::Cut; }",
        "pub use crate::Cut; pub struct Pin(Cut);",
    ] {
        assert_eq!(found(&workshop(closing)), [circle], "{closing}");
    }
}

#[test]
fn nothing_is_a_circle_that_only_declares_or_hands_on() {
    for open in [
        "pub struct Pin;",
        "pub use crate::Cut; pub struct Pin;",
        "use std::fmt::Debug; pub struct Pin; fn crate_cut(cut: usize) -> usize { cut }",
    ] {
        assert_eq!(found(&workshop(open)), [[""; 0]; 0], "{open}");
    }
}

#[test]
fn a_parent_and_a_child_that_use_each_other_are_a_circle() {
    let files = [
        (
            "lib.rs",
            "mod row { mod fill { fn f(_: super::Row) {} } struct Row; fn g() { fill::f(Row) } }",
        ),
        ("row.rs", ""),
    ];
    assert_eq!(found(&files[..1]), [["crate::row", "crate::row::fill"]]);
}

#[test]
fn names_that_are_handed_round_lead_nowhere() {
    let files = [
        ("main.rs", "mod here; mod there; fn f(_: here::Lost) {}"),
        (
            "here.rs",
            "pub use crate::there::Lost; pub use crate::there::*;",
        ),
        (
            "there.rs",
            "pub use crate::here::Lost; pub use crate::here::*;",
        ),
    ];
    assert_eq!(found(&files), [[""; 0]; 0]);
}

#[test]
fn a_circle_is_told_with_what_is_used() {
    let files = [
        (
            "cut.rs",
            "use crate::fold::{Fold, folded}; pub struct Cut(Fold);",
        ),
        (
            "fold.rs",
            "pub struct Fold; pub fn folded(_: crate::cut::Cut) {}",
        ),
    ];
    let uses = uses(&modules(files));
    let text = "    crate::cut\n        of crate::fold: Fold, folded\n    \
                crate::fold\n        of crate::cut: Cut\n";
    assert_eq!(told(&circles(&uses)[0], &uses), text);
}

#[test]
fn a_crate_that_uses_one_above_it_is_found() {
    let manifest = "
[package]
name = \"pelmet-fold\"

[dependencies]
pelmet-cut.workspace = true
pelmet-hang = { path = \"../hang\" }
serde.workspace = true

[target.'cfg(unix)'.dependencies]
pelmet-pin.workspace = true

[dev-dependencies]
pelmet-tests.workspace = true
";
    let used = used_crates(manifest);
    assert_eq!(used, ["cut", "hang", "pin"]);
    assert_eq!(
        upward("fold", &used, &["cut", "fold", "hang"]),
        ["hang", "pin"]
    );
    assert_eq!(
        upward("fold", &used, &["cut", "pin", "hang", "fold"]),
        [""; 0]
    );
}
