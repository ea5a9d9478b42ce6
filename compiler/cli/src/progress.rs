//! How far long work has come, told on one line of the terminal.

use std::io::{self, IsTerminal, Write};
use std::time::{Duration, Instant};

/// Work that takes no longer than this is not talked about.
const PATIENCE: Duration = Duration::from_millis(500);

/// The line that says how far the work has come. It stands on standard error, only on a terminal and
/// only while the work is long, and is gone once something else is said.
pub struct Progress {
    began: Instant,
    terminal: bool,
    columns: usize,
    shown: bool,
}

impl Progress {
    /// The work begins now; no line takes more than so many columns.
    pub fn new(columns: usize) -> Progress {
        Progress {
            began: Instant::now(),
            terminal: io::stderr().is_terminal(),
            columns,
            shown: false,
        }
    }

    /// Says what is being done.
    pub fn tell(&mut self, what: &str) {
        if self.terminal && self.began.elapsed() > PATIENCE {
            write(&line(what, self.columns));
            self.shown = true;
        }
    }

    /// Takes the line away.
    pub fn clear(&mut self) {
        if self.shown {
            write(CLEARED);
            self.shown = false;
        }
    }
}

/// Takes the cursor to the beginning of the line and wipes what stands on it (ECMA-48: carriage
/// return, erase in line).
const CLEARED: &str = "\r\x1b[K";

/// The text in the place of whatever stands on the line, cut so that it stays one line.
fn line(what: &str, columns: usize) -> String {
    let most = columns.saturating_sub(1);
    let what: String = what.chars().take(most).collect();
    format!("{CLEARED}{what}")
}

/// What cannot be told is not missed.
fn write(text: &str) {
    let mut stream = io::stderr().lock();
    let _ = stream.write_all(text.as_bytes());
    let _ = stream.flush();
}

#[cfg(test)]
mod tests {
    use super::line;

    #[test]
    fn it_is_one_line() {
        assert_eq!(line("laying linen", 40), "\r\x1b[Klaying linen");
        assert_eq!(line("laying linen", 7), "\r\x1b[Klaying");
        assert_eq!(line("laying linen", 0), "\r\x1b[K");
    }
}
