//! The designs that are looked through.

use pelmet_design::{Loaded, Resolved, load, resolve};
use pelmet_diagnostics::Severity;
use pelmet_tests::{Memory, blocks, designs_below, project_at, read};

/// What a project says, and what it comes to.
pub fn resolved(project: &Memory) -> (Loaded, Resolved) {
    let loaded = load(&project.main, project);
    let resolved = resolve(&loaded);
    (loaded, resolved)
}

/// Every design that is sound: where it stands, and its project.
pub fn sound_designs() -> Vec<(String, Memory)> {
    let examples = designs_below("examples").into_iter();
    let mut designs: Vec<(String, Memory)> = examples
        .map(|main| (main.clone(), project_at(&main)))
        .collect();
    for path in ["grammar/README.md", "README.md"] {
        for block in blocks(&read(path))
            .iter()
            .filter(|block| block.is("pelmet"))
        {
            let what = format!("{path}:{}", block.line);
            designs.push((what, Memory::of_parts(&block.text)));
        }
    }
    designs.push(("the library".to_owned(), library_as_project()));
    designs.retain(|(_, project)| {
        let (loaded, resolved) = resolved(project);
        let mut found = loaded.diagnostics.iter().chain(&resolved.diagnostics);
        found.all(|report| report.severity != Severity::Error)
    });
    designs
}

/// The library as files of a project, in which names can be changed.
pub fn library_as_project() -> Memory {
    let own = |text: &str| {
        let lines = text
            .lines()
            .filter(|line| !line.starts_with("use standard"));
        lines.map(|line| format!("{line}\n")).collect::<String>()
    };
    let names = pelmet_stdlib::FILES
        .iter()
        .map(|file| format!("{}.pelmet", file.name));
    let uses: String = names
        .clone()
        .map(|name| format!("use \"{name}\"\n"))
        .collect();
    let files = pelmet_stdlib::FILES.iter().map(|file| own(file.text));
    let main = std::iter::once(("main.pelmet".to_owned(), uses));
    Memory::of_files(main.chain(names.zip(files)))
}
