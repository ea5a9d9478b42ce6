//! What is written down about the language holds: every block of the reference and every file of the
//! standard library.

use pelmet_diagnostics::{FileId, render};
use pelmet_driver::Built;
use pelmet_tests::{Memory, blocks, designs_below, files_below, is_sound, project_at, read};

#[track_caller]
fn assert_sound(what: &str, built: &Built) {
    let shown = render::plain(&built.diagnostics, &built.sources);
    assert!(is_sound(built), "{what}:\n{shown}");
}

/// Compiles every block of a text that is marked `pelmet`; one marked `error=CODE` must give that
/// code, the others nothing.
#[track_caller]
fn assert_blocks_hold(path: &str) -> usize {
    let text = read(path);
    let blocks = blocks(&text);
    let designs: Vec<_> = blocks.iter().filter(|block| block.is("pelmet")).collect();
    for block in &designs {
        let what = format!("{path}:{}", block.line);
        let built = Memory::of_parts(&block.text).build();
        match block.value("error") {
            None => assert_sound(&what, &built),
            Some(code) => {
                let slugs: Vec<&str> = built
                    .diagnostics
                    .iter()
                    .map(|report| report.code.slug)
                    .collect();
                assert_eq!(slugs, [code], "{what}");
            }
        }
    }
    designs.len()
}

#[test]
fn every_block_of_the_reference_is_as_it_says() {
    assert!(assert_blocks_hold("grammar/README.md") >= 10);
}

#[test]
fn every_block_of_the_readme_is_as_it_says() {
    assert_blocks_hold("README.md");
}

/// The mistake the README tells people to make gives the report that the README shows.
#[test]
fn the_report_in_the_readme_is_the_one_that_is_given() {
    let readme = read("README.md");
    let blocks = blocks(&readme);
    let design = blocks.iter().find(|block| block.is("pelmet")).unwrap();
    let shown = blocks.iter().find(|block| block.is("text")).unwrap();
    let mistaken = design
        .text
        .replace("finished width: 13 in", "finished width: 30 in");
    let built = Memory::of_files([("sewing-room/landing.pelmet", mistaken)]).build();
    let given = render::plain(&built.diagnostics, &built.sources);
    assert!(given.starts_with(shown.text.as_str()), "{given}");
}

/// The lines the README adds to its design in the last steps do what it says of them.
#[test]
fn the_last_steps_of_the_readme_do_what_they_say() {
    let readme = read("README.md");
    let blocks = blocks(&readme);
    let design = &blocks.iter().find(|block| block.is("pelmet")).unwrap().text;
    let typed = |beginning: &str| {
        let (_, rest) = readme.split_once(&format!("`{beginning}")).unwrap();
        format!("{beginning}{}", rest.split('`').next().unwrap())
    };

    let expecting = format!("{design}\n{}\n", typed("expect landing"));
    assert_sound("step 6", &Memory::of(expecting.as_str()).build());
    let changed = expecting.replace("finished width: 13 in", "finished width: 12 in");
    let built = Memory::of(changed).build();
    let told = render::plain(&built.diagnostics, &built.sources);
    assert!(told.contains("[expectation-not-met]"), "{told}");

    let (house, window) = design.split_once("window landing").unwrap();
    let (library, house) = house.split_once("job \"Landing\"\n").unwrap();
    let main = format!(
        "use \"styles/house.pelmet\"\n{library}window landing{window}\n{}\n",
        typed("window stairs")
    );
    let built = Memory::of_files([
        ("main.pelmet", main),
        ("styles/house.pelmet", format!("{library}{house}")),
    ])
    .build();
    assert_sound("step 7", &built);
    let names: Vec<&str> = built
        .packet
        .iter()
        .flat_map(|packet| &packet.windows)
        .map(|window| window.name.as_str())
        .collect();
    assert_eq!(names, ["landing", "stairs"]);
}

#[test]
fn every_file_of_the_library_stands_alone() {
    for file in pelmet_stdlib::FILES {
        let project = Memory::of(format!("use standard {}\n", file.name));
        assert_sound(file.name, &project.build());
        let own = Memory::of(file.text);
        assert_sound(file.name, &own.build());
    }
}

#[test]
fn every_file_of_the_library_is_used_by_an_example() {
    let used: Vec<String> = designs_below("examples")
        .iter()
        .flat_map(|main| {
            let built = project_at(main).build();
            built
                .sources
                .files()
                .map(|file| built.sources.name(file).to_owned())
                .collect::<Vec<_>>()
        })
        .collect();
    for file in pelmet_stdlib::FILES {
        let name = format!("standard/{}.pelmet", file.name);
        assert!(used.contains(&name), "no example uses {name}");
    }
}

#[test]
fn every_file_is_in_its_usual_form() {
    let folders = ["examples", "stdlib", "compiler/cli/templates"];
    for path in folders
        .iter()
        .flat_map(|folder| files_below(folder, ".pelmet"))
    {
        let text = read(&path);
        let formatted = pelmet_syntax::format(FileId(0), &text).unwrap();
        assert_eq!(text, formatted, "run `cargo run -- format {path}`");
    }
}
