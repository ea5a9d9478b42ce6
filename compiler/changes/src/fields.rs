//! How the fields of a packet are told when they change.

use crate::change::PacketPart;

/// The part of the packet a path belongs to: that of the longest beginning that has one.
pub(super) fn part_of(path: &str) -> PacketPart {
    let fitting = PARTS.iter().filter(|(begins, _)| stands_in(path, begins));
    fitting
        .max_by_key(|(begins, _)| begins.len())
        .map_or(PacketPart::Job, |(_, part)| *part)
}

/// Whether a field is told at all, and what stands in it.
pub(super) fn is_told(path: &str) -> bool {
    !UNTOLD.iter().any(|(untold, _)| stands_in(path, untold))
}

/// In what words it is told that a field changed, where that is all that is told of it.
pub(super) fn told_as_one(path: &str) -> Option<&'static str> {
    let row = AS_ONE.iter().find(|(of, _)| path == *of);
    row.map(|(_, words)| *words)
}

/// The fields that stand for a thing made of many, where it came or went.
pub(super) fn sum_of(path: &str) -> Option<&'static [&'static str]> {
    let row = SUMS.iter().find(|(of, _)| path == *of);
    row.map(|(_, fields)| *fields)
}

/// Whether a field has one of a few fixed values, written in JSON as `half_drop`.
pub(super) fn is_fixed_value(field: &str) -> bool {
    FIXED_VALUES.contains(&field)
}

/// Whether a field says by itself what it is.
pub(super) fn speaks_for_itself(field: &str) -> bool {
    SPEAKING.contains(&field)
}

/// Fields in the words of the workroom: `cut_width` is the cut width.
pub(super) fn in_words(fields: &str) -> String {
    let row = WORDS.iter().find(|(of, _)| fields == *of);
    row.map_or(fields, |(_, words)| *words)
        .replace(['_', '.'], " ")
}

fn stands_in(path: &str, begins: &str) -> bool {
    path.strip_prefix(begins)
        .is_some_and(|rest| rest.is_empty() || rest.starts_with('.'))
}

const PARTS: [(&str, PacketPart); 25] = [
    ("cloths", PacketPart::Buying),
    ("cloth_cost", PacketPart::Buying),
    ("notions", PacketPart::Buying),
    ("quote", PacketPart::Quote),
    ("windows", PacketPart::Windows),
    ("windows.rod_check", PacketPart::Rods),
    ("windows.rod_not_checked", PacketPart::Rods),
    ("windows.panels", PacketPart::Panels),
    ("windows.panels.pieces", PacketPart::Pieces),
    ("windows.panels.marks", PacketPart::Marks),
    ("windows.panels.mitres", PacketPart::Marks),
    ("windows.panels.pleats", PacketPart::Folding),
    ("windows.panels.creases", PacketPart::Folding),
    ("windows.panels.stretches", PacketPart::Folding),
    ("windows.panels.layers", PacketPart::Folding),
    ("windows.panels.folded", PacketPart::Folding),
    ("windows.panels.thickest", PacketPart::Folding),
    ("windows.panels.thickest_stack", PacketPart::Folding),
    ("windows.panels.print_followed", PacketPart::Folding),
    ("windows.panels.turn_of_cloth", PacketPart::Folding),
    ("windows.panels.making_order", PacketPart::Making),
    ("warnings", PacketPart::Checks),
    ("notes", PacketPart::Checks),
    ("expectations", PacketPart::Checks),
    ("cautions", PacketPart::Checks),
];

/// What is not told, and why.
const UNTOLD: [(&str, &str); 13] = [
    ("format", "packets of another form are not compared"),
    (
        "windows.row.panels",
        "the sum of the row names them all with their widths",
    ),
    (
        "windows.panels.marks.number",
        "a mark is known by what is marked",
    ),
    (
        "windows.panels.marks.from_centre",
        "it follows from the flat width and the place from the left edge",
    ),
    (
        "windows.panels.marks.fold.brought_to_from_centre",
        "it follows from the flat width and the place from the left edge",
    ),
    (
        "windows.panels.marks.stitch.other_from_centre",
        "it follows from the flat width and the place from the left edge",
    ),
    (
        "windows.panels.pleats.flat",
        "the marks of its folds say where it lies",
    ),
    (
        "windows.panels.making_order.number",
        "a step is known by its name",
    ),
    (
        "windows.panels.pieces.outline_from",
        "it follows from whether the piece is cut on the fold",
    ),
    (
        "windows.panels.pieces.draw_width",
        "it is the cut width or half of it",
    ),
    ("windows.panels.cut_width", "it is that of the face"),
    ("windows.panels.cut_length", "it is that of the face"),
    ("cautions.sheets", "it is no matter of the job"),
];

