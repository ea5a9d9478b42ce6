//! The examples are sound, and the packets they make are what they were, are as the schema says, and
//! add up.
//!
//! Of one example the packet stands in the repository, to be read. Of every example there is a line
//! for each file of its packet in `examples/packets.sha256`, so that no byte changes unseen. Both are
//! written anew, instead of compared, with the variable `PELMET_UPDATE` set.
#![expect(
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    reason = "a test stops at the first broken promise"
)]

mod planted;
mod sums;

use std::sync::LazyLock;

use pelmet_diagnostics::render;
use pelmet_sheets::{PacketChoice, PacketFile, files};
use pelmet_tests::{designs_below, is_sound, is_update, project_at, read, read_bytes, write};
use serde_json::Value;
use sha2::{Digest, Sha256};

/// An example as it is built.
struct Example {
    /// The path of its main file: `examples/hall/hall.pelmet`.
    main: String,
    /// The files of its usual packet.
    files: Vec<PacketFile>,
    /// The packet as another program reads it.
    packet: Value,
}

/// Where the packet stands that is kept to be read, and which of its files.
const KEPT: &str = "examples/kitchen-window/kitchen-window.packet";
const KEPT_FILES: [&str; 2] = ["packet.html", "packet.json"];

/// Where the hashes stand, as `sha256sum` writes and checks them.
const HASHES: &str = "examples/packets.sha256";

/// Every example, built once for all tests.
static EXAMPLES: LazyLock<Vec<Example>> = LazyLock::new(|| {
    let designs = designs_below("examples");
    assert!(designs.len() >= 3, "{designs:?}");
    designs.into_iter().map(example).collect()
});

fn example(main: String) -> Example {
    let built = project_at(&main).build();
    let shown = render::plain(&built.diagnostics, &built.sources);
    assert!(is_sound(&built), "{main}:\n{shown}");
    let packet = built.packet.expect("what is sound makes a packet");
    let json = packet.to_json();
    Example {
        main,
        files: files(&packet, &PacketChoice::default()),
        packet: json.parse().expect("a packet is JSON"),
    }
}

impl Example {
    /// The name of its folder.
    fn name(&self) -> &str {
        self.main.split('/').nth(1).unwrap_or_default()
    }
}

/// The example of this name.
fn example_called(name: &str) -> &'static Example {
    let mut examples = EXAMPLES.iter();
    let found = examples.find(|example| example.name() == name);
    found.unwrap_or_else(|| panic!("there is no example {name}"))
}

/// A line for each file of each packet: the hash of its bytes, and where it stands.
fn hashes() -> String {
    let files = EXAMPLES
        .iter()
        .flat_map(|example| example.files.iter().map(|file| (example.name(), file)));
    let lines = files.map(|(example, file)| {
        let hash = Sha256::digest(&file.contents);
        let hash: String = hash.iter().map(|byte| format!("{byte:02x}")).collect();
        format!("{hash}  {example}/{}\n", file.name)
    });
    lines.collect()
}

#[test]
fn every_packet_is_what_it_was() {
    let now = hashes();
    if is_update() {
        write(HASHES, &now);
    }
    let was = read(HASHES);
    let changed: Vec<&str> = now.lines().filter(|line| !was.contains(line)).collect();
    assert!(
        now == was,
        "DEVELOPERS.md says how to see what changed, and how to renew {HASHES}:\n{}",
        changed.join("\n")
    );
}

#[test]
fn the_packet_to_read_is_up_to_date() {
    let example = example_called("kitchen-window");
    let kept = example.files.iter();
    for file in kept.filter(|file| KEPT_FILES.contains(&file.name.as_str())) {
        let path = format!("{KEPT}/{}", file.name);
        if is_update() {
            write(&path, &file.contents);
        }
        let is_up_to_date = read_bytes(&path) == file.contents;
        assert!(
            is_up_to_date,
            "run `cargo run -- build --quiet {}`",
            example.main
        );
    }
}

#[test]
fn every_packet_is_as_the_schema_says() {
    let schema = read("compiler/packet/packet.schema.json");
    let schema: Value = schema.parse().unwrap();
    let schema = jsonschema::draft202012::new(&schema).unwrap();
    for example in EXAMPLES.iter() {
        let mistakes = schema.iter_errors(&example.packet);
        let mistakes: Vec<String> = mistakes.map(|mistake| mistake.to_string()).collect();
        assert!(
            mistakes.is_empty(),
            "{}: {}",
            example.main,
            mistakes.join("\n")
        );
    }
}

#[test]
fn every_packet_adds_up() {
    let faults = EXAMPLES.iter().flat_map(|example| {
        let sums = sums::of(&example.packet);
        assert!(
            sums.counted > 100,
            "{}: {} sums",
            example.main,
            sums.counted
        );
        let named = |fault| format!("{}: {fault}", example.main);
        sums.faults.into_iter().map(named)
    });
    let faults: Vec<String> = faults.collect();
    assert!(faults.is_empty(), "{}", faults.join("\n"));
}
