//! The standard library, written in the language and embedded here.
//!
//! The files stand beside this crate's `Cargo.toml`, to be read as examples; they use nothing that a
//! maker's own file could not.

/// One file of the library.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct LibraryFile {
    /// What a design calls it: `use standard pleats`.
    pub name: &'static str,
    /// The whole text.
    pub text: &'static str,
}

/// Every file of the library, by name.
pub const FILES: &[LibraryFile] = &[
    LibraryFile {
        name: "headings",
        text: include_str!("../headings.pelmet"),
    },
    LibraryFile {
        name: "methods",
        text: include_str!("../methods.pelmet"),
    },
    LibraryFile {
        name: "outlines",
        text: include_str!("../outlines.pelmet"),
    },
    LibraryFile {
        name: "panels",
        text: include_str!("../panels.pelmet"),
    },
    LibraryFile {
        name: "pleats",
        text: include_str!("../pleats.pelmet"),
    },
    LibraryFile {
        name: "rods",
        text: include_str!("../rods.pelmet"),
    },
];

/// The file of this name, if there is one.
#[must_use]
pub fn file(name: &str) -> Option<&'static LibraryFile> {
    FILES.iter().find(|file| file.name == name)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_are_in_order_and_each_stands_once() {
        assert!(FILES.is_sorted_by(|one, next| one.name < next.name));
    }

    #[test]
    fn every_file_is_found_by_its_name_and_no_other() {
        for wanted in FILES {
            assert_eq!(file(wanted.name), Some(wanted));
        }
        assert_eq!(file("pleat"), None);
    }

    #[test]
    fn every_file_on_disk_is_embedded() {
        let folder = std::path::Path::new(env!("CARGO_MANIFEST_DIR"));
        let mut on_disk: Vec<String> = folder
            .read_dir()
            .expect("the folder of this crate")
            .filter_map(|entry| {
                let name = entry
                    .expect("a readable folder")
                    .file_name()
                    .into_string()
                    .ok()?;
                name.strip_suffix(".pelmet").map(String::from)
            })
            .collect();
        on_disk.sort();
        let embedded: Vec<&str> = FILES.iter().map(|file| file.name).collect();
        assert_eq!(on_disk, embedded);
    }

    #[test]
    fn every_file_is_tidy_text() {
        for LibraryFile { name, text } in FILES {
            assert!(
                text.starts_with("# "),
                "{name} begins by saying what it holds"
            );
            assert!(
                text.ends_with('\n') && !text.ends_with("\n\n"),
                "{name} ends with one line end"
            );
            assert!(
                !text.contains(['\t', '\r']),
                "{name} has no tabs or foreign line ends"
            );
        }
    }
}
