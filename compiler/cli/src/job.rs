//! A design named on the command line.

use std::path::{Path, PathBuf};

use pelmet_design::{Project, load};
use pelmet_diagnostics::{Diagnostic, codes, listed};
use pelmet_driver::{
    Built, Checked, ClothWatch, ClothsAsked, ClothsCompared, build_with, check_with, compare_cloths,
};

use crate::folder::{Folder, StandardInput};
use crate::write::folder_of;

/// Of the designs in a folder, at most so many are suggested.
const MOST_SUGGESTED: usize = 5;

/// A design named on the command line: its main file, and the project that is the folder of it.
pub struct Job {
    project: Box<dyn Project>,
    /// The name of the main file in its folder.
    main: String,
    /// The folder as it was typed, which leads to the files from here.
    typed: PathBuf,
    /// Whether the main file is what comes in at standard input.
    from_input: bool,
}

impl Job {
    /// Finds the design that a path names; the file itself is read later.
    ///
    /// # Errors
    ///
    /// Reports why the path can name no design.
    pub fn open(path: &Path) -> Result<Job, Diagnostic> {
        let shown = path.to_string_lossy();
        if path.is_dir() {
            return Err(folder_for_file(path));
        }
        let Some(name) = path.file_name() else {
            return Err(codes::file_not_found(None, &shown, None));
        };
        let Some(main) = name.to_str() else {
            let not_readable = codes::FileNotReadable {
                place: None,
                path: &shown,
                reason: "its name is not text in UTF-8",
            };
            return Err(not_readable.into());
        };
        let folder =
            Folder::open(folder_of(path)).map_err(|_| codes::file_not_found(None, &shown, None))?;
        let typed = path.parent().unwrap_or(Path::new("")).to_owned();
        Ok(Job {
            project: Box::new(folder),
            main: main.to_owned(),
            typed,
            from_input: false,
        })
    }

    /// The design at standard input, in the place of the one that a path names.
    ///
    /// # Errors
    ///
    /// Reports why that path can name no design.
    pub fn from_input(path: &Path) -> Result<Job, Diagnostic> {
        let shown = path.to_string_lossy();
        let job = Job::open(path)?;
        let folder =
            Folder::open(folder_of(path)).map_err(|_| codes::file_not_found(None, &shown, None))?;
        Ok(Job {
            project: Box::new(StandardInput::in_place_of(&job.main, folder)),
            from_input: true,
            ..job
        })
    }

    /// Does every sum of the design, for its reports alone. `watch` is told how far each search for a
    /// layout has come that a report depends on, and may break it off.
    pub fn check(&self, watch: &mut ClothWatch<'_>) -> Checked {
        check_with(&self.main, &*self.project, watch)
    }

    /// Compiles the design, with so many times the usual effort for layouts that buy less.
    /// `watch` is told how far each search has come, and may break it off.
    pub fn build(&self, effort: u32, watch: &mut ClothWatch<'_>) -> Built {
        build_with(effort, &self.main, &*self.project, watch)
    }

    /// The files of the project that the main file uses, by name.
    pub fn uses(&self) -> Vec<String> {
        let loaded = load(&self.main, &*self.project);
        let others = loaded
            .sources
            .files()
            .filter(|file| Some(*file) != loaded.main);
        others
            .map(|file| loaded.sources.name(file).to_owned())
            .collect()
    }

    /// Lays the job out with other cloths in the place of its own.
    pub fn compare_cloths(&self, asked: &ClothsAsked) -> ClothsCompared {
        compare_cloths(&self.main, &*self.project, asked)
    }

    /// The text of the main file.
    ///
    /// # Errors
    ///
    /// Reports why it cannot be had.
    pub fn text(&self) -> Result<String, Diagnostic> {
        text(&self.main, &*self.project)
    }

    /// A file of the project by a path that leads to it from here. The files of the standard
    /// library are on no disk and keep their names.
    pub fn shown(&self, name: &str) -> String {
        if self.from_input && name == self.main {
            StandardInput::NAME.to_owned()
        } else if Job::is_library(name) {
            name.to_owned()
        } else {
            self.path(name).to_string_lossy().into_owned()
        }
    }

    /// The path of a file of the project, from here.
    pub fn path(&self, name: &str) -> PathBuf {
        self.typed.join(name)
    }

    /// Whether a name is that of a file of the standard library.
    pub fn is_library(name: &str) -> bool {
        name.strip_prefix("standard/")
            .and_then(|name| name.strip_suffix(".pelmet"))
            .is_some_and(|name| pelmet_stdlib::file(name).is_some())
    }
}

/// The text of the main file of a project.
///
/// # Errors
///
/// Reports why it cannot be had.
pub fn text(main: &str, project: &dyn Project) -> Result<String, Diagnostic> {
    let loaded = load(main, project);
    match loaded.main {
        Some(file) => Ok(loaded.sources.text(file).to_owned()),
        None => Err(loaded.diagnostics.into_iter().next())
            .map_err(|why| why.unwrap_or_else(|| codes::file_not_found(None, main, None))),
    }
}

/// A folder named instead of a design in it.
fn folder_for_file(path: &Path) -> Diagnostic {
    let report = codes::file_is_folder(None, &path.to_string_lossy());
    let paths = Folder::open(path)
        .map(|folder| folder.paths())
        .unwrap_or_default();
    let designs: Vec<String> = paths
        .iter()
        .filter(|name| name.ends_with(".pelmet"))
        .map(|name| format!("`{}`", path.join(name).to_string_lossy()))
        .take(MOST_SUGGESTED)
        .collect();
    let designs: Vec<&str> = designs.iter().map(String::as_str).collect();
    if designs.is_empty() {
        report
    } else {
        report.help(format!("such as {}", listed(&designs, "or")))
    }
}
