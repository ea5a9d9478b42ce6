//! A folder to work in, and the command run in it.

use std::fmt;
use std::fs;
use std::io::Write;
use std::path::PathBuf;
use std::process::{Command, Stdio};

use tempfile::TempDir;

/// A folder to work in, which is gone after the test.
pub struct Scratch(TempDir);

/// What a command did.
pub struct Done {
    /// The exit status.
    pub status: i32,
    /// What it printed on standard output.
    pub output: String,
    /// What it printed on standard error.
    pub errors: String,
}

impl Scratch {
    /// A folder with these files in it, by path and text.
    pub fn with(files: &[(&str, &str)]) -> Scratch {
        let scratch = Scratch(tempfile::tempdir().unwrap());
        for (path, text) in files {
            scratch.write(path, text);
        }
        scratch
    }

    /// The whole path of something in the folder.
    pub fn path(&self, within: &str) -> PathBuf {
        self.0.path().join(within)
    }

    /// Writes a file, and the folders it lies in.
    pub fn write(&self, within: &str, text: impl AsRef<[u8]>) {
        let path = self.path(within);
        fs::create_dir_all(path.parent().unwrap()).unwrap();
        fs::write(path, text).unwrap();
    }

    /// The text of a file.
    pub fn read(&self, within: &str) -> String {
        fs::read_to_string(self.path(within)).unwrap()
    }

    /// The names of everything in a folder, sorted, hidden ones too.
    pub fn list(&self, within: &str) -> Vec<String> {
        let entries = self.path(within).read_dir().unwrap();
        let mut names: Vec<String> = entries
            .map(|entry| entry.unwrap().file_name().into_string().unwrap())
            .collect();
        names.sort();
        names
    }

    /// Runs the command in the folder; the words of `line` are its arguments.
    pub fn run(&self, line: &str) -> Done {
        self.run_with_input(line, "")
    }

    /// Runs the command in the folder with something at standard input.
    pub fn run_with_input(&self, line: &str, input: &str) -> Done {
        let mut child = self
            .command(line)
            .stdin(Stdio::piped())
            .stdout(Stdio::piped())
            .stderr(Stdio::piped())
            .spawn()
            .unwrap();
        // Whoever reads nothing may close the pipe.
        let _ = child.stdin.take().unwrap().write_all(input.as_bytes());
        let done = child.wait_with_output().unwrap();
        Done {
            status: done.status.code().unwrap(),
            output: String::from_utf8(done.stdout).unwrap(),
            errors: String::from_utf8(done.stderr).unwrap(),
        }
    }

    /// The command, not yet run.
    pub fn command(&self, line: &str) -> Command {
        let mut command = Command::new(env!("CARGO_BIN_EXE_pelmet"));
        command
            .current_dir(self.0.path())
            .args(line.split_whitespace())
            .env_remove("NO_COLOR");
        command
    }
}

impl fmt::Display for Done {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Done {
            status,
            output,
            errors,
        } = self;
        write!(
            out,
            "exit status {status}\n--- standard output\n{output}--- standard error\n{errors}"
        )
    }
}
