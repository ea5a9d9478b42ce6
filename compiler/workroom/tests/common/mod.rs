//! What the tests of folding share.

use pelmet_measure::Length;
use pelmet_model::{CreaseKind, CreaseMade};

pub fn inches(whole: i64) -> Length {
    Length::inches(whole)
}

/// Creases written as inches, M for a mountain and V for a valley: "V3 M6".
pub fn creases(text: &str) -> Vec<CreaseMade> {
    let crease = |word: &str| {
        let (kind, at) = word.split_at(1);
        CreaseMade {
            at: inches(at.parse().unwrap()),
            kind: crease_kind(kind == "M"),
            pleat: 0,
        }
    };
    text.split_whitespace().map(crease).collect()
}

pub fn crease_kind(mountain: bool) -> CreaseKind {
    if mountain {
        CreaseKind::Mountain
    } else {
        CreaseKind::Valley
    }
}
