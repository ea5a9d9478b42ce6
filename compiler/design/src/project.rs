//! Where texts come from. Only the command line knows of files; here a project is something that
//! gives bytes for a path.

/// A project folder, or what stands for one.
///
/// Paths are relative to the folder of the main file, with `/` between their parts and without
/// `.` or `..`.
pub trait Project {
    /// The bytes of a file.
    ///
    /// # Errors
    ///
    /// Says why they cannot be had.
    fn read(&self, path: &str) -> Result<Vec<u8>, ReadFinding>;

    /// The paths of files a maker may have meant, for suggestions.
    fn paths(&self) -> Vec<String> {
        Vec::new()
    }
}

/// Why a file cannot be read.
#[derive(Clone, PartialEq, Eq, Debug)]
pub enum ReadFinding {
    /// There is no such file.
    NotFound,
    /// It is a folder.
    IsFolder,
    /// It lies outside the project folder once links are followed.
    OutsideProject,
    /// It is larger than [`pelmet_syntax::MAXIMUM_FILE_BYTES`].
    TooLarge {
        /// Its size in bytes.
        bytes: u64,
    },
    /// The system refuses, in its own words.
    NotReadable(String),
}

/// A path as written in a file, made relative to the project folder.
///
/// `within` is the path of the file that names it. `None` if it leaves the project folder or is
/// absolute.
pub(crate) fn resolve_path(within: &str, written: &str) -> Option<String> {
    let written = written.replace('\\', "/");
    if written.starts_with('/') || written.contains(':') {
        return None;
    }
    let folder = within.rsplit_once('/').map_or("", |(folder, _)| folder);
    let mut parts: Vec<&str> = folder.split('/').filter(|part| !part.is_empty()).collect();
    for part in written.split('/') {
        match part {
            "" | "." => {}
            ".." => {
                parts.pop()?;
            }
            part => parts.push(part),
        }
    }
    Some(parts.join("/"))
}

#[cfg(test)]
mod tests {
    use super::resolve_path;

    #[test]
    fn a_path_is_taken_from_the_folder_of_its_file_and_stays_in_the_project() {
        for (within, written, resolved) in [
            (
                "window.pelmet",
                "styles/house.pelmet",
                Some("styles/house.pelmet"),
            ),
            (
                "styles/house.pelmet",
                "pleats.pelmet",
                Some("styles/pleats.pelmet"),
            ),
            (
                "styles/house.pelmet",
                "../shared.pelmet",
                Some("shared.pelmet"),
            ),
            (
                "styles/house.pelmet",
                "./deep/../pleats.pelmet",
                Some("styles/pleats.pelmet"),
            ),
            (
                "window.pelmet",
                "styles\\house.pelmet",
                Some("styles/house.pelmet"),
            ),
            ("window.pelmet", "../house.pelmet", None),
            ("styles/house.pelmet", "../../house.pelmet", None),
            ("window.pelmet", "/etc/passwd", None),
            ("window.pelmet", "C:\\house.pelmet", None),
        ] {
            assert_eq!(
                resolve_path(within, written).as_deref(),
                resolved,
                "{written}"
            );
        }
    }
}
