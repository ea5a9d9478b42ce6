//! The order in which things are written never matters.
#![expect(
    clippy::unwrap_used,
    reason = "a test stops at the first broken promise"
)]

use pelmet_tests::{Memory, blocks, designs_below, project_at, read, shuffled};

/// How many other orders of each design are tried.
const ORDERS: u64 = 12;

/// The same project with every file of it in another order.
fn in_other_order(project: &Memory, seed: u64) -> Memory {
    let mut other = project.clone();
    for (path, bytes) in &mut other.files {
        if path.ends_with(".pelmet") {
            *bytes = shuffled(std::str::from_utf8(bytes).unwrap(), seed).into();
        }
    }
    other
}

#[track_caller]
fn assert_order_does_not_matter(what: &str, project: &Memory) {
    let packet = |project: &Memory| project.build().packet.map(|packet| packet.to_json());
    let written = packet(project);
    assert!(written.is_some(), "{what} is sound");
    for seed in 0..ORDERS {
        let other = in_other_order(project, seed);
        assert_eq!(packet(&other), written, "{what}, in the order of {seed}");
    }
}

#[test]
fn every_example_gives_the_same_packet_in_any_order() {
    for main in designs_below("examples") {
        assert_order_does_not_matter(&main, &project_at(&main));
    }
}

#[test]
fn every_block_of_the_reference_gives_the_same_packet_in_any_order() {
    let text = read("grammar/README.md");
    for block in blocks(&text).iter().filter(|block| block.info == "pelmet") {
        let project = Memory::of_parts(&block.text);
        assert_order_does_not_matter(&format!("line {}", block.line), &project);
    }
}

#[test]
fn mistakes_are_the_same_in_any_order() {
    let text = read("tests/cases/twenty-mistakes.pelmet");
    let slugs = |project: &Memory| {
        let mut slugs: Vec<&str> = project
            .build()
            .diagnostics
            .iter()
            .map(|report| report.code.slug)
            .collect();
        slugs.sort_unstable();
        slugs
    };
    // A line that cannot be read does not survive being moved, so those are left where they are.
    let project = Memory::of(text);
    let written = slugs(&project);
    for seed in 0..ORDERS {
        assert_eq!(
            slugs(&in_other_order(&project, seed)),
            written,
            "in the order of {seed}"
        );
    }
}
