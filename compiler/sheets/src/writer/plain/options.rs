//! How a text is printed.

/// The narrowest a text is printed, in columns; a narrower width is taken for this one.
pub const MINIMUM_WIDTH: usize = 40;

/// How a text is printed.
#[derive(Copy, Clone, PartialEq, Eq, Debug)]
pub struct TextOptions {
    /// The most columns a line takes.
    pub width: usize,
}

impl Default for TextOptions {
    /// A width that reads well and prints on a sheet.
    fn default() -> Self {
        Self { width: 88 }
    }
}
