//! What the parts of a file of templates are called.

use pelmet_packet::Packet;

use crate::true_size::outlines::SharedOutline;

/// How parts are named: with their windows where there are several of them.
pub(super) struct PartNames {
    several_windows: bool,
}

/// So many windows or pieces are named; more are counted.
const NAMED: usize = 2;

impl PartNames {
    pub(super) fn new(packet: &Packet) -> Self {
        Self {
            several_windows: packet.windows.len() > 1,
        }
    }

    pub(super) fn outline(&self, outline: &SharedOutline<'_>) -> String {
        let labels = outline.pieces.iter().map(|(_, piece)| &*piece.label);
        let windows = outline.pieces.iter().map(|(window, _)| &*window.name);
        self.of(&listed(labels, "pieces"), windows)
    }

    pub(super) fn of<'a>(&self, what: &str, windows: impl Iterator<Item = &'a str>) -> String {
        if self.several_windows {
            format!("{what}, {}", listed(windows, "windows"))
        } else {
            what.to_owned()
        }
    }
}

/// Different names, or how many there are.
fn listed<'a>(names: impl Iterator<Item = &'a str>, several: &str) -> String {
    let mut different: Vec<&str> = Vec::new();
    for name in names {
        if !different.contains(&name) {
            different.push(name);
        }
    }
    match different.len() {
        few if few <= NAMED => different.join(" and "),
        many => format!("{many} {several}"),
    }
}
