//! Writing, whole or not at all.

use std::fs;
use std::io::{self, ErrorKind, Write};
use std::path::{Path, PathBuf};

use pelmet_diagnostics::{Diagnostic, codes};
use pelmet_sheets::PacketFile;
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

/// Writes a text to a file, which is there already or is new.
///
/// # Errors
///
/// Reports why it cannot be written.
pub fn write_file(path: &Path, text: &str) -> Result<(), Diagnostic> {
    if path.exists() {
        replace_file(path, text)
    } else {
        write_new(path, text.as_bytes()).map_err(|error| not_writable(path, &error))
    }
}

/// Makes a folder hold just these files, and no others. A folder is replaced only if it holds
/// nothing but files that `may_replace` knows by their names.
///
/// # Errors
///
/// Reports what stands in the way, or why it cannot be written; the folder is then as it was.
pub fn replace_folder(
    folder: &Path,
    files: &[PacketFile],
    may_replace: fn(&str) -> bool,
) -> Result<(), Diagnostic> {
    if let Some(found) = in_the_way(folder, may_replace) {
        let path = &folder.to_string_lossy();
        let found = &found;
        return Err(codes::FileAlreadyThere { path, found }.into());
    }
    try_replace_folder(folder, files).map_err(|error| not_writable(folder, &error))
}

fn not_writable(path: &Path, error: &io::Error) -> Diagnostic {
    codes::FileNotWritable {
        path: &path.to_string_lossy(),
        reason: &error.kind().to_string(),
    }
    .into()
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
fn in_the_way(folder: &Path, may_replace: fn(&str) -> bool) -> Option<String> {
    if folder.exists() && !folder.is_dir() {
        return Some("a file of this name".to_owned());
    }
    let entries = folder.read_dir().ok()?.flatten();
    let mut names: Vec<String> = entries
        .map(|entry| entry.file_name().to_string_lossy().into_owned())
        .filter(|name| !may_replace(name))
        .collect();
    names.sort();
    names.first().map(|name| format!("`{name}` in it"))
}

/// The new folder is made beside the target and then takes its place. The old one, where there is
/// one, goes with what is left of the work.
fn try_replace_folder(folder: &Path, files: &[PacketFile]) -> io::Result<()> {
    let folder = folder.canonicalize().unwrap_or_else(|_| folder.to_owned());
    fs::create_dir_all(folder_of(&folder))?;
    let beside = Builder::new()
        .prefix(PREFIX)
        .tempdir_in(folder_of(&folder))?;
    let new = beside.path().join("new");
    for PacketFile { name, contents } in files {
        write_new(&new.join(name), contents)?;
    }
    if !folder.exists() {
        return fs::rename(&new, &folder);
    }
    exchange(&new, &folder).or_else(|_| one_after_the_other(&new, &folder, beside))
}

/// Lets two folders take each other's place in one step, so that at no moment, whatever stops the
/// program, either of the two names has nothing behind it.
#[cfg(any(target_os = "linux", target_os = "android", target_vendor = "apple"))]
fn exchange(one: &Path, other: &Path) -> io::Result<()> {
    use rustix::fs::{CWD, RenameFlags, renameat_with};
    Ok(renameat_with(CWD, one, CWD, other, RenameFlags::EXCHANGE)?)
}

/// Elsewhere no such step is known.
#[cfg(not(any(target_os = "linux", target_os = "android", target_vendor = "apple")))]
fn exchange(_: &Path, _: &Path) -> io::Result<()> {
    Err(ErrorKind::Unsupported.into())
}

/// Where the file system cannot exchange: two renamings. Should the second fail, and putting back
/// too, what was there is kept where it is.
fn one_after_the_other(new: &Path, folder: &Path, beside: TempDir) -> io::Result<()> {
    let old = beside.path().join("old");
    fs::rename(folder, &old)?;
    fs::rename(new, folder).inspect_err(|_| {
        if fs::rename(&old, folder).is_err() {
            let _: PathBuf = beside.keep();
        }
    })
}

fn write_new(path: &Path, contents: &[u8]) -> io::Result<()> {
    fs::create_dir_all(folder_of(path))?;
    let mut file = fs::File::create_new(path)?;
    file.write_all(contents)?;
    file.sync_all()
}

/// The folder a path lies in; of a bare name, the one we stand in.
pub fn folder_of(path: &Path) -> &Path {
    match path.parent() {
        Some(folder) if !folder.as_os_str().is_empty() => folder,
        _ => Path::new("."),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn folders() -> (TempDir, PathBuf, PathBuf) {
        let here = tempfile::tempdir().unwrap();
        let (new, old) = (here.path().join("new"), here.path().join("old"));
        for folder in [&new, &old] {
            write_new(&folder.join("name"), folder.as_os_str().as_encoded_bytes()).unwrap();
        }
        (here, new, old)
    }

    fn name_in(folder: &Path) -> PathBuf {
        PathBuf::from(fs::read_to_string(folder.join("name")).unwrap())
    }

    #[cfg(target_os = "linux")]
    #[test]
    fn two_folders_take_each_others_place() {
        let (_here, new, old) = folders();
        exchange(&new, &old).unwrap();
        assert_eq!((name_in(&new), name_in(&old)), (old, new));
    }

    #[test]
    fn without_an_exchange_the_new_folder_still_takes_the_place_of_the_old() {
        let (here, new, old) = folders();
        one_after_the_other(&new, &old, Builder::new().tempdir_in(here.path()).unwrap()).unwrap();
        assert_eq!(name_in(&old), new);
        assert_eq!(here.path().read_dir().unwrap().count(), 1);
    }

    #[test]
    fn where_the_new_folder_cannot_take_its_place_the_old_one_is_put_back() {
        let (here, new, old) = folders();
        fs::remove_dir_all(&new).unwrap();
        let beside = Builder::new().tempdir_in(here.path()).unwrap();
        one_after_the_other(&new, &old, beside).unwrap_err();
        assert_eq!(name_in(&old), old);
    }
}
