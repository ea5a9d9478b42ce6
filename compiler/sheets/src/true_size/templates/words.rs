//! What is cut by a template, in words.

use crate::true_size::outlines::SharedOutline;

/// What is cut by an outline, on one line.
pub(crate) fn cut(outline: &SharedOutline<'_>) -> String {
    outline.cut().join("; ").replace(" x ", " × ")
}

/// The size of the pieces that are cut by an outline.
pub(crate) fn size(outline: &SharedOutline<'_>) -> String {
    let on_fold = if outline.piece.on_fold {
        ", on the fold"
    } else {
        ""
    };
    format!("{}{on_fold}", outline.size().replace(" x ", " × "))
}
