//! Projects as the machine has them: a folder on disk, or what comes in at standard input.

use std::collections::VecDeque;
use std::fs::{DirEntry, File};
use std::io::{self, ErrorKind, Read};
use std::path::{Path, PathBuf};

use pelmet_design::{Project, ReadFinding};
use pelmet_syntax::MAXIMUM_FILE_BYTES;

/// How deep below the project folder files are looked for, to suggest one.
const MAXIMUM_DEPTH: usize = 8;

/// Of how many files and folders the names are looked at, to suggest one.
const MAXIMUM_ENTRIES: usize = 2_000;

/// The endings of the files a design may name.
const ENDINGS: [&str; 2] = ["pelmet", "csv"];

/// A project folder on disk; nothing outside it can be read through it, not even by a link.
#[derive(Clone, Debug)]
pub struct Folder {
    /// Without links, so that it can be compared.
    root: PathBuf,
}

impl Folder {
    /// Opens a folder.
    ///
    /// # Errors
    ///
    /// The system's own, if there is no such folder.
    pub fn open(path: &Path) -> io::Result<Folder> {
        Ok(Folder {
            root: path.canonicalize()?,
        })
    }

    /// Finds a file within the folder, following links.
    fn find(&self, path: &str) -> Result<PathBuf, ReadFinding> {
        let file = self
            .root
            .join(path)
            .canonicalize()
            .map_err(|error| trouble(&error))?;
        if file.starts_with(&self.root) {
            Ok(file)
        } else {
            Err(ReadFinding::OutsideProject)
        }
    }
}

impl Project for Folder {
    fn read(&self, path: &str) -> Result<Vec<u8>, ReadFinding> {
        let file = self.find(path)?;
        let metadata = file.metadata().map_err(|error| trouble(&error))?;
        if metadata.is_dir() {
            return Err(ReadFinding::IsFolder);
        }
        // Opening a pipe would wait for whoever writes into it.
        if !metadata.is_file() {
            return Err(ReadFinding::NotReadable(
                "it is not a plain file".to_owned(),
            ));
        }
        if metadata.len() > limit() {
            return Err(ReadFinding::TooLarge {
                bytes: metadata.len(),
            });
        }
        read_file(&file, limit()).map_err(|error| trouble(&error))
    }

    fn paths(&self) -> Vec<String> {
        let mut found = Vec::new();
        let mut seen = 0_usize;
        let mut folders = VecDeque::from([(self.root.clone(), String::new(), 0_usize)]);
        while let Some((folder, prefix, depth)) = folders.pop_front() {
            for entry in visible_entries(&folder, MAXIMUM_ENTRIES.saturating_sub(seen)) {
                seen = seen.saturating_add(1);
                let (path, name) = (entry.path(), format!("{prefix}{}", name_of(&entry)));
                let is_folder = entry.file_type().is_ok_and(|kind| kind.is_dir());
                if is_folder && depth < MAXIMUM_DEPTH {
                    folders.push_back((path, format!("{name}/"), depth.saturating_add(1)));
                } else if !is_folder && has_known_ending(&path) {
                    found.push(name);
                }
            }
        }
        found
    }
}

/// What comes in at standard input, in the place of one file of a project. It is read once.
pub struct StandardInput {
    /// The name of that file.
    name: String,
    /// The folder with all the others; nothing where it stands alone.
    beside: Option<Folder>,
}

impl StandardInput {
    /// What stands for standard input among the files of a command, and is shown in reports.
    pub const NAME: &str = "-";

    /// A project of this one file, called [`StandardInput::NAME`].
    pub fn alone() -> StandardInput {
        StandardInput {
            name: StandardInput::NAME.to_owned(),
            beside: None,
        }
    }

    /// In the place of the file of that name in a folder.
    pub fn in_place_of(name: &str, beside: Folder) -> StandardInput {
        StandardInput {
            name: name.to_owned(),
            beside: Some(beside),
        }
    }
}

impl Project for StandardInput {
    fn read(&self, path: &str) -> Result<Vec<u8>, ReadFinding> {
        if path == self.name {
            read_stream(io::stdin(), limit()).map_err(|error| trouble(&error))
        } else {
            let beside = self.beside.as_ref();
            beside.map_or(Err(ReadFinding::NotFound), |folder| folder.read(path))
        }
    }
}

/// The bytes of a file, but no more than one beyond `limit`.
///
/// # Errors
///
/// The system's own.
#[expect(
    clippy::disallowed_methods,
    reason = "this is the one place that opens files to read them"
)]
pub fn read_file(file: &Path, limit: u64) -> io::Result<Vec<u8>> {
    read_stream(File::open(file)?, limit)
}

/// The bytes of a stream, but no more than show that there are too many: a file may grow while it
/// is read.
fn read_stream(stream: impl Read, limit: u64) -> io::Result<Vec<u8>> {
    let mut bytes = Vec::new();
    stream
        .take(limit.saturating_add(1))
        .read_to_end(&mut bytes)?;
    Ok(bytes)
}

fn limit() -> u64 {
    u64::try_from(MAXIMUM_FILE_BYTES).unwrap_or(u64::MAX)
}

/// What is in a folder and not hidden, in the order of the names; of a folder that cannot be read,
/// nothing.
fn visible_entries(folder: &Path, limit: usize) -> Vec<DirEntry> {
    let entries = folder.read_dir().into_iter().flatten().flatten();
    let visible = entries.filter(|entry| !name_of(entry).starts_with('.'));
    let mut visible: Vec<DirEntry> = visible.take(limit).collect();
    visible.sort_by_key(DirEntry::file_name);
    visible
}

fn name_of(entry: &DirEntry) -> String {
    entry.file_name().to_string_lossy().into_owned()
}

fn has_known_ending(path: &Path) -> bool {
    path.extension()
        .is_some_and(|ending| ENDINGS.iter().any(|known| ending == *known))
}

fn trouble(error: &io::Error) -> ReadFinding {
    match error.kind() {
        // A path through a file is one to nothing.
        ErrorKind::NotFound | ErrorKind::NotADirectory => ReadFinding::NotFound,
        kind => ReadFinding::NotReadable(kind.to_string()),
    }
}
