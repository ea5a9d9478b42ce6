//! The files of this repository, as tests see them.
#![expect(
    clippy::disallowed_methods,
    clippy::expect_used,
    reason = "a test reads the repository, and stops where it is not whole"
)]

use std::fs;
use std::path::{Path, PathBuf};

use crate::Memory;

/// Set this variable to have expected texts written anew instead of compared.
const UPDATE: &str = "PELMET_UPDATE";

/// The path of a file or folder of the repository.
pub fn path(within: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("..")
        .join(within)
}

/// The text of a file of the repository.
///
/// # Panics
///
/// If there is no such file, or it is not text.
pub fn read(within: &str) -> String {
    fs::read_to_string(path(within)).expect(within)
}

/// The bytes of a file of the repository.
///
/// # Panics
///
/// If there is no such file.
pub fn read_bytes(within: &str) -> Vec<u8> {
    fs::read(path(within)).expect(within)
}

/// Writes a file of the repository.
///
/// # Panics
///
/// If it cannot be written.
pub fn write(within: &str, contents: impl AsRef<[u8]>) {
    fs::write(path(within), contents).expect(within);
}

/// Whether expected texts are to be written anew.
pub fn is_update() -> bool {
    std::env::var(UPDATE).is_ok()
}

/// The files below a folder that end so, sorted, by their path within the repository.
///
/// # Panics
///
/// If there is no such folder.
pub fn files_below(folder: &str, ending: &str) -> Vec<String> {
    let mut found = Vec::new();
    let mut folders = vec![folder.to_owned()];
    while let Some(folder) = folders.pop() {
        for entry in path(&folder).read_dir().expect(&folder) {
            let entry = entry.expect(&folder);
            let within = format!("{folder}/{}", entry.file_name().to_string_lossy());
            if entry.path().is_dir() {
                folders.push(within);
            } else if within.ends_with(ending) {
                found.push(within);
            }
        }
    }
    found.sort();
    found
}

/// The main files of the jobs in the folders of a folder: `examples/hall/hall.pelmet`.
pub fn designs_below(folder: &str) -> Vec<String> {
    let depth = folder.split('/').count().saturating_add(2);
    let mut designs = files_below(folder, ".pelmet");
    designs.retain(|design| design.split('/').count() == depth);
    designs
}

/// The project whose main file is at this path of the repository, with every file in its folder.
///
/// # Panics
///
/// If there is no such file.
pub fn project_at(main: &str) -> Memory {
    let (folder, name) = main.rsplit_once('/').expect("a file in a folder");
    let names = files_below(folder, "").into_iter();
    let files = names.map(|within| {
        let bytes = read_bytes(&within);
        let name = within.trim_start_matches(folder).trim_start_matches('/');
        (name.to_owned(), bytes)
    });
    Memory {
        main: name.to_owned(),
        files: files.collect(),
    }
}
