//! Writing, whole or not at all.

use std::fs;
use std::io::{self, ErrorKind, Write};
use std::path::{Path, PathBuf};

use pelmet_diagnostics::{Diagnostic, codes};
use tempfile::{Builder, NamedTempFile, TempDir};

/// What the folders and files begin with that stand beside a target while it is written.
const PREFIX: &str = ".pelmet-";

/// Puts a text in the place of a file's own, keeping its permissions.
///
/// # Errors
///
/// Reports why it cannot be written; the file is then as it was.
pub fn replace_file(path: &Path, text: &str) -> Result<(), Diagnostic> {
    try_replace_file(path, text).map_err(|error| not_writable(path, &error))
}

/// Makes a folder hold just these files, by name and text. A folder is replaced only if it holds
/// nothing that is not among `replaceable`.
///
/// # Errors
///
/// Reports what stands in the way, or why it cannot be written; the folder is then as it was.
pub fn replace_folder(
    folder: &Path,
    files: &[(&str, &str)],
    replaceable: &[&str],
) -> Result<(), Diagnostic> {
    if let Some(found) = in_the_way(folder, replaceable) {
        return Err(codes::file_already_there(&folder.to_string_lossy(), &found));
    }
    try_replace_folder(folder, files).map_err(|error| not_writable(folder, &error))
}

fn not_writable(path: &Path, error: &io::Error) -> Diagnostic {
    codes::file_not_writable(&path.to_string_lossy(), &error.kind().to_string())
}

fn try_replace_file(path: &Path, text: &str) -> io::Result<()> {
    // Through links, so that what is replaced is the file and not the link to it.
    let path = path.canonicalize()?;
    let permissions = path.metadata()?.permissions();
    if permissions.readonly() {
        return Err(ErrorKind::PermissionDenied.into());
    }
    let mut beside = Builder::new()
        .prefix(PREFIX)
        .tempfile_in(folder_of(&path))?;
    beside.write_all(text.as_bytes())?;
    beside.as_file().set_permissions(permissions)?;
    beside.as_file().sync_all()?;
    NamedTempFile::persist(beside, path)?;
    Ok(())
}

/// What stands at a folder's place and must not be lost.
fn in_the_way(folder: &Path, replaceable: &[&str]) -> Option<String> {
    if folder.exists() && !folder.is_dir() {
        return Some("a file of this name".to_owned());
    }
    let entries = folder.read_dir().ok()?.flatten();
    let mut names: Vec<String> = entries
        .map(|entry| entry.file_name().to_string_lossy().into_owned())
        .filter(|name| !replaceable.contains(&name.as_str()))
        .collect();
    names.sort();
    names.first().map(|name| format!("`{name}` in it"))
}

/// Both the new folder and the old one stand in a temporary folder beside the target for a moment,
/// so that each step of the exchange is one renaming.
fn try_replace_folder(folder: &Path, files: &[(&str, &str)]) -> io::Result<()> {
    let folder = folder.canonicalize().unwrap_or_else(|_| folder.to_owned());
    fs::create_dir_all(folder_of(&folder))?;
    let beside = Builder::new()
        .prefix(PREFIX)
        .tempdir_in(folder_of(&folder))?;
    let (new, old) = (beside.path().join("new"), beside.path().join("old"));
    for (name, text) in files {
        write_new(&new.join(name), text)?;
    }
    if folder.exists() {
        fs::rename(&folder, &old)?;
    }
    fs::rename(&new, &folder).inspect_err(|_| put_back(&old, &folder, beside))
}

/// Should even this fail, what was there is kept where it is.
fn put_back(old: &Path, folder: &Path, beside: TempDir) {
    if old.exists() && fs::rename(old, folder).is_err() {
        let _: PathBuf = beside.keep();
    }
}

fn write_new(path: &Path, text: &str) -> io::Result<()> {
    fs::create_dir_all(folder_of(path))?;
    let mut file = fs::File::create_new(path)?;
    file.write_all(text.as_bytes())?;
    file.sync_all()
}

/// The folder a path lies in; of a bare name, the one we stand in.
pub fn folder_of(path: &Path) -> &Path {
    match path.parent() {
        Some(folder) if !folder.as_os_str().is_empty() => folder,
        _ => Path::new("."),
    }
}
