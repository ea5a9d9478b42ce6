//! The things of a packet that are found again by what they are called, wherever they stand.

/// A list of things: a row of [`THINGS`].
pub(super) struct Things {
    /// Where the list stands in a packet, without the places in lists on the way.
    path: &'static str,
    /// What one of them is called; nothing where its name says it.
    pub(super) called: &'static str,
    /// The fields by which one is known again. Where several are known by the same, the first is
    /// taken for the first.
    pub(super) known_by: &'static [&'static str],
    /// The fields that make its name.
    pub(super) named_by: &'static [&'static str],
    /// The fields by which one that came or went is told, and which come first of one that changed.
    pub(super) told_by: &'static [&'static str],
    /// How the changes of one of them are told.
    pub(super) told: Told,
}

impl Things {
    /// What one of them is called, with its name.
    pub(super) fn named(&self, name: &str) -> String {
        format!("{} {name}", self.called).trim_start().to_owned()
    }
}

/// How the changes of a thing are told.
#[derive(Copy, Clone, PartialEq, Eq)]
pub(super) enum Told {
    /// One by one; whatever stands in it is told as a part of it.
    OneByOne,
    /// All in one.
    Together,
    /// Only that there are any, in one breath with the others of the list that changed.
    ByName,
}

use Told::{ByName, OneByOne, Together};

/// The list of things that stands at a path, if one does.
pub(super) fn things_at(path: &str) -> Option<&'static Things> {
    THINGS.iter().find(|things| things.path == path)
}

/// Every list whose things are found again by what they are called.
const THINGS: [Things; 20] = [
    Things {
        path: "cloths",
        called: "cloth",
        known_by: &["name"],
        named_by: &["name"],
        told_by: &["bought", "cost", "exact"],
        told: OneByOne,
    },
    Things {
        path: "notions",
        called: "notion",
        known_by: &["name"],
        named_by: &["name"],
        told_by: &["bought", "cost"],
        told: OneByOne,
    },
    Things {
        path: "notions.parts",
        called: "for",
        known_by: &["window", "panel"],
        named_by: &["window", "panel"],
        told_by: &["together"],
        told: Together,
    },
    Things {
        path: "quote.lines",
        called: "line",
        known_by: &["name"],
        named_by: &["name"],
        told_by: &["amount", "cost"],
        told: Together,
    },
    Things {
        path: "windows",
        called: "window",
        known_by: &["name"],
        named_by: &["name"],
        told_by: &["support.name", "support.length", "row.sum"],
        told: OneByOne,
    },
    Things {
        path: "windows.panels",
        called: "panel",
        known_by: &["name"],
        named_by: &["name"],
        told_by: &["quantity", "finished_width", "flat_width", "drop"],
        told: OneByOne,
    },
    Things {
        path: "windows.panels.pleats",
        called: "pleat",
        known_by: &["number"],
        named_by: &["number"],
        told_by: &["kind", "depth"],
        told: Together,
    },
    Things {
        path: "windows.panels.outline",
        called: "corner",
        known_by: &["number"],
        named_by: &["number"],
        told_by: &["at"],
        told: ByName,
    },
    Things {
        path: "windows.panels.mitres",
        called: "mitre at corner",
        known_by: &["corner"],
        named_by: &["corner"],
        told_by: &["length"],
        told: Together,
    },
    Things {
        path: "windows.panels.bands",
        called: "band on the edge",
        known_by: &["edge"],
        named_by: &["edge"],
        told_by: &["depth"],
        told: Together,
    },
    Things {
        path: "windows.panels.pieces",
        called: "piece",
        known_by: &["label"],
        named_by: &["label"],
        told_by: &["quantity", "cut_width", "cut_length", "cloth"],
        told: OneByOne,
    },
    Things {
        path: "windows.panels.pieces.allowances",
        called: "allowance at the edge",
        known_by: &["edge"],
        named_by: &["edge"],
        told_by: &["text"],
        told: Together,
    },
    Things {
        path: "windows.panels.pieces.outline",
        called: "point of the cutting line",
        known_by: &["number"],
        named_by: &["number"],
        told_by: &["at"],
        told: ByName,
    },
    Things {
        path: "windows.panels.fasteners",
        called: "fastener",
        known_by: &["name"],
        named_by: &["name"],
        told_by: &["length", "width"],
        told: Together,
    },
    Things {
        path: "windows.panels.marks",
        called: "",
        known_by: &["kind"],
        named_by: &["name"],
        told_by: &[
            "from_left",
            "down",
            "fold.brought_to_from_left",
            "fold.depth",
        ],
        told: Together,
    },
    Things {
        path: "windows.panels.making_order",
        called: "step",
        known_by: &["name"],
        named_by: &["name"],
        told_by: &[],
        told: ByName,
    },
    Things {
        path: "warnings",
        called: "warning",
        known_by: &["code"],
        named_by: &["code"],
        told_by: &["title"],
        told: Together,
    },
    Things {
        path: "notes",
        called: "note",
        known_by: &["code"],
        named_by: &["code"],
        told_by: &["title"],
        told: Together,
    },
    Things {
        path: "expectations",
        called: "",
        known_by: &["wording"],
        named_by: &["wording"],
        told_by: &["came_out"],
        told: Together,
    },
    Things {
        path: "cautions",
        called: "caution",
        known_by: &["name"],
        named_by: &["name"],
        told_by: &["text"],
        told: Together,
    },
];

#[cfg(test)]
mod tests {
    use super::THINGS;
    use crate::fields::tests::is_a_field;

    #[test]
    fn every_path_and_field_named_is_one_of_the_packet() {
        for things in &THINGS {
            let fields = [things.known_by, things.named_by, things.told_by].concat();
            for field in fields {
                let path = format!("{}.{field}", things.path);
                assert!(is_a_field(&path), "{path}");
            }
        }
    }
}