/// What is told only as being different, since a sheet or a drawing shows it better than words.
const AS_ONE: [(&str, &str); 10] = [
    (
        "cloths.sections",
        "which lengths of it are folded and which lie open",
    ),
    ("windows.panels.pieces.sewn", "its sewn line"),
    ("cloths.bolts", "where its pieces lie"),
    ("cloths.placed", "where its pieces lie"),
    ("cloths.bands", "where its pieces lie"),
    ("windows.panels.creases", "how it lies folded"),
    ("windows.panels.stretches", "how it lies folded"),
    ("windows.panels.layers", "how it lies folded"),
    ("windows.panels.folded", "how it lies folded"),
    ("windows.panels.tape", "its lengths of tape"),
];

/// Fields that have words of their own, by the path to them from the thing they are a part of.
const WORDS: [(&str, &str); 8] = [
    ("from_left", "at"),
    ("fold.pleat_kind", "kind"),
    ("fold.depth", "depth"),
    ("fold.toward", "toward"),
    ("fold.brought_to_from_left", "brought to"),
    ("stitch.pleat_kind", "kind"),
    ("stitch.depth", "depth"),
    ("stitch.other_from_left", "stitched to"),
];

/// What tells of a thing made of many.
const SUMS: [(&str, &[&str]); 2] = [
    ("quote", &["total", "cost"]),
    ("windows.rod_check", &["sag", "load", "span"]),
];

const FIXED_VALUES: [&str; 12] = [
    "along",
    "kind",
    "way_up",
    "matching",
    "edge",
    "layer",
    "relief",
    "system",
    "toward",
    "pleat_kind",
    "place",
    "outline_from",
];

/// Fields whose value needs no word before it; that of a thing which is one amount has no name.
const SPEAKING: [&str; 8] = [
    "", "name", "title", "text", "words", "wording", "came_out", "sum",
];

#[cfg(test)]
pub(crate) mod tests {
    use serde_json::Value;

    use super::{AS_ONE, FIXED_VALUES, PARTS, SPEAKING, SUMS, UNTOLD, part_of};
    use crate::change::PacketPart;

    /// Whether a packet has such a field, by its schema.
    pub(crate) fn is_a_field(path: &str) -> bool {
        let schema = pelmet_packet::schema();
        let mut here = schema.clone();
        path.split('.').all(|field| {
            here = fields_of(&schema, &here)
                .get(field)
                .cloned()
                .unwrap_or_default();
            here != Value::Null
        })
    }

    /// The fields of a type, through references, lists and values that may be missing.
    fn fields_of<'s>(schema: &'s Value, of: &'s Value) -> &'s Value {
        let followed = [
            of["$ref"]
                .as_str()
                .and_then(|name| schema.pointer(name.trim_start_matches('#'))),
            of.get("items"),
            of["anyOf"].get(0),
        ];
        match followed.into_iter().flatten().next() {
            Some(next) => fields_of(schema, next),
            None => &of["properties"],
        }
    }

    #[test]
    fn every_path_named_is_one_of_the_packet() {
        let paths = PARTS.iter().map(|(path, _)| path);
        let paths = paths.chain(UNTOLD.iter().map(|(path, _)| path));
        let paths = paths.chain(AS_ONE.iter().map(|(path, _)| path));
        for path in paths.chain(SUMS.iter().map(|(path, _)| path)) {
            assert!(is_a_field(path), "{path}");
        }
        for not_there in ["windows.panel", "windows.panels.name.text", "cloth", ""] {
            assert!(!is_a_field(not_there), "{not_there}");
        }
    }

    #[test]
    fn every_field_named_is_one_of_some_type() {
        let schema = pelmet_packet::schema();
        let types: Vec<&Value> = schema["$defs"].as_object().unwrap().values().collect();
        for field in FIXED_VALUES.iter().chain(SPEAKING.get(1..).unwrap()) {
            let is_there = |of: &&Value| of["properties"].get(field).is_some();
            assert!(types.iter().any(is_there), "{field}");
        }
    }

    #[test]
    fn the_longest_beginning_decides() {
        for (path, part) in [
            ("title", PacketPart::Job),
            ("cloths.bought", PacketPart::Buying),
            ("windows.top_at", PacketPart::Windows),
            ("windows.panels.drop", PacketPart::Panels),
            ("windows.panels.pieces.outline", PacketPart::Pieces),
            ("windows.panelsize", PacketPart::Windows),
        ] {
            assert_eq!(part_of(path), part, "{path}");
        }
    }
}
