//! Ctrl-C: the first one asks the search for shorter layouts to stop, the second ends the program.

use std::process;
use std::sync::atomic::{AtomicBool, Ordering};

/// What shells give as the exit status of a program that Ctrl-C has ended.
const ENDED_BY_INTERRUPT: i32 = 130;

static ASKED_TO_STOP: AtomicBool = AtomicBool::new(false);

/// Listens for Ctrl-C from here on. Where that cannot be had, Ctrl-C ends the program at once as it
/// does elsewhere, and nothing is lost but the search.
pub fn listen() {
    let _ = ctrlc::set_handler(|| {
        if ASKED_TO_STOP.swap(true, Ordering::Relaxed) {
            process::exit(ENDED_BY_INTERRUPT);
        }
    });
}

/// Whether Ctrl-C was pressed.
pub fn is_asked_to_stop() -> bool {
    ASKED_TO_STOP.load(Ordering::Relaxed)
}
