//! How diagnostics speak of the parts of a job.

/// A part or a size of a panel in a sentence: ``the lining of the panel `wing` of `bay` ``.
pub(crate) fn part_of_panel(part: &str, panel: &str, window: &str) -> String {
    format!("the {part} of the panel `{panel}` of `{window}`")
}
