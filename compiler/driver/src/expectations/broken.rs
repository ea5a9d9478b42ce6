//! What an error leaves unfit to be judged: a size that follows from one would only tell it again.

use std::collections::BTreeSet;

use pelmet_model::Subject;

/// The windows and panels of which an error is told.
#[derive(Default)]
pub(crate) struct Broken {
    windows: BTreeSet<usize>,
    panels: BTreeSet<(usize, usize)>,
}

impl Broken {
    /// Adds what an error is told of.
    pub(crate) fn add(&mut self, subject: Subject) {
        match subject {
            Subject::Window(window) => self.windows.insert(window),
            Subject::Panel { window, panel } => self.panels.insert((window, panel)),
        };
    }

    /// Whether a size of a window can be judged: it follows from every one of its panels.
    pub(crate) fn spares_window(&self, window: usize) -> bool {
        let of_window = self.panels.iter().any(|(of, _)| *of == window);
        !of_window && !self.windows.contains(&window)
    }

    /// Whether a size of a panel can be judged. One that fills follows from its whole row.
    pub(crate) fn spares_panel(&self, window: usize, panel: usize) -> bool {
        !self.windows.contains(&window) && !self.panels.contains(&(window, panel))
    }
}
