//! A project that is on no disk.

use std::collections::BTreeMap;

use pelmet_design::{Project, ReadFinding};
use pelmet_diagnostics::Example;
use pelmet_driver::{Built, build};

/// A project that is on no disk: its files by path, one of which is the main one.
#[derive(Clone, Debug)]
pub struct Memory {
    /// The path of the main file.
    pub main: String,
    /// The bytes of every file, by path.
    pub files: BTreeMap<String, Vec<u8>>,
}

impl Memory {
    /// A project of one file, `main.pelmet`.
    pub fn of(text: impl Into<Vec<u8>>) -> Memory {
        Memory::of_files([("main.pelmet", text)])
    }

    /// A project of several files, the main one first.
    pub fn of_files<Name: Into<String>, Text: Into<Vec<u8>>>(
        files: impl IntoIterator<Item = (Name, Text)>,
    ) -> Memory {
        let files: Vec<(String, Vec<u8>)> = files
            .into_iter()
            .map(|(name, text)| (name.into(), text.into()))
            .collect();
        let main = files
            .first()
            .map(|(name, _)| name.clone())
            .unwrap_or_default();
        Memory {
            main,
            files: files.into_iter().collect(),
        }
    }

    /// The project an example of a code shows; none if it is only told.
    pub fn of_example(example: Example) -> Option<Memory> {
        match example {
            Example::Text(text) => Some(Memory::of(text)),
            Example::Files(files) => Some(Memory::of_files(files.iter().copied())),
            Example::Made { make, .. } => Some(Memory::of(make())),
            Example::Told(_) => None,
        }
    }

    /// The project in a text whose lines `# file: PATH` part it into files, the main one first.
    /// What stands before the first such line is `main.pelmet`.
    pub fn of_parts(text: &str) -> Memory {
        let mut files: Vec<(&str, String)> = Vec::new();
        for line in text.lines() {
            match (line.strip_prefix("# file: "), files.last_mut()) {
                (Some(name), _) => files.push((name.trim(), String::new())),
                (None, Some((_, text))) => push_line(text, line),
                (None, None) => files.push(("main.pelmet", format!("{line}\n"))),
            }
        }
        Memory::of_files(files)
    }

    /// Compiles the project.
    pub fn build(&self) -> Built {
        build(&self.main, self)
    }
}

/// Whether a design makes a packet with nothing to report. A warning that the design itself accepts
/// is no fault of it.
pub fn is_sound(built: &Built) -> bool {
    let mut reports = built.diagnostics.iter();
    reports.all(|report| report.accepted.is_some()) && built.packet.is_some()
}

fn push_line(text: &mut String, line: &str) {
    text.push_str(line);
    text.push('\n');
}

impl Project for Memory {
    fn read(&self, path: &str) -> Result<Vec<u8>, ReadFinding> {
        let folder = format!("{path}/");
        match self.files.get(path) {
            Some(bytes) => Ok(bytes.clone()),
            None if self.files.keys().any(|other| other.starts_with(&folder)) => {
                Err(ReadFinding::IsFolder)
            }
            None => Err(ReadFinding::NotFound),
        }
    }

    fn paths(&self) -> Vec<String> {
        self.files.keys().cloned().collect()
    }
}

#[cfg(test)]
mod tests {
    use super::Memory;

    #[test]
    fn a_text_is_parted_into_files() {
        for (text, main, names) in [
            ("units inches\n", "main.pelmet", vec!["main.pelmet"]),
            (
                "# file: a.pelmet\nx\n# file: s/b.pelmet\ny\n",
                "a.pelmet",
                vec!["a.pelmet", "s/b.pelmet"],
            ),
            (
                "x\n# file: list.csv\ny\n",
                "main.pelmet",
                vec!["list.csv", "main.pelmet"],
            ),
        ] {
            let project = Memory::of_parts(text);
            assert_eq!(project.main, main);
            assert_eq!(project.files.keys().collect::<Vec<_>>(), names);
        }
    }
}
